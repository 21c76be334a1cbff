"""The first set of slips, for sums and differences of whole numbers, listed by hand.

Sources are ids of the list kept with the published tests. How likely a slip is, in three words, is
our reading of them; none of them gives a number for mental work.
"""

from collections.abc import Callable, Iterator

from waysaid.number import (
    About,
    Claim,
    Compare,
    Equation,
    Exact,
    Image,
    NoValue,
    Operation,
    Problem,
    Sign,
    blanks,
    solve,
)
from waysaid.slips import carrying, columns, equality, friendly, parts, several
from waysaid.slips.slip import OUR_GUESS, Likely, Made, Pair, Rule, Slip, SlipName

_OFTEN, _SOMETIMES, _RARE = Likely.OFTEN, Likely.SOMETIMES, Likely.RARE


def _column(
    slug: SlipName,
    how: tuple[columns.Fact, columns.Exchange],
    likely: Likely,
    source: str,
) -> Rule:
    return Rule(slug, columns.worked(*how), likely, source)


_RIGHTLY, _ON = columns.rightly, columns.carried_on
RULES = (
    _column(SlipName.SMALLER_FROM_LARGER, (columns.turned, _ON), _OFTEN, "brown-burton1978"),
    Rule(SlipName.DROP_CARRY, carrying.drop_carry, _OFTEN, "open-textbook"),
    Rule(SlipName.NEAR_MISS, parts.near_miss, _OFTEN, OUR_GUESS),
    Rule(SlipName.ADJUST_WRONG_WAY, friendly.adjust_wrong_way, _OFTEN, "mental-common"),
    Rule(SlipName.COUNT_START, parts.count_start, _OFTEN, "nzcer-arb"),
    _column(SlipName.NO_REGROUP, (_RIGHTLY, columns.from_nowhere), _OFTEN, "bug-repo-b"),
    Rule(SlipName.FORGET_ADJUST, friendly.forget_adjust, _SOMETIMES, OUR_GUESS),
    Rule(SlipName.PART_MISSING, parts.part_missing, _SOMETIMES, OUR_GUESS),
    Rule(SlipName.MOVED_ACROSS, friendly.moved_across, _SOMETIMES, "mental-common"),
    Rule(SlipName.WRONG_OPERATION, parts.wrong_operation, _SOMETIMES, "vanlehn1990"),
    _column(SlipName.ZERO_TAKE, (columns.zero_gives_all, _ON), _SOMETIMES, "open-textbook"),
    _column(SlipName.ZERO_TO_NINE, (_RIGHTLY, columns.zero_to_nine), _SOMETIMES, "bug-repo-a"),
    _column(SlipName.SKIP_ZERO, (_RIGHTLY, columns.past_zeros), _SOMETIMES, "bug-repo-b"),
    _column(SlipName.ZERO_STAYS_TEN, (_RIGHTLY, columns.zero_to_ten), _SOMETIMES, "unimelb-sub"),
    Rule(SlipName.DIGITS_ALONE, parts.digits_alone, _SOMETIMES, OUR_GUESS),
    Rule(SlipName.WRITE_CARRY, carrying.write_carry, _SOMETIMES, "ashlock"),
    Rule(SlipName.MISALIGNED, carrying.misaligned, _RARE, "open-textbook"),
    _column(SlipName.SMALLER_FROM_LARGER, (columns.turned_by_zero, _ON), _RARE, "vanlehn1990"),
    _column(
        SlipName.ZERO_TAKE,
        (columns.zero_gives_all, columns.past_zeros),
        _RARE,
        "brown-burton1978",
    ),
    _column(SlipName.ZERO_TAKE, (columns.zero_gives_none, _ON), _RARE, "vanlehn1990"),
    _column(SlipName.ZERO_TAKE, (columns.taking_zero_leaves_none, _ON), _RARE, "vanlehn1990"),
    _column(SlipName.WRITE_ZERO, (columns.too_small_gives_none, _ON), _RARE, "vanlehn1990"),
    _column(SlipName.BORROW_LEFTMOST, (_RIGHTLY, columns.from_the_left), _RARE, "vanlehn1990"),
    Rule(SlipName.STOPS_SHORT, columns.stops_short, _RARE, "vanlehn1990"),
    Rule(SlipName.LOWERS_BLANK, columns.lowers_blank, _RARE, "vanlehn1990"),
)
"""In the order in which slips of one likelihood are listed."""

_Blanks = tuple[SlipName, Callable[[Equation], Iterator[Made]], Likely, str]
_EQUALITY: tuple[_Blanks, ...] = (
    (SlipName.WRITE_ANSWER, equality.write_answer, _OFTEN, "equality"),
    (SlipName.ADD_ALL, equality.add_all, _OFTEN, "equality"),
)
_RANK = {likely: rank for rank, likely in enumerate(Likely)}


def expected(problem: Problem) -> tuple[Slip, ...]:
    """Return the slips to listen for, likeliest first; empty for problems beyond the first set.

    Every answer differs from the right one, none is below zero, and no slip gives one answer
    twice.
    """
    try:
        right = solve(problem)
    except NoValue:
        return ()
    found: dict[tuple[SlipName, Exact], Slip] = {}
    for slip in _made(problem):
        if slip.wrong != right and slip.wrong >= 0:
            found.setdefault((slip.slug, slip.wrong), slip)
    return tuple(sorted(found.values(), key=lambda slip: _RANK[slip.likely]))


def slips(problem: Problem, wrong: Exact) -> tuple[Slip, ...]:
    """Return what may have led to this wrong answer, likeliest first; empty for the right one."""
    return tuple(slip for slip in expected(problem) if slip.wrong == wrong)


def _made(problem: Problem) -> Iterator[Slip]:
    if isinstance(problem, Equation):
        if blanks(problem) == 1:
            for slug, make, likely, source in _EQUALITY:
                for made in make(problem):
                    yield Slip(slug, made.wrong, made.steps, likely, source, made.at)
        pair = equality.asked(problem)
    elif isinstance(problem, Claim | Compare | About | Image):
        return
    else:
        pair = _pair(problem)
        if pair is None:
            yield from several.slips_of(problem)
    if pair is not None:
        for rule in RULES:
            for made in rule.make(pair):
                yield Slip(rule.slug, made.wrong, made.steps, rule.likely, rule.source, made.at)


def _pair(problem: Problem) -> Pair | None:
    if not isinstance(problem, Operation) or problem.sign not in (Sign.PLUS, Sign.MINUS):
        return None
    left, right = problem.left, problem.right
    if type(left) is not int or type(right) is not int or left < 0 or right < 0:
        return None
    return Pair(left, problem.sign, right)

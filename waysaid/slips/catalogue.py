"""Every kind of problem that has slips, and the slips of a problem, likeliest first."""

from collections.abc import Iterable, Iterator
from fractions import Fraction
from typing import Any

from waysaid.number import (
    Answer,
    Blank,
    Claim,
    Compare,
    Equation,
    Exact,
    NoValue,
    Number,
    Operation,
    Order,
    Problem,
    Remainder,
    Said,
    Span,
    Verdict,
    Written,
    answer_of,
    exact,
    number_text,
    remainder_of,
    said_text,
    sides,
    value_of,
    written,
)
from waysaid.slips import cases, claims, equality, estimates, images, order, percents
from waysaid.slips.decimals import comparing as decimals_compared
from waysaid.slips.decimals import rules as decimals
from waysaid.slips.fractions import comparing as fractions_compared
from waysaid.slips.fractions import rules as fractions
from waysaid.slips.fractions import several as several_parts
from waysaid.slips.misremembered import SYSTEMATIC, with_fact_off
from waysaid.slips.products.rules import PRODUCTS
from waysaid.slips.quotients.rules import QUOTIENTS
from waysaid.slips.shares import SHARES
from waysaid.slips.slip import Kind, Likely, Made, Rule, Slip, SlipName
from waysaid.slips.sums import several
from waysaid.slips.sums.rules import SUMS

KINDS: tuple[Kind[Any], ...] = (
    Kind("equations", equality.equation_of, equality.EQUALITY),
    Kind("sums", cases.sum_of, SUMS),
    Kind("products", cases.product_of, PRODUCTS),
    Kind("quotients", cases.quotient_of, QUOTIENTS),
    Kind("several", several.terms_of, several.SEVERAL),
    Kind("several parts", several_parts.sum_of, several_parts.SEVERAL),
    Kind("mixed", order.mixed_of, order.ORDER),
    Kind("decimals", cases.pointed_of, decimals.DECIMALS),
    Kind("fractions", cases.parts_in, fractions.FRACTIONS),
    Kind("percents", cases.rate_of, percents.PERCENTS),
    Kind("alone", decimals_compared.fraction_of, decimals.ALONE),
    Kind("decimals compared", decimals_compared.decimals_of, decimals.COMPARED),
    Kind("fractions compared", fractions_compared.fractions_of, fractions.COMPARED),
    Kind("mixed compared", decimals_compared.mixed_of, decimals.WITH_FRACTIONS),
    Kind("claims", claims.claim_of, claims.CLAIMS),
    Kind("about", estimates.about_of, estimates.ABOUT),
    Kind("fractions about", estimates.fractions_about, estimates.ABOUT_FRACTIONS),
    Kind("images", images.image_of, images.IMAGES),
)
"""A problem may be of more than one kind: an equation is one, and what it asks for another."""

RULES: tuple[Rule[Any], ...] = tuple(rule for kind in KINDS for rule in kind.rules)

_RANK = {likely: rank for rank, likely in enumerate(Likely)}
_Key = tuple[SlipName, Said]
_Right = tuple[Answer | Remainder, ...]
_Found = tuple[str, Rule[Any], Made]
"""A kind of problem, a rule of it, and what the rule made."""


def foresee(problem: Problem) -> tuple[Slip, ...]:
    """Return the wrong answers to expect and what may lead to each, likeliest first.

    Every answer differs from the right one, no number is below zero, and no slip gives one answer
    twice. Empty for a problem without an answer, or of a kind that has no slips.
    """
    right = _right(problem)
    return _ranked(problem, right, _made(problem)) if right else ()


def slips(problem: Problem, wrong: Answer | Remainder | Written) -> tuple[Slip, ...]:
    """Return what may have led to this answer, likeliest first; empty where nothing is known.

    Empty for the right answer too. A number said for a comparison is taken as the larger. What
    takes a slip and a misremembered fact together comes after every slip alone.
    """
    said = _said(problem, wrong)
    right = _right(problem)
    if said is None or not right or not _is_wrong(said, right):
        return ()
    made = list(_made(problem))
    alone = _ranked(problem, right, (each for each in made if each[2].wrong == said))
    seen = {slip.slug for slip in alone}
    return (
        *alone,
        *(slip for slip in _combined(problem, right, made, said) if slip.slug not in seen),
    )


def _ranked(problem: Problem, right: _Right, made: Iterable[_Found]) -> tuple[Slip, ...]:
    """Return what was made as slips, likeliest first, each slip and answer once."""
    numbers = _may_name(problem, right)
    found: dict[_Key, Slip] = {}
    for kind, rule, one in made:
        key = rule.slug, one.wrong
        if key not in found and _is_wrong(one.wrong, right):
            plain = rule.slug, one.wrong, one.steps, rule.likely, rule.source
            found[key] = Slip(*plain, one.at, None, numbers, SHARES.get((rule.slug, kind)))
    return tuple(sorted(found.values(), key=_rank))


def _rank(slip: Slip) -> tuple[int, int]:
    """Return what sorts slips: how likely, then the published share, where there is one."""
    return _RANK[slip.likely], -slip.share.high if slip.share is not None else 0


def _made(problem: Problem) -> Iterator[_Found]:
    """Yield all that the rules of the problem's kinds make of it."""
    for kind in KINDS:
        for rule, made in kind.made(problem):
            yield kind.name, rule, made
    if isinstance(problem, Claim):
        yield from _claimed(problem)


def _claimed(problem: Claim) -> Iterator[_Found]:
    """Yield the slips in working or comparing the sides of a claim.

    Working one side awry may make a false claim seem true; where each side is a number, a slip
    in comparing them decides.
    """
    left, right = problem.equation.left, problem.equation.right
    if not isinstance(left, Operation) and not isinstance(right, Operation):
        for name, rule, made in _made(Compare(left, right)):
            verdict = Verdict.TRUE if made.wrong is Order.SAME else Verdict.FALSE
            yield name, rule, Made(verdict, made.steps, made.at)
    for side, other in ((left, right), (right, left)):
        if isinstance(side, Operation) and not isinstance(other, Operation | Blank):
            for name, rule, made in _made(side):
                if made.wrong == exact(other):
                    yield name, rule, Made(Verdict.TRUE, made.steps, made.at)


def _combined(
    problem: Problem, right: _Right, made: Iterable[_Found], wrong: Said
) -> Iterator[Slip]:
    """Yield what takes one slip and one misremembered fact, each slip once."""
    seen: set[SlipName] = set()
    for _, rule, one in made:
        if not isinstance(wrong, int) or rule.slug not in SYSTEMATIC or rule.slug in seen:
            continue
        if not _is_wrong(one.wrong, right):
            continue
        for work, fact in with_fact_off(one, wrong):
            seen.add(rule.slug)
            plain = rule.slug, wrong, work.steps, Likely.RARE, rule.source
            yield Slip(*plain, work.at, fact, _may_name(problem, right))
            break


def _right(problem: Problem) -> _Right:
    """Return all that is a right answer; nothing where the problem has none."""
    try:
        answer = answer_of(problem)
    except NoValue:
        return ()
    left = remainder_of(problem)
    return (answer,) if left is None else (answer, left)


def _is_wrong(said: Said, right: _Right) -> bool:
    """Tell whether an answer is wrong, and one that could be said: no number below zero."""
    if isinstance(said, int | Fraction):
        if said < 0:
            return False
        for each in right:
            if isinstance(each, Span) and each.low <= said <= each.high:
                return False
    return said not in right


def _said(problem: Problem, wrong: Answer | Remainder | Written) -> Said | None:
    """Return what was said as the rules say it; None for what cannot be a wrong answer."""
    if isinstance(wrong, Span):
        return None
    if isinstance(wrong, Written):
        wrong = exact(wrong)
    if isinstance(wrong, Remainder) and not wrong.left:
        wrong = wrong.groups
    if isinstance(problem, Compare) and isinstance(wrong, int | Fraction):
        return _larger(problem, wrong)
    return wrong


def _larger(problem: Compare, said: Exact) -> Order | None:
    try:
        left, right = value_of(problem.left), value_of(problem.right)
    except NoValue:
        return None
    if left == right or said not in (left, right):
        return None
    return Order.MORE if said == left else Order.LESS


def _may_name(problem: Problem, right: _Right) -> tuple[Number, ...]:
    """Return the numbers of a problem that a question may name: those that hold no answer.

    Where a blank is found from two numbers, they come in that order: 62, 25 for `25 + _ = 62`.
    """
    answers = {text for each in right for text in _texts(problem, each)}
    spans = [each for each in right if isinstance(each, Span)]
    asked = cases.two_of(problem) if isinstance(problem, Equation) else None
    said = (asked.left, asked.right) if asked is not None else sides(problem)
    leaves = [leaf for side in said for leaf in written(side)]
    return tuple(
        leaf
        for leaf in dict.fromkeys(leaves)
        if not isinstance(leaf, Blank)
        and not any(answer in number_text(leaf) for answer in answers)
        and not any(span.low <= exact(leaf) <= span.high for span in spans)
    )


def _texts(problem: Problem, answer: Answer | Remainder) -> Iterator[str]:
    """Yield how an answer may be printed."""
    yield said_text(answer, problem)
    if isinstance(answer, int | Fraction):
        yield number_text(answer)
    if isinstance(answer, Remainder):
        yield str(answer.groups)
    if isinstance(answer, Span):
        yield from (number_text(answer.low), number_text(answer.high))

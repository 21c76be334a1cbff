"""Listen to a line of free words: its explanations, the best first."""

from dataclasses import dataclass
from fractions import Fraction

from waysaid.hearing.answer import answer_said
from waysaid.hearing.clause import Said
from waysaid.hearing.draft import Draft
from waysaid.hearing.hear import Heard
from waysaid.hearing.lexicon import lexicon_of
from waysaid.hearing.match import Match, matched
from waysaid.hearing.meaning import Meaning
from waysaid.hearing.reading import AnswerSaid, Part
from waysaid.hearing.spoken import weights
from waysaid.hearing.spoken.anew import told_anew, without_last_names
from waysaid.hearing.spoken.family import likeliest
from waysaid.hearing.spoken.given import given
from waysaid.hearing.spoken.item import Item, lattice
from waysaid.hearing.spoken.outline import share_repeated
from waysaid.hearing.spoken.part import divided
from waysaid.hearing.spoken.search import Lattice, search
from waysaid.hearing.spoken.state import Bare, State
from waysaid.hearing.spoken.world import World, world_of
from waysaid.hearing.turned import turned
from waysaid.hearing.word import words_of
from waysaid.hearing.worth import worth
from waysaid.number import (
    Blank,
    Claim,
    Compare,
    Form,
    Language,
    Number,
    Operation,
    Order,
    Problem,
    Remainder,
    Verdict,
    Written,
    exact,
    leaves,
)
from waysaid.ways import Family, Step

WEIGHED = 6
"""How many of the best readings are compared with the problem's ways. Our choice."""


@dataclass(frozen=True, slots=True)
class Explained:
    """One explanation of a line, and what it costs."""

    drafts: tuple[Draft, ...]
    steps: tuple[Step, ...]
    family: Family | None
    answer: AnswerSaid | None
    dropped: tuple[tuple[int, int], ...]
    cost: int


def listen(problem: Problem, line: str, language: Language) -> tuple[Explained, ...]:
    """Return the explanations of a line of words, the least costly first; never none."""
    lexicon = lexicon_of(language)
    world = world_of(problem)
    items = lattice(words_of(line, lexicon), lexicon)
    marks = _marks(items)
    strange = sum(all(item.meaning is None and not item.numeral for item in here) for here in items)
    taken_back = _taken_back(items)
    talk = _Talk(
        marks,
        strange,
        _unfinished(items),
        _hangs(items),
        _asked(items),
        taken_back,
        _promised(items),
    )
    found = [_explained(state, talk, world) for state in search(items, world)[:WEIGHED]]
    return tuple(sorted(found, key=lambda one: one.cost))


def _marks(items: Lattice) -> frozenset[Meaning]:
    """Return the meanings heard plainly, of the longest phrases alone.

    What is put on need not come from the other number.
    """
    found: set[Meaning] = set()
    place = 0
    while place < len(items):
        plain = [one for one in items[place] if not one.noise]
        end = max((one.end for one in plain), default=place + 1)
        longest = {one.meaning for one in plain if one.meaning and one.end == end}
        found |= longest - ({Meaning.GIVE} if Meaning.ADD in longest else set())
        place = end
    return frozenset(found)


@dataclass(frozen=True, slots=True)
class _Talk:
    """What else was said: the meanings heard plainly, and how many words mean nothing to us.

    `unfinished` is whether something was begun behind the last number: `is forty and then I`;
    `hangs` whether the line ends so; `asked` whether it begins with a question word;
    `taken_back` where numbers end behind which a word takes them back and another number comes;
    `promised` is the last number, where a word such as `so` comes before it.
    """

    marks: frozenset[Meaning]
    strange: int
    unfinished: bool
    hangs: bool
    asked: bool
    taken_back: frozenset[int]
    promised: Item | None


_STORY = 2
"""From how many unknown words on a number alone belongs to a story. Our choice."""


def _explained(state: State, talk: _Talk, world: World) -> Explained:
    state = state._replace(
        drafts=given(told_anew(state.drafts, talk.marks, world), talk.marks, world)
    )
    match = _matched(state.drafts, world)
    answer = _answer(state, talk, match, world)
    family = _family(state, match, talk.marks, world)
    cost = state.cost + _unlikely(state, match, family, world)
    return Explained(state.drafts, match.steps, family, answer, state.dropped, cost)


def _matched(drafts: tuple[Draft, ...], world: World) -> Match:
    """Return the match of the steps; a quarter of a number is also the number shared by four."""
    match = matched(drafts, world.facts)
    shared = divided(drafts, world)
    if match.family is not None or shared == drafts:
        return match
    other = matched(shared, world.facts)
    return Match(match.steps, other.family, other.stops_short) if other.family else match


def _unlikely(state: State, match: Match, family: Family | None, world: World) -> int:
    """Return what it costs that the steps, or their want, are no way, or not a whole one.

    Other names that the last result was given need not be a way's: six fifths, one and a fifth.
    """
    only = state.drafts[0] if len(state.drafts) == 1 else None
    shared = isinstance(state.verdict, Remainder)
    named = only is not None and (not only.open or (shared and only.open == (Part.LEFT,)))
    asked = named and only is not None and only.left == world.facts.asked
    if state.drafts and family is None:
        return 0 if asked else weights.NO_FAMILY
    if family is Family.COLUMN or (asked and family is Family.KNOWN_FACT):
        return 0
    core = without_last_names(state.drafts)
    if share_repeated(state.drafts, world):
        return 0
    if match.family or (len(core) < len(state.drafts) and matched(core, world.facts).family):
        return 0
    return weights.IN_PART


_BEGIN = (Meaning.AND, Meaning.THEN, Meaning.TAKE, Meaning.GIVE, Meaning.ADD)
"""What begins something: said behind the last number, it was not finished."""


def _unfinished(items: Lattice) -> bool:
    numbers = [place for place, here in enumerate(items) if _is_number(here)]
    behind = items[numbers[-1] + 1 :] if numbers else ()
    return any(one.meaning in _BEGIN and not one.noise for here in behind for one in here)


_PROMISES = (Meaning.SO, Meaning.EQUALS, Meaning.FILLER, Meaning.IT)
"""What may stand between `so` and the answer: so um it's nine."""


def _promised(items: Lattice) -> Item | None:
    """Return the number that ends the line, where `so` comes before it."""
    for place in range(len(items) - 1, 0, -1):
        plain = [one for one in items[place] if one.numeral and not one.noise]
        last = max(plain, key=lambda one: one.end, default=None)
        if last is None or last.end != len(items):
            continue
        before = place - 1
        while before >= 0:
            said = {one.meaning for one in items[before] if not one.noise}
            if Meaning.SO in said:
                return last
            if said.isdisjoint(_PROMISES):
                break
            before -= 1
    return None


def _taken_back(items: Lattice) -> frozenset[int]:
    """Return where the numbers end that a plain word takes back while another number comes."""
    numbers = [place for place, here in enumerate(items) if _is_number(here)]
    last = numbers[-1] if numbers else 0
    return frozenset(
        one.span[1]
        for place in numbers
        for one in items[place]
        if one.numeral and one.end < last and _takes_back(items[one.end])
    )


def _takes_back(here: tuple[Item, ...]) -> bool:
    longest = max((one.end for one in here if one.meaning), default=0)
    return any(one.meaning is Meaning.CORRECT and one.end == longest for one in here)


def _is_number(here: tuple[Item, ...]) -> bool:
    """Tell whether a number begins here, and no word that plainly means something else."""
    words = any(one.meaning and not one.noise for one in here)
    return any(one.numeral and not (one.numeral.noise and words) for one in here)


def _hangs(items: Lattice) -> bool:
    """Tell whether the last word begins something."""
    last = items[-1] if items else ()
    return any(one.meaning in (Meaning.AND, Meaning.THEN) and not one.noise for one in last)


def _asked(items: Lattice) -> bool:
    """Tell whether the line begins with a question: why can't you just."""
    first = [one for one in (items[0] if items else ()) if one.meaning and not one.noise]
    longest = max((one.end for one in first), default=0)
    said = {one.meaning for one in first if one.end == longest}
    return Meaning.ASK in said and Meaning.ABOUT not in said


def _answer(state: State, talk: _Talk, match: Match, world: World) -> AnswerSaid | None:
    """Return the answer that was said: a verdict where one is asked for, else a number."""
    verdict = _verdict(state, world)
    if isinstance(world.facts.problem, Compare | Claim):
        return verdict
    state = _standing(state, talk)
    promised = any(one.final for one in state.bare)
    if isinstance(verdict, Remainder) and _shared_out(state, verdict):
        verdict = None
    if not state.drafts and not promised and talk.strange >= _STORY:
        return verdict
    got = Meaning.EQUALS in talk.marks and Meaning.NOT not in talk.marks
    if not state.drafts and not promised and not got and Meaning.AGREE in talk.marks:
        return verdict
    claimed = state.claimed.leaf if state.claimed and not promised else None
    if verdict is None and isinstance(claimed, int | Fraction | Written):
        return claimed
    if talk.unfinished and state.drafts and verdict is None and not promised:
        return None
    worked = any(draft.result is not None for draft in state.drafts)
    if (talk.hangs or talk.asked) and not worked and not promised:
        return verdict
    heard = Heard(state.drafts, _said(state.bare), _answers(state, world), verdict)
    short = match.stops_short or _slip_begun(state, world)
    said = answer_said(heard, world.facts, short)
    if said is None and not short:
        said = _last_said(state, world)
    return _said_again(state, talk) if said is None else said


def _said_again(state: State, talk: _Talk) -> Number | None:
    """Return the last number, promised by `so`, where it is not only the end of the last step."""
    last = talk.promised
    if last is None or last.numeral is None or not state.drafts or last.numeral.many:
        return None
    if state.drafts[-1].stands == exact(last.numeral.leaf):
        return None
    return last.numeral.leaf


def _standing(state: State, talk: _Talk) -> State:
    """Return the state without the numbers alone that were taken back, and a claim that stands.

    A result that later work went on from was no claim of the answer.
    """
    claimed = state.claimed
    gone = claimed is not None and (
        claimed.span[1] in talk.taken_back
        or any(
            draft.span[0] > claimed.span[0] and claimed.value in tuple(leaves(draft.left))
            for draft in state.drafts
        )
    )
    bare = tuple(one for one in state.bare if one.quantity.span[1] not in talk.taken_back)
    return state._replace(bare=bare, claimed=None if gone else claimed)


def _slip_begun(state: State, world: World) -> bool:
    """Tell whether the steps are the beginning of a slip to expect, and not its end."""
    return tuple(turned(draft.equation) for draft in state.drafts) in world.unfinished


def _family(state: State, match: Match, marks: frozenset[Meaning], world: World) -> Family | None:
    if not state.drafts and state.knew:
        return None if state.unsure else Family.KNOWN_FACT
    if state.knew and len(state.drafts) == 1 and state.drafts[0].left == world.facts.asked:
        return Family.KNOWN_FACT
    return likeliest(state, match.family, marks, world)


def _said(bare: tuple[Bare, ...]) -> tuple[Said, ...]:
    return tuple(
        Said(one.quantity.leaf, one.quantity.span)
        for one in bare
        if not isinstance(one.quantity.leaf, Operation | Blank)
    )


def _answers(state: State, world: World) -> tuple[Said, ...]:
    """Return the numbers alone that may be answers: the last, and those a word promised.

    A plural never is: `I like tens`; nor is a number of the problem that is only named again.
    """
    last = state.bare[-1:]
    return _said(
        tuple(
            one
            for one in state.bare
            if (one.final or (one in last and not _named_again(one, state, world)))
            and not one.quantity.many
        )
    )


def _named_again(one: Bare, state: State, world: World) -> bool:
    """Tell whether a number is one of the problem's, beside others, and ends no step.

    Parts worth a whole number, beside steps, are a division rather: 198 over 3.
    """
    value, leaf = one.quantity.value, one.quantity.leaf
    parts = isinstance(leaf, Written) and leaf.form is Form.PARTS
    if parts and state.drafts and isinstance(value, int):
        return True
    if leaf not in world.facts.written or value == world.facts.answer:
        return False
    ends = (draft.stands for draft in state.drafts)
    return value not in ends and len(state.bare) + len(state.drafts) > 1


def _verdict(state: State, world: World) -> Remainder | Order | Verdict | None:
    """Return the verdict said, if any; of a comparison also the larger number, if named last."""
    problem = world.facts.problem
    if not isinstance(problem, Compare):
        return state.verdict
    last = state.bare[-1] if state.bare else None
    if last is None or (state.verdict is not None and not _overrules(last, state)):
        return state.verdict
    value = last.quantity.value
    sides = [worth(problem.left), worth(problem.right)]
    if value not in sides:
        return state.verdict
    return Order.MORE if sides.index(value) == 0 else Order.LESS


def _shared_out(state: State, told: Remainder) -> bool:
    """Tell whether what was left over is shared out in the end: two left, so six and a half."""
    last = state.bare[-1] if state.bare else None
    if last is None or not last.final or last.after < len(state.drafts):
        return False
    value = last.quantity.value
    return value is not None and told.groups < value < told.groups + 1


def _overrules(last: Bare, state: State) -> bool:
    """Tell whether a number named in the end goes before `the same`: same tops, so a third."""
    return state.verdict is Order.SAME and last.final and len(state.bare) == 1


def _last_said(state: State, world: World) -> Number | None:
    """Return the result of the last step said, where it is new and nothing went on from it."""
    if not state.drafts or isinstance(world.facts.problem, Compare | Claim):
        return None
    last = state.drafts[-1]
    result = last.result
    if last.whole or not isinstance(result, int | Fraction | Written):
        return None
    left_out = any(draft.result is None for draft in state.drafts)
    return None if left_out or exact(result) in world.facts.numbers else result

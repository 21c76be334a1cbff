"""Listen to a line of free words: its explanations, the best first."""

from dataclasses import dataclass

from waysaid.hearing.draft import COUNTED, Draft
from waysaid.hearing.lexicon import lexicon_of
from waysaid.hearing.match import Match, matched
from waysaid.hearing.meaning import Meaning
from waysaid.hearing.reading import AnswerSaid, Part
from waysaid.hearing.spoken import weights
from waysaid.hearing.spoken.anew import told_anew, without_last_names
from waysaid.hearing.spoken.divided import by_is_over
from waysaid.hearing.spoken.family import likeliest
from waysaid.hearing.spoken.given import counted_from, cut_short, given
from waysaid.hearing.spoken.item import lattice
from waysaid.hearing.spoken.kept import kept, named_whole
from waysaid.hearing.spoken.outcome import outcome
from waysaid.hearing.spoken.outline import places_alike, share_repeated
from waysaid.hearing.spoken.part import as_parts, divided
from waysaid.hearing.spoken.places import as_digits
from waysaid.hearing.spoken.search import search
from waysaid.hearing.spoken.sharing import multiplied, parts_joined, parts_shared
from waysaid.hearing.spoken.state import State
from waysaid.hearing.spoken.talk import Talk, talk_of
from waysaid.hearing.spoken.trail import Lattice
from waysaid.hearing.spoken.undone import run_on
from waysaid.hearing.spoken.withdrawn import amended
from waysaid.hearing.spoken.world import World, asks, slip_whole, world_of
from waysaid.hearing.word import words_of
from waysaid.number import Language, Order, Problem, Remainder, leaves
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
    talk = talk_of(items)
    states = sorted(search(amended(by_is_over(items)), world)[:WEIGHED], key=_taken_back)
    if _without_number(items):
        states = [state._replace(drafts=(), bare=()) for state in states]
    found = [_explained(state, talk, world) for state in states]
    return tuple(sorted(found, key=lambda one: one.cost))


def _without_number(items: Lattice) -> bool:
    """Tell whether a line names no number, nor doubles or halves: it tells no step, no answer.

    Of `may I go up or give it to them` words that may be acts, and pronouns, make none.
    """
    every = [one for here in items for one in here]
    named = any(one.numeral and one.noise < _FAR for one in every)
    return not named and not any(one.meaning in _TWO for one in every)


_TWO = (Meaning.DOUBLE, Meaning.HALF)
_FAR = 3
"""From this grade of noise on a word is a number only beside others: `then` for ten. Our choice."""


def _taken_back(state: State) -> int:
    """Return how much of a line a state takes back: of those alike in cost, the least is heard."""
    return sum(end - start for start, end in state.dropped)


def _explained(state: State, talk: Talk, world: World) -> Explained:
    drafts = counted_from(named_whole(kept(state.drafts, talk), talk), world)
    drafts = given(told_anew(drafts, talk.marks, world), talk.marks, world)
    drafts = as_digits(drafts, [one.quantity.value for one in state.bare])
    if world.groups and not state.bare:
        drafts = parts_joined(parts_shared(drafts, world), talk.joins)
    state = state._replace(drafts=drafts)
    match = _matched(state.drafts, world)
    answer = outcome(state, talk, match, world)
    if isinstance(answer, Order) and state.verdict is None:
        state = state._replace(verdict=answer)
    family = _family(state, match, talk, world)
    if family is Family.KNOWN_FACT and answer is None and not state.drafts:
        family = family if talk.marks.isdisjoint(_NOT_KNOWN) else None
    cost = state.cost + _unlikely(state, match, family, world)
    cost += _signed_counts(state, talk, family) + weights.IGNORED * cut_short(state.drafts)
    if not talk.marks.isdisjoint(_DIGIT_BY_DIGIT):
        cost += weights.ON_PAPER * sum(draft.by_digits for draft in state.drafts)
    return Explained(state.drafts, match.steps, family, answer, state.dropped, cost)


_NOT_KNOWN = frozenset((Meaning.NOT, Meaning.UNSURE, Meaning.LOST))
"""What is said of a fact that is not known after all: I don't know my twelves."""

_DIGIT_BY_DIGIT = frozenset((Meaning.CARRY, Meaning.BORROW, Meaning.WRITE))
"""What is said of work in columns, where a digit is told as the digit it is."""


def _without_recap(drafts: tuple[Draft, ...], world: World) -> tuple[Draft, ...]:
    """Return the steps without the problem itself, said in full at the end."""
    if len(drafts) < 2 or not world.groups or drafts[-1].whole or drafts[-1].open:
        return drafts
    return drafts[:-1] if asks(drafts[-1].left, world) else drafts


def _signed_counts(state: State, talk: Talk, family: Family | None) -> int:
    """Return what it costs that numbers beside a plain sign are counted: three plus six.

    Or, counted by ones, behind a word for a result: one and two equals three.
    """
    counts = family is Family.COUNTING
    by_one = [draft for draft in state.drafts if draft.open == COUNTED and 1 in leaves(draft.left)]
    return weights.IGNORED * (
        sum(_any_in(draft, talk.worked) for draft in state.drafts if counts and draft.counted)
        + sum(_any_in(draft, talk.results) for draft in by_one)
    )


def _any_in(draft: Draft, places: frozenset[int]) -> bool:
    """Tell whether one of the places is among the words of a step."""
    return any(draft.span[0] <= start < draft.span[1] for start in places)


def _matched(drafts: tuple[Draft, ...], world: World) -> Match:
    """Return the match of the steps.

    A quarter of a number is also the number shared by four, and the other way round; and 50 + 50 is
    two fifties.
    """
    match = matched(drafts, world.facts)
    if match.family is not None or not world.groups:
        return match
    for made in (multiplied(divided(drafts, world)), as_parts(drafts, world)):
        other = matched(made, world.facts) if made != drafts else match
        if other.family is not None:
            return Match(match.steps, other.family, other.stops_short)
    return match


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
    if (family is Family.COLUMN and state.drafts) or (asked and family is Family.KNOWN_FACT):
        return 0
    if slip_whole(state.drafts, world):
        return 0
    core = _without_recap(without_last_names(state.drafts), world)
    if share_repeated(state.drafts, world):
        return 0
    if len(core) == 1 < len(state.drafts) and core[0].left == world.facts.asked:
        return 0
    if match.family or (len(core) < len(state.drafts) and matched(core, world.facts).family):
        return 0
    return weights.IN_PART


def _family(state: State, match: Match, talk: Talk, world: World) -> Family | None:
    if not state.drafts and state.knew:
        return None if state.unsure else Family.KNOWN_FACT
    if state.knew and len(state.drafts) == 1 and state.drafts[0].left == world.facts.asked:
        return Family.KNOWN_FACT
    marks = talk.marks | {Meaning.UNIT} if talk.in_tenths else talk.marks
    return likeliest(state, match.family, marks, world)


def alike(problem: Problem, drafts: tuple[Draft, ...]) -> Family | None:
    """Return the family of steps that no way has, told in signs alone; None where it is not sure.

    It is where fractions, decimals or percents were worked with in several steps, a sum was run on
    place by place, or like places were put together, the less taken from the more: 80 - 40, 6 - 3.
    """
    world = world_of(problem)
    if len(drafts) < _SEVERAL:
        return None
    if all(isinstance(one, int) for one in world.facts.written):
        split = Family.SPLIT if places_alike(drafts, world) > 1 else None
        return run_on(drafts, world) or split
    return likeliest(State(drafts=drafts), None, frozenset(), world)


_SEVERAL = 2
"""From how many steps in signs on a family is told that no way bears out. Our choice."""

"""A noticing in a child's words, and the link of the string that those words state, if one does.

A noticing states a link where all that it claims is true of that link's problems and numbers, and
is what its kind of link says. One that is not true of the string states none, nor do words that
claim nothing: such a noticing is kept as said.
"""

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise

from waysaid.number import Blank, Exact, Language, Problem, exact
from waysaid.strings.becoming import became, holds
from waysaid.strings.leaf import leaves_of
from waysaid.strings.link import Link, LinkKind, Saying
from waysaid.strings.link_words import link_says
from waysaid.strings.links import links
from waysaid.strings.noticed import claimed
from waysaid.strings.noticed_claim import Claimed, How, Who
from waysaid.strings.noticed_words import Sense, items_of
from waysaid.strings.sight import Sight, sights


@dataclass(frozen=True, slots=True)
class Matched:
    """A noticing and the link it states; None where it is kept as said."""

    words: str
    link: Link | None

    def says(self, language: Language) -> str:
        """Return one sentence for the desk: the link it states, or that it is kept as said."""
        return _KEPT[language] if self.link is None else link_says(self.link, language)


_KEPT = {
    Language.EN: "Kept as said; not one that algebra proves.",
    Language.ES: "Se guarda como se dijo; el álgebra no la demuestra.",
}


def noticing(words: str, problems: Sequence[Problem], language: Language) -> Matched:
    """Match a noticing to the most telling link that it states, between the problems it names.

    Raises `NoValue` where a problem has no answer.
    """
    claim = claimed(items_of(words, problems, language), len(problems))
    if Sense.DENIED in claim.about:
        return Matched(words, None)
    seen = sights(problems)
    stating = [link for link in links(problems, every=True) if _states(claim, link, seen)]
    named = [link for link in stating if set(link.between) == claim.problems]
    return Matched(words, next(iter(named or stating), None))


_ASIDE = frozenset(
    {Sense.ANSWER, Sense.IS, Sense.MAKES, Sense.THEY, Sense.BOTH, Sense.ALL, Sense.HAS}
)
"""Senses that may stand beside any claim: what they claim is looked at with its changes."""

_MAY = {
    LinkKind.SAME_NUMBER: {Sense.BACK, Sense.IN, Sense.EACH},
    LinkKind.SAME_TOTAL: {Sense.BACK, Sense.EACH},
    LinkKind.ONE_CHANGES: {Sense.TAKE},
    LinkKind.BOTH_CHANGE: {Sense.TAKE},
    LinkKind.FRIENDLY_TWIN: {Sense.HELP, Sense.NEAR},
    LinkKind.INSIDE_A_WAY: {Sense.IN, Sense.HELP, Sense.BACK},
    LinkKind.TURNED_AROUND: {Sense.SWITCH, Sense.FAMILY},
    LinkKind.OPPOSITE: {Sense.UNDO, Sense.FAMILY, Sense.TAKE},
    LinkKind.TEN_TIMES: {Sense.TEN},
    LinkKind.DOUBLE_HALF: frozenset[Sense](),
    LinkKind.FEEDS_NEXT: {Sense.IN},
    LinkKind.PATTERN: {Sense.EACH},
}
"""What else may be said where a link of the kind is stated."""


def _states(claim: Claimed, link: Link, seen: Sequence[Sight]) -> bool:
    if claim.about - _ASIDE - _MAY[link.kind]:
        return False
    if not _names(claim, link, len(seen)) or (_changes(claim) and not _whole(claim)):
        return False
    among = [seen[at] for at in link.between]
    if not _sizes(claim) | set(claim.units) <= _numbers_of(link, among):
        return False
    if link.kind is LinkKind.PATTERN and not claim.problems:
        among = list(seen)
    return _STATED[link.kind](claim, link, among)


_ANY = frozenset({LinkKind.SAME_NUMBER, LinkKind.SAME_TOTAL})
"""Kinds that may be between problems anywhere in the string: always is then in every one."""

_THROUGH = _ANY | {LinkKind.PATTERN}


def _names(claim: Claimed, link: Link, count: int) -> bool:
    """Tell whether the link is between the problems named, in as many as are said."""
    between = set(link.between)
    every = {Sense.ALL, Sense.EACH} if link.kind in _ANY else {Sense.ALL}
    if every & claim.about and len(between) < count:
        return False
    if claim.count is not None and claim.count != len(between):
        return False
    if len(claim.problems) < 2 or link.kind in _THROUGH:
        return claim.problems <= between
    return claim.problems == between


def _numbers_of(link: Link, among: Iterable[Sight]) -> set[Exact]:
    """Return every number that may be said of a link: those of its problems, and its own."""
    found = {exact(number) for number in link.numbers}
    for one in among:
        found |= {leaf for leaf in leaves_of(one.problem) if not isinstance(leaf, Blank)}
        found |= {one.answer} if one.answer is not None else set()
    return found


def _same_number(claim: Claimed, link: Link, _among: list[Sight]) -> bool:
    several = {Sense.ALL, Sense.BOTH} & claim.about or claim.count or len(claim.problems) > 1
    always = Sense.EACH in claim.about and not {Sense.MAKES, Sense.ANSWER} & claim.about
    back = Sense.BACK in claim.about or ({Sense.IN, Sense.HAS} & claim.about and several)
    placed = claim.place is None or {place for _, place in link.marks} == {claim.place}
    said = _sizes(claim) == {exact(link.numbers[0])}
    return bool(back or always) and placed and said and not _changes(claim)


def _same_total(claim: Claimed, link: Link, _among: list[Sight]) -> bool:
    if claim.moved is not None or not _sizes(claim) <= {exact(link.numbers[0])}:
        return False
    if claim.shifts or claim.alike:
        alike = (Who.ANSWER, Who.IT) if claim.whole > 1 else (Who.ANSWER,)
        return all(one.how is How.SAME and one.who in alike for one in claim.shifts)
    many = {Sense.ALL, Sense.BOTH, Sense.THEY, Sense.EACH} & claim.about or len(claim.problems) > 1
    made = claim.made is not None or (bool(claim.numbers) and Sense.EACH in claim.about)
    return (made and bool(many)) or (Sense.BACK in claim.about and bool(_sizes(claim)))


def _sizes(claim: Claimed) -> set[Exact]:
    """Return the numbers said with no part in a change."""
    return {*claim.numbers} | ({claim.made} if claim.made is not None else set())


def _whole(claim: Claimed) -> bool:
    """Tell whether the changes told are exact, or say only what stays."""
    stays = claim.moved is None and all(one.how is How.SAME for one in claim.shifts)
    return claim.exact or stays


def _changes(claim: Claimed) -> bool:
    return bool(claim.shifts) or claim.moved is not None


def _pair(among: Sequence[Sight], claim: Claimed) -> bool:
    """Tell whether all that a claim says of changes is true from the first to the last."""
    return holds(claim, became(among[0], among[-1]))


_SCALED = frozenset({Saying.ONE_TIMES, Saying.ONE_OVER, Saying.BY_TIMES, Saying.BY_OVER})


def _one_changes(claim: Claimed, link: Link, among: list[Sight]) -> bool:
    told = [one for one in claim.shifts if one.how is not How.SAME]
    scaled = {one.how in (How.TIMES, How.OVER) for one in told}
    if scaled != {link.saying in _SCALED}:
        return False
    of_number = [one for one in told if one.who in (Who.NUMBER, Who.IT)]
    return bool(of_number) and claim.moved is None and _pair(among, claim)


def _both_change(claim: Claimed, _link: Link, among: list[Sight]) -> bool:
    told = [one for one in claim.shifts if one.how is not How.SAME and one.who is not Who.ANSWER]
    both = [one for one in told if one.who is Who.BOTH]
    return bool(claim.moved or both or len(told) > 1) and _pair(among, claim)


def _twin(claim: Claimed, _link: Link, among: list[Sight]) -> bool:
    return bool({Sense.HELP, Sense.NEAR} & claim.about) and _of_problems(claim, among)


def _of_problems(claim: Claimed, among: list[Sight]) -> bool:
    """Tell whether only problems are spoken of, two or more by name, and what they make."""
    made = claim.made is None or claim.made in {one.answer for one in among}
    return len(claim.problems) > 1 and made and not claim.numbers and not _changes(claim)


def _inside(claim: Claimed, link: Link, among: list[Sight]) -> bool:
    if link.saying is Saying.TOGETHER:
        sizes = [exact(number) for number in link.numbers]
        said = bool({Sense.IS, Sense.MAKES} & claim.about) and not _changes(claim)
        named = claim.whole == 3 and not _sizes(claim)
        return said and (named or _sizes(claim) in (set(sizes[:3]), set(sizes[3:])))
    about = {Sense.HELP, Sense.IN} & claim.about and Sense.ANSWER not in claim.about
    return bool(about) and _of_problems(claim, among)


def _turned(claim: Claimed, _link: Link, _among: list[Sight]) -> bool:
    if claim.moved or any(one.how is not How.SAME for one in claim.shifts):
        return False
    return Sense.SWITCH in claim.about or claim.alike


def _opposite(claim: Claimed, link: Link, _among: list[Sight]) -> bool:
    own = _sizes(claim) <= set(map(exact, link.numbers))
    both_facts = claim.whole == 2 and claim.made is not None and bool(claim.numbers)
    about = both_facts or bool({Sense.UNDO, Sense.FAMILY} & claim.about)
    return about and own and not claim.shifts


def _ten_times(claim: Claimed, _link: Link, among: list[Sight]) -> bool:
    if Sense.TEN in claim.about:
        return all(one.how is How.SAME for one in claim.shifts) and claim.moved is None
    return bool(claim.shifts) and _pair(among, claim) and _by(claim) <= {10, 100, 1000}


def _double_half(claim: Claimed, _link: Link, among: list[Sight]) -> bool:
    return bool(claim.shifts) and _by(claim) == {2} and _pair(among, claim)


def _by(claim: Claimed) -> set[Exact | None]:
    return {one.by for one in claim.shifts if one.how is not How.SAME}


def _feeds(claim: Claimed, link: Link, _among: list[Sight]) -> bool:
    said = _sizes(claim) <= {exact(link.numbers[0])}
    about = {Sense.ANSWER, Sense.IN} <= claim.about
    return about and said and not _changes(claim)


def _pattern(claim: Claimed, _link: Link, among: list[Sight]) -> bool:
    if not _changes(claim) or not {Sense.EACH, Sense.ALL} & claim.about:
        return False
    if all(one.how is How.SAME for one in claim.shifts) and claim.moved is None:
        return False
    return all(holds(claim, became(one, other)) for one, other in pairwise(among))


_Stated = Callable[[Claimed, Link, list[Sight]], bool]

_STATED: Mapping[LinkKind, _Stated] = {
    LinkKind.SAME_NUMBER: _same_number,
    LinkKind.SAME_TOTAL: _same_total,
    LinkKind.ONE_CHANGES: _one_changes,
    LinkKind.BOTH_CHANGE: _both_change,
    LinkKind.FRIENDLY_TWIN: _twin,
    LinkKind.INSIDE_A_WAY: _inside,
    LinkKind.TURNED_AROUND: _turned,
    LinkKind.OPPOSITE: _opposite,
    LinkKind.TEN_TIMES: _ten_times,
    LinkKind.DOUBLE_HALF: _double_half,
    LinkKind.FEEDS_NEXT: _feeds,
    LinkKind.PATTERN: _pattern,
}

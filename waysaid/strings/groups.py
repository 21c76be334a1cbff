"""Links among any number of problems: a number or an answer that comes back."""

from collections.abc import Iterator, Sequence

from waysaid.number import Blank, Number, number_text
from waysaid.strings.leaf import leaves_of, written_of
from waysaid.strings.link import Link, LinkKind, Place, Saying
from waysaid.strings.meets import answer_place
from waysaid.strings.sight import Sight


def same_number(seen: Sequence[Sight]) -> Iterator[Link]:
    """Yield, for each number that two or more problems have, the one link among them all."""
    numbers = {leaf for one in seen for leaf in leaves_of(one.problem)}
    for number in sorted(leaf for leaf in numbers if not isinstance(leaf, Blank)):
        having = [one for one in seen if number in leaves_of(one.problem)]
        if len(having) > 1:
            places = [leaves_of(one.problem).index(number) for one in having]
            marks = tuple((one.at, at) for one, at in zip(having, places, strict=True))
            forms = _forms(having, places)
            saying = Saying.NUMBER_BACK_WRITTEN if len(forms) > 1 else Saying.NUMBER_BACK
            yield _group(LinkKind.SAME_NUMBER, having, saying, forms[:2], marks)


def _forms(having: Sequence[Sight], places: Sequence[int]) -> tuple[Number, ...]:
    """Return the ways in which one number is written, each once, in order."""
    leaves = [written_of(one.problem)[at] for one, at in zip(having, places, strict=True)]
    forms = {number_text(leaf): leaf for leaf in leaves if not isinstance(leaf, Blank)}
    return tuple(forms.values())


def same_total(seen: Sequence[Sight]) -> Iterator[Link]:
    """Yield, for each answer that two or more problems share, the one link among them all."""
    for answer in sorted({one.answer for one in seen if one.answer is not None}):
        having = [one for one in seen if one.answer == answer]
        if len({one.problem for one in having}) > 1:
            marks = tuple((one.at, answer_place(one)) for one in having)
            numbers = (having[0].shown,)
            yield _group(LinkKind.SAME_TOTAL, having, Saying.TOTAL_BACK, numbers, marks)


def _group(
    kind: LinkKind,
    having: Sequence[Sight],
    saying: Saying,
    numbers: tuple[Number, ...],
    marks: tuple[tuple[int, Place], ...],
) -> Link:
    between = tuple(one.at for one in having)
    return Link(kind, between, tuple(one.filled for one in having), saying, numbers, marks)

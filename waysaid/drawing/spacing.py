"""Where the marks of an open number line stand, and which hop arches over which.

A sketch, never to scale: marks stand in the order of their numbers, as far apart as their labels
and the labels of the hops need; a hop by a number with more digits gets more of the spare room.
Only the order of the numbers and the lengths of the labels count, so that right and wrong work
look alike.
"""

from dataclasses import dataclass, replace
from itertools import pairwise

from waysaid.drawing.metrics import text_width
from waysaid.drawing.story import Gap, Hop, Story
from waysaid.number import Exact, number_text

LEAST_SPAN = {1: 11, 2: 20}
"""How long a hop is at least, in tenths of the label size, by the digits of its number (our
choice); `LONGEST_SPAN` for three digits and more."""
LONGEST_SPAN = 26
LEAST_HOP = 6
"""How long each of several equal hops is at least, in tenths of the label size (our choice)."""
SPARE = {1: 2, 2: 5}
"""A hop's share of the spare room, by the digits of its number (our choice); else `MOST_SPARE`."""
MOST_SPARE = 6


@dataclass(frozen=True, slots=True)
class Arch:
    """A hop between two marks (their places from the left), and where its label may stand.

    `above` tells its side of the line; `level` 1 is nearest to the line. `over` are the two marks
    between which the label stands free of higher arches. `count` equal hops may stand for one.
    """

    low: int
    high: int
    label: str
    digits: int
    above: bool
    level: int
    over: tuple[int, int]
    count: int = 1


@dataclass(frozen=True, slots=True)
class Brace:
    """A gap marked over all the hops, between two marks; `ends` tells which of its ends are here.

    An end that is not here is on another row of the line.
    """

    low: int
    high: int
    label: str
    ends: tuple[bool, bool] = (True, True)


@dataclass(frozen=True, slots=True)
class Plan:
    """What stands on the line, before it has places."""

    labels: tuple[str, ...]
    arches: tuple[Arch, ...]
    braces: tuple[Brace, ...]


def plan_of(story: Story) -> Plan:
    """Return the marks in number order (equal numbers share one), arches and braces."""
    said: dict[Exact, str] = {}
    for hop in story.hops:
        for mark in (hop.start, hop.end):
            said[mark.value] = said.get(mark.value) or mark.text
    for gap in story.gaps:
        for mark in (gap.low, gap.high):
            said[mark.value] = said.get(mark.value) or mark.text
    order = {value: place for place, value in enumerate(sorted(said))}
    forward = bool(story.hops) and story.hops[0].forward
    arches = _levelled([_flat(hop, order, forward) for hop in story.hops])
    braces = tuple(_brace(gap, order) for gap in story.gaps)
    return Plan(tuple(said[value] for value in order), arches, braces)


def _flat(hop: Hop, order: dict[Exact, int], forward: bool) -> Arch:
    """Place a hop: those that go the way of the first one above the line, the others below."""
    low, high = sorted((order[hop.start.value], order[hop.end.value]))
    amount = hop.amount.value if hop.amount.form is None else hop.amount.form
    digits = len(number_text(amount).lstrip("-"))
    above = hop.forward is forward
    return Arch(low, high, hop.label, digits, above, 1, (low, high), hop.count)


def _brace(gap: Gap, order: dict[Exact, int]) -> Brace:
    return Brace(order[gap.low.value], order[gap.high.value], gap.label)


def overlap(one: Arch, other: Arch) -> bool:
    """Tell whether two arches on one side of the line share a stretch of it."""
    return one.above is other.above and one.low < other.high and other.low < one.high


def _levelled(arches: list[Arch]) -> tuple[Arch, ...]:
    """Raise longer arches over the shorter ones they share a stretch with."""
    by_length = sorted(range(len(arches)), key=lambda at: arches[at].high - arches[at].low)
    level: dict[int, int] = {}
    for at in by_length:
        under = [level[other] for other in level if overlap(arches[at], arches[other])]
        level[at] = 1 + max(under, default=0)
    return tuple(
        replace(
            arch,
            level=level[at],
            over=_free(arch, [arches[o] for o in level if level[o] > level[at]]),
        )
        for at, arch in enumerate(arches)
    )


def _free(arch: Arch, higher: list[Arch]) -> tuple[int, int]:
    """Return the longest stretch under which no higher arch comes down to the line."""
    feet = {foot for other in higher if overlap(arch, other) for foot in (other.low, other.high)}
    cuts = [arch.low, *sorted(foot for foot in feet if arch.low < foot < arch.high), arch.high]
    stretches = list(pairwise(cuts))
    return max(stretches, key=lambda ends: ends[1] - ends[0])


def parted(plan: Plan, count: int) -> tuple[Plan, ...]:
    """Return the plan as `count` plans of about as many marks, first told first.

    Neighbours share the mark between them. The plan alone where a hop would be cut, where
    a gap is marked that is not over all of it, or where there are too few marks.
    """
    last = len(plan.labels) - 1
    cuts = [last * part // count for part in range(count + 1)]
    spans = [(one.low, one.high) for one in plan.arches]
    whole = len(plan.braces) < 2 and all(one.high - one.low == last for one in plan.braces)
    if last < count or not whole or any(low < cut < high for cut in cuts for low, high in spans):
        return (plan,)
    parts = [_part(plan, low, high) for low, high in pairwise(cuts)]
    first = plan.arches[0]
    return tuple(parts if first.low == 0 else reversed(parts))


def _part(plan: Plan, low: int, high: int) -> Plan:
    arches = tuple(
        replace(
            arch,
            low=arch.low - low,
            high=arch.high - low,
            over=(arch.over[0] - low, arch.over[1] - low),
        )
        for arch in plan.arches
        if low <= arch.low and arch.high <= high
    )
    braces = tuple(
        Brace(0, high - low, one.label if low == 0 else "", (low == 0, high == one.high))
        for one in plan.braces
    )
    return Plan(plan.labels[low : high + 1], arches, braces)


def edge(plan: Plan, size: int) -> tuple[int, int]:
    """Return how far the line goes on to the left of its first mark and right of its last."""
    first, last = (text_width(plan.labels[place], size) for place in (0, -1))
    return max(size * 6 // 10, first // 2 + 2), max(size * 6 // 10, last // 2 + 2)


def natural(plan: Plan, size: int) -> tuple[int, ...]:
    """Return the x of every mark from the first, as near together as labels of this size allow."""
    needs = [*_label_needs(plan, size), *_hop_needs(plan, size)]
    places = [0] * len(plan.labels)
    for place in range(1, len(places)):
        ends = [(places[low] + room) for low, high, room in needs if high == place]
        places[place] = max([places[place - 1] + size // 2, *ends])
    return tuple(places)


def _label_needs(plan: Plan, size: int) -> list[tuple[int, int, int]]:
    """Return (mark, later mark, room) for neighbours and for said neighbours."""
    half = [text_width(label, size) // 2 for label in plan.labels]
    gap = size // 4
    said = [place for place, label in enumerate(plan.labels) if label]
    every = range(len(plan.labels))
    pairs = [*pairwise(every), *pairwise(said)]
    return [(low, high, half[low] + half[high] + gap) for low, high in pairs]


def _hop_needs(plan: Plan, size: int) -> list[tuple[int, int, int]]:
    gap = size // 4
    needs = [(brace.low, brace.high, text_width(brace.label, size) + gap) for brace in plan.braces]
    for arch in plan.arches:
        needs.append((*arch.over, text_width(arch.label, size) + gap))
        least = LEAST_SPAN.get(arch.digits, LONGEST_SPAN) * size // 10
        needs.append((arch.low, arch.high, max(least, arch.count * size * LEAST_HOP // 10)))
    return needs


def stretched(plan: Plan, places: tuple[int, ...], spare: int) -> tuple[int, ...]:
    """Return the places with the spare room shared out: longer numbers, longer hops."""
    shares = _shares(plan)
    total = sum(shares) or 1
    moved, so_far = [places[0]], 0
    for place, share in zip(places[1:], shares, strict=True):
        so_far += share
        moved.append(place + spare * so_far // total)
    return tuple(moved)


def _shares(plan: Plan) -> list[int]:
    """Return each stretch's share: that of the shortest hop over it, split over its stretches."""
    over = [_shortest(plan, place) for place in range(len(plan.labels) - 1)]
    whole = 60
    return [
        whole
        if arch is None
        else whole * arch.count * SPARE.get(arch.digits, MOST_SPARE) // over.count(arch)
        for arch in over
    ]


def _shortest(plan: Plan, place: int) -> Arch | None:
    covering = [arch for arch in plan.arches if arch.low <= place < arch.high]
    return min(covering, key=lambda arch: (arch.high - arch.low, arch.digits), default=None)

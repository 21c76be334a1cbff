"""Equal hops on the open line: groups counted, multiplied up, taken out, or one too many.

`10 x 6 = 60` is one hop over ten small ones, from a start that nobody named; what is put right
afterwards is a hop of its own. Where each group of hops ends is written only where it was said.
"""

from dataclasses import dataclass, replace

from waysaid.drawing.equations import line_of
from waysaid.drawing.groups import Cut, Groups, groups_of, piece_of, placed
from waysaid.drawing.line import draw_line
from waysaid.drawing.scene import Scene
from waysaid.drawing.story import UNSAID, Gap, Hop, Mark, Story, hops_of
from waysaid.drawing.telling import Frame, Picture, Telling
from waysaid.drawing.words import phrase
from waysaid.number import Blank, Exact, Language, Operation, Sign, apply, exact
from waysaid.ways import Kind, Step

MOST_HOPS = 10
"""More equal hops than this are drawn as one (our choice: more are no longer counted)."""


def hops_along(telling: Telling) -> Story | None:
    """Return a told product or quotient as hops; None where the steps are no such hops."""
    groups = groups_of(telling.problem)
    if groups is None or not telling.steps:
        return None
    trail = _Trail(groups)
    for place, step in enumerate(telling.steps):
        if not trail.add(step, telling.unsaid(place)):
            return None
    return trail.story()


def draw_hops(story: Story, telling: Telling, frame: Frame, lang: Language) -> Scene:
    """Return the hops on an open line; the count of the groups over them says that it is one."""
    gaps = tuple(replace(gap, label=_counted(gap.label, lang)) for gap in story.gaps)
    return draw_line(replace(story, gaps=gaps), telling, frame, lang, Picture.HOPS)


def _counted(count: str, lang: Language) -> str:
    return phrase(lang, "one-hop" if count == "1" else "hops", number=count)


@dataclass(frozen=True, slots=True)
class _Leap:
    """A piece that is hopped at once: what it makes, of how many hops, and what was said."""

    product: Mark
    count: int
    name: str

    def written(self, hop: Hop) -> Hop:
        """Return a hop by this piece with its small hops and its words."""
        return replace(hop, count=self.count, name=self.name)


class _Trail:
    """The hops so far, and where they have come to."""

    def __init__(self, groups: Groups) -> None:
        self.groups = groups
        self.hops: list[Hop] = []
        self.waiting: _Leap | None = None
        self.count: Mark | None = None
        self.back = False
        self.rest = False

    def add(self, step: Step, unsaid: frozenset[str]) -> bool:
        """Take in one step; False where it is no hop."""
        left = step.equation.left
        if step.kind is Kind.SPLIT and not isinstance(left, Operation | Blank):
            return True
        leap = self._leap_of(step, unsaid)
        if leap is not None:
            return self._leap(leap)
        hops = hops_of(step, unsaid)
        return bool(hops) and self._go(hops, step)

    def _leap_of(self, step: Step, unsaid: frozenset[str]) -> _Leap | None:
        """Return the piece of a step; none for a quotient, or one that goes on from a result."""
        piece = piece_of(step, unsaid)
        found = None if piece is None else placed(piece, self.groups)
        if piece is None or found is None or found.shared:
            return None
        if found.cut is Cut.BOTH and step.kind is Kind.SCALE:
            return None
        if self.hops and _told(self.hops[-1].end) in (piece.one.value, piece.other.value):
            return None
        count = found.part.value
        few = found.cut is not Cut.BOTH and isinstance(count, int) and 1 <= count <= MOST_HOPS
        name = line_of(step, unsaid | {"result"})
        return _Leap(found.product, int(count) if few else 1, name)

    def _leap(self, leap: _Leap) -> bool:
        """Hop on by a whole piece; one that is taken off waits for the step that says so."""
        if self.back:
            waits, self.waiting = self.waiting, leap
            return waits is None
        if not self.hops:
            hop = Hop(UNSAID, Sign.PLUS, leap.product, leap.product, True)
        else:
            start = self.hops[-1].end
            end = Mark(start.value + leap.product.value, False)
            hop = Hop(start, Sign.PLUS, leap.product, end, True)
        self.hops.append(leap.written(hop))
        return not self.rest

    def _go(self, hops: tuple[Hop, ...], step: Step) -> bool:
        if step.kind is Kind.GATHER:
            self.count = hops[-1].end
            return True
        hop = hops[0]
        if self.groups.product is not None and step.kind is Kind.TAKE and len(hops) == 1:
            return self._taken(hop)
        if self._sums(hops):
            return True
        if len(hops) > 1:
            return False
        if not self.hops:
            if hop.start.value == hop.amount.value and hop.start.value:
                self.hops.append(Hop(UNSAID, Sign.PLUS, hop.start, hop.start, True, name=""))
            self.hops.append(_on(hop.start, hop))
            return True
        if hop.start.value != _told(self.hops[-1].end):
            return False
        self.hops.append(_on(self.hops[-1].end, hop))
        return True

    def _sums(self, hops: tuple[Hop, ...]) -> bool:
        """Name the place that hops have come to, where a sum of what they make says it."""
        terms = [hops[0].start.value, *(hop.amount.value for hop in hops)]
        if any(hop.sign is not Sign.PLUS for hop in hops):
            return False
        made = [hop.amount.value for hop in self.hops]
        if len(terms) == 2:
            return self._meets(terms, made, hops[-1].end)
        if terms != made[: len(terms)] or len(terms) < 2:
            return False
        return self._end_at(len(terms) - 1, hops[-1].end)

    def _meets(self, terms: list[Exact], made: list[Exact], end: Mark) -> bool:
        for place in range(1, len(made)):
            here = _told(self.hops[place - 1].end)
            if sorted(terms) == sorted((here, made[place])):
                return self._end_at(place, end)
        return False

    def _end_at(self, place: int, end: Mark) -> bool:
        """Write where a hop ends as it was said, at the place that the hops have come to."""
        end = _at(self.hops[place].end.value, end)
        self.hops[place] = replace(self.hops[place], end=end)
        if place + 1 < len(self.hops):
            self.hops[place + 1] = replace(self.hops[place + 1], start=end)
        return True

    def _taken(self, hop: Hop) -> bool:
        """Hop back by the piece told just before, or on to the number by what is left over."""
        last = self.waiting
        if last is None and len(self.hops) == 1 and not self.back:
            return self._first_taken(hop)
        if self.back:
            if last is None or last.product.value != hop.amount.value:
                return False
            here, self.waiting = self.hops[-1].end, None
            self.hops.append(last.written(_on(here, hop)))
            return _told(here) == hop.start.value
        return self._left_over(hop)

    def _first_taken(self, hop: Hop) -> bool:
        only = self.hops[0]
        if only.amount.value != hop.amount.value or only.name is None:
            return self._left_over(hop)
        if hop.start.value != exact(self.groups.product or 0):
            return False
        self.hops = [replace(_on(hop.start, hop), count=only.count, name=only.name)]
        self.back = True
        return True

    def _left_over(self, hop: Hop) -> bool:
        """Hop on from where the groups came to, by what is left over."""
        if not self.hops or hop.amount.value != _told(self.hops[-1].end):
            return False
        here = self.hops[-1].end
        here = here if here.said else _at(here.value, hop.amount)
        self.hops[-1] = replace(self.hops[-1], end=here)
        end = _at(here.value + 1, hop.start)
        self.hops.append(Hop(here, Sign.PLUS, hop.end, end, False))
        self.rest = True
        return True

    def _forward(self) -> None:
        """Turn round the one piece that was taken off at once: 63 − 60 = 3 is 60, and 3 more."""
        only = self.hops[0]
        end = _at(only.amount.value, only.amount)
        self.hops = [replace(only, start=UNSAID, sign=Sign.PLUS, end=end)]
        self._left_over(Hop(only.start, Sign.MINUS, only.amount, only.end, True))

    def story(self) -> Story | None:
        """Return the hops as a story, with the count of the groups over them."""
        if self.back and len(self.hops) == 1 and self.waiting is None:
            self._forward()
        if self.waiting is not None:
            if not self.back:
                return None
            here, last = self.hops[-1].end, self.waiting
            end = Mark(here.value - last.product.value, False)
            self.hops.append(last.written(Hop(here, Sign.MINUS, last.product, end, True)))
        if not self.hops or any(hop.still for hop in self.hops):
            return None
        return Story(tuple(self.hops), self._gaps())

    def _gaps(self) -> tuple[Gap, ...]:
        if self.count is None or not self.count.said:
            return ()
        hops = self.hops[:-1] if self.rest else self.hops
        ends = sorted((hops[0].start, hops[-1].end), key=lambda mark: mark.value)
        if ends[0].value == ends[1].value:
            return ()
        return (Gap(ends[0], ends[1], self.count.text),)


def _told(mark: Mark) -> Exact:
    """Return the number that was said of a place, where it may be another than what it comes to."""
    return mark.value if mark.form is None else exact(mark.form)


def _at(value: Exact, told: Mark) -> Mark:
    """Return a place with what was said of it, so that right and wrong stand alike."""
    return Mark(value, told.said, told.value if told.form is None else told.form)


def _on(start: Mark, hop: Hop) -> Hop:
    """Return a hop that goes on from a place by what it was said to go, wherever it was to end."""
    start = start if start.said else _at(start.value, hop.start)
    end = _at(apply(hop.sign, start.value, hop.amount.value), hop.end)
    return replace(hop, start=start, end=end)

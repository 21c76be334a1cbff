"""Patterns in products and quotients: a factor that steps, or numbers that are scaled each time."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise

from waysaid.number import Exact, Sign, exact
from waysaid.strings.factor_pairs import whole_ratio
from waysaid.strings.link import Link, LinkKind, Place, Saying
from waysaid.strings.meets import answer_place
from waysaid.strings.runs import runs
from waysaid.strings.show import change, gap, like, scaling
from waysaid.strings.sight import Sight


@dataclass(frozen=True, slots=True)
class _Step:
    """One factor that changes by so much, and the answer by so much."""

    form: str
    place: int
    by: Exact
    answer_by: Exact


@dataclass(frozen=True, slots=True)
class _Scale:
    """How many times as big each factor becomes, by its place, and the answer."""

    form: str
    by: tuple[Exact, ...]
    answer_by: Exact


def product_patterns(seen: Sequence[Sight]) -> Iterator[Link]:
    """Yield the link of each longest run of products or quotients that keeps one rule."""
    steps = [_step(one, other) for one, other in pairwise(seen)]
    for run in runs(steps):
        step = steps[run.start]
        if step is not None:
            yield _stepped(seen[run.start : run.stop], step)
    scales = [_scale(one, other) for one, other in pairwise(seen)]
    for run in runs(scales):
        scale = scales[run.start]
        said = None if scale is None else _scale_said(seen[run.start], scale)
        if scale is not None and said is not None:
            yield _scaled(seen[run.start : run.stop], scale, *said)


def grown_answers(seen: Sequence[Sight]) -> Iterator[Link]:
    """Yield the link of each run in which every answer is whole times the one before."""
    growths = [_growth(one, other) for one, other in pairwise(seen)]
    for run in runs(growths):
        part, by = seen[run.start : run.stop], growths[run.start]
        times = whole_ratio(by)
        if by is None or times is None:
            continue
        shows = [one.filled for one in part]
        shows += [scaling(old.shown, new.shown) for old, new in pairwise(part)]
        saying = Saying.ANSWERS_GROW if by > 1 else Saying.ANSWERS_SHRINK
        marks = tuple((one.at, answer_place(one)) for one in part)
        yield _pattern(part, shows, (saying, (times,)), marks)


def _growth(first: Sight, second: Sight) -> Exact | None:
    if not first.answer or not second.answer or first.answer == second.answer:
        return None
    return exact(Fraction(second.answer) / first.answer)


def _step(first: Sight, second: Sight) -> _Step | None:
    if first.form != second.form:
        return None
    pairs = list(zip(first.factors, second.factors, strict=True))
    moving = [at for at, (old, new) in enumerate(pairs) if old.size != new.size]
    if len(moving) != 1 or pairs[moving[0]][0].sign is Sign.OVER:
        return None
    old, new = pairs[moving[0]]
    by, answer_by = exact(new.size - old.size), exact(second.total - first.total)
    return _Step(first.form, moving[0], by, answer_by) if answer_by else None


def _scale(first: Sight, second: Sight) -> _Scale | None:
    if first.form != second.form or not first.factors or not first.answer or not second.answer:
        return None
    pairs = zip(first.factors, second.factors, strict=True)
    by = tuple(exact(Fraction(new.size) / old.size) for old, new in pairs if old.size)
    if len(by) != len(first.factors) or all(one == 1 for one in by):
        return None
    return _Scale(first.form, by, exact(Fraction(second.total) / first.total))


_Said = tuple[Saying, tuple[Exact, ...]]


def _stepped(run: Sequence[Sight], step: _Step) -> Link:
    shows = [
        change(old.factors[step.place].shown, new.factors[step.place].shown)
        for old, new in pairwise(run)
    ]
    shows += [change(old.shown, new.shown) for old, new in pairwise(run)]
    saying = Saying.STEPS_UP if step.by > 0 else Saying.STEPS_DOWN
    by = like(gap(step.by, 0), run[0].factors[step.place].shown)
    numbers = (by, like(gap(step.answer_by, 0), run[0].shown))
    marks = tuple((one.at, one.factors[step.place].place) for one in run)
    between = tuple(one.at for one in run)
    return Link(LinkKind.PATTERN, between, tuple(shows), saying, numbers, marks)


def _scale_said(first: Sight, scale: _Scale) -> _Said | None:
    """Return what to say of numbers that are scaled; None where no child would see it."""
    moving = [at for at, by in enumerate(scale.by) if by != 1]
    by = scale.by[moving[0]]
    times = whole_ratio(by)
    if times is None or len(moving) > 2:
        return None
    over = first.factors[moving[0]].sign is Sign.OVER
    if len(moving) == 1:
        if "=" in first.form and over:
            return None
        return _ONE_SCALED[over, by > 1], (times,)
    if scale.answer_by != 1:
        return None
    if first.factors[moving[0]].sign is first.factors[moving[1]].sign:
        return Saying.TRADES, (times,)
    return (Saying.BOTH_GROW if by > 1 else Saying.BOTH_SHRINK), (times,)


_ONE_SCALED = {
    (False, True): Saying.GROWS,
    (False, False): Saying.SHRINKS,
    (True, True): Saying.BY_GROWS,
    (True, False): Saying.BY_SHRINKS,
}


def _scaled(
    run: Sequence[Sight], scale: _Scale, saying: Saying, numbers: tuple[Exact, ...]
) -> Link:
    moving = [at for at, by in enumerate(scale.by) if by != 1]
    shows = [
        scaling(old.factors[at].shown, new.factors[at].shown)
        for at in moving
        for old, new in pairwise(run)
    ]
    if scale.answer_by == 1:
        shows += [one.filled for one in run]
    else:
        shows += [scaling(old.shown, new.shown) for old, new in pairwise(run)]
    marks = tuple((one.at, one.factors[at].place) for one in run for at in moving)
    return _pattern(run, shows, (saying, numbers), marks)


def _pattern(
    run: Sequence[Sight],
    shows: Sequence[str],
    said: _Said,
    marks: tuple[tuple[int, Place], ...],
) -> Link:
    between = tuple(one.at for one in run)
    return Link(LinkKind.PATTERN, between, tuple(shows), *said, marks)

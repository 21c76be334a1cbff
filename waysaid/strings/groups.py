"""Links among any number of problems: a number or an answer that comes back, and patterns."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise

from waysaid.number import Blank, Exact
from waysaid.strings.leaf import leaves_of
from waysaid.strings.link import Link, LinkKind, Place, Saying
from waysaid.strings.meets import answer_place
from waysaid.strings.show import change, gap
from waysaid.strings.sight import Sight

SHORTEST = 3
"""A pattern is one rule through three problems or more (the design's definition)."""


def same_number(seen: Sequence[Sight]) -> Iterator[Link]:
    """Yield, for each number that two or more problems have, the one link among them all."""
    numbers = {leaf for one in seen for leaf in leaves_of(one.problem)}
    for number in sorted(leaf for leaf in numbers if not isinstance(leaf, Blank)):
        having = [one for one in seen if number in leaves_of(one.problem)]
        if len(having) > 1:
            marks = tuple((one.at, leaves_of(one.problem).index(number)) for one in having)
            yield _group(LinkKind.SAME_NUMBER, having, Saying.NUMBER_BACK, (number,), marks)


def same_total(seen: Sequence[Sight]) -> Iterator[Link]:
    """Yield, for each answer that two or more problems share, the one link among them all."""
    for answer in sorted({one.answer for one in seen}):
        having = [one for one in seen if one.answer == answer]
        if len({one.problem for one in having}) > 1:
            marks = tuple((one.at, answer_place(one)) for one in having)
            yield _group(LinkKind.SAME_TOTAL, having, Saying.TOTAL_BACK, (answer,), marks)


def _group(
    kind: LinkKind,
    having: Sequence[Sight],
    saying: Saying,
    numbers: tuple[Exact, ...],
    marks: tuple[tuple[int, Place], ...],
) -> Link:
    between = tuple(one.at for one in having)
    return Link(kind, between, tuple(one.filled for one in having), saying, numbers, marks)


@dataclass(frozen=True, slots=True)
class _Rule:
    """What happens from one problem to the next: to each number by its place, and the answer."""

    form: str
    by: tuple[Exact, ...]
    answer_by: Exact


def _rule(first: Sight, second: Sight) -> _Rule | None:
    if first.form != second.form or not first.terms:
        return None
    by = tuple(new.size - old.size for old, new in zip(first.terms, second.terms, strict=True))
    return _Rule(first.form, by, second.answer - first.answer) if any(by) else None


def patterns(seen: Sequence[Sight]) -> Iterator[Link]:
    """Yield the link of each longest run of problems that keeps one rule.

    The rule is on every number, or, where the numbers keep none, on the answers alone.
    """
    rules = [_rule(one, other) for one, other in pairwise(seen)]
    ruled: list[range] = []
    for run in _runs([rule or at for at, rule in enumerate(rules)]):
        rule = rules[run.start]
        if rule is not None:
            ruled.append(run)
            yield _number_pattern(seen[run.start : run.stop], rule)
    answers = [second.answer - first.answer for first, second in pairwise(seen)]
    for run in _runs(answers):
        if answers[run.start] and not any(set(run) <= set(other) for other in ruled):
            yield _answer_pattern(seen[run.start : run.stop], answers[run.start])


def _runs(steps: Sequence[object]) -> Iterator[range]:
    """Yield the problems of each longest run of equal steps, as a range of their indexes."""
    start = 0
    for at in range(1, len(steps) + 1):
        if at == len(steps) or steps[at] != steps[start]:
            if at - start + 1 >= SHORTEST:
                yield range(start, at + 1)
            start = at


def _number_pattern(run: Sequence[Sight], rule: _Rule) -> Link:
    moving = [place for place, by in enumerate(rule.by) if by]
    shows = [
        change(old.terms[place].size, new.terms[place].size)
        for place in moving
        for old, new in pairwise(run)
    ]
    steps = [change(old.answer, new.answer) for old, new in pairwise(run)]
    shows += steps if rule.answer_by else [one.filled for one in run]
    saying, numbers = _rule_said(run[0], rule, moving)
    marks = tuple((one.at, one.terms[place].place) for one in run for place in moving)
    between = tuple(one.at for one in run)
    return Link(LinkKind.PATTERN, between, tuple(shows), saying, numbers, marks)


_ONE_MOVES = {
    (True, True): Saying.UP_AND_UP,
    (False, False): Saying.DOWN_AND_DOWN,
    (True, False): Saying.UP_AND_DOWN,
    (False, True): Saying.DOWN_AND_UP,
}


def _rule_said(
    first: Sight, rule: _Rule, moving: Sequence[int]
) -> tuple[Saying, tuple[Exact, ...]]:
    by, answer_by = rule.by[moving[0]], rule.answer_by
    if len(moving) == 1:
        return _ONE_MOVES[by > 0, answer_by > 0], (gap(by, 0),)
    if answer_by:
        return (Saying.ALL_UP if answer_by > 0 else Saying.ALL_DOWN), (gap(answer_by, 0),)
    if len(moving) > 2:
        return Saying.ALL_STAY, ()
    alike = first.terms[moving[0]].sign is not first.terms[moving[1]].sign
    return (Saying.ALIKE_EACH_TIME if alike else Saying.MOVES_EACH_TIME), (gap(by, 0),)


def _answer_pattern(run: Sequence[Sight], by: Exact) -> Link:
    return Link(
        LinkKind.PATTERN,
        tuple(one.at for one in run),
        (
            *(one.filled for one in run),
            *(change(old.answer, new.answer) for old, new in pairwise(run)),
        ),
        Saying.ANSWERS_UP if by > 0 else Saying.ANSWERS_DOWN,
        (gap(by, 0),),
        tuple((one.at, answer_place(one)) for one in run),
    )

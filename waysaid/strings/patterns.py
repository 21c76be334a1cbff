"""Patterns: one rule that leads from each of three problems or more to the next."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise

from waysaid.number import Exact, Number
from waysaid.strings.link import Link, LinkKind, Saying
from waysaid.strings.meets import answer_place
from waysaid.strings.product_patterns import grown_answers, product_patterns
from waysaid.strings.runs import runs
from waysaid.strings.show import change, gap, like
from waysaid.strings.sight import Sight


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
    return _Rule(first.form, by, second.total - first.total) if any(by) else None


def patterns(seen: Sequence[Sight]) -> Iterator[Link]:
    """Yield the link of each longest run of problems that keeps one rule.

    The rule is on every number, or, where the numbers keep none, on the answers alone.
    """
    ruled = [*_sum_patterns(seen), *product_patterns(seen)]
    yield from ruled
    for link in (*_answer_patterns(seen), *grown_answers(seen)):
        if not any(set(link.between) <= set(other.between) for other in ruled):
            yield link


def _sum_patterns(seen: Sequence[Sight]) -> Iterator[Link]:
    rules = [_rule(one, other) for one, other in pairwise(seen)]
    for run in runs(rules):
        rule = rules[run.start]
        if rule is not None:
            yield _number_pattern(seen[run.start : run.stop], rule)


def _answer_patterns(seen: Sequence[Sight]) -> Iterator[Link]:
    steps = [_answer_step(one, other) for one, other in pairwise(seen)]
    for run in runs(steps):
        by = steps[run.start]
        if by is not None:
            yield _answer_pattern(seen[run.start : run.stop], by)


def _answer_step(first: Sight, second: Sight) -> Exact | None:
    """Return by how much the answer changes; None where it does not, or is no number."""
    if first.answer is None or second.answer is None:
        return None
    return (second.answer - first.answer) or None


def _number_pattern(run: Sequence[Sight], rule: _Rule) -> Link:
    moving = [place for place, by in enumerate(rule.by) if by]
    shows = [
        change(old.terms[place].shown, new.terms[place].shown)
        for place in moving
        for old, new in pairwise(run)
    ]
    steps = [change(old.shown, new.shown) for old, new in pairwise(run)]
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
) -> tuple[Saying, tuple[Number, ...]]:
    term, answer_by = first.terms[moving[0]], rule.answer_by
    by = rule.by[moving[0]]
    step, answer_step = like(gap(by, 0), term.shown), like(gap(answer_by, 0), first.shown)
    if len(moving) == 1:
        return _ONE_MOVES[by > 0, answer_by > 0], (step,)
    if answer_by:
        return (Saying.ALL_UP if answer_by > 0 else Saying.ALL_DOWN), (answer_step,)
    if len(moving) > 2:
        return Saying.ALL_STAY, ()
    alike = first.terms[moving[0]].sign is not first.terms[moving[1]].sign
    return (Saying.ALIKE_EACH_TIME if alike else Saying.MOVES_EACH_TIME), (step,)


def _answer_pattern(run: Sequence[Sight], by: Exact) -> Link:
    return Link(
        LinkKind.PATTERN,
        tuple(one.at for one in run),
        (
            *(one.filled for one in run),
            *(change(old.shown, new.shown) for old, new in pairwise(run)),
        ),
        Saying.ANSWERS_UP if by > 0 else Saying.ANSWERS_DOWN,
        (like(gap(by, 0), run[0].shown),),
        tuple((one.at, answer_place(one)) for one in run),
    )

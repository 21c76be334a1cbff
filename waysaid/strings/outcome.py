"""What a change of a string does to its answers, and why: the actual answers, compared."""

from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum
from fractions import Fraction

from waysaid.number import (
    Form,
    Language,
    Number,
    Print,
    Problem,
    Sign,
    answer_text,
    as_written_in,
    exact,
    has_form,
    number_text,
    remainder_of,
)
from waysaid.strings.change import Change, Does, what_if
from waysaid.strings.outcome_words import Answers, Why, answers_say, why_says
from waysaid.strings.sight import Sight, sights


@dataclass(frozen=True, slots=True)
class Outcome:
    """What the answers of the changed problems do, by how much, and why where one reason holds.

    `answers` has each one before and after, as text; `amount` is that of the change, from 0 up.
    """

    do: Answers
    by: Number
    why: Why | None
    amount: int
    answers: tuple[tuple[str, str], ...]

    def says(self, language: Language) -> str:
        """Return one sentence for the desk; empty where nothing was changed."""
        if not self.answers:
            return ""
        listed = ", ".join(f"{old} → {new}" for old, new in self.answers)
        by = listed if self.do is Answers.UNLIKE else number_text(self.by)
        said = answers_say(self.do, by, len(self.answers), language)
        if self.why is None:
            return f"{said}."
        return f"{said}: {why_says(self.why, self.amount, language)}."


_Pair = tuple[Sight, Sight]


def outcome(problems: Sequence[Problem], change: Change) -> Outcome:
    """Return what a change does to the answers of the problems it changes.

    Raises `ChangeError` where it cannot be made, and `NoValue` where a problem has no answer.
    """
    new = what_if(problems, change)
    rows = sorted({row for row, _ in change.places})
    old, now = sights(problems), sights(new)
    pairs = [(old[row], now[row]) for row in rows]
    do, by = _together(pairs, change.does)
    why = _why(pairs, change)
    fits = why is None or do in _DO[why]
    return Outcome(do, by, why if fits else None, abs(change.amount), tuple(map(_texts, pairs)))


def _texts(pair: _Pair) -> tuple[str, str]:
    old, new = (answer_text(one.problem, Print.TRUE) for one in pair)
    return old, new


def _together(pairs: Sequence[_Pair], does: Does) -> tuple[Answers, Number]:
    """Return what every answer does, and by how much."""
    if all(old == new for old, new in map(_texts, pairs)):
        return Answers.STAY, 0
    if not all(_counts(one) for pair in pairs for one in pair):
        return Answers.UNLIKE, 0
    more, times = _more(pairs), _times(pairs)
    scaled = does in (Does.TIMES, Does.OVER)
    return (times or more if scaled else more or times) or (Answers.UNLIKE, 0)


def _counts(sight: Sight) -> bool:
    """Tell whether the answer is a number with nothing left over."""
    return sight.answer is not None and remainder_of(sight.problem) is None


def _more(pairs: Sequence[_Pair]) -> tuple[Answers, Number] | None:
    gaps = {Fraction(new.total - old.total) for old, new in pairs}
    by = gaps.pop()
    if gaps or not by:
        return None
    shown = as_written_in(exact(abs(by)), pairs[0][1].problem)
    return (Answers.MORE if by > 0 else Answers.LESS), shown


def _times(pairs: Sequence[_Pair]) -> tuple[Answers, Number] | None:
    if not all(one.total for pair in pairs for one in pair):
        return None
    ratios = {exact(Fraction(new.total) / old.total) for old, new in pairs}
    ratio = ratios.pop()
    small = exact(1 / Fraction(ratio))
    if ratios or not (isinstance(ratio, int) or isinstance(small, int)):
        return None
    return (Answers.TIMES, ratio) if ratio > 1 else (Answers.OVER, small)


_STAYS = frozenset({Answers.STAY})
_GROWS = frozenset({Answers.MORE, Answers.TIMES, Answers.UNLIKE})
_FALLS = frozenset({Answers.LESS, Answers.OVER, Answers.UNLIKE})
_DO = {
    **dict.fromkeys((Why.GIVEN, Why.ALIKE, Why.BOTH_TIMES, Why.BOTH_OVER), _STAYS),
    **dict.fromkeys((Why.ORDER_ADDED, Why.ORDER_TAKEN, Why.ORDER_TIMES), _STAYS),
    **dict.fromkeys((Why.ONE_MORE, Why.EACH_MORE, Why.TAKEN_LESS, Why.FROM_THE_TAKEN), _GROWS),
    **dict.fromkeys((Why.ONE_LESS, Why.EACH_LESS, Why.TAKEN_MORE, Why.TO_THE_TAKEN), _FALLS),
    **dict.fromkeys((Why.GROUPS_MORE, Why.SHARED_MORE, Why.AMONG_LESS), _GROWS),
    **dict.fromkeys((Why.GROUPS_LESS, Why.SHARED_LESS, Why.AMONG_MORE), _FALLS),
    **dict.fromkeys((Why.EVERY_TIMES, Why.ONE_TIMES, Why.AMONG_OVER, Why.TWICE_TIMES), _GROWS),
    **dict.fromkeys((Why.EVERY_OVER, Why.ONE_OVER, Why.AMONG_TIMES, Why.TWICE_OVER), _FALLS),
}
"""What the answers may do for each reason; any other they do keeps no reason."""


class _Turn(Enum):
    """What is done to the chosen numbers, with its direction."""

    MORE = 1
    LESS = 2
    TIMES = 3
    OVER = 4
    SWAP = 5
    ACROSS = 6
    BACK = 7


_SCALED = {Does.TIMES: _Turn.TIMES, Does.OVER: _Turn.OVER, Does.SWAP: _Turn.SWAP}
_PLUS, _MINUS, _TIMES, _OVER = (Sign.PLUS,), (Sign.MINUS,), (Sign.TIMES,), (Sign.OVER,)
_Signs = tuple[Sign, ...]

_IN_SUMS: dict[tuple[_Turn, _Signs], Why] = {
    (_Turn.MORE, _PLUS): Why.ONE_MORE,
    (_Turn.LESS, _PLUS): Why.ONE_LESS,
    (_Turn.MORE, _MINUS): Why.TAKEN_MORE,
    (_Turn.LESS, _MINUS): Why.TAKEN_LESS,
    (_Turn.MORE, _PLUS + _PLUS): Why.EACH_MORE,
    (_Turn.LESS, _PLUS + _PLUS): Why.EACH_LESS,
    (_Turn.MORE, _PLUS + _MINUS): Why.ALIKE,
    (_Turn.LESS, _PLUS + _MINUS): Why.ALIKE,
    (_Turn.ACROSS, _PLUS + _PLUS): Why.GIVEN,
    (_Turn.BACK, _PLUS + _PLUS): Why.GIVEN,
    (_Turn.ACROSS, _PLUS + _MINUS): Why.TO_THE_TAKEN,
    (_Turn.BACK, _PLUS + _MINUS): Why.FROM_THE_TAKEN,
    (_Turn.SWAP, _PLUS + _PLUS): Why.ORDER_ADDED,
    (_Turn.SWAP, _MINUS + _MINUS): Why.ORDER_TAKEN,
}
_IN_PRODUCTS: dict[tuple[_Turn, _Signs], Why] = {
    (_Turn.TIMES, _TIMES): Why.ONE_TIMES,
    (_Turn.OVER, _TIMES): Why.ONE_OVER,
    (_Turn.TIMES, _OVER): Why.AMONG_TIMES,
    (_Turn.OVER, _OVER): Why.AMONG_OVER,
    (_Turn.TIMES, _TIMES + _TIMES): Why.TWICE_TIMES,
    (_Turn.OVER, _TIMES + _TIMES): Why.TWICE_OVER,
    (_Turn.TIMES, _TIMES + _OVER): Why.BOTH_TIMES,
    (_Turn.OVER, _TIMES + _OVER): Why.BOTH_OVER,
    (_Turn.SWAP, _TIMES + _TIMES): Why.ORDER_TIMES,
}
_OF_TWO: dict[tuple[_Turn, _Signs, _Signs], Why] = {
    (_Turn.MORE, _TIMES, _TIMES): Why.GROUPS_MORE,
    (_Turn.LESS, _TIMES, _TIMES): Why.GROUPS_LESS,
    (_Turn.MORE, _TIMES, _OVER): Why.SHARED_MORE,
    (_Turn.LESS, _TIMES, _OVER): Why.SHARED_LESS,
    (_Turn.MORE, _OVER, _TIMES): Why.AMONG_MORE,
    (_Turn.LESS, _OVER, _TIMES): Why.AMONG_LESS,
}
"""Reasons by the signs of the numbers that change, and here of the one that does not."""


def _turn(change: Change) -> _Turn:
    if change.does is Does.ADD:
        return _Turn.MORE if change.amount > 0 else _Turn.LESS
    if change.does is Does.MOVE:
        return _Turn.ACROSS if change.amount > 0 else _Turn.BACK
    return _SCALED[change.does]


def _why(pairs: Sequence[_Pair], change: Change) -> Why | None:
    """Return the one reason that holds in every changed problem; None where there is none."""
    reasons = {_reason(old, change) for old, _ in pairs}
    return reasons.pop() if len(reasons) == 1 else None


def _reason(sight: Sight, change: Change) -> Why | None:
    if "=" in sight.form:
        return None
    chosen = {place for row, place in change.places if row == sight.at}
    numbers, turn = sight.terms or sight.factors, _turn(change)
    changed = tuple(term.sign for term in numbers if term.place in chosen)
    rest = tuple(term.sign for term in numbers if term.place not in chosen)
    if sight.terms:
        if turn in (_Turn.TIMES, _Turn.OVER) and not rest:
            return Why.EVERY_TIMES if turn is _Turn.TIMES else Why.EVERY_OVER
        return _IN_SUMS.get((turn, changed))
    percents = any(has_form(term.shown, Form.PERCENT) for term in numbers if term.place in chosen)
    of_two = None if percents else _OF_TWO.get((turn, changed, rest))
    return of_two or _IN_PRODUCTS.get((turn, changed))

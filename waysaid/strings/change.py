"""What if we did that to all of them: the same string with some of its numbers changed."""

from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum, StrEnum
from fractions import Fraction

from waysaid.number import (
    Blank,
    Form,
    Language,
    NoValue,
    Number,
    Print,
    Problem,
    answer_of,
    exact,
    has_form,
    percent,
    text,
)
from waysaid.strings.filled import as_number
from waysaid.strings.leaf import leaves_of, with_leaves, written_of
from waysaid.strings.show import like

LARGEST_ANSWER = 1_000_000
"""The range of the talks: numbers to a million."""


class Does(StrEnum):
    """What a change does: add so much to a number, or make it so many times as big or small.

    One more group is to add 1 to a factor; to double, and ten times, are `TIMES` 2 and 10. Two
    numbers of a problem can be swapped, or so much moved from the left one to the right one.
    """

    ADD = "add"
    TIMES = "times"
    OVER = "over"
    SWAP = "swap"
    MOVE = "move"


_OF_TWO = frozenset({Does.SWAP, Does.MOVE})
_SCALES = frozenset({Does.TIMES, Does.OVER})


@dataclass(frozen=True, slots=True)
class Change:
    """Do one thing to the number at each place: (problem index, number's index).

    `amount` is added (taken away when negative), or the number is multiplied or divided by it;
    then it is from 1 up. It is moved from the left of two numbers to the right (back when
    negative), and means nothing where they are swapped. To a per cent so many per cent are added.
    Numbers and blanks count from 0, from left to right, both sides of an equation.
    """

    amount: int
    places: frozenset[tuple[int, int]]
    does: Does = Does.ADD


class Refusal(Enum):
    """Why a change cannot be made."""

    NO_PLACE = "no place"
    BLANK = "blank"
    BELOW_ZERO = "below zero"
    ANSWER_OUTSIDE = "answer outside"
    NOT_WHOLE = "not whole"
    NOT_BY_THAT = "not by that"
    NOT_TWO = "not two"


_SENTENCES = {
    Refusal.NO_PLACE: {
        Language.EN: "There is no number at place {place} of problem {row}; choose one that the "
        "string shows.",
        Language.ES: "No hay ningún número en el lugar {place} del problema {row}; elija uno que "
        "la serie muestre.",
    },
    Refusal.BLANK: {
        Language.EN: "Place {place} of problem {row} ({problem}) is the number to find; choose a "
        "number that is given.",
        Language.ES: "El lugar {place} del problema {row} ({problem}) es el número que se busca; "
        "elija un número dado.",
    },
    Refusal.BELOW_ZERO: {
        Language.EN: "In problem {row} ({problem}) a number would go below 0; choose a smaller "
        "change.",
        Language.ES: "En el problema {row} ({problem}) un número bajaría de 0; elija un cambio "
        "menor.",
    },
    Refusal.ANSWER_OUTSIDE: {
        Language.EN: "The answer of problem {row} ({problem}) would no longer be a number from 0 "
        "to a million; choose another change.",
        Language.ES: "La respuesta del problema {row} ({problem}) ya no sería un número de 0 a "
        "un millón; elija otro cambio.",
    },
    Refusal.NOT_WHOLE: {
        Language.EN: "In problem {row} ({problem}) the whole number at place {place} would not "
        "stay whole; choose a change that divides it.",
        Language.ES: "En el problema {row} ({problem}) el número entero del lugar {place} no "
        "quedaría entero; elija un cambio que lo divida.",
    },
    Refusal.NOT_BY_THAT: {
        Language.EN: "A number can be made 1 time as big or as small, or more; choose a whole "
        "number from 1 up.",
        Language.ES: "Un número puede hacerse 1 vez mayor o menor, o más; elija un número entero "
        "desde 1.",
    },
    Refusal.NOT_TWO: {
        Language.EN: "In problem {row} ({problem}) it takes two numbers to swap them or to move "
        "some across; choose two.",
        Language.ES: "En el problema {row} ({problem}) hacen falta dos números para cambiarlos de "
        "lugar o pasar algo de uno a otro; elija dos.",
    },
}


class ChangeError(ValueError):
    """Raised for a change that cannot be made; rows and places are counted from 0 here."""

    def __init__(self, why: Refusal, row: int, place: int, problem: Problem | None = None) -> None:
        super().__init__(why, row, place, problem)
        self.why = why
        self.row = row
        self.place = place
        self.problem = problem

    def sentence(self, language: Language) -> str:
        """Return one sentence: what is wrong, where, and what would be accepted."""
        shown = "" if self.problem is None else text(self.problem, Print.TRUE)
        pattern = _SENTENCES[self.why][language]
        return pattern.format(row=self.row + 1, place=self.place + 1, problem=shown)

    def __str__(self) -> str:
        """Return the sentence in English."""
        return self.sentence(Language.EN)


def what_if(problems: Sequence[Problem], change: Change) -> tuple[Problem, ...]:
    """Return the string with the change made at every place of it, in the same order.

    Signs and blanks stay. Raises `ChangeError` where a place does not exist or is a blank, a
    number would go below 0 or stop being whole, an answer would leave 0 to `LARGEST_ANSWER`,
    numbers are to be made less than once as big, or not two are chosen where it takes two.
    """
    _check(problems, change)
    return tuple(_changed(row, problem, change) for row, problem in enumerate(problems))


def _check(problems: Sequence[Problem], change: Change) -> None:
    if change.does in _SCALES and change.amount < 1:
        raise ChangeError(Refusal.NOT_BY_THAT, 0, 0)
    for row, place in sorted(change.places):
        if not 0 <= row < len(problems) or not 0 <= place < len(leaves_of(problems[row])):
            raise ChangeError(Refusal.NO_PLACE, row, place)


def _changed(row: int, problem: Problem, change: Change) -> Problem:
    places = sorted(place for in_row, place in change.places if in_row == row)
    if not places:
        return problem
    new = list(written_of(problem))
    old: list[Number] = []
    for place in places:
        leaf = new[place]
        if isinstance(leaf, Blank):
            raise ChangeError(Refusal.BLANK, row, place, problem)
        old.append(leaf)
    if change.does in _OF_TWO and len(places) != 2:
        raise ChangeError(Refusal.NOT_TWO, row, places[0], problem)
    for place, was, found in zip(places, old, _done(old, change), strict=True):
        refused = None if change.does is Does.SWAP else _refused(was, found)
        if refused is not None:
            raise ChangeError(refused, row, place, problem)
        new[place] = found
    changed = with_leaves(problem, new)
    if not _answer_fits(changed):
        raise ChangeError(Refusal.ANSWER_OUTSIDE, row, places[0], problem)
    return changed


def _done(numbers: Sequence[Number], change: Change) -> list[Number]:
    """Return what becomes of the chosen numbers of one problem."""
    match change.does:
        case Does.ADD:
            return [_more(one, change.amount) for one in numbers]
        case Does.TIMES:
            return [like(exact(exact(one) * change.amount), one) for one in numbers]
        case Does.OVER:
            return [like(exact(Fraction(exact(one)) / change.amount), one) for one in numbers]
        case Does.SWAP:
            return _swapped(numbers[0], numbers[1])
        case Does.MOVE:
            return [_more(numbers[0], -change.amount), _more(numbers[1], change.amount)]


def _more(number: Number, amount: int) -> Number:
    by = Fraction(amount, 100) if has_form(number, Form.PERCENT) else amount
    return like(exact(exact(number) + by), number)


def _swapped(one: Number, other: Number) -> list[Number]:
    """Return two numbers in each other's place; a per cent sign stays where it is."""
    if has_form(one, Form.PERCENT) == has_form(other, Form.PERCENT):
        return [other, one]
    new = (other, one) if has_form(one, Form.PERCENT) else (one, other)
    hundredth, times = exact(Fraction(exact(new[0])) / 100), exact(exact(new[1]) * 100)
    return [percent(hundredth), times] if new[0] is other else [times, percent(hundredth)]


def _refused(number: Number, found: Number) -> Refusal | None:
    if exact(found) < 0:
        return Refusal.BELOW_ZERO
    if isinstance(exact(number), int) and not isinstance(exact(found), int):
        return Refusal.NOT_WHOLE
    return None


def _answer_fits(problem: Problem) -> bool:
    try:
        found = as_number(answer_of(problem))
    except NoValue:
        return False
    return found is None or 0 <= found <= LARGEST_ANSWER

"""What if we did that to all of them: the same string with some of its numbers changed."""

from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum

from waysaid.number import Blank, Exact, Language, NoValue, Print, Problem, exact, solve, text
from waysaid.strings.leaf import leaves_of, with_leaves

LARGEST_ANSWER = 1000
"""The range of the talks so far: whole numbers to 1000."""


@dataclass(frozen=True, slots=True)
class Change:
    """Add `amount` (take away when negative) at each place: (problem index, number's index).

    Numbers and blanks count from 0, from left to right, both sides of an equation.
    """

    amount: int
    places: frozenset[tuple[int, int]]


class Refusal(Enum):
    """Why a change cannot be made."""

    NO_PLACE = "no place"
    BLANK = "blank"
    BELOW_ZERO = "below zero"
    ANSWER_OUTSIDE = "answer outside"


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
        "to 1000; choose another change.",
        Language.ES: "La respuesta del problema {row} ({problem}) ya no sería un número de 0 a "
        "1000; elija otro cambio.",
    },
}


@dataclass(frozen=True, slots=True)
class ChangeError(ValueError):
    """Raised for a change that cannot be made; rows and places are counted from 0 here."""

    why: Refusal
    row: int
    place: int
    problem: Problem | None = None

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
    number would go below 0, or an answer would leave 0 to `LARGEST_ANSWER`.
    """
    _check_rows(problems, change)
    return tuple(_changed(row, problem, change) for row, problem in enumerate(problems))


def _check_rows(problems: Sequence[Problem], change: Change) -> None:
    for row, place in sorted(change.places):
        if not 0 <= row < len(problems) or not 0 <= place < len(leaves_of(problems[row])):
            raise ChangeError(Refusal.NO_PLACE, row, place)


def _changed(row: int, problem: Problem, change: Change) -> Problem:
    places = {place for in_row, place in change.places if in_row == row}
    if not places:
        return problem
    new: list[Exact | Blank] = []
    for place, leaf in enumerate(leaves_of(problem)):
        if place not in places:
            new.append(leaf)
        elif isinstance(leaf, Blank):
            raise ChangeError(Refusal.BLANK, row, place, problem)
        elif leaf + change.amount < 0:
            raise ChangeError(Refusal.BELOW_ZERO, row, place, problem)
        else:
            new.append(exact(leaf + change.amount))
    changed = with_leaves(problem, new)
    if not _answer_fits(changed):
        raise ChangeError(Refusal.ANSWER_OUTSIDE, row, min(places), problem)
    return changed


def _answer_fits(problem: Problem) -> bool:
    try:
        return 0 <= solve(problem) <= LARGEST_ANSWER
    except NoValue:
        return False

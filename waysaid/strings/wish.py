"""What a teacher wishes for in a string, and the one sentence where wishes clash."""

from dataclasses import dataclass

from waysaid.number import Language, Print, text
from waysaid.strings.plain import Plain
from waysaid.strings.pool import SIGNS
from waysaid.strings.starter import GRADES
from waysaid.ways import Family, grades_of

SHORTEST, LONGEST = 3, 7
"""How many problems a composed string may have."""
MOST_MUSTS = 3
"""How many problems may be asked for by name: our choice, to bound the work."""


@dataclass(frozen=True, slots=True)
class Wish:
    """A wish for a string: `musts` must be in it, `lately` not; `seed` chooses among equals."""

    grade: int
    focus: Family
    length: int = 5
    musts: tuple[Plain, ...] = ()
    lately: frozenset[Plain] = frozenset()
    language: Language = Language.EN
    seed: int = 1


class WishError(ValueError):
    """Raised for wishes that no string can meet: names those that clash, and which one to drop."""


def check(wish: Wish) -> None:
    """Raise `WishError` for the first wishes that clash by themselves, before any is composed."""
    said = _SAID[wish.language]
    if wish.grade not in GRADES:
        raise WishError(said["grade"].format(wish.grade))
    if not SHORTEST <= wish.length <= LONGEST:
        raise WishError(said["length"].format(wish.length, SHORTEST, LONGEST))
    if wish.focus not in SIGNS:
        raise WishError(said["focus"].format(wish.focus.value, ", ".join(SIGNS)))
    if len(wish.musts) > min(MOST_MUSTS, wish.length):
        raise WishError(said["many"].format(len(wish.musts), min(MOST_MUSTS, wish.length)))
    for must in wish.musts:
        _check_must(wish, must)


def _check_must(wish: Wish, must: Plain) -> None:
    said, shown = _SAID[wish.language], text(must.problem, Print.TRUE)
    if must.sign is not SIGNS[wish.focus] or must.answer is None:
        raise WishError(said["operation"].format(shown, wish.focus.value))
    grades = grades_of(must.problem)
    if not grades.holds(wish.grade):
        raise WishError(said["range"].format(shown, grades.first, grades.last, wish.grade))
    if must in wish.lately:
        raise WishError(said["lately"].format(shown))


def nothing(wish: Wish) -> WishError:
    """Return the error for a grade in which too few problems suit the family in focus."""
    return WishError(_SAID[wish.language]["few"].format(wish.grade, wish.focus.value, wish.length))


_SAID = {
    Language.EN: {
        "grade": "Grade {0} is none of ours: a grade from 0 (kindergarten) to 6 would fit.",
        "length": "A string of {0} problems is not composed: from {1} to {2} would fit.",
        "focus": "No string is composed for ‘{0}’: leave it out, or take one of {1}.",
        "many": "{0} problems must be in it, and at most {1} may: leave one out.",
        "operation": "{0} must be in it and ‘{1}’ is in focus, and the two do not go together: "
        "leave out {0}.",
        "range": "{0} belongs to grades {1} to {2}, and grade {3} was asked for: leave out {0}.",
        "lately": "{0} must be in it and was used lately: leave out one of the two wishes.",
        "few": "In grade {0} too few problems suit ‘{1}’ for a string of {2}: a higher grade or "
        "another family would fit.",
    },
    Language.ES: {
        "grade": "El grado {0} no existe aquí: valdría uno de 0 (preescolar) a 6.",
        "length": "No se compone una cadena de {0} problemas: valdrían de {1} a {2}.",
        "focus": "No se compone ninguna cadena para ‘{0}’: quítelo, o elija entre {1}.",
        "many": "{0} problemas tienen que estar y caben {1} como mucho: quite uno.",
        "operation": "Tiene que estar {0} y se busca ‘{1}’, y no van juntos: quite {0}.",
        "range": "{0} es de los grados {1} a {2} y se pidió el grado {3}: quite {0}.",
        "lately": "Tiene que estar {0} y se usó hace poco: quite uno de los dos deseos.",
        "few": "En el grado {0} hay pocos problemas para ‘{1}’ y no llega a {2}: valdría un grado "
        "más alto u otra familia.",
    },
}

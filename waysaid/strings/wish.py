"""What a teacher wishes for in a string, and the one sentence where wishes clash."""

from dataclasses import dataclass

from waysaid.number import Language, Print, Problem, text
from waysaid.strings.starter import GRADES
from waysaid.strings.topic import FOCUSES, HOMES, Topic, topic_name, topics_of
from waysaid.ways import Family, family_name, grades_of

SHORTEST, LONGEST = 3, 7
"""How many problems a composed string may have."""
USUAL = 5
"""How many it has where nobody says."""
MOST_MUSTS = 3
"""How many problems may be asked for by name: our choice, to bound the work."""
MINUTES_EACH, MINUTES_AROUND = 2, 2
"""Minutes for a problem, and for beginning and end, so that ten to fifteen minutes hold the four to
six problems of a talk (common practice, no source)."""

ON_A_LINE = frozenset(
    {
        Family.COUNTING,
        Family.BRIDGE,
        Family.JUMP,
        Family.ADJUST,
        Family.SHIFT_BOTH,
        Family.ADD_UP,
        Family.SPLIT_THEN_JUMP,
    }
)
"""The families that go along an open number line."""


@dataclass(frozen=True, slots=True)
class Wish:
    """A wish for a string.

    `topic` is what it is about, the first that the family is at home in where it is None. `musts`
    must be in it, `kept` stand at their places already (from 0), `lately` must not be in it.
    `within` is the largest number it may have; `minutes` the time there is. With `line` every
    problem can be told on an open number line; with `surprise` the last one comes unhelped. `seed`
    chooses among equals.
    """

    grade: int
    focus: Family
    length: int | None = None
    musts: tuple[Problem, ...] = ()
    lately: frozenset[Problem] = frozenset()
    language: Language = Language.EN
    seed: int = 1
    topic: Topic | None = None
    kept: tuple[tuple[int, Problem], ...] = ()
    within: int | None = None
    minutes: int | None = None
    line: bool = False
    surprise: bool = False

    @property
    def many(self) -> int:
        """How many problems the string has: as wished, or what the time allows, or the usual."""
        if self.length is not None:
            return self.length
        return USUAL if self.minutes is None else min(LONGEST, in_minutes(self.minutes))


def in_minutes(minutes: int) -> int:
    """Return how many problems there is time for in so many minutes."""
    return max(0, minutes - MINUTES_AROUND) // MINUTES_EACH


def minutes_of(many: int) -> int:
    """Return how many minutes a talk of so many problems takes."""
    return MINUTES_EACH * many + MINUTES_AROUND


class WishError(ValueError):
    """Raised for wishes that no string can meet: names those that clash, and which one to drop.

    The text of the error has families and topics by their slugs, as commands take them; `named` is
    the same sentence with the names that people call them by.
    """

    def __init__(self, sentence: str, named: str = "") -> None:
        super().__init__(sentence)
        self.named = named or sentence


def check(wish: Wish) -> None:
    """Raise `WishError` for the first wishes that clash by themselves, before any is composed."""
    homes = topics_of(wish.focus)
    if wish.grade not in GRADES:
        raise _error(wish, "grade", wish.grade)
    if wish.minutes is not None and in_minutes(wish.minutes) < max(SHORTEST, wish.length or 0):
        raise _error(wish, "minutes", wish.minutes, max(SHORTEST, wish.length or 0))
    if not SHORTEST <= wish.many <= LONGEST:
        raise _error(wish, "length", wish.many, SHORTEST, LONGEST)
    if not homes:
        raise _error(wish, "focus", wish.focus, FOCUSES)
    if wish.topic is not None and wish.topic not in homes:
        raise _error(wish, "topic", wish.topic, wish.focus, HOMES[wish.topic])
    if wish.line and wish.focus not in ON_A_LINE:
        raise _error(wish, "line", wish.focus)
    if len(wish.musts) > min(MOST_MUSTS, wish.many):
        raise _error(wish, "many", len(wish.musts), min(MOST_MUSTS, wish.many))
    for at, _ in wish.kept:
        if not 0 <= at < wish.many:
            raise _error(wish, "place", at + 1, wish.many)
    for must in (*wish.musts, *(problem for _, problem in wish.kept)):
        _check_must(wish, must)


def _check_must(wish: Wish, must: Problem) -> None:
    shown = text(must, Print.TRUE, wish.language)
    grades = grades_of(must)
    if must in wish.musts and not grades.holds(wish.grade):
        raise _error(wish, "range", shown, grades.first, grades.last, wish.grade)
    if must in wish.lately:
        raise _error(wish, "lately", shown)


def no_answer(wish: Wish, must: Problem) -> WishError:
    """Return the error for a problem that no string can hold."""
    shown = text(must, Print.TRUE, wish.language)
    return _error(wish, "answer", shown)


def unlike(wish: Wish, must: Problem, topic: Topic) -> WishError:
    """Return the error for a problem that is not of the kind of the string."""
    shown = text(must, Print.TRUE, wish.language)
    return _error(wish, "operation", shown, wish.focus, topic)


def nothing(wish: Wish) -> WishError:
    """Return the error for a grade in which too few problems suit the family in focus."""
    return _error(wish, "few", wish.grade, wish.focus, wish.many)


def clash(wish: Wish, names: tuple[str, ...]) -> WishError:
    """Return the error for wishes, by their names, that no string meets at once."""
    said = _SAID[wish.language]
    called = [said[f"wish {name}"].format(wish) for name in names]
    if len(called) == 1:
        return _error(wish, "alone", called[0], wish.focus, wish.grade)
    listed = said["and"].join((", ".join(called[:-1]), called[-1]))
    return _error(wish, "clash", listed, called[0])


def _error(wish: Wish, what: str, *parts: object) -> WishError:
    """Return an error by what it says and what is filled in."""
    said = _SAID[wish.language][what]
    slugs = (", ".join(map(str, part)) if isinstance(part, tuple) else part for part in parts)
    return WishError(said.format(*slugs), said.format(*(_name(wish, part) for part in parts)))


def _name(wish: Wish, part: object) -> str:
    match part:
        case tuple():
            return ", ".join(_name(wish, each) for each in part)
        case Family():
            return family_name(part, wish.language)
        case Topic():
            return topic_name(part, wish.language)
        case _:
            return str(part)


_SAID = {
    Language.EN: {
        "grade": "Grade {0} is none of ours: a grade from 0 (kindergarten) to 6 would fit.",
        "length": "A string of {0} problems is not composed: from {1} to {2} would fit.",
        "minutes": "{0} minutes and {1} problems do not go together: leave out one of the two, or "
        "take two minutes for each problem and two for what is around them.",
        "focus": "No string is composed for ‘{0}’: leave it out, or take one of {1}.",
        "topic": "‘{0}’ and ‘{1}’ do not go together: leave out ‘{0}’, or take one of {2}.",
        "line": "A number line day and ‘{0}’ in focus do not go together: leave out the number "
        "line.",
        "many": "{0} problems must be in it, and at most {1} may: leave one out.",
        "place": "There is no place {0} in a string of {1} problems: a place from 1 to {1} would "
        "fit.",
        "operation": "{0} must be in it and ‘{1}’ is in focus, for {2}, and the two do not go "
        "together: leave out {0}.",
        "range": "{0} belongs to grades {1} to {2}, and grade {3} was asked for: leave out {0}.",
        "lately": "{0} must be in it and was used lately: leave out one of the two wishes.",
        "answer": "{0} has no answer from 0 up: leave out {0}.",
        "few": "In grade {0} too few problems suit ‘{1}’ for a string of {2}: a higher grade or "
        "another family would fit.",
        "clash": "No string meets these wishes at once, {0}: leave out {1}.",
        "alone": "No string for ‘{1}’ in grade {2} meets one wish, {0}: leave it out.",
        "and": " and ",
        "wish surprise": "a surprise at the end",
        "wish lately": "nothing that was used lately",
        "wish within": "numbers to {0.within}",
        "wish musts": "the problems that must be in it",
        "wish kept": "the problems that keep their places",
    },
    Language.ES: {
        "grade": "El grado {0} no existe aquí: valdría uno de 0 (preescolar) a 6.",
        "length": "No se compone una cadena de {0} problemas: valdrían de {1} a {2}.",
        "minutes": "{0} minutos y {1} problemas no van juntos: quite uno de los dos deseos, o "
        "cuente dos minutos por problema y dos para empezar y terminar.",
        "focus": "No se compone ninguna cadena para ‘{0}’: quítelo, o elija entre {1}.",
        "topic": "‘{0}’ y ‘{1}’ no van juntos: quite ‘{0}’, o elija entre {2}.",
        "line": "Un día de recta numérica y ‘{0}’ no van juntos: quite la recta.",
        "many": "{0} problemas tienen que estar y caben {1} como mucho: quite uno.",
        "place": "No hay lugar {0} en una cadena de {1} problemas: valdría uno de 1 a {1}.",
        "operation": "Tiene que estar {0} y se busca ‘{1}’, para {2}, y no van juntos: quite {0}.",
        "range": "{0} es de los grados {1} a {2} y se pidió el grado {3}: quite {0}.",
        "lately": "Tiene que estar {0} y se usó hace poco: quite uno de los dos deseos.",
        "answer": "{0} no tiene respuesta de 0 en adelante: quite {0}.",
        "few": "En el grado {0} hay pocos problemas para ‘{1}’ y no llega a {2}: valdría un grado "
        "más alto u otra familia.",
        "clash": "Ninguna cadena cumple a la vez estos deseos, {0}: quite {1}.",
        "alone": "Ninguna cadena para ‘{1}’ en el grado {2} cumple un deseo, {0}: quítelo.",
        "and": " y ",
        "wish surprise": "una sorpresa al final",
        "wish lately": "nada de lo usado hace poco",
        "wish within": "números hasta {0.within}",
        "wish musts": "los problemas que tienen que estar",
        "wish kept": "los problemas que guardan su lugar",
    },
}

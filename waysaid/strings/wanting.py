"""What a string leaves wanting, in tenths of effort: the least is the best. One table.

A string is weighed problem by problem and meeting by meeting: what a problem asks of a child who
just heard the one before. All figures are our choice; each says what it stands for.
"""

from collections.abc import Iterator, Sequence
from enum import StrEnum

from waysaid.number import Language
from waysaid.strings.helps import Help
from waysaid.strings.pool import Candidate, Pool


class Row(StrEnum):
    """The rows of the table, in the words of the trade."""

    ENTRY = "easy to enter"
    TOO_SOON = "the trick not given away too soon"
    FOCUS = "the focus pays off most at the end"
    CLIMB = "worth its time, and one stretch at the end"
    RIVALS = "rival ways not closed off"
    RISE = "what is left to do rises gently"
    ALONE = "helped by the one before"
    LOOSE = "what comes unhelped helps the next"
    KEPT = "what comes unhelped keeps a number"
    OWN = "helped in the way that shows the focus"
    AGAIN = "links that vary"


def row_name(row: Row, language: Language) -> str:
    """Return what a row of the table is called: what a string should be. Our own words."""
    return row.value if language is Language.EN else _IN_SPANISH[row]


_IN_SPANISH = {
    Row.ENTRY: "fácil de empezar",
    Row.TOO_SOON: "el truco no se ve demasiado pronto",
    Row.FOCUS: "la idea rinde sobre todo al final",
    Row.CLIMB: "vale su tiempo y termina con un reto",
    Row.RIVALS: "quedan abiertas otras maneras",
    Row.RISE: "lo que queda por hacer sube poco a poco",
    Row.ALONE: "el problema anterior ayuda",
    Row.LOOSE: "lo que llega sin ayuda sirve para el siguiente",
    Row.KEPT: "lo que llega sin ayuda conserva un número",
    Row.OWN: "la ayuda muestra la idea",
    Row.AGAIN: "las relaciones varían",
}

EASY = (12, 14, 16, 18, 18, 20, 20)
"""The effort, by grade, with which everybody can begin: about one fact, or one plain hop."""
ENTRY = 4
"""What a tenth above that costs in the first problem: whoever is lost there stays lost."""
LOST = 60
"""What that costs at the most: nobody is more lost than lost."""
GENTLE = 14
"""What the second problem may ask of a child who just heard the first."""
RISE = 2
"""How much more each further problem may ask."""
STEEP = 1
"""What a tenth more or less than that costs. Too little costs as well: then nothing is found."""
PAYS = 20
"""What the family in focus should save in the end against the usual ways."""
HOME = 1
"""What a tenth short of that costs in the last problem; before it the less, the earlier."""
NO_FOCUS = 45
"""How far short a problem is in which the family in focus has no way."""
TOO_SOON = 1
"""What each tenth costs that the focus saves in the first problem: the trick is given away."""
CLIMB = 5
"""How much more effort, by itself, each further problem should ask, to be worth its time."""
LOW = 1
"""What each tenth short of that costs."""
RIVALS = 3
"""So many families should come near the easiest way, so that there is something to compare."""
CLOSED_OFF = 2
"""What each family short of that costs."""
ALONE = 16
"""What a problem costs that the one before does not help with: something new begins."""
STRANGE = 6
"""What it costs besides where no number stays where it was: with 60 / 6 and 36 / 6 the class still
shares out among six, and sees that the two belong together."""
LAST_ALONE = 20
"""What it costs besides where that is the last: nothing comes of it any more."""
LOOSE = 40
"""What it costs besides where such a problem does not help the next in the way that shows the
focus. Helper, then challenge is a shape of its own, and effort may fall where it begins."""
NOT_OWN = 24
"""What a help costs that does not show the family in focus."""
STRETCH = 12
"""How much more than its place asks of it the last problem should ask by itself."""
AGAIN = 5
"""What it costs where one problem meets the next by the very change by which it was met: the third
is then only said again."""
WANDERS = 14
"""What it costs where they meet by the same kind of link with another change: no rule is in it.
Where both numbers change and the answer stays, the rule is that as much moves over each time."""

_Costs = Iterator[tuple[Row, int]]


def of_place(one: Candidate, at: int, length: int, easy: int) -> int:
    """Return what a candidate leaves wanting at a place of a string, whatever its neighbours."""
    return sum(cost for _, cost in _place(one, at, length, easy))


def of_help(help_: Help, at: int) -> int:
    """Return what it leaves wanting that a candidate comes at a place with this help."""
    return sum(cost for _, cost in _helped(help_, at))


def of_alone(one: Candidate, at: int, length: int) -> int:
    """Return what it leaves wanting that a candidate comes at a place of a string unhelped.

    It is `STRANGE` more where it keeps no number of the one before.
    """
    return sum(cost for _, cost in _alone(one, at, length))


def of_run(before: Help | None, help_: Help | None) -> int:
    """Return what it leaves wanting how two meetings follow each other.

    That they are alike or keep one answer; that a problem unhelped does not help the next.
    """
    return sum(cost for _, cost in _run(before, help_))


def of_string(pool: Pool, places: Sequence[int], easy: int) -> int:
    """Return what a string of candidates, by their places in the pool, leaves wanting."""
    return sum(rows_of(pool, places, easy).values())


def rows_of(pool: Pool, places: Sequence[int], easy: int) -> dict[Row, int]:
    """Return what a string of candidates leaves wanting by each row of the table, in tenths."""
    rows = dict.fromkeys(Row, 0)
    helps = pool.met(places)
    for at, place in enumerate(places):
        one, help_ = pool.candidates[place], helps[at]
        if at and help_ is None and not pool.keeps(places[at - 1], place):
            rows[Row.KEPT] += STRANGE
        for row, cost in _place(one, at, len(places), easy):
            rows[row] += cost
        if at:
            met = _alone(one, at, len(places)) if help_ is None else _helped(help_, at)
            for row, cost in met:
                rows[row] += cost
        if at > 1:
            for row, cost in _run(helps[at - 1], help_):
                rows[row] += cost
    return rows


def _place(one: Candidate, at: int, length: int, easy: int) -> _Costs:
    yield Row.RIVALS, CLOSED_OFF * max(0, RIVALS - one.rivals)
    if at == 0:
        yield Row.ENTRY, min(LOST, ENTRY * max(0, one.effort - easy))
        yield Row.TOO_SOON, TOO_SOON * max(0, one.pays or 0)
        return
    short = NO_FOCUS if one.pays is None else min(NO_FOCUS, max(0, PAYS - one.pays))
    yield Row.FOCUS, short * HOME * at // (length - 1)
    asked = easy + CLIMB * at + (STRETCH if at == length - 1 else 0)
    yield Row.CLIMB, LOW * max(0, asked - one.effort)


def _alone(one: Candidate, at: int, length: int) -> _Costs:
    yield Row.RISE, _steep(one.effort, at)
    yield Row.ALONE, ALONE + (LAST_ALONE if at == length - 1 else 0)


def _helped(help_: Help, at: int) -> _Costs:
    yield Row.RISE, _steep(help_.left, at)
    if not help_.own:
        yield Row.OWN, NOT_OWN


def _steep(left: int, at: int) -> int:
    return STEEP * abs(left - (GENTLE + RISE * (at - 1)))


def _run(before: Help | None, help_: Help | None) -> _Costs:
    if before is None:
        if help_ is None or not help_.own:
            yield Row.LOOSE, LOOSE
    elif help_ is not None and before.kind is help_.kind:
        yield Row.AGAIN, AGAIN if before.size == help_.size else WANDERS

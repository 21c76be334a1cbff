"""Simulated classes for the tests: talks as they would have been kept, and the past they make."""

from collections.abc import Iterator
from datetime import date, timedelta

from waysaid.growth import Held, Lesson, Past, Room, Simulated, lessons, past_of
from waysaid.talk import Record, State, fold

CHILDREN = tuple(str(number) for number in range(1, 27))
FIRST = date(2026, 9, 7)


def state_of(script: tuple[tuple[int, object], ...]) -> State:
    """Return what a simulated talk comes to."""
    return fold(Record(order, "desk", order, body) for order, (_, body) in enumerate(script, 1))


def held(room: Room, seed: int, talks: int, strings: tuple[Lesson, ...] = ()) -> Iterator[Held]:
    """Yield the talks of a simulated class, a day each."""
    simulated = Simulated(room, seed)
    strings = strings or lessons()
    for number in range(talks):
        lesson = strings[number % len(strings)]
        state = state_of(simulated.talk(lesson, f"Talk {number + 1}"))
        yield Held(f"t{number:03}", FIRST + timedelta(days=number), state, lesson.focus)


def past(room: Room, seed: int, talks: int) -> Past:
    """Return the past of a simulated class."""
    return past_of(held(room, seed, talks))


def until(whole: Past, talks: int) -> Past:
    """Return the past as it was after so many talks."""
    kept = whole.talks[:talks]
    return Past(kept, whole.since(kept))

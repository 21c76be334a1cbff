"""Change a value: a new one, with some of its parts others."""

import dataclasses
from functools import cache
from typing import Any, TypeVar

Thing = TypeVar("Thing")


def replace(thing: Thing, **parts: Any) -> Thing:
    """Return the tuple with names, or the frozen dataclass, with the parts given.

    What is made many times a line (states, frames, quantities) is a tuple, for that is made and
    compared the fastest. Raises `ValueError` or `TypeError` for a part it does not have.
    """
    if not isinstance(thing, tuple):
        return dataclasses.replace(thing, **parts)  # type: ignore[type-var]
    places, values = _places(type(thing)), list(thing)
    try:
        for name, value in parts.items():
            values[places[name]] = value
    except KeyError as error:
        raise ValueError(f"no part of that name: {error}") from None
    return tuple.__new__(type(thing), values)


@cache
def _places(kind: Any) -> dict[str, int]:
    """Return where each part of a tuple with names stands."""
    return {name: place for place, name in enumerate(kind._fields)}

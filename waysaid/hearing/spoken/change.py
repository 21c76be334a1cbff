"""Change a value: a new one, with some of its parts others."""

import dataclasses
from typing import Any, TypeVar

Thing = TypeVar("Thing")


def replace(thing: Thing, **parts: Any) -> Thing:
    """Return the tuple with names, or the frozen dataclass, with the parts given.

    What is made many times a line (states, frames, quantities) is a tuple, for that is made and
    compared the fastest. Raises `ValueError` or `TypeError` for a part it does not have.
    """
    if isinstance(thing, tuple):
        return thing._replace(**parts)  # type: ignore[attr-defined,no-any-return]
    return dataclasses.replace(thing, **parts)  # type: ignore[type-var]

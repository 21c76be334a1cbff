"""The class picture: who has used which family of ways, since when, and how it went round.

It is about the class, so that a teacher sees what to offer. Children stand in the order in which
they first used a family: that is how it spread, and no rank.
"""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date
from enum import StrEnum

from waysaid.growth.past import Past, invited
from waysaid.growth.shown import TOLD, USED, How, Shown
from waysaid.ways import Family

BY_ITSELF_CHILDREN = 3
BY_ITSELF_TALKS = 3
BY_ITSELF_UNPLANNED = 2
"""A class does by itself what so many children told in so many talks, so many of them about
something else. Our choice: three is the least that is more than a pair."""


class Standing(StrEnum):
    """How a family stands in a class."""

    BY_ITSELF = "by-itself"
    COMING = "coming"
    NOT_LATELY = "not-lately"
    NOBODY = "nobody"


@dataclass(frozen=True, slots=True)
class ChildUse:
    """A child's use of a family: the first piece, the last one, and how many."""

    child: str
    first: Shown
    last: Shown
    times: int

    @property
    def how(self) -> How:
        """How she came to it: told it, or agreed with somebody first."""
        return self.first.how


@dataclass(frozen=True, slots=True)
class FamilyUse:
    """A family in a class: its children in the order of their first use, the talks it was told in.

    `told` counts the ways told, those of nobody named with them; `brought` is the first piece of
    all, None for a family nobody has brought.
    """

    family: Family
    standing: Standing
    children: tuple[ChildUse, ...] = ()
    talks: tuple[str, ...] = ()
    told: int = 0
    brought: Shown | None = None
    last: date | None = None


@dataclass(frozen=True, slots=True)
class ClassPicture:
    """Every family that was used, or that the problems of the last talks invited."""

    talks: int
    families: tuple[FamilyUse, ...]

    def standing(self, standing: Standing) -> tuple[FamilyUse, ...]:
        """Return the families that stand so."""
        return tuple(use for use in self.families if use.standing is standing)


def class_picture(past: Past) -> ClassPicture:
    """Return the picture of a class, families in the order of the list of families."""
    used: dict[Family, list[Shown]] = {}
    for piece in past.shown:
        if piece.family is not None and piece.how in USED:
            used.setdefault(piece.family, []).append(piece)
    lately = {talk.id for talk in past.lately}
    asked = {family for talk in past.lately for text in talk.problems for family in invited(text)}
    listed = [family for family in Family if family in used or family in asked]
    return ClassPicture(
        len(past.talks), tuple(_use(family, used.get(family, []), lately) for family in listed)
    )


def _use(family: Family, pieces: list[Shown], lately: set[str]) -> FamilyUse:
    told = [piece for piece in pieces if piece.how in TOLD]
    if not told:
        return FamilyUse(family, Standing.NOBODY)
    talks = tuple(dict.fromkeys(piece.talk for piece in told))
    standing = _standing(family, told, lately)
    return FamilyUse(family, standing, _uses(pieces), talks, len(told), told[0], told[-1].day)


def _standing(family: Family, told: list[Shown], lately: set[str]) -> Standing:
    if not any(piece.talk in lately for piece in told):
        return Standing.NOT_LATELY
    children = {piece.child for piece in told if piece.child is not None}
    talks = {piece.talk for piece in told}
    unplanned = {piece.talk for piece in told if not piece.planned}
    enough = (
        len(children) >= BY_ITSELF_CHILDREN
        and len(talks) >= BY_ITSELF_TALKS
        and len(unplanned) >= BY_ITSELF_UNPLANNED
    )
    return Standing.BY_ITSELF if enough else Standing.COMING


def _uses(pieces: Iterable[Shown]) -> tuple[ChildUse, ...]:
    by_child: dict[str, list[Shown]] = {}
    for piece in pieces:
        if piece.child is not None:
            by_child.setdefault(piece.child, []).append(piece)
    return tuple(ChildUse(child, own[0], own[-1], len(own)) for child, own in by_child.items())


def ways_of_child(past: Past, child: str) -> tuple[Shown, ...]:
    """Return what a child told or agreed with, the oldest first."""
    return tuple(piece for piece in past.shown if piece.child == child and piece.how in USED)

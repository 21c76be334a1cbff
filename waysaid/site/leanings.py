"""What a class leans to where two readings are equally good, as its teacher sees and erases it."""

from collections import Counter
from dataclasses import dataclass

from waysaid.site.history import TALKS_BACK, Correction, corrections_of
from waysaid.site.models import SchoolClass, Talk
from waysaid.site.record import at_hand, mark_change
from waysaid.site.wording import wording_of
from waysaid.ways import Family


@dataclass(frozen=True, slots=True)
class Leaning:
    """A family the teacher chose, how often, and the name of what was read first, if it had one.

    `key` names it in a form: `split<bridge`, or `split<` where no family was read.
    """

    key: str
    chosen: str
    proposed: str
    times: int


def leanings_of(school_class: SchoolClass) -> list[Leaning]:
    """Return what counts for a talk of this class now, the most frequent first."""
    talks = school_class.talks.order_by("-made_at", "-pk")[: TALKS_BACK + 1]
    found = Counter(each for talk in talks for each in _counted(talk).values())
    wording = wording_of(school_class)

    def name(family: Family | None) -> str:
        return wording.name(family) if family else ""

    return [
        Leaning(key_of(pair), name(pair[1]), name(pair[0]), times)
        for pair, times in found.most_common()
        if pair[1] is not None
    ]


def key_of(pair: Correction) -> str:
    """Return the name of a correction in a form."""
    proposed, chosen = (family.value if family else "" for family in pair)
    return f"{chosen}<{proposed}"


def erase_leanings(school_class: SchoolClass, key: str | None) -> None:
    """Let the corrections of this key, or all, count no more, in every talk of the class.

    The record of what was said stays as it is; a correction that was erased never counts again.
    """
    for talk in school_class.talks.all():
        erased = [way for way, pair in _counted(talk).items() if key in (None, key_of(pair))]
        if erased:
            talk.set_aside = [*talk.set_aside, *erased]
            talk.save(update_fields=["set_aside"])
    mark_change()


def _counted(talk: Talk) -> dict[str, Correction]:
    return corrections_of(at_hand(talk.pk).state, talk.set_aside)

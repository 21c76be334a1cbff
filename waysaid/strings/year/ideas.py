"""The ideas that the years of a school go through: each a family at work on one kind of problem.

Which ideas there are is our choice, by common practice; the standard beside each says in which
grade it is asked for. An idea needs another where the standard of the other comes first in the text
of `ccss`, or where its ways lean on it: our choice.
"""

from dataclasses import dataclass
from enum import StrEnum

from waysaid.number import Language
from waysaid.ways import Family, family_name


class Curriculum(StrEnum):
    """Whose grades a school goes by; a US grade is taken as the English year one higher."""

    CCSS = "ccss"
    ENGLAND = "england"


class Topic(StrEnum):
    """What the problems of an idea are; the slugs are in files and never change."""

    IMAGES = "images"
    SUMS = "sums"
    DIFFERENCES = "differences"
    PRODUCTS = "products"
    QUOTIENTS = "quotients"
    THREE_NUMBERS = "three-numbers"
    MISSING = "missing"
    BOTH_SIDES = "both-sides"
    ESTIMATES = "estimates"
    COMPARING = "comparing"
    FRACTIONS = "fractions"
    DECIMALS = "decimals"
    PERCENTS = "percents"
    BELOW_ZERO = "below-zero"


@dataclass(frozen=True, slots=True)
class Standard:
    """The grade (0 is kindergarten) in which a standard asks for an idea, and its code there.

    The programmes of study of England have no codes: year and domain stand for one.
    """

    grade: int
    code: str


@dataclass(frozen=True, slots=True)
class Idea:
    """A family at work on one kind of problem, in one range.

    The largest number of a string (answers too) is more than `over` and at most `top`; where
    there are `tables`, a factor or the divisor is one of them. `needs` are the ideas to meet first.
    `english` and `spanish` say what its problems are where topic and range do not tell it apart.
    """

    slug: str
    family: Family
    topic: Topic
    over: int
    top: int
    ccss: Standard
    england: Standard
    needs: tuple[str, ...] = ()
    tables: tuple[int, ...] = ()
    english: str = ""
    spanish: str = ""

    def standard(self, curriculum: Curriculum) -> Standard:
        """Return where a curriculum asks for the idea."""
        match curriculum:
            case Curriculum.CCSS:
                return self.ccss
            case Curriculum.ENGLAND:
                return self.england


def idea_name(idea: Idea, language: Language) -> str:
    """Return what the idea is called: `near double: sums to 20`."""
    own = {Language.EN: idea.english, Language.ES: idea.spanish}[language]
    return f"{family_name(idea.family, language)}: {own or _told(idea, language)}"


def _told(idea: Idea, language: Language) -> str:
    shown = f"{idea.top:,}".replace(",", "\N{THIN SPACE}") if idea.top > 9999 else str(idea.top)
    told = _TOPICS[language][idea.topic].format(shown)
    if not idea.tables:
        return told
    first, last = idea.tables[0], idea.tables[-1]
    run = len(idea.tables) > 3 and idea.tables == tuple(range(first, last + 1))
    by = f"{first}–{last}" if run else ", ".join(map(str, idea.tables))
    return f"{told} ({by})"


_TOPICS = {
    Language.EN: {
        Topic.SUMS: "sums to {}",
        Topic.DIFFERENCES: "differences to {}",
        Topic.PRODUCTS: "products to {}",
        Topic.QUOTIENTS: "quotients to {}",
    },
    Language.ES: {
        Topic.SUMS: "sumas hasta {}",
        Topic.DIFFERENCES: "restas hasta {}",
        Topic.PRODUCTS: "productos hasta {}",
        Topic.QUOTIENTS: "divisiones hasta {}",
    },
}

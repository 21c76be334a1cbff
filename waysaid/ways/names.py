"""What a family of ways is called: by us, and in the words of published standards and handbooks.

A name stands only where its source was seen to use it, by its id in the list of sources kept with
the published tests; a vocabulary that has no name for a family, or none in a language, shows ours.
Files keep the slugs.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum

from waysaid.number import Language
from waysaid.ways.phrases import PHRASES
from waysaid.ways.way import Family


class Vocabulary(StrEnum):
    """Whose words for the families a school shows; the slugs are in files."""

    OURS = "ours"
    COMMON_CORE = "common-core"
    ENGLAND = "england"
    AUSTRALIA = "australia"
    NEW_ZEALAND = "new-zealand"


@dataclass(frozen=True, slots=True)
class Named:
    """A published name for a family, and the source that uses it."""

    name: str
    source: str


_CORE: Mapping[Family, Named] = {
    Family.COUNTING: Named("counting on", "ccss"),
    Family.KNOWN_FACT: Named("from memory", "ccss"),
    Family.NEAR_DOUBLE: Named("known sums", "ccss"),
    Family.BRIDGE: Named("making ten", "ccss"),
    Family.SPLIT: Named("place value", "ccss"),
    Family.GIVE_AND_TAKE: Named("equivalent but easier sums", "ccss"),
    Family.THINK_ADD: Named("relating addition and subtraction", "ccss"),
    Family.PARTNERS: Named("associative property", "ccss"),
    Family.COLUMN: Named("standard algorithm", "ccss"),
    Family.BREAK_UP: Named("distributive property", "ccss"),
    Family.FACTOR_STEPS: Named("associative property of multiplication", "ccss"),
    Family.BENCHMARK: Named("benchmark fractions", "ccss-5nf2"),
}
_ENGLAND: Mapping[Family, Named] = {
    Family.COUNTING: Named("counting on and back", "tcm2010"),
    Family.KNOWN_FACT: Named("known facts", "tcm2010"),
    Family.NEAR_DOUBLE: Named("near doubles", "tcm2010"),
    Family.BRIDGE: Named("bridging multiples of ten", "tcm2010"),
    Family.SPLIT: Named("partitioning", "nns1999"),
    Family.ADJUST: Named("compensating", "nns1999"),
    Family.ADD_UP: Named("counting up", "tcm2010"),
    Family.PARTNERS: Named("reordering", "tcm2010"),
    Family.DOUBLE_HALVE: Named("doubling and halving", "nns1999"),
    Family.FACTOR_STEPS: Named("factor pairs", "eng-nc2014"),
}
_AUSTRALIA: Mapping[Family, Named] = {
    Family.COUNTING: Named("counting on or back", "acara"),
    Family.NEAR_DOUBLE: Named("near doubles", "vic1"),
    Family.BRIDGE: Named("bridging the decades", "nsw-nesa2022"),
    Family.JUMP: Named("jump", "acara"),
    Family.SPLIT: Named("split", "acara"),
    Family.ADJUST: Named("compensation", "nsw-nesa2022"),
    Family.GIVE_AND_TAKE: Named("levelling", "nsw-nesa2022"),
    Family.SHIFT_BOTH: Named("constant difference", "nsw-nesa2022"),
    Family.PARTNERS: Named("associative property", "nsw-nesa2022"),
    Family.BREAK_UP: Named("partition", "vic1"),
    Family.FACTOR_STEPS: Named("factors", "acara"),
    Family.BENCHMARK: Named("benchmark percentages", "acara"),
}
_NEW_ZEALAND: Mapping[Family, Named] = {
    Family.COUNTING: Named("advanced counting", "nz-ao"),
    Family.SPLIT: Named("place value partitioning", "nz-ao"),
    Family.ADJUST: Named("rounding and compensating", "nz-ao"),
    Family.SHIFT_BOTH: Named("equal additions", "nz-ao"),
    Family.ADD_UP: Named("reversibility", "nz-ao"),
    Family.DOUBLE_HALVE: Named("doubling and halving", "nz-ao"),
}
PUBLISHED: Mapping[Vocabulary, Mapping[Family, Named]] = {
    Vocabulary.OURS: {},
    Vocabulary.COMMON_CORE: _CORE,
    Vocabulary.ENGLAND: _ENGLAND,
    Vocabulary.AUSTRALIA: _AUSTRALIA,
    Vocabulary.NEW_ZEALAND: _NEW_ZEALAND,
}
"""All of them are English words; in another language a family has our name."""


def family_name(family: Family, language: Language, words: Vocabulary = Vocabulary.OURS) -> str:
    """Return the name for a family, in lower case: `give and take`, `levelling`, `dar y tomar`."""
    named = PUBLISHED[words].get(family) if language is Language.EN else None
    return PHRASES[language].names[family] if named is None else named.name


def published_names(family: Family) -> Mapping[Vocabulary, Named]:
    """Return what a family is called elsewhere, by whose words they are."""
    return {words: names[family] for words, names in PUBLISHED.items() if family in names}

"""What a string may be about: the kind of its problems, and the families that are at home there."""

from enum import StrEnum

from waysaid.number import Language
from waysaid.ways import Family


class Topic(StrEnum):
    """The kinds of problems that a string is composed of; the slugs are in files and JSON."""

    SUMS = "sums"
    DIFFERENCES = "differences"
    PRODUCTS = "products"
    QUOTIENTS = "quotients"
    SUM_FACTS = "sums-and-differences"
    PRODUCT_FACTS = "products-and-quotients"
    SEVERAL = "three-numbers"
    MISSING = "missing-numbers"
    IMAGES = "quick-images"
    FRACTION_SUMS = "sums-of-fractions"
    FRACTION_DIFFERENCES = "differences-of-fractions"
    DECIMAL_SUMS = "sums-of-decimals"
    DECIMAL_DIFFERENCES = "differences-of-decimals"
    PARTS = "parts-of-numbers"
    PERCENTS = "percents"
    CLAIMS = "claims"
    COMPARISONS = "comparisons"
    ESTIMATES = "estimates"


_SUMS = (
    Family.COUNTING,
    Family.KNOWN_FACT,
    Family.NEAR_DOUBLE,
    Family.BRIDGE,
    Family.JUMP,
    Family.SPLIT,
    Family.SPLIT_THEN_JUMP,
    Family.ADJUST,
    Family.GIVE_AND_TAKE,
)
_DIFFERENCES = (
    Family.SHIFT_BOTH,
    Family.ADD_UP,
    Family.BRIDGE,
    Family.JUMP,
    Family.ADJUST,
    Family.SPLIT,
    Family.SPLIT_THEN_JUMP,
    Family.COUNTING,
    Family.THINK_ADD,
)
_PRODUCTS = (
    Family.NEAR_FACT,
    Family.BREAK_UP,
    Family.DOUBLE_HALVE,
    Family.FACTOR_STEPS,
    Family.ADJUST,
    Family.KNOWN_FACT,
    Family.COUNTING,
)
_QUOTIENTS = (
    Family.CHUNK_OUT,
    Family.SCALE_BOTH,
    Family.BREAK_UP,
    Family.FACTOR_STEPS,
    Family.NEAR_FACT,
    Family.ADJUST,
    Family.THINK_TIMES,
)

HOMES = {
    Topic.SUM_FACTS: (Family.THINK_ADD,),
    Topic.PRODUCT_FACTS: (Family.THINK_TIMES,),
    Topic.SUMS: _SUMS,
    Topic.DIFFERENCES: _DIFFERENCES,
    Topic.PRODUCTS: _PRODUCTS,
    Topic.QUOTIENTS: _QUOTIENTS,
    Topic.SEVERAL: (Family.PARTNERS, Family.SPLIT, Family.JUMP),
    Topic.MISSING: (
        Family.ADD_UP,
        Family.COUNTING,
        Family.BRIDGE,
        Family.ADJUST,
        Family.KNOWN_FACT,
    ),
    Topic.IMAGES: (
        Family.PARTNERS,
        Family.SPLIT,
        Family.BRIDGE,
        Family.NEAR_DOUBLE,
        Family.GIVE_AND_TAKE,
        Family.BREAK_UP,
        Family.NEAR_FACT,
        Family.KNOWN_FACT,
        Family.COUNTING,
    ),
    Topic.FRACTION_SUMS: (
        Family.BRIDGE,
        Family.GIVE_AND_TAKE,
        Family.ADJUST,
        Family.RENAME,
        Family.BENCHMARK,
    ),
    Topic.FRACTION_DIFFERENCES: (
        Family.SHIFT_BOTH,
        Family.ADD_UP,
        Family.ADJUST,
        Family.BRIDGE,
        Family.RENAME,
    ),
    Topic.DECIMAL_SUMS: (
        Family.ADJUST,
        Family.GIVE_AND_TAKE,
        Family.BRIDGE,
        Family.JUMP,
        Family.SPLIT,
        Family.RENAME,
    ),
    Topic.DECIMAL_DIFFERENCES: (
        Family.SHIFT_BOTH,
        Family.ADD_UP,
        Family.ADJUST,
        Family.BRIDGE,
        Family.JUMP,
        Family.RENAME,
    ),
    Topic.PARTS: (
        Family.RENAME,
        Family.BREAK_UP,
        Family.FACTOR_STEPS,
        Family.DOUBLE_HALVE,
        Family.BENCHMARK,
        Family.THINK_TIMES,
    ),
    Topic.PERCENTS: (Family.BENCHMARK, Family.RENAME, Family.FACTOR_STEPS, Family.ADJUST),
    Topic.CLAIMS: (Family.GIVE_AND_TAKE, Family.SHIFT_BOTH, Family.RENAME),
    Topic.COMPARISONS: (Family.BENCHMARK, Family.RENAME, Family.SCALE_BOTH),
    Topic.ESTIMATES: (Family.ADJUST, Family.BENCHMARK),
}
"""The families that a string of a topic may have in focus. Our choice."""

FOCUSES = tuple(dict.fromkeys(family for homes in HOMES.values() for family in homes))
"""Every family that a string may have in focus."""


def topics_of(family: Family) -> tuple[Topic, ...]:
    """Return the topics a family is at home in, the first one first; () for none."""
    return tuple(topic for topic, homes in HOMES.items() if family in homes)


def topic_name(topic: Topic, language: Language) -> str:
    """Return what a topic is called, as in the middle of a sentence. The words are our choice."""
    return _NAMES[topic][language]


_NAMES = {
    topic: {Language.EN: english, Language.ES: spanish}
    for topic, english, spanish in (
        (Topic.SUMS, "sums", "sumas"),
        (Topic.DIFFERENCES, "differences", "restas"),
        (Topic.PRODUCTS, "products", "multiplicaciones"),
        (Topic.QUOTIENTS, "quotients", "divisiones"),
        (Topic.SUM_FACTS, "sums and differences", "sumas y restas"),
        (Topic.PRODUCT_FACTS, "products and quotients", "multiplicaciones y divisiones"),
        (Topic.SEVERAL, "three numbers", "tres números"),
        (Topic.MISSING, "missing numbers", "números que faltan"),
        (Topic.IMAGES, "quick images", "imágenes rápidas"),
        (Topic.FRACTION_SUMS, "sums of fractions", "sumas de fracciones"),
        (Topic.FRACTION_DIFFERENCES, "differences of fractions", "restas de fracciones"),
        (Topic.DECIMAL_SUMS, "sums of decimals", "sumas de decimales"),
        (Topic.DECIMAL_DIFFERENCES, "differences of decimals", "restas de decimales"),
        (Topic.PARTS, "parts of numbers", "partes de números"),
        (Topic.PERCENTS, "percents", "porcentajes"),
        (Topic.CLAIMS, "claims, true or not", "afirmaciones, ciertas o no"),
        (Topic.COMPARISONS, "comparisons", "comparaciones"),
        (Topic.ESTIMATES, "estimates", "estimaciones"),
    )
}

"""The phrases of the noisy speaker, in two languages: our own, as children talk."""

from collections.abc import Mapping
from dataclasses import dataclass

from waysaid.number import Language, Sign


@dataclass(frozen=True, slots=True)
class Phrases:
    """What is said round numbers: {0} is the first number or clause, {1} the second.

    `joint` is the word that joins parts of a number, too: one hundred and six.
    """

    works: Mapping[Sign, tuple[str, ...]]
    hops: Mapping[Sign, tuple[str, ...]]
    results: tuple[str, ...]
    results_first: tuple[str, ...]
    answers: tuple[str, ...]
    joins: tuple[str, ...]
    corrections: tuple[str, ...]
    fillers: tuple[str, ...]
    misheard: Mapping[str, tuple[str, ...]]
    joint: str


_EN = Phrases(
    works={
        Sign.PLUS: ("{0} plus {1}", "{0} and {1}", "I added {0} and {1}", "{0} add {1}"),
        Sign.MINUS: ("{0} minus {1}", "{0} take away {1}", "I took {1} off {0}"),
        Sign.TIMES: ("{0} times {1}", "I did {0} times {1}"),
        Sign.OVER: ("{0} divided by {1}", "I shared {0} by {1}"),
    },
    hops={
        Sign.PLUS: ("plus {1}", "add {1} more", "and {1} more", "I added {1} to that"),
        Sign.MINUS: ("minus {1}", "take away {1}", "I took {1} off that", "take off {1}"),
        Sign.TIMES: ("times {1}", "times that by {1}"),
        Sign.OVER: ("divided by {1}",),
    },
    results=(
        "{0} is {1}",
        "{0} makes {1}",
        "{0} that's {1}",
        "{0} equals {1}",
        "{0} and I got {1}",
    ),
    results_first=("it's {1} because {0}", "{1} because {0}"),
    answers=("so it's {0}", "so {0}", "the answer is {0}", "so I got {0}", "so um {0}"),
    joins=(" and then ", " then ", " so then ", ", and then like "),
    corrections=("no wait", "no I mean", "oh wait no", "sorry"),
    fillers=("um", "okay", "well", "like", "um so", "okay so"),
    misheard={
        "one": ("won",),
        "two": ("too", "to"),
        "three": ("tree",),
        "four": ("for",),
        "six": ("sicks",),
        "eight": ("ate",),
        "ten": ("tin",),
        "forty": ("fourty",),
    },
    joint="and",
)
_ES = Phrases(
    works={
        Sign.PLUS: ("{0} más {1}", "{0} y {1}", "sumé {0} y {1}", "sumé {0} más {1}"),
        Sign.MINUS: ("{0} menos {1}", "a {0} le quité {1}", "a {0} le quito {1}"),
        Sign.TIMES: ("{0} por {1}", "hice {0} por {1}"),
        Sign.OVER: ("{0} entre {1}", "dividí {0} entre {1}"),
    },
    hops={
        Sign.PLUS: ("más {1}", "le sumé {1}", "le sumo {1} más", "y {1} más"),
        Sign.MINUS: ("menos {1}", "le quité {1}", "le quito {1}"),
        Sign.TIMES: ("por {1}",),
        Sign.OVER: ("entre {1}",),
    },
    results=("{0} son {1}", "{0} es {1}", "{0} me da {1}", "{0} igual a {1}", "{0} da {1}"),
    results_first=("es {1} porque {0}", "son {1} porque {0}"),
    answers=("entonces es {0}", "así que {0}", "la respuesta es {0}", "y me dio {0}"),
    joins=(" y luego ", " luego ", " después ", " y después "),
    corrections=("no espera", "digo", "no perdón"),
    fillers=("este", "pues", "bueno", "a ver", "pues este"),
    misheard={
        "cuatro": ("quatro",),
        "cinco": ("sinco",),
        "seis": ("seiz",),
        "siete": ("ciete",),
        "nueve": ("nuebe",),
        "diez": ("dies",),
        "veinte": ("bente",),
        "cuarenta": ("cuarent",),
    },
    joint="y",
)
PHRASES: Mapping[Language, Phrases] = {Language.EN: _EN, Language.ES: _ES}
"""The phrases of each language."""

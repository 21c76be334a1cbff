"""The words for numbers and signs, as data: one `Lexicon` a language."""

from collections.abc import Mapping
from dataclasses import dataclass, field

from waysaid.number.expression import Sign
from waysaid.number.image import ImageKind
from waysaid.number.language import Language


@dataclass(frozen=True, slots=True)
class Lexicon:
    """What one language calls numbers, signs and brackets.

    `small` are the words with no rule, from zero; `tens[3]` is thirty; `parts[4]` a quarter.
    """

    small: tuple[str, ...]
    tens: tuple[str, ...]
    parts: Mapping[int, str]
    signs: Mapping[Sign, str]
    equals: str
    blank: str
    negative: str
    join: str
    over: str
    opening: str
    closing: str
    point: str
    percent: str
    claim: str
    compare: str
    about: str
    pictures: Mapping[ImageKind, str]
    picture_names: Mapping[ImageKind, str]
    hundreds: tuple[str, ...] = ()
    plurals: Mapping[str, str] = field(default_factory=dict)


def _row(words: str) -> tuple[str, ...]:
    return tuple(words.split())


def _parts(names: str, last: int, *others: int) -> dict[int, str]:
    """Name the parts by their bottom numbers: 2 to `last`, then the others."""
    return dict(zip((*range(2, last + 1), *others), _row(names), strict=True))


_ENGLISH = Lexicon(
    small=_row(
        "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen"
        " fifteen sixteen seventeen eighteen nineteen"
    ),
    tens=_row("_ ten twenty thirty forty fifty sixty seventy eighty ninety"),
    parts=_parts(
        "half third quarter fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth"
        " fourteenth fifteenth sixteenth seventeenth eighteenth nineteenth twentieth"
        " hundredth thousandth",
        20,
        100,
        1000,
    ),
    signs={
        Sign.PLUS: "plus",
        Sign.MINUS: "minus",
        Sign.TIMES: "times",
        Sign.OVER: "divided by",
        Sign.OF: "of",
    },
    equals="equals",
    blank="blank",
    negative="negative",
    join="and",
    over="over",
    opening="open bracket",
    closing="close bracket",
    point="point",
    percent="percent",
    claim="is it true that {}?",
    compare="which is larger, {} or {}?",
    about="about how much is {}?",
    pictures={
        ImageKind.FRAME: "a ten frame with some dots",
        ImageKind.PAIRS: "a ten frame with some dots",
        ImageKind.DICE: "dots in dice patterns",
        ImageKind.ARRAY: "dots in rows",
        ImageKind.DOTS: "some dots",
    },
    picture_names={
        ImageKind.FRAME: "Ten frame",
        ImageKind.PAIRS: "Ten frame",
        ImageKind.DICE: "Dice dots",
        ImageKind.ARRAY: "Rows of dots",
        ImageKind.DOTS: "Dots",
    },
    plurals={"half": "halves"},
)

_SPANISH = Lexicon(
    small=_row(
        "cero uno dos tres cuatro cinco seis siete ocho nueve diez once doce trece catorce quince"
        " dieciséis diecisiete dieciocho diecinueve veinte veintiuno veintidós veintitrés"
        " veinticuatro veinticinco veintiséis veintisiete veintiocho veintinueve"
    ),
    tens=_row("_ diez veinte treinta cuarenta cincuenta sesenta setenta ochenta noventa"),
    hundreds=_row(
        "_ ciento doscientos trescientos cuatrocientos quinientos seiscientos setecientos"
        " ochocientos novecientos"
    ),
    parts=_parts(
        "medio tercio cuarto quinto sexto séptimo octavo noveno décimo onceavo doceavo treceavo"
        " catorceavo quinceavo dieciseisavo diecisieteavo dieciochoavo diecinueveavo veinteavo"
        " centésimo milésimo",
        20,
        100,
        1000,
    ),
    signs={
        Sign.PLUS: "más",
        Sign.MINUS: "menos",
        Sign.TIMES: "por",
        Sign.OVER: "dividido entre",
        Sign.OF: "de",
    },
    equals="es igual a",
    blank="espacio en blanco",
    negative="menos",
    join="y",
    over="sobre",
    opening="abre paréntesis",
    closing="cierra paréntesis",
    point="coma",
    percent="por ciento",
    claim="¿es verdad que {}?",
    compare="¿cuál es mayor, {} o {}?",
    about="¿cuánto es más o menos {}?",
    pictures={
        ImageKind.FRAME: "un marco de diez con algunos puntos",
        ImageKind.PAIRS: "un marco de diez con algunos puntos",
        ImageKind.DICE: "puntos como en los dados",
        ImageKind.ARRAY: "puntos en filas",
        ImageKind.DOTS: "algunos puntos",
    },
    picture_names={
        ImageKind.FRAME: "Marco de diez",
        ImageKind.PAIRS: "Marco de diez",
        ImageKind.DICE: "Puntos de dados",
        ImageKind.ARRAY: "Filas de puntos",
        ImageKind.DOTS: "Puntos",
    },
)

LEXICONS: Mapping[Language, Lexicon] = {Language.EN: _ENGLISH, Language.ES: _SPANISH}

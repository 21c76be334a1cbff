"""What can be wrong with a line of text, and the one sentence that says so.

Every reason is a row of `RULES`: what would be accepted, in each language, and lines that are
refused for it. The tests walk the table.
"""

from dataclasses import dataclass
from enum import Enum

from waysaid.number.language import Language

LONGEST = 200
"""The most characters of a problem: our choice, several times a long three-addend problem."""

MOST_DIGITS = 9
"""The most digits of one number: our choice; a class needs seven (1,000,000)."""

DEEPEST = 10
"""The most brackets and minus signs inside one another: our choice."""

_WIDTH = 60
"""How many characters of a long line a sentence shows round the place."""


class Reason(Enum):
    """Why a line cannot be read."""

    NOTHING = "nothing"
    NO_NUMBER = "no-number"
    NO_SIGN = "no-sign"
    NO_EQUALS = "no-equals"
    NO_END = "no-end"
    NOT_CLOSED = "not-closed"
    STRANGE = "strange"
    COMMA = "comma"
    POINT = "point"
    BOTTOM_ZERO = "bottom-zero"
    TOO_MANY_DIGITS = "too-many-digits"
    TOO_LONG = "too-long"
    TOO_DEEP = "too-deep"
    BLANKS = "blanks"
    NO_ANSWER = "no-answer"
    IMAGE = "image"


@dataclass(frozen=True, slots=True)
class Rule:
    """What would be accepted, in words, and lines that are refused for this reason."""

    en: str
    es: str
    refused: tuple[str, ...]

    def wanted(self, language: Language) -> str:
        """Return what would be accepted, as the second half of a sentence."""
        return self.es if language is Language.ES else self.en


RULES = {
    Reason.NOTHING: Rule(
        "a problem such as 37 + 25 would fit here",
        "aquí cabe un problema como 37 + 25",
        ("", "   ", "\n", "\u00a0"),
    ),
    Reason.NO_NUMBER: Rule(
        "a number would fit here",
        "aquí cabe un número",
        ("37 +", "+ 25", "37 + + 25", "7 + _ = +", "-_ + 3 = 5", "()", "= 5", "37 plus"),
    ),
    Reason.NO_SIGN: Rule(
        "+, −, x or / and another number would fit here",
        "aquí cabe +, −, x o / y otro número",
        ("37 25", "37 (25)", "3 _", "37 + 25)", "1 1 1"),
    ),
    Reason.NO_EQUALS: Rule(
        "an equals sign would fit here",
        "aquí cabe un signo igual",
        ("7 _ = 12", "_ _ = 5"),
    ),
    Reason.NO_END: Rule(
        "the end of the equation would fit here",
        "aquí cabe el final de la ecuación",
        ("7 + _ = 12 = 12", "_ = 12 13", "7 + _ = 12)"),
    ),
    Reason.NOT_CLOSED: Rule(
        "a closing bracket would fit here",
        "aquí cabe un paréntesis que cierra",
        ("(37 + 25", "3 x (4 + 5 6)", "((1 + 2) = 3"),
    ),
    Reason.STRANGE: Rule(
        "numbers with +, −, x or / between them would fit here",
        "aquí caben números con +, −, x o / entre ellos",
        (
            "37 & 25",
            "hello",
            "37 + 25!",
            "37 add 25",
            "3.",
            ".5",
            "3⁄4",
            "37 + ٢٥",
            "\x00",
            "2 # 5",
        ),
    ),
    Reason.COMMA: Rule(
        "a comma fits only before three digits, as in 1,000, or as a decimal point, as in 1,5",
        "una coma solo cabe antes de tres cifras, como en 1,000, o como coma decimal, como en 1,5",
        ("1,0000", "1234,567", "3, 4", ",5", "1,000,00"),
    ),
    Reason.POINT: Rule(
        "a number with one point, such as 1.25, or 1000000 without, would fit here",
        "aquí cabe un número con un solo punto, como 1.25, o 1000000 sin punto",
        ("1.250.000 + 300", "2.1.25", "1.000.000"),
    ),
    Reason.BOTTOM_ZERO: Rule(
        "a fraction with a bottom number that is not 0 would fit here",
        "aquí cabe una fracción cuyo número de abajo no sea 0",
        ("1/0", "2 3/0", "5 + 0/00"),
    ),
    Reason.TOO_MANY_DIGITS: Rule(
        f"a number with at most {MOST_DIGITS} digits would fit here",
        f"aquí cabe un número de {MOST_DIGITS} cifras como mucho",
        ("1234567890", "1/1234567890", "1,234,567,890", "0.1234567890", "9" * 150),
    ),
    Reason.TOO_LONG: Rule(
        f"a problem with at most {LONGEST} characters would fit here",
        f"aquí cabe un problema de {LONGEST} caracteres como mucho",
        ("1" + " + 1" * 50, "9" * 5000, " " * 199 + "12"),
    ),
    Reason.TOO_DEEP: Rule(
        f"at most {DEEPEST} brackets or minus signs inside one another would fit here",
        f"aquí caben {DEEPEST} paréntesis o signos menos, uno dentro de otro, como mucho",
        ("(" * 11 + "1" + ")" * 11, "-" * 12 + "1", "(" * 200, "(-" * 6 + "1" + ")" * 6),
    ),
    Reason.BLANKS: Rule(
        "one blank in an equation (7 + _ = 12), or ? after a whole one (7 + 5 = 12 ?), would fit",
        "aquí cabe un hueco en una ecuación (7 + _ = 12), o ? tras una completa (7 + 5 = 12 ?)",
        ("7 + 5 = 12", "7 + _", "_ + _ = 12", "7 + _ = ?", "_", "7 + _ =", "3 ? _", "about _"),
    ),
    Reason.NO_ANSWER: Rule(
        "a problem that has one answer would fit here",
        "aquí cabe un problema que tenga una respuesta",
        ("7 / (2 - 2)", "0 x _ = 0", "_ / 0 = 0", "0 / _ = 5", "0 x _ = 3", "(_ - 2) / 0 = 1"),
    ),
    Reason.IMAGE: Rule(
        "a picture such as image frame 10: 7, image dice: 3 2 or image array: 3 x 4 would fit here",
        "aquí cabe una imagen como image frame 10: 7, image dice: 3 2 o image array: 3 x 4",
        ("image", "image 7", "image frame 10: 11", "image dice: 7", "image dots: 1,1 1,1"),
    ),
}


class _Where(Enum):
    NOWHERE = "nothing was given"
    END = "after the last character"
    ALL = "the line as a whole"
    PLACE = "a place in the line"


_SENTENCES = {
    Language.EN: {
        _Where.NOWHERE: "There is nothing to read: {wanted}.",
        _Where.END: "Cannot read the end of ‘{whole}’: {wanted}.",
        _Where.ALL: "Cannot read ‘{whole}’: {wanted}.",
        _Where.PLACE: "Cannot read ‘{seen}’ at place {place} of ‘{whole}’: {wanted}.",
    },
    Language.ES: {
        _Where.NOWHERE: "No hay nada que leer: {wanted}.",
        _Where.END: "No se puede leer el final de «{whole}»: {wanted}.",
        _Where.ALL: "No se puede leer «{whole}»: {wanted}.",
        _Where.PLACE: "No se puede leer «{seen}» en el lugar {place} de «{whole}»: {wanted}.",
    },
}


class Unreadable(ValueError):  # noqa: N818  the name says what went wrong
    """Raised for text that is not a problem or an equation.

    `at` is the (start, end) of the place in `given`, in characters; `reason` is a row of `RULES`.
    An ordinary class, not a frozen one: the interpreter must be able to set a traceback on it.
    """

    def __init__(self, given: str, at: tuple[int, int], reason: Reason) -> None:
        super().__init__(given, at, reason)
        self.given = given
        self.at = at
        self.reason = reason

    @property
    def wanted(self) -> str:
        """What would be accepted, in English."""
        return RULES[self.reason].wanted(Language.EN)

    def __str__(self) -> str:
        """Return the English sentence."""
        return self.sentence(Language.EN)

    def sentence(self, language: Language) -> str:
        """Return one sentence on one line: what, where, and what would be accepted."""
        start, end = self.at
        seen = _clipped(self.given[start:end].strip(), 0)[0]
        whole = _clipped(self.given.strip(), start)[0]
        if not whole:
            where = _Where.NOWHERE
        elif not seen:
            where = _Where.END
        else:
            where = _Where.ALL if seen == whole else _Where.PLACE
        wanted = RULES[self.reason].wanted(language)
        return _SENTENCES[language][where].format(
            seen=seen, whole=whole, place=start + 1, wanted=wanted
        )

    @property
    def marked(self) -> str:
        """The text on one line, and under it a caret for every character of the place."""
        start, end = self.at
        shown, before = _clipped(self.given, start)
        room = max(1, len(shown) - before)
        return f"{shown}\n{' ' * before}{'^' * min(room, max(1, end - start))}"


def _clipped(given: str, place: int) -> tuple[str, int]:
    """Return at most `_WIDTH` characters round the place, on one line, and where it is in them."""
    first = max(0, min(place - _WIDTH // 2, len(given) - _WIDTH))
    last = first + _WIDTH
    line = "".join(one if one.isprintable() else " " for one in given[first:last])
    head = "…" if first else ""
    tail = "…" if last < len(given) else ""
    return head + line + tail, place - first + len(head)

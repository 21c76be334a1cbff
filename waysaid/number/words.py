"""Say numbers, expressions and equations in words, for a screen reader.

English leaves the "and" out of one hundred twenty-five, because this tool hears "and" as plus.
"""

from fractions import Fraction

from waysaid.number.expression import Blank, Equation, Expression, Operation, Sign
from waysaid.number.image import Image
from waysaid.number.language import Language
from waysaid.number.lexicon import LEXICONS, Lexicon
from waysaid.number.problem import About, Claim, Compare, Problem
from waysaid.number.text import bracketed, number_text
from waysaid.number.written import Form, Number, Written

_MILLION = 10**6
_TOO_LARGE = 10**9


def say(problem: Problem, language: Language) -> str:
    """Return the words: "thirty-seven plus twenty-five", "siete más espacio en blanco ..."."""
    lexicon = LEXICONS[language]
    match problem:
        case Equation():
            left, right = say(problem.left, language), say(problem.right, language)
            return f"{left} {lexicon.equals} {right}"
        case Operation():
            left = _side(problem.left, problem.sign, False, language)
            right = _side(problem.right, problem.sign, True, language)
            return f"{left} {lexicon.signs[problem.sign]} {right}"
        case Blank():
            return lexicon.blank
        case Claim():
            return lexicon.claim.format(say(problem.equation, language))
        case Compare():
            left, right = say(problem.left, language), say(problem.right, language)
            return lexicon.compare.format(left, right)
        case About():
            return lexicon.about.format(say(problem.expression, language))
        case Image():
            return _picture(problem, language)
        case _:
            return number_words(problem, language)


def number_words(value: Number, language: Language) -> str:
    """Return a number in words; digits where there is no word for it (a billion and above)."""
    lexicon = LEXICONS[language]
    if isinstance(value, Written):
        return _written(value, language)
    if value < 0:
        return f"{lexicon.negative} {number_words(-value, language)}"
    if isinstance(value, int):
        return _whole(value, language)
    whole, top = divmod(value.numerator, value.denominator)
    return _mixed(whole, top, value.denominator, language)


def _mixed(whole: int, top: int, bottom: int, language: Language) -> str:
    if max(whole, bottom) >= _TOO_LARGE:
        return number_text(whole + Fraction(top, bottom))
    part = _part(top, bottom, language)
    join = LEXICONS[language].join
    return f"{_whole(whole, language)} {join} {part}" if whole else part


def _written(number: Written, language: Language) -> str:
    """Say a number in its form: zero point six five, fifteen percent, six quarters."""
    lexicon = LEXICONS[language]
    if number.value < 0:
        size = Written(-number.value, number.form, number.size, -number.whole)
        return f"{lexicon.negative} {_written(size, language)}"
    if number.form is Form.PARTS:
        return _mixed(number.whole, number.top, number.size, language)
    printed = number_text(number).removesuffix("%")
    whole, point, places = printed.partition(".")
    said = _whole(int(whole), language)
    if point:
        said = " ".join([said, lexicon.point, *(lexicon.small[int(one)] for one in places)])
    return f"{said} {lexicon.percent}" if number.form is Form.PERCENT else said


def _picture(image: Image, language: Language) -> str:
    """Say what kind of picture it is, and never how many dots it has."""
    return LEXICONS[language].pictures[image.kind]


def picture_name(image: Image, language: Language) -> str:
    """Return what a picture is called in a list of problems: `Ten frame`; never how many dots."""
    return LEXICONS[language].picture_names[image.kind]


def _side(part: Expression, sign: Sign, right: bool, language: Language) -> str:
    """Say one side of a sign; brackets are said only round an operation."""
    said = say(part, language)
    if isinstance(part, Operation) and bracketed(part, sign, right):
        return f"{LEXICONS[language].opening} {said} {LEXICONS[language].closing}"
    return said


def _whole(value: int, language: Language) -> str:
    if value >= _TOO_LARGE:
        return number_text(value)
    if language is Language.ES:
        return _spanish(value)
    return _english(value)


def _english(value: int) -> str:
    words = LEXICONS[Language.EN]
    if value < 20:
        return words.small[value]
    if value < 100:
        tens, ones = divmod(value, 10)
        return words.tens[tens] + (f"-{words.small[ones]}" if ones else "")
    for size, name in ((_MILLION, "million"), (1000, "thousand"), (100, "hundred")):
        count, rest = divmod(value, size)
        if count:
            head = f"{_english(count)} {name}"
            return f"{head} {_english(rest)}" if rest else head
    raise AssertionError(value)


def _spanish(value: int) -> str:
    words = LEXICONS[Language.ES]
    if value < 30:
        return words.small[value]
    if value < 100:
        tens, ones = divmod(value, 10)
        return words.tens[tens] + (f" y {words.small[ones]}" if ones else "")
    if value < 1000:
        count, rest = divmod(value, 100)
        head = "cien" if value == 100 else words.hundreds[count]
        return f"{head} {_spanish(rest)}" if rest else head
    if value < _MILLION:
        count, rest = divmod(value, 1000)
        head = "mil" if count == 1 else f"{_before_a_noun(count)} mil"
    else:
        count, rest = divmod(value, _MILLION)
        head = f"{_before_a_noun(count)} {'millón' if count == 1 else 'millones'}"
    return f"{head} {_spanish(rest)}" if rest else head


def _before_a_noun(count: int) -> str:
    """Return the Spanish number as before a masculine noun: un, veintiún, treinta y un."""
    said = _spanish(count)
    if said.endswith("veintiuno"):
        return said.removesuffix("uno") + "ún"
    return said.removesuffix("o") if said.endswith("uno") else said


def _part(top: int, bottom: int, language: Language) -> str:
    lexicon = LEXICONS[language]
    name = lexicon.parts.get(bottom)
    if name is None:
        return f"{_whole(top, language)} {lexicon.over} {_whole(bottom, language)}"
    count = _before_a_noun(top) if language is Language.ES else _english(top)
    return f"{count} {name if top == 1 else _several(name, lexicon)}"


def _several(name: str, lexicon: Lexicon) -> str:
    return lexicon.plurals.get(name, f"{name}s")

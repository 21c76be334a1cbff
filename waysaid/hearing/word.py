"""Cut a line of talk into words, each with its place in the line and the pause before it."""

import re
from dataclasses import dataclass
from enum import IntEnum

from waysaid.hearing.fold import fold, letters
from waysaid.hearing.lexicon import Lexicon
from waysaid.hearing.meaning import Meaning


class Pause(IntEnum):
    """What parts a word from the one before it."""

    NONE = 0
    COMMA = 1
    STOP = 2


@dataclass(frozen=True, slots=True)
class Word:
    """A word as it is read, folded; where it stands in the line; the pause before it."""

    text: str
    span: tuple[int, int]
    pause: Pause


_CUT = re.compile(
    r"(?P<arrow>[-=~]{1,8}+>|[→⇒➔➜⟶⇨➡↦])"
    r"|(?P<mixed>[0-9]{1,9}+[ ]?[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞])"
    r"|(?P<digits>[0-9]{1,9}+[ ][0-9]{1,4}+/[0-9]{1,4}+(?![0-9/.])"
    r"|[0-9]{1,9}+/[0-9]{1,9}+(?![0-9/.])"
    r"|(?:[0-9]++(?:[.,][0-9]++){0,3}|(?<![0-9\w])[.,][0-9]++)"
    r"(?:%|'?s(?!\w)|(?:st|nd|rd|ths?)(?!\w))?)"
    r"|(?P<letters>[^\W\d_](?:[^\W\d_]|[\0'])*+)"
    r"|(?P<rest>\.{2,}+|…)"
    r"|(?P<stop>[.!?\n¿¡]++)"
    r"|(?P<comma>[,;—]++)"
    r"|(?P<sign>[-−+*×·÷/=<>≈&%:])"
)
"""The pieces of a folded line, likeliest meant first; what is none of them is passed over."""

_VULGAR = {
    "½": "1/2", "⅓": "1/3", "⅔": "2/3", "¼": "1/4", "¾": "3/4", "⅕": "1/5", "⅖": "2/5", "⅗": "3/5",
    "⅘": "4/5", "⅙": "1/6", "⅚": "5/6", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8",
}  # fmt: skip
_PROPER = re.compile(r"[0-9]+ ([0-9]+)/([0-9]+)")
_PAUSES = {"arrow": Pause.STOP, "stop": Pause.STOP, "comma": Pause.COMMA, "rest": Pause.COMMA}


def words_of(line: str, lexicon: Lexicon) -> tuple[Word, ...]:
    """Return the words of a line in order; work grows with its length alone.

    A number written in digits is one word, as are `3/4`, `1 1/4`, `0.65`, `15%`, `6s` and a sign.
    Spans are exact slices of the line. What is no word in any way (pictures, brackets) is left out.
    A word between a count and its part comes behind both: `two more quarters` is two quarters more.
    """
    flat = fold(line)
    found: list[Word] = []
    pause, place = Pause.NONE, 0
    while match := _CUT.search(flat, place):
        kind, (start, end) = str(match.lastgroup), match.span()
        if kind == "digits":
            end = start + len(_digits(match[0], flat[max(0, start - 2) : start], lexicon))
        place = end
        if kind == "sign":
            kind = _sign(flat, match, lexicon)
        if kind in _PAUSES:
            pause = max(pause, _PAUSES[kind])
        elif kind != "none":
            found.append(Word(_text(kind, flat[start:end]), (start, end), pause))
            pause = Pause.NONE
    for place in range(len(found) - 2):
        if _parted(found[place : place + 3], lexicon):
            between, part = found[place + 1 : place + 3]
            found[place + 1] = Word(part.text, (between.span[0], part.span[1]), Pause.NONE)
            found[place + 2] = Word(between.text, part.span, Pause.NONE)
    return tuple(found)


def _parted(words: list[Word], lexicon: Lexicon) -> bool:
    """Tell whether a word parts a count from what is counted: two more quarters, ten more cents.

    One more is a hop of its own: one more quarter.
    """
    count, between, part = words
    numbers = lexicon.numbers
    if between.text not in numbers.between or between.pause or part.pause:
        return False
    values = numbers.values.get((count.text,), ())
    one = count.text == "1" or any(value.value == 1 for value in values)
    more = any(meaning is Meaning.MORE for meaning, _ in lexicon.phrases.get((between.text,), ()))
    counted = (count.text.isdigit() or bool(values)) and not (one and more)
    name = (part.text,)
    small = name in numbers.parts or name in numbers.small_measures
    return counted and (small or name in dict(numbers.percents))


def _text(kind: str, piece: str) -> str:
    if kind == "mixed":
        return f"{piece[:-1].strip()} {_VULGAR[piece[-1]]}".strip()
    return letters(piece) or piece


def _digits(piece: str, before: str, lexicon: Lexicon) -> str:
    """Return as much of a run of digits, points and commas as is one number.

    `before` is what stands right before it: behind `8,` a comma goes on with a list.
    """
    listed = before[:1].isdigit() and before[1:] == ","
    proper = _PROPER.fullmatch(piece)
    if proper:
        return piece if int(proper[1]) < int(proper[2]) else piece.split(" ", maxsplit=1)[0]
    marks = [at for at, one in enumerate(piece) if one in ".," and at]
    if not marks or _grouped(piece, marks):
        return piece
    first, several = marks[0], len(marks) > 1
    if piece[first] not in lexicon.numbers.decimal_marks or piece[0] in ".,":
        return piece[:first]
    if piece[first] == "," and (several or listed):
        return piece[:first]
    return piece[: marks[1]] if several else piece


def _grouped(piece: str, marks: list[int]) -> bool:
    """Tell whether the marks part thousands: all the same, one to three digits, then threes."""
    same = len({piece[at] for at in marks}) == 1
    groups = re.split("[.,]", re.sub("[^0-9.,]", "", piece))
    threes = all(len(group) == 3 for group in groups[1:])
    return same and threes and 1 <= len(groups[0]) <= 3 and groups[0][0] != "0"


def _sign(flat: str, match: re.Match[str], lexicon: Lexicon) -> str:
    """Tell what a sign is where it stands: "sign", a pause ("comma") or nothing ("none")."""
    sign = match[0]
    start, end = match.span()
    before, after = flat[max(0, start - 2) : start], flat[end : end + 2]
    digits = before.strip()[-1:].isdigit() and after.strip()[:1].isdigit()
    if sign == ":":
        return "sign" if digits and (":",) in lexicon.phrases else "comma"
    if sign == "-":
        return _hyphen(flat, match.start(), lexicon)
    if sign == "/" and before[-1:].isalpha() and after[:1].isalpha():
        return "comma"
    return "sign"


_REACH = 24
"""How far from a hyphen its neighbours are looked at: longer than any word for a number."""


def _hyphen(flat: str, at: int, lexicon: Lexicon) -> str:
    """Tell whether a hyphen is a minus, a dash or a joint: `37-3`, `so - sixty`, twenty-four."""
    before, after = flat[max(0, at - _REACH) : at], flat[at + 1 : at + 1 + _REACH]
    if before[-1:] == "-" or after[:1] == "-":
        return "comma"
    if after[:1].isdigit() and not before[-1:].isalpha():
        return "sign"
    if before[-1:].isalpha() and (after[:1].isalpha() or after[:1].isdigit()):
        return "none"
    left, right = _last_word(before), _first_word(after)
    known = lexicon.numbers.words
    numbers = (left[-1:].isdigit() or left in known) and (right[:1].isdigit() or right in known)
    if numbers:
        return "sign"
    return "none" if before[-1:].isdigit() and after[:1].isalpha() else "comma"


def _last_word(text: str) -> str:
    return letters(re.split(r"[\s,;.-]+", text.rstrip())[-1])


def _first_word(text: str) -> str:
    return letters(re.split(r"[\s,;.-]+", text.lstrip())[0])

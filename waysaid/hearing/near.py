"""Words for numbers with one slip of spelling: sevn, twentey, fourty."""

from functools import lru_cache

from waysaid.hearing.lexicon import Lexicon
from waysaid.hearing.number_words import Value

_SHORTEST = 4
"""The shortest word that is taken for a slip: shorter ones are too like others. Our choice."""


@lru_cache(maxsize=2048)
def near_values(word: str, lexicon: Lexicon) -> tuple[Value, ...]:
    """Return what numbers a misspelt word may be, noise 2; () for a word that is known.

    A slip is one letter left out, put in, changed or two swapped, behind the first letter.
    """
    words = lexicon.numbers
    if len(word) < _SHORTEST or not word.isalpha() or word in lexicon.words | words.ordinary:
        return ()
    found: dict[tuple[int, bool], Value] = {}
    for known in sorted(words.near):
        if known[0] == word[0] and is_one_slip(known, word):
            for value in words.values.get((known,), ()):
                if value.noise == 0:
                    found[value.value, value.many] = Value(value.value, 2, value.many)
    return tuple(found.values())


def is_one_slip(one: str, other: str) -> bool:
    """Tell whether two words differ by exactly one slip of typing."""
    if one == other or abs(len(one) - len(other)) > 1:
        return False
    short, long = sorted((one, other), key=len)
    at = next((i for i, (a, b) in enumerate(zip(short, long, strict=False)) if a != b), len(short))
    if len(short) < len(long):
        return short[at:] == long[at + 1 :]
    if short[at + 1 :] == long[at + 1 :]:
        return True
    swapped = short[at : at + 2][::-1] == long[at : at + 2]
    return swapped and short[at + 2 :] == long[at + 2 :]

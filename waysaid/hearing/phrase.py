"""Phrases of a lexicon as they are written in its file: `take/took away`, `that/ is`."""

from itertools import product

from waysaid.hearing.fold import fold, letters

Phrase = tuple[str, ...]
"""Folded words."""

SIGNS = frozenset("+-−*×·÷/=<>≈&%:#")
"""Signs that are words of their own."""


def phrases_of(written: str) -> tuple[Phrase, ...]:
    """Return every phrase that a line of a lexicon stands for; "" is the empty phrase.

    Words part at spaces. A word with `/` is a choice, and an empty choice may be left out:
    `just/ knew/know it` is six words long at most four ways. A `/` alone is the sign.
    """
    choices = [_choice(one) for one in written.split()]
    made = (tuple(word for word in words if word) for words in product(*choices))
    return tuple(dict.fromkeys(made))


def _choice(one: str) -> list[str]:
    """Return the folded words that may stand in one place, an empty one among them."""
    return ["/"] if one == "/" else [letters(fold(word)) for word in one.split("/")]

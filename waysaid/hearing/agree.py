"""Agreement with another child: `same as Noor`, read from what Noor said of the problem."""

from collections.abc import Mapping
from dataclasses import replace

from waysaid.hearing.lexicon import Lexicon
from waysaid.hearing.meaning import Meaning
from waysaid.hearing.reading import Part, Reading, Told
from waysaid.hearing.word import Word, words_of

_NEAR = 4
"""Within how many words behind `same as` a name must come. Our choice."""


def agreed(reading: Reading, lexicon: Lexicon, before: Mapping[str, Reading]) -> Reading:
    """Return the reading of a child who says no step but that it was as a named child's.

    `before` is what each child of the class said of the problem, by name. The steps are then that
    child's, every part of them implied; the answer stays what this child said, or None. Any other
    reading comes back as it is.
    """
    if reading.told or not before:
        return reading
    words = words_of(reading.words, lexicon)
    found = _named(words, lexicon, before)
    if found is None:
        return reading
    span, said = found
    return replace(
        reading,
        told=tuple(Told(told.step, tuple(Part), span) for told in said.told),
        family=said.family,
    )


def _named(
    words: tuple[Word, ...], lexicon: Lexicon, before: Mapping[str, Reading]
) -> tuple[tuple[int, int], Reading] | None:
    """Return where a child is named behind words of agreement, and what that child said."""
    names = {
        tuple(word.text for word in words_of(name, lexicon)): reading
        for name, reading in before.items()
    }
    texts = [word.text for word in words]
    for place in range(len(words)):
        behind = _behind_agreement(texts, place, lexicon)
        for start in range(behind, min(behind + _NEAR, len(words))) if behind else ():
            for name, reading in names.items():
                if name and tuple(texts[start : start + len(name)]) == name:
                    last = words[start + len(name) - 1]
                    return (words[start].span[0], last.span[1]), reading
    return None


def _behind_agreement(texts: list[str], place: int, lexicon: Lexicon) -> int:
    """Return the place behind the longest phrase of agreement that begins there; 0 where none."""
    for end in range(min(place + lexicon.longest, len(texts)), place, -1):
        meanings = lexicon.phrases.get(tuple(texts[place:end]), ())
        if any(meaning is Meaning.SAME_AS for meaning, _ in meanings):
            return end
    return 0

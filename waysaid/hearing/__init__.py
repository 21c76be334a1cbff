"""What a child said, as a reading: the steps as said, the answer said, the family."""

from waysaid.hearing.lexicon import lexicon_of
from waysaid.hearing.numerals import Numeral, numerals_at
from waysaid.hearing.phrase import Phrase, phrases_of
from waysaid.hearing.read import read
from waysaid.hearing.reading import AnswerSaid, Part, Reading, Rival, Told
from waysaid.hearing.word import Word, words_of

__all__ = [
    "AnswerSaid",
    "Numeral",
    "Part",
    "Phrase",
    "Reading",
    "Rival",
    "Told",
    "Word",
    "lexicon_of",
    "numerals_at",
    "phrases_of",
    "read",
    "words_of",
]

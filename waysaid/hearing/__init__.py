"""What a child said, as a reading: the steps as said, the answer said, the family."""

from waysaid.hearing.read import read
from waysaid.hearing.reading import AnswerSaid, Part, Reading, Rival, Told

__all__ = ["AnswerSaid", "Part", "Reading", "Rival", "Told", "read"]

"""A wrong answer, and what may have led to it."""

from waysaid.slips.ask import slip_question
from waysaid.slips.catalogue import foresee, slips
from waysaid.slips.note import slip_answer, slip_note
from waysaid.slips.slip import Likely, Share, Slip, SlipName

__all__ = [
    "Likely",
    "Share",
    "Slip",
    "SlipName",
    "foresee",
    "slip_answer",
    "slip_note",
    "slip_question",
    "slips",
]

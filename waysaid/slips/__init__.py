"""A wrong answer, and what may have led to it."""

from waysaid.slips.catalogue import expected, slips
from waysaid.slips.note import slip_note
from waysaid.slips.slip import Likely, Slip, SlipName

__all__ = ["Likely", "Slip", "SlipName", "expected", "slip_note", "slips"]

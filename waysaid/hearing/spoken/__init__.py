"""Free words: from what a child said in words to steps, by the least costly explanation."""

from waysaid.hearing.spoken.listen import Explained, alike, listen
from waysaid.hearing.spoken.sure import Share, shares
from waysaid.hearing.spoken.trail import forget

__all__ = ["Explained", "Share", "alike", "forget", "listen", "shares"]

"""Free words: from what a child said in words to steps, by the least costly explanation."""

from waysaid.hearing.spoken.listen import Explained, listen
from waysaid.hearing.spoken.sure import Share, shares
from waysaid.hearing.spoken.trail import forget

__all__ = ["Explained", "Share", "forget", "listen", "shares"]

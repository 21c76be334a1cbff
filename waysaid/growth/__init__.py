"""Many talks: what a class and each child showed, and what could come next."""

from waysaid.growth.shown import TOLD, USED, Held, How, Shown, right_or_not, shown_in

__all__ = ["TOLD", "USED", "Held", "How", "Shown", "right_or_not", "shown_in"]

"""A string of problems: what connects them, what if they all changed, and strings to start from."""

from waysaid.strings.change import Change, ChangeError, Does, Refusal, what_if
from waysaid.strings.compose import Composed, compose
from waysaid.strings.leaf import leaves_of, with_leaves
from waysaid.strings.link import Link, LinkKind, Place, Saying
from waysaid.strings.link_words import link_question, link_says
from waysaid.strings.links import MOST, links
from waysaid.strings.noticing import Matched, noticing
from waysaid.strings.plain import Plain, plain_of
from waysaid.strings.starter import (
    Starter,
    StarterError,
    StarterText,
    starter_text,
    starters,
    starters_in,
)
from waysaid.strings.wish import Wish, WishError

__all__ = [
    "MOST",
    "Change",
    "ChangeError",
    "Composed",
    "Does",
    "Link",
    "LinkKind",
    "Matched",
    "Place",
    "Plain",
    "Refusal",
    "Saying",
    "Starter",
    "StarterError",
    "StarterText",
    "Wish",
    "WishError",
    "compose",
    "leaves_of",
    "link_question",
    "link_says",
    "links",
    "noticing",
    "plain_of",
    "starter_text",
    "starters",
    "starters_in",
    "what_if",
    "with_leaves",
]

"""A string of problems: what connects them, what if they all changed, and strings to start from."""

from waysaid.strings.change import Change, ChangeError, Does, Refusal, what_if
from waysaid.strings.leaf import leaves_of, with_leaves
from waysaid.strings.link import Link, LinkKind, Place, Saying
from waysaid.strings.link_words import link_question, link_says
from waysaid.strings.links import MOST, links
from waysaid.strings.starter import (
    Starter,
    StarterError,
    StarterText,
    starter_text,
    starters,
    starters_in,
)

__all__ = [
    "MOST",
    "Change",
    "ChangeError",
    "Does",
    "Link",
    "LinkKind",
    "Place",
    "Refusal",
    "Saying",
    "Starter",
    "StarterError",
    "StarterText",
    "leaves_of",
    "link_question",
    "link_says",
    "links",
    "starter_text",
    "starters",
    "starters_in",
    "what_if",
    "with_leaves",
]

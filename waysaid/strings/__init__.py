"""A string of problems: what connects them, what if they all changed, and strings to start from."""

from waysaid.strings.change import Change, ChangeError, Does, Refusal, what_if
from waysaid.strings.compose import Composed, alternatives, composable, compose
from waysaid.strings.edit import Cost, cost, recompose, weigh
from waysaid.strings.leaf import leaves_of, with_leaves
from waysaid.strings.link import Link, LinkKind, Place, Saying
from waysaid.strings.link_words import link_question, link_says
from waysaid.strings.links import MOST, links
from waysaid.strings.noticing import Matched, noticing
from waysaid.strings.outcome import Outcome, outcome
from waysaid.strings.outcome_words import Answers, Why
from waysaid.strings.starter import (
    Starter,
    StarterError,
    StarterText,
    starter_text,
    starters,
    starters_in,
)
from waysaid.strings.topic import FOCUSES, HOMES, Topic, topics_of
from waysaid.strings.wanting import Row
from waysaid.strings.wish import LONGEST, SHORTEST, Wish, WishError
from waysaid.strings.year import (
    Cause,
    Curriculum,
    Evidence,
    Happened,
    Idea,
    Move,
    Planned,
    SchoolDay,
    Talk,
    Year,
    YearError,
    faults,
    idea_name,
    ideas_asked,
    lay_out_year,
    move_says,
    numbered_days,
    re_plan,
    school_days,
    year_schema,
    year_told,
)
from waysaid.strings.year.given import Given, Source

__all__ = [
    "FOCUSES",
    "HOMES",
    "LONGEST",
    "MOST",
    "SHORTEST",
    "Answers",
    "Cause",
    "Change",
    "ChangeError",
    "Composed",
    "Cost",
    "Curriculum",
    "Does",
    "Evidence",
    "Given",
    "Happened",
    "Idea",
    "Link",
    "LinkKind",
    "Matched",
    "Move",
    "Outcome",
    "Place",
    "Planned",
    "Refusal",
    "Row",
    "Saying",
    "SchoolDay",
    "Source",
    "Starter",
    "StarterError",
    "StarterText",
    "Talk",
    "Topic",
    "Why",
    "Wish",
    "WishError",
    "Year",
    "YearError",
    "alternatives",
    "composable",
    "compose",
    "cost",
    "faults",
    "idea_name",
    "ideas_asked",
    "lay_out_year",
    "leaves_of",
    "link_question",
    "link_says",
    "links",
    "move_says",
    "noticing",
    "numbered_days",
    "outcome",
    "re_plan",
    "recompose",
    "school_days",
    "starter_text",
    "starters",
    "starters_in",
    "topics_of",
    "weigh",
    "what_if",
    "with_leaves",
    "year_schema",
    "year_told",
]

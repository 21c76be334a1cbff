"""A year of talks for a grade: its ideas, its days, laid out, told as data."""

from waysaid.strings.year.check import faults
from waysaid.strings.year.days import SchoolDay, numbered_days, school_days
from waysaid.strings.year.ideas import Curriculum, Idea, idea_name
from waysaid.strings.year.lay_out import (
    Evidence,
    Talk,
    Year,
    YearError,
    lay_out_year,
)
from waysaid.strings.year.re_plan import Cause, Happened, Move, Planned, move_says, re_plan
from waysaid.strings.year.schema import year_schema
from waysaid.strings.year.table import ideas_asked
from waysaid.strings.year.told import year_told

__all__ = [
    "Cause",
    "Curriculum",
    "Evidence",
    "Happened",
    "Idea",
    "Move",
    "Planned",
    "SchoolDay",
    "Talk",
    "Year",
    "YearError",
    "faults",
    "idea_name",
    "ideas_asked",
    "lay_out_year",
    "move_says",
    "numbered_days",
    "re_plan",
    "school_days",
    "year_schema",
    "year_told",
]

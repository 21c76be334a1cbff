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
from waysaid.strings.year.told import year_told

__all__ = [
    "Curriculum",
    "Evidence",
    "Idea",
    "SchoolDay",
    "Talk",
    "Year",
    "YearError",
    "faults",
    "idea_name",
    "lay_out_year",
    "numbered_days",
    "school_days",
    "year_told",
]

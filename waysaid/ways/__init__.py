"""A problem, and every way to work it in the head."""

from waysaid.ways.effort import Effort, EffortPart, Reason, effort_of, tenths_of
from waysaid.ways.explore import ways
from waysaid.ways.leans import Leans
from waysaid.ways.said import family_name, how_said
from waysaid.ways.step import Kind, Step, opened, step
from waysaid.ways.way import Family, Way

__all__ = [
    "Effort",
    "EffortPart",
    "Family",
    "Kind",
    "Leans",
    "Reason",
    "Step",
    "Way",
    "effort_of",
    "family_name",
    "how_said",
    "opened",
    "step",
    "tenths_of",
    "ways",
]

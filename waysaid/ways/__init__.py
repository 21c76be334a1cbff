"""A problem, and every way to work it in the head."""

from waysaid.ways.effort import Effort, EffortPart, Reason, effort_of, tenths_of
from waysaid.ways.ending import way_says
from waysaid.ways.explore import ways, weighed_ways
from waysaid.ways.family_notes import FAMILY_NOTES, FamilyNote
from waysaid.ways.grades import GradeRange, grades_of
from waysaid.ways.images.found import can_be_seen, groups_fitting, groups_seen
from waysaid.ways.leans import Leans
from waysaid.ways.names import Named, Vocabulary, family_name, published_names
from waysaid.ways.said import how_said
from waysaid.ways.sources import SOURCES
from waysaid.ways.step import Kind, Step, opened, step, worked
from waysaid.ways.way import Family, Way

__all__ = [
    "FAMILY_NOTES",
    "SOURCES",
    "Effort",
    "EffortPart",
    "Family",
    "FamilyNote",
    "GradeRange",
    "Kind",
    "Leans",
    "Named",
    "Reason",
    "Step",
    "Vocabulary",
    "Way",
    "can_be_seen",
    "effort_of",
    "family_name",
    "grades_of",
    "groups_fitting",
    "groups_seen",
    "how_said",
    "opened",
    "published_names",
    "step",
    "tenths_of",
    "way_says",
    "ways",
    "weighed_ways",
    "worked",
]

"""A problem, and every way to work it in the head."""

from waysaid.ways.explore import ways
from waysaid.ways.step import Kind, Step, opened, step
from waysaid.ways.way import Family, Leans, Way

__all__ = ["Family", "Kind", "Leans", "Step", "Way", "opened", "step", "ways"]

"""A talk as events, and the state they fold to."""

from waysaid.talk.board import Signal, Wall, board_view, ends_on, telling_of
from waysaid.talk.codec import BadEventError, body_from_json, body_json, kind_of
from waysaid.talk.connect import stated, what_if_outcome, what_if_refused
from waysaid.talk.event import (
    LOOK_SECONDS,
    Body,
    Ground,
    Mark,
    Phase,
    PlannedProblem,
    Proposed,
    Record,
    Relation,
    SaidStep,
)
from waysaid.talk.fold import fold, fold_on
from waysaid.talk.state import Answer, Noticing, State, Supposing, WayTold

__all__ = [
    "LOOK_SECONDS",
    "Answer",
    "BadEventError",
    "Body",
    "Ground",
    "Mark",
    "Noticing",
    "Phase",
    "PlannedProblem",
    "Proposed",
    "Record",
    "Relation",
    "SaidStep",
    "Signal",
    "State",
    "Supposing",
    "Wall",
    "WayTold",
    "board_view",
    "body_from_json",
    "body_json",
    "ends_on",
    "fold",
    "fold_on",
    "kind_of",
    "stated",
    "telling_of",
    "what_if_outcome",
    "what_if_refused",
]

"""Things the site's tests are made of: a class, events, a way."""

from typing import Any

from django.contrib.auth.models import User

from waysaid.site.models import SchoolClass, Talk
from waysaid.site.record import at_hand
from waysaid.site.views import pages_home

NAMES = ("Aroha", "Bram", "Chidi", "Dunya", "Elif")


def make_class(owner: User, name: str = "2B", names: tuple[str, ...] = NAMES) -> SchoolClass:
    """Return a class of this owner's."""
    return pages_home.make_class(owner.pk, name, names, ("en", "en"))


def problem_id(talk: Talk) -> str:
    """Return the id of the talk's problem of the moment."""
    now = at_hand(talk.pk).state.now
    assert now is not None
    return now


def child_id(school_class: SchoolClass, name: str = "Bram") -> str:
    """Return the id of a child by name."""
    return school_class.children.get(name=name).key


def way(problem: str, child: str | None, sequence: int = 0, **changed: Any) -> dict[str, Any]:
    """Return a way as a desk sends it: 39 + 1 = 40, 40 + 26 = 66."""
    return {
        "sequence": sequence,
        "kind": "way-shared",
        "id": f"way-{sequence}",
        "problem": problem,
        "child": child,
        "steps": [
            {"kind": "jump", "equation": "39 + 1 = 40", "unsaid": []},
            {"kind": "jump", "equation": "40 + 26 = 66", "unsaid": []},
        ],
        "family": "bridge",
        "answer": "66",
        "picture": "equations",
        **changed,
    }


def answer(problem: str, text: str, sequence: int = 0, **changed: Any) -> dict[str, Any]:
    """Return an answer as a desk sends it."""
    heard = {"kind": "answer-heard", "id": f"answer-{sequence}", "problem": problem, "text": text}
    return {"sequence": sequence, **heard, **changed}


def sent(*events: dict[str, Any], client: str = "desk-1") -> dict[str, Any]:
    """Return a delivery of these events."""
    return {"client": client, "events": list(events)}

"""Every idea, read from `data/ideas.jsonl`, in the order in which `ccss` comes to it.

Codes of `ccss` and years of `eng-nc2014` are from the list of sources where it has them; K.OA.2 to
4, K.NBT.1, 1.OA.1 to 8 apart from 6, and the names of England's domains are from memory. England's
Y7 is beyond its programmes for primary schools: no idea is placed there.
"""

import json
from collections.abc import Mapping
from functools import cache
from importlib import resources
from typing import Any

from waysaid.number import Language
from waysaid.strings.year.ideas import Curriculum, Idea, Standard, Topic
from waysaid.ways import Family


@cache
def ideas() -> Mapping[str, Idea]:
    """Return every idea by its slug: each behind all that it needs."""
    read = (_idea(json.loads(line)) for line in data_file("ideas.jsonl").splitlines())
    return {idea.slug: idea for idea in read}


def ideas_asked(grade: int, curriculum: Curriculum) -> tuple[Idea, ...]:
    """Return the ideas that a curriculum asks for in a grade, each behind all that it needs."""
    every = ideas().values()
    return tuple(idea for idea in every if idea.standard(curriculum).grade == grade)


def data_file(name: str) -> str:
    """Return the text of one of the package's files of data."""
    return resources.files("waysaid.strings.year").joinpath("data", name).read_text("utf-8")


def _idea(row: Mapping[str, Any]) -> Idea:
    about = row.get("about", {})
    return Idea(
        row["slug"],
        Family(row["family"]),
        Topic(row["topic"]),
        row["over"],
        row["top"],
        Standard(*row["ccss"]),
        Standard(*row["england"]),
        tuple(row["needs"]),
        tuple(row.get("tables", ())),
        about.get(Language.EN, ""),
        about.get(Language.ES, ""),
    )

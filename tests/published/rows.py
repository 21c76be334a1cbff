"""Read the published rows that lie beside this file."""

import json
from pathlib import Path
from typing import Any

HERE = Path(__file__).parent


def rows(name: str) -> list[dict[str, Any]]:
    """Return the rows of a JSON Lines file of this folder, in its order."""
    lines = (HERE / name).read_text(encoding="utf-8").splitlines()
    return [json.loads(line) for line in lines]


def label(row: dict[str, Any], said: str) -> str:
    """Return how a row is named in a test: its source, whether it was read, and what it says."""
    seen = "read" if row["read"] else "from memory"
    return f"{row['source']}, {seen}: {row['problem']}, {said}"

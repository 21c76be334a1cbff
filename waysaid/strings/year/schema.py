"""The form in which a year is written, as a JSON Schema (draft 2020-12)."""

import json

from waysaid.strings.year.table import data_file


def year_schema() -> dict[str, object]:
    """Return the schema that every year, as `year_told` gives it, fits."""
    return dict(json.loads(data_file("year.schema.json")))

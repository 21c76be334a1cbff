"""A year as data: in the form of its schema, deterministic, and wrong as soon as it is spoilt."""

import copy
import json

import pytest
from jsonschema import Draft202012Validator

from waysaid.strings import LinkKind, faults, lay_out_year, numbered_days, year_schema, year_told
from waysaid.strings.year.given import Source
from waysaid.strings.year.ideas import Topic
from waysaid.ways import Family

TOLD = year_told(lay_out_year(0, numbered_days(90)))
CHECKED = Draft202012Validator(year_schema(), format_checker=Draft202012Validator.FORMAT_CHECKER)


def test_a_year_fits_the_schema_and_the_schema_its_form():
    Draft202012Validator.check_schema(year_schema())
    assert list(CHECKED.iter_errors(TOLD)) == []
    assert json.loads(json.dumps(TOLD)) == TOLD


def test_the_schema_names_every_kind_there_is():
    talk = year_schema()["properties"]["talks"]["items"]["properties"]
    assert talk["family"]["enum"] == [one.value for one in Family]
    assert talk["topic"]["enum"] == [one.value for one in Topic]
    assert talk["from"]["enum"] == [one.value for one in Source]
    kinds = talk["links"]["items"]["properties"]["kind"]["enum"]
    assert kinds == [one.value for one in LinkKind]


def spoilt(**changes):
    """Return the year with other things in one of its talks."""
    year = copy.deepcopy(TOLD)
    year["talks"][40].update(changes)
    return year


@pytest.mark.parametrize(
    "changes",
    [
        {"day": 0},
        {"date": "tomorrow"},
        {"family": "guess"},
        {"problems": ["1 + 1"]},
        {"answers": [2, 3, 4]},
        {"why": {"en": ["a", "b", "c"]}},
        {"more": 1},
    ],
)
def test_what_does_not_fit_the_schema_is_seen(changes):
    assert not CHECKED.is_valid(spoilt(**changes))


BEFORE, HERE = TOLD["talks"][39], TOLD["talks"][40]
SAME = {"problems": BEFORE["problems"], "answers": BEFORE["answers"]}


@pytest.mark.parametrize(
    ("changes", "said"),
    [
        ({"answers": ["99", *HERE["answers"][1:]]}, "does not make 99"),
        ({"problems": ["60 + 9"], "answers": ["69"]}, "is outside grade 0"),
        ({"problems": ["so many"], "answers": ["69"]}, "so many does not make 69"),
        ({"links": [{"shows": ["2 + 2 = 5"]}]}, "2 + 2 = 5 does not hold"),
        (SAME, "the same string came before"),
        ({"idea": BEFORE["idea"], **SAME}, "too much in common"),
        ({"idea": "hiding-in-ten"}, "needs hiding-in-five, which did not come yet"),
    ],
)
def test_a_false_statement_is_seen(changes, said):
    assert list(faults(TOLD)) == []
    found = list(faults(spoilt(**changes)))
    assert any(said in one for one in found)
    assert all(one.startswith("Day ") for one in found)

"""Events to JSON and back, and the one sentence for what is no event."""

import json
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.counts import count
from tests.talk.strategies import talks
from waysaid.talk import BadEventError, Record, body_from_json, body_json

json_values = st.recursive(
    st.none() | st.booleans() | st.integers() | st.text(max_size=8),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(st.text(max_size=8), inner),
    max_leaves=8,
)


@settings(max_examples=count(test=1000, sweep=20000), deadline=None)
@given(talks())
def test_reading_what_was_written_gives_the_event_back(records: list[Record]) -> None:
    for record in records:
        written = json.loads(json.dumps(body_json(record.body)))
        assert body_from_json(written) == record.body


@settings(max_examples=count(test=1000, sweep=20000), deadline=None)
@given(talks(), json_values, st.data())
def test_a_broken_event_is_refused_in_one_sentence(
    records: list[Record], wrong: Any, data: st.DataObject
) -> None:
    written = body_json(records[-1].body)
    key = data.draw(st.sampled_from(sorted(written)))
    written[key] = wrong
    sentence = _refusal(written)
    assert sentence is None or (sentence.endswith(".") and "\n" not in sentence)


@pytest.mark.parametrize("strange", ["\n", "a\nb", "\u2028", ["\n"], {"\r": "\n"}])
def test_what_is_quoted_stands_on_one_line(strange: Any) -> None:
    for sent in ({"kind": strange}, {"kind": "paused", str(strange): 1}):
        sentence = _refusal(sent)
        assert sentence is not None
        assert len(sentence.splitlines()) == 1
        assert sentence.endswith(".")


def _refusal(written: dict[str, Any]) -> str | None:
    try:
        body_from_json(written)
    except BadEventError as error:
        return str(error)
    return None


@pytest.mark.parametrize(
    ("given", "part"),
    [
        ([], "JSON object"),
        ({"kind": "party"}, "‘party’ is no kind of event"),
        ({"kind": "problem-shown"}, "‘problem’ is missing"),
        ({"kind": "problem-shown", "problem": 3}, "takes a text"),
        ({"kind": "problem-shown", "problem": "p", "score": 1}, "‘score’ is no part of it"),
        ({"kind": "phase-set", "phase": "quiz"}, "takes one of before, think"),
        ({"kind": "problem-added", "problem": "p", "text": "37 ++"}, "place 5"),
        ({"kind": "names-hidden", "on": 1}, "takes true or false"),
        ({"kind": "undo", "event": {"client": "a", "sequence": True}}, "takes a whole number"),
    ],
)
def test_the_sentence_says_what_where_and_what_would_be_accepted(given: Any, part: str) -> None:
    with pytest.raises(BadEventError, match=part.replace("+", r"\+")):
        body_from_json(given)

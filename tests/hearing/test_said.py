"""How well children's sentences are heard: those used in building, and those kept aside.

The floors stand a few points under what docs/reference/hearing.md measured; the bars that are
aimed at stand there, too, and are higher. Only the sweep hears all of those
used in building; other runs hear a third.
"""

import pytest

from tests.counts import Size, size
from tests.hearing.said import EXAMPLES, WRITTEN, heard, measured, sentences
from waysaid.hearing.turned import turned


@pytest.mark.parametrize("one", sentences(EXAMPLES), ids=lambda one: one.said[:40])
def test_an_example_is_heard_as_it_was_meant(one):
    reading = heard(one)
    steps = [turned(told.step.equation) for told in reading.told]
    assert [step for step in one.must if step not in steps] == []
    assert reading.answer_text == one.answer
    assert (reading.family.value if reading.family else "unclear") in one.families
    assert reading.words == one.said


FLOORS = {
    "used in building": {"family": 94, "found": 93, "unsaid": 4, "answer": 97, "right": 97},
    "kept aside": {"family": 88, "found": 88, "unsaid": 7, "answer": 91, "right": 92},
}


@pytest.mark.slow
@pytest.mark.parametrize("split", FLOORS)
def test_sentences_are_heard_at_least_as_well_as_they_were(split):
    aside = split == "kept aside"
    listed = [one for path in WRITTEN for one in sentences(path) if one.aside is aside]
    if not aside and size() is not Size.SWEEP:
        listed = listed[::3]
    assert len(listed) > 250
    measure = measured(listed)
    floors = FLOORS[split]
    assert measure.share("unsaid") <= floors["unsaid"]
    short = {
        name: measure.share(name)
        for name, floor in floors.items()
        if name != "unsaid" and measure.share(name) < floor
    }
    assert short == {}

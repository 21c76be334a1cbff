"""Tests of when the interpreter looks for what nobody holds."""

import gc
import weakref

import pytest

from waysaid.site.collector import NEW_THINGS, look_rarely


class Held:
    """Something that holds itself."""

    def __init__(self) -> None:
        self.own = self


@pytest.fixture
def as_before():
    threshold = gc.get_threshold()
    yield
    gc.set_threshold(*threshold)
    gc.unfreeze()


@pytest.mark.usefixtures("as_before")
def test_what_is_there_is_no_longer_looked_through_and_what_is_new_still_is():
    there = Held()
    look_rarely()
    new = Held()
    seen_there, seen_new = weakref.ref(there), weakref.ref(new)
    del there, new
    gc.collect()
    assert seen_there() is not None
    assert seen_new() is None


@pytest.mark.usefixtures("as_before")
def test_it_is_looked_less_often_than_the_interpreter_would():
    before = gc.get_threshold()[0]
    look_rarely()
    assert gc.get_threshold()[0] == NEW_THINGS > before

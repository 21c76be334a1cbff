"""One group fewer than a friendly number of groups."""

import pytest

from tests.ways.telling import told
from waysaid.ways import Family

STEPS = "60 / 6 = 10; 60 - 58 = 2; 10 - 1 = 9; 6 - 2 = 4"


def test_a_group_fewer_than_ten_leaves_what_the_last_one_has():
    assert STEPS in told("58 / 6", Family.NEAR_FACT)
    assert f"{STEPS}; 58 / 6 = 9 2/3" in told("58 / 6", Family.NEAR_FACT)


@pytest.mark.parametrize("problem", ["50 / 6", "61 / 6", "20 / 3"])
def test_it_keeps_silent_where_the_next_group_is_no_friendly_one(problem):
    assert told(problem, Family.NEAR_FACT) == []

"""The friendly number nearest to another."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from waysaid.strings.friendly import nearest_friendly


@pytest.mark.parametrize(
    ("number", "friendly"),
    [
        (48, 50),
        (33, 30),
        (7, 10),
        (13, 10),
        (95, 100),
        (102, 100),
        (198, 200),
        (187, 190),
        (45, None),
        (40, None),
        (190, None),
        (4, None),
        (0, None),
    ],
)
def test_the_nearest_ten_or_a_hundred_close_by(number, friendly):
    assert nearest_friendly(number) == friendly


@given(st.integers(0, 1000))
def test_a_friendly_number_is_a_ten_less_than_ten_away(number):
    friendly = nearest_friendly(number)
    if friendly is not None:
        assert friendly % 10 == 0
        assert 0 < abs(friendly - number) < 10
        assert abs(friendly - number) < 5 or friendly % 100 == 0

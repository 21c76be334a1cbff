"""The lots that groups are cut into."""

from hypothesis import given
from hypothesis import strategies as st

from waysaid.ways.factor import can_do
from waysaid.ways.groups import group_cuts


@given(st.integers(2, 99), st.integers(2, 999))
def test_lots_make_the_groups_and_each_is_done_in_one_go(part, groups):
    cuts = [lots for _, lots in group_cuts(part, groups)]
    assert len(set(cuts)) == len(cuts)
    for lots in cuts:
        assert sum(lots) == groups
        assert len(lots) > 1
        assert all(can_do(part, lot) for lot in lots)


def test_ninety_six_in_sixes_is_cut_so():
    assert dict(group_cuts(6, 16)) == {
        "by-place": (10, 6),
        "five-by-five": (5, 5, 6),
        "round-first": (15, 1),
    }


def test_nothing_is_cut_where_ten_is_known():
    assert list(group_cuts(10, 47)) == []

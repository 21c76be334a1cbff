"""Steps are true by construction."""

from hypothesis import given
from hypothesis import strategies as st

from waysaid.number import Sign
from waysaid.ways import Kind, opened, step

whole = st.integers(-2000, 2000)


@given(st.sampled_from(Kind), whole, st.sampled_from(Sign), whole.filter(bool))
def test_a_step_is_true_whatever_it_does(kind, left, sign, right):
    built = step(kind, left, sign, right)
    assert built.true
    assert built.kind is kind
    assert (built.equation.left.left, built.equation.left.right) == (left, right)


@given(st.lists(st.integers(0, 500), min_size=1, max_size=4))
def test_an_opened_number_says_its_parts(parts):
    built = opened(sum(parts), *parts)
    assert built.true
    assert built.kind is Kind.SPLIT
    assert built.text == f"{sum(parts)} = {' + '.join(map(str, parts))}"

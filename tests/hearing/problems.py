"""Seeded sums and differences to 1000, with missing numbers and three addends among them."""

import random

from hypothesis import strategies as st

from waysaid.number import parse

FORMS = (
    "{a} + {b}",
    "{whole} - {a}",
    "{a} + _ = {whole}",
    "_ + {a} = {whole}",
    "{whole} - _ = {a}",
    "_ - {a} = {b}",
    "{a} + {b} + {c}",
)


def _written(form, a, b, c):
    return parse(form.format(a=a, b=b, c=c, whole=a + b))


problems = st.builds(
    _written,
    st.sampled_from(FORMS),
    st.integers(1, 480),
    st.integers(1, 420),
    st.integers(1, 100),
)


def seeded(most, seed=37):
    """Problems without hypothesis, half of them within 40."""
    chance = random.Random(seed)
    for place in range(most):
        top = 20 if place % 2 else 400
        a, b = chance.randrange(1, top), chance.randrange(1, top)
        yield _written(FORMS[place % len(FORMS)], a, b, chance.randrange(1, 100))

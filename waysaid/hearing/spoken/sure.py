"""How sure a reading is: its share against the other readings of the same words."""

from dataclasses import dataclass

from waysaid.hearing.spoken.listen import Explained

_HALVING = 1
"""How much more a reading must cost to be half as likely. Our choice, by trial on sentences."""

_FINEST = 12
"""Beyond so many halvings a reading has no share."""

_OTHERWISE = 12
"""One part in so many of all that was heard is left to what was not thought of: as
often, about, as the family is another where only one was heard (docs/reference/hearing.md)."""


@dataclass(frozen=True, slots=True)
class Share:
    """An explanation and its share in 100; the shares of all add up to 100 at most."""

    explained: Explained
    sure: int


def shares(heard: list[Explained]) -> list[Share]:
    """Return the best explanation of each family with its share, the likeliest first.

    Explanations of one family count together: they differ in a detail, not in the way. Raises
    `ValueError` where nothing was heard.
    """
    least = min(one.cost for one in heard)
    weights: dict[object, int] = {}
    best: dict[object, Explained] = {}
    for one in sorted(heard, key=lambda one: one.cost):
        halvings = min((one.cost - least) // _HALVING, _FINEST)
        best.setdefault(one.family, one)
        weights[one.family] = weights.get(one.family, 0) + (1 << (_FINEST - halvings))
    heard_so = sum(weights.values())
    total = heard_so + heard_so // _OTHERWISE
    found = [Share(one, weights[one.family] * 100 // total) for one in best.values()]
    first, *others = found
    return [first, *sorted(others, key=lambda one: -one.sure)]

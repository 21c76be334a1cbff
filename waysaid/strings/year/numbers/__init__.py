"""The problems that the strings of an idea are composed of, where its topic says too little.

`see-near-twins` is not about any picture of dots but of two groups that differ by one, and
`nearly-a-thousand` is about numbers that its topic does not go to. All our choice, by common
practice (no source): small sets in which the idea is worth while, with the problems that help.
"""

from collections.abc import Callable, Iterator, Mapping

from waysaid.number import Problem
from waysaid.strings.year.numbers.images import IMAGES
from waysaid.strings.year.numbers.parts import BEGUN, PARTS
from waysaid.strings.year.numbers.percents import PERCENTS
from waysaid.strings.year.numbers.points import POINTS
from waysaid.strings.year.numbers.small import SMALL
from waysaid.strings.year.numbers.whole import WHOLE

OWN: Mapping[str, Callable[[], Iterator[Problem]]] = {
    **IMAGES,
    **SMALL,
    **WHOLE,
    **PARTS,
    **POINTS,
    **PERCENTS,
}
"""For each idea that has problems of its own, by its slug, what yields them; some twice."""

__all__ = ["BEGUN", "OWN"]

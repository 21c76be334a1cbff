"""A step being put together: what was said of it, and what arithmetic forces."""

from dataclasses import dataclass, field

from waysaid.hearing.reading import Part
from waysaid.hearing.worth import worth
from waysaid.number import (
    BLANK,
    Equation,
    Exact,
    Expression,
    Form,
    Number,
    Written,
    decimal,
    value_of,
    written,
)

COUNTED = (Part.OP, Part.RIGHT)
"""What nobody says while counting: "eight, nine" leaves out plus and one."""

RESULT_ALONE = (Part.LEFT, *COUNTED)
"""What nobody says of a step of which only the result was said."""


@dataclass(frozen=True, slots=True)
class Draft:
    """One step as heard. `result` is None where nobody said it; `right` may be a side of its own.

    `open` names the unsaid parts before the result; `whole` marks an equation with its result on
    the left or with sums on both sides, which is complete as it stands. `forced` is what arithmetic
    makes of the left side; None where a part of it is not known. `by_digits` marks tens or hundreds
    that were told as digits.
    """

    left: Expression
    open: tuple[Part, ...]
    span: tuple[int, int]
    result: Expression | None = None
    whole: bool = False
    by_digits: bool = False
    forced: Exact | None = field(init=False, compare=False, repr=False)

    def __post_init__(self) -> None:
        """Work out the left side, once."""
        object.__setattr__(self, "forced", worth(self.left))

    @property
    def stands(self) -> Exact | None:
        """The number the step ends on, said or forced; None for an equation complete in itself."""
        if self.whole:
            return None
        return self.forced if self.result is None else value_of(self.result)

    @property
    def ends(self) -> Number | None:
        """The number the step ends on, as it is written: with a point where the step has one."""
        if self.whole:
            return None
        if isinstance(self.result, Number):
            return self.result
        forced = self.forced
        return None if forced is None else _written(forced, self.left)

    @property
    def counted(self) -> bool:
        """Whether it is a step of a count."""
        return Part.OP in self.open

    @property
    def unsaid(self) -> tuple[Part, ...]:
        """The parts that nobody said, in the order they would stand."""
        return self.open if self.result is not None else (*self.open, Part.RESULT)

    @property
    def equation(self) -> Equation:
        """The step as an equation, with a blank where nothing forces a number."""
        if self.result is not None:
            return Equation(self.left, self.result)
        ends = None if self.whole else self.ends
        return Equation(self.left, BLANK if ends is None else ends)


def _written(value: Exact, like: Expression) -> Number:
    """Return a value with a point where a number of the expression has one."""
    forms = [one.form for one in written(like) if isinstance(one, Written)]
    return decimal(value) if Form.DECIMAL in forms else value

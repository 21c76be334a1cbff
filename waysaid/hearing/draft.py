"""A step being put together: what was said of it, and what arithmetic forces."""

from dataclasses import dataclass

from waysaid.hearing.reading import Part
from waysaid.number import BLANK, Equation, Exact, Expression, NoValue, value_of

COUNTED = (Part.OP, Part.RIGHT)
"""What nobody says while counting: "eight, nine" leaves out plus and one."""


@dataclass(frozen=True, slots=True)
class Draft:
    """One step as heard. `result` is None where nobody said it; `right` may be a side of its own.

    `open` names the unsaid parts before the result; `whole` marks an equation with its result on
    the left or with sums on both sides, which is complete as it stands.
    """

    left: Expression
    open: tuple[Part, ...]
    span: tuple[int, int]
    result: Expression | None = None
    whole: bool = False

    @property
    def forced(self) -> Exact | None:
        """What arithmetic makes of the left side; None where a part of it is not known."""
        try:
            return value_of(self.left)
        except NoValue:
            return None

    @property
    def stands(self) -> Exact | None:
        """The number the step ends on, said or forced; None for an equation complete in itself."""
        if self.whole:
            return None
        return self.forced if self.result is None else value_of(self.result)

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
        return Equation(self.left, BLANK if self.forced is None else self.forced)

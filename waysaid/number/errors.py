"""What can be wrong with a line of text, and the one sentence that says so."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Unreadable(ValueError):
    """Raised for text that is not a problem or an equation.

    `at` is the (start, end) of the place in `given`, in characters; `wanted` says what would be
    accepted there.
    """

    given: str
    at: tuple[int, int]
    wanted: str

    def __str__(self) -> str:
        """Return one sentence: what, where, and what would be accepted."""
        start, end = self.at
        seen = self.given[start:end].strip()
        what = f"‘{seen}’" if seen else "the end"
        return f"Cannot read {what} at place {start + 1} of ‘{self.given}’: {self.wanted}."

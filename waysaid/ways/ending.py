"""What the child of a way says in the end, where a division may leave something."""

from waysaid.number import NoValue, Problem, Rest, answer_of, answer_text, said_text
from waysaid.ways.way import Way


def way_says(way: Way, problem: Problem, rest: Rest = Rest.FRACTION) -> str:
    """Return a way's answer as plain text: `5 r 1` where it was told so, else as `rest` asks.

    A way that gives the exact answer says a fraction where `rest` asks for what is left over.
    """
    if way.remainder is not None:
        return way.remainder.text
    try:
        exact = way.answer == answer_of(problem)
    except NoValue:
        exact = False
    if not exact:
        return said_text(way.answer, problem)
    return answer_text(problem, rest=Rest.FRACTION if rest is Rest.LEFT_OVER else rest)

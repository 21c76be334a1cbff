"""From what a class showed to the wish for its next talk."""

from waysaid.growth import Suggestion
from waysaid.number import Language, Operation, Problem, Sign
from waysaid.site.models import SchoolClass
from waysaid.site.planning import largest, problems_of
from waysaid.strings import Topic, Wish, topics_of

NEWEST = 12
"""Problems whose numbers say how far the next ones go: those of the last talks that invited it."""
SIZES = (20, 100, 1000)
"""How far a string may go, as a teacher says it: our choice."""
_TOPICS = {
    Sign.PLUS: Topic.SUMS,
    Sign.MINUS: Topic.DIFFERENCES,
    Sign.TIMES: Topic.PRODUCTS,
    Sign.OVER: Topic.QUOTIENTS,
}


def wish_for(suggestion: Suggestion, school_class: SchoolClass, grade: int) -> Wish:
    """Return the wish for a string about the family, like the problems that invited it."""
    near = problems_of([{"text": text} for text in suggestion.problems[:NEWEST]])
    most = largest(near)
    topics = [topic for each in near if (topic := _topic(each)) is not None]
    fitting = [topic for topic in topics if topic in topics_of(suggestion.family)]
    return Wish(
        grade=grade,
        focus=suggestion.family,
        language=Language(school_class.desk_language),
        topic=max(fitting, key=fitting.count, default=None),
        within=next((size for size in SIZES if 0 < most <= size), None),
    )


def _topic(problem: Problem) -> Topic | None:
    """Return what a plain problem of two whole numbers is about; None for any other."""
    if not isinstance(problem, Operation):
        return None
    whole = isinstance(problem.left, int) and isinstance(problem.right, int)
    return _TOPICS.get(problem.sign) if whole else None

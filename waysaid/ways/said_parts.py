"""How a telling opens where numbers are cut into parts first, or a percent is turned round."""

from waysaid.number import Blank, Expression, Language, Operation, Sign, number_words, parts
from waysaid.ways.fractions.amount import is_fraction
from waysaid.ways.parted import Parted, is_percent, parted
from waysaid.ways.phrases import PHRASES
from waysaid.ways.way import Family, Way


def renamed_opener(way: Way, language: Language) -> str:
    """Return how it opens: `I made quarters into eighths:`; empty where it opens as others do.

    Empty too where a size of parts has no name in the language.
    """
    if way.family is not Family.RENAME or not way.steps:
        return ""
    phrases = PHRASES[language]
    left, right = way.steps[0].equation.left, way.steps[0].equation.right
    if isinstance(left, Operation):
        if isinstance(right, Operation):
            return phrases.turned if _turned(left, right) else ""
        bottom = _unit(left) or (_unit(way.steps[1].equation.left) if way.steps[1:] else 0)
        name = _name(bottom, language) if bottom else ""
        return phrases.thought_in.format(new=name) if name else ""
    old, new = _parts(left), _parts(right)
    if old is None or new is None or new.bottom == 1:
        return ""
    name = _name(new.bottom, language)
    if not name or (old.bottom == new.bottom and old.whole == new.whole):
        return ""
    if new.whole and (old.bottom in (1, new.bottom)):
        return phrases.broke_into.format(new=name)
    before = phrases.wholes if old.bottom in (1, new.bottom) else _name(old.bottom, language)
    return phrases.made_into.format(old=before, new=name) if before else ""


def _parts(number: Expression) -> Parted | None:
    """Return the wholes and parts of a number written so; None for any other."""
    whole = isinstance(number, int) or is_fraction(number)
    return None if isinstance(number, Operation | Blank) or not whole else parted(number)


def _unit(side: Expression) -> int:
    """Return the size of the parts that are counted as things: 3/4 + 3/4, 3/4 / 3; 0 for none."""
    if not isinstance(side, Operation):
        return 0
    one, other = _parts(side.left), _parts(side.right)
    if one is None or other is None or one.bottom == 1:
        return 0
    shared = side.sign is Sign.OVER and other.bottom == 1
    return one.bottom if shared or one.bottom == other.bottom else 0


def _turned(left: Operation, right: Operation) -> bool:
    """Tell whether a percent and a number change places: 16% of 25 = 25% of 16."""
    first = is_percent(left.left) and is_percent(right.left)
    return first or (is_percent(left.right) and is_percent(right.right))


def _name(bottom: int, language: Language) -> str:
    """Return what so many parts of a size are called: quarters; empty where they have no name."""
    count, _, name = number_words(parts(2, bottom), language).partition(" ")
    return name if count and " " not in name else ""

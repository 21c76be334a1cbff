"""Counts that tell of nobody: the rule by which a coach's summary is suppressed.

A cell is the number of children of one class who used a family in one half-term that is over.

1. It is told only where at least five children did and at least five who were heard did not. So
   neither a few nor nearly all can be told from it, and a class of fewer than ten tells nothing.
2. It is told as a band of five (5 to 9, 10 to 14, ...), not as a number.
3. It is made once, when the half-term has been over for two weeks, and never made again: nothing
   that happens later (a child who joins, is erased, a talk that is typed in) makes a second count
   to take from the first. Half-terms are fixed and do not overlap; no other dates are offered.
4. No totals are told: not how many were heard, nor sums over half-terms. What is said of several
   classes together is added up from the bands that are told, and so tells nothing more.

That small counts are withheld (the least told is from 5 to 30 children in the states it looked at),
that both ends of a distribution are, and that detail is limited, is published guidance on what is
told of pupils: National Center for Education Statistics, Statistical Methods for Protecting
Personally Identifiable Information in Aggregate Reporting, SLDS Technical Brief 3, NCES 2011-603
(2010); its abstract was read, its text is from memory. That totals give away what was withheld is
there too, from memory. The five, the two weeks, the bands and the half-terms are our choice.
"""

from collections.abc import Iterable, Mapping
from datetime import date, timedelta

LEAST = 5
"""Children who did, and who did not, behind each number; and the width of a band."""
SETTLED = timedelta(days=14)
"""How long a half-term is over before it is counted."""
MONTHS = 2
"""Months of a half-term: September and October, November and December, ..."""


def half_term(day: date) -> date:
    """Return the first day of the half-term that a day is in."""
    return date(day.year, day.month - (day.month - 1) % MONTHS, 1)


def after(first: date) -> date:
    """Return the first day of the half-term after this one."""
    months = first.year * 12 + first.month - 1 + MONTHS
    return date(months // 12, months % 12 + 1, 1)


def is_over(first: date, today: date) -> bool:
    """Tell whether a half-term may be counted."""
    return after(first) + SETTLED <= today


def cells(heard: Iterable[tuple[str, str]], least: int = LEAST) -> dict[str, int]:
    """Return the least number of each family's band, where it may be told.

    `heard` are pairs of a child's id and a family, empty for a child who was heard with none.
    """
    who: dict[str, set[str]] = {}
    everyone = set()
    for child, family in heard:
        everyone.add(child)
        if family:
            who.setdefault(family, set()).add(child)
    told = {}
    for family, children in sorted(who.items()):
        did, did_not = len(children), len(everyone) - len(children)
        if did >= least and did_not >= least:
            told[family] = did - did % least
    return told


def together(each: Iterable[Mapping[str, int]], least: int = LEAST) -> dict[str, tuple[int, int]]:
    """Return from and to of several classes together, from what each tells and nothing else."""
    added: dict[str, tuple[int, int]] = {}
    for told in each:
        for family, low in told.items():
            least_so_far, most_so_far = added.get(family, (0, 0))
            added[family] = (least_so_far + low, most_so_far + low + least - 1)
    return added

"""What each unlikeliness of a reading costs. One table; every figure is our choice.

A reading costs the sum of what it leaves unexplained. The unit is about one word not understood:
what a careful listener would rather assume costs less than what she would rather not.
"""

WORD = 6
"""A word that means nothing to us, passed over."""
NOISE = 2
"""A number or a meaning one grade of noise away from plain speech."""
IGNORED = 5
"""A word with a meaning for the work, passed over."""
REPEATED = 1
"""A number said again."""
RESTATED = 3
"""A number of the problem named before the work."""
LOOSE = 5
"""A number that nothing explains."""
FREE = 2
"""A number said about a digit or a carried ten."""
FALSE = 5
"""A step whose result is not what arithmetic gives."""
SLIP = 2
"""The same, where a known slip gives this very step."""
UNSAID = 3
"""A step whose result nobody said."""
HANDED = 2
"""What the unsaid end of one hop does not cost where the other number is named too."""
STRANGE = 3
"""A step that no way of the problem has."""
UNTRACED = 2
"""A number in such a step that comes from nowhere."""
BASE = 1
"""A hop whose start nobody said, from a number of the problem."""
GOES_ON = 0
"""A hop from the number that stands."""
COUNTING = 2
"""The first step of a count."""
HOPPED = 1
"""A hop of which only its size and its end were said, as numbers."""
JOINED = 0
"""Pieces put together of which only the sum was said."""
FILLED = 0
"""A result said later than its step."""
POINTED = 1
"""A number meant by a word such as `that one`."""
UNREACHED = 3
"""An answer that no step comes to."""
WITHDRAWN = 3
"""Words taken back; each number in them beyond the second costs one more."""
WITHDRAWN_ALL = 5
"""All that was said so far taken back."""
KEPT = 6
"""A number kept that another was plainly said instead of."""
NO_RESULT = 3
"""A result promised by a word that never came."""
ACROSS = 1
"""A step that goes on over the end of a sentence."""
ALONE = 6
"""A verb without its number."""
NO_FAMILY = 5
"""Steps that are no way of a family we know."""
IN_PART = 4
"""Steps that are no whole way of the family they are named for."""
SHORTCUT = 0
"""A result said with no word before it."""
NEXT = 1
"""A word that might join two numbers, between two things said."""
ARRIVED = 2
"""A hop of which only its end was said."""
NO_VERDICT = 3
"""No verdict heard where one was asked for."""
PLACED = 1
"""Digits meant as the tens or hundreds that they stand for."""
ON_PAPER = 4
"""Digits meant as tens where a ten is carried or borrowed: there they are told as digits."""

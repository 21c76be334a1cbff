"""A noisy speaker: says the engine's ways and slips in words, as children do, from a seed.

What is said is known exactly, so a hearing can be held against it. The phrases are our own, by
common practice. Results are left out, numbers are pointed at by pronouns, a false start is taken
back, fillers come between, and a number of one word may be a homophone that a recogniser writes.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from random import Random

from tests.hearing.phrases import PHRASES, Phrases
from tests.ways.every_kind import KINDS
from waysaid.hearing.turned import turned
from waysaid.number import (
    Blank,
    Equation,
    Exact,
    Language,
    Number,
    Operation,
    Remainder,
    Sign,
    exact,
    number_words,
    parse,
)
from waysaid.slips import foresee
from waysaid.ways import ways

SAYABLE = (
    "sums",
    "longer sums",
    "products",
    "quotients",
    "missing numbers",
    "sums of fractions",
    "parts of a number",
    "sums of decimals",
    "percents",
)
"""The kinds whose steps are plain arithmetic that a child says as such."""
_MOST_STEPS = 4
_SIGNS = (Sign.PLUS, Sign.MINUS, Sign.TIMES, Sign.OVER)


@dataclass(frozen=True, slots=True)
class Line:
    """One step said: `result` is whether its result was."""

    equation: Equation
    result: bool


@dataclass(frozen=True, slots=True)
class Utterance:
    """What was said of a problem, and all that is true of it.

    `lines` are the steps that stand. `spoken` are the numbers said that stand, `taken_back` those
    in what was withdrawn. `answer` is the number said last and meant as the answer; None where the
    child stopped before. `families` are those of every way that says these steps; none for a slip.
    """

    problem: str
    language: Language
    said: str
    lines: tuple[Line, ...]
    spoken: frozenset[Exact]
    taken_back: frozenset[Exact]
    answer: Exact | None
    families: frozenset[str]
    right: bool


def utterances(seed: int, many: int) -> Iterator[Utterance]:
    """Yield so many utterances, the languages in turn, about a third of them wrong work."""
    dice = Random(f"speaker {seed}")
    given = 0
    while given < many:
        language = tuple(Language)[given % len(Language)]
        one = _utterance(_problem(dice), language, dice)
        if one is not None:
            given += 1
            yield one


def _problem(dice: Random) -> str:
    """Return a problem: most are the small ones that most talks are about."""
    if dice.random() < 0.4:
        return KINDS[dice.choice(SAYABLE)](dice)
    left, right = dice.randint(11, 99), dice.randint(2, 99)
    one, other = dice.randint(2, 19), dice.randint(2, 12)
    large, small = max(left, right), min(left, right)
    written = (f"{left} + {right}", f"{large} - {small}", f"{one} x {other}")
    return dice.choice((*written, f"{one * other} / {other}"))


def _utterance(problem: str, language: Language, dice: Random) -> Utterance | None:
    """Say one of the problem's ways, or of its slips; None where none can be said."""
    asked = parse(problem)
    told = [(tuple(one.equation for one in way.steps), way.answer, True) for way in ways(asked)]
    slips = [(one.steps, one.wrong, False) for one in foresee(asked)]
    chosen = slips if slips and dice.random() < 0.34 else told
    fit = [one for one in chosen if _sayable(one[0])]
    if not fit:
        return None
    steps, answer, right = dice.choice(fit)
    number = None if isinstance(answer, Remainder) else answer
    speech = _Speech(PHRASES[language], language, dice)
    ended = _told(speech, list(steps), _exact(number))
    lines = tuple(speech.lines)
    return Utterance(
        problem,
        language,
        speech.text(),
        lines,
        frozenset(speech.spoken),
        frozenset(speech.taken_back) - frozenset(speech.spoken),
        ended,
        _families(problem, lines) if right else frozenset(),
        right,
    )


def _exact(answer: object) -> Exact | None:
    return exact(answer) if isinstance(answer, Number) else None


def _families(problem: str, lines: tuple[Line, ...]) -> frozenset[str]:
    """Return the families of all ways that begin with the steps said, or are made of them."""
    said = {turned(line.equation) for line in lines}
    return frozenset(
        way.family.value
        for way in ways(parse(problem))
        if said <= {turned(step.equation) for step in way.steps}
    )


def _sayable(steps: tuple[Equation, ...]) -> bool:
    return 0 < len(steps) <= _MOST_STEPS and all(map(_plain, steps))


def _plain(equation: Equation) -> bool:
    left, right = equation.left, equation.right
    if not isinstance(left, Operation) or left.sign not in _SIGNS:
        return False
    numbers = (left.left, left.right, right)
    if any(isinstance(one, Operation | Blank) for one in numbers):
        return False
    return all(0 <= exact(one) < 10**6 for one in numbers)  # type: ignore[arg-type]


class _Speech:
    """The words so far, clause by clause, and what stands of them."""

    def __init__(self, phrases: Phrases, language: Language, dice: Random) -> None:
        self.phrases, self.language, self.dice = phrases, language, dice
        self.clauses: list[str] = []
        self.lines: list[Line] = []
        self.spoken: set[Exact] = set()
        self.taken_back: set[Exact] = set()
        self.reached: Exact | None = None

    def number(self, value: Number) -> str:
        """Return the number in words, or now and then in digits or misheard."""
        self.spoken.add(exact(value))
        if isinstance(value, int) and self.dice.random() < 0.1:
            return str(value)
        words = number_words(value, self.language).replace("-", " ")
        misheard = self.phrases.misheard.get(words)
        return self.dice.choice(misheard) if misheard and self.dice.random() < 0.05 else words

    def text(self) -> str:
        """Return all clauses as one line, with what comes between them."""
        joined = (self.phrases.joins, [", ", " ", ". "])
        line = self.clauses[0]
        for clause in self.clauses[1:]:
            line += self.dice.choice(joined[self.dice.random() < 0.5]) + clause
        return line


def _told(speech: _Speech, equations: list[Equation], answer: Exact | None) -> Exact | None:
    """Say the steps, all or the first few; return the answer where the child came to say it."""
    dice = speech.dice
    stops = len(equations) > 1 and dice.random() < 0.15
    told = equations[: dice.randint(1, len(equations) - 1)] if stops else equations
    for place, equation in enumerate(told):
        last = place == len(told) - 1
        _clause(speech, equation, last and not stops)
    final = speech.lines[-1]
    ends = exact(final.equation.right) if final.result else None  # type: ignore[arg-type]
    if stops or answer is None:
        return None
    if dice.random() < 0.4 or (ends != answer and dice.random() < 0.7):
        speech.clauses.append(dice.choice(speech.phrases.answers).format(speech.number(answer)))
        return answer
    return ends if ends == answer else None


def _clause(speech: _Speech, equation: Equation, last: bool) -> None:
    """Say one step: plainly, its result first, from where the last one ended, or corrected."""
    dice, phrases = speech.dice, speech.phrases
    result = dice.random() < (0.9 if last else 0.85)
    words = _words(speech, equation, result)
    if dice.random() < 0.12:
        words = f"{_false_start(speech, equation)} {dice.choice(phrases.corrections)} {words}"
    if dice.random() < 0.25:
        words = f"{dice.choice(phrases.fillers)} {words}"
    speech.clauses.append(words)
    speech.lines.append(Line(equation, result))
    speech.reached = exact(equation.right) if result else None  # type: ignore[arg-type]


def _words(speech: _Speech, equation: Equation, result: bool) -> str:
    side = equation.left
    assert isinstance(side, Operation)
    phrases = speech.phrases
    goes_on = speech.reached is not None and exact(side.left) == speech.reached  # type: ignore[arg-type]
    pointed = goes_on and side.sign in phrases.hops and speech.dice.random() < 0.5
    if pointed:
        left, work = "", speech.dice.choice(phrases.hops[side.sign])
    else:
        left, work = speech.number(side.left), _work(speech, side)  # type: ignore[arg-type]
    said = work.format(left, speech.number(side.right))  # type: ignore[arg-type]
    if not result:
        return said
    number = speech.number(equation.right)  # type: ignore[arg-type]
    if not pointed and speech.dice.random() < 0.1:
        return speech.dice.choice(phrases.results_first).format(said, number)
    return speech.dice.choice(phrases.results).format(said, number)


def _work(speech: _Speech, side: Operation) -> str:
    """Return a phrase for the operation; no `and` where it would make one number of two."""
    works = speech.phrases.works[side.sign]
    left, right = exact(side.left), exact(side.right)  # type: ignore[arg-type]
    one_number = left % 10 == 0 or right.denominator > 1
    kept = tuple(one for one in works if not (one_number and f" {speech.phrases.joint} " in one))
    return speech.dice.choice(kept)


def _false_start(speech: _Speech, equation: Equation) -> str:
    """Return the step with a wrong result, to be taken back; what stands comes after."""
    side = equation.left
    assert isinstance(side, Operation)
    stood = set(speech.spoken)
    work = _work(speech, side)
    wrong = _off(exact(equation.right), speech.dice)  # type: ignore[arg-type]
    said = work.format(speech.number(side.left), speech.number(side.right))  # type: ignore[arg-type]
    said = speech.dice.choice(speech.phrases.results).format(said, speech.number(wrong))
    speech.taken_back |= speech.spoken
    speech.spoken = stood
    return said


def _off(value: Exact, dice: Random) -> int:
    return int(value) + dice.choice((1, 2, 10))

"""Work slips again, by other means: on the text of a problem, with Python's fractions.

Nothing of the engine is used here. For each slip there is a set of the answers it can give on a
problem; an answer outside that set is one that the slip does not lead to.
"""

import re
from fractions import Fraction
from math import prod

from tests.slips.judge_parts import of_two
from tests.slips.judge_reading import Answers, N, Two, numbers, signs, two, work


def answers(slug: str, text: str) -> Answers:
    """The answers that a slip can give on a problem."""
    if text.startswith("image"):
        return _image(slug, text)
    if text.startswith("about "):
        return _about(slug, text.removeprefix("about "))
    if text.endswith(" ?"):
        return _claim(slug, text.removesuffix(" ?"))
    if " ? " in text:
        return _order(slug, *(N(side) for side in text.split(" ? ")))
    found: Answers = set()
    if "_" in text:
        found |= _equation(slug, text)
    elif not signs(text):
        _, top, bottom = N(text).parts
        after = {"top-point-bottom": f"{top}.{bottom}", "denominator-after-point": f"0.{bottom}"}
        return {Fraction(after[slug])}
    elif len(signs(text)) > 1:
        whole = re.fullmatch(r"[\d x+()/-]+", text) and not re.search(r"\d/\d", text)
        return (_several if whole else _added)(slug, text)
    case = two(text)
    return found | of_two(slug, case) if case is not None else found


def _image(slug: str, text: str) -> Answers:
    kind = text.split()[1].rstrip(":")
    said = [int(found) for found in re.findall(r"\d+", text)]
    if kind == "dots":
        dots = len(said) // 2
        return {dots - 1, dots + 1} if slug == "one-to-one" else set()
    if kind in ("frame", "pairs"):
        size, *frames = said
        count = sum(frames)
        frames = [min(10, count), count - min(10, count)] if len(frames) == 1 else frames
        by = 5 if kind == "frame" else 2
        return {
            "one-to-one": {count - 1, count + 1},
            "group-missed": {count - group for one in frames for group in (one, by, one % by)},
            "empty-counted": {size - count, *(10 - frame for frame in frames)},
            "frame-full": {size},
        }[slug]
    if kind == "dice":
        count = sum(said)
        missed = {count - die for die in said}
        return {"one-to-one": {count - 1, count + 1}, "group-missed": missed}[slug]
    rows, each = said
    count = rows * each
    return {
        "one-to-one": {count - 1, count + 1},
        "group-off": {count + off for off in (-rows, rows, -each, each)},
        "sides-added": {rows + each},
    }[slug]


def _about(slug: str, text: str) -> Answers:
    case = two(text)
    assert case is not None
    if slug in ("tops-only", "bottoms-only", "add-across"):
        return of_two(slug, case)
    if slug == "rounded-down":
        first = [Fraction(each.text[0] + "0" * (len(each.text) - 1)) for each in (case.a, case.b)]
        return {work(first[0], case.sign, first[1])}
    near = [(x, y) for x in _roundings(case.a.value) for y in _roundings(case.b.value)]
    if case.sign == "/":
        near += [
            (y * n, y) for y in _roundings(case.b.value) if y for n in _roundings(case.a.value / y)
        ]
    if slug == "wrong-operation":
        other = {"x": "+", "/": "-", "+": "-", "-": "+"}[case.sign]
        return {work(x, other, y) for x, y in near}
    value = [work(x, case.sign, y) for x, y in near]
    scales = [10] if slug == "zero-added" else [Fraction(1, 10), Fraction(1, 100)]
    return {one * scale for one in value for scale in scales}


def _roundings(value: Fraction) -> list[Fraction]:
    half = Fraction(1, 2)
    halves = [Fraction(int(value * 2 + half), 2), Fraction(int(value + half))]
    sizes = (10, 100, 1000, 10_000, 100_000)
    return [value, *halves, *(Fraction(int(value / size + half) * size) for size in sizes)]


def _claim(slug: str, text: str) -> Answers:
    left, right = text.split(" = ")
    if slug == "write-answer":
        value = evaluate(left)
        return {str(value == numbers(right)[0].value).lower()}
    if slug == "answer-first":
        return set() if signs(left) else {"false"}
    if not signs(text):
        order = answers(slug, f"{left} ? {right}")
        return {str(found == "=").lower() for found in order}
    one, other = two(left), two(right)
    if one is not None and other is not None and slug in ("moved-across", "shifted-alike"):
        first = other.a.value - one.a.value
        second = other.b.value - one.b.value
        alike = first == second if slug == "shifted-alike" else first == -second
        return {str(alike).lower()}
    for side, said in ((left, right), (right, left)):
        if signs(side) and not signs(said) and numbers(said)[0].value in answers(slug, side):
            return {"true"}
    return set()


def _order(slug: str, a: N, b: N) -> Answers:
    """Hold two sizes against each other, as the slip would."""
    if slug in ("denominator-after-point", "top-point-bottom"):
        return {_sign(_misread(slug, a) - _misread(slug, b))}
    if slug in ("longer-larger", "shorter-larger", "ignore-point"):
        if slug == "ignore-point":
            return {_sign(a.bare - b.bare)}
        if slug == "shorter-larger":
            return {_sign(b.places - a.places)}
        return {_sign(a.after - b.after), _sign(a.places - b.places)}
    (_, t1, b1), (_, t2, b2) = a.parts, b.parts
    gap = {
        "bigger-bottom": b1 - b2,
        "smaller-bottom": b2 - b1,
        "bigger-top": t1 - t2,
        "gap-compare": (b2 - t2) - (b1 - t1),
    }[slug]
    return {_sign(gap)}


def _misread(slug: str, number: N) -> Fraction:
    if "/" not in number.text:
        return number.value
    _, top, bottom = number.parts
    return Fraction(f"{top if slug == 'top-point-bottom' else 0}.{bottom}")


def _sign(gap: Fraction | int) -> str:
    return "<" if gap < 0 else ">" if gap else "="


def _equation(slug: str, text: str) -> Answers:
    left, right = text.split(" = ")
    known, blank = (right, left) if "_" in left else (left, right)
    if slug == "write-answer" and signs(known):
        return {evaluate(known)}
    if slug == "add-all":
        return {sum(number.value for number in numbers(text))}
    one, given = two(known), numbers(blank)
    if one is None or len(given) != 1:
        return set()
    total, other = evaluate(known), given[0].value
    sign = signs(blank)[0]
    if slug == "near-miss":
        first = blank.startswith("_")
        back = {"+": lambda n: n - other, "-": lambda n: n + other if first else other - n}
        return {back[sign](total + off) for off in (-1, 1)} if sign in back else set()
    if slug == "adjust-wrong-way":
        pairs = ((one.a.value, one.b.value), (one.b.value, one.a.value))
        return {kept + (other - changed) for kept, changed in pairs}
    return set()


def _several(slug: str, text: str) -> Answers:
    said, between, right = numbers(text), signs(text), evaluate(text)
    if slug == "near-miss":
        return {right + off for off in (-10, -1, 1, 10)}
    if slug == "left-to-right":
        value = said[0].value
        for sign, number in zip(between, said[1:], strict=True):
            value = work(value, sign, number.value)
        return {value}
    if slug == "bracket-once":
        return {evaluate(text.replace("(", "").replace(")", ""))}
    if slug == "drop-carry":
        ones = sum(number.value % 10 for number in said)
        return {sum(number.value // 10 * 10 for number in said) + ones % 10}
    values = [number.value for number in said]
    if slug == "wrong-operation":
        return {sum(values)}
    without = [[*values[:at], *values[at + 1 :]] for at in range(len(values))]
    if "x" in between:
        return {prod(each) for each in without}
    terms = [values[0], *(v if s == "+" else -v for s, v in zip(between, values[1:], strict=True))]
    return {sum(terms) - term for term in terms}


def _added(slug: str, text: str) -> Answers:
    """Three or more fractions or decimals."""
    said = numbers(text)
    if slug == "part-missing":
        return {evaluate(text) - number.value for number in said}
    if slug in ("ignore-point", "right-aligned"):
        most = max(number.places for number in said) if slug == "right-aligned" else 0
        return {Fraction(sum(number.bare for number in said), 10**most)}
    tops, bottoms = (sum(number.parts[at] for number in said) for at in (1, 2))
    return {"add-across": {Fraction(tops, bottoms)}, "tops-only": {tops}}[slug]


def evaluate(text: str) -> Fraction:
    """The value of an expression of whole numbers, fractions and decimals, by Python."""
    plain = re.sub(r"(\d+) (\d+)/(\d+)", r"(\1+\2/\3)", text)
    plain = re.sub(r"(\d+)/(\d+)", r"(\1/\2)", plain)
    plain = re.sub(r"(\d+(?:\.\d+)?)%", r"(\1/100)", plain)
    plain = plain.replace(" x ", " * ").replace(" of ", " * ")
    tokens = re.sub(r"\d+(?:\.\d+)?", lambda found: f"Fraction('{found[0]}')", plain)
    value = eval(tokens, {"__builtins__": {}}, {"Fraction": Fraction})
    return Fraction(value)


__all__ = ["Two", "answers", "evaluate"]

"""Random problems of every kind a class meets, as plain text, from a seed.

The kinds and their limits are those of the first list of the plan: whole numbers to a million, four
digits by two, denominators to 12, decimals to thousandths, whole percents and those over 100.
"""

import random
from collections.abc import Callable
from fractions import Fraction

Dice = random.Random


def asked_of_every_kind(seed: int, many: int) -> list[tuple[str, str]]:
    """Return so many (kind, problem), the kinds in turn."""
    dice = random.Random(f"every kind {seed}")
    kinds = tuple(KINDS)
    return [
        (kind, KINDS[kind](dice)) for kind in (kinds[place % len(kinds)] for place in range(many))
    ]


def _some(dice: Dice, *limits: int) -> int:
    return dice.randint(1, dice.choice(limits))


def _sum(dice: Dice) -> str:
    total = _some(dice, 10, 20, 100, 1000, 10_000, 1_000_000)
    left = dice.randint(0, total)
    if dice.random() < 0.05:
        return f"{left} - {total}"
    return dice.choice((f"{left} + {total - left}", f"{total} - {left}"))


def _longer_sum(dice: Dice) -> str:
    most = dice.choice((10, 20, 100, 300))
    terms = [dice.randint(1, most) for _ in range(dice.choice((3, 3, 4, 5)))]
    if dice.random() < 0.5:
        return " + ".join(map(str, terms))
    taken = dice.randint(0, sum(terms[:-1]))
    return f"{' + '.join(map(str, terms[:-1]))} - {taken}"


def _factors(dice: Dice) -> tuple[int, int]:
    sizes = dice.choice(((12, 12), (99, 9), (99, 99), (999, 9), (999, 99), (9999, 99)))
    return dice.randint(1, sizes[0]), dice.randint(1, sizes[1])


def _product(dice: Dice) -> str:
    left, right = _factors(dice)
    if dice.random() < 0.1:
        return " x ".join(str(dice.choice((2, 3, 4, 5, 6, 7, 8, 9, 10, 25))) for _ in range(3))
    return f"{left} x {right}" if dice.random() < 0.6 else f"{right} x {left}"


def _quotient(dice: Dice) -> str:
    part = dice.randint(1, dice.choice((9, 12, 99)))
    whole = dice.randint(part, dice.choice((99, 999, 9999)))
    return f"{whole - whole % part if dice.random() < 0.5 else whole} / {part}"


def _missing(dice: Dice) -> str:
    total = _some(dice, 10, 20, 100, 1000)
    left = dice.randint(0, total)
    one, other = dice.randint(1, 12), dice.randint(1, 12)
    return dice.choice(
        (
            f"{left} + _ = {total}",
            f"_ + {left} = {total}",
            f"{total} - _ = {left}",
            f"_ - {left} = {total - left}",
            f"{left} = {total} - _",
            f"{one} x _ = {one * other}",
            f"_ x {one} = {one * other}",
            f"{one * other} / _ = {one}",
            f"_ / {one} = {other}",
        )
    )


def _side(dice: Dice, most: int) -> str:
    sign = dice.choice("++-x")
    if sign == "x":
        return f"{dice.randint(1, 12)} x {dice.randint(1, 12)}"
    left, right = dice.randint(1, most), dice.randint(1, most)
    return f"{max(left, right)} {sign} {min(left, right)}"


def _both_sides(dice: Dice) -> str:
    most = dice.choice((10, 20, 100))
    if dice.random() < 0.5:
        left, right = dice.randint(1, most), dice.randint(1, most)
        given = dice.randint(0, left + right)
        whole, side = f"{left} + {right}", dice.choice((f"_ + {given}", f"{given} + _"))
    else:
        small, large = sorted((dice.randint(1, most), dice.randint(1, most)))
        whole = f"{large} - {small}"
        side = f"_ - {dice.randint(1, most)}"
    return f"{whole} = {side}" if dice.random() < 0.7 else f"{side} = {whole}"


def _claim(dice: Dice) -> str:
    most = dice.choice((10, 20, 100))
    left, right, by = dice.randint(1, most), dice.randint(1, most), dice.randint(1, 9)
    if dice.random() < 0.4:
        off = dice.choice((0, 0, 1, -1))
        return f"{left} + {right} = {left + by} + {max(right - by + off, 0)} ?"
    return f"{_side(dice, most)} = {_side(dice, most)} ?"


def _image(dice: Dice) -> str:
    first, second = dice.randint(1, 10), dice.randint(1, 10)
    kind = dice.choice(("frame", "pairs"))
    return dice.choice(
        (
            f"image {kind} 10: {first}",
            f"image {kind} 20: {first + second}",
            f"image {kind} 20: {first} {second}",
            f"image dice: {' '.join(str(dice.randint(1, 6)) for _ in range(dice.randint(1, 5)))}",
            f"image array: {dice.randint(1, 12)} x {dice.randint(1, 12)}",
            f"image dots: {_dots(dice)}",
        )
    )


def _dots(dice: Dice) -> str:
    places = {(10 * dice.randint(0, 9), 10 * dice.randint(0, 5)) for _ in range(_some(dice, 20))}
    return " ".join(f"{x},{y}" for x, y in sorted(places))


def _fraction(dice: Dice, bottom: int | None = None) -> str:
    bottom = bottom or dice.randint(2, 12)
    top = dice.randint(1, bottom - 1)
    return f"{dice.randint(1, 9)} {top}/{bottom}" if dice.random() < 0.3 else f"{top}/{bottom}"


def worth(printed: str) -> Fraction:
    """Return what one printed number of these problems is worth."""
    whole, _, part = printed.rpartition(" ")
    return int(whole or 0) + Fraction(part)


def _fraction_sum(dice: Dice) -> str:
    bottom = dice.randint(2, 12) if dice.random() < 0.4 else None
    pair = sorted((_fraction(dice, bottom), _fraction(dice, bottom)), key=worth)
    if dice.random() < 0.2:
        pair[dice.randrange(2)] = str(dice.randint(1, 9))
        pair.sort(key=worth)
    if dice.random() < 0.5:
        return f"{pair[1]} - {pair[0]}"
    dice.shuffle(pair)
    return " + ".join(pair)


def _fraction_product(dice: Dice) -> str:
    left, right = _fraction(dice), _fraction(dice)
    if dice.random() < 0.5:
        right = str(dice.randint(1, 20))
    if dice.random() < 0.3:
        left, right = right, left
    return f"{left} {dice.choice('xx/')} {right}"


def _part_of(dice: Dice) -> str:
    bottom = dice.randint(2, 12)
    top = dice.randint(1, bottom - 1)
    number = bottom * dice.randint(1, 60) if dice.random() < 0.7 else dice.randint(1, 200)
    return f"{top}/{bottom} of {number}"


def _decimal(dice: Dice, most: int = 20, places: int = 3) -> str:
    size = dice.randint(1, places)
    number = dice.randint(1, most * 10**size)
    return f"{number // 10**size}.{number % 10**size:0{size}}"


def _decimal_sum(dice: Dice) -> str:
    left, right = sorted((_decimal(dice), _decimal(dice)), key=Fraction)
    if dice.random() < 0.15:
        right = str(int(Fraction(right)) + 1)
    if dice.random() < 0.15:
        return f"{left} + _ = {right}"
    return f"{left} + {right}" if dice.random() < 0.5 else f"{right} - {left}"


def _decimal_product(dice: Dice) -> str:
    left, right = _decimal(dice, 10, 2), str(dice.randint(2, 12))
    if dice.random() < 0.4:
        right = _decimal(dice, 5, 1)
    if Fraction(right) and dice.random() < 0.4:
        whole = Fraction(left) * Fraction(right)
        thousandths = int(whole * 1000)
        if thousandths < 1000 * Fraction(right):
            return f"{left} x {right}"
        digits = f"{thousandths // 1000}.{thousandths % 1000:03}"
        return f"{digits.rstrip('0').rstrip('.')} / {right}"
    return f"{left} x {right}"


def _percent(dice: Dice) -> str:
    rate = dice.choice((1, 5, 10, 15, 20, 25, 30, 50, 60, 75, 99, dice.randint(1, 100)))
    if dice.random() < 0.15:
        rate = dice.choice((100, 110, 120, 125, 150, 200, 250))
    return f"{rate}% of {dice.choice((20, 40, 60, 80, 120, 240, dice.randint(1, 500)))}"


def _compare(dice: Dice) -> str:
    makers: tuple[Callable[[Dice], str], ...] = (
        lambda one: _decimal(one, 2),
        _fraction,
        lambda one: f"{one.randint(1, 150)}%",
        lambda one: str(one.randint(0, 2000)),
    )
    first = dice.choice(makers[:2])
    second = first if dice.random() < 0.7 else dice.choice(makers)
    left, right = first(dice), second(dice)
    return f"{_side(dice, 50)} ? {_side(dice, 50)}" if dice.random() < 0.2 else f"{left} ? {right}"


def _estimate(dice: Dice) -> str:
    left, right = dice.randint(20, 9999), dice.randint(11, 999)
    return "about " + dice.choice(
        (
            f"{left} + {right}",
            f"{max(left, right)} - {min(left, right)}",
            f"{left} x {dice.randint(11, 99)}",
            f"{left} / {dice.randint(3, 60)}",
            f"{_decimal(dice)} x {_decimal(dice)}",
            f"{_decimal(dice)} + {_decimal(dice)}",
            f"{_fraction(dice)} + {_fraction(dice)}",
            f"{dice.randint(1, 99)}% of {dice.randint(10, 500)}",
        )
    )


KINDS: dict[str, Callable[[Dice], str]] = {
    "sums": _sum,
    "longer sums": _longer_sum,
    "products": _product,
    "quotients": _quotient,
    "missing numbers": _missing,
    "both sides": _both_sides,
    "claims": _claim,
    "quick images": _image,
    "sums of fractions": _fraction_sum,
    "products of fractions": _fraction_product,
    "parts of a number": _part_of,
    "sums of decimals": _decimal_sum,
    "products of decimals": _decimal_product,
    "percents": _percent,
    "comparisons": _compare,
    "estimates": _estimate,
}
"""What makes a problem of each kind."""

"""Random problems of every kind that has slips, as text; the same for the same seed."""

import random
from collections.abc import Callable

Kind = Callable[[random.Random], str]


def _sums(dice: random.Random) -> str:
    most = dice.choice((20, 100, 1000, 1_000_000))
    a, b = dice.randrange(most), dice.randrange(most)
    return f"{a} + {b}" if dice.random() < 0.5 else f"{max(a, b)} - {min(a, b)}"


def _products(dice: random.Random) -> str:
    a, b = dice.choice(((13, 13), (100, 10), (100, 100), (10_000, 100)))
    left, right = dice.randrange(a), dice.randrange(b)
    if dice.random() < 0.3:
        left = left // 10 * 10
    return f"{left} x {right}" if dice.random() < 0.5 else f"{right} x {left}"


def _quotients(dice: random.Random) -> str:
    by = dice.randrange(1, dice.choice((13, 100)))
    if dice.random() < 0.5:
        return f"{by * dice.randrange(dice.choice((13, 100)))} / {by}"
    return f"{dice.randrange(dice.choice((100, 10_000)))} / {by}"


def _missing(dice: random.Random) -> str:
    a, b = dice.randrange(1, 100), dice.randrange(1, 100)
    c, d = dice.randrange(1, 13), dice.randrange(1, 13)
    return dice.choice(
        (
            f"{a} + _ = {a + b}", f"_ - {a} = {b}", f"{b} = {a + b} - _", f"_ + {a} = {a + b}",
            f"_ x {c} = {c * d}", f"{c} x _ = {c * d}", f"{c * d} / _ = {d}", f"_ / {c} = {d}",
            f"{a + b} + {c} = _ + {a}", f"{a} + {b + c} = {b} + _", f"{a + b} - {a} = _ - {c}",
        )
    )  # fmt: skip


def _several(dice: random.Random) -> str:
    a, b, c = (dice.randrange(1, 60) for _ in range(3))
    d, e, f = (dice.randrange(2, 10) for _ in range(3))
    return dice.choice(
        (
            f"{a} + {b} + {c}", f"{a + b} - {b} + {c}", f"{a + b + c} - {b} - {c}",
            f"{d} x {e} x {f}", " + ".join(_fraction(dice, 0) for _ in range(3)),
            f"{_decimal(dice)} + {_decimal(dice)} + {a}",
            f"{a} + {d} x {e}", f"{d} x ({a} + {e})", f"({a} + {d}) x {e}",
        )
    )  # fmt: skip


def _decimal(dice: random.Random) -> str:
    places = dice.choice((1, 1, 2, 3))
    return f"{dice.choice((0, dice.randrange(40)))}.{dice.randrange(1, 10**places):0{places}}"


def _decimals(dice: random.Random) -> str:
    a, b, n = _decimal(dice), _decimal(dice), str(dice.randrange(1, 13))
    sign = dice.choice("+-")
    if sign == "-" and float(a) < float(b):
        a, b = b, a
    return dice.choice(
        (
            f"{a} {sign} {b}", f"{a} + {n}", f"{a} x {n}", f"{a} x {b}", f"{a} x 10", f"{a} / {n}",
            f"{n} / {b}", f"{a} x 100",
        )
    )  # fmt: skip


def _fraction(dice: random.Random, mixed: float = 0.3) -> str:
    bottom = dice.randrange(2, 13)
    part = f"{dice.randrange(1, bottom)}/{bottom}"
    return f"{dice.randrange(1, 6)} {part}" if dice.random() < mixed else part


def _fractions(dice: random.Random) -> str:
    a, b, n = _fraction(dice), _fraction(dice), dice.randrange(1, 60)
    return dice.choice(
        (
            f"{a} + {b}", f"{a} - {b}", f"{a} x {b}", f"{a}  /  {b}", f"{n} - {a}", f"{n} + {a}",
            f"{a} x {n}", f"{n}  /  {a}", f"{_fraction(dice, 0)} of {n}", _fraction(dice, 0),
        )
    ).replace("  ", " ")  # fmt: skip


def _percents(dice: random.Random) -> str:
    rate = dice.choice((1, 5, 10, 12, 15, 20, 25, 30, 50, 75, 99, 110, 120, 150, 250))
    return f"{rate}% of {dice.randrange(1, 500)}"


def _compares(dice: random.Random) -> str:
    a, b = _decimal(dice), _decimal(dice)
    if dice.random() < 0.5:
        b = a.partition(".")[0] + "." + b.partition(".")[2]
    wholes = dice.choice(("", "", "2 "))
    fractions = [wholes + _fraction(dice, 0) for _ in range(2)]
    return dice.choice((f"{a} ? {b}", " ? ".join(fractions), f"{_fraction(dice, 0)} ? {a}"))


def _claims(dice: random.Random) -> str:
    a, b, off = dice.randrange(20, 90), dice.randrange(10, 20), dice.randrange(1, 4)
    wrong = a - b + dice.choice((0, 2, 4, 6, 10))
    return dice.choice(
        (
            f"{a} + {b} = {a + off} + {b - off} ?", f"{a} - {b} = {a + off} - {b + off} ?",
            f"{a} - {b} = {a + off} - {b - off} ?", f"{a} + {b} = {a + off} + {b + off} ?",
            f"{_fraction(dice, 0)} = {_fraction(dice, 0)} ?", f"0.{off} = 0.{off}0 ?",
            f"{a} - {b} = {wrong} ?", f"{a} + {b} = {a + b} + {off} ?", f"{a + b} = {a} + {b} ?",
        )
    )  # fmt: skip


def _abouts(dice: random.Random) -> str:
    a, b = dice.randrange(20, 1000), dice.randrange(11, 100)
    fractions = f"{_fraction(dice, 0)} + {_fraction(dice, 0)}"
    return "about " + dice.choice(
        (f"{a} x {b}", f"{a} + {b}", f"{a + b} - {b}", f"{a + b} / {b}", fractions)
    )


def _images(dice: random.Random) -> str:
    faces = " ".join(str(dice.randrange(1, 7)) for _ in range(dice.randrange(1, 5)))
    size, kind = dice.choice((10, 20)), dice.choice(("frame", "pairs"))
    return "image " + dice.choice(
        (
            f"{kind} {size}: {dice.randrange(1, size + 1)}", f"dice: {faces}",
            f"{kind} 20: {dice.randrange(1, 11)} {dice.randrange(1, 11)}",
            f"array: {dice.randrange(1, 13)} x {dice.randrange(1, 13)}",
            "dots: 10,20 30,8 50,9",
        )
    )  # fmt: skip


KINDS: dict[str, Kind] = {
    "sums": _sums,
    "products": _products,
    "quotients": _quotients,
    "missing": _missing,
    "several": _several,
    "decimals": _decimals,
    "fractions": _fractions,
    "percents": _percents,
    "compares": _compares,
    "claims": _claims,
    "abouts": _abouts,
    "images": _images,
}


def asked(seed: int, many: int, kind: str) -> list[str]:
    """So many problems of a kind."""
    dice = random.Random(f"{seed} {kind}")
    return [KINDS[kind](dice) for _ in range(many)]

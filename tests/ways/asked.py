"""Random problems of every form that ways are written for, from a seed."""

import random

HIGHEST = 1000


def asked(seed: int, many: int) -> list[str]:
    """Return so many problems as plain text: small numbers as often as large ones."""
    dice = random.Random(seed)
    return [_problem(dice) for _ in range(many)]


def _problem(dice: random.Random) -> str:
    highest = dice.choice((10, 20, 100, 100, HIGHEST, HIGHEST))
    total = dice.randint(0, highest)
    left = dice.randint(0, total)
    right = total - left
    terms = [dice.randint(1, max(1, highest // 4)) for _ in range(dice.choice((3, 3, 4)))]
    several = " + ".join(map(str, terms))
    taken = dice.randint(0, sum(terms[:-1]))
    mixed = f"{' + '.join(map(str, terms[:-1]))} - {taken}"
    forms = (
        f"{left} + _ = {total}",
        f"_ + {right} = {total}",
        f"{total} - _ = {left}",
        f"_ - {right} = {left}",
        f"{left} = {total} - _",
        f"{total} = {left} + _",
        several,
        several,
        mixed,
        mixed,
    )
    plain = (f"{left} + {right}", f"{total} - {right}")
    return dice.choice(plain) if dice.random() < 0.6 else dice.choice(forms)


_SIZES = ((12, 12), (12, 12), (99, 9), (99, 9), (99, 99), (999, 9), (9999, 9), (9999, 99))
"""How large two factors may be; the tables as often as two digits times one."""


def asked_in_groups(seed: int, many: int) -> list[str]:
    """Return so many products, quotients, and either with a number missing."""
    dice = random.Random(seed)
    return [_groups(dice) for _ in range(many)]


def _groups(dice: random.Random) -> str:
    factors = [dice.randint(2, most) for most in dice.choice(_SIZES)]
    if dice.random() < 0.1:
        factors[dice.randrange(2)] = dice.choice((0, 1, 10, 100))
    left, right = factors if dice.random() < 0.5 else factors[::-1]
    product, part = left * right, min(left, right)
    three = [dice.choice((2, 2, 3, 4, 5, 5, 6, 7, 8, 9, 10, 12, 25)) for _ in range(3)]
    forms = [f"{left} x {right}", f"{left} x {right}", " x ".join(map(str, three))]
    if part and product < HIGHEST * 10:
        share = product // part
        forms += [f"{product} / {part}"] * 3
        forms += [f"{product + dice.randrange(part)} / {part}"] * 2
        forms += [f"_ x {part} = {product}", f"{part} x _ = {product}", f"{product} / _ = {part}"]
        forms += [f"_ / {part} = {share}", f"{product} = _ x {part}"]
    return dice.choice(forms)

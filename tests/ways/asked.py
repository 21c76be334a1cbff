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

"""Random problems with decimals, from a seed, as plain text."""

import random


def asked(seed: int, many: int) -> list[str]:
    """Return so many problems, mostly with one or two places."""
    dice = random.Random(seed)
    return [_problem(dice) for _ in range(many)]


def _number(dice: random.Random, places: int, most: int = 20) -> str:
    units = dice.randint(1, most * 10**places - 1)
    whole, rest = divmod(units, 10**places)
    return f"{whole}.{rest:0{places}}" if places else str(units)


def _problem(dice: random.Random) -> str:
    kind = dice.random()
    places = dice.choice((1, 1, 1, 2, 2, 3))
    less = dice.choice((places, places, dice.randint(0, places)))
    if kind < 0.45:
        return _sum(dice, places, less)
    if kind < 0.75:
        factor = _number(dice, dice.choice((1, 1, 1, 2)), dice.choice((1, 10)))
        other = dice.choice((str(dice.randint(2, 60)), _number(dice, 1, 10)))
        return dice.choice((f"{factor} x {other}", f"{other} x {factor}"))
    return _quotient(dice)


def _sum(dice: random.Random, places: int, less: int) -> str:
    unit = 10**places
    total = dice.randint(2, 20 * unit)
    left = dice.randint(1, total - 1)
    if less < places:
        left -= left % 10 ** (places - less)
    left = max(left, 1)
    right = max(total - left, 1)
    one, other, both = (_text(units, places) for units in (left, right, left + right))
    third = _number(dice, 1)
    forms = (
        f"{one} + {other}",
        f"{both} - {one}",
        f"{one} + {other}",
        f"{both} - {other}",
        f"{one} + _ = {both}",
        f"{both} - _ = {one}",
        f"{one} + {other} + {third}",
        f"{both} + {third} - {one}",
    )
    return dice.choice(forms)


def _text(units: int, places: int) -> str:
    whole, rest = divmod(units, 10**places)
    return f"{whole}.{rest:0{places}}"


def _quotient(dice: random.Random) -> str:
    part, answer = dice.randint(2, 25), dice.randint(2, 60)
    places = dice.choice((1, 1, 2))
    whole = part * answer
    forms = (
        f"{_text(whole, places)} / {part}",
        f"{_text(whole, 1)} / {_text(part, 1)}",
        f"{whole} / {_text(part, 1)}",
        f"_ x {_text(part, 1)} = {_text(whole, 1)}",
        f"{_text(part, 1)} x _ = {_text(whole, 1)}",
    )
    return dice.choice(forms)

"""How a child might say a way with fractions or percents, in both languages."""

import pytest

from waysaid.number import Language, parse
from waysaid.ways import how_said, ways

SAID = [
    ("3/4 + 7/8", "3/4 = 6/8; 6/8 + 7/8 = 13/8; 13/8 = 1 5/8",
     "I made quarters into eighths: 3/4 is 6/8, 6/8 and 7/8 is 13/8, then 13/8 is 1 5/8.",
     "Pasé de cuartos a octavos: 3/4 son 6/8, 6/8 y 7/8 son 13/8, luego 13/8 son 1 5/8."),
    ("3/4 + 3/4", "3/4 + 3/4 = 6/4; 6/4 = 1 2/4",
     "I thought in quarters: 3/4 and 3/4 is 6/4, then 6/4 is 1 2/4.",
     "Pensé en cuartos: 3/4 y 3/4 son 6/4, luego 6/4 son 1 2/4."),
    ("2/7 + 3/7", "2 + 3 = 5; 2/7 + 3/7 = 5/7",
     "I thought in sevenths: 2 and 3 is 5, then 2/7 and 3/7 is 5/7.",
     "Pensé en séptimos: 2 y 3 son 5, luego 2/7 y 3/7 son 5/7."),
    ("3 - 2/5", "3 = 2 5/5; 2 5/5 - 2/5 = 2 3/5",
     "I broke a whole into fifths: 3 is 2 5/5, then 2 5/5 take away 2/5 is 2 3/5.",
     "Partí un entero en quintos: 3 son 2 5/5, luego 2 5/5 menos 2/5 son 2 3/5."),
    ("3 / 1/2", "3 = 6/2; 6/2 / 1/2 = 6",
     "I made wholes into halves: 3 is 6/2, then 6/2 divided by 1/2 is 6.",
     "Pasé de enteros a medios: 3 son 6/2, luego 6/2 entre 1/2 son 6."),
    ("16% of 25", "16% of 25 = 25% of 16; 16 / 4 = 4",
     "I turned it round: 16% of 25 is the same as 25% of 16, then 16 divided by 4 is 4.",
     "Le di la vuelta: 16% de 25 es lo mismo que 25% de 16, luego 16 entre 4 son 4."),
    ("25% of 60", "1/4 x 60 = 15",
     "I said it another way first: 1/4 of 60 is 15.",
     "Primero lo dije de otra forma: 1/4 de 60 son 15."),
    ("5/13 + 7/26", "5/13 = 10/26; 10/26 + 7/26 = 17/26",
     "I said it another way first: 5/13 is 10/26, then 10/26 and 7/26 is 17/26.",
     "Primero lo dije de otra forma: 5/13 son 10/26, luego 10/26 y 7/26 son 17/26."),
    ("2/3 of 57", "57 / 3 = 19; 19 x 2 = 38",
     "I did it in steps: 57 divided by 3 is 19, then double 19 is 38.",
     "Lo hice por pasos: 57 entre 3 son 19, luego el doble de 19 son 38."),
]  # fmt: skip


@pytest.mark.parametrize(("asked", "steps", "english", "spanish"), SAID)
def test_a_way_is_said_as_a_child_might(asked, steps, english, spanish):
    found = {"; ".join(step.text for step in way.steps): way for way in ways(parse(asked))}
    assert how_said(found[steps], Language.EN) == english
    assert how_said(found[steps], Language.ES) == spanish

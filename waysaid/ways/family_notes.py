"""A family told to a teacher: what the child does, an example, where it is met, where it leads.

The grade (0 is kindergarten) is the first in which the source, by its id in the list kept with
the published tests, asks for the family or names it; `our guess` where we read no source.
"""

from collections.abc import Mapping
from dataclasses import dataclass

from waysaid.number import Language
from waysaid.ways.way import Family

OUR_GUESS = "our guess"


@dataclass(frozen=True, slots=True)
class FamilyNote:
    """What there is to say of a family beside its name."""

    en: str
    es: str
    examples: tuple[str, ...]
    grade: int
    source: str
    leads_to: tuple[Family, ...]

    def does(self, language: Language) -> str:
        """Return what the child does, in one sentence."""
        return self.es if language is Language.ES else self.en


_F = Family
FAMILY_NOTES: Mapping[Family, FamilyNote] = {
    _F.COUNTING: FamilyNote(
        "Counts on or back, by ones or in equal skips.",
        "Cuenta hacia delante o hacia atrás, de uno en uno o a saltos iguales.",
        ("7 + 3", "12 - 3", "4 x 5"),
        0,
        "ccss",
        (_F.BRIDGE, _F.KNOWN_FACT),
    ),
    _F.KNOWN_FACT: FamilyNote(
        "Just knows it.",
        "Se lo sabe.",
        ("6 + 6", "10 - 4", "7 x 5"),
        0,
        "ccss",
        (_F.NEAR_DOUBLE, _F.NEAR_FACT),
    ),
    _F.NEAR_DOUBLE: FamilyNote(
        "Starts from a double that is close and puts the rest right.",
        "Parte de un doble cercano y luego ajusta.",
        ("8 + 9", "25 + 26", "13 - 6"),
        1,
        "ccss",
        (_F.ADJUST, _F.NEAR_FACT),
    ),
    _F.BRIDGE: FamilyNote(
        "Fills up, or comes down, to a friendly number, then does the rest.",
        "Completa hasta un número fácil, o baja a él, y luego hace el resto.",
        ("8 + 5", "37 + 25", "62 - 8"),
        1,
        "ccss",
        (_F.GIVE_AND_TAKE, _F.ADD_UP),
    ),
    _F.JUMP: FamilyNote(
        "Keeps one number whole and adds or takes the other in pieces.",
        "Deja un número entero y suma o quita el otro por partes.",
        ("37 + 25", "62 - 25"),
        2,
        "acara",
        (_F.ADJUST, _F.BRIDGE),
    ),
    _F.SPLIT: FamilyNote(
        "Splits both numbers by place and puts like pieces together.",
        "Separa los dos números por lugar y junta las partes iguales.",
        ("37 + 25", "346 + 253"),
        2,
        "ccss",
        (_F.JUMP, _F.SPLIT_THEN_JUMP),
    ),
    _F.SPLIT_THEN_JUMP: FamilyNote(
        "Puts the big pieces together, then adds or takes the small ones in turn.",
        "Junta las partes grandes y luego suma o quita las pequeñas una tras otra.",
        ("37 + 25", "62 - 25"),
        2,
        OUR_GUESS,
        (_F.JUMP,),
    ),
    _F.ADJUST: FamilyNote(
        "Uses a friendly number close by, then puts the difference right.",
        "Usa un número fácil cercano y luego corrige la diferencia.",
        ("37 + 29", "62 - 19", "5 x 18"),
        2,
        "tcm2010",
        (_F.GIVE_AND_TAKE, _F.SHIFT_BOTH),
    ),
    _F.GIVE_AND_TAKE: FamilyNote(
        "Moves some from one number to the other; the total stays.",
        "Pasa algo de un número al otro; el total no cambia.",
        ("38 + 25", "298 + 166"),
        2,
        "il-guide",
        (_F.SHIFT_BOTH, _F.DOUBLE_HALVE),
    ),
    _F.SHIFT_BOTH: FamilyNote(
        "Changes both numbers alike; the difference stays.",
        "Cambia los dos números por igual; la diferencia no cambia.",
        ("62 - 25", "300 - 148"),
        3,
        "nsw-nesa2022",
        (_F.SCALE_BOTH,),
    ),
    _F.ADD_UP: FamilyNote(
        "Finds a difference by going up from the smaller number.",
        "Halla la diferencia subiendo desde el número menor.",
        ("62 - 25", "403 - 389"),
        2,
        "tcm2010",
        (_F.THINK_ADD, _F.SHIFT_BOTH),
    ),
    _F.PARTNERS: FamilyNote(
        "Reorders three or more numbers to pair those that go together.",
        "Cambia el orden de tres o más números para juntar los que van bien.",
        ("7 + 26 + 3", "4 x 7 x 25"),
        1,
        "tcm2010",
        (_F.FACTOR_STEPS,),
    ),
    _F.COLUMN: FamilyNote(
        "Works digit by digit with regrouping, as on paper.",
        "Trabaja cifra a cifra con llevadas, como en el papel.",
        ("37 + 25", "62 - 25"),
        3,
        "ccss",
        (),
    ),
    _F.THINK_ADD: FamilyNote(
        "Subtracts by the addition that is known to fit.",
        "Resta con la suma que ya sabe que encaja.",
        ("13 - 7",),
        1,
        "ccss",
        (_F.ADD_UP, _F.THINK_TIMES),
    ),
    _F.NEAR_FACT: FamilyNote(
        "Goes from a neighbouring multiplication fact, one or more groups on or back.",
        "Parte de un producto vecino, con uno o más grupos más o menos.",
        ("6 x 8", "19 x 7"),
        3,
        "lefevre1996m",
        (_F.BREAK_UP,),
    ),
    _F.BREAK_UP: FamilyNote(
        "Splits a factor, or the number that is shared, into parts.",
        "Parte un factor, o el número que se reparte.",
        ("14 x 6", "84 / 4"),
        3,
        "ccss",
        (_F.FACTOR_STEPS, _F.CHUNK_OUT),
    ),
    _F.DOUBLE_HALVE: FamilyNote(
        "Makes one factor larger and the other as much smaller; the product stays.",
        "Agranda un factor y achica el otro en la misma proporción; el producto no cambia.",
        ("16 x 5", "25 x 12"),
        4,
        "tcm2010",
        (_F.SCALE_BOTH,),
    ),
    _F.FACTOR_STEPS: FamilyNote(
        "Multiplies or divides in steps by factors.",
        "Multiplica o divide por pasos, factor a factor.",
        ("7 x 8", "96 / 8"),
        3,
        "ccss",
        (_F.DOUBLE_HALVE, _F.RENAME),
    ),
    _F.THINK_TIMES: FamilyNote(
        "Divides by finding the missing factor.",
        "Divide buscando el factor que falta.",
        ("56 / 8",),
        3,
        "ccss",
        (_F.CHUNK_OUT,),
    ),
    _F.CHUNK_OUT: FamilyNote(
        "Takes out friendly multiples, then counts how many groups that was.",
        "Saca múltiplos fáciles y luego cuenta cuántos grupos son.",
        ("96 / 6", "672 / 5"),
        4,
        "utah",
        (_F.BREAK_UP, _F.SCALE_BOTH),
    ),
    _F.SCALE_BOTH: FamilyNote(
        "Scales both numbers of a division alike; the quotient stays.",
        "Cambia los dos números de una división en la misma proporción; el cociente no cambia.",
        ("180 / 12", "4.8 / 0.6"),
        5,
        "acara",
        (_F.RENAME,),
    ),
    _F.RENAME: FamilyNote(
        "Writes a number another way first.",
        "Primero escribe un número de otra forma.",
        ("3/4 + 7/8", "0.25 x 36", "30 x 4"),
        3,
        OUR_GUESS,
        (_F.BENCHMARK,),
    ),
    _F.BENCHMARK: FamilyNote(
        "Goes through a part that is well known: one half, one whole, ten percent.",
        "Pasa por una parte que conoce bien: la mitad, el entero, el diez por ciento.",
        ("15% of 60", "75% of 160", "3/4 ? 5/8"),
        5,
        "ccss-5nf2",
        (_F.SCALE_BOTH,),
    ),
}

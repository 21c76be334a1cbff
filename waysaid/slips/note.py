"""A slip as a short note for the teacher alone: what may have happened, never a verdict."""

from collections.abc import Mapping

from waysaid.number import Language, Operation, Print, Sign, text
from waysaid.slips.slip import Slip, SlipName

_ENGLISH: Mapping[SlipName, str] = {
    SlipName.SMALLER_FROM_LARGER: "the smaller digit may have been taken from the larger: {sum}",
    SlipName.NO_REGROUP: "a ten may have been used in {sum} and not taken from anywhere",
    SlipName.ZERO_TO_NINE: "a zero may have become 9 with nothing taken beyond it: {sum}",
    SlipName.SKIP_ZERO: "the exchange may have gone past a zero, and the zero stayed: {sum}",
    SlipName.ZERO_STAYS_TEN: "a zero may have become 10 and never gone down to 9: {sum}",
    SlipName.BORROW_LEFTMOST: "the ten for {sum} may have come off the first digit",
    SlipName.ZERO_TAKE: "the zero in {sum} may have followed a rule of its own",
    SlipName.WRITE_ZERO: "{sum} may have been put down as 0",
    SlipName.STOPS_SHORT: "the digits in front may have been left out after {sum}",
    SlipName.LOWERS_BLANK: "one may have come off each digit with nothing below it: {sum}",
    SlipName.DROP_CARRY: "the {unit} from {sum} may have been lost",
    SlipName.WRITE_CARRY: "{sum} may have been written down whole beside the rest",
    SlipName.MISALIGNED: "the digits may have been lined up from the left: {sum}",
    SlipName.COUNT_START: "the starting number may have been counted as the first",
    SlipName.WRONG_OPERATION: "the sign may have been read another way: {sum}",
    SlipName.NEAR_MISS: "{sum} may have come out a little off",
    SlipName.FORGET_ADJUST: "{sum} may not have been put right afterwards",
    SlipName.MOVED_ACROSS: "some may have moved across, as in a sum: {sum}",
    SlipName.PART_MISSING: "a part may have been left out: {sum}",
    SlipName.DIGITS_ALONE: "tens may have been taken for ones: {sum}",
    SlipName.WRITE_ANSWER: "the equals sign may have been read as “write the answer” to {sum}",
    SlipName.ADD_ALL: "all the numbers in sight may have been added: {sum}",
}
_SPANISH: Mapping[SlipName, str] = {
    SlipName.SMALLER_FROM_LARGER: "quizá se quitó la cifra menor de la mayor: {sum}",
    SlipName.NO_REGROUP: "quizá se usó una decena en {sum} sin quitarla de ningún sitio",
    SlipName.ZERO_TO_NINE: "quizá un cero pasó a 9 sin quitar nada más allá: {sum}",
    SlipName.SKIP_ZERO: "quizá el cambio se saltó un cero, y el cero se quedó: {sum}",
    SlipName.ZERO_STAYS_TEN: "quizá un cero pasó a 10 y no bajó a 9: {sum}",
    SlipName.BORROW_LEFTMOST: "quizá la decena de {sum} salió de la primera cifra",
    SlipName.ZERO_TAKE: "quizá el cero de {sum} siguió una regla propia",
    SlipName.WRITE_ZERO: "quizá {sum} se apuntó como 0",
    SlipName.STOPS_SHORT: "quizá se dejaron las cifras de delante después de {sum}",
    SlipName.LOWERS_BLANK: "quizá se quitó uno de cada cifra sin nada debajo: {sum}",
    SlipName.DROP_CARRY: "quizá se perdió la {unit} de {sum}",
    SlipName.WRITE_CARRY: "quizá {sum} se escribió entero junto al resto",
    SlipName.MISALIGNED: "quizá las cifras se alinearon por la izquierda: {sum}",
    SlipName.COUNT_START: "quizá el número de salida se contó como el primero",
    SlipName.WRONG_OPERATION: "quizá el signo se leyó de otra manera: {sum}",
    SlipName.NEAR_MISS: "quizá {sum} salió un poco desviado",
    SlipName.FORGET_ADJUST: "quizá {sum} no se ajustó después",
    SlipName.MOVED_ACROSS: "quizá se pasó algo al otro número, como en una suma: {sum}",
    SlipName.PART_MISSING: "quizá se dejó una parte: {sum}",
    SlipName.DIGITS_ALONE: "quizá las decenas se tomaron por unidades: {sum}",
    SlipName.WRITE_ANSWER: "quizá el signo igual se leyó como «escribe el resultado» de {sum}",
    SlipName.ADD_ALL: "quizá se sumaron todos los números a la vista: {sum}",
}
_NOTES: Mapping[Language, Mapping[SlipName, str]] = {Language.EN: _ENGLISH, Language.ES: _SPANISH}
_ADJUSTED: Mapping[Language, Mapping[Sign, str]] = {
    Language.EN: {
        Sign.PLUS: "the {right} may have gone on where it comes off",
        Sign.MINUS: "the {right} may have come off where it goes on",
    },
    Language.ES: {
        Sign.PLUS: "quizá el {right} se sumó donde se quita",
        Sign.MINUS: "quizá el {right} se quitó donde se suma",
    },
}
_UNITS: Mapping[Language, tuple[str, str, str]] = {
    Language.EN: ("ten", "hundred", "thousand"),
    Language.ES: ("decena", "centena", "unidad de millar"),
}


def slip_note(slip: Slip, language: Language) -> str:
    """Return a short, tentative note: `the ten from 9 + 6 may have been lost`."""
    where = slip.steps[slip.at].left
    right = where.right if isinstance(where, Operation) else where
    size = len(text(right)) - 1
    if slip.slug is SlipName.ADJUST_WRONG_WAY and isinstance(where, Operation):
        note = _ADJUSTED[language][where.sign]
    else:
        note = _NOTES[language][slip.slug]
    return note.format(
        sum=text(where, Print.TRUE),
        right=text(right, Print.TRUE),
        unit=_UNITS[language][min(size, 2)],
    )

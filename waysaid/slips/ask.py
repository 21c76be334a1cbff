"""A question to ask about an answer: it asks how, and gives nothing away.

No question holds the right answer or a number that is not in the problem, none says that a step
is right or wrong, and none depends on the answer being wrong: the same words suit a right one.
"""

from collections.abc import Mapping
from enum import Enum, auto

from waysaid.number import Language, Print, number_text
from waysaid.slips.slip import Slip, SlipName


class _Ask(Enum):
    """What a question asks about."""

    TAKE = auto()
    EXCHANGE = auto()
    PLACES = auto()
    WHERE_TO = auto()
    LINED_UP = auto()
    COUNT = auto()
    GROUPS = auto()
    SIGN = auto()
    ORDER = auto()
    FACT = auto()
    FRIENDLY = auto()
    CHANGED = auto()
    PIECES = auto()
    WORTH = auto()
    STORY = auto()
    SIZE = auto()
    REST = auto()
    MEANING = auto()
    EQUALS = auto()
    POINT = auto()
    DRAW = auto()
    PART = auto()
    LOOK = auto()


_N = SlipName
_ABOUT: Mapping[_Ask, tuple[SlipName, ...]] = {
    _Ask.TAKE: (_N.SMALLER_FROM_LARGER, _N.STOPS_SHORT, _N.WHOLE_AS_TEN),
    _Ask.EXCHANGE: (
        _N.NO_REGROUP, _N.ZERO_TO_NINE, _N.SKIP_ZERO, _N.ZERO_STAYS_TEN, _N.BORROW_LEFTMOST,
        _N.LOWERS_BLANK,
    ),
    _Ask.PLACES: (_N.ZERO_TAKE, _N.WRITE_ZERO),
    _Ask.WHERE_TO: (_N.DROP_CARRY, _N.WRITE_CARRY, _N.CARRY_FIRST, _N.REST_NOT_CARRIED),
    _Ask.LINED_UP: (_N.MISALIGNED, _N.RIGHT_ALIGNED),
    _Ask.COUNT: (_N.COUNT_START, _N.ONE_TO_ONE),
    _Ask.GROUPS: (_N.GROUP_OFF, _N.GROUP_MISSED, _N.SIDES_ADDED),
    _Ask.SIGN: (_N.WRONG_OPERATION,),
    _Ask.ORDER: (_N.LEFT_TO_RIGHT, _N.BRACKET_ONCE),
    _Ask.FACT: (_N.NEIGHBOUR_FACT, _N.NEAR_MISS),
    _Ask.FRIENDLY: (
        _N.ADJUST_WRONG_WAY, _N.ADJUST_BY_ONES, _N.FORGET_ADJUST, _N.ROUNDED_DOWN,
    ),
    _Ask.CHANGED: (_N.ONE_SIDE_ONLY, _N.MOVED_ACROSS, _N.SHIFTED_ALIKE),
    _Ask.PIECES: (
        _N.PART_MISSING, _N.WHOLES_FORGOTTEN, _N.PARTS_FORGOTTEN, _N.DIVISOR_SPLIT, _N.ONES_TAKEN,
    ),
    _Ask.WORTH: (_N.DIGITS_ALONE,),
    _Ask.STORY: (_N.ZERO_TIMES,),
    _Ask.SIZE: (_N.ZERO_DROPPED, _N.ZERO_ADDED, _N.POINT_MISPLACED, _N.APPEND_ZERO),
    _Ask.REST: (
        _N.REST_FORGOTTEN, _N.REST_AS_POINT, _N.REST_WRONG_BOTTOM, _N.REST_TOO_LARGE,
        _N.REST_AS_GROUP,
    ),
    _Ask.MEANING: (_N.LARGER_BY_SMALLER, _N.ALWAYS_SMALLER, _N.WRONG_TURNED, _N.CROSSED),
    _Ask.EQUALS: (_N.WRITE_ANSWER, _N.ADD_ALL, _N.ANSWER_FIRST),
    _Ask.POINT: (
        _N.IGNORE_POINT, _N.POINT_AS_WHOLE, _N.LONGER_LARGER, _N.SHORTER_LARGER,
        _N.TOP_POINT_BOTTOM, _N.DENOMINATOR_AFTER_POINT,
    ),
    _Ask.DRAW: (
        _N.ADD_ACROSS, _N.SUBTRACT_ACROSS, _N.TOPS_OVER_LARGER, _N.TOPS_UNCHANGED, _N.TOPS_ONLY,
        _N.BOTTOMS_ONLY, _N.WHOLE_AS_TOP, _N.BOTH_MULTIPLIED, _N.BOTTOM_KEPT, _N.BIGGER_BOTTOM,
        _N.SMALLER_BOTTOM, _N.BIGGER_TOP, _N.GAP_COMPARE,
    ),
    _Ask.PART: (
        _N.ONLY_DIVIDED, _N.ONLY_MULTIPLIED, _N.TIMES_BOTTOM, _N.BOTTOM_TAKEN, _N.REST_INSTEAD,
        _N.PERCENT_AS_NUMBER, _N.PERCENT_TAKEN, _N.DIVIDED_BY_PERCENT, _N.HUNDRED_FORGOTTEN,
        _N.HUNDRED_DROPPED,
    ),
    _Ask.LOOK: (_N.EMPTY_COUNTED, _N.FRAME_FULL),
}  # fmt: skip
_ASKED: Mapping[SlipName, _Ask] = {slug: ask for ask, slugs in _ABOUT.items() for slug in slugs}

_Words = tuple[str, str]
"""The question with the problem's numbers in it, and without."""

_ENGLISH: Mapping[_Ask, _Words] = {
    _Ask.TAKE: (
        "Can you build {a} and show me what happens as {b} comes off?",
        "Can you build it and show me what comes off what?",
    ),
    _Ask.EXCHANGE: (
        "Can you build {a} and show me, piece by piece, how you took {b} off?",
        "Can you build it and show me, piece by piece, what you took from where?",
    ),
    _Ask.PLACES: (
        "Can you tell me what you did in each place of {a} and {b}?",
        "Can you tell me what you did in each place?",
    ),
    _Ask.WHERE_TO: (
        "Can you show me where each piece of {a} and {b} went?",
        "Can you show me where each piece went?",
    ),
    _Ask.LINED_UP: (
        "How did you choose which digits of {a} and {b} belong together?",
        "How did you choose which digits belong together?",
    ),
    _Ask.COUNT: (
        "Can you count it out loud for me, so that I hear where you start?",
        "Can you count it out loud for me, so that I hear where you start?",
    ),
    _Ask.GROUPS: (
        "Can you show me the groups in {a} and {b}, and how you kept count of them?",
        "Can you show me the groups, and how you kept count of them?",
    ),
    _Ask.SIGN: (
        "Can you tell me a story with {a} and {b} that this problem fits?",
        "Can you tell me a story that this problem fits?",
    ),
    _Ask.ORDER: (
        "Which part did you work out before the others, and how did you choose?",
        "Which part did you work out before the others, and how did you choose?",
    ),
    _Ask.FACT: (
        "How could you show a friend how {a} and {b} go together here?",
        "How could you show a friend how you know?",
    ),
    _Ask.FRIENDLY: (
        "Which numbers did you use in place of {a} and {b}, and what came after that?",
        "Which friendly number did you use, and what came after that?",
    ),
    _Ask.CHANGED: (
        "When {a} and {b} changed, what stayed the same, and how do you know?",
        "When you changed the numbers, what stayed the same, and how do you know?",
    ),
    _Ask.PIECES: (
        "Can you show me the pieces of {a} and of {b}, and what you did with each?",
        "Can you show me the pieces, and what you did with each?",
    ),
    _Ask.WORTH: (
        "What is each digit of {a} and {b} worth?",
        "What is each digit worth?",
    ),
    _Ask.STORY: (
        "Can you draw what {a} and {b} mean in this problem?",
        "Can you draw what this problem means?",
    ),
    _Ask.SIZE: (
        "About how big would you expect it to be, looking at {a} and {b}?",
        "About how big would you expect it to be, before working it out?",
    ),
    _Ask.REST: (
        "If you share out {a} things by {b}, where does every thing end up?",
        "When you share everything out, where does every thing end up?",
    ),
    _Ask.MEANING: (
        "What do {a} and {b} each tell us here? Can you draw it?",
        "What is this problem asking us to find? Can you draw it?",
    ),
    _Ask.EQUALS: (
        "What does the equals sign tell you in this problem?",
        "What does the equals sign tell you in this problem?",
    ),
    _Ask.POINT: (
        "Can you show me on a line where {a} and {b} belong?",
        "What does each digit after the point stand for?",
    ),
    _Ask.DRAW: (
        "Can you draw {a} and {b}, so that we see how big they are?",
        "Can you draw it, so that we see how big the parts are?",
    ),
    _Ask.PART: (
        "What do {a} and {b} each tell us here? Can you show it on a bar?",
        "Can you show on a bar what this problem asks for?",
    ),
    _Ask.LOOK: (
        "What did you look at in the picture, and how did you count it?",
        "What did you look at in the picture, and how did you count it?",
    ),
}
_SPANISH: Mapping[_Ask, _Words] = {
    _Ask.TAKE: (
        "¿Puedes formar {a} y enseñarme qué pasa al quitar {b}?",
        "¿Puedes formarlo y enseñarme qué quitas de qué?",
    ),
    _Ask.EXCHANGE: (
        "¿Puedes formar {a} y enseñarme, pieza a pieza, cómo quitaste {b}?",
        "¿Puedes formarlo y enseñarme, pieza a pieza, qué quitaste y de dónde?",
    ),
    _Ask.PLACES: (
        "¿Puedes contarme qué hiciste en cada lugar de {a} y {b}?",
        "¿Puedes contarme qué hiciste en cada lugar?",
    ),
    _Ask.WHERE_TO: (
        "¿Puedes enseñarme adónde fue cada pieza de {a} y {b}?",
        "¿Puedes enseñarme adónde fue cada pieza?",
    ),
    _Ask.LINED_UP: (
        "¿Cómo elegiste qué cifras de {a} y {b} van juntas?",
        "¿Cómo elegiste qué cifras van juntas?",
    ),
    _Ask.COUNT: (
        "¿Puedes contarlo en voz alta, para que oiga dónde empiezas?",
        "¿Puedes contarlo en voz alta, para que oiga dónde empiezas?",
    ),
    _Ask.GROUPS: (
        "¿Puedes enseñarme los grupos en {a} y {b}, y cómo llevaste la cuenta?",
        "¿Puedes enseñarme los grupos, y cómo llevaste la cuenta?",
    ),
    _Ask.SIGN: (
        "¿Puedes contarme una historia con {a} y {b} en la que encaje este problema?",
        "¿Puedes contarme una historia en la que encaje este problema?",
    ),
    _Ask.ORDER: (
        "¿Qué parte calculaste antes que las otras, y cómo la elegiste?",
        "¿Qué parte calculaste antes que las otras, y cómo la elegiste?",
    ),
    _Ask.FACT: (
        "¿Cómo enseñarías a alguien cómo van juntos {a} y {b} aquí?",
        "¿Cómo enseñarías a alguien cómo lo sabes?",
    ),
    _Ask.FRIENDLY: (
        "¿Qué números usaste en lugar de {a} y {b}, y qué hiciste después?",
        "¿Qué número fácil usaste, y qué hiciste después?",
    ),
    _Ask.CHANGED: (
        "Al cambiar {a} y {b}, ¿qué quedó igual, y cómo lo sabes?",
        "Al cambiar los números, ¿qué quedó igual, y cómo lo sabes?",
    ),
    _Ask.PIECES: (
        "¿Puedes enseñarme las piezas de {a} y de {b}, y qué hiciste con cada una?",
        "¿Puedes enseñarme las piezas, y qué hiciste con cada una?",
    ),
    _Ask.WORTH: (
        "¿Cuánto vale cada cifra de {a} y {b}?",
        "¿Cuánto vale cada cifra?",
    ),
    _Ask.STORY: (
        "¿Puedes dibujar qué significan {a} y {b} en este problema?",
        "¿Puedes dibujar qué significa este problema?",
    ),
    _Ask.SIZE: (
        "Mirando {a} y {b}, ¿cómo de grande esperas que sea, más o menos?",
        "Antes de calcularlo, ¿cómo de grande esperas que sea, más o menos?",
    ),
    _Ask.REST: (
        "Si repartes {a} cosas entre {b}, ¿dónde acaba cada cosa?",
        "Cuando lo repartes todo, ¿dónde acaba cada cosa?",
    ),
    _Ask.MEANING: (
        "¿Qué nos dice cada número, {a} y {b}? ¿Puedes dibujarlo?",
        "¿Qué nos pide buscar este problema? ¿Puedes dibujarlo?",
    ),
    _Ask.EQUALS: (
        "¿Qué te dice el signo igual en este problema?",
        "¿Qué te dice el signo igual en este problema?",
    ),
    _Ask.POINT: (
        "¿Puedes enseñarme en una recta dónde van {a} y {b}?",
        "¿Qué representa cada cifra después de la coma?",
    ),
    _Ask.DRAW: (
        "¿Puedes dibujar {a} y {b}, para ver cómo son de grandes?",
        "¿Puedes dibujarlo, para ver cómo son de grandes las partes?",
    ),
    _Ask.PART: (
        "¿Qué nos dice cada número, {a} y {b}? ¿Puedes enseñarlo en una barra?",
        "¿Puedes enseñar en una barra lo que pide este problema?",
    ),
    _Ask.LOOK: (
        "¿Qué miraste en el dibujo, y cómo lo contaste?",
        "¿Qué miraste en el dibujo, y cómo lo contaste?",
    ),
}
_QUESTIONS: Mapping[Language, Mapping[_Ask, _Words]] = {
    Language.EN: _ENGLISH,
    Language.ES: _SPANISH,
}


def slip_question(slip: Slip, language: Language) -> str:
    """Return a question that would show what happened, and gives nothing away.

    It names two numbers of the problem where neither holds the right answer, else none.
    """
    named, plain = _QUESTIONS[language][_ASKED[slip.slug]]
    if len(slip.numbers) < 2:
        return plain
    first, second = (number_text(number, Print.TRUE) for number in slip.numbers[:2])
    return named.format(a=first, b=second)

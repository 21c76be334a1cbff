"""What a child might say, in each language, as tables; `said.py` puts the pieces together.

The names and sentences are our own. In a clause, `left`, `right` and `result` are the numbers of
a step, `sum` its left side in words, and `be` the verb that agrees with the result.
"""

from collections.abc import Mapping
from dataclasses import dataclass

from waysaid.number import Language, Order, Sign, Verdict
from waysaid.ways.step import Kind
from waysaid.ways.way import Family

ClauseKey = tuple[Family | None, Kind, Sign]


@dataclass(frozen=True, slots=True)
class Phrases:
    """One language: names of families, how a telling opens, its clauses and its joins."""

    names: Mapping[Family, str]
    openers: Mapping[Family, str]
    clauses: Mapping[ClauseKey, str]
    signs: Mapping[Sign, str]
    be: tuple[str, str]
    """The verb for a result of one, and for any other."""
    plain: str
    opened: str
    same: str
    owed: str
    doubled: str
    halved: str
    counted: Mapping[Sign, str]
    skipped: Mapping[Sign, str]
    then: str
    so: str
    left_over: str
    ends: Mapping[Order | Verdict, str]
    """How a comparison or a claim ends."""
    made_into: str
    thought_in: str
    broke_into: str
    turned: str
    wholes: str
    """What is not cut into parts."""


_PLUS, _MINUS = Sign.PLUS, Sign.MINUS

_ENGLISH = Phrases(
    names={
        Family.COUNTING: "count",
        Family.KNOWN_FACT: "just know it",
        Family.NEAR_DOUBLE: "near double",
        Family.BRIDGE: "bridge",
        Family.JUMP: "jump",
        Family.SPLIT: "split",
        Family.SPLIT_THEN_JUMP: "split, then jump",
        Family.ADJUST: "adjust",
        Family.GIVE_AND_TAKE: "give and take",
        Family.SHIFT_BOTH: "shift both",
        Family.ADD_UP: "add up",
        Family.PARTNERS: "partners",
        Family.COLUMN: "columns",
        Family.THINK_ADD: "think adding",
        Family.NEAR_FACT: "near fact",
        Family.BREAK_UP: "break up",
        Family.DOUBLE_HALVE: "double and halve",
        Family.FACTOR_STEPS: "steps by factors",
        Family.THINK_TIMES: "think times",
        Family.CHUNK_OUT: "chunk out",
        Family.SCALE_BOTH: "scale both",
        Family.RENAME: "rename",
        Family.BENCHMARK: "benchmark",
    },
    openers={
        Family.KNOWN_FACT: "I just know that",
        Family.NEAR_DOUBLE: "I used a double:",
        Family.BRIDGE: "I went to a friendly number first:",
        Family.JUMP: "I kept the {left} whole:",
        Family.SPLIT: "I split the numbers:",
        Family.SPLIT_THEN_JUMP: "I did the big parts first:",
        Family.ADJUST: "I used an easier number:",
        Family.SHIFT_BOTH: "I changed both numbers the same way:",
        Family.ADD_UP: "I went up from {left}:",
        Family.PARTNERS: "I looked for numbers that go together:",
        Family.COLUMN: "I did it in columns in my head:",
        Family.THINK_ADD: "I thought of adding:",
        Family.NEAR_FACT: "I used a fact close by:",
        Family.BREAK_UP: "I broke it up:",
        Family.DOUBLE_HALVE: "I made one number bigger and the other smaller:",
        Family.FACTOR_STEPS: "I did it in steps:",
        Family.THINK_TIMES: "I thought of times:",
        Family.CHUNK_OUT: "I took out groups:",
        Family.SCALE_BOTH: "I made both numbers bigger or smaller the same way:",
        Family.RENAME: "I said it another way first:",
        Family.BENCHMARK: "I used a number I know well:",
    },
    clauses={
        (None, Kind.JUMP, _PLUS): "{left} and {right} more {be} {result}",
        (None, Kind.MOVE, _PLUS): "I gave {right} to the {left} to make {result}",
        (None, Kind.MOVE, _MINUS): "I took {right} from the {left} and had {result} left",
        (None, Kind.SPLIT, _MINUS): "{left} without {right} leaves {result}",
        (None, Kind.MEND, _PLUS): "I put {right} back on {left} and that makes {result}",
        (None, Kind.MEND, _MINUS): "I took {right} back off {left} and that makes {result}",
        (None, Kind.GATHER, _PLUS): "{sum} {be} {result} altogether",
        (Family.ADD_UP, Kind.JUMP, _PLUS): "{right} more from {left} gets me to {result}",
        (Family.BRIDGE, Kind.MOVE, _MINUS): "{left} without {right} leaves {result}",
        (Family.NEAR_DOUBLE, Kind.MEND, _PLUS): "{right} more than {left} {be} {result}",
        (Family.NEAR_DOUBLE, Kind.MEND, _MINUS): "{right} less than {left} {be} {result}",
        (Family.NEAR_FACT, Kind.MEND, _PLUS): "{left} and {right} more {be} {result}",
        (Family.NEAR_FACT, Kind.MEND, _MINUS): "{left} less {right} {be} {result}",
    },
    signs={
        Sign.PLUS: "and",
        Sign.MINUS: "take away",
        Sign.TIMES: "times",
        Sign.OVER: "divided by",
        Sign.OF: "of",
    },
    be=("is", "is"),
    plain="{sum} {be} {result}",
    opened="{left} is {sum}",
    same="{sum} is the same as {result}",
    owed="{sum} means {result} still to take off",
    doubled="double {number} {be} {result}",
    halved="half of {number} {be} {result}",
    counted={_PLUS: "I counted on from {left}: {all}", _MINUS: "I counted back from {left}: {all}"},
    skipped={
        _PLUS: "I counted on from {left} in {hop}s: {all}",
        _MINUS: "I counted back from {left} in {hop}s: {all}",
    },
    then=", then ",
    so=", so it’s {answer}",
    left_over=", so it’s {groups} and {left} left over",
    ends={
        Order.LESS: ", so the second is more",
        Order.SAME: ", so they are the same",
        Order.MORE: ", so the first is more",
        Verdict.TRUE: ", so it’s true",
        Verdict.FALSE: ", so it’s not true",
    },
    made_into="I made {old} into {new}:",
    thought_in="I thought in {new}:",
    broke_into="I broke a whole into {new}:",
    turned="I turned it round:",
    wholes="wholes",
)

_SPANISH = Phrases(
    names={
        Family.COUNTING: "contar",
        Family.KNOWN_FACT: "me lo sé",
        Family.NEAR_DOUBLE: "casi el doble",
        Family.BRIDGE: "hacer puente",
        Family.JUMP: "saltar",
        Family.SPLIT: "separar",
        Family.SPLIT_THEN_JUMP: "separar y luego saltar",
        Family.ADJUST: "ajustar",
        Family.GIVE_AND_TAKE: "dar y tomar",
        Family.SHIFT_BOTH: "mover los dos",
        Family.ADD_UP: "ir subiendo",
        Family.PARTNERS: "buscar parejas",
        Family.COLUMN: "en columnas",
        Family.THINK_ADD: "pensar en sumar",
        Family.NEAR_FACT: "desde un producto cercano",
        Family.BREAK_UP: "partir",
        Family.DOUBLE_HALVE: "doble y mitad",
        Family.FACTOR_STEPS: "por factores",
        Family.THINK_TIMES: "pensar en multiplicar",
        Family.CHUNK_OUT: "sacar grupos",
        Family.SCALE_BOTH: "cambiar los dos por igual",
        Family.RENAME: "decirlo de otra forma",
        Family.BENCHMARK: "número de referencia",
    },
    openers={
        Family.KNOWN_FACT: "Ya me sé que",
        Family.NEAR_DOUBLE: "Usé un doble:",
        Family.BRIDGE: "Primero fui a un número fácil:",
        Family.JUMP: "Dejé el {left} entero:",
        Family.SPLIT: "Separé los números:",
        Family.SPLIT_THEN_JUMP: "Primero hice las partes grandes:",
        Family.ADJUST: "Usé un número más fácil:",
        Family.SHIFT_BOTH: "Cambié los dos números igual:",
        Family.ADD_UP: "Fui subiendo desde {left}:",
        Family.PARTNERS: "Busqué números que van bien juntos:",
        Family.COLUMN: "Lo hice en columnas en la cabeza:",
        Family.THINK_ADD: "Pensé en sumar:",
        Family.NEAR_FACT: "Usé un producto cercano:",
        Family.BREAK_UP: "Lo partí:",
        Family.DOUBLE_HALVE: "Hice un número más grande y el otro más pequeño:",
        Family.FACTOR_STEPS: "Lo hice por pasos:",
        Family.THINK_TIMES: "Pensé en multiplicar:",
        Family.CHUNK_OUT: "Saqué grupos:",
        Family.SCALE_BOTH: "Cambié los dos números por igual:",
        Family.RENAME: "Primero lo dije de otra forma:",
        Family.BENCHMARK: "Usé un número que conozco bien:",
    },
    clauses={
        (None, Kind.JUMP, _PLUS): "{left} y {right} más {be} {result}",
        (None, Kind.MOVE, _PLUS): "le di {right} al {left} para hacer {result}",
        (None, Kind.MOVE, _MINUS): "le quité {right} al {left} y me quedó en {result}",
        (None, Kind.SPLIT, _MINUS): "{left} sin {right} se queda en {result}",
        (None, Kind.MEND, _PLUS): "le devolví {right} al {left} y {be} {result}",
        (None, Kind.MEND, _MINUS): "le quité otra vez {right} al {left} y {be} {result}",
        (None, Kind.GATHER, _PLUS): "{sum} {be} {result} en total",
        (Family.ADD_UP, Kind.JUMP, _PLUS): "con {right} más desde {left} llego a {result}",
        (Family.BRIDGE, Kind.MOVE, _MINUS): "{left} sin {right} se queda en {result}",
        (Family.NEAR_DOUBLE, Kind.MEND, _PLUS): "{right} más que {left} {be} {result}",
        (Family.NEAR_DOUBLE, Kind.MEND, _MINUS): "{right} menos que {left} {be} {result}",
        (Family.NEAR_FACT, Kind.MEND, _PLUS): "{left} y {right} más {be} {result}",
        (Family.NEAR_FACT, Kind.MEND, _MINUS): "{left} menos {right} {be} {result}",
    },
    signs={
        Sign.PLUS: "y",
        Sign.MINUS: "menos",
        Sign.TIMES: "por",
        Sign.OVER: "entre",
        Sign.OF: "de",
    },
    be=("es", "son"),
    plain="{sum} {be} {result}",
    opened="{left} {be} {sum}",
    same="{sum} es lo mismo que {result}",
    owed="{sum}: todavía falta quitar {result}",
    doubled="el doble de {number} {be} {result}",
    halved="la mitad de {number} {be} {result}",
    counted={_PLUS: "Conté desde {left}: {all}", _MINUS: "Conté hacia atrás desde {left}: {all}"},
    skipped={
        _PLUS: "Conté de {hop} en {hop} desde {left}: {all}",
        _MINUS: "Conté hacia atrás de {hop} en {hop} desde {left}: {all}",
    },
    then=", luego ",
    so=", así que es {answer}",
    left_over=", así que es {groups} y queda {left}",
    ends={
        Order.LESS: ", así que el segundo es mayor",
        Order.SAME: ", así que son iguales",
        Order.MORE: ", así que el primero es mayor",
        Verdict.TRUE: ", así que es verdad",
        Verdict.FALSE: ", así que no es verdad",
    },
    made_into="Pasé de {old} a {new}:",
    thought_in="Pensé en {new}:",
    broke_into="Partí un entero en {new}:",
    turned="Le di la vuelta:",
    wholes="enteros",
)

PHRASES: Mapping[Language, Phrases] = {Language.EN: _ENGLISH, Language.ES: _SPANISH}

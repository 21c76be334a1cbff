"""What is said of a talk file that cannot be used: where, what is wrong, what would fit."""

from collections.abc import Mapping
from enum import Enum, auto

from waysaid.number import Language


class Fault(Enum):
    """What may be wrong with a talk file."""

    TOO_LARGE = auto()
    NO_TEXT = auto()
    NO_JSON = auto()
    NO_OBJECT = auto()
    NO_FORMAT = auto()
    OTHER_VERSION = auto()
    MISSING = auto()
    STRANGE = auto()
    TWICE = auto()
    NO_PART = auto()
    NO_LINE = auto()
    NO_WHOLE = auto()
    NO_NUMBER = auto()
    NO_CHOICE = auto()
    NO_LIST = auto()
    NO_DATE = auto()
    NO_PROBLEM = auto()
    NO_EVENT = auto()
    NO_OPENING = auto()
    NO_CHILD = auto()


SAID: Mapping[Language, Mapping[Fault, str]] = {
    Language.EN: {
        Fault.TOO_LARGE: "The talk file is larger than 5 MB; a smaller one would fit.",
        Fault.NO_TEXT: "The talk file is no UTF-8 text; a file as Waysaid writes it would fit.",
        Fault.NO_JSON: "Line {where} of the talk file is no JSON; a file as Waysaid writes it "
        "would fit.",
        Fault.NO_OBJECT: "The talk file holds no JSON object; a file as Waysaid writes it would "
        "fit.",
        Fault.NO_FORMAT: "This is no talk file: its “format” would be waysaid-talk.",
        Fault.OTHER_VERSION: "The talk file is of version ‘{shown}’; this Waysaid reads version 1.",
        Fault.MISSING: "In the talk file “{where}” is missing; it belongs to the form.",
        Fault.STRANGE: "In the talk file “{where}” has ‘{shown}’, which is no part of the form; "
        "it would fit without.",
        Fault.TWICE: "In the talk file “{where}” is there twice; once would fit.",
        Fault.NO_PART: "In the talk file “{where}” is no object with parts; one as Waysaid "
        "writes it would fit.",
        Fault.NO_LINE: "In the talk file “{where}” is no line of text; one of up to {shown} "
        "characters would fit.",
        Fault.NO_WHOLE: "The talk file has the number ‘{shown}’; only whole numbers fit in it.",
        Fault.NO_NUMBER: "In the talk file “{where}” is no number that fits; {shown} would.",
        Fault.NO_CHOICE: "In the talk file “{where}” is nothing known; one of {shown} would fit.",
        Fault.NO_LIST: "In the talk file “{where}” is no list that fits; one of up to {shown} "
        "would.",
        Fault.NO_DATE: "In the talk file “{where}” is no date; one such as 2026-09-14 would fit.",
        Fault.NO_PROBLEM: "In the talk file “{where}” is no problem: {shown}",
        Fault.NO_EVENT: "In the talk file “{where}” is no event: {shown}",
        Fault.NO_OPENING: "In the talk file “{where}” does not open the talk; an event of the "
        "kind talk-opened would fit there.",
        Fault.NO_CHILD: "In the talk file “{where}” does not list ‘{shown}’, whom an event names; "
        "every child that events name belongs there.",
    },
    Language.ES: {
        Fault.TOO_LARGE: "El archivo de la charla pasa de 5 MB; valdría uno más pequeño.",
        Fault.NO_TEXT: "El archivo de la charla no es texto UTF-8; valdría uno como los que "
        "escribe Waysaid.",
        Fault.NO_JSON: "La línea {where} del archivo de la charla no es JSON; valdría un archivo "
        "como los que escribe Waysaid.",
        Fault.NO_OBJECT: "El archivo de la charla no contiene un objeto JSON; valdría uno como "
        "los que escribe Waysaid.",
        Fault.NO_FORMAT: "Esto no es un archivo de charla: su “format” sería waysaid-talk.",
        Fault.OTHER_VERSION: "El archivo de la charla es de la versión ‘{shown}’; este Waysaid "
        "lee la versión 1.",
        Fault.MISSING: "En el archivo de la charla falta “{where}”, que es parte del formato.",
        Fault.STRANGE: "En el archivo de la charla “{where}” tiene ‘{shown}’, que no es parte del "
        "formato; valdría sin ello.",
        Fault.TWICE: "En el archivo de la charla “{where}” está dos veces; valdría una.",
        Fault.NO_PART: "En el archivo de la charla “{where}” no es un objeto con partes; valdría "
        "uno como los que escribe Waysaid.",
        Fault.NO_LINE: "En el archivo de la charla “{where}” no es una línea de texto; valdría "
        "una de hasta {shown} caracteres.",
        Fault.NO_WHOLE: "El archivo de la charla tiene el número ‘{shown}’; solo valen números "
        "enteros.",
        Fault.NO_NUMBER: "En el archivo de la charla “{where}” no es un número que valga; valdría "
        "{shown}.",
        Fault.NO_CHOICE: "En el archivo de la charla “{where}” no es nada conocido; valdría uno "
        "de {shown}.",
        Fault.NO_LIST: "En el archivo de la charla “{where}” no es una lista que valga; valdría "
        "una de hasta {shown}.",
        Fault.NO_DATE: "En el archivo de la charla “{where}” no es una fecha; valdría una como "
        "2026-09-14.",
        Fault.NO_PROBLEM: "En el archivo de la charla “{where}” no es un problema: {shown}",
        Fault.NO_EVENT: "En el archivo de la charla “{where}” no es un suceso: {shown}",
        Fault.NO_OPENING: "En el archivo de la charla “{where}” no abre la charla; ahí valdría un "
        "suceso del tipo talk-opened.",
        Fault.NO_CHILD: "En el archivo de la charla “{where}” no tiene a ‘{shown}’, de quien "
        "habla un suceso; ahí va cada niño de quien hablen los sucesos.",
    },
}

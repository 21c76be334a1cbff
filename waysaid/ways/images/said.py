"""How a child might begin to tell how a picture was seen; the sentences are our own."""

from collections.abc import Mapping

from waysaid.number import Language
from waysaid.ways.step import Kind
from waysaid.ways.way import Family, Way

_OPENERS: Mapping[Language, Mapping[Family, str]] = {
    Language.EN: {
        Family.KNOWN_FACT: "I saw equal groups:",
        Family.SPLIT: "I saw groups:",
        Family.NEAR_DOUBLE: "I saw a double:",
        Family.BRIDGE: "I filled one up first:",
        Family.PARTNERS: "I saw groups that go together:",
        Family.ADJUST: "I thought of it full:",
        Family.BREAK_UP: "I saw it in two parts:",
        Family.FACTOR_STEPS: "I saw half of it:",
        Family.NEAR_FACT: "I left one line for later:",
    },
    Language.ES: {
        Family.KNOWN_FACT: "Vi grupos iguales:",
        Family.SPLIT: "Vi grupos:",
        Family.NEAR_DOUBLE: "Vi un doble:",
        Family.BRIDGE: "Primero llené uno:",
        Family.PARTNERS: "Vi grupos que van bien juntos:",
        Family.ADJUST: "Lo pensé lleno:",
        Family.BREAK_UP: "Lo vi en dos partes:",
        Family.FACTOR_STEPS: "Vi la mitad:",
        Family.NEAR_FACT: "Dejé una línea para después:",
    },
}
_AT_ONCE = {Language.EN: "I saw {count} at once.", Language.ES: "Vi {count} de una vez."}
_ONE_BY_ONE = {
    Language.EN: "I counted them one by one: {all}.",
    Language.ES: "Los conté de uno en uno: {all}.",
}


def seen_opener(way: Way, language: Language) -> str:
    """Return how the telling of a way to see a picture opens; empty for those that need none."""
    return _OPENERS[language].get(way.family, "")


def seen_whole(way: Way, language: Language) -> str | None:
    """Return the whole sentence where nothing is put together: seen at once, or counted."""
    if len(way.seen) == 1:
        return _AT_ONCE[language].format(count=way.answer)
    singles = all(len(group) == 1 for group in way.seen)
    if singles and way.steps[0].kind is Kind.COUNT:
        counted = ", ".join(str(number) for number in range(1, len(way.seen) + 1))
        return _ONE_BY_ONE[language].format(all=counted)
    return None

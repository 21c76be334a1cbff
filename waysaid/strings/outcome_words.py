"""What a change does to the answers, and why, in words for the desk: English beside Spanish."""

from enum import StrEnum

from waysaid.number import Language

EN, ES = Language.EN, Language.ES


class Answers(StrEnum):
    """What all answers of the changed problems do, or that they do not do the same."""

    STAY = "stay"
    MORE = "more"
    LESS = "less"
    TIMES = "times"
    OVER = "over"
    UNLIKE = "unlike"


class Why(StrEnum):
    """Why the answers do what they do, where one reason holds for all."""

    GIVEN = "given"
    ALIKE = "alike"
    ORDER_ADDED = "order-added"
    ORDER_TAKEN = "order-taken"
    ORDER_TIMES = "order-times"
    ONE_MORE = "one-more"
    ONE_LESS = "one-less"
    EACH_MORE = "each-more"
    EACH_LESS = "each-less"
    TAKEN_MORE = "taken-more"
    TAKEN_LESS = "taken-less"
    TO_THE_TAKEN = "to-the-taken"
    FROM_THE_TAKEN = "from-the-taken"
    EVERY_TIMES = "every-times"
    EVERY_OVER = "every-over"
    GROUPS_MORE = "groups-more"
    GROUPS_LESS = "groups-less"
    SHARED_MORE = "shared-more"
    SHARED_LESS = "shared-less"
    AMONG_MORE = "among-more"
    AMONG_LESS = "among-less"
    ONE_TIMES = "one-times"
    ONE_OVER = "one-over"
    AMONG_TIMES = "among-times"
    AMONG_OVER = "among-over"
    TWICE_TIMES = "twice-times"
    TWICE_OVER = "twice-over"
    BOTH_TIMES = "both-times"
    BOTH_OVER = "both-over"


_SAID = {
    (Answers.STAY, ""): {
        EN: ("The answer stays", "All answers stay"),
        ES: ("La respuesta se queda igual", "Todas las respuestas se quedan igual"),
    },
    (Answers.MORE, ""): {
        EN: ("The answer is {0} more", "Each answer is {0} more"),
        ES: ("La respuesta sube {0}", "Cada respuesta sube {0}"),
    },
    (Answers.LESS, ""): {
        EN: ("The answer is {0} less", "Each answer is {0} less"),
        ES: ("La respuesta baja {0}", "Cada respuesta baja {0}"),
    },
    (Answers.TIMES, ""): {
        EN: ("The answer is {0} times as big", "Each answer is {0} times as big"),
        ES: ("La respuesta es {0} veces mayor", "Cada respuesta es {0} veces mayor"),
    },
    (Answers.OVER, ""): {
        EN: ("The answer is {0} times as small", "Each answer is {0} times as small"),
        ES: ("La respuesta es {0} veces menor", "Cada respuesta es {0} veces menor"),
    },
    (Answers.TIMES, "2"): {
        EN: ("The answer doubles", "Each answer doubles"),
        ES: ("La respuesta se duplica", "Cada respuesta se duplica"),
    },
    (Answers.OVER, "2"): {
        EN: ("The answer is cut in half", "Each answer is cut in half"),
        ES: ("La respuesta se parte por la mitad", "Cada respuesta se parte por la mitad"),
    },
    (Answers.UNLIKE, ""): {
        EN: ("The answer changes, {0}", "The answers do not change alike, {0}"),
        ES: ("La respuesta cambia, {0}", "Las respuestas no cambian igual, {0}"),
    },
}
"""By what the answers do, and by how much where that has words of its own: of one, and of many."""

_WHY = {
    Why.GIVEN: {
        EN: "what one number lost, the other gained",
        ES: "lo que perdió un número lo ganó el otro",
    },
    Why.ALIKE: {
        EN: "both numbers changed by {0} the same way, so they are just as far apart",
        ES: "los dos números cambiaron {0} en el mismo sentido y siguen a la misma distancia",
    },
    Why.ORDER_ADDED: {
        EN: "the order does not matter in adding",
        ES: "al sumar, el orden no importa",
    },
    Why.ORDER_TAKEN: {
        EN: "what is taken away can be taken in either order",
        ES: "lo que se quita puede quitarse en cualquier orden",
    },
    Why.ORDER_TIMES: {
        EN: "the order does not matter in multiplying",
        ES: "al multiplicar, el orden no importa",
    },
    Why.ONE_MORE: {
        EN: "one number is {0} more, and the rest stayed",
        ES: "un número subió {0} y lo demás no cambió",
    },
    Why.ONE_LESS: {
        EN: "one number is {0} less, and the rest stayed",
        ES: "un número bajó {0} y lo demás no cambió",
    },
    Why.EACH_MORE: {
        EN: "each number that changed is {0} more, and they are added",
        ES: "cada número que cambió subió {0}, y se suman",
    },
    Why.EACH_LESS: {
        EN: "each number that changed is {0} less, and they are added",
        ES: "cada número que cambió bajó {0}, y se suman",
    },
    Why.TAKEN_MORE: {EN: "{0} more is taken away", ES: "se quita {0} más"},
    Why.TAKEN_LESS: {EN: "{0} less is taken away", ES: "se quita {0} menos"},
    Why.TO_THE_TAKEN: {
        EN: "there is {0} less to take from, and {0} more is taken away",
        ES: "hay {0} menos de donde quitar, y se quita {0} más",
    },
    Why.FROM_THE_TAKEN: {
        EN: "there is {0} more to take from, and {0} less is taken away",
        ES: "hay {0} más de donde quitar, y se quita {0} menos",
    },
    Why.EVERY_TIMES: {
        EN: "every number is {0} times as big",
        ES: "cada número es {0} veces mayor",
    },
    Why.EVERY_OVER: {
        EN: "every number is {0} times as small",
        ES: "cada número es {0} veces menor",
    },
    Why.GROUPS_MORE: {
        EN: "{0} more of the other number",
        ES: "{0} más del otro número",
    },
    Why.GROUPS_LESS: {
        EN: "{0} fewer of the other number",
        ES: "{0} menos del otro número",
    },
    Why.SHARED_MORE: {EN: "there is {0} more to share out", ES: "hay {0} más para repartir"},
    Why.SHARED_LESS: {EN: "there is {0} less to share out", ES: "hay {0} menos para repartir"},
    Why.AMONG_MORE: {
        EN: "it is shared among {0} more, so each gets less",
        ES: "se reparte entre {0} más, así que a cada uno le toca menos",
    },
    Why.AMONG_LESS: {
        EN: "it is shared among {0} fewer, so each gets more",
        ES: "se reparte entre {0} menos, así que a cada uno le toca más",
    },
    Why.ONE_TIMES: {
        EN: "one number is {0} times as big, and the rest stayed",
        ES: "un número es {0} veces mayor y lo demás no cambió",
    },
    Why.ONE_OVER: {
        EN: "one number is {0} times as small, and the rest stayed",
        ES: "un número es {0} veces menor y lo demás no cambió",
    },
    Why.AMONG_TIMES: {
        EN: "it is shared among {0} times as many",
        ES: "se reparte entre {0} veces más",
    },
    Why.AMONG_OVER: {
        EN: "it is shared among {0} times as few",
        ES: "se reparte entre {0} veces menos",
    },
    Why.TWICE_TIMES: {
        EN: "each of two numbers that are multiplied is {0} times as big",
        ES: "cada uno de los dos números que se multiplican es {0} veces mayor",
    },
    Why.TWICE_OVER: {
        EN: "each of two numbers that are multiplied is {0} times as small",
        ES: "cada uno de los dos números que se multiplican es {0} veces menor",
    },
    Why.BOTH_TIMES: {
        EN: "{0} times as much is shared among {0} times as many",
        ES: "{0} veces más se reparte entre {0} veces más",
    },
    Why.BOTH_OVER: {
        EN: "{0} times as little is shared among {0} times as few",
        ES: "{0} veces menos se reparte entre {0} veces menos",
    },
}
"""One reason each, as it follows a colon; {0} is the amount of the change."""


def answers_say(do: Answers, by: str, count: int, language: Language) -> str:
    """Return what the answers do, by `by` (for `UNLIKE` the answers), with no stop at the end."""
    said = _SAID.get((do, by)) or _SAID[do, ""]
    one, many = said[language]
    return (one if count == 1 else many).format(by)


def why_says(why: Why, amount: int, language: Language) -> str:
    """Return why, with no stop at the end."""
    return _WHY[why][language].format(amount)

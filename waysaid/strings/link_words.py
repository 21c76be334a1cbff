"""A link in a child's words, and a question that helps a class find it."""

from waysaid.number import Language, number_text
from waysaid.strings.link import Link, LinkKind, Saying
from waysaid.strings.product_words import PRODUCTS_SAID

EN, ES = Language.EN, Language.ES

SAID: dict[Saying, dict[Language, str]] = PRODUCTS_SAID | {
    Saying.NUMBER_BACK: {
        EN: "{0} comes back.",
        ES: "El {0} vuelve a salir.",
    },
    Saying.TOTAL_BACK: {
        EN: "The answer is the same: {0}.",
        ES: "La respuesta es la misma: {0}.",
    },
    Saying.NUMBER_UP_ANSWER_UP: {
        EN: "{0} went up {2} to {1} and the rest stayed, so the answer went up {2} too.",
        ES: "El {0} subió {2} hasta {1} y lo demás no cambió, así que la respuesta también "
        "subió {2}.",
    },
    Saying.NUMBER_DOWN_ANSWER_DOWN: {
        EN: "{0} went down {2} to {1} and the rest stayed, so the answer went down {2} too.",
        ES: "El {0} bajó {2} hasta {1} y lo demás no cambió, así que la respuesta también "
        "bajó {2}.",
    },
    Saying.UP_MISSING_UP: {
        EN: "{0} went up {2} to {1} and the rest stayed, so the missing number went up {2} too.",
        ES: "El {0} subió {2} hasta {1} y lo demás no cambió, así que el número que falta "
        "también subió {2}.",
    },
    Saying.DOWN_MISSING_DOWN: {
        EN: "{0} went down {2} to {1} and the rest stayed, so the missing number went down "
        "{2} too.",
        ES: "El {0} bajó {2} hasta {1} y lo demás no cambió, así que el número que falta "
        "también bajó {2}.",
    },
    Saying.UP_MISSING_DOWN: {
        EN: "{0} went up {2} to {1} and the rest stayed, so the missing number went down {2}.",
        ES: "El {0} subió {2} hasta {1} y lo demás no cambió, así que el número que falta "
        "bajó {2}.",
    },
    Saying.DOWN_MISSING_UP: {
        EN: "{0} went down {2} to {1} and the rest stayed, so the missing number went up {2}.",
        ES: "El {0} bajó {2} hasta {1} y lo demás no cambió, así que el número que falta "
        "subió {2}.",
    },
    Saying.TAKE_MORE: {
        EN: "We take {1} and not {0}. That is {2} more taken away, so {2} less is left.",
        ES: "Quitamos {1} y no {0}. Quitamos {2} más, así que la respuesta baja {2}.",
    },
    Saying.TAKE_LESS: {
        EN: "We take {1} and not {0}. That is {2} less taken away, so {2} more is left.",
        ES: "Quitamos {1} y no {0}. Quitamos {2} menos, así que la respuesta sube {2}.",
    },
    Saying.MOVED: {
        EN: "{0} moved across from {1} to {2}. Nothing came and nothing left, so it makes the "
        "same.",
        ES: "Pasamos {0} del {1} al {2}. No llegó ni se fue nada, así que da lo mismo.",
    },
    Saying.MOVED_BETWEEN_TWINS: {
        EN: "{0} moved across from one {1} to the other. Nothing came and nothing left, so it "
        "makes the same.",
        ES: "Pasamos {0} de un {1} al otro. No llegó ni se fue nada, así que da lo mismo.",
    },
    Saying.BOTH_UP: {
        EN: "{1} and {2} both went up {0}, so they are still just as far apart.",
        ES: "El {1} y el {2} subieron {0} los dos, así que siguen a la misma distancia.",
    },
    Saying.BOTH_DOWN: {
        EN: "{1} and {2} both went down {0}, so they are still just as far apart.",
        ES: "El {1} y el {2} bajaron {0} los dos, así que siguen a la misma distancia.",
    },
    Saying.TWIN: {
        EN: "It is almost the same problem: {0} is close to {1} and easier to use.",
        ES: "Es casi el mismo problema: {0} está cerca de {1} y es más fácil de usar.",
    },
    Saying.INSIDE: {
        EN: "Problem {0} is hiding inside problem {1}: you can use it on the way.",
        ES: "El problema {0} está escondido dentro del problema {1}: se puede usar en el camino.",
    },
    Saying.TURNED: {
        EN: "The same numbers in another order, so it makes the same.",
        ES: "Son los mismos números en otro orden, así que da lo mismo.",
    },
    Saying.UNDOES: {
        EN: "{0}, {1} and {2} are in both: one puts together what the other takes apart.",
        ES: "En los dos están {0}, {1} y {2}: uno junta lo que el otro separa.",
    },
    Saying.SAME_THREE: {
        EN: "{0} and {1} make {2} in both: it is the same whole with another part to find.",
        ES: "En los dos, {0} y {1} forman {2}: es el mismo entero y hay que hallar otra parte.",
    },
    Saying.TENS: {
        EN: "It is the same with tens: every number is ten times as big, and the answer too.",
        ES: "Es lo mismo con decenas: cada número es diez veces mayor, y la respuesta también.",
    },
    Saying.HUNDREDS: {
        EN: "It is the same with hundreds: every number is a hundred times as big, and the "
        "answer too.",
        ES: "Es lo mismo con centenas: cada número es cien veces mayor, y la respuesta también.",
    },
    Saying.DOUBLED: {
        EN: "Every number doubled, so the answer doubled.",
        ES: "Cada número se duplicó, así que la respuesta se duplicó.",
    },
    Saying.HALVED: {
        EN: "Every number was cut in half, so the answer was cut in half.",
        ES: "Cada número se partió por la mitad, así que la respuesta también.",
    },
    Saying.FEEDS: {
        EN: "The answer {0} is a number in the later problem.",
        ES: "La respuesta {0} es un número del problema que viene después.",
    },
    Saying.MOVES_EACH_TIME: {
        EN: "Each time {0} moves from one number to the other, and it keeps making the same.",
        ES: "Cada vez se pasa {0} de un número al otro, y sigue dando lo mismo.",
    },
    Saying.ALIKE_EACH_TIME: {
        EN: "Each time both numbers change by {0} the same way, and they stay just as far apart.",
        ES: "Cada vez los dos números cambian {0} en el mismo sentido, y siguen a la misma "
        "distancia.",
    },
    Saying.UP_AND_UP: {
        EN: "Each time one number goes up {0}, and the answer goes up {0}.",
        ES: "Cada vez un número sube {0}, y la respuesta sube {0}.",
    },
    Saying.DOWN_AND_DOWN: {
        EN: "Each time one number goes down {0}, and the answer goes down {0}.",
        ES: "Cada vez un número baja {0}, y la respuesta baja {0}.",
    },
    Saying.UP_AND_DOWN: {
        EN: "Each time one number goes up {0}, and the answer goes down {0}.",
        ES: "Cada vez un número sube {0}, y la respuesta baja {0}.",
    },
    Saying.DOWN_AND_UP: {
        EN: "Each time one number goes down {0}, and the answer goes up {0}.",
        ES: "Cada vez un número baja {0}, y la respuesta sube {0}.",
    },
    Saying.ALL_UP: {
        EN: "The numbers change in the same way each time, and the answer goes up {0}.",
        ES: "Los números cambian cada vez de la misma manera, y la respuesta sube {0}.",
    },
    Saying.ALL_DOWN: {
        EN: "The numbers change in the same way each time, and the answer goes down {0}.",
        ES: "Los números cambian cada vez de la misma manera, y la respuesta baja {0}.",
    },
    Saying.ALL_STAY: {
        EN: "The numbers change in the same way each time, and the answer stays.",
        ES: "Los números cambian cada vez de la misma manera, y la respuesta se queda igual.",
    },
    Saying.ANSWERS_UP: {
        EN: "The answers go up {0} each time.",
        ES: "Las respuestas suben {0} cada vez.",
    },
    Saying.ANSWERS_DOWN: {
        EN: "The answers go down {0} each time.",
        ES: "Las respuestas bajan {0} cada vez.",
    },
}
"""One sentence for each saying; {0}, {1} ... are the link's numbers in order."""

ASKED: dict[LinkKind, dict[Language, str]] = {
    LinkKind.SAME_NUMBER: {
        EN: "Read the numbers of {these}, line by line. Have you seen any of them before?",
        ES: "Lean los números de {these}, línea por línea. ¿Han visto alguno antes?",
    },
    LinkKind.SAME_TOTAL: {
        EN: "Look at {these} and what we found for them. What do you notice?",
        ES: "Miren {these} y lo que hallamos para cada uno. ¿Qué notan?",
    },
    LinkKind.ONE_CHANGES: {
        EN: "Look from one to the other: {these}. What is different now? What does that do?",
        ES: "Miren de uno a otro: {these}. ¿Qué es distinto ahora? ¿Qué pasa por eso?",
    },
    LinkKind.BOTH_CHANGE: {
        EN: "Put {these} side by side. What happened to each number? Why might it come out so?",
        ES: "Comparen {these}. ¿Qué le pasó a cada número? ¿Por qué saldrá así?",
    },
    LinkKind.FRIENDLY_TWIN: {
        EN: "Look at {these}. Could one help you with the other? How?",
        ES: "Miren {these}. ¿Podría uno ayudarles con el otro? ¿Cómo?",
    },
    LinkKind.INSIDE_A_WAY: {
        EN: "Think of the ways we told for {these}. Where have you seen this step before?",
        ES: "Piensen en las maneras que contamos para {these}. ¿Dónde vieron antes ese paso?",
    },
    LinkKind.TURNED_AROUND: {
        EN: "Look at {these}. What is alike and what is not? Does it matter here?",
        ES: "Miren {these}. ¿Qué se parece y qué no? ¿Importa aquí?",
    },
    LinkKind.OPPOSITE: {
        EN: "If you know one of {these}, what can you say about the other?",
        ES: "Si saben uno de {these}, ¿qué pueden decir del otro?",
    },
    LinkKind.TEN_TIMES: {
        EN: "Read {these} aloud, one after the other. What do you hear?",
        ES: "Lean en voz alta {these}, uno tras otro. ¿Qué oyen?",
    },
    LinkKind.DOUBLE_HALF: {
        EN: "Compare each number in {these}. What happened, and what happened to the answer?",
        ES: "Comparen cada número de {these}. ¿Qué pasó, y qué pasó con la respuesta?",
    },
    LinkKind.FEEDS_NEXT: {
        EN: "Look at {these}. Could what we found for one be of use in the other?",
        ES: "Miren {these}. ¿Lo que hallamos en uno podría servir en el otro?",
    },
    LinkKind.PATTERN: {
        EN: "Read {these}, line by line. What could come after, and how do you know?",
        ES: "Lean {these}, línea por línea. ¿Qué podría venir después, y cómo lo saben?",
    },
}
"""One question for each kind; {these} says which problems. It holds no number of theirs."""

ASKED_OF: dict[Saying, dict[Language, str]] = {
    Saying.TOGETHER: {
        EN: "Look at {these}. If you knew some of them, could you find the rest? How?",
        ES: "Miren {these}. Si supieran algunos, ¿podrían hallar los demás? ¿Cómo?",
    },
    Saying.NUMBER_BACK_WRITTEN: {
        EN: "Look at {these}. Is there anything that only looks different?",
        ES: "Miren {these}. ¿Hay algo que sólo parezca distinto?",
    },
}
"""The question of a saying that its kind's would not lead to."""

_ORDINALS = {
    EN: ("first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth"),
    ES: ("primero", "segundo", "tercero", "cuarto", "quinto", "sexto", "séptimo", "octavo"),
}
_AND = {EN: "and", ES: "y"}
_THESE = {EN: "the {} problems", ES: "los problemas {}"}
_LONG = {EN: "these problems", ES: "estos problemas"}


def link_says(link: Link, language: Language) -> str:
    """Return one sentence that says the link in a child's words."""
    return SAID[link.saying][language].format(*map(number_text, link.numbers))


def link_question(link: Link, language: Language) -> str:
    """Return a question that helps a class find the link, with none of its numbers or its name."""
    asked = ASKED_OF.get(link.saying, ASKED[link.kind])
    return asked[language].format(these=_these(link.between, language))


def _these(between: tuple[int, ...], language: Language) -> str:
    ordinals = _ORDINALS[language]
    if between[-1] >= len(ordinals):
        return _LONG[language]
    words = [ordinals[at] for at in between]
    joined = f"{', '.join(words[:-1])} {_AND[language]} {words[-1]}"
    return _THESE[language].format(joined)

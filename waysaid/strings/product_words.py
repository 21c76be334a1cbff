"""What a link between products or quotients says, in a child's words."""

from waysaid.number import Language
from waysaid.strings.link import Saying

EN, ES = Language.EN, Language.ES

PRODUCTS_SAID: dict[Saying, dict[Language, str]] = {
    Saying.NUMBER_BACK_WRITTEN: {
        EN: "{0} comes back, written as {1}.",
        ES: "El {0} vuelve a salir, escrito como {1}.",
    },
    Saying.GROUP_MORE: {
        EN: "{0} went up {2} to {1}: that is one more group of {3}, so the answer went up {4}.",
        ES: "El {0} subió {2} hasta {1}: es un grupo más de {3}, así que la respuesta subió {4}.",
    },
    Saying.GROUP_LESS: {
        EN: "{0} went down {2} to {1}: that is one group of {3} less, so the answer went down {4}.",
        ES: "El {0} bajó {2} hasta {1}: es un grupo menos de {3}, así que la respuesta bajó {4}.",
    },
    Saying.GROUPS_MORE: {
        EN: "{0} went up {2} to {1}: that is {2} more groups of {3}, so the answer went up {4}.",
        ES: "El {0} subió {2} hasta {1}: son {2} grupos más de {3}, así que la respuesta "
        "subió {4}.",
    },
    Saying.GROUPS_LESS: {
        EN: "{0} went down {2} to {1}: that is {2} groups of {3} less, so the answer went down "
        "{4}.",
        ES: "El {0} bajó {2} hasta {1}: son {2} grupos menos de {3}, así que la respuesta "
        "bajó {4}.",
    },
    Saying.PART_MORE: {
        EN: "{0} went up {2} to {1} and {3} stayed, so the answer went up {4}.",
        ES: "El {0} subió {2} hasta {1} y el {3} no cambió, así que la respuesta subió {4}.",
    },
    Saying.PART_LESS: {
        EN: "{0} went down {2} to {1} and {3} stayed, so the answer went down {4}.",
        ES: "El {0} bajó {2} hasta {1} y el {3} no cambió, así que la respuesta bajó {4}.",
    },
    Saying.SHARE_MORE: {
        EN: "{0} went up {2} to {1}: {2} more shared among {3} is {4} more for each.",
        ES: "El {0} subió {2} hasta {1}: {2} más entre {3} son {4} más para cada uno.",
    },
    Saying.SHARE_LESS: {
        EN: "{0} went down {2} to {1}: {2} less shared among {3} is {4} less for each.",
        ES: "El {0} bajó {2} hasta {1}: {2} menos entre {3} son {4} menos para cada uno.",
    },
    Saying.LEFT_OVER_MORE: {
        EN: "{0} went up {2} to {1}, not enough for one more each among {3}: {5} left over, "
        "not {4}.",
        ES: "El {0} subió {2} hasta {1}, y no alcanza para uno más cada uno entre {3}: sobran {5} "
        "y no {4}.",
    },
    Saying.LEFT_OVER_LESS: {
        EN: "{0} went down {2} to {1}, and each of {3} still gets as many: {5} left over, not {4}.",
        ES: "El {0} bajó {2} hasta {1}, y a cada uno de los {3} le toca lo mismo: sobran {5} y no "
        "{4}.",
    },
    Saying.BY_MORE: {
        EN: "We divide by {1} and not {0}. That is more shares, so each one is smaller.",
        ES: "Dividimos entre {1} y no entre {0}. Son más partes, así que cada una es menor.",
    },
    Saying.BY_LESS: {
        EN: "We divide by {1} and not {0}. That is fewer shares, so each one is bigger.",
        ES: "Dividimos entre {1} y no entre {0}. Son menos partes, así que cada una es mayor.",
    },
    Saying.MISSING_GREW: {
        EN: "{0} became {1} and the rest stayed, so the missing number went up {3}.",
        ES: "El {0} pasó a ser {1} y lo demás no cambió, así que el número que falta subió {3}.",
    },
    Saying.MISSING_SHRANK: {
        EN: "{0} became {1} and the rest stayed, so the missing number went down {3}.",
        ES: "El {0} pasó a ser {1} y lo demás no cambió, así que el número que falta bajó {3}.",
    },
    Saying.ONE_DOUBLED: {
        EN: "{0} doubled to {1} and the rest stayed, so the answer doubled too.",
        ES: "El {0} se duplicó hasta {1} y lo demás no cambió, así que la respuesta también se "
        "duplicó.",
    },
    Saying.ONE_HALVED: {
        EN: "{0} was cut in half to {1} and the rest stayed, so the answer was cut in half too.",
        ES: "El {0} se partió por la mitad hasta {1} y lo demás no cambió, así que la respuesta "
        "también.",
    },
    Saying.BY_TWICE: {
        EN: "We divide by {1} and not {0}, twice as many, so the answer was cut in half.",
        ES: "Dividimos entre {1} y no entre {0}, el doble, así que la respuesta se partió por la "
        "mitad.",
    },
    Saying.BY_HALF: {
        EN: "We divide by {1} and not {0}, half as many, so the answer doubled.",
        ES: "Dividimos entre {1} y no entre {0}, la mitad, así que la respuesta se duplicó.",
    },
    Saying.TWO_DOUBLED: {
        EN: "{0} and {1} both doubled, so the answer doubled and doubled again.",
        ES: "El {0} y el {1} se duplicaron los dos, así que la respuesta se duplicó dos veces.",
    },
    Saying.TWO_HALVED: {
        EN: "{0} and {1} were both cut in half, so the answer was cut in half and in half again.",
        ES: "El {0} y el {1} se partieron los dos por la mitad, así que la respuesta se partió "
        "dos veces.",
    },
    Saying.ONE_TIMES: {
        EN: "{1} is {2} times as big as {0} and the rest stayed, so the answer is {2} times as "
        "big too.",
        ES: "El {1} es {2} veces el {0} y lo demás no cambió, así que la respuesta también es {2} "
        "veces mayor.",
    },
    Saying.ONE_OVER: {
        EN: "{0} is {2} times as big as {1} and the rest stayed, so the answer got {2} times as "
        "small.",
        ES: "El {0} es {2} veces el {1} y lo demás no cambió, así que la respuesta quedó {2} "
        "veces menor.",
    },
    Saying.BY_TIMES: {
        EN: "We divide by {1} and not {0}, {2} times as many, so the answer got {2} times as "
        "small.",
        ES: "Dividimos entre {1} y no entre {0}, {2} veces más, así que la respuesta quedó {2} "
        "veces menor.",
    },
    Saying.BY_OVER: {
        EN: "We divide by {1} and not {0}, {2} times as few, so the answer got {2} times as big.",
        ES: "Dividimos entre {1} y no entre {0}, {2} veces menos, así que la respuesta quedó {2} "
        "veces mayor.",
    },
    Saying.PLACES_UP: {
        EN: "The digits are the same and moved to other places: the answer is {0} times as big.",
        ES: "Las cifras son las mismas en otro lugar: la respuesta es {0} veces mayor.",
    },
    Saying.PLACES_DOWN: {
        EN: "The digits are the same and moved to other places: the answer is {0} times as small.",
        ES: "Las cifras son las mismas en otro lugar: la respuesta es {0} veces menor.",
    },
    Saying.PLACES_STAY: {
        EN: "The digits of both numbers moved the same way, so the answer stays.",
        ES: "Las cifras de los dos números cambiaron igual de lugar, así que la respuesta no "
        "cambia.",
    },
    Saying.DOUBLE_AND_HALF: {
        EN: "{0} doubled and {1} was cut in half, so it makes the same.",
        ES: "El {0} se duplicó y el {1} se partió por la mitad, así que da lo mismo.",
    },
    Saying.TIMES_AND_OVER: {
        EN: "{0} got {2} times as big and {1} got {2} times as small, so it makes the same.",
        ES: "El {0} se hizo {2} veces mayor y el {1} se hizo {2} veces menor, así que da lo mismo.",
    },
    Saying.BOTH_DOUBLED: {
        EN: "{0} and {1} both doubled: twice as much for twice as many, so the answer stays.",
        ES: "El {0} y el {1} se duplicaron: el doble para el doble, así que la respuesta no "
        "cambia.",
    },
    Saying.BOTH_HALVED: {
        EN: "{0} and {1} were both cut in half: half as much for half as many, so the answer "
        "stays.",
        ES: "El {0} y el {1} se partieron por la mitad: la mitad para la mitad, así que la "
        "respuesta no cambia.",
    },
    Saying.BOTH_TIMES: {
        EN: "{0} and {1} both got {2} times as big, so the answer stays.",
        ES: "El {0} y el {1} se hicieron {2} veces mayores, así que la respuesta no cambia.",
    },
    Saying.BOTH_OVER: {
        EN: "{0} and {1} both got {2} times as small, so the answer stays.",
        ES: "El {0} y el {1} se hicieron {2} veces menores, así que la respuesta no cambia.",
    },
    Saying.PERCENT_TURNED: {
        EN: "{0} per cent of {1} is {1} per cent of {0}: the two numbers can swap.",
        ES: "El {0} por ciento de {1} es el {1} por ciento de {0}: los dos números se pueden "
        "cambiar.",
    },
    Saying.SIDES_TURNED: {
        EN: "The two changed sides, so the larger one is on the other side now.",
        ES: "Los dos cambiaron de lado, así que el mayor está ahora en el otro lado.",
    },
    Saying.CLAIM_TURNED: {
        EN: "The two sides changed places, so it says the same.",
        ES: "Los dos lados cambiaron de lugar, así que dice lo mismo.",
    },
    Saying.TOGETHER: {
        EN: "{0} and {1} together are {2}, so {3} and {4} together are the answer {5}.",
        ES: "{0} y {1} juntos son {2}, así que {3} y {4} juntos son la respuesta {5}.",
    },
    Saying.UNDOES_TIMES: {
        EN: "{0}, {1} and {2} are in both: one multiplies what the other divides.",
        ES: "En los dos están {0}, {1} y {2}: uno multiplica lo que el otro divide.",
    },
    Saying.SAME_THREE_TIMES: {
        EN: "{0} times {1} is {2} in both: the same three numbers with another one to find.",
        ES: "En los dos, {0} por {1} es {2}: son los mismos tres números y hay que hallar otro.",
    },
    Saying.STEPS_UP: {
        EN: "Each time one number goes up {0}, and the answer goes up {1}.",
        ES: "Cada vez un número sube {0}, y la respuesta sube {1}.",
    },
    Saying.STEPS_DOWN: {
        EN: "Each time one number goes down {0}, and the answer goes down {1}.",
        ES: "Cada vez un número baja {0}, y la respuesta baja {1}.",
    },
    Saying.GROWS: {
        EN: "Each time one number is {0} times as big, and the answer too.",
        ES: "Cada vez un número es {0} veces mayor, y la respuesta también.",
    },
    Saying.SHRINKS: {
        EN: "Each time one number is {0} times as small, and the answer too.",
        ES: "Cada vez un número es {0} veces menor, y la respuesta también.",
    },
    Saying.BY_GROWS: {
        EN: "Each time we divide by {0} times as much, and the answer is {0} times as small.",
        ES: "Cada vez dividimos entre {0} veces más, y la respuesta es {0} veces menor.",
    },
    Saying.BY_SHRINKS: {
        EN: "Each time we divide by {0} times as little, and the answer is {0} times as big.",
        ES: "Cada vez dividimos entre {0} veces menos, y la respuesta es {0} veces mayor.",
    },
    Saying.BOTH_GROW: {
        EN: "Each time both numbers are {0} times as big, and the answer stays.",
        ES: "Cada vez los dos números son {0} veces mayores, y la respuesta se queda igual.",
    },
    Saying.BOTH_SHRINK: {
        EN: "Each time both numbers are {0} times as small, and the answer stays.",
        ES: "Cada vez los dos números son {0} veces menores, y la respuesta se queda igual.",
    },
    Saying.TRADES: {
        EN: "Each time one number is {0} times as big and the other {0} times as small, and it "
        "keeps making the same.",
        ES: "Cada vez un número es {0} veces mayor y el otro {0} veces menor, y sigue dando lo "
        "mismo.",
    },
    Saying.ANSWERS_GROW: {
        EN: "Each answer is {0} times the one before.",
        ES: "Cada respuesta es {0} veces la anterior.",
    },
    Saying.ANSWERS_SHRINK: {
        EN: "Each answer is {0} times as small as the one before.",
        ES: "Cada respuesta es {0} veces menor que la anterior.",
    },
}
"""One sentence for each saying of products; {0}, {1} ... are the link's numbers in order."""

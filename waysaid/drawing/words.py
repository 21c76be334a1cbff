"""What a drawing shows, in words: its title and its description, in English and Spanish."""

from waysaid.drawing.telling import Picture
from waysaid.number import Language, Problem, say

_NAMES = {
    Language.EN: {
        Picture.WORDS: "Words",
        Picture.EQUATIONS: "Equations",
        Picture.NUMBER_LINE: "Open number line",
        Picture.NUMBER_BOND: "Number bond",
        Picture.PLACE_VALUE: "Hundreds, tens and ones",
        Picture.TEN_FRAME: "Ten frame",
        Picture.BAR: "Bar",
        Picture.AREA: "Area model",
        Picture.ARRAY: "Array of dots",
        Picture.HOPS: "Equal hops on a line",
        Picture.DOUBLE_BAR: "Double bar",
        Picture.FRACTION_BAR: "Fraction bars",
        Picture.FRACTION_CIRCLE: "Fraction circles",
        Picture.HUNDRED_GRID: "Hundred grid",
        Picture.DOTS: "Groups of dots",
    },
    Language.ES: {
        Picture.WORDS: "Palabras",
        Picture.EQUATIONS: "Ecuaciones",
        Picture.NUMBER_LINE: "Recta numérica abierta",
        Picture.NUMBER_BOND: "Número y sus partes",
        Picture.PLACE_VALUE: "Centenas, decenas y unidades",
        Picture.TEN_FRAME: "Marco de diez",
        Picture.BAR: "Barra",
        Picture.AREA: "Modelo de área",
        Picture.ARRAY: "Filas de puntos",
        Picture.HOPS: "Saltos iguales en una recta",
        Picture.DOUBLE_BAR: "Barra doble",
        Picture.FRACTION_BAR: "Barras de fracciones",
        Picture.FRACTION_CIRCLE: "Círculos de fracciones",
        Picture.HUNDRED_GRID: "Cuadrícula de cien",
        Picture.DOTS: "Grupos de puntos",
    },
}

_PHRASES = {
    Language.EN: {
        "of": "{picture} for {problem}",
        "nothing": "Nothing is drawn.",
        "start": "start at {number}",
        "somewhere": "start at a number that was not said",
        "hop": "{move} to {number}",
        "gathered": "the hops together make {number}",
        "gap": "from {low} to {high} the gap is {number}",
        "stretch": "a gap from {low} to {high}",
        "apart": "{whole} made of {parts}",
        "pieces": "{number}: {pieces}",
        "hundreds": "{count} hundreds",
        "hundred": "1 hundred",
        "tens": "{count} tens",
        "ten": "1 ten",
        "ones": "{count} ones",
        "one": "1 one",
        "none": "no pieces",
        "ring": "ten ones are ringed and make a ten",
        "open": "a ten is opened into ten ones",
        "circled": "groups of {sizes} are outlined",
        "counters": "{count} counters",
        "crossed": "{count} crossed out",
        "frame": "Frames of ten",
        "whole": "whole {number}",
        "part": "part {number}",
        "over": "above, part {number}",
        "equal": "{count} equal parts, each {number}",
        "rectangle": "a rectangle {wide} by {high}",
        "piece": "a piece {wide} by {high} holds {number}",
        "holds": "it holds {number}",
        "strip": "a strip {wide} by {high} goes off, {number}",
        "rest": "{number} is left over",
        "dots": "rows of dots",
        "hops": "{number} hops",
        "one-hop": "{number} hop",
        "beside": "{upper} beside {lower}",
        "shaded": "{number} shaded",
        "filled": " and filled up",
        "blank": "not said",
        "and": " and ",
        "string": "A string of problems",
        "ringed": "{spots} marked",
        "joined": "{spots} marked and joined",
        "row": "row {row}",
        "number": "{text} in row {row}",
    },
    Language.ES: {
        "of": "{picture} para {problem}",
        "nothing": "No hay nada dibujado.",
        "start": "empieza en {number}",
        "somewhere": "empieza en un número que no se dijo",
        "hop": "{move} hasta {number}",
        "gathered": "los saltos juntos hacen {number}",
        "gap": "de {low} a {high} la distancia es {number}",
        "stretch": "una distancia de {low} a {high}",
        "apart": "{whole} hecho de {parts}",
        "pieces": "{number}: {pieces}",
        "hundreds": "{count} centenas",
        "hundred": "1 centena",
        "tens": "{count} decenas",
        "ten": "1 decena",
        "ones": "{count} unidades",
        "one": "1 unidad",
        "none": "ninguna pieza",
        "ring": "diez unidades rodeadas hacen una decena",
        "open": "una decena abierta en diez unidades",
        "circled": "grupos de {sizes} con contorno",
        "counters": "{count} fichas",
        "crossed": "{count} tachadas",
        "frame": "Marcos de diez",
        "whole": "todo {number}",
        "part": "parte {number}",
        "over": "arriba, parte {number}",
        "equal": "{count} partes iguales, cada una {number}",
        "rectangle": "un rectángulo de {wide} por {high}",
        "piece": "una pieza de {wide} por {high} tiene {number}",
        "holds": "tiene {number}",
        "strip": "se quita una tira de {wide} por {high}, {number}",
        "rest": "sobran {number}",
        "dots": "filas de puntos",
        "hops": "{number} saltos",
        "one-hop": "{number} salto",
        "beside": "{upper} junto a {lower}",
        "shaded": "{number} con sombra",
        "filled": " y completado",
        "blank": "no dicho",
        "and": " y ",
        "string": "Una serie de problemas",
        "ringed": "{spots} con marca",
        "joined": "{spots} con marca y unidos",
        "row": "fila {row}",
        "number": "{text} en la fila {row}",
    },
}


def phrase(lang: Language, key: str, **parts: object) -> str:
    """Return one phrase with its parts filled in."""
    return _PHRASES[lang][key].format(**parts)


def title_of(picture: Picture, problem: Problem, lang: Language) -> str:
    """Return the title of a drawing: what kind of picture, and of which problem."""
    return phrase(lang, "of", picture=_NAMES[lang][picture], problem=say(problem, lang))


def sentence(parts: tuple[str, ...], lang: Language) -> str:
    """Join phrases into one sentence; the one that says that nothing is drawn if there are none."""
    said = ", ".join(part for part in parts if part)
    return f"{said[0].upper()}{said[1:]}." if said else phrase(lang, "nothing")


def listed(parts: tuple[str, ...], lang: Language) -> str:
    """Join words with commas, and the last one with `and`."""
    if len(parts) < 2:
        return "".join(parts)
    return ", ".join(parts[:-1]) + phrase(lang, "and") + parts[-1]

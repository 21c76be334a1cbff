"""What growth says, in English and Spanish: counts as counts, small ones as small.

With two observations it says "two times so far" and nothing more. No sentence holds a percentage,
a rank, a comparison of children or a prediction; the words are our own.
"""

from waysaid.growth.following import Because, Need, Reason
from waysaid.growth.picture import Standing
from waysaid.growth.shown import How
from waysaid.number import Language

EN, ES = Language.EN, Language.ES

_FEW = {
    EN: ("not so far", "once so far", "two times so far"),
    ES: ("todavía no", "una vez hasta ahora", "dos veces hasta ahora"),
}


def times_said(times: int, talks: int, language: Language) -> str:
    """Return how often something was so far, and in how many talks where it was more than twice."""
    few = _FEW[language]
    if times < len(few):
        return few[times]
    if talks == 1:
        return {EN: f"{times} times, in one talk", ES: f"{times} veces, en una charla"}[language]
    return {EN: f"{times} times, in {talks} talks", ES: f"{times} veces, en {talks} charlas"}[
        language
    ]


def standing_name(standing: Standing, language: Language) -> str:
    """Return the heading over the families that stand so."""
    return _STANDINGS[standing][language]


_STANDINGS = {
    Standing.BY_ITSELF: {
        EN: "The class brings these by itself",
        ES: "La clase las trae por sí misma",
    },
    Standing.COMING: {EN: "Coming", ES: "En camino"},
    Standing.NOT_LATELY: {EN: "Not heard lately", ES: "No oídas últimamente"},
    Standing.NOBODY: {EN: "Nobody has brought these so far", ES: "Nadie las ha traído todavía"},
}


def standing_rule(standing: Standing, language: Language) -> str:
    """Return what has to be there for families to stand so, in a sentence."""
    return _RULES[standing][language]


_RULES = {
    Standing.BY_ITSELF: {
        EN: "Told by three children or more, in three talks or more, two of them about something"
        " else.",
        ES: "Contadas por tres niños o más, en tres charlas o más, dos de ellas sobre otra cosa.",
    },
    Standing.COMING: {
        EN: "Told lately, by few children or in few talks so far.",
        ES: "Contadas últimamente, por pocos niños o en pocas charlas hasta ahora.",
    },
    Standing.NOT_LATELY: {
        EN: "Told before, and not in the last twenty talks.",
        ES: "Contadas antes, y no en las últimas veinte charlas.",
    },
    Standing.NOBODY: {
        EN: "Problems of the last twenty talks make them easy, and nobody has told one so far.",
        ES: "Los problemas de las últimas veinte charlas las hacen fáciles, y nadie ha contado una"
        " todavía.",
    },
}


def how_name(how: How, language: Language) -> str:
    """Return what somebody did, as it stands after her name: `told it`."""
    return _HOWS[how][language]


_HOWS = {
    How.SAID: {EN: "told it", ES: "la contó"},
    How.ADDED: {EN: "added to a way", ES: "añadió a una manera"},
    How.CHANGED: {EN: "changed her way to it", ES: "cambió a ella"},
    How.AGREED: {EN: "thought the same", ES: "pensó lo mismo"},
    How.ANSWERED: {EN: "gave an answer", ES: "dio una respuesta"},
    How.NOTICED: {EN: "noticed something", ES: "notó algo"},
    How.SUPPOSED: {EN: "asked what if", ES: "preguntó qué pasaría si"},
    How.PASSED: {EN: "chose to pass", ES: "prefirió pasar"},
}


def need_says(need: Need, name: str, language: Language) -> str:
    """Return what a suggestion comes to, for a family by its name."""
    return _NEEDS[need][language].format(name=name)


_NEEDS = {
    Need.SLIPPING: {
        EN: "A talk about “{name}”, to look at it together: ways of it often end elsewhere.",
        ES: "Una charla sobre “{name}”, para mirarla juntos: a menudo acaba en otro número.",
    },
    Need.FEW: {
        EN: "A talk about “{name}”, so that more of the class can meet it.",
        ES: "Una charla sobre “{name}”, para que más niños la conozcan.",
    },
    Need.NOBODY: {
        EN: "A talk in which “{name}” pays off: the class has had problems for it.",
        ES: "Una charla en la que “{name}” valga la pena: la clase ya tuvo problemas para ella.",
    },
    Need.AWAY: {
        EN: "A talk that calls “{name}” back.",
        ES: "Una charla que traiga de vuelta “{name}”.",
    },
}


def reason_says(reason: Reason, language: Language) -> str:
    """Return a reason as a sentence; the talks it points to stand beside it."""
    given = times_said(reason.times, reason.talks, language)
    return _REASONS[reason.because][language].format(times=given)


_REASONS = {
    Because.ENDED_ELSEWHERE: {
        EN: "Told with another answer than the problem's: {times}.",
        ES: "Contada con otra respuesta que la del problema: {times}.",
    },
    Because.THEY_TELL_IT: {
        EN: "Told lately, with any answer: {times}. It is theirs to build on.",
        ES: "Contada últimamente, con cualquier respuesta: {times}. Ya es suya.",
    },
    Because.FEW_BROUGHT_IT: {
        EN: "One or two children told it or thought so: {times}.",
        ES: "Uno o dos niños la contaron o pensaron así: {times}.",
    },
    Because.NOBODY_BROUGHT_IT: {
        EN: "Nobody has told it so far.",
        ES: "Nadie la ha contado todavía.",
    },
    Because.WAS_HEARD_BEFORE: {
        EN: "Told before, and not lately: {times}.",
        ES: "Contada antes, y no últimamente: {times}.",
    },
    Because.INVITED: {
        EN: "Problems made it one of the easy ways: {times}.",
        ES: "Los problemas la hicieron una de las maneras fáciles: {times}.",
    },
    Because.TALK_ABOUT_IT: {
        EN: "A talk was about it: {times}.",
        ES: "Una charla trató de ella: {times}.",
    },
    Because.NO_TALK_ABOUT_IT: {
        EN: "No talk has been about it so far.",
        ES: "Ninguna charla ha tratado de ella todavía.",
    },
}


def caution(language: Language) -> str:
    """Return what stands beside every statement about a child."""
    return _CAUTION[language]


_CAUTION = {
    EN: "This is what was written down in talks, and no more. What a child did not say she may"
    " well know. Your own eyes, your school’s rules and the law where you are come first.",
    ES: "Esto es lo que se anotó en las charlas, y nada más. Lo que un niño no dijo, puede"
    " saberlo muy bien. Sus propios ojos, las reglas de su escuela y la ley de su lugar van"
    " primero.",
}


def invite_says(language: Language) -> str:
    """Return what stands beside names to invite."""
    return {
        EN: "Not heard in the last talks. An invitation, such as “would you like to tell us?”; a"
        " pass is a good answer.",
        ES: "No oídos en las últimas charlas. Una invitación, como “¿quieres contarnos?”; pasar es"
        " una buena respuesta.",
    }[language]

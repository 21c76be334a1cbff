"""Why each problem of a composed string stands where it does: one sentence for the teacher."""

from collections.abc import Sequence
from dataclasses import replace

from waysaid.number import Language
from waysaid.strings.helps import Help
from waysaid.strings.link import Link, LinkKind
from waysaid.strings.link_words import link_says
from waysaid.strings.links import links
from waysaid.strings.pool import Candidate
from waysaid.ways import Family, family_name

EN, ES = Language.EN, Language.ES

_FIRST = {
    EN: "Everybody can begin here.",
    ES: "Por aquí pueden empezar todos.",
}
_FROM = {
    EN: "From problem {0}: {1}",
    ES: "Del problema {0}: {1}",
}
_BY_ITSELF = {
    EN: "Problem {0} does not help here: this one stands by itself.",
    ES: "El problema {0} no ayuda aquí: este va solo.",
}
_PAYS = {
    EN: " Here {0} saves work.",
    ES: " Aquí {0} ahorra trabajo.",
}
_STRETCH = {
    EN: " It asks the most, to end with.",
    ES: " Es el que más pide, para terminar.",
}


def reasons(
    chosen: Sequence[Candidate], met: Sequence[Help | None], focus: Family, language: Language
) -> tuple[str, ...]:
    """Return a sentence for each problem; those behind the first refer to the one before."""
    said = [_FIRST[language]]
    most = max(one.effort for one in chosen)
    for at in range(1, len(chosen)):
        before, one, help_ = chosen[at - 1], chosen[at], met[at]
        link = None if help_ is None else _shown(before, one, help_)
        if link is None:
            reason = _BY_ITSELF[language].format(at)
        else:
            if link.kind is LinkKind.INSIDE_A_WAY:
                link = replace(link, numbers=(at, at + 1))
            reason = _FROM[language].format(at, link_says(link, language))
        if one.pays is not None and one.pays > 0:
            reason += _PAYS[language].format(family_name(focus, language))
        if at == len(chosen) - 1 and one.effort == most:
            reason += _STRETCH[language]
        said.append(reason)
    return tuple(said)


def _shown(before: Candidate, one: Candidate, help_: Help) -> Link:
    """Return the link that a help is. Every help is one (a property in the tests)."""
    found = links((before.problem, one.problem), every=True)
    same = [link for link in found if link.kind is help_.kind]
    return same[0]

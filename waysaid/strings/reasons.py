"""Why each problem of a composed string stands where it does: one sentence for the teacher."""

import re
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
    EN: "Everybody can begin here",
    ES: "Por aquí pueden empezar todos",
}
_FROM = {
    EN: "From problem {0}: {1}",
    ES: "Del problema {0}: {1}",
}
_BY_ITSELF = {
    EN: "Problem {0} does not help here: this one stands by itself",
    ES: "El problema {0} no ayuda aquí: este va solo",
}
_PAYS = {
    EN: "here {0} saves work",
    ES: "aquí {0} ahorra trabajo",
}
_STRETCH = {
    EN: "it asks the most, to end with",
    ES: "es el que más pide, para terminar",
}


def reasons(
    chosen: Sequence[Candidate], met: Sequence[Help | None], focus: Family, language: Language
) -> tuple[str, ...]:
    """Return a sentence for each problem; those behind the first refer to the one before."""
    said: list[tuple[str, ...]] = [(_FIRST[language],)]
    most = max(one.effort for one in chosen)
    for at in range(1, len(chosen)):
        one = chosen[at]
        parts = [_met(chosen[at - 1], one, met[at], at, language)]
        if one.pays is not None and one.pays > 0:
            parts.append(_PAYS[language].format(family_name(focus, language)))
        if at == len(chosen) - 1 and one.effort == most:
            parts.append(_STRETCH[language])
        said.append(tuple(parts))
    return tuple("; ".join(parts) + "." for parts in said)


def _met(before: Candidate, one: Candidate, help_: Help | None, at: int, language: Language) -> str:
    """Return how a problem is met from the one before, the `at`th, without a full stop."""
    if help_ is None:
        return _BY_ITSELF[language].format(at)
    link = _shown(before, one, help_)
    if link.kind is LinkKind.INSIDE_A_WAY:
        return _in_one(link_says(replace(link, numbers=(at, at + 1)), language))
    return _FROM[language].format(at, _in_one(link_says(link, language)))


def _in_one(said: str) -> str:
    """Return what is said as the one sentence it is a part of, without a full stop."""
    return re.sub(r"\. (\w)", lambda start: f"; {start[1].lower()}", said).rstrip(".")


def _shown(before: Candidate, one: Candidate, help_: Help) -> Link:
    """Return the link that a help is. Every help is one (a property in the tests)."""
    found = links((before.problem, one.problem), every=True)
    same = [link for link in found if link.kind is help_.kind]
    return same[0]

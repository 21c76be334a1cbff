"""The questions: each a function from a JSON object to a JSON object."""

from collections.abc import Sequence
from fractions import Fraction

from waysaid.cli.given import (
    BadInputError,
    Given,
    kind_of,
    language_in,
    number_in,
    problem_in,
    problems_in,
    rest_in,
    words_in,
)
from waysaid.drawing import Frame, Picture, Telling, draw, suits, svg
from waysaid.number import (
    Language,
    Problem,
    Said,
    Span,
    answer_text,
    parse_expression,
    parse_said,
    said_text,
    text,
)
from waysaid.slips import slip_note, slip_question, slips
from waysaid.strings import Link, Matched, link_says, links, noticing
from waysaid.ways import (
    Family,
    Way,
    effort_of,
    family_name,
    grades_of,
    how_said,
    way_says,
    ways,
)

MOST_WAYS = 40
"""How many ways are listed without `all`: part of the command's fixed form."""

PICTURES = tuple(picture for picture in Picture if picture is not Picture.WORDS)
"""The pictures that a way can be drawn as; the words alone are none."""

_FRAME = Frame(1600, 800)
"""The room for a drawing: twice as wide as high, our choice."""

Answer = dict[str, object]


def answer_ways(given: Given) -> Answer:
    """Return the ways of `problem`, best first: 40 of them, or every one with `all`.

    What a division leaves is said as `rest` asks; a way told with groups and what is left over
    says so all the same.
    """
    problem, language = problem_in(given), language_in(given)
    rest = rest_in(given)
    found = ways(problem)
    return {
        "problem": text(problem),
        "answer": answer_text(problem, rest=rest),
        "grades": _grades(problem),
        "ways": [
            {
                "family": way.family.value,
                "effort": effort_of(way).tenths / 10,
                "steps": [step.text for step in way.steps],
                "variant": way.variant,
                "name": family_name(way.family, language),
                "said": how_said(way, language),
                "answer": way_says(way, problem, rest),
                "remainder": way.remainder.text if way.remainder else None,
            }
            for way in (found if given.get("all") else chosen(found, MOST_WAYS))
        ],
    }


def _grades(problem: Problem) -> Answer:
    """Return the first and last grade of a problem, and the standard that asks for it."""
    found = grades_of(problem)
    standard = f"{found.standard} ({found.source})"
    return {"first": found.first, "last": found.last, "standard": standard}


def chosen(found: Sequence[Way], most: int) -> tuple[Way, ...]:
    """Return at most `most` ways, in their order.

    The best of each family comes before any other way, then the best of each variant.
    """
    families: set[Family] = set()
    variants: set[tuple[Family, str]] = set()
    ranked = []
    for place, way in enumerate(found):
        variant = (way.family, way.variant)
        ranked.append((way.family in families, variant in variants, place))
        families.add(way.family)
        variants.add(variant)
    return tuple(found[place] for place in sorted(rank[-1] for rank in sorted(ranked)[:most]))


def answer_slips(given: Given) -> Answer:
    """Return what may have led from `problem` to the `wrong` answer."""
    problem, language = problem_in(given), language_in(given)
    wrong = _wrong_in(given)
    return {
        "problem": text(problem),
        "answer": _as_said(given, wrong, problem),
        "slips": [
            {
                "slip": slip.slug.value,
                "likely": slip.likely.value,
                "source": slip.source,
                "steps": [text(equation) for equation in slip.steps],
                "fact": text(slip.fact) if slip.fact is not None else None,
                "note": slip_note(slip, language),
                "question": slip_question(slip, language),
            }
            for slip in slips(problem, wrong)
        ],
    }


def _as_said(given: Given, wrong: Said | Span, problem: Problem) -> str:
    """Return the answer as text, a number in the form it was given in: `6/14`, `2.50`."""
    if isinstance(wrong, int | Fraction):
        return text(parse_expression(str(given["wrong"])))
    return said_text(wrong, problem)


def _wrong_in(given: Given) -> Said | Span:
    """Return the answer of `wrong`: a number, a sign, a word, `5 r 1` or `8000..8400`."""
    said = str(given.get("wrong", ""))
    ends = [parse_said(end) for end in said.split("..")]
    if len(ends) == 2:
        low, high = ends
        if isinstance(low, int | Fraction) and isinstance(high, int | Fraction):
            return Span(low, high)
    return number_in(given, "wrong") if ends[0] is None or len(ends) > 1 else ends[0]


def answer_links(given: Given) -> Answer:
    """Return what connects the `problems`, and the link that the words of `noticed` state."""
    problems, language = problems_in(given), language_in(given)
    answer: Answer = {
        "problems": [text(problem) for problem in problems],
        "links": link_rows(links(problems), language),
    }
    if "noticed" in given:
        matched = noticing(words_in(given, "noticed"), problems, language)
        answer["noticed"] = _noticed_row(matched, language)
    return answer


def _noticed_row(matched: Matched, language: Language) -> Answer:
    """Return a noticing as a JSON object; its link is null where it is kept as said."""
    link = matched.link
    rows = [] if link is None else link_rows([link], language)
    return {
        "words": matched.words,
        "link": rows[0] if rows else None,
        "says": matched.says(language),
    }


def link_rows(found: Sequence[Link], language: Language) -> list[Answer]:
    """Return each link as a JSON object."""
    return [
        {
            "kind": link.kind.value,
            "between": list(link.between),
            "says": link_says(link, language),
            "shows": list(link.shows),
        }
        for link in found
    ]


def answer_draw(given: Given) -> Answer:
    """Return a way of `problem` as SVG: the best one of the family `way`, drawn `as` a picture."""
    problem, language = problem_in(given), language_in(given)
    way = _way(ways(problem), given, text(problem))
    picture = kind_of(Picture, given.get("as", Picture.EQUATIONS), "picture")
    telling = Telling(problem, way.steps, answer=way.number, seen=way.seen)
    suited = [one for one in PICTURES if suits(one, telling)]
    if picture not in suited:
        raise BadInputError(
            f"a {way.family} way of ‘{text(problem)}’ cannot be drawn as {picture};"
            f" these suit it: {', '.join(suited)}."
        )
    return {
        "problem": text(problem),
        "way": way.family.value,
        "variant": way.variant,
        "as": picture.value,
        "svg": svg(draw(picture, telling, _FRAME, language)),
    }


def _way(found: Sequence[Way], given: Given, problem: str) -> Way:
    """Return the best way, of the family `way` where one is given."""
    if not found:
        raise BadInputError(f"no way is known for ‘{problem}’ yet, so none can be drawn.")
    if "way" not in given:
        return found[0]
    family = kind_of(Family, given["way"], "way")
    for way in found:
        if way.family is family:
            return way
    known = ", ".join(dict.fromkeys(way.family.value for way in found))
    raise BadInputError(f"there is no {family} way for ‘{problem}’; there are: {known}.")

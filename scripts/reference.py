"""Write the pages under docs/reference/ that are read off the code, or say which are stale.

`reference.py` writes them; `reference.py --check` writes nothing and exits 1 where one differs.
"""

import argparse
import inspect
import os
import re
import sys
from collections.abc import Callable, Iterable
from dataclasses import fields
from functools import partial
from pathlib import Path
from typing import get_args

from waysaid.cli.command import parser
from waysaid.drawing import Frame, Picture, Telling, draw, suits, svg
from waysaid.number import Language, answer_text, parse, say
from waysaid.slips import Likely, Slip, SlipName, foresee, slip_answer, slip_note, slip_question
from waysaid.strings import Curriculum, Idea, LinkKind, idea_name, ideas_asked, link_says, links
from waysaid.strings.pool import ENOUGH, plain_in, problems_in
from waysaid.strings.starter import GRADES
from waysaid.strings.topic import Topic, topic_name
from waysaid.talk import Body
from waysaid.ways import (
    FAMILY_NOTES,
    SOURCES,
    Family,
    FamilyNote,
    Kind,
    Way,
    family_name,
    grades_of,
    how_said,
    published_names,
    ways,
)

FOLDER = Path(__file__).parent.parent / "docs" / "reference"
DRAWN = (Picture.NUMBER_LINE, *(each for each in Picture if each is not Picture.WORDS))
MADE = "<!-- Made by scripts/reference.py; edit the code, not this page. -->"
SUMS = ("37 + 25", "8 + 9", "62 - 25", "13 - 7", "7 + 26 + 3", "7 + 3", "41 - 38", "6 + 6")
PROBLEMS = (*SUMS, "19 x 7", "14 x 6", "16 x 5", "96 / 6", "3 x 200", "15% of 60")
WRONG = (
    *SUMS,
    "52 - 38",
    "305 - 9",
    "400 - 126",
    "8 + 4 = _ + 5",
    "7 + _ = 12",
    "250 + 7",
    "112 - 1",
    "153 - 27",
    "3 - 8",
    "19 x 7",
    "16 x 5",
    "27 x 6",
    "23 x 14",
    "60 x 40",
    "0 x 8",
    "16 / 3",
    "96 / 4",
    "60 / 12",
    "4 / 12",
    "3 + 4 x 2",
    "2 x (3 + 4)",
    "62 - 25 = 64 - 23 ?",
    "29 + 14 = 30 + 15 ?",
    "8 = 5 + 3 ?",
    "2.5 + 3.12",
    "0.3 x 0.3",
    "2.5 x 10",
    "6 / 0.5",
    "0.65 ? 0.7",
    "0.1 ? 0.24",
    "1/4",
    "1/3 + 1/4",
    "3/5 - 1/2",
    "3/5 + 3/10",
    "about 4/5 + 11/12",
    "1 1/2 + 2 1/4",
    "2 + 3/4",
    "3 1/4 - 1 3/4",
    "2/3 x 4",
    "2/5 x 3/5",
    "3/4 x 1/3",
    "3/4 / 1/3",
    "2/3 of 57",
    "1/4 of 20",
    "1/8 ? 1/4",
    "7/8 ? 2/3",
    "2/3 ? 5/8",
    "9/10 ? 12/13",
    "15% of 80",
    "120% of 50",
    "image frame 10: 7",
    "image dice: 3 2",
    "image array: 3 x 4",
    "about 398 x 21",
)
STRINGS = (
    ("40 + 25", "37 + 25", "37 + 28"),
    ("28 + 36", "30 + 36", "36 + 28", "64 - 28"),
    ("3 + 4", "30 + 40", "6 + 8", "14 + 5"),
    ("25 + 10", "25 + 20", "25 + 30"),
    ("30 + 25", "38 + 25", "40 + 23"),
)


def main() -> int:
    """Write or check every page; return the exit status."""
    arguments = argparse.ArgumentParser(description=__doc__)
    arguments.add_argument("--check", action="store_true")
    check = arguments.parse_args().check
    stale = [name for name, page in PAGES.items() if not _settled(name, page(), check)]
    for name in stale:
        print(f"docs/reference/{name} is stale: run scripts/reference.py.", file=sys.stderr)
    return 1 if stale else 0


def _settled(name: str, page: str, check: bool) -> bool:
    path = FOLDER / name
    if check:
        return path.exists() and path.read_text(encoding="utf-8") == page
    path.parent.mkdir(exist_ok=True)
    path.write_text(page, encoding="utf-8")
    return True


def _page(title: str, about: str, parts: Iterable[str]) -> str:
    return "\n\n".join((f"# {title}", MADE, about, *parts)) + "\n"


def _table(heads: tuple[str, ...], rows: Iterable[tuple[str, ...]]) -> str:
    lines = [heads, tuple("---" for _ in heads), *rows]
    return "\n".join("| " + " | ".join(line) + " |" for line in lines)


def _code(text: str) -> str:
    return f"`{text}`"


def ways_page() -> str:
    """Return the families of ways, each with its names, an example and the steps it is made of."""
    example = {way.family: (given, way) for given in reversed(PROBLEMS) for way in _ways(given)}
    sections = [_family(family, *example[family]) for family in Family]
    kinds = ", ".join(_code(kind.value) for kind in Kind)
    about = f"The families for whole numbers. A step is an equation and a kind: {kinds}."
    return _page("Ways", about, sections)


def _ways(given: str) -> tuple[Way, ...]:
    return tuple(reversed(ways(parse(given))))


def _family(family: Family, given: str, way: Way) -> str:
    steps = ", ".join(step.text for step in way.steps)
    names = ", ".join(family_name(family, language) for language in Language)
    said = how_said(way, Language.EN)
    return (
        f"## [{family.value}](ways/{family.value}.md)\n\n"
        f"Shown as: {names}. For example {given}: {steps}.\n\n> {said}"
    )


def family_page(family: Family) -> str:
    """Return the page of one family: what a child does, examples, where it is met, its names."""
    note = FAMILY_NOTES[family]
    about = f"{note.does(Language.EN)} {_met(note)}"
    parts = [f"![{family.value}]({family.value}.svg)"]
    for given in note.examples:
        way = _of_family(family, given)
        steps = ", ".join(step.text for step in way.steps)
        parts.append(f"**{given}**: {steps}\n\n> {how_said(way, Language.EN)}")
    named = [
        (words.value, each.name, SOURCES[each.source])
        for words, each in published_names(family).items()
    ]
    if named:
        parts.append(_table(("words of", "name", "source"), named))
    if note.leads_to:
        leads = ", ".join(f"[{each.value}]({each.value}.md)" for each in note.leads_to)
        parts.append(f"Leads to: {leads}.")
    return _page(f"{family_name(family, Language.EN)} (`{family.value}`)", about, parts)


def _met(note: FamilyNote) -> str:
    where = "kindergarten" if note.grade == 0 else f"grade {note.grade}"
    return f"First met in {where} ({SOURCES.get(note.source, note.source)})."


def _of_family(family: Family, given: str) -> Way:
    """Return the least effort of the family, one that works with ones only where all do."""
    found = [way for way in ways(parse(given)) if way.family is family]
    return min(found, key=lambda way: any(" x 1 " in step.text for step in way.steps))


def family_drawing(family: Family) -> str:
    """Return the drawing of the family's first example."""
    given = FAMILY_NOTES[family].examples[0]
    way = _of_family(family, given)
    telling = Telling(parse(given), way.steps, answer=way.number)
    picture = next(each for each in DRAWN if suits(each, telling))
    return svg(draw(picture, telling, Frame(800, 360, 55), Language.EN))


KINDS = (
    ("sums and differences", ("37 + 25", "62 - 25", "7 + 26 + 3", "46000 + 38000", "3 - 8")),
    ("products and quotients", ("14 x 6", "84 / 4", "16 / 3", "48 / 4 / 2", "1234 x 56")),
    ("a missing number", ("7 + _ = 12", "_ x 6 = 54", "63 = 70 - _", "8 + 4 = _ + 5")),
    ("true or false", ("29 + 14 = 30 + 13 ?", "8 + 4 = 12 + 5 ?")),
    (
        "quick images",
        ("image frame 10: 7", "image frame 20: 13", "image dice: 3 2", "image array: 3 x 4"),
    ),
    ("fractions", ("3/4 + 3/4", "3/4 + 7/8", "2 1/2 + 1 3/4", "2/3 of 57")),
    ("decimals", ("3.8 + 2.6", "1.4 x 0.6", "4.8 / 0.6")),
    ("percents", ("15% of 80", "12.5% of 80", "150% of 40")),
    ("which is larger", ("0.65 ? 0.7", "3/4 ? 5/8", "37 + 25 ? 38 + 23")),
    ("estimates", ("about 398 x 21", "about 7/8 + 12/13")),
)


def problems_page() -> str:
    """Return every kind of problem as it is typed, with its answer, its words and its grades."""
    heads = ("typed", "answer", "said", "grades", "from")
    sections = [
        f"## {kind}\n\n{_table(heads, [_problem(given) for given in lines])}"
        for kind, lines in KINDS
    ]
    about = (
        "What a teacher may type. `plus`, `times`, `×`, `÷`, `percent` and the like are read too, "
        "and so is Spanish. Spaces round a division: `84 / 4`; without them `3/4` is a fraction. "
        "The grade is the first that a standard asks for such a problem in, and two on "
        "(our choice); K is 0."
    )
    return _page("Problems", about, sections)


def _problem(given: str) -> tuple[str, ...]:
    problem = parse(given)
    grades = grades_of(problem)
    where = f"{grades.standard} ({grades.source})"
    said = say(problem, Language.EN)
    return _code(given), answer_text(problem), said, f"{grades.first} to {grades.last}", where


def slips_page() -> str:
    """Return the slips, each with an example, how likely it is held to be, and its source."""
    example = {slip.slug: (given, slip) for given in reversed(WRONG) for slip in _slips(given)}
    sections = []
    for name in SlipName:
        given, slip = example[name]
        note = slip_note(slip, Language.EN)
        sections.append(
            f"## {name.value}\n\n{slip.likely.value.capitalize()}; source: {slip.source}. "
            f"For example {given} as {slip_answer(slip, parse(given))}: {note}. "
            f"To ask: {slip_question(slip, Language.EN)}{_share(slip)}"
        )
    likely = ", ".join(each.value for each in Likely)
    about = (
        "What may lie behind a wrong answer: a note for the teacher, "
        f"never a finding about a child. Likely is one of {likely}."
    )
    return _page("Slips", about, sections)


def _share(slip: Slip) -> str:
    """Return the published share of such answers, where there is one."""
    if slip.share is None:
        return ""
    low, high = slip.share.low, slip.share.high
    many = f"{low}" if low == high else f"{low} to {high}"
    return f"\n\nPublished: {many} per cent ({slip.share.whom}; {slip.share.source})."


def _slips(given: str) -> tuple:  # type: ignore[type-arg]
    return tuple(reversed(foresee(parse(given))))


def links_page() -> str:
    """Return the kinds of link, each with an example."""
    found = {}
    for string in reversed(STRINGS):
        for link in reversed(links([parse(given) for given in string], every=True)):
            found[link.kind] = (string, link)
    sections = []
    for kind in LinkKind:
        string, link = found[kind]
        between = ", ".join(string[place] for place in link.between)
        shows = ", ".join(link.shows)
        says = link_says(link, Language.EN)
        sections.append(f"## {kind.value}\n\n{between}: {says} ({shows})")
    return _page("Links", "What may connect the problems of a string.", sections)


def events_page() -> str:
    """Return the kinds of event with their parts."""
    sections = []
    for record in get_args(Body):
        parts = [(_code(field.name), _code(_type(field.type))) for field in fields(record)]
        slug = _slug(record.__name__)
        table = "\n\n" + _table(("part", "type"), parts) if parts else ""
        sections.append(f"## {slug}\n\n{inspect.getdoc(record)}{table}")
    about = (
        "What can happen in a talk. Each event carries its client's id and sequence; the server "
        "gives the order. An unknown part or kind is refused with a sentence."
    )
    return _page("Events", about, sections)


def _type(hint: object) -> str:
    name = hint.__name__ if isinstance(hint, type) else str(hint)
    return re.sub(r"\w+\.", "", name).replace("|", "or")


def _slug(name: str) -> str:
    return "".join(f"-{c.lower()}" if c.isupper() else c for c in name).lstrip("-")


def command_page() -> str:
    """Return the help of every command, as the terminal prints it at 80 columns."""
    os.environ["COLUMNS"] = "80"
    whole = parser()
    helps = [f"## waysaid\n\n```\n{whole.format_help()}```"]
    for action in whole._actions:
        if isinstance(action, argparse._SubParsersAction):
            for name, sub in action.choices.items():
                helps.append(f"## waysaid {name}\n\n```\n{sub.format_help()}```")
    about = (
        "`--json` prints one object, exit 0. Bad input prints one line on stderr, exit 2. `--lines "
        "FILE` takes one JSON object a line and answers each in its place; a bad line gives an "
        "object with `error` there, and the exit status is 2 after all lines are done."
    )
    return _page("The command line", about, helps)


def ideas_page() -> str:
    """Return the ideas of a year by the grade of the Common Core, with codes and needs."""
    about = (
        "What a year is made of: each idea is a family of ways at work on one kind of problem. "
        "Grade 0 is kindergarten; a US grade is taken as the English year one higher. Codes that "
        "the list of sources does not have are from memory, and so are the names of England's "
        "domains."
    )
    heads = ("Idea", "English", "Spanish", "Common Core", "England", "Needs")
    sections = [
        f"## Grade {grade}\n\n" + _table(heads, map(_idea_row, ideas_asked(grade, Curriculum.CCSS)))
        for grade in range(7)
    ]
    return _page("Ideas", about, sections)


def _idea_row(idea: Idea) -> tuple[str, ...]:
    names = (idea_name(idea, language) for language in Language)
    codes = (idea.standard(curriculum).code for curriculum in Curriculum)
    return (_code(idea.slug), *names, *codes, ", ".join(idea.needs))


def candidates_page() -> str:
    """Return from how many problems a string is chosen, by its kind and the grade."""
    about = (
        "From how many problems a string of a kind is chosen in a grade. Where those in the form "
        f"that a kind mostly has are fewer than {ENOUGH:,}, the same in other forms are added "
        "(`waysaid/strings/topic_forms.py`): behind the number is then that of those in the usual "
        "form. Where there is no number, no string of the kind is composed."
    )
    heads = ("kind", *(f"grade {grade}" if grade else "kindergarten" for grade in GRADES))
    rows = [
        (topic_name(topic, Language.EN), *(_candidates(grade, topic) for grade in GRADES))
        for topic in Topic
    ]
    return _page("Candidates", about, [_table(heads, rows)])


def _candidates(grade: int, topic: Topic) -> str:
    every, plain = len(problems_in(grade, topic)), len(plain_in(grade, topic))
    if every == plain:
        return f"{every:,}" if every else ""
    return f"{every:,} ({plain:,})"


PAGES: dict[str, Callable[[], str]] = {
    **{f"ways/{each.value}.md": partial(family_page, each) for each in Family},
    **{f"ways/{each.value}.svg": partial(family_drawing, each) for each in Family},
    "problems.md": problems_page,
    "ways.md": ways_page,
    "slips.md": slips_page,
    "links.md": links_page,
    "events.md": events_page,
    "command-line.md": command_page,
    "ideas.md": ideas_page,
    "candidates.md": candidates_page,
}

if __name__ == "__main__":
    sys.exit(main())

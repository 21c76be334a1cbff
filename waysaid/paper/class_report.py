"""What the talks of some weeks came to, for the teacher's own file: in words, judging nobody."""

from collections.abc import Iterator
from dataclasses import dataclass

from waysaid.growth import Standing, caution, invite_says, standing_rule
from waysaid.number import Language
from waysaid.paper.parts import Caution, Heading, Names, Paper, Part, Points, Table, Words
from waysaid.paper.words import PaperWords, paper_words


@dataclass(frozen=True, slots=True)
class TalkReported:
    """A talk that was held: its day in words, and its problems as paper shows them."""

    day: str
    problems: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class FamilyReported:
    """A family that the class used: its name, first and last time, and how often, all in words."""

    name: str
    first: str
    last: str
    heard: str


@dataclass(frozen=True, slots=True)
class VoiceReported:
    """A child who was heard, and the day of the last time in words."""

    name: str
    last: str


@dataclass(frozen=True, slots=True)
class ClassReport:
    """The talks of a class between two days; every text ready in the report's language.

    `nobody` are families that the problems invited and nobody brought; `noticed` the sentences of
    children with who and when; `heard` and `unheard` stand in the order of the class list.
    """

    class_name: str
    first: str
    last: str
    language: str
    talks: tuple[TalkReported, ...] = ()
    families: tuple[FamilyReported, ...] = ()
    nobody: tuple[str, ...] = ()
    noticed: tuple[str, ...] = ()
    heard: tuple[VoiceReported, ...] = ()
    unheard: tuple[str, ...] = ()


def class_report(report: ClassReport) -> Paper:
    """Return the report as a paper; its cautions stand before everything else."""
    language = Language(report.language)
    words = paper_words("report", language)
    parts: tuple[Part, ...] = (Caution(f"{words['own']} {caution(language)}"),)
    if report.talks:
        parts += (*_of_talks(report, words), *_of_ways(report, words), *_of_voices(report, words))
    else:
        parts += (Words(words["none"]),)
    under = words["span"].format(report.first, report.last)
    return Paper(words["title"].format(report.class_name), under, report.language, parts)


def _of_talks(report: ClassReport, words: PaperWords) -> Iterator[Part]:
    yield Heading(words["talks"])
    rows = tuple((talk.day, " · ".join(talk.problems)) for talk in report.talks)
    yield Table((words["day"], words["problems"]), (2, 5), rows)
    if report.noticed:
        yield Heading(words["noticed"])
        yield Points(report.noticed)


def _of_ways(report: ClassReport, words: PaperWords) -> Iterator[Part]:
    if report.families:
        yield Heading(words["families"])
        heads = tuple(words[each] for each in ("family", "first", "last", "heard_in"))
        rows = tuple((each.name, each.first, each.last, each.heard) for each in report.families)
        yield Table(heads, (4, 8, 7, 6), rows)
    if report.nobody:
        yield Heading(words["nobody"], 3)
        yield Words(standing_rule(Standing.NOBODY, Language(report.language)))
        yield Points(report.nobody)


def _of_voices(report: ClassReport, words: PaperWords) -> Iterator[Part]:
    if report.heard:
        yield Heading(words["voices"])
        yield Words(words["order"])
        rows = tuple((each.name, each.last) for each in report.heard)
        yield Table((words["name"], words["last_heard"]), (2, 5), rows)
    if report.unheard:
        yield Heading(words["unheard"])
        yield Words(invite_says(Language(report.language)))
        yield Names(report.unheard)

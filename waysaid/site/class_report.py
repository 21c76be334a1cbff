"""The report over a class's talks between two days: from what they showed to words."""

from collections.abc import Iterable, Iterator, Sequence
from datetime import date, datetime, time, timedelta

from babel.dates import format_date
from django.utils import timezone, translation

from waysaid.growth import (
    ClassPicture,
    Held,
    Past,
    Standing,
    class_picture,
    past_of,
    times_said,
    voices,
)
from waysaid.number import Language
from waysaid.paper import (
    ClassReport,
    FamilyReported,
    TalkReported,
    VoiceReported,
    problem_on_paper,
)
from waysaid.site.around import OnList, on_list
from waysaid.site.evidence import held_of
from waysaid.site.models import SchoolClass, Talk
from waysaid.site.templatetags.pages import DAYS, day
from waysaid.site.wording import Wording, wording_of

HALF_TERM = timedelta(weeks=6)
"""How far back a report reaches that nobody asked otherwise: about half a term (our choice)."""


def half_term() -> tuple[date, date]:
    """Return the days between which a report is made where none are asked for."""
    today = timezone.localdate()
    return today - HALF_TERM, today


def report_of(school_class: SchoolClass, first: date, last: date) -> ClassReport:
    """Return the report over the talks from the first day to the last, both with them."""
    wording, listed = wording_of(school_class), on_list(school_class)
    held = list(_held(school_class, first, last))
    past = past_of(held)
    heard, unheard = _voices(past, listed, wording.language)
    picture = class_picture(past)
    with translation.override(wording.language.value):
        return ClassReport(
            class_name=school_class.name,
            first=_dated(first, wording.language),
            last=_dated(last, wording.language),
            language=wording.language.value,
            talks=tuple(
                TalkReported(day(talk.day), _whole(talk.problems, wording.language))
                for talk in past.talks
            ),
            families=tuple(_families(picture, wording)),
            nobody=_nobody(picture, wording),
            noticed=tuple(_noticed(held, {each.key: each.name for each in listed})),
            heard=heard,
            unheard=unheard,
        )


def _dated(when: date, language: Language) -> str:
    """Return a day with its year, whichever it is: the report is kept."""
    return format_date(when, DAYS[language.value][1], locale=language.value)


def _whole(problems: Iterable[str], language: Language) -> tuple[str, ...]:
    """Return problems as paper shows them, each kept on one line."""
    return tuple(problem_on_paper(each, language).replace(" ", "\u00a0") for each in problems)


def _held(school_class: SchoolClass, first: date, last: date) -> Iterator[Held]:
    start, end = (
        timezone.make_aware(datetime.combine(each, time()))
        for each in (first, last + timedelta(days=1))
    )
    talks = Talk.objects.filter(school_class=school_class, made_at__gte=start, made_at__lt=end)
    yield from map(held_of, talks.select_related("plan").order_by("made_at", "pk"))


def _families(picture: ClassPicture, wording: Wording) -> Iterator[FamilyReported]:
    language = wording.language
    for use in picture.families:
        if use.brought is not None:
            (problem,) = _whole([use.brought.problem], language)
            yield FamilyReported(
                name=wording.name(use.family),
                first=f"{day(use.brought.day)}, {problem}",
                last=day(use.last),
                heard=times_said(use.told, len(use.talks), language),
            )


def _nobody(picture: ClassPicture, wording: Wording) -> tuple[str, ...]:
    return tuple(wording.name(use.family) for use in picture.standing(Standing.NOBODY))


def _noticed(held: Sequence[Held], names: dict[str, str]) -> Iterator[str]:
    for talk in held:
        for each in talk.state.noticings:
            if each.words:
                by = [names.get(each.child or "", ""), day(talk.day)]
                yield f"“{each.words}” ({', '.join(one for one in by if one)})"


def _voices(
    past: Past, listed: Sequence[OnList], language: Language
) -> tuple[tuple[VoiceReported, ...], tuple[str, ...]]:
    """Return who was heard, and who is in the class and was not, in the order of the list."""
    told = dict(zip(listed, voices(past, [each.key for each in listed]), strict=True))
    heard = tuple(
        VoiceReported(child.name, day(voice.last, language.value))
        for child, voice in told.items()
        if voice.last is not None
    )
    quiet = (child for child, voice in told.items() if voice.last is None and child.active)
    return heard, tuple(child.name for child in quiet)

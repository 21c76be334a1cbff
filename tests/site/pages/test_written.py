"""A talk held on paper becomes a past talk; a bad line loses nothing and keeps nothing."""

import importlib.util
from datetime import date, timedelta
from pathlib import Path

import pytest
from django.db import OperationalError
from django.utils import timezone

from waysaid.number import parse
from waysaid.site.models import EventRow, Plan, Talk
from waysaid.site.planning import row_of
from waysaid.site.record import at_hand
from waysaid.site.views import pages_written
from waysaid.talk import Phase

TOLD = "Aroha, 39+1=40+26\n= Bram, Chidi\nDunya & Elif, 30+20 9+7 50+16\n\nBram, 56\n"
TEN = (
    "Ar, 39+1=40+26=66",
    "Br, 30+20 9+7 50+16=66",
    "= Ch, Du",
    "El, +1 40 +26 66",
    "Ch, 40+27=67-1=66",
    "Du, 39+20=59+7=66",
    "Br, 66",
    "Ar & El, 40+26=66",
    "Ch, 39+7=46+20=66",
    "Du, 30+20 9+7 50+6",
    "El, I took one from 27",
)
"""Ten ways and more, as they come in a talk; invented."""
FIVE_MINUTES = 300


@pytest.fixture
def plan(cast):
    rows = [row_of(parse(each)) for each in ("40 + 26", "39 + 27")]
    return Plan.objects.create(school_class=cast.school_class, title="Thursday", problems=rows)


def typed(plan, first="", second="", **changed):
    ids = [row["id"] for row in plan.problems]
    day = timezone.localdate().isoformat()
    lines = {f"lines-{ids[0]}": first, f"lines-{ids[1]}": second}
    return {**lines, "noticed": "", "day": day, "do": "save", "mark": "m" * 16, **changed}


def keep(cast, plan, *lines, **changed):
    return cast.owner.post(f"/plans/{plan.pk}/written", typed(plan, *lines, **changed))


def kept(answer):
    """Return the talk that an answer leads to, and its state."""
    assert answer.status_code == 302, answer.text
    talk = Talk.objects.get(pk=answer.headers["Location"].split("/")[2])
    return talk, at_hand(talk.pk).state


def names(cast, keys):
    listed = {child.key: child.name for child in cast.school_class.children.all()}
    return [listed.get(key, "") for key in keys]


def test_lines_become_a_past_talk_in_the_order_they_were_typed(cast, plan):
    day = timezone.localdate() - timedelta(days=3)
    answer = keep(cast, plan, "", TOLD, noticed="Elif, one went across", day=day.isoformat())
    talk, state = kept(answer)
    assert timezone.localtime(talk.made_at).date() == day
    assert state.closed
    assert [state.problem(each).text for each in state.shown] == ["39 + 27"]
    first, second = state.ways
    assert names(cast, [first.child, *first.agreed]) == ["Aroha", "Bram", "Chidi"]
    assert names(cast, [second.child, *second.agreed]) == ["Dunya", "Elif"]
    assert (first.family, second.family) == ("bridge", "split")
    assert first.words == "39+1=40+26"
    assert first.answer is None
    assert [each.text for each in state.answers] == ["56"]
    assert [each.words for each in state.noticings] == ["one went across"]


def test_it_is_looked_back_on_like_any_other(cast, plan):
    talk, _state = kept(keep(cast, plan, "", TOLD))
    page = cast.owner.get(f"/talks/{talk.pk}/back").text
    assert "Aroha told a way of 39 + 27" in page
    assert cast.owner.get(f"/talks/{talk.pk}/chart.pdf").status_code == 200
    assert "39 + 27" in cast.owner.get("/talks/").text


def test_events_are_such_as_a_desk_sends(cast, plan):
    talk, _state = kept(keep(cast, plan, "Aroha, pass", TOLD, noticed=", up"))
    kinds = [row.kind for row in EventRow.objects.filter(talk=talk).order_by("order")]
    assert kinds == [
        "talk-opened", "problem-shown", "passed", "problem-shown", "way-shared", "way-agreed",
        "way-agreed", "way-shared", "way-agreed", "answer-heard", "phase-set", "noticed", "closed",
    ]  # fmt: skip
    assert at_hand(talk.pk).state.phase is Phase.AFTER or at_hand(talk.pk).state.closed


def test_typing_counts_as_no_time_to_think(cast, plan):
    talk, _state = kept(keep(cast, plan, "", TOLD))
    assert len({row.received_at for row in EventRow.objects.filter(talk=talk)}) == 1


def test_words_that_are_no_steps_are_kept_as_they_were_said(cast, plan):
    _talk, state = kept(keep(cast, plan, "", "Aroha, I just saw it"))
    assert (state.ways[0].words, state.ways[0].steps) == ("I just saw it", ())


def test_same_as_a_child_is_the_last_way_of_hers(cast, plan):
    lines = "Aroha, 39+1=40+26\nBram, 30+20 9+7 50+16\nChidi, same as Aroha\nElif, same"
    _talk, state = kept(keep(cast, plan, "", lines))
    assert [names(cast, way.agreed) for way in state.ways] == [["Chidi"], ["Elif"]]


@pytest.mark.parametrize(
    ("line", "sentence"),
    [
        ("Arohha, 39+1", "No child of the class is called “Arohha”"),
        ("= Bram", "No way stands above"),
        ("Bram, same as Elif", "No way of Elif stands above"),
        ("Elif", "After “Elif” stands nothing"),
    ],
)
def test_a_bad_line_keeps_nothing_and_loses_nothing(cast, plan, line, sentence):
    before = Talk.objects.count()
    answer = keep(cast, plan, "", f"{line}\nAroha, 39+1=40+26", noticed="Elif, up")
    assert answer.status_code == 400
    assert Talk.objects.count() == before
    for shown in (line, "Aroha, 39+1=40+26", "Elif, up", sentence, "39 + 1 = 40"):
        assert shown in answer.text
    assert answer.text.count('class="wrong-line"') == 1


@pytest.mark.parametrize("day", ["", "soon", "2026-13-01", "9999-01-01"])
def test_a_day_that_is_none_or_to_come_is_one_sentence(cast, plan, day):
    answer = keep(cast, plan, "", TOLD, day=day)
    assert answer.status_code == 400
    assert "The day of the talk takes a day up to today." in answer.text
    assert "Dunya &amp; Elif" in answer.text


def test_nothing_typed_is_no_talk(cast, plan):
    assert "Type at least one line" in keep(cast, plan).text
    assert "at most 60 lines" in keep(cast, plan, "Aroha, 66\n" * 61).text


def test_kept_twice_from_one_page_it_is_one_talk(cast, plan):
    one, _ = kept(keep(cast, plan, "", TOLD))
    again, _ = kept(keep(cast, plan, "", TOLD))
    other, _ = kept(keep(cast, plan, "", TOLD, mark="n" * 16))
    assert one == again != other
    asked = cast.owner.post(f"/plans/{plan.pk}/written.json", typed(plan)).json()
    assert asked["kept"] is True


def test_a_disk_that_refuses_gives_the_page_back_with_all_that_was_typed(cast, plan, monkeypatch):
    def refuse(*_given):
        raise OperationalError("database or disk is full")

    monkeypatch.setattr(pages_written, "keep_written", refuse)
    answer = keep(cast, plan, "", TOLD)
    assert answer.status_code == 507
    assert "disk is full" in answer.text
    assert "Dunya &amp; Elif" in answer.text


def test_checking_shows_the_readings_and_keeps_nothing(cast, plan):
    before = Talk.objects.count()
    answer = keep(cast, plan, "", TOLD, do="check")
    assert answer.status_code == 200
    assert "Aroha: 39 + 1 = 40, 40 + 26" in answer.text
    assert Talk.objects.count() == before


def test_lines_are_read_while_they_are_typed(cast, plan):
    path = f"/plans/{plan.pk}/written.json"
    given = cast.owner.post(path, typed(plan, "", TOLD, noticed="Zed, up")).json()
    assert given["kept"] is False
    given = given["sections"]
    read = given[plan.problems[1]["id"]]
    assert [line["number"] for line in read["lines"]] == [1, 2, 3, 5]
    assert read["lines"][1]["says"] == "Bram, Chidi: the same as the way above"
    assert given["noticed"]["lines"][0]["wrong"] is True
    assert given["noticed"]["sum"] == "1 line, 1 needs a look"


def test_a_plan_of_another_is_not_there(cast, plan):
    for path in (f"/plans/{plan.pk}/written", f"/plans/{plan.pk}/written.json"):
        assert cast.colleague.post(path, typed(plan, "", TOLD)).status_code == 404
        assert cast.outsider.post(path, typed(plan, "", TOLD)).status_code == 403


def test_without_a_plan_its_problems_are_typed_first(cast, plan):
    assert f"/plans/{plan.pk}/written" in cast.owner.get("/talks/written").text
    answer = cast.owner.post("/talks/written", {"problems": "6 + 7\n7 + 7"})
    assert answer.headers["Location"].endswith("/written")
    assert "7 + 7" in cast.owner.get(answer.headers["Location"]).text
    for wrong in ("", "6 plus", "1+1\n" * 13):
        answer = cast.owner.post("/talks/written", {"problems": wrong})
        assert answer.status_code == 400
        assert 'id="wrong"' in answer.text


def test_ten_ways_are_typed_in_under_five_minutes_and_kept_with_one_save(cast, plan):
    _talk, state = kept(keep(cast, plan, "", "\n".join(TEN)))
    told = sum(1 + len(way.agreed) for way in state.ways)
    assert told >= 10
    cost = _typing_cost()
    keys = [len(line) + sum(sign in cost.SHIFTED for sign in line) + 1 for line in TEN]
    per_way = sum(keys) / told
    seconds = sum(keys) * cost.K_SIGNS + len(TEN) * cost.M + cost.H + cost.TAP
    assert per_way < 20
    assert seconds < FIVE_MINUTES / 2, "the other half is for reading the sheet"


def _typing_cost():
    path = Path(__file__).parents[3] / "scripts" / "typing_cost.py"
    spec = importlib.util.spec_from_file_location("typing_cost", path)
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


def test_the_day_is_the_plans_where_it_is_not_to_come(cast, plan):
    for made_for in (date(2026, 1, 5), date(9999, 1, 1)):
        plan.made_for = made_for
        plan.save()
        day = min(made_for, timezone.localdate()).isoformat()
        assert f'value="{day}"' in cast.owner.get(f"/plans/{plan.pk}/written").text

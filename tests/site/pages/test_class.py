"""The class: names, what hangs round the board, what is kept and what may go."""

import io

import pytest
from django.core.files.uploadedfile import SimpleUploadedFile
from PIL import Image

from tests.site.made import NAMES, answer, child_id, problem_id, sent, way
from waysaid.site.models import Child, EventRow, Picture, SchoolClass
from waysaid.site.record import at_hand


def names(cast, **wanted):
    children = cast.school_class.children.filter(**(wanted or {"active": True}))
    return list(children.values_list("name", flat=True))


def do(cast, button, **fields):
    return cast.owner.post("/class", {"do": button, **fields})


def picture_file(size=(40, 30)):
    file = io.BytesIO()
    Image.new("RGB", size, "navy").save(file, "PNG")
    return SimpleUploadedFile("p.png", file.getvalue())


def test_names_are_added_behind_and_told_apart(cast):
    do(cast, "add", names="Bram\nZora")
    assert names(cast) == [*NAMES, "Bram (2)", "Zora"]


def test_a_name_is_changed_whatever_button_is_pressed(cast):
    child = cast.school_class.children.get(name="Bram")
    do(cast, f"down:{child.pk}", **{f"name-{child.pk}": "Bram K."})
    assert names(cast) == ["Aroha", "Chidi", "Bram K.", "Dunya", "Elif"]


def test_two_children_may_change_names(cast):
    one, other = cast.school_class.children.filter(name__in=("Bram", "Elif"))
    do(cast, "save", **{f"name-{one.pk}": "Elif", f"name-{other.pk}": "Bram"})
    assert names(cast) == ["Aroha", "Elif", "Chidi", "Dunya", "Bram"]


def test_two_of_one_name_are_refused_and_what_was_typed_stays(cast):
    child = cast.school_class.children.get(name="Bram")
    page = do(cast, "save", **{f"name-{child.pk}": "elif"})
    assert page.status_code == 400
    assert 'value="elif"' in page.text
    assert names(cast) == list(NAMES)


def test_a_child_leaves_and_comes_back(cast):
    child = child_id(cast.school_class)
    do(cast, f"leave:{child}")
    assert "Bram" not in names(cast)
    do(cast, f"return:{child}")
    assert "Bram" in names(cast)


def test_names_are_sorted(cast):
    do(cast, "add", names="Abel")
    do(cast, "sort")
    assert names(cast)[0] == "Abel"


def test_the_first_name_cannot_go_further_up(cast):
    do(cast, f"up:{child_id(cast.school_class, 'Aroha')}")
    assert names(cast) == list(NAMES)


def test_a_colleagues_child_is_not_touched(cast):
    other = Child.objects.exclude(school_class=cast.school_class).get(name="Bram")
    do(cast, f"leave:{other.pk}", **{f"name-{other.pk}": "X"})
    other.refresh_from_db()
    assert (other.name, other.active) == ("Bram", True)


def test_the_languages_of_desk_and_board_are_set_apart(cast):
    do(cast, "languages", name="2C", language="es", board_language="en")
    cast.school_class.refresh_from_db()
    assert cast.school_class.name == "2C"
    assert '<html lang="es">' in cast.owner.get("/class").text


@pytest.mark.parametrize(("chosen", "kept"), [("0", 0), ("3", 3), ("", None), ("9", None)])
def test_a_grade_of_the_class_is_kept_if_it_is_one(cast, chosen, kept):
    do(cast, "languages", name="2B", language="en", board_language="en", grade="1")
    do(cast, "languages", name="2B", language="en", board_language="en", grade=chosen)
    cast.school_class.refresh_from_db()
    assert cast.school_class.grade == kept


@pytest.mark.parametrize("page", ["/start", "/starters"])
def test_first_problems_and_starters_are_of_the_grade_of_the_class(cast, page):
    do(cast, "languages", name="2B", language="en", board_language="en", grade="3")
    assert '<a href="?grade=3" aria-current="true">' in cast.owner.get(page).text
    assert '<a href="?grade=0" aria-current="true">' in cast.owner.get(f"{page}?grade=0").text
    assert '<a href="?grade=3" aria-current="true">' in cast.owner.get(page).text


def board(cast, button="save", **fields):
    return cast.owner.post("/class/board", {"do": button, **fields})


def test_signals_are_renamed_added_moved_and_taken_away(cast):
    board(cast, **{"word-0": "thinking", "icon-0": "question"})
    board(cast, "add")
    board(cast, "up:4")
    board(cast, "remove:0")
    cast.school_class.refresh_from_db()
    words = [signal["word"] for signal in cast.school_class.signals]
    assert words == ["I have a way", "I agree", "a new signal", "another way"]


def test_there_are_never_more_than_six_signals_and_there_may_be_none(cast):
    for _time in range(5):
        board(cast, "add")
    cast.school_class.refresh_from_db()
    assert len(cast.school_class.signals) == 6
    for _time in range(6):
        board(cast, "remove:0")
    cast.school_class.refresh_from_db()
    assert cast.school_class.signals == []
    assert cast.owner.get("/class/board").status_code == 200


def test_a_signal_gets_its_own_picture_and_loses_it_again(cast):
    board(cast, **{"picture-1": picture_file()})
    cast.school_class.refresh_from_db()
    kept = Picture.objects.get(pk=cast.school_class.signals[1]["picture"])
    assert kept.content_type == "image/webp"
    board(cast, "no-picture:1")
    assert not Picture.objects.exists()


def test_what_is_no_picture_is_refused_and_what_was_typed_stays(cast):
    bad = SimpleUploadedFile("p.png", b"<svg onload=alert(1)>")
    page = board(cast, **{"word-0": "hm", "picture-0": bad})
    assert page.status_code == 400
    assert 'value="hm"' in page.text
    assert not Picture.objects.exists()


def test_a_background_comes_is_replaced_and_goes(cast):
    board(cast, background=picture_file())
    board(cast, background=picture_file((50, 50)))
    assert Picture.objects.get().width == 50
    board(cast, "no-background")
    assert not Picture.objects.exists()


def test_norms_and_starters_are_kept_one_a_line(cast):
    board(cast, norms="We wait.\n\n We listen. ", starters="I see …")
    cast.school_class.refresh_from_db()
    assert cast.school_class.norms == ["We wait.", "We listen."]
    assert cast.school_class.starters == ["I see …"]


def said(cast, child):
    problem = problem_id(cast.talk)
    events = sent(way(problem, child, 1), answer(problem, "70", 2, child=child))
    path = f"/talks/{cast.talk.pk}/events"
    assert cast.owner.post(path, events, content_type="application/json").status_code == 200


def test_the_record_has_everything_of_the_class_and_nothing_of_another(cast):
    said(cast, child_id(cast.school_class))
    given = cast.owner.get("/class/record.json")
    assert given.headers["Content-Disposition"].startswith("attachment")
    record = given.json()
    assert [each["name"] for each in record["children"]] == list(NAMES)
    kinds = [event["kind"] for event in record["talks"][0]["events"]]
    assert kinds == ["talk-opened", "problem-shown", "way-shared", "answer-heard"]
    assert record["class"]["name"] == "2B"


@pytest.mark.parametrize(("what", "ways"), [("name", 1), ("all", 0)])
def test_a_child_goes_and_what_was_said_stays_nameless_or_goes_too(cast, what, ways):
    child = child_id(cast.school_class)
    said(cast, child)
    assert "Bram" in cast.owner.get(f"/class/child/{child}/forget").text
    cast.owner.post(f"/class/child/{child}/forget", {"what": what})
    assert "Bram" not in names(cast)
    state = at_hand(cast.talk.pk).state
    assert [each.child for each in state.ways] == [None] * ways
    assert not EventRow.objects.filter(body__child=child).exists()
    assert "Bram" not in cast.owner.get("/class/record.json").text


def test_the_class_goes_only_when_its_name_is_typed(cast):
    assert cast.owner.post("/class/forget", {"name": "3A"}).status_code == 400
    assert cast.owner.post("/class/forget", {"name": "2b"}).status_code == 302
    assert list(SchoolClass.objects.values_list("name", flat=True)) == ["3A"]
    assert not EventRow.objects.exists()


def test_a_colleague_can_take_nothing_away(cast):
    child = child_id(cast.school_class)
    assert cast.colleague.post(f"/class/child/{child}/forget").status_code == 404
    assert "Bram" in names(cast)


def test_deleted_names_are_gone_from_the_data_file_itself(serve, tmp_path):
    server = serve(WAYSAID_DATABASE_URL="")
    person = server.teacher()
    person.get("/welcome")
    person.send_form("/welcome", name="2B", names="Zzyzxa\nBen", language="en")
    person.get("/class/child/1/forget")
    assert person.send_form("/class/child/1/forget", what="name").status == 302
    left = b"".join(path.read_bytes() for path in (tmp_path / "data").glob("waysaid.sqlite3*"))
    assert b"Ben" in left
    assert b"Zzyzxa" not in left

"""A page for each family of ways, and the names a class has for them."""

import pytest

from waysaid.number import Language
from waysaid.site.wording import Wording, wording_of
from waysaid.ways import Family, Vocabulary


@pytest.mark.parametrize("family", Family)
def test_every_family_has_a_page_with_an_example(cast, family):
    page = cast.owner.get(f"/ways/{family.value}")
    assert page.status_code == 200
    assert b"way-name" in page.content


def test_an_unknown_family_has_none(cast):
    assert cast.owner.get("/ways/levelling").status_code == 404


def test_a_school_s_vocabulary_names_the_families(cast):
    cast.owner.post("/class/words", {"words": "australia"})
    cast.school_class.refresh_from_db()
    assert wording_of(cast.school_class).name(Family.GIVE_AND_TAKE) == "levelling"
    assert b"levelling" in cast.owner.get("/class/words").content


def test_a_class_s_own_name_comes_before_any_other(cast):
    cast.owner.post(
        "/class/words", {"words": "australia", "own-give-and-take": " the  Wednesday way "}
    )
    cast.school_class.refresh_from_db()
    assert wording_of(cast.school_class).name(Family.GIVE_AND_TAKE) == "the Wednesday way"
    assert b"the Wednesday way" in cast.owner.get("/ways/give-and-take").content
    cast.owner.post("/class/words", {"words": "australia"})
    cast.school_class.refresh_from_db()
    assert wording_of(cast.school_class).name(Family.GIVE_AND_TAKE) == "levelling"


def test_an_unknown_vocabulary_changes_nothing_and_says_so(cast):
    page = cast.owner.post("/class/words", {"words": "mars"})
    assert page.status_code == 400
    cast.school_class.refresh_from_db()
    assert wording_of(cast.school_class) == Wording(Language.EN, Vocabulary.OURS)


def test_a_name_kept_wrongly_on_disk_counts_as_none(cast):
    cast.school_class.words, cast.school_class.own_names = "mars", ["x"]
    assert wording_of(cast.school_class) == Wording(Language.EN)

"""An invitation: for one account, once, for a while; and what is taken back is gone."""

import re
from datetime import timedelta

import pytest
from django.contrib.auth.models import User
from django.utils import timezone

from waysaid.site import sharing
from waysaid.site.people_models import Invitation, Member
from waysaid.site.sharing import LIFE, MOST, NotSharedError, invite
from waysaid.site.views import pages_share


@pytest.fixture
def server(cast, monkeypatch):
    """The cast on a school's server."""
    for module in (sharing, pages_share):
        monkeypatch.setattr(module, "can_share", lambda: True)
    return cast


def invited(server, part="co-teacher", account="colleague"):
    page = server.owner.post("/class/share", {"do": "invite", "account": account, "part": part})
    assert page.status_code == 200
    return re.search(r'value="(/invited/[^"]+)"', page.text)[1]


def test_the_address_says_what_the_part_sees_and_gives_it_once(server):
    address = invited(server)
    page = server.colleague.get(address)
    assert "co-teacher" in page.text
    assert "not the class list" in page.text
    assert not Member.objects.exists()
    assert server.colleague.post(address, {"do": "accept"}).status_code == 302
    assert Member.objects.get().part == "co-teacher"
    assert server.colleague.post(address, {"do": "accept"}).status_code == 404
    desk = f"/talks/{server.talk.pk}/desk"
    assert server.colleague.get(desk).status_code == 200


def test_the_address_works_for_no_other_account_and_only_a_hash_is_kept(server):
    address = invited(server, account="Somebody Else")
    assert server.colleague.get(address).status_code == 404
    assert server.colleague.post(address, {"do": "accept"}).status_code == 404
    assert not Member.objects.exists()
    assert Invitation.objects.get().token_hash not in address


def test_the_accounts_name_may_be_written_in_any_case(server):
    assert server.colleague.get(invited(server, account=" Colleague ")).status_code == 200


def test_an_invitation_ends_by_itself_when_withdrawn_and_when_declined(server):
    address = invited(server)
    Invitation.objects.update(expires_at=timezone.now() - timedelta(seconds=1))
    assert server.colleague.get(address).status_code == 404
    address = invited(server)
    row = Invitation.objects.get().pk
    server.owner.post("/class/share", {"do": f"invitation:{row}"})
    assert server.colleague.get(address).status_code == 404
    address = invited(server)
    server.colleague.post(address, {"do": "decline"})
    assert server.colleague.get(address).status_code == 404
    assert not Member.objects.exists()
    assert timedelta(days=1) < LIFE < timedelta(days=31)


def test_what_is_taken_back_is_gone_and_known_boards_open_nothing(server):
    server.colleague.post(invited(server, "visitor"), {"do": "accept"})
    boards = f"/shared/{server.school_class.pk}/boards"
    board = re.search(r'href="(/board/[^"]+)"', server.colleague.get(boards).text)[1]
    assert server.colleague.get(board).status_code == 200
    server.owner.post("/class/share", {"do": f"member:{Member.objects.get().pk}"})
    assert server.colleague.get(board).status_code == 404
    assert server.colleague.get(boards).status_code == 404
    assert server.owner.get(f"/talks/{server.talk.pk}/desk").status_code == 200


@pytest.mark.parametrize(
    ("account", "part"),
    [("", "coach"), ("x" * 151, "coach"), ("colleague", "owner"), ("OWNER", "teacher")],
)
def test_what_cannot_be_is_one_sentence_and_changes_nothing(server, account, part):
    page = server.owner.post("/class/share", {"do": "invite", "account": account, "part": part})
    assert page.status_code == 400
    assert 'role="alert"' in page.text
    assert not Invitation.objects.exists()


def test_a_class_has_only_so_many_colleagues(server):
    for at in range(MOST):
        invite(server.school_class, f"c{at}", "coach")
    with pytest.raises(NotSharedError):
        invite(server.school_class, "one more", "coach")


def test_one_machine_says_that_there_is_nobody_to_invite(cast):
    page = cast.owner.get("/class/share")
    assert "one account" in page.text
    assert 'name="account"' not in page.text
    asked = {"do": "invite", "account": "colleague", "part": "coach"}
    assert cast.owner.post("/class/share", asked).status_code == 404
    assert not Invitation.objects.exists()


def test_a_colleague_without_a_class_of_her_own_starts_at_what_is_shared(server):
    newcomer = User.objects.create(username="newcomer")
    Member.objects.create(school_class=server.school_class, person=newcomer, part="coach")
    server.outsider.force_login(newcomer)
    assert server.outsider.get("/").headers["Location"] == "/shared"
    assert server.school_class.name in server.outsider.get("/shared").text


def test_another_part_takes_the_place_of_the_one_before(server):
    server.colleague.post(invited(server, "visitor"), {"do": "accept"})
    boards = f"/shared/{server.school_class.pk}/boards"
    board = re.search(r'href="(/board/[^"]+)"', server.colleague.get(boards).text)[1]
    server.colleague.post(invited(server, "coach"), {"do": "accept"})
    assert Member.objects.get().part == "coach"
    assert server.colleague.get(board).status_code == 404
    assert server.colleague.get(boards).status_code == 404


def test_a_co_teachers_class_page_is_what_the_class_showed(server):
    server.colleague.post(invited(server), {"do": "accept"})
    server.colleague.post("/class/choose", {"class": server.school_class.pk})
    went = server.colleague.get("/class")
    assert went.status_code == 302
    assert "Bram" in server.colleague.get(went.headers["Location"]).text
    assert server.colleague.post("/class", {"do": "add", "names": "Zora"}).status_code == 403
    assert not server.school_class.children.filter(name="Zora").exists()

"""A colleague's part in a class: invite by a one-time address, accept, take back."""

from dataclasses import dataclass
from datetime import timedelta

from django.conf import settings
from django.contrib.auth.models import User
from django.db import transaction
from django.utils import timezone
from django.utils.functional import Promise
from django.utils.translation import gettext_lazy as _

from waysaid.site.hub import HUB
from waysaid.site.models import SchoolClass, Talk, hashed, new_token
from waysaid.site.people_models import Invitation, Member, Part
from waysaid.site.rights import Act, may

LIFE = timedelta(days=7)
"""How long an invitation waits to be accepted (our choice: a school week and its weekend)."""
LONGEST_ACCOUNT = 150
MOST = 40
"""Colleagues and waiting invitations of one class together (our choice)."""
SEES: dict[str, Promise] = {
    Part.TEACHER: _(
        "everything you can: talks, plans, names, what children said, exporting, deleting, inviting"
    ),
    Part.CO_TEACHER: _(
        "the desk, plans, the year, and looking back with names; "
        "not the class list, exporting, deleting or inviting"
    ),
    Part.VISITOR: _("the boards of talks that are open, and nothing else"),
    Part.COACH: _("counts without names, of half-terms that are over, and nothing else"),
}
"""What each part may see, in a sentence; `waysaid.site.rights` is what holds."""


class NotSharedError(ValueError):
    """Raised where an invitation cannot be made or taken; its text says why, for a person."""


@dataclass(frozen=True, slots=True)
class Shared:
    """A class that somebody shares, and one's part in it."""

    school_class: SchoolClass
    part: Part
    sees: str

    @property
    def teaches(self) -> bool:
        """Tell whether the part includes the desk."""
        return may(self.part, Act.TEACH)


def can_share() -> bool:
    """Tell whether there are accounts to share with: on a school's server alone."""
    return bool(settings.SCHOOL_SERVER)


def shared_with(person: User) -> list[Shared]:
    """Return the classes shared with a person."""
    members = Member.objects.filter(person=person).select_related("school_class__owner")
    return [Shared(m.school_class, Part(m.part), str(SEES[m.part])) for m in members]


def invite(school_class: SchoolClass, account: str, part: str) -> str:
    """Return the token of a new one-time address for this account alone.

    Whether there is such an account is not told. Raises `NotSharedError`.
    """
    name = account.strip()
    if part not in Part.values:
        raise NotSharedError(_("Choose what the colleague may see."))
    if not 0 < len(name) <= LONGEST_ACCOUNT:
        raise NotSharedError(_("Type the name your colleague signs in with."))
    if name.casefold() == school_class.owner.username.casefold():
        raise NotSharedError(_("This account has the whole class already."))
    if school_class.members.count() + school_class.invitations.count() >= MOST:
        raise NotSharedError(_("This class has 40 colleagues; take one away first."))
    token = new_token()
    Invitation.objects.create(
        school_class=school_class,
        account=name,
        part=part,
        token_hash=hashed(token),
        expires_at=timezone.now() + LIFE,
    )
    return token


def invitation_for(person: User, token: str) -> Invitation | None:
    """Return the invitation at this address if it is this person's and still good."""
    Invitation.objects.filter(expires_at__lte=timezone.now()).delete()
    found = Invitation.objects.select_related("school_class__owner").filter(
        token_hash=hashed(token)
    )
    given = found.first()
    return given if given and given.account.casefold() == person.username.casefold() else None


def accept(person: User, invitation: Invitation) -> None:
    """Give the person the part, once; a part she had before becomes this one."""
    with transaction.atomic():
        gone, _rows = Invitation.objects.filter(pk=invitation.pk).delete()
        if gone:
            before = Member.objects.filter(school_class=invitation.school_class, person=person)
            for member in before:
                take_back(member)
            Member.objects.create(
                school_class=invitation.school_class, person=person, part=invitation.part
            )


def take_back(member: Member) -> None:
    """End a part: every screen of the class's open talks must ask again, and boards move.

    A board's address is all that opens it, so that one a colleague knows must open nothing more.
    """
    open_talks = list(member.school_class.talks.filter(closed_at=None))
    with transaction.atomic():
        for talk in open_talks:
            talk.board_token, talk.one_token = new_token(), new_token()
        Talk.objects.bulk_update(open_talks, ["board_token", "one_token"])
        member.delete()
    for talk in open_talks:
        HUB.empty(talk.pk)

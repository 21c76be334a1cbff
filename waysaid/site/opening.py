"""The one-time address that opens the teacher's own session, without a password."""

from datetime import timedelta

from django.contrib.auth.backends import BaseBackend
from django.contrib.auth.models import User
from django.utils import timezone

from waysaid.site.asked import Kept
from waysaid.site.models import Opening, hashed, new_token

LIFE = timedelta(days=1)
"""How long an address that nobody opened stays good (our choice: a school day and its evening)."""
LOCAL_NAME = "teacher"
"""The one account of a machine with one teacher; it has no password and cannot sign in with one."""

OWN_MACHINE = "waysaid.site.opening.OwnMachine"
"""The way in that a session begun with a one-time address was opened by."""
_USER = Kept(User)


class OwnMachine(BaseBackend):
    """Knows again whoever came by a one-time address; it signs nobody in by a password."""

    def get_user(self, user_id: int) -> User | None:
        """Return the account, unless it may no longer be used."""
        user = _USER(user_id)
        return user if user is not None and user.is_active else None


def make_opening() -> str:
    """Return a new one-time token; only its hash is kept."""
    token = new_token()
    Opening.objects.filter(made_at__lt=timezone.now() - LIFE).delete()
    Opening.objects.create(token_hash=hashed(token))
    return token


def use_opening(token: str) -> bool:
    """Use a token up; tell whether it was good. Of two that come at once, one gets in."""
    fresh = Opening.objects.filter(
        token_hash=hashed(token), made_at__gte=timezone.now() - LIFE
    ).delete()
    return fresh[0] == 1


def local_teacher() -> User:
    """Return the account of the teacher whose machine this is."""
    teacher, made = User.objects.get_or_create(username=LOCAL_NAME)
    if made:
        teacher.set_unusable_password()
        teacher.save()
    return teacher

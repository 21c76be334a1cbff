"""Accounts of a school's server: made by whoever runs it, never over the web."""

from django.contrib.auth.models import User
from django.contrib.auth.password_validation import validate_password
from django.core.exceptions import ValidationError


class BadAccountError(ValueError):
    """Raised with one sentence for an account that cannot be made."""


def add_user(name: str, password: str) -> User:
    """Return a new teacher's account. Raises `BadAccountError` with what would be accepted."""
    teacher = User(username=name.strip())
    try:
        teacher.full_clean(exclude=["password"])
        validate_password(password, teacher)
    except ValidationError as error:
        raise BadAccountError(" ".join(error.messages)) from None
    teacher.set_password(password)
    teacher.save()
    return teacher

"""Sign in on a school's server; guesses are slowed down."""

import threading
import time
from collections import deque
from collections.abc import Callable

from django.contrib.auth.forms import AuthenticationForm
from django.contrib.auth.views import LoginView
from django.http import HttpRequest, HttpResponse
from django.utils.translation import gettext as _

from waysaid.site.refusal import RefusalError
from waysaid.site.views.failures import answer

MOST_WRONG = 10
"""Wrong passwords for one name in `SPELL_SECONDS`, after which none is tried (our choice)."""
SPELL_SECONDS = 300
MOST_NAMES = 10_000


class Guesses:
    """The wrong passwords of the last minutes, by name, whether there is such a name or not."""

    def __init__(self, clock: Callable[[], float] = time.monotonic) -> None:
        self._clock = clock
        self._lock = threading.Lock()
        self._wrong: dict[str, deque[float]] = {}

    def too_many(self, name: str) -> bool:
        """Tell whether this name must wait."""
        with self._lock:
            return len(self._recent(name)) >= MOST_WRONG

    def wrong(self, name: str) -> None:
        """Count a wrong password."""
        with self._lock:
            if len(self._wrong) > MOST_NAMES:
                self._wrong.clear()
            self._wrong.setdefault(name, deque()).append(self._clock())

    def right(self, name: str) -> None:
        """Forget the wrong ones."""
        with self._lock:
            self._wrong.pop(name, None)

    def _recent(self, name: str) -> deque[float]:
        times = self._wrong.get(name, deque())
        while times and times[0] <= self._clock() - SPELL_SECONDS:
            times.popleft()
        return times


GUESSES = Guesses()


class SignIn(LoginView):
    """Django's own, with a limit on guesses."""

    template_name = "waysaid/login.html"

    def post(self, request: HttpRequest, *args: str, **kwargs: object) -> HttpResponse:
        """Take a name and a password, unless there were too many wrong ones for the name."""
        if GUESSES.too_many(_name(request)):
            sentence = _("Too many wrong passwords for this name; wait five minutes.")
            return answer(request, RefusalError(429, sentence))
        return super().post(request, *args, **kwargs)

    def form_invalid(self, form: AuthenticationForm) -> HttpResponse:
        """Count a wrong password."""
        GUESSES.wrong(_name(self.request))
        return super().form_invalid(form)

    def form_valid(self, form: AuthenticationForm) -> HttpResponse:
        """Forget the wrong ones before it."""
        GUESSES.right(_name(self.request))
        return super().form_valid(form)


def _name(request: HttpRequest) -> str:
    return request.POST.get("username", "")[:150].casefold()

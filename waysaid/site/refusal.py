"""A request that is turned down with a status and one sentence."""

from django.utils.translation import gettext as _


class RefusalError(Exception):
    """Raised to end a request; `sentence` is for a person, in her language."""

    def __init__(self, status: int, sentence: str) -> None:
        super().__init__(sentence)
        self.status = status
        self.sentence = sentence


def not_here() -> RefusalError:
    """Return the refusal for what is not there, or is another's: the two look alike."""
    return RefusalError(404, _("There is nothing at this address."))

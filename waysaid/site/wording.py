"""Which words a class's own screens use: its language, its names for families, its remainders."""

from dataclasses import dataclass

from waysaid.number import Language, Rest
from waysaid.site.models import SchoolClass
from waysaid.ways import Family, Vocabulary, family_name

LONGEST_NAME = 40
"""Characters of a class's own name for a family (our choice): what a chip can show in a line."""


@dataclass(frozen=True, slots=True)
class Wording:
    """A language, whose words for the families are shown, and the class's own names by slug.

    `rest` is how the class says what a division leaves.
    """

    language: Language
    words: Vocabulary = Vocabulary.OURS
    own: tuple[tuple[str, str], ...] = ()
    rest: Rest = Rest.LEFT_OVER

    def name(self, family: Family) -> str:
        """Return what this class calls a family: its own name, else the vocabulary's."""
        own = dict(self.own).get(family.value)
        return own or family_name(family, self.language, self.words)


def wording_of(school_class: SchoolClass) -> Wording:
    """Return the wording of a class's desk, as it is kept; what is unknown counts as ours."""
    known = {each.value for each in Vocabulary}
    words = Vocabulary(school_class.words) if school_class.words in known else Vocabulary.OURS
    own = school_class.own_names if isinstance(school_class.own_names, dict) else {}
    pairs = tuple(sorted((str(slug), str(name)) for slug, name in own.items() if name))
    return Wording(Language(school_class.desk_language), words, pairs, rest_of(school_class))


def rest_of(school_class: SchoolClass) -> Rest:
    """Return how a class says what a division leaves; left over where that is unknown."""
    known = {each.value for each in Rest}
    return Rest(school_class.rest) if school_class.rest in known else Rest.LEFT_OVER


def cleaned(name: str) -> str:
    """Return a name as it is kept: one line, at most `LONGEST_NAME` characters."""
    return " ".join(name.split())[:LONGEST_NAME].strip()

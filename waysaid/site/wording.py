"""Which words a class's own screens use: the language, and the names of the families of ways."""

from dataclasses import dataclass

from waysaid.number import Language
from waysaid.site.models import SchoolClass
from waysaid.ways import Family, Vocabulary, family_name

LONGEST_NAME = 40
"""Characters of a class's own name for a family (our choice): what a chip can show in a line."""


@dataclass(frozen=True, slots=True)
class Wording:
    """A language, whose words for the families are shown, and the class's own names by slug."""

    language: Language
    words: Vocabulary = Vocabulary.OURS
    own: tuple[tuple[str, str], ...] = ()

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
    return Wording(Language(school_class.desk_language), words, pairs)


def cleaned(name: str) -> str:
    """Return a name as it is kept: one line, at most `LONGEST_NAME` characters."""
    return " ".join(name.split())[:LONGEST_NAME].strip()

"""The words of our papers, one file a language."""

import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from importlib.resources import files

from waysaid.number import Language


@dataclass(frozen=True, slots=True)
class PaperWords:
    """What one kind of paper says: single texts by name, and lists of sentences by name."""

    texts: Mapping[str, str]
    lists: Mapping[str, tuple[str, ...]]

    def __getitem__(self, name: str) -> str:
        """Return a text. Raises `KeyError` for one that the file does not have."""
        return self.texts[name]


@cache
def paper_words(paper: str, language: Language) -> PaperWords:
    """Return the words of a kind of paper: `recording`, `substitute`, `family` or `report`."""
    toml = (files("waysaid.paper") / "data" / f"papers-{language.value}.toml").read_text("utf-8")
    table = tomllib.loads(toml)[paper]
    texts = {name: each for name, each in table.items() if isinstance(each, str)}
    lists = {name: tuple(each) for name, each in table.items() if isinstance(each, list)}
    return PaperWords(texts, lists)

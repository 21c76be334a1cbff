"""Make the board's web font from the unmodified Andika files under waysaid/paper/fonts.

Run `.venv/bin/python scripts/fonts.py` after changing a source file. The outcome is a subset, so
it carries another name: Andika's licence reserves its own (see the README beside the fonts).
"""

import sys
from pathlib import Path

from fontTools.subset import Options, Subsetter
from fontTools.ttLib import TTFont

ROOT = Path(__file__).resolve().parent.parent
SOURCES = ROOT / "waysaid" / "paper" / "fonts"
TARGETS = ROOT / "waysaid" / "site" / "static" / "fonts"
FAMILY = "Waysaid Board"
FILES = (
    ("Andika-Regular.ttf", "waysaid-board-400.woff2", "Regular"),
    ("Andika-Bold.ttf", "waysaid-board-700.woff2", "Bold"),
)
SIGNS = "−×÷→←↑↓…“”‘’‚„·•≠≤≥≈½¼¾⅓⅔–—€✓⁄"
KEPT_NAMES = (0, 13, 14)
"""Name records kept from the source: copyright, licence, licence address."""


def characters() -> list[int]:
    """Return the code points of the web font: Latin, Latin-1, Latin Extended-A and the signs."""
    ranges = (range(0x20, 0x7F), range(0xA0, 0x180))
    return sorted({point for one in ranges for point in one} | {ord(sign) for sign in SIGNS})


def rename(font: TTFont, style: str) -> None:
    """Give the font its own family name and say what it was made from."""
    names = font["name"]
    names.names = [record for record in names.names if record.nameID in KEPT_NAMES]
    postscript = f"{FAMILY.replace(' ', '')}-{style}"
    own = {
        1: FAMILY,
        2: style,
        3: f"Waysaid: {postscript}",
        4: f"{FAMILY} {style}",
        5: f"Version {font['head'].fontRevision:.3f}",
        6: postscript,
    }
    for number, text in own.items():
        names.setName(text, number, 3, 1, 0x409)


def subset(source: Path, target: Path, style: str) -> None:
    """Write the subset of one file as WOFF2, without hints, with kerning and marks."""
    font = TTFont(source, recalcTimestamp=False)
    options = Options()
    options.layout_features = ["ccmp", "kern", "locl", "mark", "mkmk"]
    options.hinting = False
    options.drop_tables += ["Glat", "Gloc", "Silf", "Silt", "Sill", "Feat"]
    options.name_IDs = ["*"]
    options.flavor = "woff2"
    subsetter = Subsetter(options)
    subsetter.populate(unicodes=characters())
    subsetter.subset(font)
    rename(font, style)
    font.flavor = "woff2"
    font.save(target)


def main() -> int:
    """Make both files; return 1 with one sentence when a source is missing."""
    for source, target, style in FILES:
        if not (SOURCES / source).is_file():
            print(f"{SOURCES / source} is missing; put the unmodified file there.", file=sys.stderr)
            return 1
        subset(SOURCES / source, TARGETS / target, style)
        print(f"{target}: {(TARGETS / target).stat().st_size} bytes")
    return 0


if __name__ == "__main__":
    sys.exit(main())

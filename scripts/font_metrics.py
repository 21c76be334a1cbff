"""Print the advance widths of Andika Regular as a Python dict, in 1/1000 em.

Every character of the board's web font is in it. Run `.venv/bin/python scripts/font_metrics.py`.
"""

import sys

from fontTools.ttLib import TTFont

from fonts import SOURCES, characters


def widths() -> dict[str, int]:
    """Return the width of each character, rounded to whole thousandths of an em."""
    font = TTFont(SOURCES / "Andika-Regular.ttf")
    em = font["head"].unitsPerEm
    glyphs = font.getBestCmap()
    advances = font["hmtx"].metrics
    return {
        chr(point): round(advances[glyphs[point]][0] * 1000 / em)
        for point in characters()
        if point in glyphs
    }


def main() -> int:
    """Print the dict, one character a line."""
    print("WIDTHS = {")
    for character, width in widths().items():
        print(f'    "\\u{ord(character):04x}": {width},')
    print("}")
    return 0


if __name__ == "__main__":
    sys.exit(main())

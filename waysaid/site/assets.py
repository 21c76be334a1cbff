"""The address of the scripts, styles and fonts: it changes whenever one of them does.

Nothing is collected or copied: the files are served from the package, and a browser may keep them
for a year because a new version has a new address.
"""

import hashlib
from pathlib import Path

FOLDER = Path(__file__).parent / "static"


def version(folder: Path = FOLDER) -> str:
    """Return a short name for what is in the folder now."""
    seen = hashlib.sha256()
    for path in sorted(each for each in folder.rglob("*") if each.is_file()):
        seen.update(path.relative_to(folder).as_posix().encode() + b"\0")
        seen.update(path.read_bytes())
    return seen.hexdigest()[:10]


def never_changes(path: str, url: str) -> bool:
    """Tell whitenoise that what it serves at this address is always the same."""
    return True

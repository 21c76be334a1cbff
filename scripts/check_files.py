"""Check the plain things of every file: line ends, last line, size, and that data files parse.

Run with no arguments for all files git keeps, or with paths (as a commit hook does).
"""

import json
import subprocess
import sys
import tomllib
from pathlib import Path

import yaml

LARGEST = 1_000_000
"""Bytes; the fonts of the printed sheets are the largest files here."""

BINARY = {".ttf", ".woff2", ".png", ".mo", ".webp", ".pdf", ".ico"}


def tracked() -> list[Path]:
    """Return the files that git keeps."""
    listed = subprocess.run(["git", "ls-files", "-z"], capture_output=True, check=True).stdout
    return [Path(name) for name in listed.decode().split("\0") if name]


def parse_fault(path: Path, text: str) -> str | None:
    """Return why a data file does not parse, or None."""
    try:
        if path.suffix == ".toml":
            tomllib.loads(text)
        elif path.suffix in {".yaml", ".yml"}:
            yaml.safe_load(text)
        elif path.suffix == ".json":
            json.loads(text)
    except (ValueError, yaml.YAMLError) as error:
        return f"does not parse: {' '.join(str(error).split())}"
    return None


def faults(path: Path) -> list[str]:
    """Return what is wrong with one file."""
    if not path.is_file() or "vendor" in path.parts:
        return []
    content = path.read_bytes()
    if len(content) > LARGEST:
        return [f"has {len(content)} bytes; at most {LARGEST} are kept"]
    if path.suffix in BINARY or not content:
        return []
    text = content.decode("utf-8", errors="replace")
    found = []
    if "\ufffd" in text and path.suffix != ".py":
        found.append("is not UTF-8")
    if b"\r" in content:
        found.append("has carriage returns")
    if path.suffix != ".md" and any(line != line.rstrip() for line in text.split("\n")):
        found.append("has blanks at the end of a line")
    if not text.endswith("\n") or text.endswith("\n\n"):
        found.append("ends with something else than one line end")
    fault = parse_fault(path, text)
    return [*found, fault] if fault else found


def main(arguments: list[str]) -> int:
    """Print a line for each fault; return 1 when there is one."""
    paths = [Path(name) for name in arguments] or tracked()
    lines = [f"{path} {fault}" for path in paths for fault in faults(path)]
    print("\n".join(lines), end="\n" if lines else "")
    return 1 if lines else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))

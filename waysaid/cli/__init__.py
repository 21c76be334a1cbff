"""The command line: the app, and the same core from a terminal."""

from waysaid.cli.command import main

__all__ = ["main"]

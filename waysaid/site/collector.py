"""When the interpreter looks for what nobody holds any more: seldom, while a talk is on."""

import gc

NEW_THINGS = 10_000
"""How many new things are looked through at a time for what nobody holds any more: a line makes
more than the interpreter's own 700 again and again, and holds nearly all. Our choice: less gains
less, and more no more."""


def look_rarely() -> None:
    """Let the interpreter look seldom, and never through what is there now.

    That stays until the end: a line is not held up by looking through it (30 ms and more).
    """
    gc.collect()
    gc.freeze()
    gc.set_threshold(NEW_THINGS, *gc.get_threshold()[1:])

"""Strings of sums and differences invented for this project, each with links worked out by hand.

The rows come from the project's own table of strings ("ours", not taken from any publication);
the links beside each row were written down by hand from the numbers: kind and problem indexes.
"""

OURS = [
    (
        0,
        "known-fact",
        ("3 + 2", "4 + 1", "5 + 0", "2 + 3"),
        [("same-total", (0, 1, 2, 3)), ("both-change", (0, 1)), ("turned-around", (0, 3))],
    ),
    (
        0,
        "counting",
        ("5 + 1", "5 + 2", "4 + 2", "3 + 3"),
        [("one-changes", (0, 1)), ("one-changes", (1, 2)), ("same-total", (0, 2, 3))],
    ),
    (
        1,
        "near-double",
        ("5 + 5", "5 + 6", "6 + 6", "6 + 7"),
        [("pattern", (0, 1, 2, 3)), ("inside-a-way", (0, 1)), ("inside-a-way", (2, 3))],
    ),
    (
        1,
        "near-double",
        ("7 + 7", "7 + 8", "8 + 8", "9 + 8"),
        [("one-changes", (0, 1)), ("pattern", (0, 1, 2, 3))],
    ),
    (
        1,
        "bridge",
        ("9 + 1", "9 + 3", "9 + 5", "8 + 5"),
        [("pattern", (0, 1, 2)), ("inside-a-way", (0, 1)), ("one-changes", (2, 3))],
    ),
    (
        1,
        "bridge",
        ("10 + 4", "9 + 4", "9 + 6", "8 + 6", "7 + 5"),
        [("friendly-twin", (0, 1)), ("one-changes", (0, 1)), ("both-change", (0, 3))],
    ),
    (
        1,
        "partners",
        ("6 + 4", "6 + 4 + 3", "6 + 3 + 4", "8 + 5 + 2"),
        [("inside-a-way", (0, 1)), ("inside-a-way", (0, 2)), ("turned-around", (1, 2))],
    ),
    (
        1,
        "think-add",
        ("6 + 4", "10 - 6", "7 + 3", "10 - 7"),
        [("opposite", (0, 1)), ("opposite", (2, 3)), ("both-change", (0, 2))],
    ),
    (
        1,
        "think-add",
        ("8 + 5", "13 - 8", "13 - 5", "14 - 6"),
        [("opposite", (0, 1)), ("opposite", (1, 2)), ("both-change", (2, 3))],
    ),
    (
        1,
        "bridge",
        ("13 - 3", "13 - 4", "14 - 4", "14 - 6"),
        [("one-changes", (0, 1)), ("both-change", (0, 2)), ("same-total", (0, 2))],
    ),
    (
        2,
        "bridge",
        ("28 + 2", "28 + 5", "38 + 5", "37 + 6"),
        [("inside-a-way", (0, 1)), ("one-changes", (1, 2)), ("both-change", (2, 3))],
    ),
    (
        2,
        "give-and-take",
        ("30 + 15", "29 + 16", "40 + 22", "38 + 24", "37 + 26"),
        [("both-change", (0, 1)), ("both-change", (2, 3))],
    ),
    (
        2,
        "give-and-take",
        ("50 + 30", "49 + 31", "48 + 33", "47 + 35"),
        [("both-change", (0, 1)), ("pattern", (1, 2, 3)), ("friendly-twin", (0, 2))],
    ),
    (
        2,
        "adjust",
        ("26 + 20", "26 + 19", "45 + 30", "45 + 29", "34 + 58"),
        [("one-changes", (0, 1)), ("feeds-next", (1, 2)), ("one-changes", (2, 3))],
    ),
    (
        2,
        "jump",
        ("43 + 20", "43 + 25", "56 + 30", "56 + 32"),
        [("one-changes", (0, 1)), ("inside-a-way", (0, 1)), ("inside-a-way", (2, 3))],
    ),
    (
        2,
        "jump",
        ("64 + 10", "64 + 14", "64 + 24", "65 + 27"),
        [("one-changes", (1, 2)), ("same-number", (0, 1, 2))],
    ),
    (
        2,
        "split",
        ("30 + 20", "34 + 25", "40 + 30", "46 + 37"),
        [("inside-a-way", (0, 1)), ("inside-a-way", (2, 3)), ("one-changes", (0, 2))],
    ),
    (
        2,
        "near-double",
        ("25 + 25", "25 + 26", "35 + 35", "34 + 36"),
        [("inside-a-way", (0, 1)), ("both-change", (2, 3)), ("same-total", (2, 3))],
    ),
    (
        2,
        "partners",
        ("17 + 3", "17 + 3 + 9", "25 + 14 + 5", "16 + 8 + 24"),
        [("inside-a-way", (0, 1)), ("same-number", (0, 1))],
    ),
    (
        2,
        "adjust",
        ("52 - 20", "52 - 19", "63 - 30", "63 - 28"),
        [("one-changes", (0, 1)), ("one-changes", (2, 3)), ("same-total", (1, 2))],
    ),
    (
        2,
        "shift-both",
        ("45 - 20", "46 - 21", "44 - 19", "71 - 38"),
        [("both-change", (0, 1)), ("both-change", (0, 2)), ("same-total", (0, 1, 2))],
    ),
    (
        2,
        "add-up",
        ("40 - 38", "41 - 38", "52 - 48", "63 - 57", "81 - 68"),
        [("one-changes", (0, 1)), ("same-number", (0, 1)), ("pattern", (0, 1, 2))],
    ),
    (
        2,
        "jump",
        ("75 - 30", "75 - 34", "82 - 20", "82 - 25"),
        [("inside-a-way", (0, 1)), ("inside-a-way", (2, 3)), ("one-changes", (2, 3))],
    ),
    (
        2,
        "bridge",
        ("34 - 4", "34 - 6", "52 - 2", "52 - 8"),
        [("inside-a-way", (0, 1)), ("inside-a-way", (2, 3)), ("one-changes", (0, 1))],
    ),
    (
        3,
        "adjust",
        ("150 + 100", "150 + 99", "236 + 200", "236 + 198"),
        [("one-changes", (0, 1)), ("inside-a-way", (0, 1)), ("friendly-twin", (2, 3))],
    ),
    (
        3,
        "give-and-take",
        ("200 + 164", "198 + 166", "300 + 247", "296 + 251"),
        [("both-change", (0, 1)), ("both-change", (2, 3)), ("same-total", (2, 3))],
    ),
    (
        3,
        "add-up",
        ("100 - 95", "102 - 95", "204 - 198", "403 - 389"),
        [("one-changes", (0, 1)), ("same-number", (0, 1))],
    ),
    (
        3,
        "shift-both",
        ("300 - 150", "299 - 149", "400 - 176", "399 - 175"),
        [("both-change", (0, 1)), ("both-change", (2, 3)), ("same-total", (0, 1))],
    ),
]
"""(grade, focus, problems, links by hand)."""

"""Strings of products, quotients, fractions, decimals and per cents, with links worked out by hand.

The rows come from the project's own table of strings ("ours", not taken from any publication);
the links beside each row are what a teacher would hope for, read from the numbers: kind and
problem indexes.
"""

OURS_ON = [
    (
        ("5 x 6", "6 x 6", "5 x 8", "6 x 8"),
        [("one-changes", (0, 1)), ("one-changes", (2, 3)), ("one-changes", (0, 2))],
    ),
    (
        ("10 x 7", "9 x 7", "10 x 8", "9 x 8"),
        [("one-changes", (0, 1)), ("friendly-twin", (0, 1)), ("one-changes", (2, 3))],
    ),
    (
        ("2 x 7", "4 x 7", "8 x 7"),
        [("pattern", (0, 1, 2)), ("double-half", (0, 1)), ("double-half", (1, 2))],
    ),
    (
        ("5 x 7", "2 x 7", "7 x 7"),
        [("inside-a-way", (0, 1, 2)), ("inside-a-way", (0, 2)), ("one-changes", (0, 2))],
    ),
    (
        ("6 x 4", "24 / 6", "7 x 8", "56 / 7"),
        [("opposite", (0, 1)), ("opposite", (2, 3)), ("feeds-next", (0, 1))],
    ),
    (
        ("2 x 8", "4 x 4", "4 x 9", "2 x 18"),
        [("both-change", (0, 1)), ("both-change", (2, 3)), ("same-total", (0, 1))],
    ),
    (
        ("10 x 6", "4 x 6", "14 x 6", "24 x 6"),
        [("inside-a-way", (0, 1, 2)), ("one-changes", (2, 3)), ("inside-a-way", (0, 2))],
    ),
    (
        ("20 x 7", "19 x 7", "30 x 6", "29 x 6"),
        [("one-changes", (0, 1)), ("friendly-twin", (0, 1)), ("friendly-twin", (2, 3))],
    ),
    (
        ("10 x 8", "5 x 16", "10 x 12", "5 x 24"),
        [("both-change", (0, 1)), ("both-change", (2, 3)), ("one-changes", (0, 2))],
    ),
    (
        ("12 x 10", "12 x 5", "16 x 10", "16 x 5"),
        [("double-half", (0, 1)), ("double-half", (2, 3)), ("one-changes", (0, 2))],
    ),
    (
        ("60 / 6", "36 / 6", "96 / 6", "78 / 6"),
        [("inside-a-way", (0, 1, 2)), ("inside-a-way", (0, 2)), ("same-number", (0, 1, 2, 3))],
    ),
    (
        ("80 / 4", "84 / 4", "80 / 5", "85 / 5"),
        [("one-changes", (0, 1)), ("one-changes", (2, 3)), ("friendly-twin", (0, 1))],
    ),
    (
        ("60 / 12", "30 / 6", "120 / 24", "240 / 48"),
        [("both-change", (0, 1)), ("both-change", (2, 3)), ("same-total", (0, 1, 2, 3))],
    ),
    (
        ("1/2 + 1/2", "3/4 + 1/4", "3/4 + 1/2", "3/4 + 3/4"),
        [("both-change", (0, 1)), ("pattern", (1, 2, 3)), ("same-total", (0, 1))],
    ),
    (
        ("3 + 2.5", "2.9 + 2.5", "4 + 1.75", "3.9 + 1.85"),
        [("one-changes", (0, 1)), ("friendly-twin", (0, 1)), ("both-change", (2, 3))],
    ),
    (
        ("5 + 2.4", "4.8 + 2.6", "3.7 + 1.5"),
        [("both-change", (0, 1)), ("same-total", (0, 1))],
    ),
    (
        ("1/2 + 1/2", "1/2 + 3/4", "2/3 + 2/3", "5/6 + 1/2"),
        [("one-changes", (0, 1)), ("both-change", (2, 3)), ("same-total", (2, 3))],
    ),
    (
        ("25 x 4", "25 x 8", "25 x 12", "25 x 13"),
        [("pattern", (0, 1, 2)), ("inside-a-way", (0, 1, 2)), ("one-changes", (2, 3))],
    ),
    (
        ("50 x 6", "25 x 12", "50 x 14", "25 x 28"),
        [("both-change", (0, 1)), ("both-change", (2, 3)), ("same-total", (0, 1))],
    ),
    (
        ("90 / 6", "180 / 12", "360 / 24", "450 / 18"),
        [("pattern", (0, 1, 2)), ("both-change", (0, 1)), ("same-total", (0, 1, 2))],
    ),
    (
        ("10% of 60", "5% of 60", "15% of 60", "35% of 60"),
        [("double-half", (0, 1)), ("inside-a-way", (0, 1, 2)), ("one-changes", (2, 3))],
    ),
    (
        ("50% of 90", "25% of 80", "75% of 80", "12.5% of 80"),
        [("one-changes", (1, 2)), ("double-half", (1, 3)), ("same-number", (1, 2, 3))],
    ),
    (
        ("1/4 x 36", "0.25 x 36", "0.75 x 36", "0.125 x 48"),
        [("same-number", (0, 1)), ("same-total", (0, 1)), ("one-changes", (1, 2))],
    ),
    (
        ("25% of 16", "16% of 25", "50% of 18", "18% of 50"),
        [("turned-around", (0, 1)), ("turned-around", (2, 3)), ("same-total", (0, 1))],
    ),
]

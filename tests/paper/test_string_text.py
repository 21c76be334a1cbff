"""A string as text: what is pasted is what was written."""

from hypothesis import given
from hypothesis import strategies as st

from tests.number import problems as made
from waysaid.number import Unreadable, parse, text
from waysaid.paper import string_line, string_text


def readable(problem):
    try:
        parse(text(problem))
    except Unreadable:
        return False
    return True


every = st.one_of(
    made.expressions(), made.equations, made.claims, made.compares, made.estimates, made.images
).filter(readable)
rows = st.lists(st.tuples(every, st.text(max_size=30)), max_size=6)


@given(rows)
def test_a_string_that_is_written_and_read_is_the_same(string):
    written = string_text([problem for problem, _ in string], [why for _, why in string])
    read = [string_line(line) for line in written.split("\n")[:-1]]
    assert [(parse(typed), why) for typed, why in read] == [
        (parse(text(problem)), " ".join(why.split())) for problem, why in string
    ]


def test_a_line_may_have_no_reason_and_a_reason_may_have_a_bar():
    assert string_line("  40 + 25 ") == ("40 + 25", "")
    assert string_line("40 + 25|a | b") == ("40 + 25", "a | b")
    assert string_text([parse("40+25"), parse("37+25")], ["one\n two"]) == (
        "40 + 25 | one two\n37 + 25\n"
    )

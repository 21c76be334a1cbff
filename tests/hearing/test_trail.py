"""A line read with every key is heard as a line read at once."""

from hypothesis import example, given, settings
from hypothesis import strategies as st

from tests.counts import count
from tests.hearing.said import WRITTEN, sentences
from tests.hearing.speaker import utterances
from waysaid.hearing import read
from waysaid.hearing.spoken import forget
from waysaid.number import Language, parse

SPOKEN = [(one.problem, one.said, one.language) for one in utterances(5, 100)]
WRITTEN_DOWN = [
    (one.problem, one.said, one.language) for path in WRITTEN for one in sentences(path)
]


@settings(max_examples=count(test=15, sweep=1_000))
@given(st.sampled_from([*SPOKEN, *WRITTEN_DOWN]), st.integers(7, 40), st.booleans())
@example(("27 + 38", "twenty seven and thirty eight is sixty five", Language.EN), 1, True)
def test_a_line_typed_is_heard_as_one_that_came_at_once(
    line: tuple[str, str, Language], each: int, astray: bool
) -> None:
    problem, said, language = parse(line[0]), line[1], line[2]
    forget()
    at_once = read(problem, said, language)
    forget()
    for end in range(1, len(said), each):
        read(problem, said[:end] + "zw" * astray, language)
    assert read(problem, said, language) == at_once


@settings(max_examples=count(test=6, sweep=300))
@given(st.lists(st.sampled_from(SPOKEN), min_size=2, max_size=4))
def test_lines_of_several_desks_do_not_mix(lines: list[tuple[str, str, Language]]) -> None:
    alone = []
    for problem, said, language in lines:
        forget()
        alone.append(read(parse(problem), said, language))
    halves = [(problem, said[: len(said) // 2], language) for problem, said, language in lines]
    for problem, said, language in (*halves, *lines, *halves):
        read(parse(problem), said, language)
    together = [read(parse(problem), said, language) for problem, said, language in lines]
    assert together == alone

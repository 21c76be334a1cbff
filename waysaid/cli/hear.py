"""`waysaid hear`: what a child said, as steps as said, with what was left unsaid."""

from collections.abc import Iterator

from waysaid.cli.given import Given, language_in, problem_in, words_in
from waysaid.hearing import Part, Reading, Told, read
from waysaid.number import Language, Problem, fits, text

UNCLEAR = "unclear"
"""The family where no way was heard: part of the command's fixed form."""

_UNHEARD = {
    Language.EN: "No steps were heard in these words.",
    Language.ES: "En estas palabras no se oyó ningún paso.",
}


def answer_hear(given: Given) -> dict[str, object]:
    """Return the reading of the words `said` about `problem`."""
    problem, language = problem_in(given), language_in(given)
    reading = read(problem, words_in(given, "said"), language)
    answer = reading.answer_text
    return {
        "problem": text(problem),
        "family": reading.family.value if reading.family else UNCLEAR,
        "sure": reading.sure / 100,
        "answer": answer,
        "right": _right(problem, answer),
        "steps": [_step(told) for told in reading.told],
        "dropped": [_words(reading, span) for span in reading.dropped],
        "runners_up": [
            {"family": rival.family.value if rival.family else UNCLEAR, "sure": rival.sure / 100}
            for rival in reading.rivals
        ],
        "words": reading.words,
    }


def _right(problem: Problem, answer: str | None) -> bool | None:
    return None if answer is None else bool(fits(problem, answer))


def _step(told: Told) -> dict[str, object]:
    return {
        "equation": told.step.text,
        "true": told.step.true,
        "from": "implied" if set(told.unsaid) == set(Part) else "said",
        "unsaid": [part.value for part in told.unsaid],
        "span": list(told.span),
        "by_digits": told.by_digits,
    }


def _words(reading: Reading, span: tuple[int, int]) -> str:
    return reading.words[slice(*span)].strip()


def show_hear(answer: dict[str, object], language: Language) -> Iterator[str]:
    """Yield the lines: the problem and the words, each step as said, the family, the answer."""
    yield f"{answer['problem']}   “{answer['words']}”"
    yield ""
    steps = answer["steps"]
    assert isinstance(steps, list)
    for step in steps:
        unsaid = f"   ({', '.join(step['unsaid'])} unsaid)" if step["unsaid"] else ""
        digits = "   (told as digits)" if step["by_digits"] else ""
        yield f"  {step['equation']}{unsaid}{digits}"
    if not steps:
        yield f"  {_UNHEARD[language]}"
    yield ""
    said = answer["answer"] if answer["answer"] is not None else "–"
    yield f"  {answer['family']}   {said}"

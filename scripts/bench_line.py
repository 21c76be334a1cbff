"""Measure how soon a line is previewed after a key: a part of `bench.py`, in the real browser."""

from typing import Any

from playwright.sync_api import Browser, Page

from scripts.bench_size import sized
from scripts.bench_ways import spread
from tests.hearing.said import WRITTEN, sentences
from tests.talks.hall import TABLET, Hall
from waysaid.number import Language

LINES = sized(120, 2)
LONGEST = 20
"""Words of a line that is to be previewed at once."""
SOON = 50
"""Milliseconds: the goal for at least 95 lines in 100."""
KEY_PAUSE = 100
"""Milliseconds before the last key: a typist's own pause, in which the line so far is read."""
WATCH = """(key) => new Promise((done) => {
  const input = document.querySelector("#line input");
  const preview = document.querySelector("#preview");
  const late = setTimeout(() => finish(null), 5000);
  let began = 0;
  const finish = (took) => { clearTimeout(late); watch.disconnect(); done(took); };
  const watch = new MutationObserver(() => requestAnimationFrame(() => {
    const channel = new MessageChannel();
    channel.port1.onmessage = () => finish(performance.now() - began);
    channel.port2.postMessage(0);
  }));
  watch.observe(preview, { childList: true, subtree: true, characterData: true });
  began = performance.now();
  input.value += key;
  input.dispatchEvent(new InputEvent("input", { bubbles: true }));
})"""


def bench_line(hall: Hall, browser: Browser) -> dict[str, Any]:
    """Time the last key of each line until its preview is painted; null is one never previewed.

    The lines are those of the tests that are not kept aside, of at most twenty words, by problem,
    those with the most lines first. Each problem is a talk of its own on a class of the language.
    """
    spanish = Hall(hall.folder.parent / "spanish", board_language=Language.ES.value)
    times: list[float | None] = []
    for (problem, language), listed in _lines():
        page = _desk(spanish if language is Language.ES else hall, browser, problem)
        times += [_last_key(page, said) for said in listed]
        page.context.close()
        if len(times) >= LINES:
            break
    spanish.server.kill()
    seen = [one for one in times if one is not None]
    soon = sum(one <= SOON for one in seen)
    return {
        "lines": len(times),
        "never": len(times) - len(seen),
        "key_to_preview": spread(seen),
        "within_50_ms_percent": round(100 * soon / len(times), 1),
    }


def _lines() -> list[tuple[tuple[str, Language], list[str]]]:
    found: dict[tuple[str, Language], list[str]] = {}
    for path in WRITTEN:
        for one in sentences(path):
            if not one.aside and len(one.said.split()) <= LONGEST:
                found.setdefault((one.problem, one.language), []).append(one.said)
    return sorted(found.items(), key=lambda each: -len(each[1]))


def _desk(hall: Hall, browser: Browser, problem: str) -> Page:
    hall.teacher.get("/")
    started = hall.teacher.send_form("/talks/start", problem=problem)
    context = browser.new_context(viewport=TABLET)
    hall.sign_in(context)
    page = context.new_page()
    page.goto(hall.origin + started.headers["Location"])
    page.locator("#names button").first.wait_for()
    return page


def _last_key(page: Page, said: str) -> float | None:
    line = page.locator("#line input")
    line.fill("")
    line.fill(said[:-1])
    page.wait_for_timeout(KEY_PAUSE)
    found = page.evaluate(WATCH, said[-1])
    return None if found is None else float(found)

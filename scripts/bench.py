"""Measure Waysaid on this machine and print one JSON object.

Nothing here passes or fails and nothing is best of several: every figure is all that was seen.
Times are milliseconds unless a name says otherwise. What each part does stands in its function.
"""

import json
import os
import statistics
import subprocess
import sys
import tempfile
import time
from datetime import date
from pathlib import Path
from typing import Any

ROOT = Path(__file__).resolve().parents[1]
sys.path.insert(0, str(ROOT))

from playwright.sync_api import Browser, BrowserContext, Page, sync_playwright  # noqa: E402

from scripts.bench_line import bench_line  # noqa: E402
from scripts.bench_size import sized, tell  # noqa: E402
from scripts.bench_ways import ratio, spread  # noqa: E402
from tests.browser import FLAGS, program  # noqa: E402
from tests.plain_user import is_root  # noqa: E402
from tests.site.server import running  # noqa: E402
from tests.talks.hall import SCREEN, TABLET, Hall  # noqa: E402

TAPS = sized(80, 4)
STARTS = sized(3, 1)
EVENTS = sized((100, 500), (2, 4))
"""After how many events the server's memory is read."""
RSS = "VmRSS:"
PAINTED = """(ready) => new Promise((done) => {
  const look = () => ready() && (watch.disconnect(), requestAnimationFrame(() => {
    const channel = new MessageChannel();
    channel.port1.onmessage = () => done(performance.timeOrigin + performance.now());
    channel.port2.postMessage(0);
  }), true);
  const watch = new MutationObserver(look);
  watch.observe(document.body, { childList: true, subtree: true, characterData: true });
  look();
})"""
"""When a page has painted a change: the task after the frame in which it stands."""


def bench_apart(script: str) -> dict[str, Any]:
    """Run a script in a process of its own, so that its memory is what the work needs."""
    command = [sys.executable, str(ROOT / "scripts" / script)]
    done = subprocess.run(command, check=True, capture_output=True, text=True)
    return dict(json.loads(done.stdout))


ECHO = '''
import asyncio, sys, uvicorn
PAGE = b"""<!doctype html><title>echo</title><p id=said>0</p><button id=tap>tap</button>
<script>
let count = 0;
document.querySelector("#tap").onclick = () =>
  fetch("/say", {method: "POST", body: String(++count)});
new EventSource("/live").addEventListener("state", (event) => {
  document.querySelector("#said").textContent = event.data;
});
</script>"""
queues = set()
async def app(scope, receive, send):
    if scope["type"] != "http":
        return
    async def start(kind):
        head = [(b"content-type", kind), (b"cache-control", b"no-store")]
        await send({"type": "http.response.start", "status": 200, "headers": head})
    if scope["path"] == "/say":
        said = (await receive())["body"]
        for queue in queues:
            queue.put_nowait(said)
        await start(b"text/plain")
        await send({"type": "http.response.body", "body": b"ok"})
    elif scope["path"] == "/live":
        queue = asyncio.Queue()
        queues.add(queue)
        await start(b"text/event-stream")
        await send({"type": "http.response.body", "body": b": hello\\n\\n", "more_body": True})
        while True:
            said = await queue.get()
            frame = b"event: state\\ndata: " + said + b"\\n\\n"
            await send({"type": "http.response.body", "body": frame, "more_body": True})
    else:
        await start(b"text/html; charset=utf-8")
        await send({"type": "http.response.body", "body": PAGE})
class Server(uvicorn.Server):
    async def startup(self, sockets=None):
        await super().startup(sockets)
        print("echo is ready: http://127.0.0.1:%s/" % PORT, flush=True)
PORT = int(sys.argv[1])
Server(uvicorn.Config(app, port=PORT, log_level="critical", lifespan="off")).run()
'''
"""The least that a tap can cost: a post, an event to the other page, a change of its text."""


THERE = """document.querySelectorAll('.ways:not(.bench) .way').length
  + document.querySelectorAll('.folded').length"""
"""How many ways stand on a board, open or folded to a tag."""


def one_tap(desk: Page, selector: str, board: Page, ready: str) -> float:
    """Click in one page; return how long until the other page has painted what `ready` finds."""
    clicked = desk.evaluate_handle(
        """(selector) => ({at: new Promise((done) =>
          document.querySelector(selector).addEventListener("click", (event) =>
            done(performance.timeOrigin + event.timeStamp), {once: true, capture: true}))})""",
        selector,
    )
    painted = board.evaluate_handle(f"() => ({{at: ({PAINTED})(() => {ready})}})")
    desk.locator(selector).first.click()
    start = clicked.evaluate("async (one) => await one.at")
    return float(painted.evaluate("async (one) => await one.at") - start)


def bench_echo(browser: Browser) -> list[float]:
    """Time taps through the bare echo, its two pages open in one browser."""
    from tests.postgres import free_port  # noqa: PLC0415

    port = free_port()
    with subprocess.Popen(
        [sys.executable, "-c", ECHO, str(port)], stdout=subprocess.PIPE, text=True, cwd=ROOT
    ) as process:
        assert process.stdout is not None
        process.stdout.readline()
        pages = [browser.new_context(viewport=size).new_page() for size in (TABLET, SCREEN)]
        for page in pages:
            page.goto(f"http://127.0.0.1:{port}/")
        desk, board = pages
        said = "document.querySelector('#said').textContent"
        desk.wait_for_timeout(300)
        times = [
            one_tap(desk, "#tap", board, f"{said} === '{count}'") for count in range(1, TAPS + 1)
        ]
        process.kill()
    return times


def teachers(hall: Hall, browser: Browser) -> BrowserContext:
    """Return a context that is signed in as the teacher."""
    context = browser.new_context(viewport=TABLET)
    hall.sign_in(context)
    return context


def bench_taps(hall: Hall, browser: Browser) -> list[float]:
    """Time taps on a chip after a name was chosen, until its tile stands on the board.

    A tap a way, each on a problem of its own after every fourth, as in a talk.
    """
    times: list[float] = []
    while len(times) < TAPS:
        talk = hall.begin("Over a ten")
        desk = teachers(hall, browser).new_page()
        desk.goto(hall.origin + talk.desk_path)
        board = browser.new_context(viewport=SCREEN).new_page()
        board.goto(f"{hall.origin}/board/{talk.board}")
        names = desk.locator("#names button")
        names.first.wait_for()
        for problem in ("19 + 6", "39 + 27", "62 − 25", "62 − 27", "148 + 37"):
            desk.locator("#next").click()
            desk.locator("#strip .now", has_text=problem).wait_for()
            for told in range(4):
                names.nth(len(times) % 32).click()
                chip = f'#chips [data-key="chip-{told}"]'
                times.append(one_tap(desk, chip, board, f"{THERE} === {told + 1}"))
                desk.wait_for_selector("#saved.full", state="attached")
        desk.context.close()
        board.context.close()
    return times


def bench_starts() -> dict[str, Any]:
    """Time starts of the app with an empty data folder and with a furnished one, until a page.

    The interpreter's compiled files are there; the first page is the answer at `/running`
    and then the page that the one-time address leads to.
    """
    found: dict[str, Any] = {}
    for name in ("new_folder", "same_folder_again"):
        folder = tempfile.mkdtemp()
        if name != "new_folder":
            _started(folder)
        found[name] = []
        for _ in range(STARTS):
            chosen = tempfile.mkdtemp() if name == "new_folder" else folder
            found[name].append(round(_started(chosen)))
    return {
        "ms": found,
        "median_ms": {name: statistics.median(times) for name, times in found.items()},
    }


def _started(folder: str) -> float:
    start = time.perf_counter_ns()
    server = running({"WAYSAID_DATA": folder}, "open_browser=False")
    person = server.teacher()
    while (page := person.get("/")).status == 302:
        page = person.get(page.headers["Location"])
        break
    took = (time.perf_counter_ns() - start) / 1e6
    assert page.status == 200, page.status
    server.kill()
    return took


def bench_weight(hall: Hall, browser: Browser) -> dict[str, Any]:
    """Count every byte that the desk and the board fetch, headers included, cold and warm.

    The live stream is counted until its first state has come. The fonts of a visit are counted in
    it; the board's visit has a browser of its own.
    """
    talk = hall.begin("Over a ten")
    hall.teacher.get(talk.desk_path)
    found = {}
    for name, path in (("desk", talk.desk_path), ("board", f"/board/{talk.board}")):
        context = teachers(hall, browser) if name == "desk" else browser.new_context()
        found[name] = {visit: _bytes_of(context, hall.origin + path) for visit in ("cold", "warm")}
        context.close()
    return found


def _bytes_of(context: BrowserContext, address: str) -> dict[str, Any]:
    page = context.new_page()
    session = context.new_cdp_session(page)
    session.send("Network.enable")
    kinds: dict[str, str] = {}
    weights: dict[str, float] = {}
    session.on("Network.responseReceived", lambda e: kinds.update({e["requestId"]: e["type"]}))
    session.on(
        "Network.responseReceived",
        lambda e: weights.update({e["requestId"]: e["response"]["encodedDataLength"]}),
    )
    session.on(
        "Network.dataReceived",
        lambda e: weights.update(
            {e["requestId"]: weights.get(e["requestId"], 0) + e["encodedDataLength"]}
        ),
    )
    session.on(
        "Network.loadingFinished",
        lambda e: weights.update({e["requestId"]: e["encodedDataLength"]}),
    )
    page.goto(address)
    page.wait_for_selector("#main[data-view], #names button", state="attached")
    page.wait_for_timeout(1500)
    by_kind: dict[str, int] = {}
    for request, weight in weights.items():
        kind = kinds.get(request, "Other").lower()
        by_kind[kind] = by_kind.get(kind, 0) + round(weight)
    page.close()
    return {"bytes": sum(by_kind.values()), "by_kind": by_kind, "requests": len(weights)}


def rss(pid: int) -> int:
    """Return the resident memory of a process in KB."""
    lines = Path(f"/proc/{pid}/status").read_text(encoding="utf-8").splitlines()
    return next(int(line.split()[1]) for line in lines if line.startswith(RSS))


def bench_memory(folder: Path, browser: Browser) -> dict[str, Any]:
    """Read the server's memory after the start, then after events with three screens open."""
    hall = Hall(folder)
    pid = hall.server.process.pid
    found = {"after_start_kb": rss(pid)}
    talk = hall.begin("Over a ten")
    context = teachers(hall, browser)
    for path in (talk.desk_path, f"/board/{talk.board}", f"/one/{talk.one}"):
        context.new_page().goto(hall.origin + path)
    hall.teacher.get(talk.desk_path)
    for number in range(EVENTS[-1]):
        problem = f"p{1 + number // EVENTS[0]}"
        body: dict[str, Any] = {"kind": "problem-shown", "problem": problem}
        if number % EVENTS[0]:
            way = {"child": None, "steps": [], "answer": str(number), "picture": "words"}
            body = {
                "kind": "way-shared", "id": f"w{number}", "problem": problem,
                "words": f"I just saw {number}", **way,
            }  # fmt: skip
        sent = {"client": "bench", "events": [{"sequence": number, **body}]}
        answer = hall.teacher.post(f"/talks/{talk.id}/events", sent)
        assert answer.status == 200, answer.text
        if number + 1 in EVENTS:
            time.sleep(1)
            found[f"after_{number + 1}_events_kb"] = rss(pid)
    hall.server.kill()
    return found


def machine() -> dict[str, Any]:
    """Return the machine in general words, and how busy it was."""
    memory = Path("/proc/meminfo").read_text(encoding="utf-8").splitlines()[0].split()[1]
    return {
        "cores": os.cpu_count(),
        "memory_gb": round(int(memory) / 2**20),
        "load_before": [round(one, 2) for one in os.getloadavg()],
        "python": sys.version.split()[0],
        "date": date.today().isoformat(),
    }


def main() -> None:
    """Run every part and print what was seen.

    With `tap`, the taps and their echo alone; with `line`, the line's preview alone.
    """
    only_tap, only_line = sys.argv[1:] == ["tap"], sys.argv[1:] == ["line"]
    whole = not (only_tap or only_line)
    found: dict[str, Any] = {"machine": machine()}
    if whole:
        found |= bench_apart("bench_ways.py")
        found |= {"composing": bench_apart("bench_compose.py")}
        found |= bench_apart("bench_year.py")
        found |= bench_apart("bench_growth.py")
        found |= bench_apart("bench_months.py")
        found |= {"hearing": bench_apart("bench_hearing.py"), "start": bench_starts()}
    flags = [*FLAGS, "--no-sandbox"] if is_root() else list(FLAGS)
    with tempfile.TemporaryDirectory() as folder, sync_playwright() as playwright:
        chosen = program()
        assert chosen, "Chromium is not installed; `make setup` installs it."
        browser = playwright.chromium.launch(executable_path=chosen, args=flags)
        hall = Hall(Path(folder) / "hall")
        if not only_line:
            tap, echo = spread(bench_taps(hall, browser)), spread(bench_echo(browser))
            found["tap_to_board"] = {"tap": tap, "echo": echo, "ratio": ratio(tap, echo)}
        if not only_tap:
            found["line"] = bench_line(hall, browser)
        if whole:
            found["weight"] = bench_weight(hall, browser)
        hall.server.kill()
        if whole:
            found["memory"] = bench_memory(Path(folder) / "memory", browser)
        browser.close()
    found["machine"]["load_after"] = [round(one, 2) for one in os.getloadavg()]
    tell(found)


if __name__ == "__main__":
    main()

"""Two desks on one talk: whatever they send at once, both end with the same state."""

import random
import threading

from tests.counts import count
from tests.site.made import answer, sent
from tests.site.server import begin


def test_two_desks_and_the_board_end_alike(serve):
    server = serve()
    teacher = server.teacher()
    desk = begin(teacher)
    talk, problem = desk["talk"], desk["problems"][0]["id"]
    events = count(test=40, sweep=400)
    live, seen = f"/live/desk/{talk}", f"/live/board/{desk['board_token']}"
    streams = [teacher.watch(live) for _ in range(2)]
    board = teacher.watch(seen)

    def type_answers(client):
        dice = random.Random(client)
        for number in range(events):
            given = answer(problem, str(dice.randrange(1000)), number, id=f"{client}-{number}")
            assert teacher.post(f"/talks/{talk}/events", sent(given, client=client)).status == 200

    typing = [threading.Thread(target=type_answers, args=(name,)) for name in ("one", "two")]
    for each in typing:
        each.start()
    for each in typing:
        each.join()
    last = desk["order"] + 2 * events
    first, second = (at_the_end(teacher, stream, live, last) for stream in streams)
    assert without_now(first) == without_now(second)
    assert len(first["answers"]) == len({(a["text"], a["child"]) for a in first["answers"]})
    assert first["saved_by"]["one"] == first["saved_by"]["two"] == events - 1
    shown = at_the_end(teacher, board, seen, last)
    assert [each["text"] for each in shown["answers"]] == [
        each["text"] for each in first["board"]["answers"]
    ]


def at_the_end(teacher, stream, path, last):
    """Return the state at the end; a stream that fell behind is opened again, as a page does."""
    order = 0
    for state in stream.states():
        assert state["order"] >= order
        order = state["order"]
        if order >= last:
            return state
    return teacher.watch(path).until(last)


def without_now(state):
    """Return a desk's state without the server's clock, which goes on between two streams."""
    return {key: value for key, value in state.items() if key != "now"}

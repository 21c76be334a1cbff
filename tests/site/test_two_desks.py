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
    streams = [teacher.watch(f"/live/desk/{talk}") for _ in range(2)]
    board = teacher.watch(f"/live/board/{desk['board_token']}")

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
    first, second = (stream.until(last) for stream in streams)
    assert first == second
    assert len(first["answers"]) == len({(a["text"], a["child"]) for a in first["answers"]})
    assert first["saved_by"]["one"] == first["saved_by"]["two"] == events - 1
    shown = board.until(last)
    assert [each["text"] for each in shown["answers"]] == [
        each["text"] for each in first["board"]["answers"]
    ]

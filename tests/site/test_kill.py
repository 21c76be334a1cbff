"""kill -9 at random points of a scripted talk: nothing that was answered is lost or doubled."""

import http.client
import json
import random
import sqlite3
import threading
import time

from tests.counts import count
from tests.site.made import answer, sent, way
from tests.site.server import begin

BURST = 12
"""Events that a desk tries to send in one round, while the power is cut."""


class Desk:
    """A desk as it should be: an event is sent again, with its own sequence, until it is saved."""

    def __init__(self, talk, problem):
        self.talk, self.problem = talk, problem
        self.next = 0
        self.saved = {}
        self.waiting = []

    def say_more(self):
        for _ in range(BURST):
            number = self.next
            told = way(self.problem, None, number)
            heard = answer(self.problem, str(number), number)
            self.waiting.append(told if number % 3 else heard)
            self.next += 1

    def wait_for(self, more):
        """Wait until so many events of this round are saved."""
        while len(self.waiting) > BURST - more:
            time.sleep(0.001)

    def send(self, person):
        """Send what waits, one by one, until it is saved or the server is gone."""
        while self.waiting:
            event = self.waiting[0]
            try:
                said = person.post(f"/talks/{self.talk}/events", sent(event))
            except (OSError, http.client.HTTPException, json.JSONDecodeError):
                return
            assert said.status == 200, said.text
            (row,) = said.json()["saved"]
            self.saved[row["sequence"]] = row["order"]
            self.waiting.pop(0)


def rows_of(server_url, folder, talk):
    query = (
        'SELECT client, sequence, "order", body FROM waysaid_site_eventrow '
        f'WHERE talk_id = {int(talk)} ORDER BY "order"'
    )
    if server_url:
        import psycopg

        with psycopg.connect(server_url) as connection:
            return connection.execute(query).fetchall()
    connection = sqlite3.connect(folder / "data" / "waysaid.sqlite3")
    try:
        return connection.execute(query).fetchall()
    finally:
        connection.close()


def test_a_talk_outlives_its_server(serve, tmp_path, sweep_note, database_url):
    dice = random.Random("power cut")
    environment = {"WAYSAID_DATABASE_URL": database_url} if database_url else {}
    server = serve(**environment)
    teacher = server.teacher()
    start = begin(teacher)
    desk = Desk(start["talk"], start["problems"][0]["id"])
    rounds = count(test=10, sweep=300)
    for _ in range(rounds):
        desk.say_more()
        sending = threading.Thread(target=desk.send, args=(teacher,))
        sending.start()
        desk.wait_for(dice.randrange(BURST))
        sending.join(dice.uniform(0.0, 0.012))
        server.kill()
        sending.join()
        server = serve(**environment)
        # The browser still has its session and its page: the desk goes on in the same talk.
        teacher.port = server.port
        desk.send(teacher)
        assert not desk.waiting
    rows = rows_of(database_url, tmp_path, desk.talk)
    mine = [(sequence, order) for client, sequence, order, _body in rows if client == "desk-1"]
    assert dict(mine) == desk.saved
    assert len(mine) == len(desk.saved) == rounds * BURST
    assert [order for *_, order, _body in rows] == list(range(1, len(rows) + 1))
    state = teacher.get(f"/talks/{desk.talk}/desk.json").json()
    assert len(state["ways"]) == sum(1 for number in range(desk.next) if number % 3)
    sweep_note("killed at a random point: nothing answered is lost or doubled", rounds)

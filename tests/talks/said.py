"""A talk told by a desk without a screen: events as a desk sends them."""

from typing import Any

from tests.talks.hall import Hall, Talk


class Teller:
    """Somebody at a desk who types fast and never makes a mistake."""

    def __init__(self, hall: Hall, talk: Talk, client: str = "teller") -> None:
        self.hall, self.talk, self.client = hall, talk, client
        self.sequence = 0
        hall.teacher.get(talk.desk_path)

    def tell(self, kind: str, **body: Any) -> None:
        """Send one event; it is saved when this returns."""
        self.sequence += 1
        event = {"sequence": self.sequence, "kind": kind, **body}
        delivery = {"client": self.client, "events": [event]}
        answer = self.hall.teacher.post(f"/talks/{self.talk.id}/events", delivery)
        assert answer.status == 200, answer.text

    def way(self, problem: str, child: str | None, line: str, **body: Any) -> None:
        """Send a way as the line is read."""
        asked = {"problem": problem, "line": line}
        read = self.hall.teacher.post(f"/talks/{self.talk.id}/read", asked).json()
        told = {
            "id": f"{self.client}-{self.sequence}",
            "problem": problem,
            "child": self.hall.children[child] if child else None,
            "relation": "own",
            "to": None,
            "steps": read["steps"],
            "words": line,
            "family": read["family"],
            "answer": read["answer"],
            "picture": "equations" if read["steps"] else "words",
            "foreseen": False,
        }
        self.tell("way-shared", **(told | body))

    def answer(self, problem: str, text: str) -> None:
        """Send an answer that was heard."""
        heard = {"id": f"{self.client}-{self.sequence}", "problem": problem, "text": text}
        self.tell("answer-heard", **heard, child=None)

    def notice(self, child: str, words: str, *marks: list[Any]) -> None:
        """Send what a child noticed."""
        noticed = {"id": f"{self.client}-{self.sequence}", "child": self.hall.children[child]}
        self.tell(
            "noticed",
            **noticed,
            words=words,
            marks=[{"problem": problem, "place": place} for problem, place in marks],
            join=True,
        )

"""Right or wrong, a board looks the same: one talk twice, with other numbers as long."""

import io
import re

import pytest
from PIL import Image, ImageChops

from tests.talks.said import Teller
from tests.talks.screens import waited

pytestmark = pytest.mark.browser

RIGHT = {
    "bridge": "39+1=40 40+26=66", "split": "30+20=50 9+7=16 50+16=66", "answers": ("66", "56"),
    "words": "it is 66", "notice": "39 and 27 make 66", "supposed": "76",
}  # fmt: skip
WRONG = {
    "bridge": "39+1=40 40+26=67", "split": "30+20=50 9+7=17 50+17=67", "answers": ("67", "57"),
    "words": "it is 67", "notice": "39 and 27 make 67", "supposed": "70",
}  # fmt: skip
SHAPE = """() => [...document.querySelectorAll("body *")].filter((node) => !node.closest("script"))
  .map((node) => {
    const box = node.getBoundingClientRect();
    const rest = [...node.attributes]
      .filter((one) => !/^(data-key|data-id|aria-labelledby|id)$/.test(one.name))
      .map((one) => `${one.name}=${one.value}`);
    const own = [...node.childNodes].filter((one) => one.nodeType === Node.TEXT_NODE)
      .map((one) => one.data);
    const round = (value) => Math.round(value * 10) / 10;
    return {
      tag: node.tagName, rest, own,
      box: [box.left, box.top, box.width, box.height].map(round),
      ink: getComputedStyle(node).color,
    };
  })"""
PAGE_OWN = re.compile(r"(data-live|data-events|data-talk)=\S+")


def hold(hall, said, open_board):
    """Tell a talk; yield its board and payload at each stop."""
    talk = hall.begin("Over a ten")
    teller, board = Teller(hall, talk), open_board(talk)
    stops = []

    def stop(view):
        order = hall.state(talk)["order"]
        board.page.wait_for_selector(f'#main[data-view="{view}"]')
        seen = "() => JSON.parse(Object.values(sessionStorage)[0]).order"
        assert waited(lambda: board.page.evaluate(seen), order) == order
        # The state is kept just before it is painted, in the same task as the paint.
        stream = hall.visitor().watch(f"/live/board/{talk.board}?wide=1778")
        payload = next(stream.states())
        stream.close()
        stops.append((payload, board.page.evaluate(SHAPE), board.page.screenshot()))

    teller.tell("problem-shown", problem="p2")
    for answer in said["answers"]:
        teller.answer("p2", answer)
    teller.tell("phase-set", phase="answers")
    stop("answers")
    teller.way("p2", "Noor", said["bridge"], picture="number-line")
    teller.way("p2", "Wren", said["split"])
    teller.way("p2", "Goran", said["words"])
    teller.way("p2", "Uma", said["bridge"], picture="bar")
    stop("ways")
    for picture in ("number-bond", "place-value"):
        way = hall.state(talk)["ways"][1]["id"]
        teller.tell("way-drawn-as", way=way, picture=picture)
        stop("ways")
    teller.tell("phase-set", phase="connect")
    teller.notice("Noor", said["notice"], ["p2", 0], ["p2", "answer"])
    changed = [{"problem": "p2", "place": 0}]
    teller.tell("what-if", id="i", amount=10, places=changed, child=None)
    supposed = {"what_if": "i", "problem": "p2", "text": said["supposed"], "child": None}
    teller.tell("what-if-answer", **supposed)
    stop("connect")
    return stops


def blank(value):
    """Return a payload with every digit of its texts the same, and without random ids."""
    if isinstance(value, str):
        return re.sub(r"\d", "0", value)
    if isinstance(value, list):
        return [blank(inner) for inner in value]
    if isinstance(value, dict):
        return {key: blank(inner) for key, inner in value.items() if key != "spoken"}
    return value


def alike(shape):
    """Return what a page is made of, its digits all the same."""
    rows = []
    for node in shape:
        rest = [PAGE_OWN.sub("", blank(one)) for one in node["rest"]]
        own = [] if node["tag"] in ("title", "desc") else blank(node["own"])
        rows.append((node["tag"], rest, own, node["box"], node["ink"]))
    return rows


def digits(shape, other):
    """Return the boxes of the elements whose own text differs in the two."""
    pairs = zip(shape, other, strict=True)
    return [one["box"] for one, two in pairs if one["own"] != two["own"]]


def unlike(first, second, boxes):
    """Return the box of what differs between two pictures outside of these boxes, or None."""
    one, two = (Image.open(io.BytesIO(each)).convert("RGB") for each in (first, second))
    difference = ImageChops.difference(one, two)
    for left, top, width, height in boxes:
        area = (int(left) - 2, int(top) - 2, int(left + width) + 3, int(top + height) + 3)
        difference.paste((0, 0, 0), area)
    return difference.getbbox()


@pytest.mark.usefixtures("calm")
def test_a_wrong_number_changes_only_its_digits_on_the_board(hall, open_board):
    right, wrong = (hold(hall, said, open_board) for said in (RIGHT, WRONG))
    assert len(right) == len(wrong) == 5
    for (payload, shape, picture), (other, other_shape, other_picture) in zip(
        right, wrong, strict=True
    ):
        assert payload["phase"] == other["phase"]
        assert payload != other
        assert blank(payload) == blank(other)
        assert alike(shape) == alike(other_shape)
        boxes = digits(shape, other_shape)
        assert boxes
        assert unlike(picture, other_picture, boxes) is None

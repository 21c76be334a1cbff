"""Random talks for the tests: events about a few problems, ways and children, in any order."""

from hypothesis import strategies as st

from waysaid.drawing import Picture
from waysaid.hearing import Part
from waysaid.number import parse_equation
from waysaid.strings import Does
from waysaid.talk import event as happened
from waysaid.talk.event import EventId, Mark, Phase, PlannedProblem, Record, Relation, SaidStep
from waysaid.ways import Family, Kind

PROBLEMS = ("p1", "p2", "p3", "p4")
WAYS = ("w1", "w2", "w3")
CHILDREN = ("c1", "c2", "c3", None)
THINGS = ("t1", "t2")

problem = st.sampled_from(PROBLEMS)
way = st.sampled_from(WAYS)
child = st.sampled_from(CHILDREN)
thing = st.sampled_from(THINGS)
answer = st.sampled_from(("62", "52", "61", "about 60"))
words = st.text(st.characters(exclude_categories=["Cs"], exclude_characters="\0"), max_size=20)
picture = st.sampled_from(Picture)
family = st.none() | st.sampled_from(Family)
step = st.builds(
    SaidStep,
    st.sampled_from(Kind),
    st.sampled_from(
        ("37 + 3 = 40", "40 + 22 = 62", "7 + 5 = 11", "4 + 3 = 8", "3 - 8 = -5", "40 + 2 = _")
    ).map(parse_equation),
    st.lists(st.sampled_from(Part), max_size=2, unique=True).map(tuple),
)
steps = st.lists(step, max_size=3).map(tuple)
group = st.lists(st.integers(-1, 6), max_size=4).map(tuple)
groups = st.lists(group, max_size=3).map(tuple)
mark = st.builds(Mark, problem, st.sampled_from((0, 1, "answer", "row")))
marks = st.lists(mark, max_size=3).map(tuple)

opened = st.just(
    happened.TalkOpened(
        "Today",
        "en",
        "es",
        (
            PlannedProblem("p1", "40 + 25"),
            PlannedProblem("p2", "37 + 25"),
            PlannedProblem("p4", "image dice: 4 3"),
        ),
    )
)
undo = st.builds(
    happened.Undo,
    st.builds(EventId, st.sampled_from(("desk", "board")), st.integers(0, 30)),
)
line = st.lists(st.integers(0, 1778), max_size=6).map(tuple)
proposed = st.none() | st.builds(happened.Proposed, family)
body = st.one_of(
    st.builds(happened.ProblemAdded, problem, st.just("52 - 38"), st.none() | problem),
    st.builds(happened.ProblemShown, problem),
    st.builds(happened.LookedAgain, problem),
    st.builds(happened.ImageKept, problem, st.booleans()),
    st.builds(happened.PhaseSet, st.sampled_from(Phase)),
    st.builds(happened.AnswerHeard, thing, problem, answer, child),
    st.builds(happened.AnswerSettled, problem, st.none() | answer),
    st.builds(happened.AnswersNamed, st.booleans()),
    st.builds(
        happened.WayShared,
        way,
        problem,
        child,
        st.sampled_from(Relation),
        st.none() | way,
        steps,
        words,
        family,
        st.none() | answer,
        picture,
        st.booleans(),
        groups,
        proposed,
    ),
    st.builds(
        happened.WayEdited,
        way,
        steps,
        words,
        family,
        st.none() | answer,
        picture,
        groups,
        proposed,
    ),
    st.builds(happened.WayAgreed, way, child),
    st.builds(happened.WayDrawnAs, way, picture),
    st.builds(happened.WaySeenAs, way, groups),
    st.builds(happened.Passed, problem, st.sampled_from(("c1", "c2"))),
    st.builds(
        happened.StrokesDrawn,
        thing,
        st.none() | problem,
        st.none() | way,
        st.lists(line, max_size=2).map(tuple),
        st.sampled_from(happened.Ground),
    ),
    st.builds(happened.Erased, thing),
    st.builds(happened.TurnAndTalk, st.booleans()),
    st.builds(happened.NamesHidden, st.booleans()),
    st.just(happened.Paused()),
    st.just(happened.Resumed()),
    st.just(happened.Closed()),
    st.builds(happened.Noticed, thing, child, words, marks, st.booleans()),
    st.builds(happened.LinkDrawn, thing, st.just("same-total"), marks, child, words),
    st.builds(happened.WhatIf, thing, st.integers(-10, 10), marks, child, st.sampled_from(Does)),
    st.builds(happened.WhatIfAnswer, thing, problem, answer, child),
    undo,
)


@st.composite
def talks(draw: st.DrawFn) -> list[Record]:
    """A talk as the server keeps it: two clients, each counting its own events."""
    bodies = [draw(opened), *draw(st.lists(body, max_size=25))]
    counted = {"desk": 0, "board": 0}
    records = []
    for order, each in enumerate(bodies, start=1):
        client = draw(st.sampled_from(("desk", "board")))
        records.append(Record(order, client, counted[client], each, order * 1000))
        counted[client] += 1
    return records

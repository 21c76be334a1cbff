"""A plan as the tests of its papers use it: all of it made up."""

from waysaid.paper import Drawing, PlannedOnPaper, PlanOnPaper, SlipToHear, Way

LINE = (
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 600 200">'
    '<line x1="10" y1="120" x2="590" y2="120" stroke="black" stroke-width="4"/></svg>'
)
WAY = Way("fill up to a ten", ("39 + 1 = 40", "40 + 26 = 66"), Drawing(LINE, "a line to 66"))
SLIP = SlipToHear("56", "The ten from 9 + 7 may have been lost.")


def plan(language="en", **changed):
    """Return a plan of two problems and a quick image."""
    problems = (
        PlannedOnPaper("40 + 26", "A full ten: open to everyone."),
        PlannedOnPaper("39 + 27", "One has moved across.", None, (WAY, WAY), (SLIP,)),
        PlannedOnPaper("Dots in rows", "", Drawing(LINE, "Dots in rows.")),
    )
    given = {
        "signals": ("I have a way", "another #way*"),
        "norms": ("We listen to each other.",),
        "questions": ("What stayed the same?",),
        "links": ("40 + 26 · 39 + 27: one moved across",),
        **changed,
    }
    return PlanOnPaper("Moving one across", "2B · Thursday", language, problems, **given)

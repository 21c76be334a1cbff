"""A talk on paper and the papers around it, a string as slides, and a year as a calendar."""

from waysaid.paper.calendar_in import CalendarError, SchoolCalendar, Trouble, read_calendar
from waysaid.paper.calendar_out import year_calendar
from waysaid.paper.chart import Chart, Connection, ProblemOnPaper, Size, ToldOnPaper, chart_pdf
from waysaid.paper.parts import Drawing, Paper, Way, paper_pdf
from waysaid.paper.planned import PlannedOnPaper, PlanOnPaper, SlipToHear, problem_on_paper
from waysaid.paper.press import Sheet
from waysaid.paper.recording import recording_sheet
from waysaid.paper.slides import ProblemOnSlide, SignalOnSlide, Slides, slides_pptx
from waysaid.paper.string_slides import Around, Wordings, string_slides
from waysaid.paper.talk_chart import Names, chart_of

__all__ = [
    "Around",
    "CalendarError",
    "Chart",
    "Connection",
    "Drawing",
    "Names",
    "Paper",
    "PlanOnPaper",
    "PlannedOnPaper",
    "ProblemOnPaper",
    "ProblemOnSlide",
    "SchoolCalendar",
    "Sheet",
    "SignalOnSlide",
    "Size",
    "Slides",
    "SlipToHear",
    "ToldOnPaper",
    "Trouble",
    "Way",
    "Wordings",
    "chart_of",
    "chart_pdf",
    "paper_pdf",
    "problem_on_paper",
    "read_calendar",
    "recording_sheet",
    "slides_pptx",
    "string_slides",
    "year_calendar",
]

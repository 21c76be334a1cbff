"""A talk on paper, the papers around it, and a year as a calendar."""

from waysaid.paper.calendar_in import CalendarError, SchoolCalendar, Trouble, read_calendar
from waysaid.paper.calendar_out import year_calendar
from waysaid.paper.chart import Chart, Connection, ProblemOnPaper, Size, ToldOnPaper, chart_pdf
from waysaid.paper.parts import Drawing, Paper, Way, paper_pdf
from waysaid.paper.planned import PlannedOnPaper, PlanOnPaper, SlipToHear, problem_on_paper
from waysaid.paper.press import Sheet
from waysaid.paper.recording import recording_sheet
from waysaid.paper.talk_chart import Names, chart_of

__all__ = [
    "CalendarError",
    "Chart",
    "Connection",
    "Drawing",
    "Names",
    "Paper",
    "PlanOnPaper",
    "PlannedOnPaper",
    "ProblemOnPaper",
    "SchoolCalendar",
    "Sheet",
    "Size",
    "SlipToHear",
    "ToldOnPaper",
    "Trouble",
    "Way",
    "chart_of",
    "chart_pdf",
    "paper_pdf",
    "problem_on_paper",
    "read_calendar",
    "recording_sheet",
    "year_calendar",
]

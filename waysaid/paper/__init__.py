"""A talk on paper, and a year as a calendar."""

from waysaid.paper.calendar_in import CalendarError, SchoolCalendar, Trouble, read_calendar
from waysaid.paper.calendar_out import year_calendar
from waysaid.paper.chart import Chart, Connection, ProblemOnPaper, Size, ToldOnPaper, chart_pdf
from waysaid.paper.talk_chart import Names, chart_of

__all__ = [
    "CalendarError",
    "Chart",
    "Connection",
    "Names",
    "ProblemOnPaper",
    "SchoolCalendar",
    "Size",
    "ToldOnPaper",
    "Trouble",
    "chart_of",
    "chart_pdf",
    "read_calendar",
    "year_calendar",
]

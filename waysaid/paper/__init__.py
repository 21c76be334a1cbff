"""A talk on paper and the papers around it, a string as slides, and a year as a calendar."""

from waysaid.paper.calendar_in import CalendarError, SchoolCalendar, Trouble, read_calendar
from waysaid.paper.calendar_out import year_calendar
from waysaid.paper.chart import Chart, Connection, ProblemOnPaper, Size, ToldOnPaper, chart_pdf
from waysaid.paper.class_report import (
    ClassReport,
    FamilyReported,
    TalkReported,
    VoiceReported,
    class_report,
)
from waysaid.paper.evidence_table import (
    TableError,
    evidence_csv,
    read_evidence_csv,
    read_evidence_parquet,
    write_evidence_parquet,
)
from waysaid.paper.family_page import family_page
from waysaid.paper.months import MonthRow, months
from waysaid.paper.parts import Drawing, Paper, Way, paper_pdf
from waysaid.paper.planned import PlannedOnPaper, PlanOnPaper, SlipToHear, problem_on_paper
from waysaid.paper.press import Sheet
from waysaid.paper.recording import empty_sheet, recording_sheet
from waysaid.paper.slides import ProblemOnSlide, SignalOnSlide, Slides, slides_pptx
from waysaid.paper.string_slides import Around, Wordings, string_slides
from waysaid.paper.string_text import string_line, string_text
from waysaid.paper.substitute import substitute_pack
from waysaid.paper.talk_chart import Names, chart_of
from waysaid.paper.talk_file import (
    LARGEST_TALK_FILE,
    BoardInFile,
    ChildInFile,
    SignalInFile,
    TalkFile,
    outside,
    talk_file_bytes,
    with_children,
)
from waysaid.paper.talk_file_in import TalkFileError, read_talk_file
from waysaid.paper.talk_schema import talk_schema

__all__ = [
    "LARGEST_TALK_FILE",
    "Around",
    "BoardInFile",
    "CalendarError",
    "Chart",
    "ChildInFile",
    "ClassReport",
    "Connection",
    "Drawing",
    "FamilyReported",
    "MonthRow",
    "Names",
    "Paper",
    "PlanOnPaper",
    "PlannedOnPaper",
    "ProblemOnPaper",
    "ProblemOnSlide",
    "SchoolCalendar",
    "Sheet",
    "SignalInFile",
    "SignalOnSlide",
    "Size",
    "Slides",
    "SlipToHear",
    "TableError",
    "TalkFile",
    "TalkFileError",
    "TalkReported",
    "ToldOnPaper",
    "Trouble",
    "VoiceReported",
    "Way",
    "Wordings",
    "chart_of",
    "chart_pdf",
    "class_report",
    "empty_sheet",
    "evidence_csv",
    "family_page",
    "months",
    "outside",
    "paper_pdf",
    "problem_on_paper",
    "read_calendar",
    "read_evidence_csv",
    "read_evidence_parquet",
    "read_talk_file",
    "recording_sheet",
    "slides_pptx",
    "string_line",
    "string_slides",
    "string_text",
    "substitute_pack",
    "talk_file_bytes",
    "talk_schema",
    "with_children",
    "write_evidence_parquet",
    "year_calendar",
]

"""A talk on paper."""

from waysaid.paper.chart import Chart, Connection, ProblemOnPaper, Size, ToldOnPaper, chart_pdf
from waysaid.paper.talk_chart import Names, chart_of

__all__ = [
    "Chart",
    "Connection",
    "Names",
    "ProblemOnPaper",
    "Size",
    "ToldOnPaper",
    "chart_of",
    "chart_pdf",
]

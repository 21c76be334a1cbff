"""Exact numbers, expressions and equations; read, print and say them."""

from waysaid.number.errors import Unreadable
from waysaid.number.expression import (
    BLANK,
    Blank,
    Equation,
    Exact,
    Expression,
    NoValue,
    Operation,
    Problem,
    Sign,
    apply,
    blanks,
    chain,
    exact,
    is_true,
    leaves,
    signed_terms,
    solve,
    value_of,
)
from waysaid.number.parse import parse, parse_equation, parse_expression
from waysaid.number.text import Print, number_text, sign_text, text

__all__ = [
    "BLANK",
    "Blank",
    "Equation",
    "Exact",
    "Expression",
    "NoValue",
    "Operation",
    "Print",
    "Problem",
    "Sign",
    "Unreadable",
    "apply",
    "blanks",
    "chain",
    "exact",
    "is_true",
    "leaves",
    "number_text",
    "parse",
    "parse_equation",
    "parse_expression",
    "sign_text",
    "signed_terms",
    "solve",
    "text",
    "value_of",
]

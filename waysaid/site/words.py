"""Words that the live pages' scripts show, by key, in the language of the page.

The keys are the scripts'; the texts are translated like those of the templates. A `{name}` in a
text is filled by the script.
"""

from collections.abc import Mapping
from typing import Any

from django.utils.translation import gettext_lazy as _
from django.utils.translation import pgettext_lazy

Words = Mapping[str, Any]

BOARD: Words = {
    "adds_to": _("adds to"),
    "answers_we_have": _("Answers we have:"),
    "changes_way": _("a new way"),
    "close_quote": pgettext_lazy("closing quotation mark", "”"),
    "folded_ways": _("Ways heard before"),
    "how_many": _("How many?"),
    "how_seen": _("How did you see it?"),
    "lost_touch": _("waiting for the desk"),
    "no_name": _("no name"),
    "norms": _("How we talk"),
    "noticings": _("What we noticed"),
    "open_quote": pgettext_lazy("opening quotation mark", "“"),
    "paused": _("We pause here."),
    "paused_more": _("We go on another time."),
    "pen": _("Pen"),
    "pen_rub": _("Rub out"),
    "problems_so_far": _("Problems so far"),
    "show_noticing": _("Show what {name} noticed"),
    "show_way": _("Show the way of {name}"),
    "string": _("The problems"),
    "thank_you": _("Thank you."),
    "turn_and_talk": _("turn and talk"),
    "what_do_you_notice": _("What do you notice?"),
    "what_if": _("What if?"),
}


PICTURES: Words = {
    "equations": _("as equations"),
    "number-line": _("as number line"),
    "words": _("only the words"),
}
MORE_PICTURES: Words = {
    "area": _("as an area model"),
    "array": _("as rows of dots"),
    "bar": _("as a bar"),
    "dots": _("as groups of dots"),
    "double-bar": _("as a double bar"),
    "fraction-bar": _("as fraction bars"),
    "fraction-circle": _("as fraction circles"),
    "hops": _("as equal hops"),
    "hundred-grid": _("on a hundred grid"),
    "number-bond": _("as number bonds"),
    "place-value": _("as tens and ones"),
    "ten-frame": _("in ten frames"),
}

ONE: Words = {
    "image_hide": _("Hide it"),
    "image_keep": _("Show it to stay"),
    "once_more": _("One more look"),
    **BOARD,
    "as_answer": _("As an answer"),
    "as_problem": _("As a problem"),
    "as_way": _("As a way"),
    "all_saved": _("All is saved."),
    "board_shows": _("The board shows"),
    "draw_as": _("Draw it"),
    "line_hint": _("a name, a comma, what was said"),
    "line_of": _("What did {name} say?"),
    "next": _("Next"),
    "next_problem": _("Next problem"),
    "not_saved": _("Not saved yet; it is tried again by itself. {why}"),
    "phases": {
        "after": _("end"),
        "answers": _("answers"),
        "before": _("start"),
        "connect": _("connect"),
        "think": _("think"),
        "ways": _("ways"),
    },
    "pictures": PICTURES,
    "pictures_more": MORE_PICTURES,
    "put_on_board": _("Put on the board"),
    "show_drawer": _("Write"),
    "shut_drawer": _("Put away"),
    "try_now": _("Try now"),
    "undo": _("Undo"),
    "understood": _("Understood"),
    "what_if_needs": _(
        "Choose numbers of the problems, and say how they change: +1, −10, × 2, ÷ 2, "
        "<-> (swap two) or -> 3 (move 3 across)."
    ),
    "which_child": _("Which child?"),
    "which_of": _("Which child: {names}?"),
    "who_is_speaking": _("Who is speaking?"),
}

DESK: Words = {
    "about_family": _("About ways like this: {family}"),
    **ONE,
    "add": _("Add"),
    "add_problem": _("Add a problem"),
    "another_drawing": _("another drawing…"),
    "another_family": _("or …"),
    "as_another": _("as …"),
    "answer_of": _("Answer of"),
    "ask_links": _("What connects them?"),
    "changes_own": _("changes own way"),
    "code_board": _("A code for a board"),
    "code_desk": _("A code for a desk"),
    "code_until": _("until {time}"),
    "connect": _("Connect"),
    "connect_tabs": {
        "link": _("what connects them"),
        "notice": _("what they say"),
        "what-if": _("what if …?"),
    },
    "draw_link": _("Draw it on the board"),
    "draw_link_of": _("Draw it, {name} said so"),
    "earlier_ways": _("earlier …"),
    "end_talk": _("End the talk"),
    "erase": _("Take off"),
    "fewer_ways": _("Fewer ways"),
    "first_problem": _("Show the first problem"),
    "go_on": _("Go on"),
    "grouped_by": {"columns": _("by columns"), "rows": _("by rows")},
    "grouped_so": _("picture {number}: groups of {sizes}"),
    "how_grouped": _("How it was seen"),
    "by_digits": _("tens or hundreds were said as digits"),
    "family_else": _("another name for it"),
    "heard_as": _("heard as {family}"),
    "heard_as_steps": _("heard as"),
    "heard_instead": _("Put it on the board as {family} instead"),
    "heard_perhaps": _("perhaps {family}"),
    "heard_slip": _("{wrong} was heard: {note}."),
    "implied": _("not said, but it follows"),
    "if_you_hear": _("if you hear it"),
    "image_hidden": _("The class does not see it."),
    "image_in_sight": _("The class sees it now."),
    "image_stays": _("It stays on the board."),
    "if_you_hear_slip": _("If you hear {wrong}: {note}."),
    "join_at": _("The other device opens {address} and types the code."),
    "leave_open": _("leave it open"),
    "looking": _("Looking…"),
    "marked": _("marked on the string"),
    "more_links": _("Others"),
    "more_ways": _("More ways"),
    "network_off": _("Close the network"),
    "network_on": _("Let a device join"),
    "no_links": _("Nothing was found that connects them."),
    "no_problem_yet": _("No problem is on the board yet."),
    "no_total_yet": _("no total said yet"),
    "no_touch": _("The desk has lost touch with Waysaid; it tries again by itself."),
    "nobody_yet": _("Nobody used yet: {families}."),
    "not_heard": _("Not heard lately: {names}."),
    "not_heard_lately": _("not heard lately"),
    "nothing_yet": _("Nothing yet."),
    "only_answer": _("the answer {answer}, and no steps"),
    "only_words": _("only the words"),
    "only_words_kept": _("only the words are kept"),
    "or_heard": _("or heard as"),
    "other_steps": _("other steps"),
    "open_again": _("Open it again"),
    "pass": _("passes"),
    "passed": _("passed"),
    "pause": _("Pause"),
    "same_as": _("same as"),
    "say_thanks": _("Say thank you"),
    "sensible_range": _("Sensible estimates lie from {low} to {high}; none is the right one."),
    "settled_on": _("The class settled on"),
    "speaking": _("{name} is speaking"),
    "spoke_today": _("spoke today"),
    "taken_back": _("taken back:"),
    "thinking": _("thinking {time}"),
    "usually": _("(usually {time})"),
    "who_adds": _("{name} adds to {other}"),
    "who_changes": _("{name} changes a way of {problem}"),
    "what_if_needs": _("Choose numbers of the problems, and say by how much they change."),
    "why_here": _("Why it is here: {why}"),
    "whole_row": _("The whole problem"),
    "whose_way": _("{name}’s way of {problem}"),
    "whose_way_open": _("A way of {problem}: who is speaking?"),
    "write_anew": _("Write it anew"),
    "writing_anew": _("Writing a way of {problem} anew"),
}


def board_words() -> dict[str, Any]:
    """Return the words of the board, by key."""
    return _now(BOARD)


def one_words() -> dict[str, Any]:
    """Return the words of the board with a drawer, by key."""
    return _now(ONE)


def desk_words() -> dict[str, Any]:
    """Return the words of the desk, by key."""
    return _now(DESK)


def _now(words: Words) -> dict[str, Any]:
    """Return the texts in the language of the moment."""
    return {
        key: _now(text) if isinstance(text, Mapping) else str(text) for key, text in words.items()
    }

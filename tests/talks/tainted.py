"""Put a canary in every private sentence the engine makes; imported before the site is."""

import waysaid.slips
import waysaid.strings
import waysaid.ways

FAMILY, SLIP, LINK, QUESTION = (
    "canaryfamily", "canaryslip", "canarylink", "canaryquestion",
)  # fmt: skip

waysaid.ways.family_name = lambda *_given: FAMILY  # type: ignore[assignment]
waysaid.ways.how_said = lambda *_given: FAMILY  # type: ignore[assignment]
waysaid.slips.slip_note = lambda *_given: SLIP  # type: ignore[assignment]
waysaid.strings.link_says = lambda *_given: LINK  # type: ignore[assignment]
waysaid.strings.link_question = lambda *_given: QUESTION  # type: ignore[assignment]

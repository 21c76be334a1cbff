"""Many talks: what a class and each child showed, and what could come next."""

from waysaid.growth.following import Because, Need, Reason, Suggestion, suggested_next
from waysaid.growth.past import LATELY, Past, TalkPast, invited, past_of, problems_shown
from waysaid.growth.picture import (
    ChildUse,
    ClassPicture,
    FamilyUse,
    Standing,
    class_picture,
    ways_of_child,
)
from waysaid.growth.shown import TOLD, USED, Held, How, Shown, right_or_not, shown_in
from waysaid.growth.simulated import Lesson, Room, Simulated, lessons
from waysaid.growth.voice import HEARD_LATELY, Voice, to_invite, voices
from waysaid.growth.words import (
    caution,
    how_name,
    invite_says,
    need_says,
    reason_says,
    standing_name,
    standing_rule,
    times_said,
)

__all__ = [
    "HEARD_LATELY",
    "LATELY",
    "TOLD",
    "USED",
    "Because",
    "ChildUse",
    "ClassPicture",
    "FamilyUse",
    "Held",
    "How",
    "Lesson",
    "Need",
    "Past",
    "Reason",
    "Room",
    "Shown",
    "Simulated",
    "Standing",
    "Suggestion",
    "TalkPast",
    "Voice",
    "caution",
    "class_picture",
    "how_name",
    "invite_says",
    "invited",
    "lessons",
    "need_says",
    "past_of",
    "problems_shown",
    "reason_says",
    "right_or_not",
    "shown_in",
    "standing_name",
    "standing_rule",
    "suggested_next",
    "times_said",
    "to_invite",
    "voices",
    "ways_of_child",
]

"""Published shares of wrong answers, where a source gives one for a kind of problem.

In per cent of those asked, as the source says whom. They are about its items and its pupils, and
say only roughly what another class will do.
"""

from collections.abc import Mapping

from waysaid.slips.slip import Share, SlipName

SHARES: Mapping[tuple[SlipName, str], Share] = {
    (SlipName.SMALLER_FROM_LARGER, "sums"): Share(6, 7, "Year 8 in 1997, 3 items", "nemp1997"),
    (SlipName.ADD_ACROSS, "fractions"): Share(10, 25, "Years 6 to 8, nearly 25 at most", "yl2006"),
    (SlipName.TOPS_ONLY, "fractions about"): Share(
        51, 58, "Years 7 and 8, tops or bottoms", "nsw-cont"
    ),
    (SlipName.BOTTOMS_ONLY, "fractions about"): Share(
        51, 58, "Years 7 and 8, tops or bottoms", "nsw-cont"
    ),
    (SlipName.LONGER_LARGER, "decimals compared"): Share(
        5, 74, "from 74 in Year 4 to 5 in Year 10", "unimelb-dec"
    ),
    (SlipName.SHORTER_LARGER, "decimals compared"): Share(8, 19, "Years 4 to 10", "unimelb-dec"),
    (SlipName.WRITE_ANSWER, "equations"): Share(
        70, 70, "middle grades of the US, in one form or another", "equality"
    ),
}
"""By slip and kind of problem."""

"""The invented class and the plans that the talks of these tests are held with."""

NAMES = (
    "Aroha", "Bram", "Chidi", "Dunya", "Elif", "Fenna", "Goran", "Hana",
    "Imani", "Jonas", "Kalani", "Leocadia", "Maximiliano", "Nanami", "Noor", "Odd",
    "Petra", "Quim", "Rangi", "Saoirse", "Tariq", "Uma", "Vigdis", "Wren",
    "Xime", "Yusuf", "Zofia", "Anneliese", "Bao", "Cata B.", "Cata M.", "María José",
)  # fmt: skip

STRING = ("19 + 6", "39 + 27", "62 - 25", "62 - 27", "148 + 37")
PLANS = {
    "Over a ten": {
        "problems": [
            {"id": f"p{place}", "text": text, "why": f"reason {place}"}
            for place, text in enumerate(STRING, 1)
        ],
        "questions": ["Where does the one come from?"],
    },
    "Taps": {
        "problems": [
            {"id": f"t{place}", "text": text, "why": ""}
            for place, text in enumerate(("8 + 7", "62 - 25", "7 + _ = 12"), 1)
        ],
        "questions": [],
    },
    "Pictures": {
        "problems": [
            {"id": f"q{place}", "text": text, "why": ""}
            for place, text in enumerate(("image dice: 4 3", "image frame 20: 8 6"), 1)
        ],
        "questions": [],
    },
}

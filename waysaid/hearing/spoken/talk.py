"""What else was said in a line beside numbers: what hangs, what is promised, what is taken back."""

from collections.abc import Iterator
from dataclasses import dataclass

from waysaid.hearing.meaning import Meaning
from waysaid.hearing.spoken.behind import ends_before, handed, lost, paired, says
from waysaid.hearing.spoken.claim import acts_last, claim, claimed_late, ended_on, side_ended_on
from waysaid.hearing.spoken.denied import denied, judged
from waysaid.hearing.spoken.item import Item, is_number
from waysaid.hearing.spoken.standing_out import StandingOut, standing_out
from waysaid.hearing.spoken.trail import Lattice
from waysaid.hearing.word import Pause
from waysaid.number import Exact, Form, Number, Order, Sign, Verdict, Written, exact


@dataclass(frozen=True, slots=True)
class Talk:
    """What else was said: the meanings heard plainly, and how many words mean nothing to us.

    `unfinished` is whether something was begun behind the last number: `is forty and then I`;
    `hangs` whether the line ends so; `asked` whether it begins with a question word;
    `taken_back` where numbers end behind which a word takes them back and another number comes,
    and `withdrawn` the last such place;
    `promised` is the last number, where a word such as `so` comes before it; `got` whether a word
    such as `is` comes right before a number, and `results` where such numbers begin; `done`
    whether it ends with words such as `and that's it`; `doubtful` where words stand that are a
    number and plainly something else as well: one of `a different one`;
    `worked` where numbers begin right behind or before a sign: both of `two times nine`;
    `cut` where numbers stand that are the beginning of a longer one: 800 of 814; `longest` the
    longest numbers and where they end; `lost` is whether the work was given up behind the last
    number; `vague` where numbers end that are only begun: sixty something; `seconded` where
    agreement with another child begins, at the end of the line where none does; `joins` is the
    plain plus or minus right behind which numbers begin; `judged` the verdict on a claim that ends
    the line, or that one number is not another; `denied` where numbers stand that are only denied
    or held against: it can't be 43, it's less than 40, 43 is too big;
    `handed` where numbers end that are only given or taken back: I gave one back; `extra` where
    they end and `more` comes right behind: thirty more;
    `wonders` is whether a verdict is only asked for, or not known: I don't know which is bigger;
    `claim` is the first number, or one that was promised, where its reasons come right behind it;
    `acts` what the last number may be, where it belongs to an act and nobody said what that comes
    to, and `acted` what the act itself is of; `ends` the number that ends the line behind a pause
    or a word for a result, `side` how two numbers compare where it ends on one behind `so`;
    `in_tenths` whether one or more was told in tenths or hundredths; `even` whether the line ends,
    behind its last number, on the words that two are the same; `paired` the two numbers put
    together that it ends on; `out` what numbers stand out.
    """

    marks: frozenset[Meaning]
    strange: int
    unfinished: bool
    hangs: bool
    asked: bool
    taken_back: frozenset[int]
    promised: Item | None
    results: frozenset[int]
    done: bool
    doubtful: frozenset[tuple[int, int]]
    worked: frozenset[int]
    handed: frozenset[int]
    extra: frozenset[int]
    cut: frozenset[tuple[int, int]]
    longest: frozenset[tuple[int, Number]]
    lost: bool
    vague: frozenset[int]
    seconded: int
    joins: dict[int, Sign]
    wonders: bool
    judged: Verdict | None
    denied: frozenset[tuple[int, int]]
    claim: Item | None
    acts: frozenset[Exact]
    acted: frozenset[Exact]
    ends: Item | None
    side: Order | None
    in_tenths: bool
    even: bool
    paired: tuple[Number, Number] | None
    out: StandingOut

    @property
    def got(self) -> bool:
        """Whether a word such as `is` comes right before a number."""
        return bool(self.results)

    @property
    def withdrawn(self) -> int | None:
        """Where the last number ends that is plainly taken back; None where none is."""
        return max(self.taken_back, default=None)


def talk_of(items: Lattice) -> Talk:
    """Return what else was said in a line."""
    phrases = list(_phrases(items))
    acts, acted = acts_last(phrases, items)
    strange = sum(all(item.meaning is None and not item.numeral for item in here) for here in items)
    return Talk(
        marks=_marks(items),
        strange=strange,
        unfinished=_unfinished(items),
        hangs=_hangs(items),
        asked=_asked(items),
        taken_back=_taken_back(items),
        promised=_promised(items),
        results=_results(items),
        done=_done(items),
        doubtful=_doubtful(items),
        worked=_worked(items),
        handed=handed(items),
        extra=ends_before(items, Meaning.MORE),
        cut=_cut(items),
        longest=_longest(items),
        lost=lost(items) and not _done(items),
        vague=ends_before(items, Meaning.VAGUE),
        seconded=_seconded(items),
        joins=_joins(items),
        wonders=_wonders(items),
        judged=judged(items),
        denied=frozenset(denied(items)),
        claim=claim(phrases) or claimed_late(phrases),
        acts=acts,
        acted=acted,
        ends=ended_on(phrases),
        side=side_ended_on(phrases),
        in_tenths=any(_in_tenths(one) for phrase in phrases for one in phrase),
        even=_even(phrases),
        paired=paired(items),
        out=standing_out(phrases, items),
    )


def _marks(items: Lattice) -> frozenset[Meaning]:
    """Return the meanings heard plainly, of the longest phrases alone.

    What is put on need not come from the other number.
    """
    found: set[Meaning] = set()
    for phrase in _phrases(items):
        said = {one.meaning for one in phrase if one.meaning}
        found |= said - ({Meaning.GIVE} if Meaning.ADD in said else set())
    return frozenset(found)


def _even(phrases: list[list[Item]]) -> bool:
    """Tell whether a line ends on a plain `the same`, with no number and no reasons behind it."""
    for phrase in reversed(phrases):
        said = {one.meaning for one in phrase if one.meaning}
        if Meaning.EQUAL in said or any(one.numeral for one in phrase):
            return Meaning.EQUAL in said
        if said.isdisjoint((Meaning.FILLER, Meaning.IT, Meaning.THINK)):
            return False
    return False


def _in_tenths(item: Item) -> bool:
    """Tell whether a number of one or more was told in tenths or hundredths: thirteen tenths."""
    leaf = item.numeral.leaf if item.numeral else None
    if not isinstance(leaf, Written) or leaf.form is not Form.PARTS or leaf.whole:
        return False
    return leaf.size in (10, 100, 1000) and exact(leaf) >= 1


def _phrases(items: Lattice) -> Iterator[list[Item]]:
    """Yield what was plainly said, one longest phrase behind the other; none of a strange word."""
    place = 0
    while place < len(items):
        plain = [one for one in items[place] if not one.noise]
        end = max((one.end for one in plain), default=place + 1)
        yield [one for one in plain if one.end == end]
        place = end


def _wonders(items: Lattice) -> bool:
    """Tell whether a verdict comes behind words that ask for it, or say that it is not known."""
    doubts = False
    for phrase in _phrases(items):
        said = {one.meaning for one in phrase}
        if not said.isdisjoint((Meaning.LARGER, Meaning.SMALLER, Meaning.EQUAL)):
            return doubts
        doubts = doubts or not said.isdisjoint((Meaning.ASK, Meaning.UNSURE))
    return False


_BEGIN = (Meaning.AND, Meaning.THEN, Meaning.TAKE, Meaning.GIVE, Meaning.ADD)
"""What begins something: said behind the last number, it was not finished."""


_BEHIND = (Meaning.LESS, Meaning.MORE)
"""What belongs to the number before it: one less."""


def _unfinished(items: Lattice) -> bool:
    """Tell whether something was begun behind the last number, and not ended: and that's it."""
    near = _nearness(items)
    numbers = [place for place, here in enumerate(items) if is_number(here) and place not in near]
    if not numbers or _done(items):
        return False
    behind = items[numbers[-1] + 1 :]
    if any(says(items, numbers[-1] + 1, meaning) for meaning in _BEHIND):
        behind = behind[1:]
    return _begins(behind)


def _nearness(items: Lattice) -> frozenset[int]:
    """Return the places of words that only tell how near a number is: un poco más."""
    return frozenset(
        place
        for here in items
        for one in here
        if one.meaning is Meaning.ABOUT and not one.noise and one.end > one.start + 1
        for place in range(one.start, one.end)
    )


def _begins(behind: Lattice) -> bool:
    """Tell whether one of the longest phrases begins something: not `more` of more or less."""
    end = behind[0][0].start if behind else 0
    for place, here in enumerate(behind, end):
        plain = [one for one in here if one.meaning and not one.noise]
        longest = max((one.end for one in plain), default=place + 1)
        if place >= end and any(one.meaning in _BEGIN and one.end == longest for one in plain):
            return True
        end = max(end, longest)
    return False


def _done(items: Lattice) -> bool:
    """Tell whether the last words say that it is all: and that's it."""
    ends = (one for here in items for one in here if one.end == len(items))
    return any(one.meaning is Meaning.DONE and not one.noise for one in ends)


def _results(items: Lattice) -> frozenset[int]:
    """Return where numbers begin that a word such as `is` comes right before."""
    return frozenset(
        items[one.end][0].span[0]
        for here in items
        for one in here
        if one.end < len(items)
        and one.meaning is Meaning.EQUALS
        and not one.noise
        and is_number(items[one.end])
    )


_ALSO_A_WORD = 1
"""How odd the plain meaning of a word is that is a number, too."""


def _doubtful(items: Lattice) -> frozenset[tuple[int, int]]:
    """Return where words stand that are a number and plainly something else as well."""
    return frozenset(
        one.span
        for here in items
        for one in here
        if one.numeral
        and any(
            other.meaning and other.end == one.end and other.noise <= _ALSO_A_WORD for other in here
        )
    )


_PROMISES = (Meaning.SO, Meaning.EQUALS, Meaning.FILLER, Meaning.IT)
"""What may stand between `so` and the answer: so um it's nine."""


def _promised(items: Lattice) -> Item | None:
    """Return the number that ends the line, where `so` comes before it; none in `add the two`."""
    ended = [*_phrases(items)][-1:]
    if ended and ended[0] and not any(one.numeral for one in ended[0]):
        return None
    for place in range(len(items) - 1, 0, -1):
        plain = [one for one in items[place] if one.numeral and not one.noise]
        last = max(plain, key=lambda one: one.end, default=None)
        if last is None or last.end != len(items):
            continue
        before = place - 1
        while before >= 0:
            said = {one.meaning for one in items[before] if not one.noise}
            if Meaning.SO in said:
                return last
            if said.isdisjoint(_PROMISES):
                break
            before -= 1
    return None


def _taken_back(items: Lattice) -> frozenset[int]:
    """Return where the numbers end that a plain word takes back while another number comes."""
    numbers = [place for place, here in enumerate(items) if is_number(here)]
    last = numbers[-1] if numbers else 0
    return frozenset(
        one.span[1]
        for place in numbers
        for one in items[place]
        if one.numeral and one.end < last and _takes_back(items[one.end])
    )


def _takes_back(here: tuple[Item, ...]) -> bool:
    """Tell whether the longest words take something back, and mean nothing else more plainly."""
    longest = max((one.end for one in here if one.meaning), default=0)
    said = [one for one in here if one.meaning and one.end == longest]
    plain = min((one.noise for one in said), default=0)
    return any(one.meaning is Meaning.CORRECT and one.noise == plain for one in said)


def _cut(items: Lattice) -> frozenset[tuple[int, int]]:
    """Return where numbers stand that are the beginning of a longer one, plainly said."""
    found, near = set(), _nearness(items)
    for here in items:
        plain = (one for one in here if one.numeral and not one.noise)
        whole = max((one.end for one in plain if one.end - 1 not in near), default=0)
        found |= {one.span for one in here if one.numeral and one.end < whole}
    return frozenset(found)


def _longest(items: Lattice) -> frozenset[tuple[int, Number]]:
    """Return the longest plain numbers, by where they end: 870 of `eight hundred and seventy`.

    None that may be two: eight hundred and seventy more.
    """
    plain = ([one for one in here if one.numeral and not one.noise] for here in items)
    whole = (max(here, key=lambda one: one.end) for here in plain if here)
    return frozenset(
        (one.span[1], one.numeral.leaf)
        for one in whole
        if one.numeral and not says(items, one.end, Meaning.MORE)
    )


def _seconded(items: Lattice) -> int:
    """Return where agreement with another child begins; the end of the line where none does."""
    found = (
        one.span[0]
        for here in items
        for one in here
        if one.meaning is Meaning.AGREE and not one.noise
    )
    return min(found, default=items[-1][0].span[1] if items else 0)


_SIGNS = (Meaning.PLUS, Meaning.MINUS, Meaning.TIMES, Meaning.OVER)


def _worked(items: Lattice) -> frozenset[int]:
    """Return where numbers begin that a plain sign stands right behind or before."""
    found, before = set(), False
    last: Item | None = None
    for phrase in _phrases(items):
        number = next((one for one in phrase if one.numeral), None)
        apart = bool(phrase) and phrase[0].pause is not Pause.NONE
        sign = number is None and _is_sign(phrase)
        if number is not None and before and not apart:
            found.add(number.span[0])
        if sign and last is not None and not apart:
            found.add(last.span[0])
        before, last = sign, number
    return frozenset(found)


_HOPS = {Meaning.PLUS: Sign.PLUS, Meaning.MINUS: Sign.MINUS}


def _joins(items: Lattice) -> dict[int, Sign]:
    """Return the plain plus or minus right behind which numbers begin, by where they begin."""
    return {
        number.span[0]: _HOPS[one.meaning]
        for here in items
        for one in here
        if one.meaning in _HOPS and not one.noise and one.end < len(items) and _is_sign([*here])
        for number in items[one.end]
        if number.numeral and not number.noise
    }


def _is_sign(here: list[Item]) -> bool:
    """Tell whether a phrase is a sign, and not as often an `and`."""
    said = {one.meaning for one in here}
    return not said.isdisjoint(_SIGNS) and (Meaning.AND not in said or Meaning.MORE in said)


def _hangs(items: Lattice) -> bool:
    """Tell whether the last word begins something."""
    if not items or _done(items):
        return False
    begin = (Meaning.AND, Meaning.THEN)
    return any(one.meaning in begin and not one.noise for one in items[-1])


def _asked(items: Lattice) -> bool:
    """Tell whether the line begins with a question: why can't you just."""
    first = [one for one in (items[0] if items else ()) if one.meaning and not one.noise]
    longest = max((one.end for one in first), default=0)
    said = {one.meaning for one in first if one.end == longest}
    return Meaning.ASK in said and Meaning.ABOUT not in said

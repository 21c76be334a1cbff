"""From what is said in a noticing to what it claims."""

from collections.abc import Sequence
from dataclasses import dataclass, field, replace

from waysaid.number import Exact
from waysaid.strings.noticed_claim import Claimed, How, Moved, Shift, Who
from waysaid.strings.noticed_words import Item, Named, Sense, Size

_ABOUT = frozenset(
    {
        *(Sense.ANSWER, Sense.EACH, Sense.BACK, Sense.SWITCH, Sense.UNDO, Sense.FAMILY, Sense.HELP),
        *(Sense.NEAR, Sense.HAS),
        *(Sense.TEN, Sense.ALL, Sense.THEY, Sense.BOTH, Sense.DENIED, Sense.TAKE, Sense.IS),
        Sense.MAKES,
    }
)
_AMOUNT_BEFORE = {
    Sense.MORE: How.UP,
    Sense.LESS: How.DOWN,
    Sense.TIMES: How.TIMES,
    Sense.OVER: How.OVER,
}
"""Senses whose amount is said before them: one more, ten times as big."""
_CHANGES = {
    Sense.UP: How.UP,
    Sense.DOWN: How.DOWN,
    Sense.SAME: How.SAME,
    Sense.DOUBLE: How.TIMES,
    Sense.HALF: How.OVER,
}
_COMPARES = frozenset({*_AMOUNT_BEFORE, Sense.DOUBLE, Sense.HALF})
_LINKING = frozenset({Sense.THAN, Sense.FROM, Sense.TO})


def claimed(items: Sequence[Item], count: int) -> Claimed:
    """Return what the items of a noticing claim; `count` is how many problems the string has."""
    reader = _Reader(tuple(items), count)
    for at in range(len(items)):
        reader.take_up(at)
    return reader.done()


@dataclass(slots=True)
class _Reader:
    items: tuple[Item, ...]
    count_of_problems: int
    subject: Shift = field(default_factory=lambda: Shift(Who.IT, How.SAME))
    shifts: list[Shift] = field(default_factory=list)
    about: set[Sense] = field(default_factory=set)
    numbers: list[Exact] = field(default_factory=list)
    units: list[Exact] = field(default_factory=list)
    problems: set[int] = field(default_factory=set)
    moved: Moved | None = None
    took: Moved | None = None
    made: Exact | None = None
    count: int | None = None
    amount: Exact | None = None
    fresh: bool = False
    also: bool = False
    alike: bool = False
    whole: int = 0

    def take_up(self, at: int) -> None:
        """Read the item at a place, with those beside it in sight."""
        match self.items[at]:
            case Size() as size:
                self._size(at, size)
            case Named() as named:
                self._named(at, named)
            case Sense() as sense:
                self._sense(at, sense)

    def done(self) -> Claimed:
        """Return the claim; what was only taken, and given to none, made its number smaller."""
        took = self.took
        if took is not None and took.giver is not None and self.moved is None:
            self.shifts.append(Shift(Who.NUMBER, How.DOWN, took.giver, by=took.by))
        elif took is not None and took.by is not None and self.moved is None:
            self.numbers.append(took.by)
        return Claimed(
            tuple(self.shifts),
            self.moved,
            frozenset(self.about),
            tuple(self.numbers),
            tuple(self.units),
            self.made,
            frozenset(self.problems),
            self.count,
            self.subject.place,
            self.alike,
            self.whole,
        )

    def _before(self, at: int) -> Item | None:
        return self.items[at - 1] if at else None

    def _after(self, at: int) -> Item | None:
        return self.items[at + 1] if at + 1 < len(self.items) else None

    def _kind_before(self, at: int) -> Item | None:
        """Return what stands before, over the small words that only link."""
        while at and self.items[at - 1] in _LINKING:
            at -= 1
        return self._before(at)

    def _size(self, at: int, size: Size) -> None:
        before, after = self._before(at), self._after(at)
        if isinstance(before, Size) and (size.many or self.amount is not None):
            self.units.append(size.value)
        elif after in _AMOUNT_BEFORE or self._more_of(at):
            self.amount = size.value
        elif after is Sense.OF_THEM and isinstance(size.value, int):
            self.count = size.value
            self._inside(before)
        elif before in (Sense.UP, Sense.DOWN):
            self.shifts[-1] = replace(self.shifts[-1], by=size.value)
        elif before is Sense.TO and self._may_end_at_a_number(at):
            self.shifts[-1] = replace(self.shifts[-1], to=size.value)
        elif self._compared_at(at) and not self._begins(after):
            self._compare(size)
        elif before is Sense.BECOMES and self.subject.value is not None:
            self._become(self.subject.value, size.value)
        elif not self._given(at, size):
            self._plain(at, size)

    def _more_of(self, at: int) -> bool:
        """Tell whether so many groups, or of another number, are more or less: one seven less."""
        after = self._after(at)
        of_it = isinstance(after, Size) or after is Sense.NUMBER
        return of_it and self._after(at + 1) in _AMOUNT_BEFORE

    def _begins(self, after: Item | None) -> bool:
        """Tell whether a number behind a change is what the next is said of: 8 was doubled."""
        return after is Sense.IS or (self.shifts[-1].value is not None and after in _CHANGES)

    def _compare(self, size: Size) -> None:
        """Read a number as what the last change is told beside, or is done to: double one side."""
        last = self.shifts[-1]
        who = Who.NUMBER if last.who is Who.IT else last.who
        if size.loose:
            self.shifts[-1] = replace(last, who=who)
        else:
            self.shifts[-1] = replace(last, other=size.value)

    def _become(self, old: Exact, new: Exact) -> None:
        """Read one number that turns into another."""
        self._shift(How.UP if new > old else How.DOWN, None)
        self.shifts[-1] = replace(self.shifts[-1], to=new)

    def _compared_at(self, at: int) -> bool:
        """Tell whether the last change is told beside what stands here: 3 more than 7, double 7."""
        kind, before = self._kind_before(at), self._before(at)
        plain = kind in (Sense.MORE, Sense.LESS) and before is not Sense.THAN
        return kind in _COMPARES and bool(self.shifts) and not plain

    def _may_end_at_a_number(self, at: int) -> bool:
        """Tell whether the last change goes to the number behind: 40 went down 3 to 37."""
        handed = self.moved is not None or self.took is not None
        added = self._kind_before(at) in (Sense.MORE, Sense.LESS)
        told = bool(self.shifts) and self.shifts[-1].how is not How.SAME
        return told and not handed and not added

    def _inside(self, before: Item | None) -> None:
        if before is Sense.IN:
            self.about.add(Sense.IN)

    def _given(self, at: int, size: Size) -> bool:
        """Read a number that is moved or taken, or that gives or gets it; False for any other."""
        before, after = self._before(at), self._after(at)
        if self.moved is not None and before is Sense.GIVE and after is Sense.TO:
            self.moved = replace(self.moved, by=size.value)
        elif self.moved is not None and before in (Sense.TO, Sense.GIVE):
            self.moved = replace(self.moved, taker=size.value)
        elif self.moved is not None and before is Sense.FROM:
            self.moved = replace(self.moved, giver=size.value)
        elif before is Sense.MOVE and self.moved is not None:
            self.moved = replace(self.moved, by=size.value)
        elif self.took is not None and before is Sense.TAKE:
            self.took = replace(self.took, by=size.value)
        elif self.took is not None and before in (Sense.FROM, Sense.TO):
            self.took = replace(self.took, giver=size.value)
        else:
            return False
        return True

    def _plain(self, at: int, size: Size) -> None:
        before = self._before(at)
        if before is Sense.IN:
            if self.shifts and self.shifts[-1].by == size.value:
                return
            self._inside(before)
            if self.numbers and size.value in range(2, self.count_of_problems + 1):
                self.count = int(size.value)
                return
        makes = (Sense.MAKES, Sense.IS)
        always = before is Sense.EACH and self._before(at - 1) in makes
        whole = before is Sense.MAKES or not size.loose
        if (before in makes or always) and self.made is None and whole:
            self.made = size.value
            return
        self._subject(Shift(Who.NUMBER, How.SAME, None if size.loose else size.value))
        if not size.loose:
            self.numbers.append(size.value)

    def _named(self, at: int, named: Named) -> None:
        if self._compared_at(at):
            self.shifts[-1] = replace(self.shifts[-1], base=named.at)
            self.problems.add(named.at)
        elif not named.whole and self._of_numbers(at):
            self._subject(Shift(Who.NUMBER, How.SAME, place=named.at))
        else:
            self.problems.add(named.at)
            self.whole += named.whole
            self.alike |= self._is_another(at)
            if self._before(at) not in (Sense.FROM, Sense.IN, Sense.OF_THEM):
                self._subject(Shift(Who.IT, How.SAME, row=named.at))

    def _is_another(self, at: int) -> bool:
        """Tell whether the problem before is said to be this one, or the same as this one."""
        while at and self.items[at - 1] in (Sense.THAN, Sense.SAME):
            at -= 1
        is_so = self._before(at) in (Sense.IS, Sense.MAKES)
        return is_so and isinstance(self._before(at - 1), Named)

    def _of_numbers(self, at: int) -> bool:
        """Tell whether the first and the second are those of a problem: said of its numbers."""
        moving = self.moved is not None or self.took is not None
        beside = self._before(at) in (Sense.FROM, Sense.TO, Sense.GIVE)
        return (moving and beside) or any(
            item in (Sense.FIRST, Sense.SECOND, Sense.OTHER) for item in self.items
        )

    def _sense(self, at: int, sense: Sense) -> None:
        if sense in _ABOUT:
            self.about.add(sense)
        if sense in _CHANGES:
            self._shift(_CHANGES[sense], 2 if sense in (Sense.DOUBLE, Sense.HALF) else None)
        elif sense in _AMOUNT_BEFORE:
            self._shift(_AMOUNT_BEFORE[sense], self.amount)
            self.amount = None
            if sense in (Sense.MORE, Sense.LESS) and self._before(at - 1) is Sense.IS:
                last = self.shifts[-1]
                self.shifts[-1] = replace(last, value=None, to=last.value)
        else:
            self._no_change(at, sense)

    def _no_change(self, at: int, sense: Sense) -> None:
        """Read what is spoken of, and the words that join or hand over."""
        match sense:
            case Sense.ANSWER | Sense.LEFT:
                self._answer(at, sense)
            case Sense.NUMBER | Sense.OTHER | Sense.BOTH:
                who = Who.BOTH if sense is Sense.BOTH else Who.NUMBER
                if self._before(at) in (Sense.DOUBLE, Sense.HALF) and not self._said_who():
                    self.shifts[-1] = replace(self.shifts[-1], who=who)
                self._subject(Shift(who, How.SAME))
            case Sense.FIRST | Sense.SECOND:
                self.subject = replace(self.subject, place=int(sense is Sense.SECOND))
            case Sense.SO:
                of_numbers = any(one.who is not Who.ANSWER for one in self.shifts)
                self._subject(Shift(Who.ANSWER if of_numbers else Who.IT, How.SAME))
            case Sense.TWICE:
                self.count = 2
            case Sense.ALSO if self._after(at) not in _CHANGES:
                self._also()
            case Sense.IN if not isinstance(self._after(at), Size):
                self.about.add(Sense.IN)
            case Sense.MOVE | Sense.GIVE | Sense.TAKE:
                self._hand(sense)
            case _:
                pass

    def _said_who(self) -> bool:
        return self.shifts[-1].who is not Who.IT

    def _hand(self, sense: Sense) -> None:
        if sense is Sense.TAKE:
            self.took = self.took or Moved()
            self._subject(Shift(Who.NUMBER, How.SAME))
        elif self.moved is None:
            said = None if self.took else self.subject.value
            before = Moved(by=said) if sense is Sense.MOVE else Moved(giver=said)
            self.moved = self.took or before
            self.took = None
            self.numbers = [number for number in self.numbers if number != said]

    def _answer(self, at: int, sense: Sense) -> None:
        before = self._before(at)
        after = self._after(at)
        anew = isinstance(after, Size) or after in _AMOUNT_BEFORE
        if sense is Sense.LEFT and before in _AMOUNT_BEFORE and self.shifts and not anew:
            self.shifts[-1] = replace(self.shifts[-1], who=Who.ANSWER)
        else:
            self._subject(Shift(Who.ANSWER, How.SAME))
        self.about.add(Sense.ANSWER)

    def _subject(self, subject: Shift) -> None:
        """Speak of something else from here on; of what also changed, if that was just said."""
        self.subject, self.fresh = subject, True
        if self.also and self.shifts:
            self.also = False
            self._also()

    def _also(self) -> None:
        """Say the last change again of what was named since; else wait for what is named next."""
        if not (self.fresh and self.shifts):
            self.also = True
            return
        last = self.shifts[-1]
        self._shift(last.how, last.by)

    def _shift(self, how: How, by: Exact | None) -> None:
        said = self.subject
        if said.value is not None and said.value in self.numbers:
            self.numbers.remove(said.value)
        self.shifts.append(replace(said, how=how, by=by))
        self.fresh = False

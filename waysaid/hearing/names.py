"""Names for steps as children say them: by what is done and to what, whatever came out."""

from dataclasses import dataclass, field

from waysaid.hearing.turned import turned
from waysaid.number import Blank, Equation, Exact, Operation, Sign, exact, signed_terms


@dataclass(frozen=True, slots=True)
class Names:
    """Names steps by what is done and to which number or earlier step, never by what comes out.

    A name is a whole number, given once to each thing named.
    """

    given: dict[object, int] = field(default_factory=dict)

    def copy(self) -> "Names":
        """Return names of their own that go on from these."""
        return Names(dict(self.given))

    def of(self, said: tuple[Equation, ...]) -> tuple[int, ...]:
        """Return one name for each equation; a number an earlier step ended on is that step."""
        found: list[int] = []
        results: dict[Exact, int] = {}
        for equation in said:
            name = self._step(equation, results)
            found.append(name)
            right = equation.right
            if isinstance(equation.left, Operation) and not isinstance(right, (Operation, Blank)):
                results[exact(right)] = name
        return tuple(found)

    def _step(self, equation: Equation, results: dict[Exact, int]) -> int:
        if isinstance(equation.right, Operation) or not isinstance(equation.left, Operation):
            return self._name(turned(equation))
        terms = signed_terms(equation.left)
        if terms is None:
            return self._product(equation, results)
        signed = [
            (sign.value, self._name(one) if isinstance(one, Blank) else self._number(one, results))
            for sign, one in terms
        ]
        plain = all(sign == Sign.PLUS.value for sign, _ in signed)
        return self._name(tuple(sorted(signed) if plain else signed))

    def _product(self, equation: Equation, results: dict[Exact, int]) -> int:
        left = equation.left
        if not isinstance(left, Operation) or isinstance(left.left, Operation):
            return self._name(turned(equation))
        one, other = (
            self._name(side)
            if isinstance(side, Operation | Blank)
            else self._number(exact(side), results)
            for side in (left.left, left.right)
        )
        if left.sign is Sign.OVER:
            return self._name((left.sign.value, one, other))
        return self._name((Sign.TIMES.value, *sorted((one, other))))

    def _number(self, number: Exact, results: dict[Exact, int]) -> int:
        return results.get(number, self._name(number))

    def _name(self, thing: object) -> int:
        return self.given.setdefault(thing, len(self.given))

"""The best string of a pool as a general solver finds it: OR-Tools CP-SAT, one core.

A string is a path through layers, one for each of its places. In each layer one candidate stands;
between two layers the path takes the arc of a help, or goes by the hub for what comes unhelped.
"""

from collections import defaultdict
from dataclasses import dataclass, field

from ortools.sat.python import cp_model

from waysaid.number import Exact
from waysaid.strings.bounds import NEVER, Bounds, Frame
from waysaid.strings.helps import Help
from waysaid.strings.link import LinkKind
from waysaid.strings.pool import Pool
from waysaid.strings.wanting import AGAIN, LOOSE, STRANGE, WANDERS

Var = cp_model.IntVar
_Met = dict[Help | None, list[Var]]


@dataclass
class Model:
    """A pool and a frame as a model; `stands[at][place]` is 1 where a candidate stands."""

    pool: Pool
    frame: Frame
    barred: frozenset[int] = frozenset()
    model: cp_model.CpModel = field(default_factory=cp_model.CpModel)
    stands: list[dict[int, Var]] = field(default_factory=list)
    cost: list[cp_model.LinearExpr | int] = field(default_factory=list)

    def __post_init__(self) -> None:
        costs = Bounds(self.pool, self.frame)
        for here in costs.here:
            allowed = [p for p, one in enumerate(here) if one < NEVER and p not in self.barred]
            layer = {place: self.model.new_bool_var("") for place in allowed}
            self.model.add_exactly_one(layer.values())
            self.stands.append(layer)
            self.cost += [here[place] * stands for place, stands in layer.items()]
        self._once()
        before: _Met = {}
        for at in range(1, self.frame.length):
            met = self._met(at, costs)
            if at > 1:
                self._run(before, met)
            before = met
        self.model.minimize(sum(self.cost))

    def _once(self) -> None:
        """No problem stands twice; what must be in is in."""
        every: dict[int, list[Var]] = defaultdict(list)
        for layer in self.stands:
            for place, stands in layer.items():
                every[place].append(stands)
        for place, anywhere in every.items():
            if place in self.frame.musts:
                self.model.add_exactly_one(anywhere)
            elif len(anywhere) > 1:
                self.model.add_at_most_one(anywhere)

    def _met(self, at: int, costs: Bounds) -> _Met:
        """Add the arcs into a layer; return them by the help that each is, None for the hub."""
        left, stands = self.stands[at - 1], self.stands[at]
        out: dict[int, list[Var]] = defaultdict(list)
        into: dict[int, list[Var]] = defaultdict(list)
        met: _Met = defaultdict(list)
        hub = self.model.new_bool_var("")
        for before, was in left.items():
            for place, number in zip(self.pool.leads[before], self.pool.by[before], strict=True):
                if place not in stands:
                    continue
                if costs.costs[at][number] < NEVER:
                    arc = self.model.new_bool_var("")
                    out[before].append(arc)
                    into[place].append(arc)
                    met[self.pool.helps[number]].append(arc)
                    self.cost.append(costs.costs[at][number] * arc)
                self.model.add_bool_or(was.negated(), stands[place].negated(), hub.negated())
        behind, alone = self._through(left, out, hub), self._through(stands, into, hub)
        for place, comes in alone.items():
            self.cost.append(costs.alone[at][place] * comes)
        self._strange(behind, alone, hub)
        met[None] = [hub]
        return met

    def _through(
        self, layer: dict[int, Var], arcs: dict[int, list[Var]], hub: Var
    ) -> dict[int, Var]:
        """Each candidate that stands has one arc, or goes by the hub; return these last."""
        alone: dict[int, Var] = {}
        for place, stands in layer.items():
            alone[place] = self.model.new_bool_var("")
            self.model.add(sum(arcs[place]) + alone[place] == stands)
        self.model.add(sum(alone.values()) == hub)
        return alone

    def _strange(self, behind: dict[int, Var], alone: dict[int, Var], hub: Var) -> None:
        """Add what it costs that no number stays where it was from one to what comes unhelped."""
        sides: tuple[dict[int, list[Var]], ...] = defaultdict(list), defaultdict(list)
        for side, layer in zip(sides, (behind, alone), strict=True):
            for place, var in layer.items():
                for stand in self.pool.stands[place]:
                    side[stand].append(var)
        kept = []
        for stand in sides[0].keys() & sides[1].keys():
            kept.append(self.model.new_bool_var(""))
            for side in sides:
                self.model.add(kept[-1] <= sum(side[stand]))
        strange = self.model.new_bool_var("")
        self.model.add(strange >= hub - sum(kept))
        self.cost.append(STRANGE * strange)

    def _run(self, before: _Met, met: _Met) -> None:
        """Add what it costs that two meetings in a row are alike, or nothing is helped."""
        own = [
            arc for help_, arcs in met.items() if help_ is not None and help_.own for arc in arcs
        ]
        loose = self.model.new_bool_var("")
        self.model.add(loose >= before[None][0] - sum(own))
        self.cost.append(LOOSE * loose)
        for kind in LinkKind:
            was, now = _by_size(before, kind), _by_size(met, kind)
            if not was or not now:
                continue
            twice = self.model.new_bool_var("")
            whole_was = [arc for arcs in was.values() for arc in arcs]
            whole_now = [arc for arcs in now.values() for arc in arcs]
            self.model.add(twice >= sum(whole_was) + sum(whole_now) - 1)
            self.cost.append(WANDERS * twice)
            for size in was.keys() & now.keys():
                alike = self.model.new_bool_var("")
                self.model.add(alike <= sum(was[size]))
                self.model.add(alike <= sum(now[size]))
                self.cost.append((AGAIN - WANDERS) * alike)


def _by_size(met: _Met, kind: LinkKind) -> dict[Exact, list[Var]]:
    found: dict[Exact, list[Var]] = defaultdict(list)
    for help_, arcs in met.items():
        if help_ is not None and help_.kind is kind:
            found[help_.size] += arcs
    return found


def solved(model: Model, seconds: float | None = None) -> tuple[int | None, bool]:
    """Return the least that any string leaves wanting, and whether the solver proved it.

    The least is None where there is no string at all, or none was found in so many seconds.
    """
    solver = cp_model.CpSolver()
    solver.parameters.num_workers = 1
    solver.parameters.linearization_level = 2
    if seconds is not None:
        solver.parameters.max_time_in_seconds = seconds
    status = solver.solve(model.model)
    found = status in (cp_model.OPTIMAL, cp_model.FEASIBLE)
    proven = status in (cp_model.OPTIMAL, cp_model.INFEASIBLE)
    return (round(solver.objective_value) if found else None), proven

"""Assignments worked out another way: every piece and every channel has a variable of its own, inputs are bounded by
Hall's condition on sets of modes. Plain ones are solved by scipy.optimize.linear_sum_assignment, the others by
scipy.optimize.milp. Reads problems as JSON, one list; writes [fewest unserved, least cost] for each."""

import itertools
import json
import sys

import numpy as np
from scipy.optimize import Bounds, LinearConstraint, linear_sum_assignment, milp
from scipy.sparse import csr_matrix

LARGE = 1e6


def is_plain(problem):
    return (
        problem["slots"] == 1
        and not problem["mixing"]
        and problem["inputs"] is None
        and all(pool["axes"] == 1 for pool in problem["pools"])
    )


def plain(problem):
    places, pools = problem["places"], problem["pools"]
    pieces = [p for p, pool in enumerate(pools) for _ in range(pool["count"])]
    n = len(places)
    cost = np.full((n, len(pieces) + n), 1e9)
    for i, place in enumerate(places):
        costs = dict(map(tuple, place["costs"]))
        for k, p in enumerate(pieces):
            if p in costs:
                cost[i, k] = costs[p] + pools[p]["pieceCost"]
        cost[i, len(pieces) + i] = LARGE + place["unservedCost"]
    rows, columns = linear_sum_assignment(cost)
    total = cost[rows, columns].sum()
    unserved = int((columns >= len(pieces)).sum())
    return [unserved, total - unserved * LARGE]


class Model:
    def __init__(self):
        self.cost, self.integer, self.upper = [], [], []
        self.entries, self.low, self.high = [], [], []

    def var(self, cost=0.0, integer=1, upper=1.0):
        self.cost.append(cost)
        self.integer.append(integer)
        self.upper.append(upper)
        return len(self.cost) - 1

    def row(self, terms, low, high):
        self.entries.append(terms)
        self.low.append(low)
        self.high.append(high)

    def solve(self, cost):
        data = [(r, c, v) for r, terms in enumerate(self.entries) for c, v in terms]
        r, c, v = zip(*data)
        matrix = csr_matrix((v, (r, c)), shape=(len(self.entries), len(self.cost)))
        result = milp(
            cost,
            constraints=LinearConstraint(matrix, self.low, self.high),
            integrality=self.integer,
            bounds=Bounds(0, self.upper),
            options={"mip_rel_gap": 0},
        )
        assert result.status == 0, result.message
        return result.fun


def general(problem):
    places, pools = problem["places"], problem["pools"]
    model = Model()
    sites = {}
    for i, place in enumerate(places):
        name = ("alone", i) if place["site"] is None or place["axis"] is None else (place["first"], place["last"], place["group"], place["site"])
        sites.setdefault(name, []).append(i)
    pieces = [p for p, pool in enumerate(pools) for _ in range(pool["count"])]
    served = {i: [] for i in range(len(places))}
    used = {}
    unserved = [model.var(place["unservedCost"]) for place in places]
    kinds = {}
    for k, p in enumerate(pieces):
        pool = pools[p]
        busy = {slot: [] for slot in range(problem["slots"])}
        for members in sites.values():
            mine = [i for i in members if p in dict(map(tuple, places[i]["costs"]))]
            if not mine:
                continue
            here = model.var(pool["pieceCost"])
            first = places[mine[0]]
            for slot in range(first["first"], first["last"] + 1):
                busy[slot].append((here, 1))
            takes = {}
            for i in mine:
                take = model.var(dict(map(tuple, places[i]["costs"]))[p])
                takes[i] = take
                served[i].append((take, 1))
                model.row([(take, 1), (here, -1)], -np.inf, 0)
                used.setdefault((i, pool.get("mode")), []).append(take)
                if places[i]["group"] is not None:
                    kinds.setdefault((places[i]["group"], pool["type"]), []).append(take)
            model.row([(take, 1) for take in takes.values()] + [(here, -pool["axes"])], -np.inf, 0)
            for axis in {places[i]["axis"] for i in mine}:
                model.row([(takes[i], 1) for i in mine if places[i]["axis"] == axis] + [(here, -1)], -np.inf, 0)
        for terms in busy.values():
            if terms:
                model.row(terms, 0, 1)
    for i in range(len(places)):
        model.row(served[i] + [(unserved[i], 1)], 1, 1)
    if problem["inputs"] is not None:
        modes = sorted({m for pool in problem["inputs"] for m in pool["modes"]} | {pool.get("mode") for pool in pools})
        for slot in range(problem["slots"]):
            active = [i for i, place in enumerate(places) if place["first"] <= slot <= place["last"]]
            for size in range(1, len(modes) + 1):
                for chosen in itertools.combinations(modes, size):
                    terms = [(take, 1) for i in active for mode in chosen for take in used.get((i, mode), [])]
                    room = sum(pool["channels"] for pool in problem["inputs"] if set(pool["modes"]) & set(chosen))
                    if terms:
                        model.row(terms, -np.inf, room)
    if problem["mixing"]:
        groups = {}
        for (group, _), takes in kinds.items():
            kind = model.var(problem["mixing"])
            groups.setdefault(group, []).append(kind)
            for take in takes:
                model.row([(take, 1), (kind, -1)], -np.inf, 0)
        for kinds_here in groups.values():
            first = model.var(-problem["mixing"])
            model.row([(kind, 1) for kind in kinds_here] + [(first, -1)], 0, np.inf)
    count = np.zeros(len(model.cost))
    count[unserved] = 1
    fewest = round(model.solve(count))
    model.row([(u, 1) for u in unserved], fewest, fewest)
    return [fewest, model.solve(np.array(model.cost))]


problems = json.load(sys.stdin)
json.dump([plain(p) if is_plain(p) else general(p) for p in problems], sys.stdout)

#!/usr/bin/env python3
"""Small networks of nozzles and ISO 6358 elements, solved with SciPy's root finder.

Written from the published formulas, apart from Offtake: the heat of air is the mixture "Air" of
NASA/TP-2002-211556, the flow of a nozzle that of any textbook of gas dynamics (for example NACA
Report 1135), ISO 6358 from memory of the standard. Pipes lose no heat. The table was made with

    python3 small_networks.py > small-networks.csv

(Python 3.11, SciPy 1.10.1). Elements whose drop is below 0.1 % are not drawn: there Offtake replaces
the square root by a cubic on purpose.
"""
import math
import random
import sys

import numpy
from scipy.optimize import root

R = 8.31446261815324 / 28.9651159e-3
AMBIENT_P, AMBIENT_T = 101325.0, 288.15
# NASA/TP-2002-211556, "Air", 200 to 1000 K: a1 to a7 and b1.
A = [1.009950160e4, -1.968275610e2, 5.009155110, -5.761013730e-3, 1.066859930e-5,
     -7.940297970e-9, 2.185231910e-12]
B1 = -1.767967310e2


def cp(t):
    return R * sum(a * t ** (k - 2) for k, a in enumerate(A))


def enthalpy(t):
    return R * (-A[0] / t + A[1] * math.log(t) + B1
                + sum(a * t ** (k + 1) / (k + 1) for k, a in enumerate(A[2:])))


def nozzle(p1, t1, p2, area):
    g = cp(t1) / (cp(t1) - R)
    r = max(p2 / p1, (2 / (g + 1)) ** (g / (g - 1)))
    psi = math.sqrt(2 * g / (g - 1) * (r ** (2 / g) - r ** ((g + 1) / g)))
    return area * p1 / math.sqrt(R * t1) * psi


def iso6358(p1, t1, p2, c, b, m):
    r = max(p2 / p1, b)
    return c * 1.185 * p1 * math.sqrt(293.15 / t1) * (1 - ((r - b) / (1 - b)) ** 2) ** m


LAWS = {"nozzle": nozzle, "iso": iso6358}


class Network:
    """Reservoirs {name: (p, T)} and elements (law, from, to, numbers...)."""

    def __init__(self, name, reservoirs, elements):
        self.name, self.reservoirs, self.elements = name, reservoirs, elements
        fixed = set(reservoirs) | {"ambient"}
        self.points = []
        for _, one, two, *_ in elements:
            self.points += [p for p in (one, two) if p not in fixed and p not in self.points]

    def state(self, x):
        at = dict(self.reservoirs, ambient=(AMBIENT_P, AMBIENT_T))
        for i, point in enumerate(self.points):
            at[point] = (1e5 * math.exp(x[2 * i]), 300.0 * x[2 * i + 1])
        return at

    def flows(self, at):
        found = []
        for law, one, two, *numbers in self.elements:
            (p1, t1), (p2, t2) = at[one], at[two]
            if p1 >= p2:
                found.append(LAWS[law](p1, t1, p2, *numbers))
            else:
                found.append(-LAWS[law](p2, t2, p1, *numbers))
        return found

    def residual(self, x):
        if any(not 0.7 < t < 3.3 for t in x[1::2]) or any(not -3 < p < 5 for p in x[0::2]):
            return numpy.full(len(x), 1e3)
        at = self.state(x)
        out = numpy.zeros(len(x))
        size = 0.0
        for (_, one, two, *_), flow in zip(self.elements, self.flows(at)):
            up = one if flow >= 0 else two
            size += abs(flow)
            for end, sign in ((one, -1), (two, 1)):
                if end in self.points:
                    i = self.points.index(end)
                    out[2 * i] += sign * flow
                    out[2 * i + 1] += sign * flow * (
                        enthalpy(at[up][1]) - enthalpy(at[end][1])) / 3e5
        return out / size

    def solve(self, draw):
        highest = max(p for p, _ in self.reservoirs.values())
        for _ in range(400):
            start = []
            for _ in self.points:
                start.append(math.log(draw.uniform(AMBIENT_P, highest) / 1e5))
                start.append(draw.choice([t for _, t in self.reservoirs.values()]) / 300)
            found = root(self.residual, start, method="hybr", options={"xtol": 1e-15})
            if numpy.max(numpy.abs(self.residual(found.x))) < 2e-14:
                return found.x
        return None

    def told(self, draw):
        x = self.solve(draw)
        if x is None:
            return None
        at = self.state(x)
        if any(abs(1 - at[two][0] / at[one][0]) < 1e-3 for _, one, two, *_ in self.elements):
            return None
        return ",".join([
            self.name,
            "|".join(f"{n} {p!r} {t!r}" for n, (p, t) in self.reservoirs.items()),
            "|".join(" ".join(map(str, e)) for e in self.elements),
            "|".join(f"{p} {at[p][0]:.14e} {at[p][1]:.14e}" for p in self.points),
            "|".join(f"{f:.14e}" for f in self.flows(at))])


def series(law, sizes, *rest):
    names = ["inlet", "a", "b", "c"][:len(sizes)] + ["ambient"]
    return [(law, names[i], names[i + 1], s, *rest) for i, s in enumerate(sizes)]


def chosen():
    inlet = {"inlet": (5e5, 450.0)}
    yield "series nozzles 2 last chokes", inlet, series("nozzle", [3e-4, 2e-4])
    yield "series nozzles 2 both choke", inlet, series("nozzle", [2e-4, 5e-4])
    yield "series nozzles 2 none chokes", {"inlet": (1.5e5, 450.0)}, series("nozzle", [2e-4, 2e-4])
    yield "series nozzles 3 all choke", {"inlet": (2e6, 800.0)}, series("nozzle", [1e-4, 3e-4, 9e-4])
    yield "series nozzles 3 equal", inlet, series("nozzle", [2e-4, 2e-4, 2e-4])
    yield "series nozzles 4 equal", {"inlet": (9e5, 700.0)}, series("nozzle", [2e-4] * 4)
    yield "series nozzles 4 narrow in the middle", inlet, series("nozzle", [9e-4, 7e-4, 2e-4, 5e-4])
    for m in (0.5, 0.57):
        yield f"series ISO 2 m {m}", inlet, series("iso", [3e-8, 2e-8], 0.3, m)
        yield f"series ISO 3 m {m}", inlet, series("iso", [3e-8, 4e-8, 3e-8], 0.4, m)
        yield f"series ISO 4 m {m}", inlet, series("iso", [3e-8, 4e-8, 2.5e-8, 3e-8], 0.2, m)
    yield "series ISO 2 first chokes", inlet, series("iso", [1e-8, 6e-8], 0.35, 0.5)
    mixed = series("nozzle", [2e-4, 3e-4, 2.5e-4])
    mixed[1] = ("iso", "a", "b", 5e-7, 0.3, 0.5)
    yield "series nozzle ISO nozzle", inlet, mixed
    for n in (2, 3, 4):
        sizes = [1e-4, 2.5e-4, 0.5e-4, 3e-4][:n]
        yield (f"parallel nozzles {n}", inlet,
               [("nozzle", "inlet", "a", s) for s in sizes] + [("nozzle", "a", "ambient", 4e-4)])
        yield (f"parallel ISO {n}", inlet,
               [("iso", "inlet", "a", s * 2e-4, 0.3, 0.5) for s in sizes]
               + [("iso", "a", "ambient", 9e-8, 0.3, 0.5)])
    yield ("bridge", inlet,
           [("nozzle", "inlet", "a", 2e-4), ("nozzle", "inlet", "b", 1e-4),
            ("nozzle", "a", "b", 1e-4), ("nozzle", "a", "ambient", 1e-4),
            ("iso", "b", "ambient", 5e-7, 0.3, 0.5)])
    two = {"inlet": (4e5, 700.0), "cold": (3.6e5, 320.0)}
    yield ("mixing", two,
           [("nozzle", "inlet", "a", 2e-4), ("nozzle", "cold", "a", 1.5e-4),
            ("nozzle", "a", "ambient", 4e-4)])
    yield ("mixing behind elements", two,
           [("nozzle", "inlet", "a", 2e-4), ("iso", "cold", "b", 4e-7, 0.3, 0.5),
            ("nozzle", "a", "c", 3e-4), ("nozzle", "b", "c", 3e-4),
            ("nozzle", "c", "ambient", 3e-4)])
    yield ("one supply backs up the other", {"inlet": (6e5, 700.0), "cold": (2.0e5, 320.0)},
           [("nozzle", "inlet", "a", 3e-4), ("nozzle", "cold", "a", 1e-4),
            ("nozzle", "a", "ambient", 2e-4)])


def drawn(draw, number):
    reservoirs = {"inlet": (draw.uniform(2e5, 1.5e6), draw.uniform(300, 900))}
    if draw.random() < 0.5:
        reservoirs["cold"] = (draw.uniform(2e5, 1e6), draw.uniform(260, 500))
    points = ["a", "b", "c", "d", "e"][:draw.randint(2, 5)]

    def element(one, two):
        if draw.random() < 0.5:
            return ("nozzle", one, two, round(10 ** draw.uniform(-4.3, -3.0), 7))
        return ("iso", one, two, round(10 ** draw.uniform(-7.0, -5.8), 10),
                round(draw.uniform(0.1, 0.6), 3), round(draw.uniform(0.5, 0.6), 3))

    path = ["inlet"] + points + ["ambient"]
    elements = [element(*pair) for pair in zip(path, path[1:])]
    for name in list(reservoirs)[1:]:
        elements.append(element(name, draw.choice(points)))
    for _ in range(draw.randint(1, 3)):
        one, two = draw.sample(points + ["ambient"], 2)
        elements.append(element(two, one) if one == "ambient" else element(one, two))
    return Network(f"drawn {number}", reservoirs, elements)


def main():
    draw = random.Random(20240607)
    print("name,reservoirs,elements,points,flows")
    for case in chosen():
        line = Network(*case).told(draw)
        if line is None:
            sys.exit(f"no answer: {case[0]}")
        print(line)
    number = 1
    while number <= 30:
        line = drawn(draw, number).told(draw)
        if line is not None:
            print(line)
            number += 1


main()

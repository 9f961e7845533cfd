#!/usr/bin/env python3
"""Two vessels between reservoirs and the air outside, over time, by SciPy's Radau.

Written from the published formulas, apart from Offtake: the heat of air is the mixture "Air" of
NASA/TP-2002-211556, the flow of a nozzle that of any textbook of gas dynamics (for example NACA
Report 1135); each vessel keeps its mass and its internal energy. The table was made with

    python3 transient_network.py > transient-network.csv

(Python 3.11, SciPy 1.10.1, Radau at a relative tolerance of 1e-10). Where the drop between the two
is below 1e-4 Offtake replaces the square root by a cubic on purpose; they pass through that within
a fifty-thousandth of a second.
"""
import math

import numpy
from scipy.integrate import solve_ivp
from scipy.optimize import brentq

R = 8.31446261815324 / 28.9651159e-3
AMBIENT = (101325.0, 288.15)
# NASA/TP-2002-211556, "Air", 200 to 1000 K: a1 to a7 and b1.
A = [1.009950160e4, -1.968275610e2, 5.009155110, -5.761013730e-3, 1.066859930e-5,
     -7.940297970e-9, 2.185231910e-12]
B1 = -1.767967310e2
VOLUMES = (0.02, 0.05)
WALLS = (40.0, 5.0)
RESERVOIR = (6e5, 620.0)
# Area into the first vessel, between them, out of the second; a side hole out of the first.
AREAS = (3e-4, 2e-4, 2.5e-4, 3e-5)


def cp(t):
    return R * sum(a * t ** (k - 2) for k, a in enumerate(A))


def enthalpy(t):
    return R * (-A[0] / t + A[1] * math.log(t) + B1
                + sum(a * t ** (k + 1) / (k + 1) for k, a in enumerate(A[2:])))


def psi(r, g):
    r = max(r, (2 / (g + 1)) ** (g / (g - 1)))
    return math.sqrt(2 * g / (g - 1) * (r ** (2 / g) - r ** ((g + 1) / g)))


def nozzle(one, two, area):
    """Flow from the state (p, T) with the higher pressure."""
    (p1, t1), (p2, _) = one, two
    g = cp(t1) / (cp(t1) - R)
    return area * p1 / math.sqrt(R * t1) * psi(p2 / p1, g)


def stream(one, two, area):
    """Flow from one to two and the enthalpy that it carries."""
    if one[0] >= two[0]:
        return nozzle(one, two, area), enthalpy(one[1])
    return -nozzle(two, one, area), enthalpy(two[1])


def temperature(u):
    return brentq(lambda t: enthalpy(t) - R * t - u, 200, 1000, xtol=1e-11, rtol=1e-14)


def states(y):
    found = []
    for i, volume in enumerate(VOLUMES):
        t = temperature(y[2 * i + 1] / y[2 * i])
        found.append((y[2 * i] * R * t / volume, t))
    return found


def rates(_, y):
    a, b = states(y)
    ways = [(None, 0, stream(RESERVOIR, a, AREAS[0])), (0, 1, stream(a, b, AREAS[1])),
            (1, None, stream(b, AMBIENT, AREAS[2])), (0, None, stream(a, AMBIENT, AREAS[3]))]
    out = numpy.zeros(4)
    for one, two, (flow, carried) in ways:
        for end, sign in ((one, -1), (two, 1)):
            if end is not None:
                out[2 * end] += sign * flow
                out[2 * end + 1] += sign * flow * carried
    for i, (_, t) in enumerate((a, b)):
        out[2 * i + 1] -= WALLS[i] * (t - AMBIENT[1])
    return out


def filled(p, t, volume):
    mass = p * volume / (R * t)
    return [mass, mass * (enthalpy(t) - R * t)]


def main():
    start = filled(1.2e5, 300.0, VOLUMES[0]) + filled(3.5e5, 350.0, VOLUMES[1])
    times = [0.01, 0.02, 0.05, 0.1, 0.2, 0.3, 0.5, 0.7, 1, 1.5, 2, 3, 5]
    found = solve_ivp(rates, (0, times[-1]), start, method="Radau", t_eval=times, rtol=1e-10,
                      atol=1e-10)
    print("seconds,p a,T a,p b,T b")
    for k, time in enumerate(times):
        a, b = states(found.y[:, k])
        print(f"{time},{a[0]:.12e},{a[1]:.12e},{b[0]:.12e},{b[1]:.12e}")


main()

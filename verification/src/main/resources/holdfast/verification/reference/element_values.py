"""Loads of single rolling elements, modified lives and pressures of tilted bearings, apart from the code under test.

Usage: python3 element_values.py ELEMENTS_FILE LIVES_FILE

Equilibria and lives are those of tilted_bearing.py: loads over the continuous length of a roller, all elements kept, a root
search with numerical derivatives. The modified life takes the factor a(r) = 0.3 + 0.15/r, invented, with r the ring load of
a place over its rating, as if the whole roller were loaded like that place. Pressures come from the conditions of contact
(case_values.py). Units: mm, N, MPa, rad, 10^6 revolutions.
"""

import csv
import math
import sys

import mpmath as mp
import numpy as np
import scipy
from scipy import integrate

from case_values import hertz, hertz_line
from tilted_bearing import Balls, Rollers, cases

ELEMENTS = (5, 6, 21, 23, 28, 30, 33, 36, 39)
LIVES = (5, 6, 11, 14, 16, 21, 30, 33, 36, 37)


def a_of(r):
    return 0.3 + 0.15 / r


def modified_rollers(m, q):
    c = m.c
    gamma = c["dwe"] / c["dpw"]
    ratio = 1.038 * ((1 - gamma) / (1 + gamma)) ** (143 / 108)
    with np.errstate(divide="ignore"):
        f = 1 - 0.01 / np.log(1.985 * np.abs(m.x) / c["lwe"])
    total = 0
    for factor, power, turns in ((0.378, 4.5, c["inner"] == "ROTATING"), (0.364, -4.5, c["outer"] == "ROTATING")):
        rating = c["cr"] / (factor * c["z"]) * (1 + ratio ** power) ** (2 / 9)
        r = f * q * c["lwe"] / rating
        ring = np.mean(r ** 4, axis=0) ** 0.25 if turns else np.mean(r ** 4.5, axis=0) ** (2 / 9)
        with np.errstate(divide="ignore", invalid="ignore"):
            damage = np.where(ring > 0, ring ** 4.5 * a_of(ring) ** (-9 / 8), 0)
        total += integrate.simpson(damage, x=m.x) / c["lwe"]
    return total ** (-8 / 9)


def modified_balls(m, q):
    c = m.c
    gamma = c["dwe"] / c["dpw"]
    groove = c["ri"] * (2 * c["re"] - c["dwe"]) / (c["re"] * (2 * c["ri"] - c["dwe"]))
    ratio = 1.044 * ((1 - gamma) / (1 + gamma)) ** 1.72 * groove ** 0.41
    total = 0
    for factor, power, turns in ((0.407, 10 / 3, c["inner"] == "ROTATING"), (0.389, -10 / 3, c["outer"] == "ROTATING")):
        rating = c["cr"] / (factor * c["z"]) * (1 + ratio ** power) ** 0.3
        w = 3 if turns else 10 / 3
        ring = np.mean((q / rating) ** w) ** (1 / w)
        total += ring ** (10 / 3) * a_of(ring) ** (-10 / 9)
    return total ** -0.9


def angles(m, y, t, loads):
    line = m.vectors(y[:2], y[2], np.asarray(t))
    return np.where(loads > 0, np.arctan2(line[1], line[0]), 0)


def pressures(m, loads, q):
    """At the inner raceway of rollers, where the load per length is greatest; at the harder pressed ring of balls."""
    c = m.c
    modulus = mp.mpf(207000) / (2 * (1 - mp.mpf("0.09")))
    gamma = mp.mpf(c["dwe"]) / mp.mpf(c["dpw"])
    if c["kind"] == "roller":
        return [hertz_line(w, modulus, c["dwe"] * (1 - gamma) / 2)[1] if w > 0 else 0 for w in q.max(axis=1)]
    found = []
    for load in loads:
        rings = []
        for sign, groove in ((1, c["ri"]), (-1, c["re"])):
            ball = mp.mpf(2) / mp.mpf(c["dwe"])
            along, across = (ball + sign * ball * gamma / (1 - sign * gamma)) / 2, (ball - 1 / mp.mpf(groove)) / 2
            rings.append(hertz(load, modulus, along, across)[2] if load > 0 else 0)
        found.append(max(rings))
    return found


def solved(c):
    m = Balls(c) if c["kind"] == "ball" else Rollers(c)
    if c["moment"] == "":
        y, t, q = m.solve(tau=(math.tan(c["tilt"]), math.tan(c["across"])))
    else:
        y, t, q = m.solve(moment=(c["moment"], c["moment_across"]))
    return m, y, t, q


def write(path, rows):
    end = dict(source=f"SciPy {scipy.__version__}", locator="element_values.py", provenance="reference computation", disclosed="")
    with open(path, "w", newline="", encoding="utf-8") as file:
        writer = csv.DictWriter(file, list(rows[0]) + list(end), lineterminator="\n")
        writer.writeheader()
        writer.writerows(dict(r, **end) for r in rows)
    print(f"{len(rows)} rows in {path}")


def main():
    elements, lives = [], []
    for number, c in enumerate(cases(), 1):
        if number not in ELEMENTS + LIVES:
            continue
        m, y, t, q = solved(c)
        ball = c["kind"] == "ball"
        loads = q if ball else integrate.simpson(q, x=m.x, axis=1)
        if number in LIVES:
            lives.append(dict(case=number, life=f"{(modified_balls if ball else modified_rollers)(m, q):.10g}"))
        if number in ELEMENTS:
            turned = angles(m, y, t, loads) if ball else np.zeros(c["z"])
            for j, p in enumerate(pressures(m, loads, q)):
                elements.append(dict(case=number, element=j, load=f"{loads[j]:.10g}", contact_angle=f"{turned[j]:.10g}",
                                     pressure=mp.nstr(mp.mpf(p), 8)))
    write(sys.argv[1], elements)
    write(sys.argv[2], lives)


if __name__ == "__main__":
    main()

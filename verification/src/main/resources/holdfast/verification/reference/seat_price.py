"""Price of a loose seat from a general-purpose scientific library, apart from the code under test.

Usage: python3 seat_price.py FILE      writes the cases with their values as CSV

How this differs from the code under test: the lean of a stud with play is the root of the exact equation of a rectangle in
a gap; a crowned ring is balanced from the other side, by searching the lean of the ring under whose moment the bearing tilts
by what is left (the code searches the tilt whose moment the ring balances), with the lowest point of the turned arc found
by a search; the bearing is that of tilted_bearing.py, with
loads integrated over the continuous length of a roller. The recalled formulas of life are the same: this checks the
mathematics and the joining, not the choice of formula. Units: mm, N, N mm, rad.
"""

import csv
import math
import sys

import numpy as np
import scipy
import tilted_bearing
from scipy import optimize
from tilted_bearing import Rollers

SEARCH, FULL = 4001, 32001


def model(c, stations):
    tilted_bearing.STATIONS = stations
    return Rollers(dict(c, first=0, inner="STATIONARY", outer="ROTATING"))


def lean(c):
    loose = 0
    if c["clearance"] > 0:
        loose = optimize.brentq(
            lambda phi: c["length"] * math.sin(phi) + c["stud"] * (math.cos(phi) - 1) - c["clearance"], 0, 0.2, xtol=1e-16)
    return max(loose, math.atan(c["runout"] / c["face"])) + c["bending"]


def arm(c, ring):
    """How far the lowest point of the crown lies beside the middle of the ring: the arc turned by the lean, then searched."""
    def height(t):
        # A point of the arc at the angle t from its middle; the middle of the ring is the origin, the track lies below.
        x, y = c["crown"] * math.sin(t), c["crown"] - c["outside"] / 2 - c["crown"] * math.cos(t)
        return x * math.sin(ring) + y * math.cos(ring)

    t = optimize.minimize_scalar(height, bounds=(-0.2, 0.2), method="bounded", options=dict(xatol=1e-14)).x
    x, y = c["crown"] * math.sin(t), c["crown"] - c["outside"] / 2 - c["crown"] * math.cos(t)
    return abs(x * math.cos(ring) - y * math.sin(ring))


def raceways(c, whole):
    if c["crown"] == 0 or whole == 0:
        return whole
    bearing = model(c, SEARCH)

    def left(ring):
        tilt = bearing.solve(moment=(c["fr"] * arm(c, ring), 0.0))[1]
        return math.atan(tilt[0]) + ring - whole

    low = 0.0
    high = whole * (1 - 1e-9)
    # A moment that would tip the bearing over has no equilibrium: keep below a third of the length of the rollers.
    high = min(high, c["lwe"] / 3 / (c["crown"] - c["outside"] / 2))
    return whole - optimize.brentq(left, low, high, xtol=1e-10 * whole + 1e-14, rtol=1e-10)


def cases():
    needle = dict(z=16, dwe=3.5, lwe=12, dpw=23, cr=14200, s=0.02, profile="log", fr=2100, stud=18, length=16,
                  clearance=0.036, runout=0.008, face=32, bending=0.00013, outside=40, crown=0)
    yield needle
    yield dict(needle, clearance=0.018)
    yield dict(needle, clearance=-0.012)
    yield dict(needle, clearance=0.018, fr=4200)
    yield dict(needle, clearance=0.018, profile="flat")
    yield dict(needle, crown=500)
    yield dict(needle, crown=500, clearance=0.018)
    yield dict(needle, crown=500, clearance=-0.012)
    yield dict(needle, crown=500, fr=1050)
    yield dict(needle, crown=200)
    yield dict(needle, crown=2000, fr=4200)
    yield dict(needle, crown=500, profile="r=2000")


def results():
    for c in cases():
        whole = lean(c)
        tilt = raceways(c, whole)
        bearing = model(c, FULL)
        aligned = bearing.life(bearing.solve(tau=(0.0, 0.0))[2])
        life = bearing.life(bearing.solve(tau=(math.tan(tilt), 0.0))[2])
        yield c, dict(lean=whole, raceways=tilt, life_ratio=life / aligned)


def main():
    rows = [dict(case=i + 1, **c, **{k: f"{v:.10g}" for k, v in r.items()}, source=f"SciPy {scipy.__version__}",
                 locator="seat_price.py", provenance="reference computation", disclosed="")
            for i, (c, r) in enumerate(results())]
    with open(sys.argv[1], "w", newline="", encoding="utf-8") as file:
        writer = csv.DictWriter(file, rows[0].keys(), lineterminator="\n")
        writer.writeheader()
        writer.writerows(rows)
    print(f"{len(rows)} cases, NumPy {np.__version__}, SciPy {scipy.__version__}")


if __name__ == "__main__":
    main()

#!/usr/bin/env python3
"""Reference values for fits from general-purpose libraries.

Usage: python3 fit_reference.py DIRECTORY      writes reference-values.csv
Nothing here uses the closed forms of the library under test:
- the temperature of a wanted clearance: both parts grown by their own expansion in steps, root with brentq;
- guard bands: density of a reading integrated up to the limit, root with brentq;
- shares of parts outside limits: density of the sizes integrated outside the limits, with quad.
Inputs are invented. Units: mm, K, expansion in um/(m K).
"""
import csv
import math
import sys

import scipy
from scipy.integrate import quad
from scipy.optimize import brentq

SCIPY = "SciPy " + scipy.__version__
ROWS = []


def add(quantity, value, digits, road, **arguments):
    text = "; ".join("%s = %s" % (k, v) for k, v in arguments.items())
    ROWS.append([quantity, text, "%#.*g" % (digits, value), SCIPY, road, "reference computation", ""])


def temperatures():
    for hole, ah, shaft, as_, wanted in [(25.0, 23, 25.035, 11.5, 0), (25.021, 23, 25.022, 11.5, 0.01), (16.0, 10.5, 15.982, 11.5, 0),
                                         (60.03, 18, 60.072, 12, -0.02)]:
        def lacking(t):
            grown = lambda d, a: d + quad(lambda x: d * a * 1e-6, 20, t)[0]
            return grown(hole, ah) - grown(shaft, as_) - wanted
        add("temperature of a clearance", brentq(lacking, -5000, 5000, xtol=1e-11, rtol=1e-15), 9,
            "both parts grown by their own expansion, root of the clearance", hole=hole, alpha_h=ah, shaft=shaft, alpha_s=as_, clearance=wanted)


def shares():
    for lower, upper, cp, cpk, side in [(25.0, 25.021, 1.0, 1.0, "UPPER"), (25.0, 25.021, 1.33, 1.0, "UPPER"), (15.966, 15.984, 1.0, 0.4, "LOWER"),
                                        (59.97, 60.0, 0.8, -0.1, "LOWER")]:
        sigma = (upper - lower) / 6 / cp
        mean = upper - 3 * sigma * cpk if side == "UPPER" else lower + 3 * sigma * cpk
        density = lambda x: math.exp(-0.5 * ((x - mean) / sigma) ** 2) / (sigma * math.sqrt(2 * math.pi))
        far = 40 * sigma
        outside = sum(quad(density, a, b, epsabs=1e-16, epsrel=1e-13, limit=400, points=[mean] if a < mean < b else None)[0]
                      for a, b in ((mean - far, lower), (upper, mean + far)))
        add("share of a normal process outside its limits", outside, 7, "density integrated outside the limits", lower=lower, upper=upper,
            Cp=cp, Cpk=cpk, side=side)
    for lower, upper, low, high in [(25.0, 25.021, 25.003, 25.018), (15.966, 15.984, 15.97, 16.0)]:
        inside = quad(lambda x: 1 / (upper - lower) if lower <= x <= upper else 0.0, max(low, lower), min(high, upper))[0]
        add("share of an even process outside other limits", 1 - inside, 9, "density integrated inside the limits", lower=lower, upper=upper,
            low=low, high=high)


def guard_bands():
    """A reading on the edge of the acceptance zone: the share of its normal density on the right side of the limit."""
    for uncertainty, share in ((2.0, 0.95), (7.5, 0.95)):
        sigma = uncertainty / 2
        density = lambda x: math.exp(-0.5 * (x / sigma) ** 2) / (sigma * math.sqrt(2 * math.pi))
        inside = lambda g: quad(density, -40 * sigma, g, epsabs=1e-15, epsrel=1e-13, limit=400, points=[0])[0] - share
        add("guard band", brentq(inside, 0, 5 * sigma, xtol=1e-14, rtol=1e-14), 9, "density of a reading integrated up to the limit, root",
            U=uncertainty, share=share)


if __name__ == "__main__":
    temperatures()
    shares()
    guard_bands()
    with open(sys.argv[1] + "/reference-values.csv", "w", newline="", encoding="utf-8") as file:
        out = csv.writer(file, lineterminator="\n")
        out.writerow("quantity,arguments,value,source,locator,provenance,disclosed".split(","))
        out.writerows(ROWS)
    print(len(ROWS), "reference values;", SCIPY)

"""Rows of the case tables that name a calculation and its inputs, written as CSV. Used by the programs beside it."""

import csv

import mpmath as mp
import numpy as np
import scipy

mp.mp.dps = 40
MPMATH = "mpmath " + mp.__version__
SCIPY = "SciPy " + scipy.__version__
NUMPY = "NumPy " + np.__version__
ROUNDING = "roundings of a double"
ROOT = "root search of a general-purpose solver"
AGAIN = ", coded a second time with " + MPMATH


class Cases:
    def __init__(self):
        self.rows = []

    def add(self, calculation, inputs, value, unit, source, locator, kind="REFERENCE", tolerance=1e-12, reason=ROUNDING,
            provenance="reference computation", disclosed=""):
        value = value if isinstance(value, str) else mp.nstr(mp.mpf(value), 15, min_fixed=-30, max_fixed=30)
        self.rows.append([calculation, inputs, value, repr(tolerance), unit, reason, kind, source, locator, provenance,
                          disclosed])

    def again(self, calculation, inputs, value, unit, document, locator, provenance="reference computation"):
        """A formula read afresh in its document and coded a second time."""
        self.add(calculation, inputs, value, unit, document, locator + AGAIN, kind="RECODED", provenance=provenance)

    def write(self, path):
        with open(path, "w", newline="", encoding="utf-8") as f:
            w = csv.writer(f, lineterminator="\n")
            w.writerow(["calculation", "inputs", "value", "tolerance", "unit", "reason", "kind", "source", "locator",
                        "provenance", "disclosed"])
            w.writerows(self.rows)
        print(f"{len(self.rows)} rows in {path}")


def text(**inputs):
    """Inputs as one cell: numbers as the program has them, lists with bars."""
    def one(v):
        return v if isinstance(v, str) else repr(v)
    return "; ".join(f"{k}={'|'.join(map(one, v)) if isinstance(v, (list, tuple)) else one(v)}" for k, v in inputs.items())


def circumference(diameter):
    """Length of the circle, by quadrature along it."""
    r = mp.mpf(diameter) / 2
    return mp.quad(lambda t: mp.hypot(-r * mp.sin(t), r * mp.cos(t)), mp.linspace(0, 2 * mp.pi, 9))


def hertz(force, modulus, greater, lesser):
    """Contact ellipse a, b, p0, approach and b/a, from the conditions of contact with Carlson's integrals.

    The pressure p0 sqrt(1 - x^2/a^2 - y^2/b^2) sinks the surface by (p0 a b/(2 E*)) times the integral over s from 0 of
    (1 - x^2/(a^2+s) - y^2/(b^2+s)) / sqrt((a^2+s)(b^2+s) s); its terms must be the approach and the curvatures A, B.
    """
    force, modulus, greater, lesser = map(mp.mpf, (force, modulus, greater, lesser))

    def terms(k):
        # In units of a: integrals with squares of the axes 1 and k^2.
        flat = 2 * mp.elliprf(1, k * k, 0)
        along = mp.mpf(2) / 3 * mp.elliprd(k * k, 0, 1)
        across = mp.mpf(2) / 3 * mp.elliprd(1, 0, k * k)
        return flat, along, across

    if greater == lesser:
        k = mp.mpf(1)
    else:
        start = -mp.log(greater / lesser) * mp.mpf("0.6")
        x = mp.findroot(lambda x: mp.log(terms(mp.exp(x))[2] / terms(mp.exp(x))[1]) - mp.log(greater / lesser),
                        (start, start * mp.mpf("1.05")), solver="secant", tol=1e-60)
        k = mp.exp(x)
    flat, along, across = terms(k)
    # p0 a b/(2 E*) along/a^3 = A with p0 = 3F/(2 pi a b).
    a = mp.cbrt(3 * force * along / (4 * mp.pi * modulus * lesser))
    b = k * a
    return a, b, 3 * force / (2 * mp.pi * a * b), 3 * force / (4 * mp.pi * modulus * a) * flat, k


def hertz_line(line_load, modulus, radius):
    """Half width b and peak pressure of a line contact, from the conditions of contact by quadrature.

    The slope of the surface under the pressure p(x) is (2/(pi E*)) times the principal value of the integral of
    p(s)/(x - s); it must be x/R. The pressure must carry the load.
    """
    line_load, modulus, radius = map(mp.mpf, (line_load, modulus, radius))

    def shape(s):
        return mp.sqrt(1 - s * s)
    x = mp.mpf(1) / 2
    near = mp.quad(lambda s: (shape(s) - shape(x)) / (x - s), [-1, -0.5, 0, 0.25, x, 0.75, 1])
    value = near + shape(x) * mp.log((x + 1) / (1 - x))  # principal value at x = b/2 for p0 = 1
    area = mp.quad(shape, [-1, 0, 1])
    # p0 (2/(pi E*)) value = (b/2)/R and p0 b area = load
    ratio = 4 * radius * value / (mp.pi * modulus)  # b over p0
    p0 = mp.sqrt(line_load / (area * ratio))
    return ratio * p0, p0

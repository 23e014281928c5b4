"""Independent answers to some of the questions of core/docs/questions.md, with Python 3.11 and SciPy 1.17.1.

Run: python3 questions.py. Prints one line a value; the values stand in cases/questions/answers.csv. Formulas as their
documents print them, typed anew here; inputs are the invented ones of the page.
"""
import math

from scipy.integrate import quad
from scipy.optimize import brentq

LBF = 4.4482216152605


def show(name, value):
    print(f"{name}: {value:.9g}")


# 16: L10h = 16667/n (C/P)^(10/3) with the exact 10^6/60, C = 9500 lbf, P = 900 lbf, 300 rpm.
l10 = 1e6 / 60 / 300 * (9500 / 900) ** (10 / 3)
show("16 hours at 90 %", l10)

# 17: Pe = [sum(P^(10/3) n t)/sum(n t)]^(3/10), in lbf.
steps = [(1800, 100, 0.2), (900, 300, 0.5), (300, 400, 0.3)]
turns = sum(n * t for _, n, t in steps)
show("17 mean load in lbf", (sum(p ** (10 / 3) * n * t for p, n, t in steps) / turns) ** 0.3)
show("17 mean speed in rpm", turns)

# 18: as many revolutions of rolling path per cycle as 4 half swings of 20 degrees.
show("18 million cycles", (9500 / 900) ** (10 / 3) * 360 / (4 * 20))

# 21: force at the rim from the angular momentum of thin rings, start from rest to 3 m/s over 20 mm.
D, d, m, v, s = 0.035, 0.025, 0.066, 3.0, 0.020
density = m / (math.pi / 4 * (D * D - d * d))
inertia = quad(lambda r: density * 2 * math.pi * r * r * r, d / 2, D / 2)[0]
duration = 2 * s / v
moment = inertia * (v / (D / 2)) / duration
show("21 least load in N at friction 0.1", moment / (D / 2) / 0.1)

# 24: T = 0.1 C e cos 45 degrees, height between -45 and 45 degrees.
show("24 torque in N mm", 0.1 * 12100 * 0.8 * math.cos(math.radians(45)))
show("24 torque in lbf in", 0.1 * 2720 / 32 * math.cos(math.radians(45)))
show("24 height in mm", 0.8 * (math.sin(math.radians(45)) - math.sin(math.radians(-45))))


# 25: three-parameter distribution of ISO 281 (minimum life 0.05 L10, exponent 1.5), L10 = 20000 h, 1500 h a year.
def survival(h):
    u = h / 20000
    return 1.0 if u <= 0.05 else math.exp(-math.log(1 / 0.9) * ((u - 0.05) / 0.95) ** 1.5)


show("25 hours at 95 % of each", brentq(lambda h: survival(h) - 0.95, 1000, 20000, xtol=1e-9))


def density_of_failure(h, step=1e-3):
    return (survival(h - step) - survival(h + step)) / (2 * step)


def renewals(t):
    """M(t) by terms: one failure, and two. A third one has a chance below (1 - S(5500 h))^3 = 2e-6 a place."""
    first = 1 - survival(t)
    second = quad(lambda x: (1 - survival(t - x)) * density_of_failure(x), 1000, t, limit=200)[0] if t > 1000 else 0.0
    return first + second


five = 40 * renewals(7500)
show("25 replacements in 5 years", five)
demand = five - 40 * renewals(6000)
show("25 demand of the fifth year", demand)
total, k, term = 0.0, 0, math.exp(-demand)
while total + term < 0.95:
    total += term
    k += 1
    term *= demand / k
show("25 spares at 95 %", k)

#!/usr/bin/env python3
"""Parts of a job by another road, from general-purpose libraries.

Usage: python3 other_roads.py DIRECTORY      writes other-roads.csv
Nothing here uses the closed forms of the library under test:
- force of a line contact at a pressure: the slope of the half-space under a semi-elliptic pressure by quadrature in the sense of
  Cauchy must be that of the gap, half width by brentq, force by quadrature;
- force of an elliptical contact at a pressure: axes from the curvature ratio with K(m) and E(m) of mpmath, root of the force;
- scale of a Weibull distribution: root over the distribution of SciPy;
- squareness: run-out of a turned disc, its rim sampled as vectors;
- greatest driving moment: lever and friction force at the contact as vectors, by a cross product;
- mean loads: power means by quadrature; where the printed rule is an approximation the case stands where it must be right;
- slope of a clamped beam: boundary value problem of the elastic line; bending stress: quadrature over the section;
- displacement of a closed thick ring: boundary value problem of the radial displacement.
Inputs are invented. Units: mm, N, N mm, MPa, rad.
"""
import csv
import math
import sys

import mpmath as mp
import numpy as np
import scipy
from scipy import stats
from scipy.integrate import dblquad, quad, solve_bvp
from scipy.optimize import brentq

SCIPY = "SciPy " + scipy.__version__
NUMPY = "NumPy " + np.__version__
MPMATH = "mpmath " + mp.__version__
ROWS = []


def add(calculation, value, tolerance, unit, reason, library, road, disclosed="", **inputs):
    ROWS.append([calculation, "; ".join("%s=%s" % (k, v) for k, v in inputs.items()), "%.12g" % value, tolerance, unit, reason,
                 "REFERENCE", library, road, "reference computation", disclosed])


def line_contact():
    for pressure, length, radius, modulus in [(1500.0, 10.0, 12.0, 115000.0), (800.0, 22.5, 40.0, 70000.0)]:
        def slope_error(half):
            x = half / 3
            # Slope of the surface of a half-space at x under p(s): 2/(pi E*) times the principal value of p(s)/(x - s).
            principal = quad(lambda s: -pressure * math.sqrt(1 - (s / half) ** 2), -half, half, weight="cauchy", wvar=x, limit=2000,
                             epsabs=1e-12, epsrel=1e-12)[0]
            return 2 / (math.pi * modulus) * principal - x / radius
        half = brentq(slope_error, 1e-4, 5, xtol=1e-13)
        force = length * quad(lambda s: pressure * math.sqrt(1 - (s / half) ** 2), -half, half, epsabs=1e-10)[0]
        add("force of a line contact", force, "1e-7", "N", "accuracy of the quadrature", SCIPY, "slope of the half-space by quadrature",
            p=pressure, L=length, R=radius, E=modulus)


def elliptical_contact():
    for pressure, modulus, greater, lesser in [(2000.0, 115000.0, 0.05, 0.002), (1200.0, 70000.0, 0.1, 0.08)]:
        ratio = mp.mpf(lesser) / greater

        def curvature_ratio(k):
            m = 1 - k * k
            return ((1 / (k * k)) * mp.ellipe(m) - mp.ellipk(m)) / (mp.ellipk(m) - mp.ellipe(m)) - 1 / ratio
        k = mp.findroot(curvature_ratio, (mp.mpf("0.02"), mp.mpf("0.95")), solver="anderson", tol=1e-24)
        m = 1 - k * k

        def peak(force):
            # a^3 from the compression of the greater curvature: pi E* B a^2 k^2 m = p0 k a (E - k^2 K)
            a = mp.findroot(lambda a: mp.pi * modulus * lesser * a**3 * m - mp.mpf(3) / 2 * force * (mp.ellipk(m) - mp.ellipe(m)) / 1, 1)
            return 3 * force / (2 * mp.pi * a * k * a)
        force = mp.findroot(lambda f: peak(f) - pressure, 500)
        add("force of an elliptical contact", float(force), "1e-9", "N", "accuracy of the root", MPMATH,
            "axes with complete elliptic integrals, root of the force", p=pressure, E=modulus, B=greater, A=lesser)


def distributions():
    for life, share, slope, least in [(20000.0, 0.9, 1.5, 0.0), (8000.0, 0.5, 2.2, 1000.0), (500.0, 0.632, 0.8, 0.0)]:
        scale = brentq(lambda s: stats.weibull_min.sf(life, slope, loc=least, scale=s) - share, 1.0, 1e7, xtol=1e-9, rtol=1e-14)
        add("Weibull scale", scale, "1e-9", "h", "accuracy of the root", SCIPY, "root over the survival function", life=life, share=share,
            beta=slope, gamma=least)


def vectors():
    for tilt, share, face in [(0.001, 0.5, 32.0), (0.004, 1.0, 25.4), (0.02, 0.3, 60.0)]:
        angle = share * tilt
        turn = np.array([[1, 0, 0], [0, math.cos(angle), -math.sin(angle)], [0, math.sin(angle), math.cos(angle)]])
        # The indicator runs round on a circle of the face diameter about the axis of the bore and reads the turned plane below it.
        normal = turn @ np.array([0.0, 0.0, 1.0])
        round_ = np.linspace(0, 2 * math.pi, 7201)
        x, y = face / 2 * np.cos(round_), face / 2 * np.sin(round_)
        height = -(normal[0] * x + normal[1] * y) / normal[2]
        add("squareness", float(np.ptp(height)), "1e-9", "mm", "roundings of a double", NUMPY, "run-out of a turned plane, sampled",
            phi=tilt, share=share, DF=face)
    for friction, load, diameter in [(0.1, 2100.0, 40.0), (0.06, 600.0, 38.1)]:
        contact = np.array([0.0, -diameter / 2, 0.0])
        moment = np.cross(contact, np.array([friction * load, 0.0, 0.0]))
        add("driving moment", float(np.linalg.norm(moment)), "1e-12", "N·mm", "roundings of a double", NUMPY,
            "cross product of lever and friction force", mu=friction, F=load, D=diameter)


def power_mean(load, exponent, upper, points=None):
    return (quad(lambda x: load(x) ** exponent, 0, upper, epsabs=0, epsrel=1e-12, limit=400, points=points)[0] / upper) ** (1 / exponent)


def mean_loads():
    for exponent, greatest in [(3.0, 5000.0), (10 / 3, 2100.0), (9.0, 800.0)]:
        mean = power_mean(lambda x: greatest * (1 - math.cos(x)) / 2, exponent, 2 * math.pi)
        add("sinusoid", mean, "1e-9", "N", "accuracy of the quadrature", SCIPY, "power mean by quadrature", p=exponent, Pmax=greatest)
    for load in (2100.0, 350.0):
        mean = power_mean(lambda x: load, 3.0, 1.0)
        add("linear rule", mean, "1e-9", "N", "a load that does not vary is its own mean", SCIPY, "power mean by quadrature", Pmin=load,
            Pmax=load)
    mean = power_mean(lambda x: 900 * x, 3.0, 1.0)
    add("linear rule", mean, "1e-3", "N", "a rule of thumb", SCIPY, "power mean by quadrature",
        "the rule lies 5.8 % above the mean of a load that rises from 0, exponent 3: on the safe side", Pmin=0.0, Pmax=900.0)
    for load in (1000.0, 420.0):
        # The rule has no exponent; 3 is that of ball bearings.
        mean = power_mean(lambda x: load * math.hypot(1 + math.cos(x), math.sin(x)), 3.0, 2 * math.pi, [math.pi])
        add("stationary and rotating", mean, "0.005", "N", "printed coefficients have one digit", SCIPY,
            "power mean of the vector sum by quadrature, exponent 3, equal loads", F1=load, F2=load)
    mean = power_mean(lambda x: 1000 * math.hypot(1 + 0.5 * math.cos(x), 0.5 * math.sin(x)), 3.0, 2 * math.pi)
    add("stationary and rotating", mean, "0.005", "N", "printed coefficients have one digit", SCIPY,
        "power mean of the vector sum by quadrature, exponent 3",
        "between the ends the printed rule lies up to 3 % above the mean of the vector sum: on the safe side", F1=1000.0, F2=500.0)


def studs():
    for force, at, x, stiffness in [(2100.0, 12.0, 12.0, 1.05e9), (600.0, 30.0, 18.0, 4.2e8), (900.0, 10.0, 25.0, 3.0e8)]:
        def right(s, y):
            return np.vstack([y[1], force * np.clip(at - s, 0, None) / stiffness])
        s = np.unique(np.concatenate([np.linspace(0, max(x, at), 201), [at, x]]))
        line = solve_bvp(right, lambda left, end: np.array([left[0], left[1]]), s, np.zeros((2, s.size)), tol=1e-12, max_nodes=200000)
        add("slope of a beam", float(line.sol(x)[1]), "1e-8", "rad", "accuracy of the boundary value problem", SCIPY,
            "boundary value problem of the elastic line", F=force, a=at, x=x, EI=stiffness)
    for moment, d, bore in [(25000.0, 18.0, 3.0), (9000.0, 15.875, 0.0)]:
        inertia = dblquad(lambda r, t: (r * math.sin(t)) ** 2 * r, 0, 2 * math.pi, bore / 2, d / 2, epsabs=1e-10, epsrel=1e-12)[0]
        add("bending stress", moment * d / 2 / inertia, "1e-9", "MPa", "accuracy of the quadrature", SCIPY,
            "second moment of area by quadrature", M=moment, d=d, di=bore)


def rings():
    for r, a, b, inner, outer, modulus, nu in [(9.0, 9.0, 25.0, 60.0, 0.0, 210000.0, 0.3), (20.0, 9.0, 25.0, 40.0, 5.0, 70000.0, 0.33)]:
        # The wall carries the force on its ends; sr = E'(u' + nu' u/r) + share of the axial stress.
        axial = (inner * a * a - outer * b * b) / (b * b - a * a)

        def radial_stress(radius, u, du):
            return modulus / (1 - nu * nu) * (du + nu * u / radius) + nu / (1 - nu) * axial

        line = solve_bvp(lambda s, y: np.vstack([y[1], y[0] / s**2 - y[1] / s]),
                         lambda left, end: np.array([radial_stress(a, left[0], left[1]) + inner, radial_stress(b, end[0], end[1]) + outer]),
                         np.linspace(a, b, 401), np.full((2, 401), 1e-3), tol=1e-11, max_nodes=200000)
        add("displacement of a closed ring", float(line.sol(r)[0]), "1e-7", "mm", "accuracy of the boundary value problem", SCIPY,
            "boundary value problem of the radial displacement", r=r, a=a, b=b, pi=inner, po=outer, E=modulus, nu=nu)


if __name__ == "__main__":
    for part in (line_contact, elliptical_contact, distributions, vectors, mean_loads, studs, rings):
        part()
    with open(sys.argv[1] + "/other-roads.csv", "w", newline="", encoding="utf-8") as file:
        out = csv.writer(file, lineterminator="\n")
        out.writerow("calculation,inputs,value,tolerance,unit,reason,kind,source,locator,provenance,disclosed".split(","))
        out.writerows(ROWS)
    print(len(ROWS), "values;", SCIPY, NUMPY, MPMATH)

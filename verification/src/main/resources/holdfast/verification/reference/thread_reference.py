#!/usr/bin/env python3
"""Reference values for threads, joints and tightening from general-purpose libraries.

Usage: python3 thread_reference.py DIRECTORY      writes reference-values.csv, sampled-preloads.csv and recalled-formulas.csv
Nothing in the first two uses the closed forms of the library under test:
- sections with bore and cross hole: quadrature over what is left of the section;
- stresses: eigenvalues of the stress tensor in a turned frame; preloads at a stress by brentq;
- clamped parts: cone and sleeve cut into rings and integrated (the angle of the cone is the recalled one);
- embedding, temperature: stud and parts as two springs, forces and lengths as a linear system;
- shear areas: axial width of the 60 degree profile where the shear cylinder cuts its flanks, found with brentq;
- chart torques on a drilled stud: the thread as a wedge on an inclined plane, forces and torques as a linear system, roots by
  brentq; bands of friction 0.08 to 0.16 and 0.14 to 0.24, chart's preload 75 % of the yield stress as the library states them;
- helix: tangent of the curve in space; the linear lever: first derivative of the exact lever, with mpmath;
- scatter of sampled preloads: moments and probabilities by Gauss-Legendre quadrature over the three distributions.
recalled-formulas.csv holds recalled formulas coded a second time with mpmath: it guards against slips of coding and proves nothing.
Inputs are invented. Units: mm, N, N mm, MPa, K, rad.
"""
import csv
import math
import sys

import mpmath as mp
import numpy as np
import scipy
from scipy.integrate import dblquad, quad
from scipy.optimize import brentq

mp.mp.dps = 40
SCIPY = "SciPy " + scipy.__version__
NUMPY = "NumPy " + np.__version__
MPMATH = "mpmath " + mp.__version__
REFERENCE, SAMPLED, RECALLED = [], [], []


def add(quantity, value, digits, library, road, **arguments):
    """A reference value with its accuracy in digits, and how it was obtained."""
    REFERENCE.append([quantity, listed(arguments), "%#.*g" % (digits, value), library, road, "reference computation", ""])


def recall(quantity, value, document, locator, digits=13, **arguments):
    RECALLED.append([quantity, listed(arguments), mp.nstr(value, digits, strip_zeros=False), document, locator, "memory", ""])


def listed(arguments):
    return "; ".join("%s = %s" % (k, v) for k, v in arguments.items())


# sections and stresses


def left(function, d, bore, cross):
    """Integral of f(x, y) over a ring without the strip |x| <= cross/2."""
    def disc(r):
        if r <= cross / 2:
            return 0.0
        return 4 * dblquad(lambda t, x: function(x, math.sqrt((r - x) * (r + x)) * math.sin(t))
                           * math.sqrt((r - x) * (r + x)) * math.cos(t),
                           cross / 2, r, 0, math.pi / 2, epsabs=1e-11, epsrel=1e-11)[0]
    return disc(d / 2) - disc(bore / 2)


def sections():
    for d, bore, cross in [(16, 0, 0), (16, 4, 0), (18, 3, 3), (24, 6, 5), (12, 4, 5)]:
        elastic = left(lambda x, y: x * x + y * y, d, bore, cross) / (d / 2)
        plastic = left(math.hypot, d, bore, cross)
        road = "quadrature over what is left of the section"
        inputs = dict(D=d, bore=bore) if cross == 0 else dict(D=d, bore=bore, cross=cross)
        add("elastic torsion modulus", elastic, 8, SCIPY, road, **inputs)
        add("plastic torsion modulus", plastic, 8, SCIPY, road, **inputs)
    for outer, inner in [(24, 18), (14.63, 11), (30, 0)]:
        moment = dblquad(lambda r, t: r * r, 0, 2 * math.pi, inner / 2, outer / 2, epsabs=1e-11)[0]
        area = dblquad(lambda r, t: r, 0, 2 * math.pi, inner / 2, outer / 2, epsabs=1e-11)[0]
        add("friction diameter under uniform pressure", 2 * moment / area, 11, SCIPY, "moment of uniform pressure by quadrature",
            outer=outer, inner=inner)
    for moment, outer, inner in [(50000, 30, 18), (8000, 16, 0), (120000, 40, 31)]:
        area = left(lambda x, y: 1.0, outer, inner, 0)
        inertia = left(lambda x, y: y * y, outer, inner, 0)
        force = brentq(lambda f: f / area - moment * (outer / 2) / inertia, 0, 1e6, xtol=1e-9, rtol=1e-13)
        add("preload against a moment", force, 8, SCIPY, "section by quadrature, root of the least pressure", M=moment, outer=outer,
            inner=inner)


def mises(axial, shear):
    c, s = math.cos(0.6), math.sin(0.6)
    turn = np.array([[c, -s, 0], [s, c, 0], [0, 0, 1]]) @ np.array([[1, 0, 0], [0, s, -c], [0, c, s]])
    one, two, three = np.linalg.eigvalsh(turn @ np.array([[0, 0, shear], [0, 0, 0], [shear, 0, axial]]) @ turn.T)
    return math.sqrt(((one - two) ** 2 + (two - three) ** 2 + (three - one) ** 2) / 2)


def stresses():
    for preload, torque, area, modulus in [(30000, 35000, 84.3, 300.0), (0, 20000, 36.6, 83.0), (12000, 0, 20.1, 34.0)]:
        add("equivalent stress while tightening", mises(preload / area, torque / modulus), 12, NUMPY,
            "eigenvalues of the stress tensor", F=preload, M=torque, A=area, W=modulus)
    for axial, torsion, part in [(400, 120, 0.5), (250, 200, 0.3), (600, 90, 1), (350, 150, 0)]:
        add("equivalent stress after relaxation", mises(axial, part * torsion), 12, NUMPY, "eigenvalues of the stress tensor",
            axial=axial, torsion=torsion, k=part)
    for stress, area, modulus, lever, prevailing, added, part in [
            (576, 84.3, 300.0, 1.15, 0, 3000, 0.5), (846, 192, 1000.0, 1.7, 12000, 8000, 0.5), (300, 36.6, 83.0, 0.8, 4000, 0, 1)]:
        force = brentq(lambda f: mises((f + added) / area, part * (lever * f + prevailing) / modulus) - stress, 0, 1e6, xtol=1e-9,
                       rtol=1e-14)
        add("preload in service", force, 10, SCIPY, "eigenvalues of the stress tensor, root of the preload", sigma=stress, A=area,
            W=modulus, lever=lever, MP=prevailing, FX=added, k=part)
    for torque, d, bore in [(35000, 16, 0), (60000, 18, 3)]:
        per = dblquad(lambda r, t: r / (d / 2) * r * r, 0, 2 * math.pi, bore / 2, d / 2, epsabs=1e-11)[0]
        add("torsion stress", torque / per, 10, SCIPY, "torque of a linear shear stress by quadrature", M=torque, D=d, bore=bore)


# torques of charts


def wedge(preload, mu, d2, lead):
    """Torque in the thread: normal and friction force on the flank of a 60 degree thread carry preload and turning force."""
    slope = math.atan(lead / (math.pi * d2))
    flank = math.radians(30)
    # The flank presses with N; friction mu N runs down the slope; its side is steeper by the flank angle.
    a = np.array([[math.cos(flank) * math.cos(slope) - mu * math.sin(slope), 0.0],
                  [math.cos(flank) * math.sin(slope) + mu * math.cos(slope), -1.0]])
    normal, turning = np.linalg.solve(a, np.array([preload, 0.0]))
    return turning * d2 / 2


def charts():
    road = "wedge on the slope as a linear system, eigenvalues of the stress tensor, roots by brentq"
    for thread, d, pitch, unified, bore, outer, inner, torque, yield_stress in [
            ("M18x1.5", 18.0, 1.5, False, 3.0, 24.8, 19.0, 75000, 640.0), ("M18x1.5", 18.0, 1.5, False, 6.0, 24.8, 19.0, 110000, 640.0),
            ("M12x1.25", 12.0, 1.25, False, 0.0, 16.6, 13.0, 22000, 640.0), ("M24x1.5", 24.0, 1.5, False, 4.0, 33.6, 25.0, 245000, 900.0),
            ("5/8-18 UNF", 15.875, 25.4 / 18, True, 3.175, 22.3, 16.7, 36720, 640.0),
            ("5/8-18 UNF", 15.875, 25.4 / 18, True, 3.175, 22.3, 16.7, 440640, 640.0)]:
        height = math.sqrt(3) / 2 * pitch
        # Metric diameters to 0.001 mm, as ISO 724 prints them.
        d2 = d - 0.75 * height if unified else round(d - 0.75 * height, 3)
        stress_diameter = d - 0.9743 * pitch if unified else (d2 + round(d - 17 / 12 * height, 3)) / 2
        area = math.pi / 4 * (stress_diameter**2 - bore**2)
        modulus = dblquad(lambda r, t: r * r, 0, 2 * math.pi, bore / 2, stress_diameter / 2, epsabs=1e-11)[0]

        def total(preload, mu):
            return wedge(preload, mu, d2, pitch) + mu * preload * (outer + inner) / 4

        def use(mu):
            preload = brentq(lambda f: total(f, mu) - torque, 0, 1e7, xtol=1e-9, rtol=1e-14)
            return mises(preload / area, wedge(preload, mu, d2, pitch) / modulus) / yield_stress

        inputs = dict(thread=thread, bore=bore, outer=outer, inner=inner, torque=torque, Re=yield_stress)
        usual = 0.75 * yield_stress * area
        add("use of the yield stress by a chart torque, oiled", use(0.08), 5, SCIPY, road, **inputs)
        add("use of the yield stress by a chart torque, as delivered", use(0.24), 5, SCIPY, road, **inputs)
        add("preload at which charts aim", usual, 5, SCIPY, "75 % of the yield stress on the area without the bore", **inputs)
        if total(usual, 0) < torque:
            mu = brentq(lambda m: total(usual, m) - torque, 0, 1.5, xtol=1e-13, rtol=1e-14)
            add("friction that a chart torque implies", mu, 5, SCIPY, road, **inputs)


# joints


def ring_resilience(length, diameter_at, hole, modulus, points=None):
    return quad(lambda x: 1 / (modulus * math.pi / 4 * (diameter_at(x) ** 2 - hole ** 2)), 0, length, points=points, epsabs=1e-18,
                epsrel=1e-12, limit=200)[0]


def joints():
    for length, face, hole, part, modulus, tapped in [(30, 24, 18, 200, 206000, "no"), (30, 24, 18, 32, 206000, "no"),
                                                      (25, 14.6, 11, 18, 70000, "yes"), (40, 14.6, 11, 100, 110000, "yes"),
                                                      (20, 24, 18, 22, 206000, "no")]:
        w = 2 if tapped == "yes" else 1
        beta, y = length / face, part / face
        tangent = 0.348 + 0.013 * math.log(beta) + 0.193 * math.log(y) if w == 2 else (
            0.362 + 0.032 * math.log(beta / 2) + 0.153 * math.log(y))
        # Through: a cone from either end to the middle. Tapped: one cone over the whole length.
        reach = length if w == 2 else length / 2
        if part <= face:
            half = ring_resilience(reach, lambda x: part, hole, modulus)
        else:
            edge = (part - face) / (2 * tangent)
            half = ring_resilience(reach, lambda x: min(part, face + 2 * tangent * x), hole, modulus,
                                   [edge] if 0 < edge < reach else None)
        add("resilience of the parts", half * (1 if w == 2 else 2), 10, SCIPY,
            "rings of cone and sleeve integrated over the length; the angle of the cone is recalled", l=length, dW=face, dh=hole,
            DA=part, E=modulus, tapped=tapped)
    for d, grip, modulus in [(16, 40, 206000), (10, 12, 70000), (24, 100, 110000)]:
        half = ring_resilience(grip / 2, lambda x: 1.5 * d + 2 * 0.5774 * x, d, modulus)
        add("stiffness of two frusta", 1 / (2 * half), 9, SCIPY, "rings of the frusta integrated over the grip", d=d, l=grip, E=modulus)
    for length, modulus, d, bore in [(40, 206000, 16, 0), (25, 110000, 20, 6)]:
        add("resilience of a piece", ring_resilience(length, lambda x: d, bore, modulus), 10, SCIPY, "integrated over the length",
            l=length, E=modulus, d=d, bore=bore)
    for settle, stud, parts in [(0.011, 2.5e-6, 0.9e-6), (0.006, 1.1e-6, 3.0e-7)]:
        # Unknown change of force and of the length of the stud; parts must fill the length less what settled.
        change, _ = np.linalg.solve([[stud, -1.0], [parts, 1.0]], [0.0, -settle])
        add("preload lost by embedding", -change, 12, NUMPY, "two springs, linear system of force and length", fZ=settle, stud=stud,
            parts=parts)
    for length, a1, t1, a2, t2, stud, parts in [(40, 11.5, 60, 23, 60, 2.5e-6, 0.9e-6), (25, 16.5, 80, 11.5, 40, 1.5e-6, 0.5e-6)]:
        change, _ = np.linalg.solve([[stud, -1.0], [parts, 1.0]], [-a1 * 1e-6 * t1 * length, a2 * 1e-6 * t2 * length])
        add("change of the preload by temperature", change, 12, NUMPY, "two springs, linear system of force and length", l=length,
            alpha_s=a1, rise_s=t1, alpha_p=a2, rise_p=t2, stud=stud, parts=parts)


# threads


def tooth(pitch_diameter, cylinder, pitch, external):
    """Axial width, at a cylinder, of the tooth of a 60 degree thread whose tooth and gap are equal at the pitch diameter."""
    def flank(z):  # radius of the flank that rises from the middle of the gap; the thread runs along z
        rise = (z - pitch / 4) / math.tan(math.pi / 6)
        return pitch_diameter / 2 + (rise if external else -rise)
    cut = brentq(lambda z: flank(z) - cylinder / 2, -2 * pitch, 2 * pitch, xtol=1e-15)
    return pitch - 2 * cut


def shear_area(pitch_diameter, cylinder, pitch, length, external):
    turns = length / pitch
    width = tooth(pitch_diameter, cylinder, pitch, external)
    return quad(lambda angle: cylinder / 2 * width, 0, 2 * math.pi * turns)[0]


def threads():
    for d2, lead in [(16.701, 1.5), (9.026, 1.5), (46, 24), (0.838, 0.25)]:
        step = mp.mpf(1) / 10**12
        curve = lambda t: (mp.mpf(d2) / 2 * mp.cos(t), mp.mpf(d2) / 2 * mp.sin(t), mp.mpf(lead) * t / (2 * mp.pi))
        one, two = curve(1 - step), curve(1 + step)
        dx, dy, dz = (q - p for p, q in zip(one, two))
        add("helix angle", float(mp.atan2(dz, mp.sqrt(dx * dx + dy * dy))), 13, MPMATH, "chord of the curve in space", d2=d2, lead=lead)
    for d2, lead, mg, face, mk in [(16.701, 1.5, 0.12, 21, 0.14), (9.026, 1.5, 0.08, 12.8, 0.1), (4.48, 0.8, 0.3, 6.2, 0.25)]:
        def lever(t):
            slope, rub = t * mp.mpf(lead) / (mp.pi * d2), mp.atan(t * mp.mpf(mg) / mp.cos(mp.pi / 6))
            return mp.mpf(d2) / 2 * mp.tan(mp.atan(slope) + rub) + t * mp.mpf(face) / 2 * mk
        add("linear lever", float(mp.diff(lever, 0)), 13, MPMATH, "exact lever, first derivative with helix and friction", d2=d2,
            lead=lead, mu_G=mg, D_Km=face, mu_K=mk)
    for k, d2, p, m, at in [(5.153, 5.212, 1.0, 4.6, 20.1), (8.676, 8.862, 1.5, 8.0, 58.0), (15.676, 16.503, 1.5, 15, 216.0)]:
        add("shear area of the external thread", shear_area(d2, k, p, m, True), 11, SCIPY, "shear cylinder cut with the flanks", K=k,
            d2=d2, P=p, m=m)
        length = brentq(lambda x: shear_area(d2, k, p, x, True) - 2 * at, 0.01, 500, xtol=1e-13, rtol=1e-14)
        add("engagement for full strength", length, 10, SCIPY, "root of the shear area", At=at, K=k, d2=d2, P=p)
    for major, d2, p, m in [(5.794, 5.5, 1.0, 4.6), (9.732, 9.206, 1.5, 8.0), (17.732, 17.216, 1.5, 15)]:
        add("shear area of the internal thread", shear_area(d2, major, p, m, False), 11, SCIPY, "shear cylinder cut with the flanks",
            d=major, D2=d2, P=p, m=m)
    for k, d2, major, d2i, p, m, nut, stud in [(5.153, 5.212, 5.794, 5.5, 1.0, 4.6, 250, 480), (8.676, 8.862, 9.732, 9.206, 1.5, 8, 400, 300)]:
        ratio = nut * shear_area(d2i, major, p, m, False) / (stud * shear_area(d2, k, p, m, True))
        add("strength ratio", ratio, 10, SCIPY, "shear cylinders cut with the flanks", K=k, d2=d2, d=major, D2=d2i, P=p, m=m, tau_nut=nut,
            tau_stud=stud)


# sampled preloads


def distribution(normal, count):
    """Nodes and weights of a quantity from -1 to 1: uniform, or normal with 3 standard deviations to its ends, cut there."""
    x, w = np.polynomial.legendre.leggauss(count)
    if normal:
        w = w * np.exp(-0.5 * (3 * x) ** 2)
    return x, w / np.sum(w)


def sampled():
    for normal, torque, part, d2, lead, g1, g2, k1, k2, face, prevailing in [
            (False, 60000, 0.04, 16.701, 1.5, 0.1, 0.16, 0.1, 0.16, 21, 0), (True, 60000, 0.06, 16.701, 1.5, 0.08, 0.16, 0.1, 0.2, 21, 8000),
            (True, 25000, 0.2, 9.026, 1.5, 0.12, 0.18, 0.08, 0.12, 12.8, 0)]:
        x, w = distribution(normal, 60)
        t, g, k = np.meshgrid(x, x, x, indexing="ij")
        weight = w[:, None, None] * w[None, :, None] * w[None, None, :]
        angle = math.atan2(lead, math.pi * d2)
        def preload(t, g, k):
            mu_g, mu_k = (g1 + g2) / 2 + (g2 - g1) / 2 * g, (k1 + k2) / 2 + (k2 - k1) / 2 * k
            return (torque * (1 + part * t) - prevailing) / (
                d2 / 2 * np.tan(angle + np.arctan(mu_g / math.cos(math.pi / 6))) + face / 2 * mu_k)
        force = preload(t, g, k)
        mean = np.sum(weight * force)
        spread = math.sqrt(np.sum(weight * (force - mean) ** 2))
        fourth = np.sum(weight * (force - mean) ** 4) / spread ** 4
        # Probability below the mean less one standard deviation: the torque at the limit, then its distribution function.
        limit = mean - spread
        mu = preload(0, g[0], k[0])
        at = (limit / mu * (torque - prevailing) + prevailing - torque) / (torque * part)
        at = np.clip(at, -1, 1)
        if normal:
            cut = scipy.special.ndtr(3) - scipy.special.ndtr(-3)
            below = (scipy.special.ndtr(3 * at) - scipy.special.ndtr(-3)) / cut
        else:
            below = (at + 1) / 2
        share = np.sum(w[:, None] * w[None, :] * below)
        n = 1 << 18
        inputs = dict(shape="normal" if normal else "uniform", torque=torque, deviation=part, d2=d2, lead=lead, mu_G_low=g1,
                      mu_G_high=g2, mu_K_low=k1, mu_K_high=k2, D_Km=face, MP=prevailing)
        for quantity, value, error in (("mean", mean, spread / math.sqrt(n)),
                                       ("standard deviation", spread, spread * math.sqrt((fourth - 1) / (4 * n))),
                                       ("share below %.1f N" % round(limit, 1), share, math.sqrt(share * (1 - share) / n))):
            if quantity.startswith("share"):
                inputs = dict(inputs, limit="%.1f" % round(limit, 1))
            SAMPLED.append([quantity.split(" below")[0], listed(inputs), n, "%.6g" % value, "%.3g" % (4 * error), SCIPY,
                            "Gauss-Legendre quadrature over three distributions", "reference computation", ""])


# recalled formulas, a second time


def recalled():
    f = mp.mpf
    vdi = "VDI 2230-1:2015"
    for d, d3, bore, es, em, tapped in [("16", "13.546", "0", "206000", "206000", "no"), ("18", "16.160", "3", "206000", "70000", "yes")]:
        ring = lambda a: mp.pi / 4 * (f(a) ** 2 - f(bore) ** 2)
        share = f("0.33") if tapped == "yes" else f("0.4")
        recall("resilience of the engaged thread", (f(d) / 2 / (f(es) * ring(d3)) + share * f(d) / (f(em) * ring(d))), vdi,
               "resilience of the engaged thread", d=d, d3=d3, bore=bore, ES=es, EM=em, tapped=tapped)
    for length, face, part, tapped in [("30", "24", "200", "no"), ("25", "14.6", "18", "yes"), ("60", "24", "40", "no"), ("40", "14.6", "100", "yes")]:
        beta, y = f(length) / f(face), f(part) / f(face)
        value = (f("0.348") + f("0.013") * mp.log(beta) + f("0.193") * mp.log(y) if tapped == "yes"
                 else f("0.362") + f("0.032") * mp.log(beta / 2) + f("0.153") * mp.log(y))
        recall("tangent of the cone", value, vdi, "angle of the substitutional cone", l=length, dW=face, DA=part, tapped=tapped)
    for length, d in [("40", "16"), ("12", "10"), ("100", "24")]:
        recall("embedding by length", f("3.29") * (f(length) / f(d)) ** f("0.34") / 1000, "VDI 2230:1986", "embedding", l=length, d=d)
    table = {("no", "6.3"): (3, 2.5, 1.5), ("no", "16"): (3, 3, 2), ("no", "63"): (3, 4, 3), ("yes", "6.3"): (3, 3, 2),
             ("yes", "16"): (3, 4.5, 2.5), ("yes", "63"): (3, 6.5, 3.5)}
    for (shear, rz), (thread, face, between) in table.items():
        for faces, inner in ((2, 1), (1, 3)):
            recall("embedding of a joint in um", f(thread) + faces * f(face) + inner * f(between), vdi, "Table 5", Rz=rz, shear=shear,
                   faces=faces, interfaces=inner)
    for ratio in ("1.4", "1.5", "1.7", "1.85", "1.9", "2.5"):
        c1 = f("3.8") * f(ratio) - f(ratio) ** 2 - f("2.61") if f(ratio) < f("1.9") else f(1)
        recall("dilation of the nut", c1, "ISO/TR 16224:2012", "nut dilation", ratio=ratio)
    for r in ("0.5", "1.0", "1.2", "1.7", "2.1"):
        r_ = f(r)
        c2 = f("0.897") if r_ <= 1 else f("5.594") - f("13.682") * r_ + f("14.107") * r_**2 - f("6.057") * r_**3 + f("0.9353") * r_**4
        recall("bending of the external thread", c2, "ISO/TR 16224:2012", "thread bending, bolt", RS=r)
    for r in ("0.45", "0.6", "0.8", "0.95", "1.3"):
        r_ = f(r)
        c3 = f("0.897") if r_ >= 1 else f("0.728") + f("1.769") * r_ - f("2.896") * r_**2 + f("1.296") * r_**3
        recall("bending of the internal thread", c3, "ISO/TR 16224:2012", "thread bending, nut", RS=r)
    for rm, ratio in [("800", "0.6"), ("1040", "0.58")]:
        recall("shear strength", f(rm) * f(ratio), "ISO/TR 16224:2012", "shear strength ratio", Rm=rm, ratio=ratio)
    for d, n in [("0.25", "20"), ("0.5", "13"), ("1", "8"), ("0.19", "32")]:
        # The recalled constant has nine digits.
        recall("rounded minor diameter", f(d) - f("1.19078493") / f(n), "ASME B1.1-2003", "UNR thread form", digits=8, D=d, n=n)


def write(path, header, rows):
    with open(path, "w", newline="", encoding="utf-8") as file:
        out = csv.writer(file, lineterminator="\n")
        out.writerow(header.split(","))
        out.writerows(rows)


if __name__ == "__main__":
    for part in (sections, stresses, charts, joints, threads, sampled, recalled):
        part()
    header = "quantity,arguments,value,source,locator,provenance,disclosed"
    write(sys.argv[1] + "/reference-values.csv", header, REFERENCE)
    write(sys.argv[1] + "/sampled-preloads.csv", "quantity,arguments,samples,value,tolerance,source,locator,provenance,disclosed", SAMPLED)
    write(sys.argv[1] + "/recalled-formulas.csv", header, RECALLED)
    print(len(REFERENCE), "reference values,", len(SAMPLED), "of samples,", len(RECALLED), "recalled;", SCIPY, NUMPY, MPMATH)

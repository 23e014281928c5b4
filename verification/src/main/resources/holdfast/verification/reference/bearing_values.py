"""Values for the checks of load ratings and rating life, apart from the code under test.

Usage: python3 bearing_values.py FILE      (needs mpmath, NumPy, SciPy, and chemicals for the viscosity index)

Where it can, a value comes by another road than that of the code: a quadrature of the defining integral, the root of the
defining equation, the weakest link of several rings, a library's distribution. Where only the printed formula exists, it was
read afresh in its document and coded a second time; such rows say so and guard against slips of coding only.
Units: mm, N, MPa, rad unless a name says degrees, rpm, million revolutions, mm2/s.
"""

import sys

import chemicals
import mpmath as mp
import numpy as np
from chemicals.viscosity import viscosity_index
from scipy import integrate, optimize, stats

from case_values import MPMATH, ROOT, SCIPY, Cases, circumference, hertz, hertz_line, text

c = Cases()
ISO281, ISO76 = "ISO 281:2007", "ISO 76:2006"
FAMILIES = ("RADIAL_BALL", "RADIAL_ROLLER", "THRUST_BALL", "THRUST_ROLLER")


def rad(degrees):
    return mp.mpf(degrees) * mp.pi / 180


def duty():
    for life, diameter in ((1.0, 35.0), (12.5, 90.0), (0.002, 16.0)):
        c.add("kilometres", text(L=life, D=diameter), life * circumference(diameter), "km", MPMATH,
              "length of the circle by quadrature, times the revolutions")
    for z, gamma in ((9, 0.2), (14, 0.125), (22, 0.1), (30, 0.05)):
        c.add("critical half swing", text(z=z, gamma=gamma), swing(z, gamma), "rad", SCIPY,
              "half swing at which the tracks of neighbours on the outer raceway meet, from the speeds of the contacts",
              tolerance=1e-10, reason=ROOT)
    for shares, lives in (((0.2, 0.3, 0.5), (900.0, 4000.0, 12000.0)), ((3.0, 1.0), (55.0, 1e6)), ((1.0,), (777.0,))):
        c.add("damage life", text(shares=shares, lives=lives), float(stats.hmean(lives, weights=shares)), "h", SCIPY,
              "scipy.stats.hmean: weighted harmonic mean")
    for p, low, high in (("3", 0.0, 1000.0), ("3", 400.0, 1000.0), ("10/3", 250.0, 2100.0), ("10/3", 0.0, 5000.0)):
        e = mp.mpf(3) if p == "3" else mp.mpf(10) / 3
        mean = mp.quad(lambda t: (low + (high - low) * t) ** e, mp.linspace(0, 1, 5)) ** (1 / e)
        c.add("linear load", text(family="RADIAL_BALL" if p == "3" else "RADIAL_ROLLER", least=low, greatest=high), mean, "N",
              MPMATH, "mean of the power of the load over the revolutions, by quadrature")
    for low, high in ((0, 900), (400, 1000)):
        c.again("linear load, rule", text(least=low, greatest=high), mp.mpf(low + 2 * high) / 3, "N",
                "Rolling bearings catalogue pages A25-A37", "mean load under linearly varying load, (Pmin + 2 Pmax)/3")
    for still, turning in ((1000, 300), (200, 900), (500, 500), (800, 0)):
        large, small = max(still, turning), min(still, turning)
        mean = large + mp.mpf(3) / 10 * small + mp.mpf(2) / 10 * small ** 2 / large
        c.again("stationary and rotating load", text(stationary=still, rotating=turning), mean, "N",
                "Rolling bearings catalogue pages A25-A37", "mean load under stationary and rotating load, F1 + 0.3 F2 + 0.2 F2^2/F1")
    for family, e, half in (("RADIAL_BALL", 3, 30.0), ("RADIAL_ROLLER", 10 / 3, 30.0), ("RADIAL_BALL", 3, 90.0),
                            ("RADIAL_ROLLER", 10 / 3, 12.5)):
        c.add("oscillation load", text(family=family, P=1500.0, half_swing=half), oscillation(e, 1500.0, half), "N", SCIPY,
              "load with the same damage, rolled angle of a cycle by quadrature", tolerance=1e-10, reason=ROOT)


def swing(z, gamma):
    """Sizes for a pitch diameter of 2: an element rolls between circles of radius 1 - gamma and 1 + gamma."""
    def covered(half):
        # The inner ring turns by 2 half from end to end; the element's centre has half the speed of the inner contact.
        speed = 0.5 * (1 - gamma) / 1.0
        travel, _ = integrate.quad(lambda t: speed, -half, half)
        return travel - 2 * np.pi / z
    return optimize.brentq(covered, 1e-6, 20, xtol=1e-15, rtol=1e-14)


def oscillation(e, load, half):
    amplitude = np.radians(half)
    path, _ = integrate.quad(lambda t: abs(amplitude * np.cos(t)), 0, 2 * np.pi, points=[np.pi / 2, 3 * np.pi / 2])
    turns = path / (2 * np.pi)
    # Damage of a cycle under the load equals that of a revolution under the wanted load.
    return optimize.brentq(lambda q: q ** e - turns * load ** e, 1e-3 * load, 10 * load, xtol=1e-12, rtol=1e-15)


def weakest_link(loads_at_one, ratings, exponent):
    """Load at which rows that share it, with life (C/P)^p and Weibull slope e, live one million revolutions; p e = exponent."""
    def life(total):
        return sum((total * s / r) ** exponent for s, r in zip(loads_at_one, ratings)) - 1
    return optimize.brentq(life, 1e-6, 1e9, xtol=1e-9, rtol=1e-15)


def dynamic_ratings():
    place = "formula of the basic dynamic rating"
    for i, alpha, z, d, length in ((1, 0, 14, 5.0, 10.0), (2, 15, 20, 12.0, 14.0), (1, 40, 17, 8.0, 9.5)):
        value = mp.mpf("1.1") * mp.mpf("88.4") * (i * mp.mpf(length) * mp.cos(rad(alpha))) ** (mp.mpf(7) / 9) * mp.root(
            mp.mpf(z), 4) ** 3 * mp.mpf(d) ** (mp.mpf(29) / 27)
        c.again("dynamic rating, radial roller", text(bm=1.1, fc=88.4, i=i, alpha=alpha, z=z, dwe=d, lwe=length), value, "N",
                ISO281, "7.1, " + place)
    for alpha, z, d in ((90, 12, 9.525), (60, 20, 7.0), (50, 15, 25.4), (75, 10, 30.0), (90, 10, 40.0)):
        size = mp.mpf(d) ** (mp.mpf(9) / 5) if d <= 25.4 else mp.mpf("3.647") * mp.mpf(d) ** (mp.mpf(7) / 5)
        angle = 1 if alpha == 90 else mp.cos(rad(alpha)) ** (mp.mpf(7) / 10) * mp.tan(rad(alpha))
        c.again("dynamic rating, thrust ball", text(bm=1.3, fc=61.5, alpha=alpha, z=z, dw=d),
                mp.mpf("1.3") * mp.mpf("61.5") * angle * mp.mpf(z) ** (mp.mpf(2) / 3) * size, "N", ISO281, "6.1.1, " + place)
    for alpha, z, d, length in ((90, 18, 6.0, 6.0), (50, 20, 14.0, 20.0), (80, 16, 9.0, 9.0)):
        angle = 1 if alpha == 90 else mp.cos(rad(alpha)) ** (mp.mpf(7) / 9) * mp.tan(rad(alpha))
        value = mp.mpf("1.1") * mp.mpf("105.4") * mp.mpf(length) ** (mp.mpf(7) / 9) * angle * mp.mpf(z) ** (
            mp.mpf(3) / 4) * mp.mpf(d) ** (mp.mpf(29) / 27)
        c.again("dynamic rating, thrust roller", text(bm=1.1, fc=105.4, alpha=alpha, z=z, dwe=d, lwe=length), value, "N",
                ISO281, "8.1, " + place)
    link = "load at which the rows together live one million revolutions: weakest link, slope "
    for z, ca in (((10.0, 14.0), (22000.0, 31000.0)), ((12.0, 12.0, 12.0), (9000.0, 9000.0, 9000.0)), ((8.0, 20.0), (1e4, 6e4))):
        shares = [one / sum(z) for one in z]
        c.add("dynamic rating, thrust ball rows", text(z=z, ca=ca), weakest_link(shares, ca, 3 * 10 / 9), "N", SCIPY,
              link + "10/9, load exponent 3, load shared by the number of balls", tolerance=1e-10, reason=ROOT)
    for z, lwe, ca in (((10.0, 14.0), (6.0, 8.0), (22000.0, 41000.0)), ((12.0, 12.0), (7.0, 7.0), (9000.0, 9000.0))):
        lengths = [a * b for a, b in zip(z, lwe)]
        shares = [one / sum(lengths) for one in lengths]
        c.add("dynamic rating, thrust roller rows", text(z=z, lwe=lwe, ca=ca), weakest_link(shares, ca, 4 * 9 / 8), "N", SCIPY,
              link + "9/8, load exponent 4, load shared by the lengths", tolerance=1e-10, reason=ROOT)
    for family, exponent in (("RADIAL_BALL", 3 * 10 / 9), ("RADIAL_ROLLER", 4 * 9 / 8)):
        for n in (1, 2, 4):
            c.add("tandem", text(family=family, cr=14000.0, n=n), weakest_link([1 / n] * n, [14000.0] * n, exponent), "N", SCIPY,
                  "load at which n equal bearings together live one million revolutions: weakest link", tolerance=1e-10,
                  reason=ROOT)


def static_ratings():
    for i, alpha, z, d, length, dpw in ((1, 0, 14, 5.0, 10.0, 40.0), (2, 15, 20, 12.0, 14.0, 100.0)):
        cosine = mp.cos(rad(alpha))
        per = i * z * mp.mpf(length) * d * cosine
        inputs = text(i=i, alpha=alpha, z=z, dwe=d, lwe=length, dpw=dpw)
        c.again("static rating, radial roller", inputs, 44 * (1 - d * cosine / dpw) * per, "N", ISO76, "6.1, formula of C0r")
        load = line_load_at(4000, d, d * cosine / dpw) * length
        c.add("static rating, radial roller", inputs, load * z * i * cosine / 5, "N", MPMATH,
              "load Z Q cos(alpha)/5 whose hardest roller has 4000 MPa at the inner ring: line contact, "
              "E = 207 000 MPa, recalled",
              kind="RECONSTRUCTION", tolerance=0.5 / 44, reason="half a unit of the last digit of the printed constant 44")
    for alpha, z, d, length, dpw in ((90, 18, 6.0, 6.0, 50.0), (55, 20, 14.0, 20.0, 120.0)):
        gamma = 0 if alpha == 90 else d * mp.cos(rad(alpha)) / dpw
        inputs = text(alpha=alpha, z=z, dwe=d, lwe=length, dpw=dpw)
        c.again("static rating, thrust roller", inputs, 220 * (1 - gamma) * z * length * d * mp.sin(rad(alpha)), "N", ISO76,
                "6.2, formula of C0a")
        c.add("static rating, thrust roller", inputs, line_load_at(4000, d, gamma) * length * z * mp.sin(rad(alpha)), "N", MPMATH,
              "load Z Q sin(alpha) at which every roller has 4000 MPa: line contact, E = 207 000 MPa, recalled",
              kind="RECONSTRUCTION", tolerance=0.5 / 44, reason="half a unit of the last digit of 44, of which 220 is five times")
    for fr, z, alpha in ((2000.0, 14, 0), (5000.0, 9, 25)):
        c.again("greatest element load", text(fr=fr, z=z, alpha=alpha), 5 * mp.mpf(fr) / (z * mp.cos(rad(alpha))), "N", ISO76,
                "basis of the ratings, Qmax = 5 Fr/(Z cos alpha)")
    # X0 and Y0 of Tables 2 and 3 as reprinted: deep groove 0.6 and 0.5; angular contact 20 and 40 degrees; rollers with an angle.
    for kind, rows, alpha, fr, fa, x0, y0 in (
            ("deep groove ball", 1, 0, 1000.0, 2500.0, "0.6", mp.mpf("0.5")),
            ("deep groove ball", 1, 0, 1000.0, 200.0, "0.6", mp.mpf("0.5")),
            ("angular contact ball", 1, 20, 800.0, 3000.0, "0.5", mp.mpf("0.42")),
            ("angular contact ball", 2, 40, 800.0, 3000.0, "1", mp.mpf("0.52")),
            ("self-aligning ball", 2, 12, 900.0, 500.0, "1", mp.mpf("0.44") * mp.cot(rad(12))),
            ("tapered roller", 1, 14, 700.0, 2000.0, "0.5", mp.mpf("0.22") * mp.cot(rad(14)))):
        value = max(mp.mpf(x0) * fr + y0 * fa, mp.mpf(fr))
        c.again("static load", text(type=kind, i=rows, alpha=alpha, fr=fr, fa=fa), value, "N", ISO76,
                "5.1.2 and 6.1.2 with the factors of Tables 2 and 3, P0r = max(X0 Fr + Y0 Fa, Fr)")
    c.again("static load", text(type="thrust ball", i=1, alpha=60, fr=300.0, fa=4000.0),
            mp.mpf("2.3") * 300 * mp.tan(rad(60)) + 4000, "N", ISO76, "5.2.2, P0a = 2.3 Fr tan(alpha) + Fa")
    c.again("static safety", text(C0=17500.0, P0=2100.0), mp.mpf(17500) / 2100, "", ISO76, "7, S0 = C0/P0")
    for kind, running, s0 in (
            ("deep groove ball", "QUIET", "2"), ("deep groove ball", "NORMAL", "1"), ("deep groove ball", "SHOCK", "1.5"),
            ("cylindrical roller", "QUIET", "3"), ("cylindrical roller", "NORMAL", "1.5"), ("cylindrical roller", "SHOCK", "3"),
            ("spherical thrust roller", "NORMAL", "4"), ("drawn cup needle roller", "NORMAL", "3")):
        c.add("least static safety", text(type=kind, running=running), s0, "", ISO76, "Tables 4 and 5, read afresh in a reprint",
              kind="RECOMBINED", provenance="published", tolerance=0.0, reason="a tabulated value")


def line_load_at(stress, d, gamma):
    """Line load in N/mm at which steel rollers of the diameter have the stress at the inner ring."""
    modulus = mp.mpf(207000) / (2 * (1 - mp.mpf("0.09")))
    radius = d * (1 - mp.mpf(gamma)) / 2
    return mp.findroot(lambda w: hertz_line(w, modulus, radius)[1] - stress, (1000, 3000), solver="secant")


def fatigue_limits():
    modulus = mp.mpf(207000) / (2 * (1 - mp.mpf("0.09")))
    for d, gamma, ri, re in ((7.94, 0.2, 0.52, 0.53), (12.7, 0.12, 0.52, 0.52), (25.0, 0.3, 0.53, 0.54)):
        loads = []
        for sign, groove in ((1, ri), (-1, re)):
            # Curvatures of the gap, halved sums: along the groove, across it.
            ball = mp.mpf(2) / d
            along = (ball + sign * ball * mp.mpf(gamma) / (1 - sign * mp.mpf(gamma))) / 2
            across = (ball - 1 / (mp.mpf(groove) * d)) / 2
            loads.append(mp.findroot(lambda q: hertz(q, modulus, along, across)[2] - 1500, (10, 300), solver="secant"))
        c.add("fatigue limit, ball contact", text(dw=d, gamma=gamma, inner=ri, outer=re), min(loads), "N", MPMATH,
              "root of peak pressure = 1500 MPa, contact ellipse from Carlson's integrals")
    for d, length, gamma in ((5.0, 10.0, 0.125), (12.0, 14.0, 0.2)):
        w = mp.findroot(lambda q: hertz_line(q, modulus, mp.mpf(d) * (1 - mp.mpf(gamma)) / 2)[1] - 1500, (100, 300),
                        solver="secant")
        c.add("fatigue limit, roller contact", text(dwe=d, lwe=length, gamma=gamma), w * length, "N", MPMATH,
              "root of peak pressure = 1500 MPa, half width from the conditions of contact by quadrature")
    steep = ("the printed 0.2453 belongs to a load that grows with the power 1.1 of the deflection (0.24530); the power 10/9 of"
             " the other recalled formulas gives 0.24480")
    for family, power, printed, why in (("RADIAL_BALL", "3/2", 0.2288, ""), ("RADIAL_ROLLER", "11/10", 0.2453, ""),
                                        ("RADIAL_ROLLER", "10/9", 0.2453, steep)):
        over, under = map(int, power.split("/"))
        share = mp.quad(lambda t: mp.cos(t) ** (1 + mp.mpf(over) / under), [0, mp.pi / 4, mp.pi / 2]) / mp.pi
        for z, i, alpha, dpw in ((9, 1, 0, 39.0), (14, 2, 15, 160.0)):
            size = 1 if dpw <= 100 else (100 / mp.mpf(dpw)) ** (mp.mpf("0.5") if family.endswith("BALL") else mp.mpf("0.3"))
            c.add("fatigue limit, bearing", text(family=family, qu=100.0, z=z, i=i, alpha=alpha, dpw=dpw, power=power),
                  share * z * 100 * i * mp.cos(rad(alpha)) * size, "N", MPMATH,
                  "sum of the loads of half the circle without clearance, by quadrature in place of the printed factor",
                  kind="RECONSTRUCTION", tolerance=0.00005 / printed,
                  reason="half a unit of the last digit of the printed factor",
                  disclosed=why)
    for family, alpha, dpw, p in (("THRUST_BALL", 90, 60.0, "0.5"), ("THRUST_ROLLER", 55, 240.0, "0.3")):
        phi = 2 * np.pi * np.arange(15) / 15
        a = float(rad(alpha))
        push = 100.0 * np.stack([np.cos(a) * np.cos(phi), np.cos(a) * np.sin(phi), np.full(15, np.sin(a))])
        size = 1 if dpw <= 100 else float((100 / mp.mpf(dpw)) ** mp.mpf(p))
        c.add("fatigue limit, bearing", text(family=family, qu=100.0, z=15, i=1, alpha=alpha, dpw=dpw),
              float(push.sum(axis=1)[2] * size), "N", "NumPy " + np.__version__, "sum of the vectors of the contact forces")
    for family, dpw in (("RADIAL_BALL", 40.0), ("RADIAL_BALL", 160.0), ("THRUST_ROLLER", 99.0), ("RADIAL_ROLLER", 250.0)):
        ball = family.endswith("BALL")
        size = mp.mpf(1) if dpw <= 100 else mp.exp(mp.mpf("0.5" if ball else "0.3") * (mp.log(100) - mp.log(dpw)))
        c.again("fatigue limit, size factor", text(family=family, dpw=dpw), size, "", ISO281, "B.3.2 and B.3.3, above 100 mm")
        c.again("fatigue limit, simplified", text(family=family, c0=17500.0, dpw=dpw),
                size * 17500 / mp.mpf("22" if ball else "8.2"),
                "N", ISO281, "B.3.3, C0/22 and C0/8.2")


def a_iso(family, kappa, argument):
    """Equations (31) to (42), read afresh."""
    kappa, x = min(mp.mpf(kappa), mp.mpf(4)), min(mp.mpf(argument), mp.mpf(5))
    low = kappa < mp.mpf("0.4")
    b = mp.mpf("0.054381") if low else mp.mpf("0.19087") if kappa < 1 else mp.mpf("0.071739")
    if family.startswith("THRUST"):
        x = x / 3 if family.endswith("BALL") else x / mp.mpf("2.5")
    if family.endswith("BALL"):
        a = mp.mpf("2.2649") if low else mp.mpf("1.9987")
        base = 1 - (mp.mpf("2.5671") - a / kappa ** b) ** mp.mpf("0.83") * mp.cbrt(x)
        power = mp.mpf("-9.3")
    else:
        a = mp.mpf("1.3993") if low else mp.mpf("1.2348")
        base = 1 - (mp.mpf("1.5859") - a / kappa ** b) * x ** mp.mpf("0.4")
        power = mp.mpf("-9.185")
    return mp.mpf(50) if base <= 0 else min(mp.mpf(50), base ** power / 10)


def additives(family, kappa, contamination, at_one, ratio):
    real = a_iso(family, kappa, contamination * mp.mpf(ratio))
    if kappa >= 1 or contamination < 0.2:
        return real
    return max(real, min(mp.mpf(3), a_iso(family, 1, at_one * mp.mpf(ratio))))


def at_one(kappa, contamination):
    """eC grows as kappa^0.68 up to 1 (Annex A)."""
    return float(min(1, contamination * max(1, mp.mpf(kappa) ** mp.mpf("-0.68"))))


def annex_a(coefficient, constant, kappa, dpw):
    a = min(mp.mpf(1), mp.mpf(coefficient) * mp.mpf(kappa) ** mp.mpf("0.68") * mp.mpf(dpw) ** mp.mpf("0.55"))
    return max(mp.mpf(0), a * (1 - mp.mpf(constant) / mp.cbrt(dpw)))


def additives_by_cleanliness():
    """Whole road: eC of an equation of Annex A at the real kappa and at 1, then aISO, as a modified life of C = P = 1 kN."""
    for name, coefficient, constant in (("CIRCULATING_13_10", "0.0864", "0.5663"), ("CIRCULATING_15_12", "0.0432", "0.9987"),
                                        ("BATH_15_12", "0.0288", "1.141")):
        for family in ("RADIAL_BALL", "RADIAL_ROLLER"):
            for kappa, dpw, share in ((0.15, 120.0, 0.9), (0.3, 50.0, 0.6), (0.45, 200.0, 0.35), (0.7, 80.0, 1.2), (0.95, 40.0, 0.5)):
                value = additives(family, kappa, annex_a(coefficient, constant, kappa, dpw),
                                  annex_a(coefficient, constant, 1, dpw), share)
                c.again("aISO with additives by cleanliness", text(family=family, cleanliness=name, kappa=kappa, dpw=dpw, ratio=share),
                        value, "", ISO281, "9.3.3.3.4 and Annex A: kappa = 1 for eC and for aISO from eC = 0.2 on, aISO at most 3")


# Table 3: Fa/(Z Dw^2) over the cosine; X above e; Y up to e; Y above e; e. One row takes the deep groove rows at 5 degrees.
LOADS = (0.172, 0.345, 0.689, 1.03, 1.38, 2.07, 3.45, 5.17, 6.89)
HEADS = {5: (0.173, 0.346, 0.692, 1.04, 1.38, 2.08, 3.46, 5.19, 6.92), 10: (0.175, 0.35, 0.7, 1.05, 1.4, 2.1, 3.5, 5.25, 7.0),
         15: (0.178, 0.357, 0.714, 1.07, 1.43, 2.14, 3.57, 5.35, 7.14)}
TWO_ROWS = {
    5: (0.78, (2.78, 2.4, 2.07, 1.87, 1.75, 1.58, 1.39, 1.26, 1.21), (3.74, 3.23, 2.78, 2.52, 2.36, 2.13, 1.87, 1.69, 1.63),
        (0.23, 0.26, 0.3, 0.34, 0.36, 0.4, 0.45, 0.5, 0.52)),
    10: (0.75, (2.18, 1.98, 1.76, 1.63, 1.55, 1.42, 1.27, 1.17, 1.16), (3.06, 2.78, 2.47, 2.29, 2.18, 2.0, 1.79, 1.64, 1.63),
         (0.29, 0.32, 0.36, 0.38, 0.4, 0.44, 0.49, 0.54, 0.54)),
    15: (0.72, (1.65, 1.57, 1.46, 1.38, 1.34, 1.26, 1.14, 1.12, 1.12), (2.39, 2.28, 2.11, 2.0, 1.93, 1.82, 1.66, 1.63, 1.63),
         (0.38, 0.4, 0.43, 0.46, 0.47, 0.5, 0.55, 0.56, 0.56))}
ONE_ROW = {10: (0.46, (1.88, 1.71, 1.52, 1.41, 1.34, 1.23, 1.1, 1.01, 1.0)),
           15: (0.44, (1.47, 1.4, 1.3, 1.23, 1.19, 1.12, 1.02, 1.0, 1.0))}


def angular_contact_loads():
    """From Z and Dw, without C0r: every row carries the whole axial load, so Fa/(Z Dw^2) finds the row of the table."""
    for alpha in (5, 10, 15):
        for z, dw, f0, fr, per_ball in ((12, 9.525, 15.3, 1500.0, 0.5), (16, 7.144, 15.9, 4000.0, 1.2), (10, 15.875, 14.1, 900.0, 2.9),
                                        (14, 11.112, 15.2, 12000.0, 0.3), (11, 12.7, 14.7, 2000.0, 4.6)):
            fa = float(f"{per_ball * z * dw ** 2:.5g}")
            relative = fa / (z * dw ** 2) / float(mp.cos(rad(alpha)))
            for rows in (2, 1):
                if rows == 1 and alpha == 5:
                    continue
                x, low, high, e = TWO_ROWS[alpha]
                limit = np.interp(relative, HEADS[alpha], e)
                if rows == 1:
                    x, high = ONE_ROW[alpha]
                    low = np.zeros(len(high))
                p = x * fr + np.interp(relative, HEADS[alpha], high) * fa if fa > limit * fr else (
                    fr + np.interp(relative, HEADS[alpha], low) * fa)
                c0r = float(f0 * rows * z * dw ** 2 * mp.cos(rad(alpha)))
                c.add("equivalent load, angular contact", text(i=rows, alpha=alpha, f0=f0, c0r=c0r, fr=fr, fa=fa), float(p), "N",
                      "NumPy " + np.__version__, "printed rows of ISO 281:2007, Table 3, found by Fa/(Z Dw^2) of the geometry",
                      tolerance=1e-11, reason="interpolation in a double")


def a1(s):
    return mp.mpf("0.95") * (mp.log(100 / mp.mpf(s)) / mp.log(mp.mpf(10) / 9)) ** (mp.mpf(2) / 3) + mp.mpf("0.05")


def l10(family, cr, p):
    return (mp.mpf(cr) / p) ** (3 if family.endswith("BALL") else mp.mpf(10) / 3)


def modified_lives():
    points = (("RADIAL_BALL", 14000.0, 350.0, 2000.0, 95, 1.4, 0.5), ("RADIAL_ROLLER", 30000.0, 4000.0, 5000.0, 90, 0.7, 0.3),
              ("THRUST_BALL", 40000.0, 1500.0, 6000.0, 99, 2.5, 0.8), ("THRUST_ROLLER", 90000.0, 9000.0, 12000.0, 98, 0.25, 0.4))
    for family, cr, cu, p, s, kappa, ec in points:
        life = a1(s) * a_iso(family, kappa, ec * mp.mpf(cu) / p) * l10(family, cr, p)
        inputs = dict(family=family, C=cr, Cu=cu)
        c.again("modified life", text(**inputs, P=p, S=s, kappa=kappa, eC=ec), life, "Mrev", ISO281,
                "9.1 to 9.3, Lnm = a1 aISO L10")
        for n, dpw in ((300.0, 45.0), (2500.0, 45.0)):
            nu1 = 45000 * mp.mpf(n) ** mp.mpf("-0.83") / mp.sqrt(dpw) if n < 1000 else 4500 / mp.sqrt(mp.mpf(n) * dpw)
            nu = float(kappa * nu1)
            hours = a1(s) * a_iso(family, mp.mpf(nu) / nu1, ec * mp.mpf(cu) / p) * l10(family, cr, p) * 1000000 / (60 * mp.mpf(n))
            for call in ("array of lives in hours", "array of lives in hours, parallel"):
                c.again(call, text(**inputs, P=p, S=s, eC=ec, n=n, dpw=dpw, nu=nu), hours, "h", ISO281,
                        "9.1 to 9.3 with nu1 of 9.3.3.2, the middle one of three entries")
        goal = float(life) / 3
        for rule in ("no", "yes"):
            factor = additives if rule == "yes" else lambda f, k, e, one, r: a_iso(f, k, e * mp.mpf(r))
            load = optimize.brentq(lambda q: float(a1(s) * factor(family, kappa, ec, at_one(kappa, ec), mp.mpf(cu) / q) * l10(family, cr, q)) - goal,
                                   1e-3 * p, 100 * p, xtol=1e-10, rtol=1e-15)
            c.add("allowable load", text(**inputs, S=s, kappa=kappa, eC=ec, additives=rule, atOne=at_one(kappa, ec), L=goal), load, "N", SCIPY,
                  "brentq on the modified life, coded a second time", tolerance=1e-10, reason=ROOT)
        goal = float(life) * 0.8
        need = optimize.brentq(lambda k: float(a1(s) * a_iso(family, k, min(1, ec * k ** 0.68) * mp.mpf(cu) / p)
                                               * l10(family, cr, p)) - goal, 0.1, 4, xtol=1e-14, rtol=1e-14)
        c.add("required kappa", text(**inputs, P=p, S=s, eC=ec, L=goal), need, "", SCIPY,
              "brentq on the modified life, coded a second time, with eC growing as kappa^0.68", tolerance=1e-10, reason=ROOT)
        c.again("aISO with additives", text(family=family, kappa=0.6, eC=ec, atOne=at_one(0.6, ec), ratio=0.9),
                additives(family, 0.6, ec, at_one(0.6, ec), 0.9), "", ISO281, "9.3.3.3.4, at most 3 with kappa = 1 for eC >= 0.2")
    for kappa, ec, ratio in ((0.3, 0.1, 0.5), (0.8, 0.9, 1.5), (1.5, 0.6, 0.4)):
        c.again("aISO with additives", text(family="RADIAL_BALL", kappa=kappa, eC=ec, atOne=at_one(kappa, ec), ratio=ratio),
                additives("RADIAL_BALL", kappa, ec, at_one(kappa, ec), ratio), "", ISO281,
                "9.3.3.3.4, at most 3 with kappa = 1 for eC >= 0.2")
    for film in (0.5, 1.0, 2.2):
        c.again("kappa from film", text(film=film), mp.exp(mp.mpf("1.3") * mp.log(film)), "", ISO281,
                "9.3.3.1, kappa = Lambda^1.3, exponent recalled")


def distributions():
    scale = 0.95 / np.log(100 / 90) ** (1 / 1.5)
    for factor in (3.3, 2.0, 1.0, 0.62, 0.25, 0.09):
        share = stats.weibull_min.sf(factor, 1.5, loc=0.05, scale=scale)
        c.add("reliability of a1", text(a1=factor), 100 * float(share), "%", SCIPY,
              "scipy.stats.weibull_min.sf, slope 1.5, place 0.05, one in ten failed at 1", tolerance=1e-12)
    for t, slope, eta, gamma in ((12.0, 1.5, 30.0, 0.0), (80.0, 10 / 9, 40.0, 5.0), (3.0, 2.102, 81.88, 0.0),
                                 (4.0, 1.5, 9.0, 4.5)):
        c.add("survival", text(t=t, slope=slope, scale=eta, minimum=gamma), float(stats.weibull_min.sf(t, slope, gamma, eta)),
              "", SCIPY, "scipy.stats.weibull_min.sf", tolerance=1e-12)


def viscosities():
    for t1, n1, t2, n2, t in ((40.0, 100.0, 100.0, 11.1, 70.0), (40.0, 32.0, 100.0, 5.4, 20.0), (20.0, 900.0, 80.0, 30.0, 55.0),
                              (100.0, 15.0, 40.0, 150.0, 120.0)):
        def y(nu):
            return np.log10(np.log10(nu + 0.7))
        line = np.linalg.solve([[1, -np.log10(t1 + 273.15)], [1, -np.log10(t2 + 273.15)]], [y(n1), y(n2)])
        nu = optimize.brentq(lambda v: y(v) - line[0] + line[1] * np.log10(t + 273.15), 1.0, 1e5, xtol=1e-13, rtol=1e-15)
        c.add("viscosity at temperature", text(t1=t1, nu1=n1, t2=t2, nu2=n2, t=t), nu, "mm²/s", SCIPY,
              "A and B from two linear equations, viscosity as a root; the relation itself is recalled", tolerance=1e-10,
              reason=ROOT)
    library = "chemicals " + chemicals.__version__
    from chemicals import viscosity
    nodes = list(viscosity.VI_nus)
    fit = ("the quadratics of the standard, by which we compute, fit its table, which the library holds, to 0.1 % or 0.2 of the"
           " index")
    # At nodes of the library's table, which holds the printed reference viscosities; between them it interpolates.
    for at40, at100, why in ((73.3, 8.86, ""), (22.83, 5.05, "index"), (53.47, 7.8, ""), (100.0, 11.2, ""), (320.0, 20.0, ""),
                             (1200.0, 60.0, "both"), (32.0, 6.0, "both")):
        near = min(nodes, key=lambda v: abs(v - at100))
        index = viscosity_index(at40 * 1e-6, near * 1e-6)
        low, high = (float(np.interp(near, viscosity.VI_nus, table)) for table in (viscosity.VI_Ls, viscosity.VI_Hs))
        if at40 >= high:
            slack = 100 * (0.005 if low < 100 else 0.05) * 2 / (low - high)
        else:
            slack = (index - 100 + 1 / 0.00715) * (0.005 if high < 100 else 0.05) / high / np.log10(near)
        reason = "half a unit of the last digit of the reference viscosities that the library holds"
        c.add("viscosity index", text(at40=at40, at100=round(near, 6)), float(index), "", library,
              "chemicals.viscosity_index, table of reference oils", tolerance=float(f"{slack / index:.2g}"), reason=reason,
              disclosed=fit if why else "")
        slope = (viscosity_index(at40 * 1e-6, near * 1.001e-6) - viscosity_index(at40 * 1e-6, near * 0.999e-6)) / (0.002 * near)
        c.add("viscosity at 100", text(at40=at40, index=float(index)), round(near, 6), "mm²/s", library,
              "viscosity whose chemicals.viscosity_index this is", tolerance=float(f"{slack / slope / near:.2g}"), reason=reason,
              disclosed=fit if why == "both" else "")
    # Two oils in each of the sixteen ranges of the quadratics, as the standard states the index: a whole number.
    for at100 in (2.5, 4.0, 4.7, 5.6, 6.6, 7.3, 8.4, 10.0, 13.5, 16.5, 20.0, 25.0, 33.0, 47.0, 62.0, 90.0):
        poor, good = 7800.0, 2300.0
        if at100 < 70:
            poor, good = (float(np.interp(at100, nodes, t)) for t in (viscosity.VI_Ls, viscosity.VI_Hs))
        for oil in (0.4 * poor + 0.6 * good, 0.85 * good):
            at40 = float(f"{oil:.4g}")
            index = viscosity_index(at40 * 1e-6, at100 * 1e-6, rounding=True)
            c.add("viscosity index", text(at40=at40, at100=at100), str(int(index)), "", library,
                  "chemicals.viscosity_index with the rounding of the standard", tolerance=float(f"{0.5 / abs(index):.3g}"),
                  reason="half a unit: the index is stated as a whole number")
    for at40, at100, index in ((73.30, 8.860, "92"), (22.83, 5.05, "156"), (53.47, 7.80, "111")):
        c.add("viscosity index", text(at40=at40, at100=at100), index, "", "ASTM D2270",
              "worked example of the procedure, recalled",
              kind="RECALLED", provenance="memory", tolerance=float(f"{0.5 / float(index):.3g}"),
              reason="half a unit of the last digit")


def profiles():
    stations = (0.02, 0.004, 0.0, 0.001, 0.015)
    for x in (-5.0, -4.1, -1.0, 0.0, 0.3, 2.5, 4.999, 5.0):
        value = float(np.interp(x, np.linspace(-5, 5, len(stations)), stations))
        c.add("given profile", text(x=x, lwe=10.0, stations=stations), value, "mm", "NumPy " + np.__version__, "numpy.interp",
              tolerance=1e-11, reason="position between stations in a double")


duty()
profiles()
dynamic_ratings()
static_ratings()
fatigue_limits()
modified_lives()
additives_by_cleanliness()
angular_contact_loads()
distributions()
viscosities()
c.write(sys.argv[1])

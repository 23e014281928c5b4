#!/usr/bin/env python3
"""Reference values for measured parts, with exact fractions (standard library only).

Usage: python3 accepted_parts.py DIRECTORY
Writes measured-parts.csv, accepted-pairs.csv, measured-fits.csv and accepted-yokes.csv into DIRECTORY. Parts are invented. Nothing here uses the formulas of the
library under test:
- size at 20 degC: the length that, grown by its own expansion, equals the length of scale that the gauge shows;
- verdict: by cases on the signed distance of every reading from both limits;
- pressure of a pair: the four boundary conditions of two elastic rings, u(r) = A r + B / r in plane stress, solved as a
  linear system, at the least and at the greatest interference that the readings and the uncertainty leave;
- lean of a pin: bisection of d cos + L sin = d + clearance; sizes of a pin that suit three bores: scan in steps of 0.01 um.
"""
import csv
import math
import sys
from fractions import Fraction as F

OUT = sys.argv[1]
SOURCE = ["Python 3.11", "exact fractions, reference/accepted_parts.py", "reference computation", ""]


def digits(value, places):
    """A fraction in decimal, rounded half even to places."""
    scaled = round(value * 10**places)
    sign = "-" if scaled < 0 else ""
    text = str(abs(scaled)).rjust(places + 1, "0")
    return sign + text[:-places] + "." + text[-places:]


def size20(shown, gauge_alpha, gauge_t, alpha, t):
    scale = F(shown) * (1 + F(gauge_alpha) / 10**6 * (F(gauge_t) - 20))
    return scale / (1 + F(alpha) / 10**6 * (F(t) - 20))


def verdict(sizes, lower, upper, u):
    distances = [min(s - lower, upper - s) for s in sizes]
    if any(d < -u for d in distances):
        return "not conforming"
    return "conforming" if all(d >= u for d in distances) else "not proved either way"


# name, nominal mm, lower and upper deviation um, readings by station, U um, alpha and T of the gauge, alpha and T of the part
PARTS = [
    ("bore, gauge and lever at 20", "18", "-36", "-25", "17.9672 17.9675;17.9680 17.9677;17.9684 17.9681", "1.5", "11.5", "20", "12.5", "20"),
    ("bore, warm lever", "18", "-36", "-25", "17.9705 17.9709;17.9712 17.9710;17.9719 17.9716", "1.5", "11.5", "22", "12.5", "31"),
    ("stud, cold from the store", "18", "-18", "0", "17.9901 17.9899;17.9904 17.9902;17.9903 17.9905", "1.2", "11.5", "19", "11.5", "8"),
    ("bore that is too large", "18", "-36", "-25", "17.9780 17.9782;17.9781 17.9779;17.9783 17.9780", "1.5", "11.5", "20", "12.5", "20"),
    ("stud at its lower limit", "18", "-18", "0", "17.9822 17.9824;17.9826 17.9825;17.9823 17.9826", "1.2", "11.5", "20", "11.5", "20"),
    ("stud that is too large", "18", "-18", "0", "18.0021 18.0020;18.0022 18.0023;18.0020 18.0022", "1.2", "11.5", "20", "11.5", "20"),
    ("bore in aluminium, warm", "25", "0", "21", "25.0145 25.0150;25.0151 25.0147;25.0162 25.0158", "2", "11.5", "23", "23", "36"),
    ("bore near its upper limit", "25", "0", "21", "25.0190 25.0196;25.0188 25.0192;25.0185 25.0190", "2", "11.5", "20", "11.5", "20"),
    ("bore out of its upper limit", "25", "0", "21", "25.0190 25.0236;25.0188 25.0192;25.0185 25.0190", "2", "11.5", "20", "11.5", "20"),
    ("bell-mouthed bore", "16", "0", "18", "16.0170 16.0168;16.0062 16.0060;16.0058 16.0061", "1", "11.5", "20", "10.5", "20"),
    ("small bore, ceramic gauge", "16", "0", "18", "15.9968 15.9970;15.9971 15.9969;15.9972 15.9974", "1", "0", "35", "10.5", "28"),
    ("large ring", "400", "0", "57", "400.0212 400.0251;400.0230 400.0244;400.0198 400.0263", "5", "10", "24", "11.5", "17"),
    ("5/8 in hole, warm from the reamer", "15.875", "0", "12.7", "15.8788 15.8790;15.8791 15.8789;15.8793 15.8790", "2.54", "11.5", "22", "10.5", "33"),
]
with open(OUT + "/measured-parts.csv", "w", newline="") as file:
    out = csv.writer(file, lineterminator="\n")
    out.writerow(["part", "nominal", "lower", "upper", "readings", "uncertainty", "gauge_expansion", "gauge_temperature", "expansion",
                  "temperature", "least", "greatest", "mean", "out_of_round", "taper", "margin", "verdict",
                  "source", "locator", "provenance", "disclosed"])
    for name, nominal, low, high, readings, u, ga, gt, a, t in PARTS:
        stations = [[size20(r, ga, gt, a, t) for r in s.split()] for s in readings.split(";")]
        sizes = [s for station in stations for s in station]
        lower, upper, guard = F(nominal) + F(low) / 1000, F(nominal) + F(high) / 1000, F(u) / 1000
        means = [sum(s) / len(s) for s in stations]
        margin = min(min(s - lower, upper - s) for s in sizes)
        out.writerow([name, nominal, low, high, readings, u, ga, gt, a, t, digits(min(sizes), 9), digits(max(sizes), 9),
                      digits(sum(sizes) / len(sizes), 9), digits(max(max(s) - min(s) for s in stations) * 1000, 6),
                      digits((max(means) - min(means)) * 1000, 6), digits(margin * 1000, 6), verdict(sizes, lower, upper, guard)]
                     + SOURCE)


# bores and studs of 18 S6/h7 above, paired; fit limits -36 um and -7 um
SEATS = [
    ("bore, gauge and lever at 20", "stud, cold from the store"),
    ("bore, warm lever", "stud, cold from the store"),
    ("bore, warm lever", "stud at its lower limit"),
    ("bore that is too large", "stud, cold from the store"),
    ("bore that is too large", "stud that is too large"),
    ("bore that is too large", "stud at its lower limit"),
]


def part(name):
    _, nominal, low, high, readings, u, ga, gt, a, t = next(p for p in PARTS if p[0] == name)
    sizes = [size20(r, ga, gt, a, t) for s in readings.split(";") for r in s.split()]
    return sizes, verdict(sizes, F(nominal) + F(low) / 1000, F(nominal) + F(high) / 1000, F(u) / 1000), F(u) / 1000


with open(OUT + "/accepted-pairs.csv", "w", newline="") as file:
    out = csv.writer(file, lineterminator="\n")
    out.writerow(["bore", "stud", "fit_verdict", "verdict", "source", "locator", "provenance", "disclosed"])
    for bore, stud in SEATS:
        (holes, of_bore, ub), (shafts, of_stud, us) = part(bore), part(stud)
        clearances = [h - s for h in holes for s in shafts]
        u = F(math.sqrt(ub**2 + us**2))
        of_fit = verdict(clearances, F(-36) / 1000, F(-7) / 1000, u)
        worst = max([of_bore, of_stud, of_fit], key=["conforming", "not proved either way", "not conforming"].index)
        out.writerow([bore, stud, of_fit, worst] + SOURCE)


def solve(matrix, right):
    """Gauss elimination with fractions."""
    rows = [list(map(F, row)) + [F(b)] for row, b in zip(matrix, right)]
    n = len(rows)
    for i in range(n):
        pivot = next(r for r in range(i, n) if rows[r][i] != 0)
        rows[i], rows[pivot] = rows[pivot], rows[i]
        rows[i] = [x / rows[i][i] for x in rows[i]]
        for r in range(n):
            if r != i:
                rows[r] = [x - rows[r][i] * y for x, y in zip(rows[r], rows[i])]
    return [row[n] for row in rows]


def pressure(u, d, hole, outside, ei, ni, eo, no):
    """Pressure of two rings of stated diametral interference; 0 without interference."""
    if u <= 0:
        return F(0)
    b, a, c = F(d) / 2, F(hole) / 2, F(outside) / 2
    ei, ni, eo, no = F(ei), F(ni), F(eo), F(no)

    def radial(e, n, r):
        return [e / (1 - n), -e / (1 + n) / r**2]

    zero = [F(0), F(0)]
    # A solid stud has no term B / r.
    free_inside = [F(0), F(1)] if a == 0 else radial(ei, ni, a)
    si, so = radial(ei, ni, b), radial(eo, no, b)
    a1, b1, a2, b2 = solve(
        [free_inside + zero, zero + radial(eo, no, c), [si[0], si[1], -so[0], -so[1]], [-b, -1 / b, b, 1 / b]],
        [0, 0, 0, F(u) / 2])
    return -(so[0] * a2 + so[1] * b2)


# name, hole readings mm, U um, shaft readings mm, U um, nominal, hole of the stud, outside of the hub, E and nu inside, outside
PAIRS = [
    ("stud in ductile iron", "17.9683 17.9690 17.9695", "1.5", "17.9920 17.9924 17.9930", "1.5", "18", "3", "50", "206000", "0.3", "174000", "0.275"),
    ("transition pair", "16.0020 16.0050 16.0060", "1", "16.0020 16.0030 16.0040", "1", "16", "3", "40", "210000", "0.3", "110000", "0.26"),
    ("slip pair", "16.0100 16.0120 16.0110", "2", "15.9920 15.9930 15.9925", "1.5", "16", "0", "40", "210000", "0.3", "70000", "0.33"),
    ("doubtful pair", "16.0010 16.0010", "2", "16.0000 16.0000", "2", "16", "4", "36", "210000", "0.3", "210000", "0.3"),
    ("trade question, 0.6251 in hole and 0.6254 in stud", "15.87754", "2.54", "15.88516", "2.54", "15.875", "0", "31.75", "206000", "0.3", "206000", "0.3"),
]
with open(OUT + "/measured-fits.csv", "w", newline="") as file:
    out = csv.writer(file, lineterminator="\n")
    out.writerow(["pair", "hole", "hole_uncertainty", "shaft", "shaft_uncertainty", "nominal", "stud_hole", "outside", "stud_modulus",
                  "stud_poisson", "hub_modulus", "hub_poisson", "least", "greatest", "mean", "uncertainty", "kind", "pressure_least",
                  "pressure_greatest", "source", "locator", "provenance", "disclosed"])
    for row in PAIRS:
        hole, shaft = [F(x) for x in row[1].split()], [F(x) for x in row[3].split()]
        least, greatest = min(hole) - max(shaft), max(hole) - min(shaft)
        mean = sum(hole) / len(hole) - sum(shaft) / len(shaft)
        u = F(math.sqrt(F(row[2]) ** 2 + F(row[4]) ** 2)) / 1000
        kind = "no doubt: clearance fit" if least - u >= 0 else "no doubt: interference fit" if greatest + u <= 0 else "in doubt"
        rings = row[5:]
        out.writerow(list(row) + [digits(least * 1000, 6), digits(greatest * 1000, 6), digits(mean * 1000, 6), digits(u * 1000, 6), kind,
                                  digits(pressure(-(greatest + u), *rings), 6), digits(pressure(-(least - u), *rings), 6)] + SOURCE)


# The bundled yoke job: pin 20 h6 (bore 4 mm, E 210 GPa, 0.3) in two ears 20 N7 (outside 46 mm, 12 mm thick, E 210 GPa, 0.3),
# 26 mm apart, roller bore 0/-10 um, Rz 2 um and 4 um of which 40 % is smoothed, friction up to 0.2. All at 20 degC. The inner
# ring (25 mm long, raceway 28 - 3 mm, E 203.4 GPa, 0.3, Rz not known) holds the pin as well where it interferes. The machine
# works at 45 degC, where ears and pin have both grown by 11.5 um/(m K): the lean is the greater of both.
EARS, PIN, RING = (F(-28), F(-7)), (F(-13), F(0)), (F(-10), F(0))
# name, readings of first ear, second ear, pin and roller bore, U um of every gauge
YOKES = [
    ("good parts", "19.9810 19.9812 19.9815 19.9813 19.9811 19.9814", "19.9841 19.9843 19.9844 19.9842 19.9840 19.9843",
     "19.9932 19.9930 19.9934 19.9933 19.9931 19.9933", "19.9948 19.9950 19.9951 19.9949 19.9950 19.9952", "1.2"),
    ("second ear too large", "19.9810 19.9812 19.9815 19.9813 19.9811 19.9814", "19.9972 19.9975 19.9971 19.9974 19.9973 19.9976",
     "19.9932 19.9930 19.9934 19.9933 19.9931 19.9933", "19.9948 19.9950 19.9951 19.9949 19.9950 19.9952", "1.2"),
    ("one loose ear, one tight", "19.9751 19.9748 19.9750 19.9752 19.9749 19.9751", "19.9911 19.9914 19.9912 19.9913 19.9910 19.9912",
     "19.9885 19.9887 19.9884 19.9886 19.9886 19.9885", "19.9920 19.9922 19.9921 19.9919 19.9922 19.9920", "1"),
    ("pin near its upper limit", "19.9810 19.9812 19.9815 19.9813 19.9811 19.9814", "19.9821 19.9823 19.9824 19.9822 19.9820 19.9823",
     "19.9992 19.9990 19.9994 19.9993 19.9991 19.9993", "19.9948 19.9950 19.9951 19.9949 19.9950 19.9952", "1.5"),
    ("no pin suits both ears", "19.9610 19.9612 19.9615 19.9613 19.9611 19.9614", "20.0111 20.0113 20.0114 20.0112 20.0110 20.0113",
     "19.9932 19.9930 19.9934 19.9933 19.9931 19.9933", "19.9948 19.9950 19.9951 19.9949 19.9950 19.9952", "1.2"),
]
ORDER = ["conforming", "not proved either way", "not conforming"]


def lean(clearance):
    """mrad; the corners of a pin of 20 mm touch over 50 mm."""
    if clearance <= 0:
        return 0.0
    low, high = 0.0, 0.1
    for _ in range(200):
        middle = (low + high) / 2
        low, high = (middle, high) if 20 * math.cos(middle) - 20 + 50 * math.sin(middle) < float(clearance) else (low, middle)
    return low * 1000


def fits(holes, shafts, band, u):
    """Verdict on a pair whose drawing permits clearances of the band, in um."""
    return verdict([h - s for h in holes for s in shafts], band[0] / 1000, band[1] / 1000, u)


with open(OUT + "/accepted-yokes.csv", "w", newline="") as file:
    out = csv.writer(file, lineterminator="\n")
    out.writerow(["parts", "first_ear", "second_ear", "pin", "roller_bore", "uncertainty", "fits", "verdict", "lean", "press_force",
                  "pin_least", "pin_greatest", "source", "locator", "provenance", "disclosed"])
    for name, *texts, u in YOKES:
        one, two, pin, ring = [[F(x) for x in text.split()] for text in texts]
        guard = F(u) / 1000
        both = F(math.sqrt(2 * guard**2))
        in_ears = (EARS[0] - PIN[1], EARS[1] - PIN[0])
        on_pin = (RING[0] - PIN[1], RING[1] - PIN[0])
        pairs = [(one, in_ears), (two, in_ears), (ring, on_pin)]
        of_fits = max((fits(holes, pin, band, both) for holes, band in pairs), key=ORDER.index)
        of_parts = [verdict(sizes, 20 + band[0] / 1000, 20 + band[1] / 1000, guard)
                    for sizes, band in ((one, EARS), (two, EARS), (pin, PIN), (ring, RING))]
        worst = max(of_parts + [of_fits], key=ORDER.index)
        force = sum(
            pressure(max(max(pin) - min(holes) + both - F(24, 10000), 0), "20", "4", "46", "210000", "0.3", "210000", "0.3")
            * F(math.pi) * 20 * 12 * F(2, 10)
            for holes in (one, two))
        force += (
            pressure(max(max(pin) - min(ring) + both - F(8, 10000), 0), "20", "4", "25", "210000", "0.3", "203400", "0.3")
            * F(math.pi) * 20 * 25 * F(2, 10))
        # A round pin of size s suits if every fit with it would be conforming.
        suits = [F(19900000 + 10 * i, 1000000) for i in range(20000)
                 if all(fits(holes, [F(19900000 + 10 * i, 1000000)], band, both) == "conforming" for holes, band in pairs)]
        play = max(max(one), max(two)) - min(pin)
        play = max(play, play * (1 + F(115, 10**7) * 25)) + both
        out.writerow([name, *texts, u, of_fits, worst, "%.6f" % lean(play), digits(force, 3),
                      digits(min(suits), 5) if suits else "", digits(max(suits), 5) if suits else ""] + SOURCE)

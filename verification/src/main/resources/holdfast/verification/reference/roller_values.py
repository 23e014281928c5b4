"""Values for the checks of contact, track rollers, grease and spares, apart from the code under test.

Usage: python3 roller_values.py CONTACT_FILE INSTALLATION_FILE      (needs mpmath, NumPy and SciPy)

As in bearing_values.py: another road where there is one; otherwise the printed formula, read afresh and coded a second time.
"""

import sys

import mpmath as mp
import numpy as np
from scipy import integrate, optimize, special, stats

from case_values import MPMATH, NUMPY, ROOT, SCIPY, Cases, circumference, hertz, hertz_line, text

STEEL = 113187.0  # combined modulus of two bodies of 206 000 MPa and 0.3, rounded


def contact(c):
    for x, y, z in ((0.0, 2.0, 1.0), (2.0, 3.0, 4.0), (0.3, 0.0, 1.7), (1e-6, 1.0, 250.0), (5.0, 5.0, 5.0)):
        value = mp.quad(lambda u: 3 * u * u / mp.sqrt((u * u * x + 1) * (u * u * y + 1) * (u * u * z + 1) ** 3),
                        [0, 0.01, 0.1, 1, 10, 1000, mp.inf])
        c.add("R_D", text(x=x, y=y, z=z), value, "", MPMATH, "quadrature of the defining integral, with t = 1/u^2")
        c.add("R_D", text(x=x, y=y, z=z), float(special.elliprd(x, y, z)), "", SCIPY, "scipy.special.elliprd")
    road = "conditions of contact with Carlson's integrals, 40 digits"
    names = ("a", "b", "p0", "approach", "b/a")
    units = ("mm", "mm", "MPa", "mm", "")
    for force, greater, lesser in ((4500.0, 0.024, 0.0071), (120.0, 0.11, 0.11), (1750.0, 0.21, 0.0021),
                                   (2100.0, 0.0286, 0.0001)):
        solved = hertz(force, STEEL, greater, lesser)
        inputs = dict(F=force, E=STEEL, B=greater, A=lesser)
        for i, (name, unit) in enumerate(zip(names, units)):
            c.add("ellipse, " + name, text(**inputs), solved[i], unit, MPMATH, road, tolerance=1e-13)
        c.add("approach of an ellipse", text(F=force, E=STEEL, a=float(solved[0]), k=float(solved[4])),
              deflection(solved, force), "mm",
              MPMATH, "quadrature of the potential of the pressure under the centre", tolerance=1e-13)
        for load in (0.0, 0.5 * force, force, 7 * force):
            peak = hertz(load, STEEL, greater, lesser)[2] if load else 0
            c.add("peak pressures of ellipses", text(**dict(inputs, F=load)), peak, "MPa", MPMATH, road, tolerance=1e-13)
    road = "half width from the conditions of contact by quadrature"
    for force, length, radius in ((24100.0, 20.0, 20.0), (2100.0, 12.0, 17.5), (10.0, 1.0, 3.0)):
        half, peak = hertz_line(mp.mpf(force) / length, STEEL, radius)
        inputs = text(F=force, L=length, R=radius, E=STEEL)
        c.add("half width of a strip", inputs, half, "mm", MPMATH, road, tolerance=1e-13)
        c.add("peak pressures of strips", inputs, peak, "MPa", MPMATH, road, tolerance=1e-13)
    for force, outside, inside, z, width in ((2100.0, 35.0, 27.0, 16, 12.0), (9000.0, 90.0, 68.0, 21, 35.0)):
        c.add("bending stress of an outer ring", text(F=force, D=outside, Di=inside, z=z, b=width),
              ring_stress(force, outside, inside, z, width), "MPa", SCIPY,
              "straight beam on two supports, deflection by solve_bvp, stress from its curvature", tolerance=1e-6,
              reason="accuracy asked of the boundary value solver")
    for force, length, diameter in ((1000.0, 0.5, 1.25), (2500.0, 1.0, 3.0)):
        inputs = text(F=force, l=length, D=diameter)
        c.again("peak pressure in shop units", inputs, 3237 * mp.sqrt(mp.mpf(force) / (mp.mpf(length) * diameter)), "psi",
                "Cam followers catalogue 2008", "technical section, contact stress on a flat steel track, 3237 sqrt(F/(l D))")
        peak = hertz_line(mp.mpf(force) / length, mp.mpf("30e6") / (2 * (1 - mp.mpf("0.09"))), mp.mpf(diameter) / 2)[1]
        c.add("peak pressure in shop units", inputs, peak, "psi", MPMATH,
              "Hertz contact of two steel bodies, E = 30 000 000 psi, 0.3",
              kind="RECONSTRUCTION", tolerance=0.5 / 3237, reason="half a unit of the last digit of the printed constant 3237",
              disclosed="the printed constant 3237 lies 0.07 % below that of Hertz for E = 30 000 000 psi and Poisson's ratio "
                        "0.3 (3239.4); what modulus or ratio the catalogue used is not said")


def deflection(solved, force):
    """Sum of both bodies' sinking under the centre: p0 a b/(2 E*) times the integral of the potential."""
    a, b, p0 = solved[:3]
    integral = mp.quad(lambda u: 2 / mp.sqrt((a * a + u * u) * (b * b + u * u)), [0, b, a, 10 * a, 1000 * a, mp.inf])
    return p0 * a * b / (2 * mp.mpf(STEEL)) * integral


def ring_stress(force, outside, inside, z, width):
    """Left half of the beam: w(0) = 0, w''(0) = 0, w'(L/2) = 0 and half the force in the middle; in units of L and F L^3/EI."""
    def beam(x, y):
        return np.stack([y[1], y[2], y[3], np.zeros_like(x)])
    found = integrate.solve_bvp(beam, lambda l, r: np.array([l[0], l[2], r[1], r[3] - 0.5]), np.linspace(0, 0.5, 21),
                                np.zeros((4, 21)), tol=1e-9)
    moment = abs(found.y[2, -1]) * force * np.pi * inside / z
    wall = (outside - inside) / 2
    inertia, _ = integrate.quad(lambda y: width * y * y, -wall / 2, wall / 2)
    return moment * wall / 2 / inertia


def rollers(c):
    for speed, diameter in ((500.0, 35.0), (2000.0, 90.0)):
        c.add("speed on a track", text(v=speed, D=diameter), 60 * mp.mpf(speed) / circumference(diameter), "rpm", MPMATH,
              "way of a minute over the length of the circle by quadrature")
    for inner, outer in ((0.0, 300.0), (-120.0, 300.0), (450.0, 300.0)):
        c.add("speed of two rings", text(inner=inner, outer=outer), turns(inner, outer), "rpm", NUMPY,
              "angle of a mark on one ring seen from the other over a minute, unwrapped", tolerance=1e-9,
              reason="sums of 100 000 steps")
    for mu, force, diameter in ((0.1, 900.0, 35.0), (0.15, 2100.0, 62.0)):
        c.again("driving moment", text(mu=mu, F=force, D=diameter), mp.mpf(repr(mu)) * force * diameter / 2, "N·mm",
                "Cam followers catalogue 2008", "technical section, acceleration, moment F mu D/2")
    for torque, e, angle in ((1500.0, 0.4, 0.0), (1500.0, 0.4, 45.0), (820.0, 1.0, -20.0)):
        lift = mp.diff(lambda t: mp.mpf(e) * mp.sin(t), mp.radians(angle))
        c.add("load of an eccentric", text(T=torque, e=e, angle=angle), torque / lift, "N", MPMATH,
              "virtual work: numerical derivative of the height by the angle")
    for radius, tilt in ((500.0, 0.001), (250.0, -0.004), (1000.0, 0.02)):
        c.add("shift on a crown", text(R=radius, tilt=tilt), crown(radius, tilt), "mm", MPMATH,
              "lowest point of the leaning arc as a root of its slope, its way along the arc by quadrature")
    for mean in (0.0, 0.3, 2.5, 7.5, 45.0, 120.0, 4000.0):
        for stock in sorted({0, 1, int(mean), int(mean + 2 * mean ** 0.5) + 1}):
            c.add("service level", text(mean=mean, stock=stock), float(stats.poisson.cdf(stock, mean)), "", SCIPY,
                  "scipy.stats.poisson.cdf", tolerance=1e-11, reason="logarithms of factorials in a double")
    for outer, bore, width, mass in ((35.0, 16.0, 18.0, 0.09), (90.0, 0.0, 35.0, 1.2)):
        ring, _ = integrate.dblquad(lambda r, phi: r * width, 0, 2 * np.pi, bore / 2, outer / 2, epsabs=0, epsrel=1e-13)
        c.add("free volume", text(D=outer, d=bore, B=width, M=mass), ring / 1000 - mass * 1000 / 7.8, "cm³", SCIPY,
              "volume of the ring by quadrature, less the mass over the density 7.8 g/cm³ of the printed formula")
    for volume in (1.0, 12.5):
        c.again("mass of grease", text(V=volume), mp.mpf("0.9") * volume, "g", "Rolling bearings catalogue 17000 EN",
                "pages 109 to 115, 0.9 times the volume")
    for d, b in ((1.0, 1.0), (2.5, 1.25)):
        c.add("grease in ounces", text(D=d, B=b),
              mp.mpf("0.005") * mp.mpf(d) * mp.mpf(b) * mp.mpf("25.4") ** 2 / mp.mpf("28.349523125"),
              "oz", "Rolling bearings catalogue 17000 EN", "pages 109 to 115, 0.005 D B in g and mm, changed to inches and ounces",
              kind="RECONSTRUCTION", provenance="derived", tolerance=0.0005 / 0.114,
              reason="half a unit of the last digit of the printed constant 0.114")
    c.add("viscosity for a ratio", text(kappa=2.8, nu1=7.0), "20", "mm²/s", "Rolling bearings catalogue 17000 EN",
          "C.3, p. 229, solved for the viscosity", kind="WORKED_EXAMPLE", provenance="published", tolerance=0.1 / 2.8,
          reason="the printed ratio is cut after its first decimal")
    for kappa, nu1 in ((2.0, 31.0), (0.4, 130.0)):
        c.again("viscosity for a ratio", text(kappa=kappa, nu1=nu1), mp.mpf(repr(kappa)) * nu1, "mm²/s", "ISO 281:2007",
                "9.3.3.1, kappa = nu/nu1, solved for nu")
    for k, n, d in ((5.0, 300.0, 16.0), (1.0, 1500.0, 40.0), (0.5, 80.0, 8.0)):
        c.again("empirical interval", text(K=k, n=n, d=d), mp.mpf(k) * (mp.mpf(14000000) / (n * mp.sqrt(d)) - 4 * mp.mpf(d)), "h",
                "Relubrication interval guide", "classical empirical formula, K (14 000 000/(n sqrt(d)) - 4 d)")
    for d in (16.0, 40.0, 8.0):
        zero = optimize.brentq(lambda n: 14e6 / (n * d ** 0.5) - 4 * d, 1, 1e7, xtol=1e-8, rtol=1e-15)
        c.add("speed without interval", text(d=d), zero, "rpm", SCIPY, "brentq on the empirical formula", tolerance=1e-10,
              reason=ROOT)
    for n, outer, d in ((200.0, 35.0, 16.0), (60.0, 90.0, 50.0)):
        same = optimize.brentq(lambda x: x * (outer + d) / 2 - n * outer, 1, 1e6, xtol=1e-9, rtol=1e-15)
        c.add("speed for a turning outer ring", text(n=n, D=outer, d=d), same, "rpm", SCIPY,
              "brentq on n' (D + d)/2 = n D", tolerance=1e-10, reason=ROOT)
    for life in (0.0, 9000.0):
        c.again("interval from the life of the grease", text(tfG=life), mp.mpf(life) / 2, "h", "Rolling bearings catalogue HR 1",
                "relubrication interval, tfR = 0.5 tfG")


def turns(inner, outer):
    t = np.linspace(0, 1, 100001)
    mark = np.exp(2j * np.pi * outer * t) * np.exp(-2j * np.pi * inner * t)
    angle = np.unwrap(np.angle(mark))
    return float(abs(angle[-1] - angle[0]) / (2 * np.pi))


def crown(radius, tilt):
    """The arc (R sin t, -R cos t) about its own centre, turned by the tilt: where it is lowest, and how far that is along it."""
    turned = mp.mpf(tilt)
    slope = mp.findroot(lambda t: mp.diff(lambda s: -mp.cos(turned) * mp.cos(s) + mp.sin(turned) * mp.sin(s), t), -turned * 0.9)
    way = mp.quad(lambda s: radius * mp.hypot(mp.cos(s), mp.sin(s)), [0, slope])
    return -way


contact_cases, roller_cases = Cases(), Cases()
contact(contact_cases)
rollers(roller_cases)
contact_cases.write(sys.argv[1])
roller_cases.write(sys.argv[2])

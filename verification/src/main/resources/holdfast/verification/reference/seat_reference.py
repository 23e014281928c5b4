#!/usr/bin/env python3
"""Reference values for seats and studs from general-purpose libraries.

Usage: python3 seat_reference.py DIRECTORY      writes reference-values.csv and recalled-formulas.csv
Nothing in reference-values.csv uses the closed forms of the library under test:
- rings: equilibrium and Hooke's law integrated over the radius with solve_ivp, from the centre or the hole outwards; boundary
  conditions met by superposition. With mass forces for turning rings, with thermal strain, in plane stress or plane strain;
- a housing that yields: elastic zone as above, plastic zone integrated inwards from the front; roots with brentq;
- yield: principal stresses as eigenvalues of the stress tensor in a turned frame, loads by brentq;
- sections of studs: quadrature over the section; the shear coefficient by collocation of the flexure function on the boundary;
- bearing pressure, moments, work, torque: quadrature of load or traction, linear systems;
- geometry: rotation matrices, touching length by sampling the chamfered profiles.
recalled-formulas.csv holds recalled formulas coded a second time with mpmath: it guards against slips of coding and proves nothing.
Inputs are invented. Units: mm, N, MPa, K, rad, rpm, kg/m3.
"""
import csv
import math
import sys

import mpmath as mp
import numpy as np
import scipy
from scipy.integrate import dblquad, quad, solve_ivp
from scipy.optimize import brentq

mp.mp.dps = 40
SCIPY = "SciPy " + scipy.__version__
NUMPY = "NumPy " + np.__version__
REFERENCE, RECALLED = [], []


def add(quantity, value, digits, library, road, **arguments):
    """A reference value with its accuracy in digits, and how it was obtained."""
    text = "%#.*g" % (digits, value)
    REFERENCE.append([quantity, listed(arguments), text, library, road, "reference computation", ""])


def recall(quantity, value, document, locator, **arguments):
    text = value if isinstance(value, str) else mp.nstr(value, 13, strip_zeros=False)
    RECALLED.append([quantity, listed(arguments), text, document, locator, "memory", ""])


def listed(arguments):
    return "; ".join("%s = %s" % (k, v) for k, v in arguments.items())


# rings


class Ring:
    """A ring from a (0: solid) to b, integrated over the radius: state u and radial stress."""

    def __init__(self, a, b, E, nu, strain=False, density=0.0, speed=0.0, growth=0.0):
        self.a, self.b = a, b
        if strain:  # plane strain: Hooke's law with no strain along the axis
            c = E / ((1 + nu) * (1 - 2 * nu))
            self.stiff = np.array([[c * (1 - nu), c * nu], [c * nu, c * (1 - nu)]])
        else:
            self.stiff = E / (1 - nu * nu) * np.array([[1, nu], [nu, 1]])
        self.body = density * 1e-12 * (speed * 2 * math.pi / 60) ** 2
        self.growth = growth
        self.start = a if a > 0 else b * 1e-7

    def rates(self, r, state):
        u, radial = state
        hoop_strain = u / r - self.growth
        radial_strain = (radial - self.stiff[0, 1] * hoop_strain) / self.stiff[0, 0]
        hoop = self.stiff[1, 0] * radial_strain + self.stiff[1, 1] * hoop_strain
        return [radial_strain + self.growth, (hoop - radial) / r - self.body * r]

    def shoot(self, u, radial, stops):
        solution = solve_ivp(self.rates, (self.start, self.b), [u, radial], method="DOP853", rtol=1e-13, atol=1e-16,
                             dense_output=True)
        return [solution.sol(r) for r in stops]

    def solve(self, inside, outside, stops):
        """u, radial and hoop stress at the stops under pressures inside and outside."""
        if self.a > 0:
            starts = [(0.0, -inside), (self.b * 1e-3, -inside)]
        else:  # all round equal at the centre
            both = self.stiff[0, 0] + self.stiff[0, 1]
            starts = [(self.start * (e + self.growth), both * e) for e in (0.0, 1e-3)]
        first, second = (self.shoot(u, s, stops + [self.b]) for u, s in starts)
        t = (-outside - first[-1][1]) / (second[-1][1] - first[-1][1])
        result = []
        for r, one, two in zip(stops, first, second):
            u, radial = one + t * (two - one)
            hoop_strain = u / r - self.growth
            radial_strain = (radial - self.stiff[0, 1] * hoop_strain) / self.stiff[0, 0]
            result.append((u, radial, self.stiff[1, 0] * radial_strain + self.stiff[1, 1] * hoop_strain))
        return result


def joint_pressure(interference, inner, outer):
    """Pressure that closes a diametral interference between two rings that meet at one radius."""
    def gap(p):
        return outer.solve(p, 0, [outer.a])[0][0] - inner.solve(0, p, [inner.b])[0][0] - interference / 2
    return -gap(0) / (gap(1) - gap(0))


def rings():
    for d, hole, outside, f, u in [(30, 0, 0, 38, 0.02), (25, 10, 0, 31.5, 0.018), (60, 42, 0, 66, 0.03)]:
        inner, outer = Ring(hole / 2, d / 2, 206000, 0.3), Ring(d / 2, f / 2, 206000, 0.3)
        p = joint_pressure(u, inner, outer)
        add("growth of the inner raceway", 2 * outer.solve(p, 0, [f / 2])[0][0], 10, SCIPY, "two rings integrated over the radius",
            U=u, d=d, F=f, hole=hole)
    for big, raceway, housing, u in [(62, 54, 100, 0.03), (40, 34, 55, 0.02), (80, 70, 320, 0.025)]:
        inner, outer = Ring(raceway / 2, big / 2, 206000, 0.3), Ring(big / 2, housing / 2, 206000, 0.3)
        p = joint_pressure(u, inner, outer)
        add("closing of the outer raceway", -2 * inner.solve(0, p, [raceway / 2])[0][0], 10, SCIPY,
            "two rings integrated over the radius", U=u, D=big, Er=raceway, DH=housing)
    for alpha, dt, f, er in [(12.5, 15, 28, 42), (11.5, -8, 60, 80)]:
        # Half the difference above, half below the mean temperature.
        grow = Ring(f / 2 - 3, f / 2, 206000, 0.3, growth=alpha * 1e-6 * dt / 2).solve(0, 0, [f / 2])[0][0]
        shrink = Ring(er / 2, er / 2 + 4, 206000, 0.3, growth=-alpha * 1e-6 * dt / 2).solve(0, 0, [er / 2])[0][0]
        add("clearance taken by temperature", 2 * (grow - shrink), 10, SCIPY,
            "free rings integrated with thermal strain, half the difference above and half below the mean", alpha=alpha, dT=dt, F=f,
            Er=er)
    for a, b, E, nu, inside, outside, r in [(10, 25, 206000, 0.3, 80, 0, 10), (15, 40, 70000, 0.33, 50, 20, 30),
                                            (8, 12, 110000, 0.26, 0, 60, 12)]:
        u = Ring(a, b, E, nu, strain=True).solve(inside, outside, [r])[0][0]
        add("displacement in plane strain", u, 10, SCIPY, "Hooke's law with no strain along the axis, integrated over the radius",
            r=r, a=a, b=b, pi=inside, po=outside, E=E, nu=nu)
    for a, b, inside, outside in [(10, 25, 80, 0), (100, 400, 150, 0), (15, 40, 50, 20)]:
        end = quad(lambda r: inside * 2 * math.pi * r, 0, a)[0] - quad(lambda r: outside * 2 * math.pi * r, 0, b)[0]
        wall = quad(lambda r: 2 * math.pi * r, a, b)[0]
        add("axial stress of a closed cylinder", end / wall, 12, SCIPY, "pressure integrated over the ends, over the section of the wall",
            a=a, b=b, pi=inside, po=outside)
    for d, hole, outside, rho1, E1, nu1, rho2, E2, nu2, u in [(50, 0, 200, 7850, 206000, 0.3, 7850, 206000, 0.3, 0.04),
                                                             (40, 12, 160, 7850, 210000, 0.3, 2700, 70000, 0.33, 0.05),
                                                             (30, 10, 120, 7850, 206000, 0.3, 7100, 110000, 0.26, 0.02)]:
        def left(speed):
            bore = Ring(d / 2, outside / 2, E2, nu2, density=rho2, speed=speed).solve(0, 0, [d / 2])[0][0]
            stud = Ring(hole / 2, d / 2, E1, nu1, density=rho1, speed=speed).solve(0, 0, [d / 2])[0][0]
            return u - 2 * (bore - stud)
        add("speed of loss", brentq(left, 100, 80000, xtol=1e-9, rtol=1e-13), 9, SCIPY,
            "turning rings integrated over the radius, root of the interference left", U=u, D=d, hole=hole, outside=outside,
            rho_i=rho1, E_i=E1, nu_i=nu1, rho_a=rho2, E_a=E2, nu_a=nu2)
    for hole, outside, rho, nu, speed, at in [(0, 80, 7850, 0.3, 9000, 30), (20, 120, 7850, 0.3, 6000, 20), (30, 100, 2700, 0.33, 12000, 64)]:
        _, radial, hoop = Ring(hole / 2, outside / 2, 206000, nu, density=rho, speed=speed).solve(0, 0, [at / 2])[0]
        road = "a turning ring integrated over the radius"
        add("hoop stress of a turning ring", hoop, 9, SCIPY, road, at=at, hole=hole, outside=outside, rho=rho, nu=nu, n=speed)
        if at > hole:
            add("radial stress of a turning ring", radial, 9, SCIPY, road, at=at, hole=hole, outside=outside, rho=rho, nu=nu, n=speed)


def hole_in_a_plate(along, across):
    """Hoop stress at the end of the diameter of a hole that lies across the first of two stresses: free terms of the stress
    function that die out, by collocation on the edge of the hole."""
    def stresses(c, t, r=1.0):
        # b ln r, and (d/r^2 + e) cos 2t, beside the plate without a hole.
        b, d, e = c
        mean, half = (along + across) / 2, (along - across) / 2
        radial = mean + half * math.cos(2 * t) + b / r ** 2 - (6 * d / r ** 4 + 4 * e / r ** 2) * math.cos(2 * t)
        hoop = mean - half * math.cos(2 * t) - b / r ** 2 + 6 * d / r ** 4 * math.cos(2 * t)
        shear = -half * math.sin(2 * t) - (6 * d / r ** 4 + 2 * e / r ** 2) * math.sin(2 * t)
        return np.array([radial, shear, hoop])
    angles = (np.arange(24) + 0.4) * 2 * math.pi / 24
    free = np.concatenate([stresses((0, 0, 0), t)[:2] for t in angles])
    columns = [np.concatenate([stresses(unit, t)[:2] for t in angles]) - free for unit in np.eye(3)]
    c, _, rank, _ = np.linalg.lstsq(np.array(columns).T, -free, rcond=None)
    assert rank == 3 and np.max(np.abs(np.array(columns).T @ c + free)) < 1e-9 * (abs(along) + abs(across))
    return stresses(c, math.pi / 2)[2]


def cross_holes():
    for along, p, d, bore in [(120, 0, 16, 0), (180, 60, 18, 3), (90, 40, 24, 8)]:
        hoop = Ring(bore / 2, d / 2, 206000, 0.3).solve(0, p, [d / 2])[0][2]
        add("peak at a cross hole", hole_in_a_plate(along, hoop), 9, NUMPY,
            "ring integrated over the radius, then a plate with a hole by collocation on its edge", along=along, p=p, d=d, bore=bore)


# yield


def principal(tensor):
    """Eigenvalues in a frame turned about two axes."""
    c, s = math.cos(0.6), math.sin(0.6)
    turn = np.array([[c, -s, 0], [s, c, 0], [0, 0, 1]]) @ np.array([[1, 0, 0], [0, s, -c], [0, c, s]])
    return np.linalg.eigvalsh(turn @ np.array(tensor, float) @ turn.T)


def equivalent(rule, tensor):
    one, two, three = principal(tensor)
    if rule == "von Mises":
        return math.sqrt(((one - two) ** 2 + (two - three) ** 2 + (three - one) ** 2) / 2)
    shear = (three - one) / 2
    return 2 * shear if rule == "Tresca" else math.sqrt(3) * shear


def yields():
    for d, outside, strength in [(30, 60, 350), (16, 24, 250), (20, 100, 500)]:
        hoop = Ring(d / 2, outside / 2, 206000, 0.3).solve(1, 0, [d / 2])[0][2]
        for rule in ("von Mises", "Tresca", "modified shear"):
            p = brentq(lambda p: equivalent(rule, np.diag([hoop * p, -p, 0])) - strength, 0, 2 * strength, xtol=1e-12)
            add("pressure at which a housing yields", p, 10, SCIPY, "ring integrated over the radius, eigenvalues, root of the yield rule",
                rule=rule, D=d, DA=outside, R=strength)
    for rule in ("Tresca", "modified shear"):
        for strength in (250, 640):
            k = brentq(lambda k: equivalent(rule, np.diag([k / 3, -2 * k / 3, 0])) - strength, 0, 2 * strength, xtol=1e-12)
            add("stress difference at yield", k, 12, SCIPY, "eigenvalues, root of the yield rule", rule=rule, R=strength)
    for bending, axial, torsion in [(210, 98, 40), (-50, 120, 75), (300, 0, 0)]:
        t = [[0, 0, torsion], [0, 0, 0], [torsion, 0, bending + axial]]
        add("equivalent stress on the fibre in tension", equivalent("von Mises", t), 13, NUMPY, "eigenvalues of the stress tensor",
            bending=bending, axial=axial, torsion=torsion)
    for axial, shear, torsion in [(98, 35, 40), (0, 60, 0), (150, 20, 90)]:
        t = [[0, 0, shear + torsion], [0, 0, 0], [shear + torsion, 0, axial]]
        add("equivalent stress on the neutral axis", equivalent("von Mises", t), 13, NUMPY, "eigenvalues of the stress tensor",
            axial=axial, shear=shear, torsion=torsion)
    for amplitude, mean, strength in [(120, 80, 640), (90, -200, 640), (250, 0, 355)]:
        wave = np.linspace(0, 2 * math.pi, 100001)
        peak = np.max(np.abs(mean + amplitude * np.sin(wave)))
        peak = max(peak, *[abs(mean + amplitude * s) for s in (-1, 1)])
        add("margin against first yield", brentq(lambda n: n * peak - strength, 0, 100, xtol=1e-14, rtol=1e-14), 12, NUMPY,
            "greatest stress of a sampled cycle, root of the load factor", amplitude=amplitude, mean=mean, R=strength)


# housings that yield: bore radius 1, k the stress difference at yield


def elastic_beyond(front, outer, k, stops):
    """Stresses of the elastic zone whose inner face just yields; outside free."""
    ring = Ring(front, outer, 1000.0, 0.3)
    radial, hoop = ring.solve(1, 0, [front])[0][1:]
    p = k / (hoop - radial)
    return p, [ring.solve(p, 0, [r])[0][1:] for r in stops]


def plastic_inwards(front, at_front, k, stops):
    solution = solve_ivp(lambda r, s: [k / r], (front, 1.0), [-at_front], method="DOP853", rtol=1e-13, atol=1e-13,
                         dense_output=True)
    return [float(solution.sol(r)[0]) for r in stops]


def plastic_pressure(front, outer, k):
    at_front = elastic_beyond(front, outer, k, [])[0] if front < outer else 0.0
    return -plastic_inwards(front, at_front, k, [1.0])[0] if front > 1 else at_front


def plastic():
    for q, k in [(0.5, 300), (0.7, 350), (0.25, 260), (0.4, 500)]:
        outer = 1 / q
        # Greatest pressure: fully plastic, but not over k, where the bore begins to flow along the axis.
        whole = solve_ivp(lambda r, s: [k / r], (outer, 1.0), [0.0], method="DOP853", rtol=1e-13, atol=1e-13)
        most = min(k, -whole.y[0, -1])
        add("greatest pressure of a housing that yields", most, 10, SCIPY, "plastic ring integrated inwards, axial flow of the bore at k",
            Q=q, k=k)
        if plastic_pressure(outer * (1 - 1e-9), outer, k) < k:
            greatest = outer
        else:
            greatest = brentq(lambda z: plastic_pressure(z, outer, k) - k, 1 + 1e-9, outer * (1 - 1e-9), xtol=1e-13)
        add("greatest plastic ratio", greatest, 9, SCIPY, "elastic and plastic zone integrated over the radius, root at k", Q=q)
        begin = plastic_pressure(1.0, outer, k)
        for part in (0.3, 0.8):
            p = round(begin + part * (most - begin), 1)
            front = brentq(lambda z: plastic_pressure(z, outer, k) - p, 1, greatest * (1 - 1e-12), xtol=1e-13)
            add("plastic ratio", front, 9, SCIPY, "elastic and plastic zone integrated over the radius, root at the pressure", p=p, Q=q,
                k=k)
            area = quad(lambda r: 2 * math.pi * r, 1, front)[0] / quad(lambda r: 2 * math.pi * r, 1, outer)[0]
            add("plastic share", area, 8, SCIPY, "areas integrated from the front of that root", p=p, Q=q, k=k)
        front = round(1 + 0.4 * (greatest - 1), 2)
        inside, beyond = round((1 + front) / 2, 3), round((front + outer) / 2, 3)
        at_front, elastic = elastic_beyond(front, outer, k, [beyond])
        radial = plastic_inwards(front, at_front, k, [inside])[0]
        road = "plastic zone integrated inwards from the front"
        add("radial stress", radial, 10, SCIPY, road, x=inside, zeta=front, Q=q, k=k)
        add("hoop stress", radial + k, 10, SCIPY, road, x=inside, zeta=front, Q=q, k=k)
        road = "elastic zone integrated outwards from the front"
        add("radial stress", elastic[0][0], 9, SCIPY, road, x=beyond, zeta=front, Q=q, k=k)
        add("hoop stress", elastic[0][1], 9, SCIPY, road, x=beyond, zeta=front, Q=q, k=k)


# friction, temperature, geometry


def friction():
    for p, d, length, mu in [(50, 16, 20, 0.12), (120.5, 30, 24, 0.08), (8, 100, 60, 0.15)]:
        torque = dblquad(lambda z, phi: mu * p * (d / 2) * (d / 2), 0, 2 * math.pi, 0, length, epsabs=1e-9)[0]
        add("torque that slips", torque, 12, SCIPY, "friction integrated over the cylinder", p=p, D=d, l=length, mu=mu)
        force = lambda s: dblquad(lambda z, phi: mu * p * d / 2, 0, 2 * math.pi, 0, s, epsabs=1e-9)[0]
        work = quad(force, 0, length, epsabs=1e-9)[0]
        add("work of pressing", work, 11, SCIPY, "friction on the length joined so far, integrated over the stroke", p=p, D=d, l=length,
            mu=mu)
    for f, t, d in [(2000, 15000, 16), (-3500, 40000, 30), (0, 9000, 12)]:
        area = quad(lambda phi: d / 2 * 20, 0, 2 * math.pi)[0]
        around = t / quad(lambda phi: d / 2 * d / 2 * 20, 0, 2 * math.pi)[0]
        add("resultant on the joint face", np.linalg.norm([f / area, around]) * area, 12, SCIPY,
            "traction vector on the cylinder, integrated", F=f, T=t, D=d)
    for f, d, length, mu, safety in [(4000, 16, 20, 0.12, 1.5), (900, 30, 24, 0.08, 2)]:
        def spare(p):
            return quad(lambda phi: mu * p * d / 2 * length, 0, 2 * math.pi)[0] - safety * f
        add("pressure to hold", brentq(spare, 0, 1000, xtol=1e-13, rtol=1e-13), 11, SCIPY, "root of the friction integrated", F=f, D=d,
            l=length, mu=mu, S=safety)


def temperature():
    for u, s, d, alpha, room in [(0.03, 0.02, 30, 8.5, 20), (0.045, 0.016, 16, 11.5, 22), (0.012, 0.05, 100, 16, 5)]:
        def gap(t):
            # Shrink of the nominal diameter, step by step down from the room temperature.
            return -quad(lambda x: d * alpha * 1e-6, room, t)[0] - u - s
        add("stud temperature", brentq(gap, -5000, room, xtol=1e-11, rtol=1e-14), 11, SCIPY, "contraction integrated, root of the clearance",
            U=u, S=s, D=d, alpha=alpha, room=room)
    for u, d, inner, outer in [(0.02, 30, 11.5, 23), (0.012, 16, 11.5, 10.5), (0.05, 100, 12, 18)]:
        def left(t):
            return u + quad(lambda x: d * (inner - outer) * 1e-6, 20, t)[0]
        add("temperature of loss", brentq(left, -5000, 5000, xtol=1e-11, rtol=1e-14), 11, SCIPY, "both expansions integrated, root of the "
            "interference", U=u, D=d, alpha_i=inner, alpha_a=outer)


def geometry():
    for phi, a, length in [(0.002, 12, 20), (0.05, 0, 16), (0.3, 30, 8)]:
        turn = np.array([[math.cos(phi), math.sin(phi)], [-math.sin(phi), math.cos(phi)]])
        point = turn @ np.array([0.0, a + length])
        add("shift of a point", point[0], 13, NUMPY, "rotation matrix about the far mouth", phi=phi, a=a, L=length)
    for length, stud, bore in [(20, 1.2, 0.5), (16, 0, 0.8), (24, 3, 1.5)]:
        z = (np.arange(200000) + 0.5) * length / 200000
        stud_there = np.where(z < stud, -0.1 * (stud - z), 0.0)  # chamfers at opposite ends
        bore_there = np.where(z > length - bore, 0.1 * (z - (length - bore)), 0.0)
        touching = np.mean(stud_there >= bore_there) * length
        add("engaged length", touching, 9, NUMPY, "touching points of sampled profiles", l=length, stud=stud, bore=bore)


# studs


def disc(function, d, bore):
    """Integral of f(r, theta) over the ring."""
    return dblquad(lambda r, t: function(r, t) * r, 0, 2 * math.pi, bore / 2, d / 2, epsabs=1e-12, epsrel=1e-12)[0]


def shear_peak(d, bore):
    """Shear stress on the neutral axis for unit force: first moment of the upper half ring over inertia and width of both walls."""
    first = dblquad(lambda r, t: r * math.sin(t) * r, 0, math.pi, bore / 2, d / 2, epsabs=1e-12, epsrel=1e-12)[0]
    inertia = disc(lambda r, t: (r * math.sin(t)) ** 2, d, bore)
    return first / (inertia * (d - bore))


def shear_coefficient(d, bore, nu):
    """Cowper's coefficient from the flexure function, by collocation of harmonic functions on both boundaries."""
    b, a = 1.0, bore / d
    powers = [(k, sign) for k in (1, 3, 5) for sign in ((1, -1) if a > 0 else (1,))]
    rows, right = [], []
    for radius, outwards in [(b, 1)] + ([(a, -1)] if a > 0 else []):
        for t in (np.arange(40) + 0.3) * 2 * math.pi / 40:
            x, y = radius * math.cos(t), radius * math.sin(t)
            rows.append([outwards * sign * k * radius ** (sign * k - 1) * math.cos(k * t) for k, sign in powers])
            n = outwards * np.array([math.cos(t), math.sin(t)])
            right.append(-(nu * x * x / 2 + (1 - nu / 2) * y * y) * n[0] - (2 + nu) * x * y * n[1])
    c, residual, rank, _ = np.linalg.lstsq(np.array(rows), np.array(right), rcond=None)
    assert np.max(np.abs(np.array(rows) @ c - right)) < 1e-11 and rank == len(powers)

    def moment(r, t):
        x, y = r * math.cos(t), r * math.sin(t)
        chi = sum(ci * r ** (sign * k) * math.cos(k * t) for ci, (k, sign) in zip(c, powers))
        return x * (chi + x * y * y)
    area, inertia = disc(lambda r, t: 1.0, 2 * b, 2 * a), disc(lambda r, t: (r * math.cos(t)) ** 2, 2 * b, 2 * a)
    return -2 * (1 + nu) * inertia / (area / inertia * disc(moment, 2 * b, 2 * a))


def studs():
    for d, bore, nu in [(16, 0, 0.3), (16, 4, 0.3), (30, 18, 0.25), (20, 19, 0.3)]:
        add("shear coefficient", shear_coefficient(d, bore, nu), 11, NUMPY, "flexure function by collocation on the boundary, then quadrature",
            d=d, bore=bore, nu=nu)
    for f, width, gap, d, bore, E, nu in [(3000, 14, 1, 16, 0, 206000, 0.3), (5200, 20, 0, 24, 6, 206000, 0.3),
                                          (800, 9, 2.5, 8, 3, 110000, 0.34)]:
        rigidity = shear_coefficient(d, bore, nu) * E / (2 * (1 + nu)) * disc(lambda r, t: 1.0, d, bore)
        def shear(x):
            return f * min(1.0, (gap + width - x) / width)
        w = quad(lambda x: shear(x) / rigidity, 0, gap + width / 2, points=[gap], epsabs=1e-14)[0]
        add("shear deflection", w, 10, SCIPY, "shear force over rigidity, integrated to the middle of the load", F=f, B=width, g=gap, d=d,
            bore=bore, E=E, nu=nu)
        def moment(x):
            return quad(lambda s: f / width * (s - x), max(x, gap), gap + width, epsabs=1e-10)[0]
        for x in (0, round(gap + 0.3 * width, 2)):
            add("moment at a distance", moment(x), 11, SCIPY, "load beyond the section integrated with its arm", F=f, B=width, g=gap, x=x)
        inertia = disc(lambda r, t: (r * math.sin(t)) ** 2, d, bore)
        load = brentq(lambda n: n * moment(0) / f * d / 2 / inertia - 250, 0, 1e6, xtol=1e-10, rtol=1e-13)
        add("load at a stress", load, 10, SCIPY, "moment and section by quadrature, root of the load", sigma=250, B=width, g=gap, d=d,
            bore=bore)
    for f, d, bore in [(3000, 16, 0), (5200, 24, 6), (800, 8, 5)]:
        area = disc(lambda r, t: 1.0, d, bore)
        add("shear stress on the neutral axis", f * shear_peak(d, bore), 11, SCIPY,
            "first moment over second moment and width, by quadrature", F=f, d=d, bore=bore)
        add("double shear", f / 2 / area, 11, SCIPY, "half the force over the section by quadrature", F=f, d=d, bore=bore)
        add("axial stress", f / area, 11, SCIPY, "force over the section by quadrature", F=f, d=d, bore=bore)
    for t, d, bore in [(40000, 16, 0), (90000, 24, 6), (5000, 8, 5)]:
        per = disc(lambda r, _: r * r / (d / 2), d, bore)
        add("torsional stress", t / per, 11, SCIPY, "torque of a linear shear stress by quadrature", T=t, d=d, bore=bore)
    for f, a, d, length in [(3000, 8, 16, 18), (5200, 12.5, 24, 20), (800, 0, 8, 12)]:
        # Pressure p0 + p1 z over the projected width; z from the mouth inwards, force at -a.
        unit = [quad(lambda z: d * z ** n, 0, length)[0] for n in range(3)]
        p0, p1 = np.linalg.solve([[unit[0], unit[1]], [unit[1], unit[2]]], [f, -f * a])
        add("pressure at the mouth", p0, 11, NUMPY, "force and moment of a linear pressure, linear system", F=f, a=a, d=d, L=length)
        add("pressure at the far end", -(p0 + p1 * length), 11, NUMPY, "force and moment of a linear pressure, linear system", F=f, a=a,
            d=d, L=length)


def pins():
    for f, gap, ear, width in [(4500, 26, 12, 25), (10000, 40, 15, 30), (800, 20, 6, 12.5)]:
        end = gap / 2 + ear
        def load(x):
            # Up in the ears, down in the middle, each evenly spread.
            return f / (2 * ear) if abs(x) > gap / 2 else (-f / width if abs(x) < width / 2 else 0.0)
        steps = sorted({-end, -gap / 2, -width / 2, 0.0})
        moment = sum(quad(lambda x: load(x) * -x, a, b, epsabs=1e-10)[0] for a, b in zip(steps, steps[1:]))
        add("moment in the middle of a pin", moment, 11, SCIPY, "loads of one half integrated with their arms", F=f, g=gap, t=ear,
            w=width)
    for f, d, length in [(2250, 20, 12), (5000, 20, 15), (800, 8, 6)]:
        lift = quad(lambda t: math.cos(t) * d / 2, -math.pi / 2, math.pi / 2, epsabs=1e-13)[0] * length
        add("pressure of a pin", f / lift, 11, SCIPY, "even pressure on half of the bore, its part along the load integrated", F=f, d=d,
            l=length)


# recalled formulas, a second time


def recalled():
    f = mp.mpf
    for a, i in [("6.3", "4"), ("10", "1.6"), ("3.2", "2.5")]:
        recall("smoothing of 2001", f("0.8") * (f(a) + f(i)), "DIN 7190:2001", "effective interference", outer=a, inner=i)
        recall("smoothing of 2017", f("0.4") * (f(a) + f(i)), "DIN 7190-1:2017", "effective interference, Rz known", outer=a, inner=i)
        recall("smoothing of 2017 by peaks", f("0.8") * (f(a) + f(i)), "DIN 7190-1:2017", "effective interference, Rp known", outer=a, inner=i)
    for d in ("8", "16", "30", "100"):
        recall("chamfer length", mp.cbrt(f(d)), "DIN 7190-1:2017", "chamfer of pressed parts", D=d)
    for rm in ("600", "900", "1200", "2070"):
        recall("material length", f("0.0254") * (2070 / f(rm)) ** f("1.8"), "Peterson 1959", "notch sensitivity of steels in bending and tension",
               Rm=rm)
    for rm, kf in [(400, "1.8"), (500, "2.0"), (600, "2.2"), (700, "2.3"), (800, "2.5"), (900, "2.6"), (1000, "2.7"), (1100, "2.8"),
                   (1200, "2.9")]:
        recall("fatigue notch factor of a press fit", kf, "DIN 743-2", "fatigue notch factors of press fits in bending, 40 mm", Rm=rm)
    for kt, r, a in [("1.9", "0.5", "0.07"), ("2.6", "0.2", "0.12"), ("1.4", "1.5", "0")]:
        recall("fatigue notch factor", 1 + (f(kt) - 1) / (1 + f(a) / f(r)), "Peterson 1959", "q = 1/(1 + a/r)", Kt=kt, r=r, a=a)
    # Ranges of t/r beside the polynomials; D = 20, d = 16, t = 2.
    ranges = {("fillet", "bending"): (0.1, 20), ("fillet", "tension"): (0.1, 20), ("fillet", "torsion"): (0.25, 4),
              ("groove", "bending"): (0.25, 50)}
    for (notch, loading), (low, high) in ranges.items():
        for x in (low * 0.97, low * 1.03, high * 0.97, high * 1.03):
            recall("covered by the notch polynomials (1 yes, 0 no)", "1.0" if low <= x <= high else "0.0", "Pilkey 1997",
                   "ranges of t/r beside the polynomials", notch=notch, loading=loading, D=20, d=16, r="%.6g" % (2 / x))


def write(path, rows):
    with open(path, "w", newline="", encoding="utf-8") as file:
        out = csv.writer(file, lineterminator="\n")
        out.writerow("quantity,arguments,value,source,locator,provenance,disclosed".split(","))
        out.writerows(rows)


if __name__ == "__main__":
    for part in (rings, cross_holes, yields, plastic, friction, temperature, geometry, studs, pins, recalled):
        part()
    write(sys.argv[1] + "/reference-values.csv", REFERENCE)
    write(sys.argv[1] + "/recalled-formulas.csv", RECALLED)
    print(len(REFERENCE), "reference values,", len(RECALLED), "recalled;", SCIPY, NUMPY, "mpmath", mp.__version__)

"""Contact of ring and track: elliptic integrals and root of the library, stresses below the surface by summing the point
loads (Boussinesq) or line loads (Flamant) of the contact pressure. Steel on steel, E 206 GPa, nu 0.3. Units: mm, N, MPa."""

import math

import numpy as np
from scipy import optimize, special

E, NU = 206e3, 0.3
E_STAR = E / (2 * (1 - NU**2))


def greatest_shear(shear_at, scale):
    found = optimize.minimize_scalar(lambda z: -shear_at(z), bounds=(0.05 * scale, 2 * scale), method="bounded",
                                     options={"xatol": 1e-9 * scale})
    return -found.fun, found.x


def line(load, radius, length):
    """Peak pressure, greatest shear below it and its depth."""
    per_length = load / length
    half = math.sqrt(4 * per_length * radius / (math.pi * E_STAR))
    peak = 2 * per_length / (math.pi * half)
    nodes, weights = np.polynomial.legendre.leggauss(400)
    angle = nodes * math.pi / 2
    s, w = half * np.sin(angle), weights * math.pi / 2 * half * np.cos(angle)
    p = peak * np.cos(angle)

    def shear(z):
        r4 = (s * s + z * z) ** 2
        sigma_x = -2 / math.pi * np.sum(w * p * s * s * z / r4)
        sigma_z = -2 / math.pi * np.sum(w * p * z**3 / r4)
        return abs(sigma_x - sigma_z) / 2

    return peak, *greatest_shear(shear, half)


def ellipse(load, r_along, r_across):
    """Half axes, peak pressure, greatest shear below it and its depth, for radii in two planes on a flat track."""
    a_small, b_large = sorted((1 / (2 * r_along), 1 / (2 * r_across)))
    ratio = b_large / a_small

    def gap(k):
        m = 1 - k * k
        ke, ee = special.ellipk(m), special.ellipe(m)
        return (ee / k**2 - ke) / (ke - ee) - ratio

    k = optimize.brentq(gap, 1e-4, 1 - 1e-9, xtol=1e-15, rtol=1e-14)
    m = 1 - k * k
    # Load and approach: the sum of the curvatures fixes the size of the ellipse.
    long = (3 * load * special.ellipe(m) / (2 * math.pi * k * k * E_STAR * (a_small + b_large))) ** (1 / 3)
    short = k * long
    peak = 3 * load / (2 * math.pi * long * short)
    nodes, weights = np.polynomial.legendre.leggauss(160)
    rho, w_rho = (nodes + 1) / 2, weights / 2
    rho, w_rho = np.sin(rho * math.pi / 2), w_rho * math.pi / 2 * np.cos(rho * math.pi / 2)
    turn = np.linspace(0, 2 * math.pi, 480, endpoint=False)
    r, t = np.meshgrid(rho, turn, indexing="ij")
    weight = w_rho[:, None] * (2 * math.pi / turn.size) * long * short * r * peak * np.sqrt(1 - r * r)
    x, y = long * r * np.cos(t), short * r * np.sin(t)

    def shear(z):
        plane = x * x + y * y
        far = np.sqrt(plane + z * z)
        free = (1 - 2 * NU) / plane

        def across(u, v):
            return weight / (2 * math.pi) * (free * ((1 - z / far) * (u * u - v * v) / plane + z * v * v / far**3)
                                             - 3 * z * u * u / far**5)

        sigma = sorted((across(x, y).sum(), across(y, x).sum(), (-3 * weight * z**3 / (2 * math.pi * far**5)).sum()))
        return (sigma[2] - sigma[0]) / 2

    return long, short, peak, *greatest_shear(shear, short)

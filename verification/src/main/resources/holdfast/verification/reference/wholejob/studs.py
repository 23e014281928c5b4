"""Stud and pin as beams: slopes by quadrature of the bending moment, the greatest equivalent stress by search round the
section at the mouth of the seat. Units: mm, N, MPa, rad."""

import math

import numpy as np
from scipy import integrate, optimize


def second_moment(d, di):
    """By quadrature over the ring."""
    return integrate.quad(lambda r: math.pi * r**3, di / 2, d / 2, epsabs=0, epsrel=1e-13)[0]


def area(d, di):
    return integrate.quad(lambda r: 2 * math.pi * r, di / 2, d / 2, epsabs=0, epsrel=1e-13)[0]


def mises(x, y, z, shear_xy, shear_yz=0.0, shear_zx=0.0):
    tensor = np.array([[x, shear_xy, shear_zx], [shear_xy, y, shear_yz], [shear_zx, shear_yz, z]])
    deviator = tensor - np.trace(tensor) / 3 * np.eye(3)
    return math.sqrt(1.5 * float((deviator * deviator).sum()))


class Stud:
    """Cantilever of the diameter d with the bore di; the load F even over the ring width B, which begins at the gap g."""

    def __init__(self, e, d, di, load, width, gap):
        self.e, self.d, self.di, self.load, self.width, self.gap = e, d, di, load, width, gap
        self.i, self.area = second_moment(d, di), area(d, di)

    def moment(self, x):
        """Bending moment at x from the mouth: the load beyond x times its arm."""
        start = max(x, self.gap)
        end = self.gap + self.width
        if start >= end:
            return 0.0
        per_length = self.load / self.width
        return integrate.quad(lambda s: per_length * (s - x), start, end, epsabs=0, epsrel=1e-12)[0]

    def slope(self):
        """Slope in the middle of the roller."""
        middle = self.gap + self.width / 2
        turned = integrate.quad(self.moment, 0, middle, points=[self.gap] if self.gap > 0 else None, epsabs=0, epsrel=1e-11)[0]
        return turned / (self.e * self.i)

    def bending_stress(self):
        return self.moment(0) * self.d / 2 / self.i

    def pressed_hoop(self, pressure):
        """Size of the hoop stress in the surface that a pressure presses in: equilibrium of half a ring, and the sum of radial
        and hoop stress even through the wall."""
        if self.di == 0:
            return pressure
        # radial = a - b/r^2, hoop = a + b/r^2 (pressing counted positive); radial 0 at the bore, p at the surface.
        a, b = np.linalg.solve([[1, -4 / self.di**2], [1, -4 / self.d**2]], [0, pressure])
        return float(a + 4 * b / self.d**2)

    def mouth_pressure(self, held):
        """Pressure at the mouth of a rigid stud in a soft bore: linear along it, in balance with load and moment."""
        force, moment = self.load, self.moment(0)
        sums = [[self.d * held, self.d * held**2 / 2], [self.d * held**2 / 2, self.d * held**3 / 3]]
        return float(np.linalg.solve(sums, [force, -moment])[0])

    def shear_stress(self, height):
        """Shear of the load at a height over the axis: first moment of the part beyond a chord over the width of the walls."""
        y = abs(height)

        def chord(at):
            outer = math.sqrt(max(self.d**2 / 4 - at**2, 0))
            inner = math.sqrt(max(self.di**2 / 4 - at**2, 0))
            return 2 * (outer - inner)

        if y >= self.d / 2 * (1 - 1e-9):
            return 0.0
        points = [self.di / 2] if self.di > 0 and y < self.di / 2 else None
        first = integrate.quad(lambda h: h * chord(h), y, self.d / 2, points=points, limit=200)[0]
        return self.load * first / (self.i * chord(y))

    def equivalent(self, preload, torque, pressure, lean=0.0, held=1.0):
        """Greatest von Mises stress in the mouth of the seat: preload, bending (by the load, and by the lean of the clamped
        faces over the held length), torsion, shear of the load and pressure of the fit, all at one place, searched over the
        angle at the surface and at the wall of the bore."""
        axial = preload / self.area
        torsion = torque * self.d / 2 / (2 * self.i)
        bending = self.bending_stress() + self.e * abs(lean) * self.d / 2 / held
        ratio = (self.di / self.d) ** 2
        greatest = 0.0
        for radius in (self.d / 2, self.di / 2):
            share = radius / (self.d / 2)
            inverse = ratio / share**2 if share else 1.0
            radial, hoop = -pressure * (1 - inverse) / (1 - ratio), -pressure * (1 + inverse) / (1 - ratio)

            def minus(angle):
                normal = axial + bending * share * math.sin(angle)
                shear = torsion * share + self.shear_stress(radius * math.sin(angle))
                return -mises(normal, hoop, radial, shear)

            best = min((minus(a), a) for a in np.linspace(-math.pi / 2, math.pi / 2, 91))[1]
            found = optimize.minimize_scalar(minus, bounds=(best - 0.07, best + 0.07), method="bounded", options={"xatol": 1e-10})
            greatest = max(greatest, -found.fun, -minus(best))
        return greatest


def rectangle_in_gap(diameter, length, clearance):
    """Lean of a rectangle in a gap wider by the clearance: the root of the exact equation."""
    if clearance <= 0:
        return 0.0
    return optimize.brentq(
        lambda phi: length * math.sin(phi) + diameter * (math.cos(phi) - 1) - clearance, 0, 0.3, xtol=1e-16)


class Pin:
    """Pin on the middles of two ears, the load even over the width of the roller; the cross hole in the net section."""

    def __init__(self, d, di, hole, load, gap, ear, width):
        self.d, self.di, self.hole, self.load, self.gap, self.ear, self.width = d, di, hole, load, gap, ear, width

    def bending_stress(self):
        span = self.gap + self.ear
        half = self.load / 2
        per_length = self.load / self.width
        moment = half * span / 2 - integrate.quad(lambda s: per_length * s, 0, self.width / 2)[0]

        # The hole across takes a strip of its width out of both walls, in the direction of the bending.
        def strip(height):
            outer = math.sqrt(max(self.d**2 / 4 - height**2, 0))
            inner = math.sqrt(max(self.di**2 / 4 - height**2, 0))
            return 2 * (outer - inner)

        points = [self.di / 2] if self.di else None
        whole = 2 * integrate.quad(lambda h: h * h * strip(h), 0, self.d / 2, points=points, epsrel=1e-12)[0]
        cut = 2 * integrate.quad(lambda h: h * h * self.hole, self.di / 2, self.d / 2)[0]
        return moment * self.d / 2 / (whole - cut)

    def shear_stress(self):
        """Double shear, mean over the net section (catalogue F)."""
        return self.load / 2 / area(self.d, self.di)

    def ear_pressure(self):
        return self.load / 2 / (self.d * self.ear)

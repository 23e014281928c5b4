"""A stud or pin pressed into a ring: elasticity of two rings solved as a linear system, stresses by search over the radius.

The library uses the closed form of Lame; here the constants A and B of u = A r + B/r in both rings come from the four
conditions at the walls and the joint. Units: mm, N, MPa, degC.
"""

import math

import numpy as np
from scipy import optimize

from .own_tables import COOLING, MATERIAL, deviations

MICRO = 1e-3


class Ring:
    """An elastic ring in plane stress between the radii a and b; a = 0 is solid, b = inf a wide plate."""

    def __init__(self, material, a, b):
        self.e, self.nu = MATERIAL[material][:2]
        self.a, self.b = a, b

    def displacement(self, r):
        """u(r) as coefficients of A and B."""
        return np.array([r, 1 / r])

    def radial(self, r):
        f = self.e / (1 - self.nu**2)
        return np.array([f * (1 + self.nu), -f * (1 - self.nu) / r**2])

    def hoop(self, r):
        f = self.e / (1 - self.nu**2)
        return np.array([f * (1 + self.nu), f * (1 - self.nu) / r**2])

    def free_wall(self, r):
        """The condition at the wall away from the joint."""
        if r == 0:
            return np.array([0.0, 1.0])
        if math.isinf(r):
            return np.array([1.0, 0.0])
        scale = self.radial(r)
        return scale / np.abs(scale).max()

    def stresses(self, constants, r):
        return self.radial(r) @ constants, self.hoop(r) @ constants


class Joint:
    """Inner part of bore di in outer part of outside diameter da, joint diameter d."""

    def __init__(self, inner, di, outer, da, d):
        self.d = d
        self.inner, self.outer = Ring(inner, di / 2, d / 2), Ring(outer, d / 2, da / 2)
        self.names = inner, outer
        self.solution = self.constants(1.0)  # for an interference of 1 mm
        self.stiffness = -float(self.inner.radial(d / 2) @ self.solution[:2])

    def constants(self, interference):
        r = self.d / 2
        i, o = self.inner, self.outer
        rows = np.zeros((4, 4))
        rows[0, :2] = i.free_wall(i.a)
        rows[1, 2:] = o.free_wall(o.b)
        rows[2, :2], rows[2, 2:] = i.radial(r) / i.e, -o.radial(r) / i.e
        rows[3, :2], rows[3, 2:] = -i.displacement(r), o.displacement(r)
        return np.linalg.solve(rows, np.array([0, 0, 0, interference / 2]))

    def pressure(self, interference):
        return self.stiffness * max(interference, 0.0)

    def worst(self, ring, brittle):
        """Greatest von Mises stress in a ring (greatest principal stress of a brittle one) at a joint pressure of 1."""
        constants = (self.solution[:2] if ring is self.inner else self.solution[2:]) / self.stiffness
        low = ring.a if ring.a > 0 else 1e-6 * ring.b
        high = ring.b if math.isfinite(ring.b) else 20 * ring.a
        greatest = 0.0
        for r in np.linspace(low, high, 4001):
            radial, hoop = ring.stresses(constants, r)
            stress = max(radial, hoop, 0.0) if brittle else math.sqrt(radial**2 + hoop**2 - radial * hoop)
            greatest = max(greatest, stress)
        return greatest

    def limit(self, which):
        """Joint pressure at which a part reaches its strength."""
        material = MATERIAL[self.names[0 if which == "inner" else 1]]
        ring = self.inner if which == "inner" else self.outer
        brittle = material[3] is None
        return (material[4] if brittle else material[3]) / self.worst(ring, brittle)


class Fit:
    def __init__(self, size, bore, shaft):
        self.size = size
        self.hole, self.shaft = deviations(bore, size), deviations(shaft, size)
        self.greatest_clearance = (self.hole[0] - self.shaft[1]) * MICRO
        self.least_clearance = (self.hole[1] - self.shaft[0]) * MICRO

    def limits(self, part):
        upper, lower = self.hole if part == "hole" else self.shaft
        return self.size + lower * MICRO, self.size + upper * MICRO

    @property
    def kind(self):
        if self.least_clearance >= -1e-12:
            return "clearance"
        return "interference" if self.greatest_clearance <= 1e-12 else "transition"


class Seat:
    """A part of a material with a bore in an outer part; roughness Rz of both in mm, 0 where none is stated."""

    def __init__(self, fit, inner, di, outer, da, length, rough_inner, rough_outer, friction):
        self.fit, self.length, self.friction = fit, length, friction
        self.inner, self.outer = inner, outer
        self.joint = Joint(inner, di, outer, da, fit.size)
        # DIN 7190-1:2017 (memory): smoothing takes 0.4 (Rz + Rz) of the diametral interference.
        self.loss = 0.4 * (rough_inner + rough_outer)
        self.alpha = MATERIAL[inner][2], MATERIAL[outer][2]

    def interference(self, temperature=20.0):
        """Effective interference of the loosest and the tightest pair, both parts at one temperature."""
        grown = self.fit.size * (self.alpha[0] - self.alpha[1]) * (temperature - 20)
        return (max(-self.fit.greatest_clearance - self.loss + grown, 0.0),
                max(-self.fit.least_clearance - self.loss + grown, 0.0))

    def pressures(self, temperature=20.0):
        return tuple(self.joint.pressure(u) for u in self.interference(temperature))

    def press_force(self):
        """Sliding friction summed over the joint face, friction of each end of the band with its pressure."""
        area = math.pi * self.fit.size * self.length
        low, high = self.pressures()
        return low * area * self.friction[0], high * area * self.friction[1]

    def torque_held(self):
        """Friction at the joint radius, loosest pair and least friction."""
        return self.pressures()[0] * math.pi * self.fit.size * self.length * self.friction[0] * self.fit.size / 2

    def stress(self, which):
        """Greatest stress by the tightest pair: von Mises, or the greatest principal stress of a part that breaks."""
        ring = self.joint.inner if which == "inner" else self.joint.outer
        brittle = MATERIAL[self.inner if which == "inner" else self.outer][3] is None
        return self.joint.worst(ring, brittle) * self.pressures()[1]

    def safety(self, which):
        return self.joint.limit(which) / self.pressures()[1]

    def heat(self, room=20.0):
        """Temperature of the outer part that lets the tightest inner part of room temperature in with D/1000 to spare."""
        wanted = -self.fit.least_clearance + self.fit.size / 1000
        return optimize.brentq(lambda t: self.fit.size * self.alpha[1] * (t - room) - wanted, room, 1e4, xtol=1e-10)

    def heat_with_cold(self, cold, room=20.0):
        wanted = -self.fit.least_clearance + self.fit.size / 1000 - self.fit.size * COOLING[self.inner] * (room - cold)
        return room + wanted / (self.fit.size * self.alpha[1])

    def lets_go(self):
        """Common temperature at which the loosest pair loses its grip; None if warmth tightens it or it has none."""
        low = self.interference()[0]
        if low <= 0 or self.alpha[1] <= self.alpha[0]:
            return None
        return optimize.brentq(lambda t: low + self.fit.size * (self.alpha[0] - self.alpha[1]) * (t - 20), 20, 1e5, xtol=1e-9)

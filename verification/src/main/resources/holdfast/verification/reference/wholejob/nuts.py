"""The nut on the drilled stud: forces on the flank of the helix, preload and torque by root search, the joint's springs by
quadrature over sections and pressure cones. Units: mm, N, N mm, MPa."""

import math

from scipy import integrate, optimize

from .own_tables import SETTLING
from .units import INCH


class Thread:
    """ISO 68-1 and ASME B1.1 (published): diameters from the height of the fundamental triangle."""

    def __init__(self, name):
        if name.startswith("M"):
            d, p = name[1:].split("x")
            self.d, self.p = float(d), float(p)
        else:
            size, per_inch = name.rsplit("-", 1)
            top, bottom = size.split("/")
            self.d, self.p = INCH * int(top) / int(bottom), INCH / int(per_inch)
        height = self.p * math.sqrt(3) / 2
        self.d2 = self.d - 3 / 4 * height
        self.d3 = self.d - 17 / 12 * height
        self.minor_nut = self.d - 5 / 4 * height
        if name.startswith("M"):
            # ISO 724 and DIN 13-1 print these diameters to 0.001 mm.
            self.d2, self.d3 = round(self.d2, 3), round(self.d3, 3)
        # ASME B1.1: the section at the minor diameter is that of D - 1.299038 p, three halves of the height.
        self.root = self.d3 if name.startswith("M") else self.d - 3 / 2 * height
        # ISO 898-1: (d2 + d3)/2; ASME B1.1 prints D - 0.9743 p, the same to five digits.
        self.stress_diameter = (self.d2 + self.d3) / 2 if name.startswith("M") else self.d - 0.9743 * self.p

    def torque_per_load(self, mu):
        """Turning force on the mean helix that drives a block with friction up an inclined flank, from the balance of
        forces: normal force on a flank leaning 30 degrees in the axial section, friction along the helix."""
        helix = math.atan(self.p / (math.pi * self.d2))
        normal_axial = math.cos(math.radians(30))
        # Axial: N (cos30 cos f - mu sin f) = F; tangential: N (cos30 sin f + mu cos f) = T.
        axial = normal_axial * math.cos(helix) - mu * math.sin(helix)
        tangential = normal_axial * math.sin(helix) + mu * math.cos(helix)
        return self.d2 / 2 * tangential / axial


class Stud:
    """The drilled thread with its nut: face of the diameters outer and inner."""

    def __init__(self, thread, bore, outer, inner, prevailing=0.0):
        self.thread, self.bore = thread, bore
        self.face_arm = (outer + inner) / 4
        self.prevailing = prevailing
        self.area = integrate.quad(lambda r: 2 * math.pi * r, bore / 2, thread.stress_diameter / 2, epsrel=1e-13)[0]

    def torque(self, preload, mu_thread, mu_face):
        return preload * (self.thread.torque_per_load(mu_thread) + mu_face * self.face_arm) + self.prevailing

    def preload(self, torque, mu_thread, mu_face):
        if torque <= self.prevailing:
            return 0.0
        return optimize.brentq(lambda f: self.torque(f, mu_thread, mu_face) - torque, 0, 1e8, xtol=1e-9, rtol=1e-14)

    def thread_torque(self, preload, mu_thread):
        return preload * self.thread.torque_per_load(mu_thread) + self.prevailing

    def combined(self, preload, mu_thread, share=1.0):
        """Equivalent stress of the stress section in full plastic torsion (VDI 2230-1): one shear stress all over it."""
        per_shear = integrate.quad(lambda r: 2 * math.pi * r * r, self.bore / 2, self.thread.stress_diameter / 2, epsrel=1e-13)[0]
        shear = share * self.thread_torque(preload, mu_thread) / per_shear
        return math.sqrt((preload / self.area) ** 2 + 3 * shear**2)


class Joint:
    """Flange, member and nut: drilled shank, free thread and engaged threads, the member under two pressure cones
    (VDI 2230-1, memory). plain is the length of the shank within the grip."""

    def __init__(self, stud, shank, grip, plain, outside, face, hole, e_stud, e_member):
        self.stud, self.grip = stud, grip
        d, bore = stud.thread.d, stud.bore

        def section(diameter):
            return math.pi / 4 * (diameter**2 - bore**2)

        nominal = section(d)
        free = (grip - plain) / section(stud.thread.root)
        self.soft_stud = (plain / section(shank) + free + 0.5 * d / nominal + 0.5 * d / section(stud.thread.root)
                          + 0.4 * d / nominal) / e_stud
        tangent = 0.362 + 0.032 * math.log(grip / face / 2) + 0.153 * math.log(outside / face)

        def per_length(z):
            wide = min(face + 2 * z * tangent, outside)
            return 4 / (math.pi * (wide**2 - hole**2))

        edge = (outside - face) / (2 * tangent)
        points = [edge] if 0 < edge < grip / 2 else None
        self.soft_member = 2 * integrate.quad(per_length, 0, grip / 2, points=points, epsrel=1e-12)[0] / e_member

    @property
    def soft(self):
        return self.soft_stud + self.soft_member

    def settling_loss(self, rough, faces):
        thread, bearing = next((t, b) for below, t, b, _ in SETTLING if rough * 1e3 < below)
        return (thread + faces * bearing) * 1e-3 / self.soft

    def warming(self, alpha_stud, alpha_member, rise):
        """Preload gained when stud and member warm alike."""
        return self.grip * (alpha_member - alpha_stud) * rise / self.soft


def opening_force(load, arm, outer, inner):
    """Clamp force under which the pressure under a ring face just falls to 0 at one edge: greatest ratio of edge stresses."""
    area = math.pi / 4 * (outer**2 - inner**2)
    second = integrate.quad(lambda r: math.pi * r**3, inner / 2, outer / 2, epsrel=1e-13)[0]
    return load * arm * (outer / 2) / second * area


def stripping_load(thread, limits, engaged, flats, shear_stud, shear_nut):
    """ISO/TR 16224 (memory): the weaker of both threads at its limits of size, corrected by their ratio of strength and
    by the widening of a hexagon of the width across flats."""
    tan = math.tan(math.radians(30))
    turns = engaged / thread.p
    stud = math.pi * limits["D1"] * turns * (thread.p / 2 + (limits["d2"] - limits["D1"]) * tan) * shear_stud
    nut = math.pi * limits["d"] * turns * (thread.p / 2 + (limits["d"] - limits["D2"]) * tan) * shear_nut
    # Outside of the range of the fit its end holds.
    r = min(max(nut / stud, 0.4), 2.2)
    c1 = 3.8 * flats / thread.d - (flats / thread.d) ** 2 - 2.61
    c2 = 0.897 if r <= 1 else 5.594 - 13.682 * r + 14.107 * r**2 - 6.057 * r**3 + 0.9353 * r**4
    c3 = 0.897 if r >= 1 else 0.728 + 1.769 * r - 2.896 * r**2 + 1.296 * r**3
    return c1 * min(c2 * stud, c3 * nut)


def window(stud, needed, friction, tool, yields, makers=None, strip=None, gain=0.0):
    """Settings of the wrench from the least that gives the needed preload to the greatest that no limit forbids.

    Low: tool low, friction high. High: tool high; the friction of the face low, that of the thread at its worse end.
    """
    low, high = friction
    least = stud.torque(needed, high, high) / (1 - tool)

    def setting(limit_reached):
        settings = []
        for mu in (low, high):
            force = optimize.brentq(lambda f: limit_reached(f, mu), 1, 1e7, xtol=1e-8, rtol=1e-14)
            settings.append(stud.torque(force, mu, low))
        return min(settings) / (1 + tool)

    tops = {"tightening": setting(lambda f, mu: stud.combined(f, mu) - 0.9 * yields)}
    if gain > 0:
        # Half of the torsion is left in service (VDI 2230-1, memory).
        tops["service"] = setting(lambda f, mu: math.sqrt(((f + gain) / stud.area) ** 2
                                                          + 3 * (0.5 * _shear(stud, f, mu)) ** 2) - yields)
    if makers is not None:
        tops["maker"] = makers / (1 + tool)
    if strip is not None:
        tops["strips"] = stud.torque(strip, low, low) / (1 + tool)
    name = min(tops, key=tops.get)
    return least, tops[name], name


def _shear(stud, preload, mu):
    return math.sqrt(max(stud.combined(preload, mu) ** 2 - (preload / stud.area) ** 2, 0) / 3)

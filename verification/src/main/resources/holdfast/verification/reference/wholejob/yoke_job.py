"""A yoke roller on a pin in a fork: the joins that the sheet prints, from the parts beside this file."""

from .common import FLAT_TILT, LIFE, ROOT, SUM, Limits, Values, Work
from .own_tables import MATERIAL
from .seats import Fit, Joint, Seat
from .studs import Pin, rectangle_in_gap
from .units import quantity


class YokeJob:
    def __init__(self, job):
        self.job = job
        r, p, f = job["roller"], job["pin"], job["fork"]
        self.d, self.bore = quantity(r["bore"]), quantity(p["grease bore"])
        self.work = Work(r, self.d, job["duty"])
        self.width = quantity(r["width on the pin"])
        self.ear, self.gap = quantity(f["ear"]), quantity(f["gap"])
        self.hole = quantity(p["cross hole"])
        self.roller_fit = Fit(self.d, r["bore tolerance"], p["tolerance"])
        self.pin = Pin(self.d, self.bore, self.hole, self.work.load, self.gap, self.ear, self.width)

    def seat(self, bore):
        p, f = self.job["pin"], self.job["fork"]
        fit = Fit(self.d, bore, p["tolerance"])
        if fit.kind == "clearance":
            return fit, None
        return fit, Seat(fit, p["material"], self.bore, f["material"], quantity(f["outside"]), self.ear,
                         quantity(p["roughness"]), quantity(f["roughness"]), f["friction"])

    def greatest_clearance(self, fit, material):
        """In the shop or at work, whichever is looser: each part grows from its own size."""
        rise = self.work.temperature - 20
        hole, pin = MATERIAL[material][2], MATERIAL[self.job["pin"]["material"]][2]
        return max(fit.greatest_clearance, fit.limits("hole")[1] * (1 + hole * rise) - fit.limits("shaft")[0] * (1 + pin * rise))

    def lean(self, fit):
        """The pin in both ears, and the ring on the pin unless it is clamped: both the same way."""
        play = self.greatest_clearance(fit, self.job["fork"]["material"])
        pin = rectangle_in_gap(self.d, self.gap + 2 * self.ear, play)
        clamped = self.job["fork"].get("ring clamped", False)
        ring = 0.0 if clamped else rectangle_in_gap(self.d, self.width, self.greatest_clearance(self.roller_fit, "100Cr6"))
        return pin, ring

    def raceway_growth(self):
        """Growth of the raceway of the inner ring that the tightest pin presses outwards: pin and ring as two rings."""
        raceway = self.work.inside["dpw"] - self.work.inside["dwe"]
        joint = Joint("16MnCr5", self.bore, "16MnCr5", raceway, self.d)
        constants = joint.constants(-self.roller_fit.least_clearance)[2:]
        return 2 * float(joint.outer.displacement(raceway / 2) @ constants)

    def values(self):
        v = Values()
        fit, seat = self.seat(self.job["fork"]["bore"])
        for name, (low, high) in (("ear", fit.limits("hole")), ("pin", fit.limits("shaft")),
                                  ("roller-bore", self.roller_fit.limits("hole"))):
            v.add(f"{name}.lower-limit", low, "mm")
            v.add(f"{name}.upper-limit", high, "mm")
        v.band("ear-fit.clearance", (fit.least_clearance, fit.greatest_clearance), "mm")
        v.band("roller-fit.clearance", (self.roller_fit.least_clearance, self.roller_fit.greatest_clearance), "mm")
        if seat:
            self.press(v, seat)
        self.work.grease(v)
        kept = self.work.kept(sum(self.lean(fit)))
        self.work.lives(v, kept)
        self.limits(v, fit, seat, kept)
        pin, ring = self.lean(fit)
        v.add("tilt.pin", pin, "rad", ROOT)
        v.add("tilt.ring", ring, "rad", ROOT)
        v.add("tilt.total", pin + ring, "rad", ROOT)
        v.add("pin.bending", self.pin.bending_stress(), "MPa", ROOT)
        v.add("pin.shear", self.pin.shear_stress(), "MPa", ROOT)
        self.work.track(v)
        self.price(v, fit)
        return v.rows

    def ring_seat(self):
        """The inner ring on the pin where the tightest pair interferes: hardened bearing steel out to the raceway."""
        p = self.job["pin"]
        raceway = self.work.inside["dpw"] - self.work.inside["dwe"]
        return Seat(self.roller_fit, p["material"], self.bore, "100Cr6", raceway, self.width, quantity(p["roughness"]), 0.0,
                    self.job["fork"]["friction"])

    def press(self, v, seat):
        """At the end of the stroke the pin is tight in both ears and in the inner ring."""
        forces = [2 * force for force in seat.press_force()]
        if self.roller_fit.kind != "clearance":
            forces = [one + ring for one, ring in zip(forces, self.ring_seat().press_force())]
        v.band("press.force-at-the-end", forces, "N")
        v.band("press-each-ear.pressure", seat.pressures(), "MPa")
        v.band("press-each-ear.force", seat.press_force(), "N")
        v.add("press.pin.limit", seat.joint.limit("inner"), "MPa")
        v.add("press.pin.stress", seat.stress("inner"), "MPa")
        v.add("press.pin.safety", seat.safety("inner"), "1")
        v.add("press.ear.limit", seat.joint.limit("outer"), "MPa")
        v.add("press.ear.stress", seat.stress("outer"), "MPa")
        v.add("press.ear.safety", seat.safety("outer"), "1")
        v.add("press.heat", seat.heat(), "degC", ROOT)
        if "cold" in self.job["pin"]:
            v.add("press.heat-with-cold", seat.heat_with_cold(quantity(self.job["pin"]["cold"])), "degC")
        v.band("press.at-work.pressure", seat.pressures(self.work.temperature), "MPa")

    def limits(self, v, fit, seat, kept):
        limits = Limits(v)
        self.work.loads(limits, kept)
        bending, shear = self.pin.bending_stress(), self.pin.shear_stress()
        # Greatest of the fibre in bending and the middle of the section, where the shear of a ring or disk has its peak.
        yields = [MATERIAL[self.job[part]["material"]][3] for part in ("pin", "fork")]
        limits.at_most("pin, bending and shear", max(bending, 3**0.5 * shear), yields[0], "MPa", ROOT)
        limits.at_most("pressure of the pin in the ears", self.pin.ear_pressure(), yields[1], "MPa")
        if seat:
            limits.press_fit(seat, self.work.temperature, "pin", "ear")
        self.work.speed_and_temperature(limits)
        if self.roller_fit.least_clearance < 0 and self.work.inside:
            clearance = self.work.inside["clearance"]
            limits.at_most("internal clearance taken by the press fit", self.raceway_growth(), clearance, "mm")
        if not self.work.crown:
            limits.at_most("tilt of the roller", sum(self.lean(fit)), FLAT_TILT, "rad", ROOT)
        limits.governing()

    def price(self, v, fit):
        lean = sum(self.lean(fit))
        if self.work.inside:
            tilt, ratio = self.work.ratio(lean)
            v.add("price.lean", lean, "rad", ROOT)
            v.add("price.raceway-tilt", tilt, "rad", LIFE)
            v.add("price.life-ratio", ratio, "1", LIFE)
            self.work.curves(v)
        for bore in self.job["compared bores"]:
            option, seat = self.seat(bore)
            name = f"option.{bore}"
            v.band(f"{name}.clearance", (option.least_clearance, option.greatest_clearance), "mm")
            v.add(f"{name}.lean", self.lean(option)[0], "rad", ROOT)
            if self.work.inside:
                v.add(f"{name}.life-ratio", self.work.ratio(sum(self.lean(option)))[1], "1", LIFE)
            if seat:
                v.band(f"{name}.force", seat.press_force(), "N")
                v.add(f"{name}.ear-safety", seat.safety("outer"), "1")

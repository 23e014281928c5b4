"""A roller on a stud with a nut: the joins that the sheet prints, from the parts beside this file."""

import math

from . import nuts
from .common import FLAT_TILT, GRID, LIFE, ROOT, SUM, Limits, Values, Work
from .lives import Fleet
from .own_tables import MATERIAL, THREAD_LIMITS
from .seats import Fit, Seat
from .studs import Stud, rectangle_in_gap
from .units import quantity


class StudJob:
    def __init__(self, job):
        self.job = job
        r, m, n = job["roller"], job["member"], job["nut"]
        self.d, self.bore = quantity(r["stud"]), quantity(r["grease bore"])
        self.e, _, self.alpha, self.yields, self.tensile = MATERIAL[r["material"]]
        self.e_member, _, self.alpha_member = MATERIAL[m["material"]][:3]
        self.work = Work(r, self.d, job["duty"])
        self.gap, self.flange = quantity(r["gap"]), quantity(r["flange"])
        self.seat_length, self.outside = quantity(m["seat"]), quantity(m["outside"])
        self.rough = quantity(r["roughness"]), quantity(m.get("roughness", "0 mm"))
        self.thread = nuts.Thread(r["thread"])
        self.face = quantity(n["face"][0]), quantity(n["face"][1])
        self.nut = nuts.Stud(self.thread, self.bore, *self.face)
        self.mu, self.tool = n["friction"], n["tool"]
        self.setting = quantity(n["torque"])
        self.beam = Stud(self.e, self.d, self.bore, self.work.load, self.work.width, self.gap)
        self.lean = math.atan(quantity(m["run-out"]) / self.flange) if "run-out" in m else None

    def seat(self, bore):
        m, r = self.job["member"], self.job["roller"]
        fit = Fit(self.d, bore, r["stud tolerance"])
        if fit.kind == "clearance":
            return fit, None
        return fit, Seat(fit, r["material"], self.bore, m["material"], self.outside, self.seat_length, *self.rough, m["friction"])

    # Joins

    def through(self):
        """Torque through the stud: thread friction high, face friction low, tool high."""
        preload = self.nut.preload(self.setting * (1 + self.tool), self.mu[1], self.mu[0])
        return self.nut.thread_torque(preload, self.mu[1])

    def held_at_head(self, seat):
        return max(self.through() - (seat.torque_held() if seat else 0), 0)

    def greatest_clearance(self, fit):
        """In the shop or at work, whichever is looser: each part grows from its own size."""
        rise = self.work.temperature - 20
        bore, stud = fit.limits("hole")[1] * (1 + self.alpha_member * rise), fit.limits("shaft")[0] * (1 + self.alpha * rise)
        return max(fit.greatest_clearance, bore - stud)

    def tilt(self, fit):
        """Lean of the stud by clearance, by the clamped face (nut tight), and by bending under the load."""
        return rectangle_in_gap(self.d, self.seat_length, self.greatest_clearance(fit)), self.lean, self.beam.slope()

    def seat_lean(self, fit):
        """What the seat adds: the face where it is stated and the nut keeps it closed, else the clearance."""
        clearance, face, _ = self.tilt(fit)
        return face if face is not None and self.closed() else clearance

    def whole_lean(self, fit):
        """Greater of both leans: nut tight, or play used up."""
        clearance, face, bending = self.tilt(fit)
        return max(clearance, face or 0.0) + bending

    def joint(self):
        m, r, n = self.job["member"], self.job["roller"], self.job["nut"]
        grip = plain = self.seat_length
        if "thickness" in m and "shank" in r and "height" in n:
            grip = quantity(m["thickness"]) + quantity(n.get("washer", "0 mm"))
            plain = min(quantity(r["shank"]), grip)
        reach = self.face[0] + 2 * grip
        return nuts.Joint(self.nut, self.d, grip, plain, min(self.outside, reach), self.face[0], self.d, self.e, self.e_member)

    def gain(self):
        return self.joint().warming(self.alpha, self.alpha_member, self.work.temperature - 20)

    def closed_from(self):
        """Setting of the wrench from which the flange alone stays closed all round, settling made good by a second pull."""
        clamp = nuts.opening_force(self.work.load, self.work.width / 2 + self.gap, self.flange, self.d)
        needed = self.job["nut"]["reserve"] * clamp + max(-self.gain(), 0)
        return self.nut.torque(needed, self.mu[1], self.mu[1]) / (1 - self.tool)

    def closed(self):
        return self.setting >= self.closed_from()

    # Sections of the sheet

    def values(self):
        v = Values()
        fit, seat = self.seat(self.job["member"]["bore"])
        self.sizes(v, fit)
        if seat:
            self.press(v, seat)
        self.tighten(v, seat)
        self.work.grease(v)
        kept = self.work.kept(self.seat_lean(fit) + self.beam.slope())
        self.work.lives(v, kept)
        self.fleet(v, kept)
        self.limits(v, fit, seat, kept)
        self.leaning(v, fit)
        self.work.track(v)
        self.price(v, fit)
        return v.rows

    def sizes(self, v, fit):
        for part, name in (("hole", "bore"), ("shaft", "stud")):
            low, high = fit.limits(part)
            v.add(f"{name}.lower-limit", low, "mm")
            v.add(f"{name}.upper-limit", high, "mm")
            upper, lower = fit.hole if part == "hole" else fit.shaft
            v.add(f"{name}.upper-deviation", upper * 1e-3, "mm")
            v.add(f"{name}.lower-deviation", lower * 1e-3, "mm")
        v.band("fit.clearance", (fit.least_clearance, fit.greatest_clearance), "mm")

    def press(self, v, seat):
        v.band("press.pressure", seat.pressures(), "MPa")
        v.band("press.force", seat.press_force(), "N")
        v.add("press.stud.limit", seat.joint.limit("inner"), "MPa")
        v.add("press.stud.stress", seat.stress("inner"), "MPa")
        v.add("press.stud.safety", seat.safety("inner"), "1")
        v.add("press.member.limit", seat.joint.limit("outer"), "MPa")
        v.add("press.member.stress", seat.stress("outer"), "MPa")
        v.add("press.member.safety", seat.safety("outer"), "1")
        v.add("press.heat", seat.heat(), "degC", ROOT)
        v.band("press.at-work.pressure", seat.pressures(self.work.temperature), "MPa")
        if seat.lets_go() is not None:
            v.add("press.lets-go", seat.lets_go(), "degC", ROOT)

    def tighten(self, v, seat):
        low, high = self.mu
        least, most = self.setting * (1 - self.tool), self.setting * (1 + self.tool)
        gain = self.gain()
        # The bore carries load and moment; the preload outlasts settling of thread and two faces, and temperature.
        needed = self.joint().settling_loss(self.rough[1], 2) + max(-gain, 0)
        strip = None
        if "engaged" in self.job["nut"]:
            limits = THREAD_LIMITS[self.job["roller"]["thread"]]
            strip = nuts.stripping_load(self.thread, limits, quantity(self.job["nut"]["engaged"]), limits["flats"],
                                        self.tensile / math.sqrt(3), quantity(self.job["nut"]["shear strength"]))
            v.add("tighten.stripping-load", strip, "N")
        makers = quantity(self.job["roller"]["torque"]) if "torque" in self.job["roller"] else None
        lowest, highest, _ = nuts.window(self.nut, needed, self.mu, self.tool, self.yields, makers, strip, max(gain, 0))
        v.add("tighten.required-preload", needed, "N", ROOT)
        v.add("tighten.closed-from", self.closed_from(), "N mm", ROOT)
        v.add("tighten.window.lowest", lowest, "N mm", ROOT)
        v.add("tighten.window.highest", highest, "N mm", ROOT)
        v.add("tighten.setting", self.setting, "N mm")
        v.band("tighten.wrench", (least, most), "N mm")
        self.preload = self.nut.preload(most, low, low)
        v.add("tighten.preload.least", self.nut.preload(least, high, high), "N", ROOT)
        v.add("tighten.preload.greatest", self.preload, "N", ROOT)
        stress = self.nut.combined(self.preload, low)
        v.add("tighten.stress", stress, "MPa", ROOT)
        v.add("tighten.stress-of-yield", stress / self.yields, "1", ROOT)
        v.add("tighten.through-stud", self.through(), "N mm", ROOT)
        v.add("tighten.hold-at-head", self.held_at_head(seat), "N mm", ROOT)

    def forced_lean(self):
        """The play of the tightest pair takes some of the lean before the faces bend the stud."""
        fit, _ = self.seat(self.job["member"]["bore"])
        return max((self.lean or 0.0) - rectangle_in_gap(self.d, self.seat_length, fit.least_clearance), 0.0)

    def stud_stress(self, seat):
        pressure = max(seat.pressures()[1], seat.pressures(self.work.temperature)[1]) if seat else 0.0
        forced = self.forced_lean()
        return self.beam.equivalent(self.preload, self.through(), pressure, forced, self.seat_length)

    def limits(self, v, fit, seat, kept):
        limits = Limits(v)
        self.work.loads(limits, kept)
        limits.at_most("stud at the mouth of the seat", self.stud_stress(seat), self.yields, "MPa", SUM)
        if seat:
            limits.press_fit(seat, self.work.temperature, "stud", "member")
        forced = self.e * self.d * self.forced_lean() / (2 * self.seat_length)
        tension = self.beam.bending_stress() + forced + self.preload / self.beam.area
        v.add("stud.tension", tension, "MPa", ROOT)
        pressure = max(seat.pressures()[1], seat.pressures(self.work.temperature)[1]) if seat else 0.0
        v.add("stud.cross-hole-peak", 3 * tension + self.beam.pressed_hoop(pressure), "MPa", ROOT)
        v.add("stud.mouth-pressure", self.beam.mouth_pressure(self.seat_length), "MPa", ROOT)
        self.work.speed_and_temperature(limits)
        if not self.work.crown:
            limits.at_most("tilt of the roller", self.seat_lean(fit) + self.beam.slope(), FLAT_TILT, "rad", ROOT)
        limits.governing()

    def leaning(self, v, fit):
        clearance, face, bending = self.tilt(fit)
        v.add("tilt.by-clearance", clearance, "rad", ROOT)
        v.add("tilt.bending", bending, "rad", ROOT)
        if face is not None and self.closed():
            v.add("tilt.faces", face, "rad")
        v.add("tilt.total", self.seat_lean(fit) + bending, "rad", ROOT)
        v.add("tilt.if-loose", clearance + bending, "rad", ROOT)

    def price(self, v, fit):
        if self.work.inside:
            tilt, ratio = self.work.ratio(self.whole_lean(fit))
            v.add("price.lean", self.whole_lean(fit), "rad", ROOT)
            v.add("price.raceway-tilt", tilt, "rad", LIFE)
            v.add("price.life-ratio", ratio, "1", LIFE)
            if self.work.crown:
                # The ring takes the rest by rocking; the contact moves along its arc.
                rest = self.whole_lean(fit) - tilt
                v.add("price.ring-tilt", rest, "rad", LIFE)
                v.add("price.contact-shift", self.work.crown * math.sin(rest), "mm", LIFE)
            self.work.curves(v)
        for bore in self.job["compared bores"]:
            option, seat = self.seat(bore)
            name = f"option.{bore}"
            v.band(f"{name}.clearance", (option.least_clearance, option.greatest_clearance), "mm")
            v.add(f"{name}.lean", self.tilt(option)[0], "rad", ROOT)
            if self.work.inside:
                v.add(f"{name}.life-ratio", self.work.ratio(self.whole_lean(option))[1], "1", LIFE)
            if seat:
                v.band(f"{name}.force", seat.press_force(), "N")
                v.add(f"{name}.member-safety", seat.safety("outer"), "1")
            v.add(f"{name}.hold-at-head", self.held_at_head(seat), "N mm", ROOT)

    def fleet(self, v, kept):
        if "fleet" not in self.job:
            return
        f = self.job["fleet"]
        life = self.work.life
        fleet = Fleet(min(kept * life.hours(life.modified()), 1e5) / life.a1, f["hours in a year"], f["ages"])
        probability = f["probability"]
        together, each = fleet.together(probability), fleet.each(self.job["duty"]["reliability"] / 100)
        v.add("fleet.together.years", together, "a", ROOT)
        v.add("fleet.together.hours", together * f["hours in a year"], "h", ROOT)
        v.add("fleet.each.years", each, "a", ROOT)
        v.add("fleet.due-now", fleet.due(probability), "1")
        demand = fleet.renewed(probability).expected(f["delivery years"])
        stock, served = fleet.spares(demand, f["service level"])
        v.add("fleet.spares.demand", demand, "1", GRID)
        v.add("fleet.spares.stock", stock, "1")
        v.add("fleet.spares.served", served, "1", GRID)

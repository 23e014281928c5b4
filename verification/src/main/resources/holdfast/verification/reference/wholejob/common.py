"""What stud and yoke jobs have in common: life, limits of load, speed and temperature, grease, track."""

import math

import numpy as np

from . import greases, leans, tracks
from .lives import Duty
from .own_tables import MATERIAL, SPEED, TRACK_FACTOR
from .units import quantity

LEAST_LOAD = 0.0167  # of C0: rolling bearings catalogue C (published)
FLAT_TILT = 1e-3  # rad: cam follower catalogue F (published)

EXACT, ROOT, SUM = "closed form", "root search", "sum over points"
GRID, LIFE, PRINTED = "integral equation on a grid", "life of a tilted bearing", "compared as printed"


class Values:
    """Rows of the result: id, value, unit, how the value was found."""

    def __init__(self):
        self.rows = []

    def add(self, name, value, unit, how=EXACT):
        self.rows.append((name, float(value), unit, how))

    def band(self, name, values, unit, how=EXACT):
        for end, value in zip(("least", "greatest"), values):
            self.add(f"{name}.{end}", value, unit, how)


def inside(roller):
    if "inside" not in roller:
        return None
    i = roller["inside"]
    return dict(z=i["rollers"], dwe=quantity(i["diameter"]), lwe=quantity(i["length"]), dpw=quantity(i["pitch diameter"]),
                clearance=quantity(i["clearance"]))


class Work:
    """A roller under its duty."""

    def __init__(self, roller, seat_diameter, duty):
        self.roller, self.duty, self.seat_diameter = roller, duty, seat_diameter
        self.outside, self.width = quantity(roller["D"]), quantity(roller["B"])
        self.crown = quantity(roller["crown"]) if "crown" in roller else 0.0
        self.dynamic, self.static = quantity(roller["C"]), quantity(roller["C0"])
        self.inside = inside(roller)
        self.dpw = self.inside["dpw"] if self.inside else (seat_diameter + self.outside) / 2
        self.steps = [(quantity(s["load"]), quantity(s["speed"]), s.get("share", 1.0)) for s in duty["steps"]]
        self.load = max(p for p, *_ in self.steps)
        self.temperature = quantity(duty["temperature"])
        self.life = Duty(self.steps, self.dynamic, self.static, self.dpw, quantity(duty["viscosity"]), duty["contamination"],
                         duty["reliability"])
        self.wanted = quantity(duty["wanted life"])

    def on_track(self):
        """The same duty with the ratings that printed pairs leave of a rigid ring's on a flat track (catalogue 17000 EN,
        published: 0.672 to 0.873 of C with 0.605 to 0.871 of C0)."""
        for dynamic, static in ((0.672, 0.605), (0.873, 0.871)):
            yield Duty(self.steps, self.dynamic * dynamic, self.static * static, self.dpw, quantity(self.duty["viscosity"]),
                       self.duty["contamination"], self.duty["reliability"])

    def kept(self, lean):
        """What a lean leaves of the life; a lean gives none, and one whose roller is not known inside is not counted."""
        return min(1.0, self.ratio(lean)[1]) if self.inside else 1.0

    def counted(self):
        """How a time is found that counts the lean."""
        return LIFE if self.inside else ROOT

    def lives(self, v, kept):
        life = self.life
        v.add("life.mean-load", life.mean_load(), "N", ROOT)
        v.add("life.basic", life.basic(), "10^6", ROOT)
        v.add("life.basic.hours", life.hours(life.basic()), "h", ROOT)
        v.add("life.kappa", life.kappa(), "1")
        if len(self.steps) == 1:
            v.add("life.aiso", life.factor(self.load, life.speed), "1")
        v.add("life.modified", life.modified(), "10^6", ROOT)
        fatigue = life.hours(life.modified())
        # Wear, corrosion and seals end a roller before fatigue after 100 000 h (common practice).
        replace = min(kept * fatigue, 1e5)
        v.add("life.modified.hours", fatigue, "h", ROOT)
        if self.inside:
            v.add("life.lean-factor", kept, "1", LIFE)
        v.add("life.replace-after", replace, "h", self.counted())
        v.add("life.times-wanted", replace / self.wanted, "1", self.counted())
        v.add("life.modified.other-reading", life.hours(life.modified_by_annex_a()), "h", PRINTED)
        if self.roller.get("rating") == "rigid":
            v.band("life.bending-ring", [min(kept * other.hours(other.modified()), 1e5) for other in self.on_track()], "h",
                   self.counted())
        v.add("life.fatigue-limit", life.fatigue_limit, "N")

    def loads(self, limits, kept):
        roller, duty = self.roller, self.duty
        safety = duty["static safety"]
        limits.at_most("fatigue", self.life.mean_load(), self.life.greatest_basic(self.wanted / kept), "N", ROOT,
                       self.counted())
        limits.at_most("half of C", self.load, self.dynamic / 2, "N")
        limits.at_most("static", self.load, self.static / safety, "N")
        for name, key in (("outer ring, turning", "ring turning"), ("outer ring, standing", "ring standing"),
                          ("stud", "stud limit")):
            if key in roller:
                limits.at_most(name, self.load, quantity(roller[key]), "N")
        if "track capacity" in roller:
            table = TRACK_FACTOR["crowned" if self.crown else "flat"]
            # Between the printed rows the factor grows by equal ratios, as the strength behind it does.
            factor = math.exp(np.interp(duty["track hardness"], list(table), np.log(list(table.values()))))
            limits.at_most("track", self.load, quantity(roller["track capacity"]) * factor, "N")

    def speed_and_temperature(self, limits):
        fastest = max(n for _, n, _ in self.steps)
        speed = SPEED[self.roller["kind"]] / self.seat_diameter
        limits.at_most("speed", fastest, speed * (0.7 if self.roller.get("sealed") else 1), "rpm")
        limits.at_least("least load for rolling", min(p for p, *_ in self.steps), LEAST_LOAD * self.static, "N")
        limits.at_most("temperature, hot", self.temperature, quantity(self.roller["hottest"]), "degC")
        limits.at_least("temperature, cold", self.temperature, quantity(self.roller["coldest"]), "degC")

    def grease(self, v):
        duty = dict(temperature=self.temperature)
        duty.update({k: self.duty[k] for k in ("dirt", "moisture") if k in self.duty})
        if "vibration" in self.duty:
            duty["vibration"] = quantity(self.duty["vibration"])
        raceway = self.inside["dpw"] - self.inside["dwe"] if self.inside else self.seat_diameter
        before, after = greases.interval(
            duty, max(n for _, n, _ in self.steps), raceway, self.outside, self.roller["kind"].startswith("full"))
        once = greases.quantity(self.outside, self.width)
        v.add("grease.quantity", once, "g")
        v.band("grease.first-fill", self.first_fill(once), "g")
        v.add("grease.interval-before-factors", before, "h")
        v.add("grease.interval", after, "h")

    def first_fill(self, once):
        """A third to a half of the space between the raceways that the rollers leave (catalogue E, published), grease of
        0.9 g/cm3; where the inside is not known one regreasing is 50 % to 80 % of it (catalogue G, published)."""
        i = self.inside
        if not i:
            return once / 0.8, once / 0.5
        ring = math.pi / 4 * ((i["dpw"] + i["dwe"]) ** 2 - (i["dpw"] - i["dwe"]) ** 2) * self.width
        free = ring - i["z"] * math.pi / 4 * i["dwe"] ** 2 * i["lwe"]
        return free * 0.9e-3 / 3, free * 0.9e-3 / 2

    def track(self, v):
        if self.crown:
            long, _, peak, shear, depth = tracks.ellipse(self.load, self.outside / 2, self.crown)
            if 2 * long > self.width:
                line = tracks.line(self.load, self.outside / 2, self.width)
                peak = max(peak, line[0])
        else:
            peak, shear, depth = tracks.line(self.load, self.outside / 2, self.width)
        v.add("track.peak", peak, "MPa", ROOT)
        v.add("track.shear", shear, "MPa", SUM)
        v.add("track.shear-depth", depth, "mm", SUM)

    def load_of_price(self):
        return self.load if len(self.steps) == 1 else self.life.mean_load()

    def ratio(self, lean):
        """Tilt between the raceways and life ratio at a lean of the roller."""
        load = self.load_of_price()
        tilt = leans.raceways(self.inside, self.dynamic, load, self.crown, self.outside, lean)
        return tilt, leans.life_ratio(self.inside, self.dynamic, load, tilt)

    def curves(self, v):
        """Numbers of the picture: ratio at 1 and 2 mrad between the raceways for half, whole and double load."""
        for share in (0.5, 1, 2):
            for tilt in (1, 2):
                ratio = leans.life_ratio(self.inside, self.dynamic, share * self.load_of_price(), tilt * 1e-3)
                v.add(f"price.curve.{share:g}-load.{tilt}-mrad", ratio, "1", LIFE)


class Limits:
    def __init__(self, values):
        self.values, self.margins, self.found = values, {}, {}

    def at_most(self, name, demand, permitted, unit, how=EXACT, permitted_how=None):
        self.note(name, demand, permitted, permitted / demand, unit, how, permitted_how or how)

    def at_least(self, name, demand, permitted, unit, how=EXACT):
        self.note(name, demand, permitted, demand / permitted, unit, how, how)

    def note(self, name, demand, permitted, margin, unit, how, permitted_how):
        self.values.add(f"limit.{name}.demand", demand, unit, how)
        self.values.add(f"limit.{name}.permitted", permitted, unit, permitted_how)
        if unit != "degC":
            self.values.add(f"limit.{name}.margin", margin, "1", permitted_how)
            self.margins[name], self.found[name] = margin, permitted_how

    def press_fit(self, seat, temperature, inner, outer):
        """The greater pressure, in the shop or at work, against yield; half of its fracture for a part that breaks."""
        pressure = max(seat.pressures()[1], seat.pressures(temperature)[1])
        for side, name in (("inner", inner), ("outer", outer)):
            brittle = MATERIAL[seat.inner if side == "inner" else seat.outer][3] is None
            limit = seat.joint.limit(side) / (2 if brittle else 1)
            self.at_most(f"press fit, {name}" + (", half of its fracture" if brittle else " yields"), pressure, limit, "MPa")

    def governing(self):
        least = min(self.margins, key=self.margins.get)
        self.values.add("limit.governing.margin", self.margins[least], "1", LIFE if self.found[least] == LIFE else ROOT)

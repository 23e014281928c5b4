"""Grease at each greasing and the interval (rolling bearings catalogue C and relubrication interval guide: published; trade
factors: memory). Units: mm, rpm, degC, g, h."""

import math

from .own_tables import DIRT, MOISTURE, vibration


def quantity(outside, width):
    """Through the stud or a ring: 0.002 D B."""
    return 0.002 * outside * width


def interval(duty, speed, raceway, outside, full_complement):
    """Interval before and after the factors; the outer ring turns, so the speed counts on the pitch of both diameters."""
    outer_turns = speed * 2 * outside / (raceway + outside)
    before = 5 * (14e6 / (outer_turns * math.sqrt(raceway)) - 4 * raceway)
    factor = min(0.5 ** ((duty["temperature"] - 70) / 15), 2.0)
    if full_complement:
        factor *= 0.1
    if "dirt" in duty:
        factor *= DIRT[duty["dirt"]]
    if "moisture" in duty:
        factor *= MOISTURE[duty["moisture"]]
    if "vibration" in duty:
        factor *= vibration(duty["vibration"])
    return before, min(before * factor, 30000.0)

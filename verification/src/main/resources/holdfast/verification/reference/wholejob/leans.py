"""Life of a leaning roller: loads along each roller by integration, equilibrium by root search (tilted_bearing.py); a
crowned ring rocks on its track until its moment balances that of the bearing. The method is recalled (ISO/TS 16281)."""

import functools
import math

from scipy import optimize

import tilted_bearing

SEARCH, FULL = 4001, 32001


def bearing(inside, dynamic, load, stations):
    tilted_bearing.STATIONS = stations
    return tilted_bearing.Rollers(dict(
        z=inside["z"], dwe=inside["dwe"], lwe=inside["lwe"], dpw=inside["dpw"], s=inside["clearance"], profile="log", first=0,
        cr=dynamic, fr=load, inner="STATIONARY", outer="ROTATING"))


def raceways(inside, dynamic, load, crown, outside, whole):
    """Tilt between the raceways when the stud leans; a flat ring takes nothing.

    The middle of the crown lies R - D/2 beyond the axis of the ring; where the ring leans, the point of contact stands below
    it, so that the load turns the ring back with the arm (R - D/2) sin(ring).
    """
    if crown == 0 or whole == 0:
        return whole
    model, arm = bearing(inside, dynamic, load, SEARCH), crown - outside / 2

    def left(ring):
        tilt = model.solve(moment=(load * arm * math.sin(ring), 0.0))[1]
        return math.atan(tilt[0]) + ring - whole

    high = min(whole * (1 - 1e-9), inside["lwe"] / 3 / arm)
    return whole - optimize.brentq(left, 0.0, high, xtol=1e-10 * whole + 1e-14, rtol=1e-10)


def life_ratio(inside, dynamic, load, tilt):
    return _life(tuple(inside.items()), dynamic, load, tilt) / _life(tuple(inside.items()), dynamic, load, 0.0)


@functools.lru_cache(maxsize=None)
def _life(inside, dynamic, load, tilt):
    model = bearing(dict(inside), dynamic, load, FULL)
    return model.life(model.solve(tau=(math.tan(tilt), 0.0))[2])

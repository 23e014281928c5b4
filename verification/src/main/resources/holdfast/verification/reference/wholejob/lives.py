"""Rating life, lubrication and what follows for a fleet. Units: N, mm, rpm, h, mm2/s, 10^6 revolutions."""

import math

import numpy as np
from scipy import integrate, optimize, stats

from .own_tables import ANNEX_A, CONTAMINATION

SLOPE, SHARE = 1.5, 0.05  # ISO 281:2007, 9.2: exponent and free share behind Table 12
ROLLER = 10 / 3


def reliability_factor(percent):
    """The share of L10 that percent survive: the root of the survival below."""
    return optimize.brentq(lambda x: survival(x) - percent / 100, SHARE, 10, xtol=1e-15)


def survival(x):
    """Survival at x times L10: a Weibull law of exponent 1.5 above a twentieth of L10, 0.9 at L10 (behind Table 12)."""
    return 1.0 if x <= SHARE else math.exp(math.log(0.9) * ((x - SHARE) / (1 - SHARE)) ** SLOPE)


def reference_viscosity(n, dpw):
    return (45000 * n**-0.83 if n < 1000 else 4500 * n**-0.5) * dpw**-0.5


def modification(kappa, argument):
    """aISO of radial roller bearings, ISO 281:2007, equations for the three ranges of kappa (published)."""
    kappa = min(kappa, 4.0)
    a, b = (1.3993, 0.054381) if kappa < 0.4 else (1.2348, 0.19087) if kappa < 1 else (1.2348, 0.071739)
    bracket = 1 - (1.5859 - a / kappa**b) * min(argument, 5.0) ** 0.4
    return 50.0 if bracket <= 0 else min(50.0, 0.1 * bracket**-9.185)


class Duty:
    """Steps of load, speed and share of the time."""

    def __init__(self, steps, dynamic, static, dpw, viscosity, contamination, percent):
        self.steps, self.dynamic, self.dpw, self.viscosity = steps, dynamic, dpw, viscosity
        self.fatigue_limit = static / 8.2  # ISO 281:2007, B.3.3, Dpw up to 100 mm
        self.e_c = CONTAMINATION[contamination][0]
        self.annex = ANNEX_A[contamination]
        self.a1 = reliability_factor(percent)
        self.speed = sum(n * t for _, n, t in steps) / sum(t for *_, t in steps)

    def mean_load(self):
        """The constant load that uses up the basic life as fast as the steps do together."""
        def used(load, speed, share):
            return speed * share / (self.dynamic / load) ** ROLLER

        all_used = sum(used(*s) for s in self.steps)
        revolutions = sum(n * t for _, n, t in self.steps)
        return optimize.brentq(lambda p: revolutions / (self.dynamic / p) ** ROLLER - all_used, 1e-3, 1e9, xtol=1e-9, rtol=1e-14)

    def basic(self):
        return (self.dynamic / self.mean_load()) ** ROLLER

    def hours(self, life):
        return life * 1e6 / (60 * self.speed)

    def kappa(self, n=None):
        return self.viscosity / reference_viscosity(n or self.speed, self.dpw)

    def factor(self, load, n, e_c=None):
        return modification(self.kappa(n), (self.e_c if e_c is None else e_c) * self.fatigue_limit / load)

    def cleanness(self, n):
        """Contamination factor of a grease by the equations of Annex A."""
        a0, c = self.annex
        a = min(a0 * min(self.kappa(n), 4.0) ** 0.68 * self.dpw**0.55, 1.0)
        return max(a * (1 - c / self.dpw ** (1 / 3)), 0.0)

    def _summed(self, factor):
        """Damage of the steps summed over one unit of time: what uses it up, in revolutions."""
        damage = sum(n * t / (self.a1 * factor(p, n) * (self.dynamic / p) ** ROLLER) for p, n, t in self.steps)
        return sum(n * t for _, n, t in self.steps) / damage

    def modified(self):
        return self._summed(self.factor)

    def modified_by_annex_a(self):
        return self._summed(lambda p, n: self.factor(p, n, self.cleanness(n)))

    def greatest_basic(self, hours):
        """Load at which the basic life with the wanted reliability is the wanted one."""
        wanted = hours * 60 * self.speed / 1e6
        return optimize.brentq(lambda p: self.a1 * (self.dynamic / p) ** ROLLER - wanted, 1e-3, 1e9, xtol=1e-9, rtol=1e-14)


class Fleet:
    """Places of hours a year, each with a roller of some age; L10 in hours of the duty."""

    def __init__(self, l10, hours_per_year, ages):
        self.l10, self.hours, self.ages = l10, hours_per_year, ages

    def together(self, probability):
        """Years after which all places still run with a probability: the survivals multiply."""
        def all_run(years):
            return survival(self.hours * years / self.l10) ** len(self.ages) - probability
        return optimize.brentq(all_run, 0, 1e4, xtol=1e-12)

    def each(self, probability):
        return optimize.brentq(lambda y: survival(self.hours * y / self.l10) - probability, 1e-6, 1e4, xtol=1e-12)

    def due(self, probability):
        """Places whose roller is older than the interval of all."""
        return sum(age >= self.together(probability) * self.hours for age in self.ages)

    def renewed(self, probability):
        """The same fleet once the places that are due have new rollers."""
        interval = self.together(probability) * self.hours
        return Fleet(self.l10, self.hours, [0 if age >= interval else age for age in self.ages])

    def expected(self, years):
        """Failures of all places, replacements counted: renewals of the new ones by the integral equation, on a grid."""
        span = self.hours * years
        grid = np.linspace(0, span, 4001)
        failed = np.array([1 - survival(x / self.l10) for x in grid])
        renewals = np.zeros_like(grid)
        density = np.gradient(failed, grid)
        for i in range(1, grid.size):
            if failed[i] > 0:
                renewals[i] = failed[i] + integrate.trapezoid(renewals[: i + 1] * density[i::-1], grid[: i + 1])
        total = 0.0
        for age in self.ages:
            alive = survival(age / self.l10)
            first = np.array([1 - survival((age + x) / self.l10) / alive for x in grid])
            total += first[-1] + integrate.trapezoid(renewals[::-1] * np.gradient(first, grid), grid)
        return total

    @staticmethod
    def spares(mean, level):
        stock = 0
        while stats.poisson.cdf(stock, mean) < level:
            stock += 1
        return stock, float(stats.poisson.cdf(stock, mean))

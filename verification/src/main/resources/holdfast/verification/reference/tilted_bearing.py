"""Lives of tilted bearings from a general-purpose scientific library, apart from the code under test.

Usage: python3 tilted_bearing.py FILE      writes the cases with their values as CSV
       python3 tilted_bearing.py --time    time of one solve with 30 laminae, 14 rollers

How this differs from the code under test: loads along a roller are integrated by Simpson's rule over 32001 stations instead
of laminae; the equilibrium is found by a trust-region or hybrid root search with numerical derivatives instead of bracketed
Newton steps; all rollers are kept (no symmetry); balls use vectors between groove centres; elliptic integrals and roots are
the library's. The formulas themselves are the same recalled ones: this checks the mathematics, not the choice of formula.
Units: mm, N, N mm, rad, 10^6 revolutions.
"""

import csv
import math
import sys
import time

import numpy as np
import scipy
from scipy import integrate, optimize, special

STATIONS = 32001
E_PLANE = 207000 / (1 - 0.3**2)


def profile(kind, x, lwe, dwe):
    if kind == "flat":
        return np.zeros_like(x)
    if kind.startswith("r="):
        r = float(kind[2:])
        return r - np.sqrt(r * r - x * x)
    if lwe <= 2.5 * dwe:
        u, factor = np.abs(2 * x / lwe), 0.00035
    else:
        u, factor = np.maximum((2 * np.abs(x) - (lwe - 2.5 * dwe)) / (2.5 * dwe), 0), 0.0005
    with np.errstate(divide="ignore"):
        return factor * dwe * np.log(1 / (1 - u * u))


class Rollers:
    def __init__(self, c):
        self.c = c
        z = c["z"]
        phi = c["first"] + 2 * np.pi * np.arange(z) / z
        self.u = np.stack([np.cos(phi), np.sin(phi)])
        self.x = np.linspace(-c["lwe"] / 2, c["lwe"] / 2, STATIONS)
        self.drop = 2 * np.minimum(profile(c["profile"], self.x, c["lwe"], c["dwe"]), 1e3)
        self.stiff = 35948 * c["lwe"] ** (8 / 9) / c["lwe"]

    def loads(self, y, tau):
        d = (self.u[0] * y[0] + self.u[1] * y[1])[:, None] - self.c["s"] / 2
        d = d + (self.u[0] * tau[0] + self.u[1] * tau[1])[:, None] * self.x - self.drop
        return self.stiff * np.maximum(d, 0) ** (10 / 9)

    def resultant(self, q):
        force = integrate.simpson(q, x=self.x, axis=1)
        moment = integrate.simpson(q * self.x, x=self.x, axis=1)
        return self.u @ force, self.u @ moment

    def solve(self, tau=None, moment=None):
        c = self.c
        scale = c["lwe"] / 2

        def unbalanced(v):
            t = tau if tau is not None else v[2:] / scale
            f, m = self.resultant(self.loads(v[:2], t))
            rest = [f[0] - c["fr"], f[1]]
            if tau is None:
                rest += [(m[0] - moment[0]) / scale, (m[1] - moment[1]) / scale]
            return np.array(rest) / c["fr"]

        start = np.zeros(2 if tau is not None else 4)
        start[0] = c["s"] / 2 + (5 * c["fr"] / (c["z"] * self.stiff * c["lwe"])) ** 0.9
        found = optimize.least_squares(unbalanced, start, x_scale=np.full(start.size, 1e-3), xtol=1e-15, ftol=1e-15, gtol=1e-15)
        v = optimize.root(unbalanced, found.x, method="hybr", options={"xtol": 1e-13}).x
        best = min((found.x, v), key=lambda w: np.abs(unbalanced(w)).max())
        missed = np.abs(unbalanced(best)).max()
        if missed > 1e-7:
            raise ArithmeticError(f"no equilibrium: {missed} in {c}")
        t = tau if tau is not None else best[2:] / scale
        q = self.loads(best[:2], t)
        return best, t, q

    def life(self, q):
        """Weakest link over the continuous length: dL^-9/8 = (f q' L / Qc)^(9/2) dx / L."""
        c = self.c
        gamma = c["dwe"] / c["dpw"]
        ratio = 1.038 * ((1 - gamma) / (1 + gamma)) ** (143 / 108)
        qci = c["cr"] / (0.378 * c["z"]) * (1 + ratio**4.5) ** (2 / 9)
        qce = c["cr"] / (0.364 * c["z"]) * (1 + ratio**-4.5) ** (2 / 9)
        with np.errstate(divide="ignore"):
            f = 1 - 0.01 / np.log(1.985 * np.abs(self.x) / c["lwe"])
        total = 0
        for rating, rotates in ((qci, c["inner"] == "ROTATING"), (qce, c["outer"] == "ROTATING")):
            r = f * q * c["lwe"] / rating
            ring = np.mean(r**4, axis=0) ** (9 / 8) if rotates else np.mean(r**4.5, axis=0)
            total += integrate.simpson(ring, x=self.x) / c["lwe"]
        return total ** (-8 / 9)

    def greatest(self, q):
        return integrate.simpson(q, x=self.x, axis=1).max()


class Balls:
    def __init__(self, c):
        self.c = c
        z = c["z"]
        phi = c["first"] + 2 * np.pi * np.arange(z) / z
        self.u = np.stack([np.cos(phi), np.sin(phi)])
        dw, dpw, ri, re = c["dwe"], c["dpw"], c["ri"], c["re"]
        gamma = dw / dpw
        total = 0
        for sign, r in ((1, ri), (-1, re)):
            along, across = sign * gamma / (1 - sign * gamma), dw / (2 * r)
            rho = 2 / dw * (2 + along - across)
            fraction = (along + across) / (2 + along - across)

            def gap(chi):
                m = 1 - 1 / chi**2
                return 1 - 2 / (chi**2 - 1) * (special.ellipk(m) / special.ellipe(m) - 1) - fraction

            chi = optimize.brentq(gap, 1.001, 1e4, xtol=1e-14, rtol=1e-14)
            m = 1 - 1 / chi**2
            total += special.ellipk(m) * (rho / (chi**2 * special.ellipe(m))) ** (1 / 3)
        self.stiff = 1.48 * E_PLANE * total**-1.5
        self.a = ri + re - dw
        self.r = dpw / 2 + (ri - dw / 2) * min(1, 1 - c["s"] / (2 * self.a))

    def vectors(self, y, axial, tau):
        radial = self.a - self.c["s"] / 2 + self.u.T @ y
        return np.stack([radial, axial + self.r * (self.u.T @ tau)])

    def solve(self, tau=None, moment=None):
        c = self.c

        def parts(v):
            t = tau if tau is not None else v[3:] / self.r
            line = self.vectors(v[:2], v[2], np.asarray(t))
            length = np.hypot(*line)
            q = self.stiff * np.maximum(length - self.a, 0) ** 1.5
            return q, q * line / length

        def unbalanced(v):
            _, push = parts(v)
            rest = [*(self.u @ push[0]), push[1].sum()]
            want = [c["fr"], 0, c["fa"]]
            if tau is None:
                rest += [*(self.u @ push[1])]
                want += [moment[0] / self.r, moment[1] / self.r]
            return (np.array(rest) - want) / c["fr"]

        n = 3 if tau is not None else 5
        start = np.zeros(n)
        start[0] = c["s"] / 2 + (5 * c["fr"] / (c["z"] * self.stiff)) ** (2 / 3)
        found = optimize.least_squares(unbalanced, start, x_scale=np.full(n, 1e-3), xtol=1e-15, ftol=1e-15, gtol=1e-15)
        v = optimize.root(unbalanced, found.x, method="hybr", options={"xtol": 1e-13}).x
        best = min((found.x, v), key=lambda w: np.abs(unbalanced(w)).max())
        missed = np.abs(unbalanced(best)).max()
        if missed > 1e-7:
            raise ArithmeticError(f"no equilibrium: {missed} in {c}")
        return best, tau if tau is not None else best[3:] / self.r, parts(best)[0]

    def life(self, q):
        c = self.c
        gamma = c["dwe"] / c["dpw"]
        groove = c["ri"] * (2 * c["re"] - c["dwe"]) / (c["re"] * (2 * c["ri"] - c["dwe"]))
        ratio = 1.044 * ((1 - gamma) / (1 + gamma)) ** 1.72 * groove**0.41
        qci = c["cr"] / (0.407 * c["z"]) * (1 + ratio ** (10 / 3)) ** 0.3
        qce = c["cr"] / (0.389 * c["z"]) * (1 + ratio ** (-10 / 3)) ** 0.3
        total = 0
        for rating, rotates in ((qci, c["inner"] == "ROTATING"), (qce, c["outer"] == "ROTATING")):
            r = q / rating
            total += np.mean(r**3) ** (10 / 9) if rotates else np.mean(r ** (10 / 3))
        return total**-0.9

    def greatest(self, q):
        return q.max()


def cases():
    roller = dict(kind="roller", z=14, dwe=5, lwe=10, dpw=40, ri="", re="", cr=20000, s=0.02, first=0, profile="log",
                  inner="ROTATING", outer="STATIONARY", fr=4000, fa=0, tilt=0, across=0, moment="", moment_across="")
    needle = dict(roller, z=22, dwe=2.5, lwe=14, dpw=24, cr=14000, fr=2100, inner="STATIONARY", outer="ROTATING", s=0.025)
    ball = dict(roller, kind="ball", z=9, dwe=7.94, lwe="", dpw=38.5, ri=4.1288, re=4.1288, cr=14000, s=0.01, fr=2000, profile="")
    for tilt in (0.0002, 0.0005, 0.001, 0.002, 0.003, 0.005):
        yield dict(roller, tilt=tilt)
        yield dict(needle, tilt=tilt)
    for kind in ("flat", "r=2000", "r=500"):
        yield dict(roller, profile=kind, tilt=0.001)
        yield dict(roller, profile=kind, tilt=0.003)
    yield dict(roller, s=0, tilt=0.001)
    yield dict(roller, s=-0.01, tilt=0.001)
    yield dict(roller, fr=200, tilt=0.001, s=0.05)
    yield dict(roller, first=math.pi / 14, tilt=0.001)
    yield dict(roller, first=0.1, tilt=0.001)
    yield dict(roller, tilt=0.001, across=-0.0015)
    yield dict(roller, tilt=0, across=0.002)
    yield dict(roller, first=0.1, tilt=-0.002, across=0.001)
    yield dict(roller, moment=3000, moment_across=0)
    yield dict(roller, moment=3000, moment_across=-2000)
    yield dict(needle, moment=-4000, moment_across=1000)
    for tilt in (0.001, 0.003, 0.005, 0.008):
        yield dict(ball, tilt=tilt)
    yield dict(ball, fa=500, tilt=0)
    yield dict(ball, fa=500, tilt=0.002)
    yield dict(ball, fa=-700, tilt=0.002, across=0.003)
    yield dict(ball, first=0.2, s=0.03, tilt=0.004, inner="STATIONARY", outer="ROTATING")
    yield dict(ball, moment=4000, moment_across=0)
    yield dict(ball, fa=300, moment=4000, moment_across=2000)


def results():
    for c in cases():
        model = Balls(c) if c["kind"] == "ball" else Rollers(c)
        aligned = model.life(model.solve(tau=(0.0, 0.0))[2])
        if c["moment"] == "":
            y, t, q = model.solve(tau=(math.tan(c["tilt"]), math.tan(c["across"])))
        else:
            y, t, q = model.solve(moment=(c["moment"], c["moment_across"]))
        life = model.life(q)
        yield c, dict(life_ratio=life / aligned, life=life, displacement=y[0], greatest_load=model.greatest(q),
                      tilt_along=math.atan(t[0]), tilt_across=math.atan(t[1]))


def clock():
    """One solve and one life with 30 equal laminae, vectorised, root by Brent's method: the usual way in this language."""
    z, lwe, dwe = 14, 10.0, 5.0
    x = (np.arange(30) + 0.5) / 30 * lwe - lwe / 2
    drop = 2 * profile("log", x, lwe, dwe)
    cosine = np.cos(2 * np.pi * np.arange(z) / z)
    stiff = 35948 * lwe ** (8 / 9) / 30
    f = 1 - 0.01 / np.log(1.985 * np.abs(x) / lwe)

    def loads(y, tau):
        return stiff * np.maximum(cosine[:, None] * (y + tau * x) - 0.01 - drop, 0) ** (10 / 9)

    def one(load, tau):
        y = optimize.brentq(lambda v: cosine @ loads(v, tau).sum(axis=1) - load, 0, 0.5, xtol=1e-15, rtol=1e-13)
        r = f * loads(y, tau)
        return np.sum(np.mean(r**4, axis=0) ** (9 / 8) + np.mean(r**4.5, axis=0)) ** (-8 / 9)

    one(4000, 0.001)
    repeats = 300
    start = time.perf_counter()
    for i in range(repeats):
        one(4000 + i, 0.001)
    print(f"{(time.perf_counter() - start) / repeats * 1e6:.0f} microseconds a solve with life, "
          f"NumPy {np.__version__}, SciPy {scipy.__version__}, Python {sys.version.split()[0]}")


def main():
    if sys.argv[1] == "--time":
        clock()
        return
    rows = [dict(case=i + 1, **c, **{k: f"{v:.10g}" for k, v in r.items()},
                 source=f"SciPy {scipy.__version__}", locator="tilted_bearing.py", provenance="reference computation", disclosed="")
            for i, (c, r) in enumerate(results())]
    with open(sys.argv[1], "w", newline="", encoding="utf-8") as file:
        writer = csv.DictWriter(file, rows[0].keys(), lineterminator="\n")
        writer.writeheader()
        writer.writerows(rows)
    print(f"{len(rows)} cases, NumPy {np.__version__}, SciPy {scipy.__version__}")


if __name__ == "__main__":
    main()

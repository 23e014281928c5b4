"""Reference values for the contact and stud checks, from general-purpose libraries.

Usage: python3 contact_reference.py DIRECTORY
Writes one CSV file a check into DIRECTORY. Nothing here uses the formulas of the library under test:
- complete elliptic integrals: mpmath (40 digits) and SciPy (double precision);
- contact ellipse: mpmath root of the curvature ratio written with K(m) and E(m);
- stress on the axis: direct summation of the point-load solution of the half-space over the loaded ellipse (NumPy);
- largest shear and equivalent stress on the axis: mpmath, printed solution with incomplete elliptic integrals;
- largest orthogonal shear: SciPy search over depth and distance, gradient of the ellipsoidal potential;
- line contact approach: mpmath quadrature of the axial strain;
- stud in an elastic seat: mpmath solution of the beam equation from its four boundary conditions;
- curvatures of the gap: NumPy eigenvalues of the summed curvature matrices;
- sections and stresses of studs: SciPy quadrature over the section, stress tensors and root search.
"""

import csv
import os
import sys

import mpmath as mp
import numpy as np
import scipy
import scipy.integrate
import scipy.optimize
import scipy.special

mp.mp.dps = 40
OUT = sys.argv[1]
MPMATH = "mpmath " + mp.__version__
SCIPY = "SciPy " + scipy.__version__
NUMPY = "NumPy " + np.__version__


def text(x, digits=17):
    return mp.nstr(mp.mpf(x), digits, min_fixed=-30, max_fixed=30)


def write(name, header, rows, software, locator):
    path = os.path.join(OUT, name + ".csv")
    with open(path, "w", newline="", encoding="utf-8") as f:
        w = csv.writer(f, lineterminator="\n")
        w.writerow(header + ["source", "locator", "provenance", "disclosed"])
        for row in rows:
            source = row.pop() if software is None else software
            w.writerow(row + [source, locator, "reference computation", ""])


def elliptic_integrals():
    rows = []
    for kc in ["1", "0.999999", "0.99", "0.9", "0.8", "0.7", "0.6", "0.5", "0.4", "0.3", "0.2", "0.1", "0.05", "0.02",
               "0.01", "0.001", "0.0001", "0.000001", "0.00000001"]:
        x = float(kc)
        exact = mp.mpf(x)
        rows.append(["K", kc, text(mp.ellipk(1 - exact ** 2)), MPMATH])
        rows.append(["E", kc, text(mp.ellipe(1 - exact ** 2)), MPMATH])
        rows.append(["K", kc, text(float(scipy.special.ellipkm1(x * x))), SCIPY])
        if x >= 0.01:
            rows.append(["E", kc, text(float(scipy.special.ellipe((1 - x) * (1 + x)))), SCIPY])
    write("elliptic-integrals", ["integral", "complementary_modulus", "value"], rows, None,
          "complete elliptic integral of complementary modulus k'")


def ellipse(ratio):
    """k = b/a, m, n, lambda of the contact ellipse whose curvature ratio is B/A."""
    if ratio == 1:
        k = mp.mpf(1)
    else:
        def f(x):
            k = mp.exp(x)
            m = 1 - k * k
            K, E = mp.ellipk(m), mp.ellipe(m)
            return mp.log((E / k ** 2 - K) / (K - E)) - mp.log(ratio)
        k = mp.exp(mp.findroot(f, (-mp.log(ratio) * mp.mpf(2) / 3, -mp.log(ratio) / 2), solver="anderson", tol=1e-60,
                               maxsteps=200))
    K, E = mp.ellipk(1 - k * k), mp.ellipe(1 - k * k)
    m = mp.cbrt(2 * E / (mp.pi * k * k))
    n = mp.cbrt(2 * E * k / mp.pi)
    return k, m, n, 3 * K / (2 * mp.pi * m)


def ellipses():
    # The last group are the curvature ratios of the printed coefficient tables, from cos(theta).
    ratios = ["1", "1.0000001", "1.001", "1.01", "1.1", "1.333333333333333", "1.5", "2", "3", "5", "7", "10", "20", "50",
              "100", "200", "500", "1000", "10000", "1000000", "100000000"]
    cosines = [0.9396926, 0.8660254, 0.819152, 0.7660444, 0.7071068, 0.5735764, 0.5, 0.3420201, 0.1736482, 0.08715574, 0.1,
               0.3, 0.4, 0.7, 0.75, 0.8, 0.85, 0.9, 0.92, 0.96, 0.99, 0.1428571, 0.3333333, 0.6666667, 0.9047619,
               0.9607843, 0.980198, 0.9900498, 0.996008]
    ratios += [repr((1 + c) / (1 - c)) for c in cosines]
    rows, seen = [], set()
    for ratio in ratios:
        if float(ratio) in seen:
            continue
        seen.add(float(ratio))
        k, m, n, lam = ellipse(mp.mpf(float(ratio)))
        for name, value in (("b/a", k), ("m", m), ("n", n), ("lambda", lam)):
            rows.append([ratio, name, text(value)])
    write("contact-ellipse", ["curvature_ratio", "quantity", "value"], rows, MPMATH,
          "root of the curvature ratio with ellipk and ellipe, 40 digits")


def summed_axis_stress(a, b, nu, z, radial, angular):
    """Stress under the centre for unit peak pressure, by summing the point-load solution."""
    x, w = np.polynomial.legendre.leggauss(radial)
    psi = (x + 1) * np.pi / 4
    w = w * np.pi / 4
    phi = (np.arange(angular) + 0.5) * 2 * np.pi / angular
    s, c = np.sin(psi)[:, None], np.cos(psi)[:, None]
    X, Y = a * s * np.cos(phi), b * s * np.sin(phi)
    force = a * b * s * c * c * w[:, None] * (2 * np.pi / angular) / (2 * np.pi)
    r2 = X * X + Y * Y
    rho = np.sqrt(r2 + z * z)
    first = 1 / (rho * (rho + z))  # (1 - z/rho)/r^2
    sx = (1 - 2 * nu) * (first * (X * X - Y * Y) / r2 + z * Y * Y / (r2 * rho ** 3)) - 3 * z * X * X / rho ** 5
    sy = (1 - 2 * nu) * (first * (Y * Y - X * X) / r2 + z * X * X / (r2 * rho ** 3)) - 3 * z * Y * Y / rho ** 5
    sz = -3 * z ** 3 / rho ** 5
    return [float(np.sum(force * v)) for v in (sx, sy, sz)]


def axis_stress():
    rows = []
    for k in (1.0, 0.8, 0.5, 0.2, 0.05):
        for nu in (0.3, 0.25, 0.0):
            for z in (0.25, 0.5, 1.0, 2.5):
                coarse = summed_axis_stress(1 / k, 1, nu, z, 300, 1500)
                fine = summed_axis_stress(1 / k, 1, nu, z, 450, 2400)
                assert max(abs(p - q) for p, q in zip(coarse, fine)) < 1e-12, (k, nu, z)
                for name, value in zip(("sigma_x/p0", "sigma_y/p0", "sigma_z/p0"), fine):
                    rows.append([repr(k), repr(nu), repr(z), name, text(value, 14)])
    write("axis-stress", ["axis_ratio", "poisson", "depth_over_b", "quantity", "value"], rows, NUMPY,
          "sum of the point-load solution over the loaded ellipse, 450 x 2400 points")


def printed_axis_stress(k, nu, z):
    """The printed solution with incomplete elliptic integrals (x along the major axis, b = 1, p0 = 1)."""
    a, b = 1 / mp.mpf(k), mp.mpf(1)
    e2 = 1 - k * k
    zeta = z / a
    T = mp.sqrt((b * b + z * z) / (a * a + z * z))
    phi = mp.acot(zeta)
    F, E = mp.ellipf(phi, e2), mp.ellipe(phi, e2)
    q = (a / b) ** 2
    ox = -(1 - T) / 2 + zeta * (F - E)
    oxp = 1 - q * T + zeta * (q * E - F)
    oy = mp.mpf(1) / 2 + 1 / (2 * T) - T * q + zeta * (q * E - F)
    oyp = -1 + T + zeta * (F - E)
    factor = 2 * b / (e2 * a)
    return factor * (ox + nu * oxp), factor * (oy + nu * oyp), -b / (e2 * a) * (1 - T * T) / T


def maxima():
    rows = []
    for k in ("0.9", "0.8", "0.6", "0.4", "0.2", "0.1", "0.01"):
        for nu in ("0.3", "0.25"):
            kk, nn = mp.mpf(float(k)), mp.mpf(float(nu))

            def shear(z):
                sx, sy, sz = printed_axis_stress(kk, nn, z)
                return (max(sx, sy, sz) - min(sx, sy, sz)) / 2

            def equivalent(z):
                sx, sy, sz = printed_axis_stress(kk, nn, z)
                return mp.sqrt(((sx - sy) ** 2 + (sy - sz) ** 2 + (sz - sx) ** 2) / 2)
            for name, f in (("shear", shear), ("von Mises", equivalent)):
                grid = [mp.mpf(i) / 50 for i in range(5, 100)]
                best = max(grid, key=f)
                z = mp.findroot(lambda t: mp.diff(f, t), (best - mp.mpf("0.02"), best + mp.mpf("0.02")), solver="anderson",
                                tol=1e-30)
                rows.append([k, nu, name, "stress/p0", text(f(z))])
                rows.append([k, nu, name, "depth/b", text(z)])
    write("axis-maxima", ["axis_ratio", "poisson", "criterion", "quantity", "value"], rows, MPMATH,
          "largest value on the axis of the solution with ellipf and ellipe")


def orthogonal_shear():
    rows = []
    for k in (1.0, 0.8, 0.5, 0.2, 0.05):
        a, b = 1 / k, 1.0

        def tau(v):
            y, z = v
            p = b * b - y * y - z * z
            lam = (-p + np.sqrt(p * p + 4 * b * b * z * z)) / 2  # y^2/(b^2+lam) + z^2/lam = 1
            dlam = (2 * z / lam) / (y * y / (b * b + lam) ** 2 + z * z / lam ** 2)
            return -abs(a * b / 2 * z * y * dlam / ((b * b + lam) * np.sqrt((a * a + lam) * (b * b + lam) * lam)))
        best = scipy.optimize.minimize(tau, [0.85, 0.45], method="Nelder-Mead",
                                       options={"xatol": 1e-11, "fatol": 1e-16, "maxiter": 20000})
        rows.append([repr(k), "stress/p0", text(-best.fun, 12)])
        rows.append([repr(k), "depth/b", text(best.x[1], 7)])
    write("orthogonal-shear", ["axis_ratio", "quantity", "value"], rows, SCIPY,
          "Nelder-Mead search of the shear stress parallel to the surface in the plane of the minor axis")


def line_approach():
    rows = []
    for depth in ("0.5", "1", "3", "10", "100"):
        for nu in ("0.3", "0.25"):
            n, d = mp.mpf(float(nu)), mp.mpf(float(depth))

            def minus_strain(z):  # b = 1, p0 = 1, E = 1, plane strain
                s = mp.sqrt(1 + z * z)
                sz, sy = -1 / s, -((1 + 2 * z * z) / s - 2 * z)
                return -((1 - n * n) * sz - n * (1 + n) * sy)
            rows.append(["half-space", depth, nu, text(mp.quad(minus_strain, [0, d / 4, d]))])
    for radius in ("5", "20", "200"):
        n, R = mp.mpf("0.3"), mp.mpf(radius)
        n = mp.mpf(0.3)

        def minus_strain_in_cylinder(z):  # line load P = pi p0 b / 2
            s = mp.sqrt(1 + z * z)
            extra = (1 / R) / 2
            sz = -1 / s + extra - 1 / (2 * R - z)
            sy = -((1 + 2 * z * z) / s - 2 * z) + extra
            return -((1 - n * n) * sz - n * (1 + n) * sy)
        rows.append(["cylinder", radius, "0.3", text(mp.quad(minus_strain_in_cylinder, [0, 1, 3, R]))])
    write("line-approach", ["body", "reach_over_b", "poisson", "value"], rows, MPMATH,
          "quadrature of the axial strain from the surface, times E/(p0*b)")


def seat():
    rows = []
    for case, (d, L, a, c, E) in enumerate([(16, 20, 15, 100000, 206000), (16, 60, 15, 100000, 206000), (10, 12, 9, 5000, 206000),
                                            (30, 45, 20, 70000, 206000), (8, 4, 8, 100, 206000), (20, 200, 18, 200000, 206000)]):
        F = mp.mpf(1000)
        EI = mp.mpf(E) * mp.pi * mp.mpf(d) ** 4 / 64
        lam = mp.root(c / (4 * EI), 4)
        shapes = [lambda x, p=p, q=q: mp.exp(p * lam * x) * q(lam * x) for p in (-1, 1) for q in (mp.cos, mp.sin)]
        with mp.workdps(80):
            def row(order, x):
                return [mp.diff(f, x, order) for f in shapes]
            matrix = mp.matrix([row(2, mp.mpf(0)), row(3, mp.mpf(0)), row(2, mp.mpf(L)), row(3, mp.mpf(L))])
            rhs = mp.matrix([F * a / EI, F / EI, 0, 0])
            coefficients = mp.lu_solve(matrix, rhs)
            y = sum(v * f(mp.mpf(0)) for v, f in zip(coefficients, shapes))
            slope = -sum(v * g for v, g in zip(coefficients, row(1, mp.mpf(0))))
        for name, value in (("deflection mm", y), ("slope rad", slope)):
            rows.append([str(case + 1), str(d), str(L), str(a), str(c), str(E), "1000", name, text(value, 15)])
    write("stud-seat", ["case", "diameter", "engaged_length", "arm", "foundation_modulus", "modulus", "force", "quantity", "value"],
          rows, MPMATH, "beam equation EI y'''' + c y = 0 with its four boundary conditions")


def geometry():
    rows = []
    for c1, c1t, c2, c2t, angle in [(1 / 60, 1 / 130, 1 / 80, 1 / 200, 60), (0.1, 0.002, 0, 0, 0), (0.1, 0.002, -0.02, 0, 0),
                                    (0.05, 0.001, 0.03, -0.0005, 30), (0.1, 0, 0.1, 0, 90), (0.1, 0, 0.07, 0, 45),
                                    (0.2, 0.2, -0.19, 0.05, 0), (0.08, 0.004, 0, 0.0125, 2)]:
        t = np.deg2rad(angle)
        turn = np.array([[np.cos(t), -np.sin(t)], [np.sin(t), np.cos(t)]])
        low, high = np.linalg.eigvalsh((np.diag([c1, c1t]) + turn @ np.diag([c2, c2t]) @ turn.T) / 2)
        for name, value in (("lesser", low), ("greater", high)):
            rows.append([repr(float(v)) for v in (c1, c1t, c2, c2t)] + [str(angle), name, text(float(value), 16)])
    write("contact-geometry", ["c1", "c1t", "c2", "c2t", "angle", "quantity", "value"], rows, NUMPY,
          "eigvalsh of half the summed curvature matrices")


def sections():
    rows = []
    quad = lambda f, a, b: scipy.integrate.quad(f, a, b, epsabs=1e-13, epsrel=1e-13, limit=400)[0]
    for d, bore in ((16, 0), (16, 4), (24, 8), (10, 9)):
        R, r = d / 2, bore / 2
        area = quad(lambda s: 2 * np.pi * s, r, R)
        inertia = quad(lambda s: np.pi * s ** 3, r, R)
        # First moment of the half section above the neutral axis over inertia and width there, for F = A.
        first = quad(lambda s: 2 * s * s, r, R)
        rows.append([str(d), str(bore), "0", "area", text(area, 15)])
        rows.append([str(d), str(bore), "0", "section modulus", text(inertia / R, 15)])
        rows.append([str(d), str(bore), "0", "shear peak", text(first * area / (inertia * 2 * (R - r)), 15)])
        for p in (0, 60, 150):
            # Lame by the displacement u = c1 s + c2/s, from the two boundary pressures.
            if r > 0:
                m = np.array([[1, -1 / R ** 2], [1, -1 / r ** 2]])
                c = np.linalg.solve(m, [-p, 0])
            else:
                c = [-p, 0]
            radial, hoop = c[0] - c[1] / R ** 2, c[0] + c[1] / R ** 2
            dev = np.diag([220, radial, hoop]) - np.eye(3) * (220 + radial + hoop) / 3
            rows.append([str(d), str(bore), str(p), "pressed mouth", text(float(np.sqrt(1.5 * np.sum(dev * dev))), 15)])
    write("stud-sections", ["diameter", "bore", "pressure", "quantity", "value"], rows, SCIPY,
          "quadrature over the section; Lame stresses from their boundary conditions; tension 220 MPa in the tensor")


def fatigue():
    rows = []
    lines = {"Goodman": lambda n, a, m: n * a / 320 + n * m / 950 - 1, "Soderberg": lambda n, a, m: n * a / 320 + n * m / 700 - 1,
             "Gerber": lambda n, a, m: n * a / 320 + (n * m / 950) ** 2 - 1}
    for a, m in ((100, 0), (100, 150), (50, 400), (200, 30)):
        for name, line in lines.items():
            n = scipy.optimize.brentq(lambda x: line(x, a, m), 1e-6, 1e3, xtol=1e-15, rtol=1e-15)
            rows.append([name, str(a), str(m), text(n, 15)])
    write("stud-fatigue", ["criterion", "amplitude", "mean", "value"], rows, SCIPY,
          "brentq on the limit line: endurance 320, yield 700, tensile 950 MPa")


for job in (geometry, sections, fatigue, elliptic_integrals, ellipses, axis_stress, maxima, orthogonal_shear, line_approach, seat):
    job()
    print("done:", job.__name__)

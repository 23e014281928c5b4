#!/usr/bin/env python3
"""Interference fit with a housing that yields: a one-dimensional finite-element solution for comparison.

Plane stress, axisymmetric, quadratic elements on a radial grid; the housing is elastic and perfectly plastic with the
yield condition sigma_theta - sigma_r = k and the associated flow, integrated in steps by return mapping. The elastic stud
enters as a spring at the bore, p = (U/2 - u)/(b K_I). The closed form of the library is not used.

usage: plastic_ring.py      writes plastic-rings.csv; needs NumPy and SciPy
"""
import csv
import math

import numpy as np
import scipy
from scipy.sparse import coo_matrix
from scipy.sparse.linalg import spsolve

# joint D, stud hole, outside, E_I, nu_I, E_A, nu_A, k, diametral interference U
CASES = [
    (30, 0, 60, 210000, 0.3, 210000, 0.3, 300, 0.045),
    (30, 0, 60, 210000, 0.3, 210000, 0.3, 300, 0.070),
    (30, 0, 60, 210000, 0.3, 210000, 0.3, 300, 0.110),
    (30, 6, 60, 210000, 0.3, 69000, 0.33, 260, 0.130),
    (30, 6, 60, 210000, 0.3, 69000, 0.33, 260, 0.240),
    (20, 8, 50, 210000, 0.3, 169000, 0.275, 250, 0.040),
    (20, 8, 50, 210000, 0.3, 169000, 0.275, 250, 0.060),
    (12, 0, 60, 210000, 0.3, 100000, 0.34, 200, 0.035),
    (12, 0, 60, 210000, 0.3, 100000, 0.34, 200, 0.055),
    (40, 20, 56, 210000, 0.3, 206000, 0.3, 350, 0.110),
    (40, 20, 56, 210000, 0.3, 206000, 0.3, 350, 0.125),
    (16, 4, 80, 210000, 0.3, 72000, 0.33, 300, 0.100),
]


def solve(D, hole, outside, Ei, ni, Ea, na, k, U, cells=200, steps=40):
    b, c, q = D / 2, outside / 2, hole / D
    Ki = ((1 + q * q) / (1 - q * q) - ni) / Ei
    r = b * (c / b) ** (np.arange(2 * cells + 1) / (2 * cells))
    gauss = [(-math.sqrt(0.6), 5 / 9), (0.0, 8 / 9), (math.sqrt(0.6), 5 / 9)]
    C = Ea / (1 - na * na) * np.array([[1, na], [na, 1]])
    flow = np.array([-1.0, 1.0])
    n = len(r)
    u = np.zeros(n)
    points = []
    for e in range(cells):
        ids = np.array([2 * e, 2 * e + 1, 2 * e + 2])
        for x, w in gauss:
            N = np.array([x * (x - 1) / 2, 1 - x * x, x * (x + 1) / 2])
            dN = np.array([x - 0.5, -2 * x, x + 0.5])
            J = dN @ r[ids]
            R = N @ r[ids]
            points.append((ids, np.array([dN / J, N / R]), w * J * R, R))
    plastic = [np.zeros(2) for _ in points]
    stress = [np.zeros(2) for _ in points]
    for step in range(1, steps + 1):
        target = U * step / steps
        for _ in range(60):
            rows, cols, vals = [], [], []
            force = np.zeros(n)
            new_plastic = []
            for g, (ids, B, w, _) in enumerate(points):
                s = C @ (B @ u[ids] - plastic[g])
                f = s[1] - s[0] - k
                tangent, ep = C, plastic[g]
                if f > 0:
                    cf = C @ flow
                    h = flow @ cf
                    s = s - cf * (f / h)
                    ep = plastic[g] + flow * (f / h)
                    tangent = C - np.outer(cf, cf) / h
                new_plastic.append(ep)
                stress[g] = s
                force[ids] += w * (B.T @ s)
                m = w * (B.T @ tangent @ B)
                for i in range(3):
                    for j in range(3):
                        rows.append(ids[i])
                        cols.append(ids[j])
                        vals.append(m[i, j])
            p = (target / 2 - u[0]) / (b * Ki)
            force[0] -= p * b
            rows.append(0)
            cols.append(0)
            vals.append(1 / Ki)
            du = spsolve(coo_matrix((vals, (rows, cols)), shape=(n, n)).tocsc(), -force)
            u = u + du
            if np.max(np.abs(du)) < 1e-13 * b:
                break
        else:
            raise RuntimeError("no convergence")
        plastic = new_plastic
    p = (U / 2 - u[0]) / (b * Ki)
    yielding = [R for g, (_, _, _, R) in enumerate(points) if plastic[g][1] > 1e-12]
    edge = max(yielding) if yielding else b
    # The front lies between the last yielding point and the next one.
    beyond = min((R for _, _, _, R in points if R > edge), default=c)
    return p, edge / b, beyond / b, min(s[1] for s in stress)


if __name__ == "__main__":
    with open("plastic-rings.csv", "w", newline="") as f:
        w = csv.writer(f, lineterminator="\n")
        w.writerow("joint,hole,outside,inner_modulus,inner_poisson,outer_modulus,outer_poisson,yield_difference,"
                   "interference,pressure,front_least,front_greatest".split(","))
        for case in CASES:
            p, low, high, least = solve(*case)
            w.writerow(list(case) + ["%.4f" % p, "%.6f" % low, "%.6f" % high])
            print(case, "p %.4f zeta %.5f..%.5f least hoop %.1f" % (p, low, high, least))
    print("NumPy", np.__version__, "SciPy", scipy.__version__)

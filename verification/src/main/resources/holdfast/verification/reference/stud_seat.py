#!/usr/bin/env python3
"""Slope of a stud in an elastic seat: a solid of revolution under a load that varies with the cosine of the angle (first
harmonic), finite elements of second order (nine nodes), sparse direct solver. NumPy 2.4.6, SciPy 1.17.1.

    python3 stud_seat.py table      the table of the library, on standard output
    python3 stud_seat.py check      geometries between the nodes of the table (drawn with a fixed seed)
    python3 stud_seat.py mesh       three meshes of four geometries
    python3 stud_seat.py held       the same seat with other flanges and another Poisson's ratio
    python3 stud_seat.py example    the bundled metric job: slope in the middle of the roller

Model. A stud (diameter d = 1, bore di) sits over the length L in a ring of outside diameter D whose outside is held; it ends
with the seat. It carries a flange of 1.4 d, 0.05 d thick, on the face of the ring, and stands out by 1.5 d, where a moment M is
put on as bending stress. From the mean slope and mean shift of that end the beam is subtracted; what is left is the slope and
shift of the mouth, which are those of a moment M and, by reciprocity, of a force F in the plane of the mouth:

    slope = M cM/(E d^3) + F cF/(E d^2)        E of the stud

States of the bore: bonded (friction holds everything) or frictionless (it presses and pulls without shear, as an interference fit
does while its pressure lasts), or open (no contact: play). States of the flange: free, or clamped (bonded to the face).
For the frictionless bore with the clamped flange also what the bore carries of a force and of a moment at the mouth.
"""

import csv
import itertools
import math
import sys

import numpy as np
from scipy import sparse
from scipy.sparse import linalg

NU = 0.3
FLANGE, THICK, REACH = 1.4, 0.05, 1.5
STATES = ("bonded_free", "frictionless_free", "bonded_clamped", "frictionless_clamped", "open_clamped")
LENGTHS = (0.3, 0.45, 0.65, 0.9, 1.3, 1.9, 2.8)
WALLS = (1.3, 1.6, 2.1, 3.0, 5.0)
MODULI = (0.5, 1.0, 2.0, 4.0)
BORES = (0.0, 0.35, 0.5, 0.65)

GAUSS = np.array([-math.sqrt(0.6), 0.0, math.sqrt(0.6)]), np.array([5, 8, 5]) / 9


def shape(x):
    """Quadratic functions of a line and their slopes at x in -1 ... 1."""
    return np.array([x * (x - 1) / 2, 1 - x * x, x * (x + 1) / 2]), np.array([x - 0.5, -2 * x, x + 0.5])


def graded(start, end, count, fine):
    """Corners of elements, finer towards the start (1), the end (2) or both (3)."""
    t = np.linspace(0, 1, count + 1)
    if fine == 1:
        t = t**1.8
    elif fine == 2:
        t = 1 - (1 - t)**1.8
    elif fine == 3:
        t = np.where(t < 0.5, 0.5 * (2 * t)**1.8, 1 - 0.5 * (2 - 2 * t)**1.8)
    return start + (end - start) * t


def elastic(e, nu=NU):
    """Stresses rr, tt, zz, rz, rt, tz."""
    d = np.zeros((6, 6))
    lame, shear = e * nu / ((1 + nu) * (1 - 2 * nu)), e / (2 * (1 + nu))
    d[:3, :3] = lame
    d[range(6), range(6)] += [2 * shear] * 3 + [shear] * 3
    return d


class Model:
    def __init__(self, length, wall, moduli, bore, mesh=1, flange=FLANGE, thick=THICK, nu=NU):
        """The modulus of the stud is 1, that of the ring 1/moduli."""
        self.length, self.wall, self.bore = length, wall, bore
        n = lambda k: max(int(round(k * mesh)), 2)
        inner, edges = bore / 2, sorted({0.5, flange / 2, wall / 2})
        rs = [graded(inner, 0.5, n(6), 2)]
        rs += [graded(a, b, n(4 if i == 0 else 5), 3 if i == 0 else 1)[1:] for i, (a, b) in enumerate(zip(edges, edges[1:]))]
        rs = np.concatenate(rs)
        zs = np.concatenate([graded(-length, 0, n(6 + 4 * length), 3), graded(0, thick, n(3), 3)[1:],
                             graded(thick, REACH, n(6), 1)[1:]])
        # Bodies overlap in no cell; their nodes on a common surface are two.
        body = np.full((len(rs) - 1, len(zs) - 1), -1)
        mid_r, mid_z = (rs[1:] + rs[:-1]) / 2, (zs[1:] + zs[:-1]) / 2
        r, z = np.meshgrid(mid_r, mid_z, indexing="ij")
        body[(r > 0.5) & (z < 0) & (r < wall / 2)] = 1
        body[r < 0.5] = 0
        body[(r > 0.5) & (z > 0) & (z < thick) & (r < flange / 2)] = 0
        fine_r = np.empty(2 * len(rs) - 1)
        fine_z = np.empty(2 * len(zs) - 1)
        fine_r[::2], fine_r[1::2] = rs, mid_r
        fine_z[::2], fine_z[1::2] = zs, mid_z
        ids, places, cells, kinds = {}, [], [], []
        for i, j in zip(*np.nonzero(body >= 0)):
            kind = body[i, j]
            cell = []
            for a, b in itertools.product(range(3), range(3)):
                key = (2 * i + a, 2 * j + b, kind)
                if key not in ids:
                    ids[key] = len(places)
                    places.append((fine_r[key[0]], fine_z[key[1]]))
                cell.append(ids[key])
            cells.append(cell)
            kinds.append(kind)
        self.ids, self.places = ids, np.array(places)
        self.cells, self.kinds = np.array(cells), np.array(kinds)
        self.fine_r, self.fine_z = fine_r, fine_z
        self.assemble((elastic(1.0, nu), elastic(1.0 / moduli, nu)))
        self.load()

    def assemble(self, stiff):
        corners = self.places[self.cells]
        count = len(self.cells)
        r0, r1 = corners[:, 0, 0], corners[:, 8, 0]
        z0, z1 = corners[:, 0, 1], corners[:, 8, 1]
        d = np.array(stiff)[self.kinds]
        k = np.zeros((count, 27, 27))
        for (x, wx), (y, wy) in itertools.product(zip(*GAUSS), zip(*GAUSS)):
            (nx, dx), (ny, dy) = shape(x), shape(y)
            value = np.outer(nx, ny).ravel()
            by_r = np.outer(dx, ny).ravel()[None] * (2 / (r1 - r0))[:, None]
            by_z = np.outer(nx, dy).ravel()[None] * (2 / (z1 - z0))[:, None]
            r = (r0 + r1) / 2 + x * (r1 - r0) / 2
            over = value[None] / r[:, None]
            b = np.zeros((count, 6, 27))
            b[:, 0, 0::3] = by_r
            b[:, 1, 0::3], b[:, 1, 1::3] = over, over
            b[:, 2, 2::3] = by_z
            b[:, 3, 0::3], b[:, 3, 2::3] = by_z, by_r
            b[:, 4, 0::3], b[:, 4, 1::3] = -over, by_r - over
            b[:, 5, 1::3], b[:, 5, 2::3] = by_z, -over
            weight = math.pi * r * wx * wy * (r1 - r0) * (z1 - z0) / 4
            k += np.swapaxes(b, 1, 2) @ (d * weight[:, None, None]) @ b
        dofs = (3 * self.cells[:, :, None] + np.arange(3)).reshape(count, 27)
        rows, columns = np.repeat(dofs, 27, axis=1).ravel(), np.tile(dofs, (1, 27)).ravel()
        size = 3 * len(self.places)
        self.matrix = sparse.csr_matrix((k.ravel(), (rows, columns)), shape=(size, size))
        in_ring = self.kinds == 1
        rows, columns = np.repeat(dofs[in_ring], 27, axis=1).ravel(), np.tile(dofs[in_ring], (1, 27)).ravel()
        self.ring = sparse.csr_matrix((k[in_ring].ravel(), (rows, columns)), shape=(size, size))

    def load(self):
        """Moment 1 as bending stress, force 1 as even shear over the end; the same weights give mean slope and shift."""
        size = 3 * len(self.places)
        self.second = math.pi * (1 - self.bore**4) / 64
        area = math.pi * (1 - self.bore**2) / 4
        self.moment, self.force = np.zeros(size), np.zeros(size)
        top = len(self.fine_z) - 1
        stud = [i for i in range(len(self.fine_r)) if self.fine_r[i] <= 0.5 + 1e-12]
        for start in stud[:-2:2]:
            a, b = self.fine_r[start], self.fine_r[start + 2]
            nodes = [self.ids[start + k, top, 0] for k in range(3)]
            for x, w in zip(*GAUSS):
                n, _ = shape(x)
                r = (a + b) / 2 + x * (b - a) / 2
                for node, value in zip(nodes, n):
                    self.moment[3 * node + 2] += value * math.pi * r * w * (b - a) / 2 * r / self.second
                    self.force[3 * node] += value * math.pi * r * w * (b - a) / 2 / area
                    self.force[3 * node + 1] -= value * math.pi * r * w * (b - a) / 2 / area

    def ties(self, state):
        """Reduction to free unknowns: axis, held outside, bore, flange."""
        bore, flange = state.split("_")
        size = 3 * len(self.places)
        master, sign = np.arange(size), np.ones(size)
        for (i, j, kind), node in self.ids.items():
            r, z = self.fine_r[i], self.fine_z[j]
            if r == 0:
                sign[3 * node + 2] = 0
                master[3 * node + 1], sign[3 * node + 1] = 3 * node, -1
            if kind == 1:
                if abs(r - self.wall / 2) < 1e-9:
                    sign[3 * node:3 * node + 3] = 0
                    continue
                twin = self.ids.get((i, j, 0))
                if twin is None:
                    continue
                on_face = z == 0 and flange == "clamped"
                on_bore = abs(r - 0.5) < 1e-9 and z <= 0
                whole = on_face or (on_bore and bore == "bonded")
                if whole:
                    master[3 * node:3 * node + 3] = 3 * twin + np.arange(3)
                elif on_bore and bore == "frictionless":
                    master[3 * node] = 3 * twin
        # A ring held at the place of the flange's rim holds the flange too.
        if flange == "clamped":
            for (i, j, kind), node in self.ids.items():
                if kind == 1 and abs(self.fine_r[i] - self.wall / 2) < 1e-9 and self.fine_z[j] == 0:
                    twin = self.ids.get((i, j, 0))
                    if twin is not None:
                        sign[3 * twin:3 * twin + 3] = 0
        kept = (sign != 0) & (master == np.arange(size))
        number = np.cumsum(kept) - 1
        rows = np.nonzero(sign != 0)[0]
        rows = rows[kept[master[rows]]]
        return sparse.csr_matrix((sign[rows], (rows, number[master[rows]])), shape=(size, kept.sum()))

    def solve(self, state):
        t = self.ties(state)
        solver = linalg.splu((t.T @ self.matrix @ t).tocsc(), permc_spec="MMD_AT_PLUS_A", options={"SymmetricMode": True},
                             diag_pivot_thresh=0.0)
        by_moment = t @ solver.solve(t.T @ self.moment)
        by_force = t @ solver.solve(t.T @ self.force)
        return by_moment, by_force

    def compliance(self, state):
        """cM and cF."""
        u, _ = self.solve(state)
        slope, shift = self.moment @ u, self.force @ u
        c_m = slope - REACH / self.second
        # The end shifts against the direction in which a positive moment of bending stress turns it.
        c_f = -shift - REACH * c_m - REACH**2 / (2 * self.second)
        return c_m, c_f

    def bore_shares(self):
        """What a frictionless bore carries while the flange is clamped, of a force 1 and of a moment 1 at the mouth: force of the
        force, moment of the force (over d), force of the moment (times d), moment of the moment, about the mouth and in the sense
        of the load; from the forces between stud and ring."""
        answers = []
        for u in self.solve("frictionless_clamped"):
            f = self.ring @ u
            bore = [(f[3 * node], self.fine_z[j]) for (i, j, kind), node in self.ids.items()
                    if kind == 1 and abs(self.fine_r[i] - 0.5) < 1e-9 and self.fine_z[j] < 0]
            answers.append(np.array([sum(x for x, _ in bore), sum(x * z for x, z in bore)]))
        # A positive bending stress turns against a positive force; a force at the end is one at the mouth and its moment.
        of_moment = -answers[0]
        of_force = answers[1] - REACH * of_moment
        return [*of_force, *of_moment]


def geometries(seed=20261201, count=48):
    """Between the nodes of the table, none of them on a node."""
    draw = np.random.default_rng(seed)
    for _ in range(count):
        yield (round(math.exp(draw.uniform(math.log(0.32), math.log(2.7))), 3), round(1 / draw.uniform(0.21, 0.75), 3),
               round(math.exp(draw.uniform(math.log(0.55), math.log(3.8))), 3), round(draw.uniform(0.02, 0.64), 3))


def row(geometry, mesh=1.0):
    model = Model(*geometry, mesh=mesh)
    values = [v for state in STATES for v in model.compliance(state)] + model.bore_shares()
    return list(geometry) + [float(f"{v:.5g}") for v in values]


HEAD = ["length", "wall", "moduli", "bore"] + [f"{state}_{c}" for state in STATES for c in ("moment", "force")]
HEAD += ["bore_force_of_force", "bore_moment_of_force", "bore_force_of_moment", "bore_moment_of_moment"]


def main(what):
    out = csv.writer(sys.stdout, lineterminator="\n")
    if what == "table":
        out.writerow(HEAD)
        # The mesh of the table is coarser than that of the check: its error is in the compared deviation.
        for geometry in itertools.product(LENGTHS, WALLS, MODULI, BORES):
            out.writerow(row(geometry, 1.75))
    elif what == "check":
        out.writerow(HEAD)
        for geometry in geometries():
            out.writerow(row(geometry, 2.5))
    elif what == "mesh":
        for geometry in ((0.9, 2.8, 1.0, 0.17), (0.3, 1.3, 4.0, 0.65), (2.8, 5.0, 1.0, 0.0), (0.45, 3.0, 0.5, 0.5)):
            for mesh in (1, 1.5, 2.5):
                print(geometry, mesh, row(geometry, mesh)[4:])
    elif what == "example":
        d, di, length, eye, arm, load, e = 18.0, 3.0, 16.0, 50.0, 10.8, 2100.0, 206000.0
        model = Model(length / d, eye / d, 1.0, di / d, mesh=2)
        for state in STATES:
            c_m, c_f = model.compliance(state)
            mouth = load * (arm * c_m / d + c_f) / (e * d * d)
            inertia = math.pi * (d**4 - di**4) / 64
            print(state, c_m, c_f, "mouth %.3f mrad, with the beam to the middle (point load) %.3f" % (
                mouth * 1e3, (mouth + load * arm**2 / (2 * e * inertia)) * 1e3))
        print("bore carries", model.bore_shares())
    elif what == "held":
        base = (16 / 18, 50 / 18, 1.0, 3 / 18)
        for name, other in (("as in the table", {}), ("flange 1.25 d", {"flange": 1.25}), ("flange 1.6 d", {"flange": 1.6}),
                            ("flange 0.1 d thick", {"thick": 0.1}), ("flange 0.25 d thick", {"thick": 0.25}),
                            ("Poisson's ratio 0.25", {"nu": 0.25}), ("Poisson's ratio 0.33", {"nu": 0.33})):
            model = Model(*base, **other)
            print(name, ["%.4g %.4g" % model.compliance(state) for state in STATES])


if __name__ == "__main__":
    main(sys.argv[1] if len(sys.argv) == 2 else "")

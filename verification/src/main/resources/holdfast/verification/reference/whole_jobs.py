"""Whole jobs from a general-purpose scientific library, apart from the code under test: every number of their sheets.

Usage: python3 whole_jobs.py FILE [JOB...]      writes the values of the jobs as CSV

The jobs stand in the folder jobs, typed by hand from their descriptions; table values stand in wholejob/own_tables.py, typed
from the documents named there. Nothing is read from the library. How the way differs from the code under test: rings are a
linear system of four constants instead of the closed form of Lame, their stresses a search over the radius; beams are
quadratures of the moment; the combined stress of the stud is the greatest found round the section; preloads, mean loads and
permitted loads are roots; the springs of the joint are quadratures over cones; stresses under the contact are sums over
point loads; renewals are the integral equation on a grid; leaning bearings are those of tilted_bearing.py. Formulas that
are recalled stay recalled: this checks the mathematics and the joins, not the choice of a recalled formula.
"""

import csv
import json
import pathlib
import sys

import numpy as np
import scipy
from wholejob.stud_job import StudJob
from wholejob.yoke_job import YokeJob

# Where the library differs and why, with the jobs in which it does.
FILL = "the library's table of lubrication guides holds 0.333 for the printed third"
BORE = ("at the wall of the bore the library looks at the fibre in tension and the neutral axis; the greatest lies between "
        "them, where the shear of the load adds to the torsion")
DISCLOSED = {
    "grease.first-fill.least": (FILL, lambda job: job != "slip-fit"),
    "limit.stud at the mouth of the seat.demand": (BORE, lambda job: job in AT_THE_BORE),
    "limit.stud at the mouth of the seat.margin": (BORE, lambda job: job in AT_THE_BORE),
}
AT_THE_BORE = {"press-fit", "inch-press-fit", "cast-iron"}

HERE = pathlib.Path(__file__).parent


def disclosed(job, quantity):
    reason, differs = DISCLOSED.get(quantity, ("", lambda job: False))
    return reason if differs(job) else ""


def main():
    names = sys.argv[2:] or [p.stem for p in sorted((HERE / "jobs").glob("*.json"))]
    with open(sys.argv[1], "w", newline="", encoding="utf-8") as file:
        writer = csv.writer(file, lineterminator="\n")
        writer.writerow(["job", "quantity", "value", "unit", "found_by", "source", "locator", "provenance", "disclosed"])
        count = 0
        for name in names:
            job = json.loads((HERE / "jobs" / f"{name}.json").read_text(encoding="utf-8"))
            for quantity, value, unit, how in (YokeJob if "pin" in job else StudJob)(job).values():
                writer.writerow([name, quantity, f"{value:.12g}", unit, how, f"SciPy {scipy.__version__}", "whole_jobs.py",
                                 "reference computation", disclosed(name, quantity)])
                count += 1
    print(f"{count} values of {len(names)} jobs, NumPy {np.__version__}, SciPy {scipy.__version__}")


if __name__ == "__main__":
    main()

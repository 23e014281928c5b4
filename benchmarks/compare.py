"""The same computations in NumPy and SciPy and in a spreadsheet, on this machine, beside those of the library.

    python3 benchmarks/compare.py            after `mvn verify`; needs numpy, scipy and, for the spreadsheet, soffice

Formulas are written here anew from their sources (VDI 2230-1:2015, tightening torque; ISO 281:2007, 9.3.3.4; Boresi &
Schmidt, thick-wall cylinders; Johnson 1985, ratio of the axes), vectorised where the tool allows it. Each side prints the
sum of its results; a difference above 1e-9 of it ends the run. Times are the best of several runs of the whole computation.
"""
import math
import shutil
import subprocess
import sys
import tempfile
import time
from pathlib import Path

import numpy as np
import scipy
from scipy.optimize import brentq
from scipy.special import ellipe, ellipk

HERE = Path(__file__).resolve().parent
MANY, FEW, ROWS = 1_000_000, 20_000, 100_000


def preload():
    i = np.arange(MANY)
    torque = 20_000 + i % 1000 * 50
    mu_thread, mu_face = 0.08 + i % 97 * 1e-3, 0.08 + i % 89 * 1e-3
    lead_angle = math.atan(1.5 / (math.pi * 17.026))
    friction_angle = np.arctan(mu_thread / math.cos(math.pi / 6))
    lever = 17.026 / 2 * np.tan(lead_angle + friction_angle) + 21.9 / 2 * mu_face
    return np.sum(torque / lever)


def modified_life():
    i = np.arange(MANY)
    kappa, argument = 0.1 + i % 390 * 0.01, i % 491 * 0.01
    factor = np.where(kappa < 0.4, 1.3993, 1.2348)
    exponent = np.select([kappa < 0.4, kappa < 1], [0.054381, 0.19087], 0.071739)
    base = 1 - np.maximum(0, 1.5859 - factor * kappa**-exponent) * argument**0.4
    a = np.full(MANY, 50.0)
    inside = base > 0
    a[inside] = np.minimum(50, 0.1 * base[inside] ** -9.185)
    return np.sum(0.64 * a * ((14_200 + i % 1009) / (2100 + i % 997)) ** (10 / 3))


class Fleet:
    """Roller bearings as arrays, made before the clock runs; ν1 by ISO 281:2007, 9.3.3.2, a1 at 95 % by 9.2."""

    def __init__(self):
        i = np.arange(MANY)
        self.c, self.cu, self.p = 14_200.0 + i % 1009, 1500.0 + i % 101, 2100.0 + i % 997
        self.rpm, self.nu, self.dpw, self.ec = 200.0 + i % 1600, 20.0 + i % 83, 40.0 + i % 31, 0.1 + i % 89 * 0.01

    def lives(self):
        nu1 = np.where(self.rpm < 1000, 45_000 * self.rpm**-0.83, 4500 * self.rpm**-0.5) / np.sqrt(self.dpw)
        kappa = np.minimum(4, self.nu / nu1)
        factor = np.where(kappa < 0.4, 1.3993, 1.2348)
        exponent = np.select([kappa < 0.4, kappa < 1], [0.054381, 0.19087], 0.071739)
        argument = np.minimum(5, self.ec * self.cu / self.p)
        base = 1 - np.maximum(0, 1.5859 - factor * kappa**-exponent) * argument**0.4
        a = np.full(MANY, 50.0)
        inside = base > 0
        a[inside] = np.minimum(50, 0.1 * base[inside] ** -9.185)
        a1 = 0.95 * (math.log(100 / 95) / math.log(100 / 90)) ** (1 / 1.5) + 0.05
        return np.sum(1e6 / 60 * a1 * a * (self.c / self.p) ** (10 / 3) / self.rpm)


def pressure():
    i = np.arange(MANY)
    u, d = i % 36 * 1e-3, 18 + i % 7
    qi, qa = (3 + i % 3) / d, d / (40 + i % 31)
    inner = ((1 + qi**2) / (1 - qi**2) - 0.3) / 210_000
    outer = ((1 + qa**2) / (1 - qa**2) + 0.275) / (169_000 + i % 11 * 1000)
    return np.sum(u / d / (inner + outer))


def axis_ratio():
    total = 0.0
    for i in range(FEW):
        ratio = (0.05 + i % 101 * 1e-3) / (0.002 + i % 199 * 2e-4)
        if ratio < 1:
            ratio = 1 / ratio

        def gap(k):  # k = b/a; curvature ratio of the axes, Johnson 1985, 4.30
            m = 1 - k * k
            e, kk = ellipe(m), ellipk(m)
            return (e / (k * k) - kk) / (kk - e) - ratio

        total += 1.0 if ratio == 1 else brentq(gap, 1e-4, 1 - 1e-9, xtol=1e-14)
    return total


def best(work, runs=5):
    times = []
    for _ in range(runs):
        start = time.perf_counter()
        total = work()
        times.append(time.perf_counter() - start)
    return min(times), float(total)


def java():
    out = subprocess.run(
        ["java", "-cp", str(HERE / "target" / "benchmarks.jar"), "holdfast.benchmarks.Compared"],
        check=True, capture_output=True, text=True).stdout
    rows = [line.split(";") for line in out.splitlines() if line.count(";") == 3]
    return {name: (int(items), float(seconds), float(total)) for name, items, seconds, total in rows}


def sheet(rows):
    """A flat spreadsheet whose last column is the modified life, recalculated and written out as CSV."""
    head = ('<?xml version="1.0" encoding="UTF-8"?><office:document '
            'xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" '
            'xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" '
            'xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2" office:version="1.2" '
            'office:mimetype="application/vnd.oasis.opendocument.spreadsheet"><office:body><office:spreadsheet>'
            '<table:table table:name="life">')
    cells = []
    for i in range(rows):
        r = i + 1
        values = (0.1 + i % 390 * 0.01, i % 491 * 0.01, 14_200 + i % 1009, 2100 + i % 997)
        numbers = "".join(f'<table:table-cell office:value-type="float" office:value="{v!r}"/>' for v in values)
        formula = (f"of:=0.64*(IF(1-MAX(0;1.5859-IF([.A{r}]&lt;0.4;1.3993;1.2348)*[.A{r}]^-IF([.A{r}]&lt;0.4;0.054381;"
                   f"IF([.A{r}]&lt;1;0.19087;0.071739)))*[.B{r}]^0.4&lt;=0;50;MIN(50;0.1*(1-MAX(0;1.5859-IF([.A{r}]&lt;0.4;1.3993;"
                   f"1.2348)*[.A{r}]^-IF([.A{r}]&lt;0.4;0.054381;IF([.A{r}]&lt;1;0.19087;0.071739)))*[.B{r}]^0.4)^-9.185)))"
                   f"*([.C{r}]/[.D{r}])^(10/3)")
        cells.append(f'<table:table-row>{numbers}<table:table-cell table:formula="{formula}"/></table:table-row>')
    return head + "".join(cells) + "</table:table></office:spreadsheet></office:body></office:document>"


def spreadsheet(rows):
    with tempfile.TemporaryDirectory() as folder:
        source = Path(folder) / "life.fods"
        source.write_text(sheet(rows))
        start = time.perf_counter()
        subprocess.run(["soffice", f"-env:UserInstallation=file://{folder}/profile", "--headless", "--convert-to", "csv",
                        "--outdir", folder, str(source)], check=True, capture_output=True)
        seconds = time.perf_counter() - start
        lines = (Path(folder) / "life.csv").read_text().splitlines()
        return seconds, [float(line.split(",")[-1]) for line in lines]


def main():
    ours = java()
    theirs = {"preload of a torque": preload, "modified life": modified_life,
              "modified lives of a fleet": Fleet().lives, "pressure of a press fit": pressure,
              "axis ratio of a contact ellipse": axis_ratio}
    print(f"Python {sys.version.split()[0]}, NumPy {np.__version__}, SciPy {scipy.__version__}, one thread each\n")
    print("| computation | items | times as fast | library | NumPy or SciPy | library, per item |")
    print("| --- | --- | --- | --- | --- | --- |")
    for name, work in theirs.items():
        items, seconds, total = ours[name]
        other, check = best(work, 1 if items == FEW else 5)
        if abs(check - total) > 1e-9 * abs(total):
            sys.exit(f"{name}: the library computes {total!r}, this script {check!r}")
        print(f"| {name} | {items} | {other / seconds:.1f} | {seconds * 1e3:.1f} ms | {other * 1e3:.0f} ms "
              f"| {seconds / items * 1e9:.1f} ns |")
    if shutil.which("soffice"):
        start, _ = min(spreadsheet(1) for _ in range(2))
        whole, column = spreadsheet(ROWS)
        items, seconds, _ = ours["modified life"]
        print(f"\nSpreadsheet: {ROWS} modified lives recalculated and written in {whole - start:.2f} s beyond the {start:.2f} s of "
              f"an empty run; the library computes as many in {seconds * ROWS / items * 1e3:.1f} ms, "
              f"{(whole - start) / (seconds * ROWS / items):.0f} times as fast. The spreadsheet reads and writes files as well.")
        print(f"First cell {column[0]!r}, as printed by the spreadsheet.")


if __name__ == "__main__":
    main()

"""Results of the benchmarks as a Markdown table, kernels first, by package; which kernels a benchmark calls is read in its source.

    java -jar benchmarks/target/benchmarks.jar -prof gc -rf csv -rff FILE
    python3 benchmarks/table.py FILE

The error is half the 99.9 % confidence interval, a dash where there are too few samples for one. Bytes include what the
measurement itself allocates meanwhile, spread over the calls, so that a long call without allocation does not show 0.
"""
import csv
import functools
import math
import re
import sys
from pathlib import Path

SOURCES = Path(__file__).resolve().parent / "src/main/java/holdfast/benchmarks"
NANOSECONDS = {"ns/op": 1, "us/op": 1e3, "ms/op": 1e6, "s/op": 1e9}
ALLOCATED = ":gc.alloc.rate.norm"


@functools.cache
def calls(name):
    """Packages and kernels that the methods of a class of benchmarks call."""
    text = (SOURCES / f"{name}.java").read_text(encoding="utf-8")
    package = {kernel: package for package, kernel in re.findall(r"^import holdfast\.([\w.]+)\.(\w+Kernel);", text, re.M)}
    found = {}
    for method, body in re.findall(r"@Benchmark\n.*?public [^(]*?(\w+)\(.*?\{\n(.*?)\n  \}", text, re.S):
        kernels = dict.fromkeys(re.findall(r"\b(\w+Kernel)\.(\w+)\(", body))
        found[method] = [(package[kernel], f"{kernel}.{function}") for kernel, function in kernels]
    return found


def number(text):
    """A number of the file, which has the decimal sign of the machine."""
    return float(text.replace(",", "."))


def digits(value, error):
    """Both with three significant digits of the value."""
    places = max(0, 2 - math.floor(math.log10(value))) if value > 0 else 0
    return f"{value:.{places}f}", "–" if math.isnan(error) else f"{error:.{places}f}"


def rows(path):
    allocated, times = {}, []
    with open(path, newline="", encoding="utf-8") as file:
        for row in csv.DictReader(file):
            name = row["Benchmark"]
            given = tuple(f"{key[7:]} {value}" for key, value in row.items() if key.startswith("Param: ") and value)
            if name.endswith(ALLOCATED):
                allocated[name[: -len(ALLOCATED)], given] = f"{number(row['Score']):.1f}"
            elif ":" not in name:
                error = next(value for key, value in row.items() if key.startswith("Score Error"))
                factor = NANOSECONDS[row["Unit"]]
                times.append((name, given, factor * number(row["Score"]), factor * number(error)))
    for name, given, score, error in times:
        _, owner, method = name.rsplit(".", 2)
        kernels = calls(owner)[method]
        packages = ", ".join(dict.fromkeys(package for package, _ in kernels))
        called = ", ".join(call for _, call in kernels)
        benchmark = " ".join((f"{owner}.{method}", *given))
        yield not called, packages, called, benchmark, *digits(score, error), allocated.get((name, given), "–")


def main():
    if len(sys.argv) != 2:
        sys.exit(__doc__)
    print("| package | kernel | benchmark | ns per call | ± | bytes per call |")
    print("| --- | --- | --- | ---: | ---: | ---: |")
    for _, package, called, *rest in sorted(rows(sys.argv[1])):
        print("|", " | ".join((package or "–", called or "typed", *rest)), "|")


if __name__ == "__main__":
    main()

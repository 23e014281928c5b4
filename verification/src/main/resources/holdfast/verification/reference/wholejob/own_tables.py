"""Own copies of the table values that the jobs need, typed from the documents named; nothing is read from the library.

Provenance in the words of the project: published, memory (recalled, not found in print), common practice.
"""

# ISO 286-1:2010, Table 1 (published): standard tolerances in um, sizes over 10 to 18 and over 18 to 30 mm.
IT = {
    (10, 18): {5: 8, 6: 11, 7: 18, 8: 27, 9: 43},
    (18, 30): {5: 9, 6: 13, 7: 21, 8: 33, 9: 52},
}
# ISO 286-1:2010, Tables 4 and 5 (published): fundamental deviations of shafts in um; the sign is that of es or ei.
SHAFT = {
    (10, 18): {"f": -16, "g": -6, "h": 0, "k": 1, "m": 7, "n": 12, "p": 18, "r": 23, "s": 28},
    (18, 30): {"f": -20, "g": -7, "h": 0, "k": 2, "m": 8, "n": 15, "p": 22, "r": 28, "s": 35},
}
SHAFT_U = {(10, 18): 33, (18, 24): 41}
SHAFT_X = {(10, 14): 40, (14, 18): 45}
# ISO 286-1:2010, Table 3 (published): Delta of holes K, M, N to IT8 and P to ZC to IT7, in um.
DELTA = {(10, 18): {5: 3, 6: 3, 7: 7, 8: 9}, (18, 30): {5: 3, 6: 4, 7: 8, 8: 12}}

# E MPa, nu, alpha 1/K, yield MPa (None: brittle), tensile MPa.
# EN 10083-2, EN 1561, EN 1563, former DIN 17210 (memory); a material sheet of bearing
# steel for 100Cr6 and a table of average properties for 7075-T6 (published).
MATERIAL = {
    "16MnCr5": (210e3, 0.3, 11.5e-6, 590, 780),
    "C45+N": (210e3, 0.3, 11.5e-6, 305, 580),
    "C45+QT": (210e3, 0.3, 11.5e-6, 430, 650),
    "100Cr6": (203.4e3, 0.3, 11.9e-6, 2034, 2241),
    "EN-GJS-600-3": (174e3, 0.275, 12.5e-6, 370, 600),
    "EN-GJL-250": (110e3, 0.26, 11.0e-6, None, 250),
    "7075-T6": (71.7e3, 0.33, 23.4e-6, 483, 552),
}
# DIN 7190-1 (memory): mean coefficients for cooling, 1/K.
COOLING = {"16MnCr5": 8.5e-6, "C45+N": 8.5e-6}

# Engineering page on capacity and load limits and needle roller bearing catalogue A, table of the track capacity factors
# (published): factor on the capacity at 40 HRC, for cylindrical and crowned rings.
TRACK_FACTOR = {
    "flat": {20: 0.368, 25: 0.459, 30: 0.583, 35: 0.75, 40: 1.0, 45: 1.414, 50: 1.987, 55: 2.787},
    "crowned": {20: 0.223, 25: 0.311, 30: 0.446, 35: 0.65, 40: 1.0, 45: 1.681, 50: 2.8, 55: 4.652},
}

# ISO 281:2007, Table 13 (published): range of the contamination factor for Dpw below 100 mm.
CONTAMINATION = {
    "extreme cleanliness": (1.0, 1.0), "high cleanliness": (0.6, 0.8), "normal cleanliness": (0.5, 0.6),
    "slight contamination": (0.3, 0.5), "typical contamination": (0.1, 0.3), "severe contamination": (0.0, 0.1),
}

# ISO 281:2007, Figures A.10 to A.13 (published; the constant of A.12 is a chart fit): eC of greases, a0 and c for Dpw below
# 500 mm; the reading of Annex A that stands for a level of Table 13.
ANNEX_A = {
    "high cleanliness": (0.0864, 0.6796), "normal cleanliness": (0.0432, 1.141), "slight contamination": (0.0177, 1.887),
    "typical contamination": (0.0177, 1.887), "severe contamination": (0.0115, 2.662),
}

# VDI 2230-1:2015, Table 5 (memory): settling in um, tension; thread, face of head or nut, inner interface.
SETTLING = ((10, 3, 2.5, 1.5), (40, 3, 3, 2), (160, 3, 4, 3))

# Cam follower catalogue B, limits of d1 n (published), mm rpm, greased.
SPEED = {"caged needle": 84000, "full complement needle": 42000, "full complement cylindrical": 66000}

# Relubrication interval guide (published) and maintenance trade press (memory).
DIRT = {"light, non-abrasive": 1.0, "severe, non-abrasive": 0.7, "light, abrasive": 0.4, "severe, abrasive": 0.2}
MOISTURE = {"occasional condensation": 0.4}


def vibration(velocity):
    return 1.0 if velocity < 5 else 0.6 if velocity <= 10 else 0.3


def size_range(table, size):
    for (over, to), row in table.items():
        if over < size <= to:
            return row
    raise KeyError(f"{size} mm is in no range of the own tables")


def deviations(tolerance, size):
    """Upper and lower deviation in um: a class, or deviations as drawn ("+0.0020/+0.0012 in")."""
    if tolerance[0] in "+-0":
        values, unit = tolerance.split()
        factor = {"mm": 1e3, "in": 25400, "um": 1}[unit]
        return tuple(float(v) * factor for v in values.split("/"))
    letter, grade = tolerance.rstrip("0123456789"), int(tolerance.lstrip("ABCDEFGHKMNPRSUXabcdefghkmnprsux"))
    it = size_range(IT, size)[grade]
    small = letter.lower()
    narrow = {"u": SHAFT_U, "x": SHAFT_X}.get(small)
    base = size_range(narrow, size) if narrow else size_range(SHAFT, size)[small]
    if letter.islower():
        return (base, base - it) if small in "fgh" else (base + it, base)
    if small in "fgh":
        return -base + it, -base
    corrected = grade <= 8 if small in "kmn" else grade <= 7
    upper = -base + (size_range(DELTA, size)[grade] if corrected else 0)
    return upper, upper - it


# ISO 965-1:2013 (published): limits of size of 6g and 6H in mm, from es, Td, Td2, TD2 and TD1 of P 1.5 over 11.2 to 22.4 mm;
# ISO 4032 (published): width across flats of the hexagon nut.
THREAD_LIMITS = {
    "M18x1.5": {"d": 18 - 0.032 - 0.236, "d2": 17.026 - 0.032 - 0.140, "D2": 17.026 + 0.190, "D1": 16.376 + 0.300, "flats": 27},
}

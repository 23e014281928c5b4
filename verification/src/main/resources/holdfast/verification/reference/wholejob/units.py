"""Quantities of the job files: "2.1 kN", "5/8 in", "130 degF". Factors are those of NIST SP 811:2008, Appendix B.8."""

from fractions import Fraction

INCH = 25.4
POUND_FORCE = 4.4482216152605

FACTORS = {
    "mm": 1.0, "um": 1e-3, "in": INCH,
    "N": 1.0, "kN": 1e3, "lbf": POUND_FORCE,
    "N.m": 1e3, "lbf.in": POUND_FORCE * INCH,
    "MPa": 1.0, "GPa": 1e3,
    "rpm": 1.0, "h": 1.0, "mm2/s": 1.0, "mm/s": 1.0, "HRC": 1.0, "1": 1.0,
}


def number(text):
    """A number of the job file: decimal, fraction or whole and fraction ("1-1/2")."""
    if "/" not in text:
        return float(text)
    whole, _, part = text.rpartition("-") if text.count("-") and not text.startswith("-") else ("0", "", text)
    return float(int(whole or 0) + Fraction(part))


def quantity(text):
    """A number in mm, N, N mm, MPa, rpm, h, mm2/s or degC."""
    value, unit = text.split()
    if unit == "degC":
        return number(value)
    if unit == "degF":
        return (number(value) - 32) / 1.8
    return number(value) * FACTORS[unit]

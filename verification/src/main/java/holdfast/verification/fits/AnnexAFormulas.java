// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.fits;

import holdfast.fits.ToleranceGrade;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.tables.Provenance;
import holdfast.tables.Source;

/**
 * The formulas from which ISO 286-1:1988, Annex A derived the tables, with their rounding: an independent
 * reconstruction. Where formula and table differ, the table rules. Values in µm, D in mm.
 */
@Source(document = "Machine Drawing", locator = "table 15.4, formulas up to 500 mm")
@Source(
    document = "ISO 286-1:1988",
    locator = "Annex A, formulas over 500 mm and rounding",
    provenance = Provenance.MEMORY)
final class AnnexAFormulas {
  /** Multiples of the tolerance unit from IT1 (over 500 mm) or IT5 (up to 500 mm) to IT11. */
  private static final double[] MULTIPLES = {2, 2.7, 3.7, 5, 7, 10, 16, 25, 40, 64, 100};

  /** Rounding of tolerances: greatest value, step; over 500 mm the step from 60 to 100 is 2. */
  private static final double[][] TOLERANCE_STEPS = {
    {60, 1}, {100, 1}, {200, 5}, {500, 10}, {1000, 20}, {2000, 50}, {5000, 100}
  };

  /** Rounding of deviations: greatest value, step of a to g, step of k to zc up to 500 mm, step of d to u over 500 mm. */
  private static final double[][] DEVIATION_STEPS = {
    {45, 1, 1, 1}, {60, 2, 1, 1}, {100, 5, 1, 2}, {200, 5, 2, 5}, {300, 10, 2, 10}, {500, 10, 5, 10},
    {560, 10, 5, 20}, {600, 20, 5, 20}, {800, 20, 10, 20}, {1000, 20, 20, 20}, {2000, 50, 50, 50}, {5000, 100, 100, 100}
  };

  private final double over;
  private final double upTo;
  private final double mean;

  AnnexAFormulas(double over, double upTo) {
    this.over = over;
    this.upTo = upTo;
    // The first range counts from 1 mm.
    this.mean = Math.sqrt(Math.max(1, over) * upTo);
  }

  /** ITn for n = 1 to 18 over 500 mm, n = 5 to 18 up to 500 mm; from IT12 on ten times the tabulated value of IT(n-5). */
  double tolerance(int n) {
    if (n >= 12) {
      return 10 * tabulated(n - 5);
    }
    double unit = over < 500 ? 0.45 * Math.cbrt(mean) + 0.001 * mean : 0.004 * mean + 2.1;
    double value = MULTIPLES[n - 1] * unit;
    for (double[] step : TOLERANCE_STEPS) {
      if (value <= step[0]) {
        return round(value, over >= 500 && step[0] == 100 ? 2 : step[1]);
      }
    }
    throw new IllegalArgumentException("no rounding step for " + value);
  }

  /** Amount of the fundamental deviation of a shaft; the nearest value the formula allows where it allows a span. */
  double deviation(String letter, double tabulated) {
    double[] span = span(letter);
    if (span[0] < span[1]) {
      return Math.min(Math.max(tabulated, span[0]), span[1]);
    }
    boolean early = letter.charAt(0) <= 'g';
    int column = over >= 500 ? 3 : early ? 1 : 2;
    for (double[] step : DEVIATION_STEPS) {
      if (span[0] <= step[0]) {
        return round(span[0], step[column]);
      }
    }
    throw new IllegalArgumentException("no rounding step for " + span[0]);
  }

  /** Whether Annex A gives a formula for the letter in this range; k over 500 mm is 0 and h is 0 by definition. */
  boolean covers(String letter) {
    return switch (letter) {
      case "h", "j", "js" -> false;
      case "k" -> over < 500;
      default -> true;
    };
  }

  private double[] span(String letter) {
    return switch (letter) {
      case "p" -> over < 500 ? new double[] {tabulated(7), tabulated(7) + 5} : one(0.072 * mean + 37.8);
      case "s" -> upTo <= 50 ? new double[] {tabulated(8) + 1, tabulated(8) + 4} : one(tabulated(7) + 0.4 * mean);
      default -> one(single(letter));
    };
  }

  private static double[] one(double value) {
    return new double[] {value, value};
  }

  private double single(String letter) {
    boolean large = over >= 500;
    return switch (letter) {
      case "a" -> upTo <= 120 ? 265 + 1.3 * mean : 3.5 * mean;
      case "b" -> upTo <= 160 ? 140 + 0.85 * mean : 1.8 * mean;
      case "c" -> upTo <= 40 ? 52 * Math.pow(mean, 0.2) : 95 + 0.8 * mean;
      case "cd" -> between("c", "d");
      case "d" -> 16 * Math.pow(mean, 0.44);
      case "e" -> 11 * Math.pow(mean, 0.41);
      case "ef" -> between("e", "f");
      case "f" -> 5.5 * Math.pow(mean, 0.41);
      case "fg" -> between("f", "g");
      case "g" -> 2.5 * Math.pow(mean, 0.34);
      case "k" -> 0.6 * Math.cbrt(mean);
      case "m" -> large ? 0.024 * mean + 12.6 : tabulated(7) - tabulated(6);
      case "n" -> large ? 0.04 * mean + 21 : 5 * Math.pow(mean, 0.34);
      case "r" -> between("p", "s");
      case "t" -> tabulated(7) + 0.63 * mean;
      case "u" -> tabulated(7) + mean;
      case "v" -> tabulated(7) + 1.25 * mean;
      case "x" -> tabulated(7) + 1.6 * mean;
      case "y" -> tabulated(7) + 2 * mean;
      case "z" -> tabulated(7) + 2.5 * mean;
      case "za" -> tabulated(8) + 3.15 * mean;
      case "zb" -> tabulated(9) + 4 * mean;
      case "zc" -> tabulated(10) + 5 * mean;
      default -> throw new IllegalArgumentException("no formula for " + letter);
    };
  }

  /** Geometric mean of the tabulated values of two letters, at the low end of the range. */
  private double between(String one, String other) {
    return Math.sqrt(Shafts.amount(one, over) * Shafts.amount(other, over));
  }

  private double tabulated(int n) {
    return ToleranceGrade.of("IT" + n).tolerance(new Length(upTo)).in(KnownUnits.UM);
  }

  private static double round(double value, double step) {
    return Math.floor(value / step + 0.5) * step;
  }
}

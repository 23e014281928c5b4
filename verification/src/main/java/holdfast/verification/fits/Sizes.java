// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.fits;

import holdfast.fits.LimitDeviationsKernel;
import holdfast.fits.ToleranceClass;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;

/** What the suites of this package share: both ends of a size range, and exact comparison of whole table values. */
final class Sizes {
  static final String EXACT = "table values are exact, not rounded";

  private Sizes() {}

  /** The greatest size of a range. */
  static double upTo(Table table, int row) {
    return table.number(row, "up_to_mm");
  }

  /** A size just over the lower end; over 1 mm in the first range, for some classes are not used up to 1 mm. */
  static double justOver(Table table, int row) {
    return Math.max(1, table.number(row, "over_mm")) + 1e-6;
  }

  /** Upper or lower limit deviation, µm, over a whole range: NaN, which never agrees, if it is not one value. */
  static double deviation(Table cases, int row, boolean upper) {
    int code = ToleranceClass.of(cases.text(row, "tolerance_class")).code();
    double atEnd = deviation(upTo(cases, row), code, upper);
    double atStart = deviation(justOver(cases, row), code, upper);
    return atEnd == atStart && atEnd == ofMany(cases, row, code, upper) ? atEnd : Double.NaN;
  }

  /** The same by the form for many sizes: NaN if both ends differ. */
  private static double ofMany(Table cases, int row, int code, boolean upper) {
    double[] sizes = {upTo(cases, row), justOver(cases, row)};
    double[] uppers = new double[2];
    double[] lowers = new double[2];
    LimitDeviationsKernel.limits(sizes, code, uppers, lowers);
    double[] values = upper ? uppers : lowers;
    return values[0] == values[1] ? values[0] : Double.NaN;
  }

  static double deviation(double size, int code, boolean upper) {
    return upper ? LimitDeviationsKernel.upper(size, code) : LimitDeviationsKernel.lower(size, code);
  }

  /** Compares whole table values: no tolerance. */
  static Comparison exact(
      String name, SourceRef source, Evidence evidence, String disclosed, double published, double computed) {
    return Comparison.of(name, source, evidence).disclosed(disclosed).numbers(published, computed, 0, "µm", EXACT);
  }
}

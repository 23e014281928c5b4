// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.fits;

import holdfast.fits.Fit;
import holdfast.fits.InchFitClass;
import holdfast.fits.TolerancedSize;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.quantity.Units;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import java.util.List;

/** What the suites of inch fits share: the tables, a fit at the upper end of a range, exact comparison in thou. */
final class InchCases {
  static final String FIT = "holdfast.fits.Fit#of";
  static final String KERNEL = "holdfast.fits.InchLimitsKernel";
  static final String CLASS = "holdfast.fits.InchFitClass#at";
  static final String GRADE = "holdfast.fits.AnsiGrade#tolerance";

  private static final String FOLDER = "fits/ansi-b4.1/1967/";

  private InchCases() {}

  /** The tables of fits. */
  static List<Table> fits() {
    return List.of(
        TableSet.bundled().table(FOLDER + "running-and-sliding"),
        TableSet.bundled().table(FOLDER + "locational-clearance"),
        TableSet.bundled().table(FOLDER + "locational-transition"),
        TableSet.bundled().table(FOLDER + "locational-interference"),
        TableSet.bundled().table(FOLDER + "force-and-shrink"));
  }

  static Length upTo(Table table, int row) {
    return Units.inch(table.number(row, "up_to_in"));
  }

  /** The fit that a row names, at the upper end of its range, read as text. */
  static Fit fit(Table table, int row) {
    return Fit.of(upTo(table, row), table.text(row, "class"));
  }

  static InchFitClass fitClass(Table table, int row) {
    return InchFitClass.of(table.text(row, "class"));
  }

  static double toleranceThou(TolerancedSize part) {
    return part.tolerance().in(KnownUnits.THOU);
  }

  /** Values printed in thousandths of an inch are exact; the room is for the arithmetic of doubles. */
  static Comparison exact(
      String name, SourceRef source, Evidence evidence, String disclosed, double published, Length computed) {
    return Comparison.of(name, source, evidence)
        .disclosed(disclosed)
        .numbers(published, computed.in(KnownUnits.THOU), 1e-9, "thou", "printed values are exact");
  }
}

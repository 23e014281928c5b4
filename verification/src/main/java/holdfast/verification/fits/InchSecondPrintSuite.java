// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.fits;

import holdfast.fits.Fit;
import holdfast.quantity.Length;
import holdfast.quantity.Units;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.RowSuite;
import holdfast.verification.Suite;
import java.util.List;
import java.util.Map;

/** Inch fits in prints and questions from which our tables were not made. */
final class InchSecondPrintSuite {
  private InchSecondPrintSuite() {}

  static Suite suite() {
    return RowSuite.of(
        "fits/inch-second-prints",
        "Inch fits in second prints and worked questions",
        InchSecondPrintSuite::row,
        InchCases.FIT, InchCases.CLASS, InchCases.KERNEL, "holdfast.fits.Fit#minimumClearance",
        "holdfast.fits.Fit#maximumClearance");
  }

  private static void row(Table cases, int row, List<Comparison> result) {
    Fit fit = Fit.of(Units.inch(cases.number(row, "size_in")), cases.text(row, "class"));
    Map<String, Length> computed =
        Map.of(
            "hole_upper", fit.hole().upper(),
            "shaft_lower", fit.shaft().lower(),
            "shaft_upper", fit.shaft().upper(),
            "least_clearance", fit.minimumClearance(),
            "greatest_clearance", fit.maximumClearance());
    for (String column : List.of("hole_upper", "shaft_lower", "shaft_upper", "least_clearance", "greatest_clearance")) {
      if (cases.has(row, column)) {
        result.add(
            InchCases.exact(
                cases.address(row) + ", " + column.replace('_', ' '),
                Cases.source(cases, row),
                Evidence.valueOf(cases.text(row, "evidence")),
                cases.text(row, "disclosed"),
                cases.number(row, column),
                computed.get(column)));
      }
    }
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.fits;

import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.RowSuite;
import holdfast.verification.Suite;
import java.util.List;

/** Limit deviations printed in reprints: two comparisons a row, each at both ends of the size range. */
final class LimitDeviationSuite {
  private LimitDeviationSuite() {}

  static Suite suite() {
    return RowSuite.of(
        "fits/limit-deviations",
        "Limit deviations of tolerance classes against reprints",
        LimitDeviationSuite::row,
        "holdfast.fits.ToleranceClass#limitDeviations",
        "holdfast.fits.ToleranceClass#of",
        "holdfast.fits.LimitDeviationsKernel");
  }

  private static void row(Table cases, int row, List<Comparison> result) {
    for (String limit : List.of("upper", "lower")) {
      if (cases.has(row, limit)) {
        result.add(
            Sizes.exact(
                cases.address(row) + ", " + limit + " limit deviation",
                Cases.source(cases, row),
                Evidence.RECOMBINED,
                cases.text(row, "disclosed"),
                cases.number(row, limit),
                Sizes.deviation(cases, row, limit.equals("upper"))));
      }
    }
  }
}

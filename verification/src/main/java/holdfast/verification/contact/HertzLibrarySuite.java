// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.contact;

import holdfast.contact.EllipticalContactKernel;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.RowSuite;
import holdfast.verification.Suite;
import java.util.List;

/** Values at the curvatures of the printed tables, computed apart from this project. */
final class HertzLibrarySuite {
  private HertzLibrarySuite() {}

  static Suite suite() {
    return RowSuite.of(
        "contact/hertz-library-values",
        "Contact ellipse against values of a general-purpose library",
        HertzLibrarySuite::row,
        "holdfast.contact.EllipticalContactKernel#axisRatio",
        "holdfast.contact.EllipticalContactKernel#coefficientMajor",
        "holdfast.contact.EllipticalContactKernel#coefficientMinor",
        "holdfast.contact.EllipticalContactKernel#coefficientApproach",
        "holdfast.contact.EllipticIntegralKernel#first",
        "holdfast.contact.EllipticIntegralKernel#second");
  }

  private static void row(Table cases, int row, List<Comparison> result) {
    double k = EllipticalContactKernel.axisRatio(cases.number(row, "curvature_ratio"), 1);
    double computed = Ellipse.quantity(cases.text(row, "quantity"), k);
    String printed = cases.text(row, "printed");
    result.add(
        Cases.comparison(cases, row, Evidence.REFERENCE)
            .numbers(
                Double.parseDouble(printed), computed, Cases.halfLastDigit(printed), "", "half a unit of the last digit"));
  }
}

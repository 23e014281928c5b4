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

/** Coefficients m, n and lambda of two old printed tables, recalled. */
final class HertzCoefficientSuite {
  private HertzCoefficientSuite() {}

  static Suite suite() {
    return RowSuite.of(
        "contact/hertz-coefficients",
        "Contact ellipse against recalled printed tables of coefficients",
        HertzCoefficientSuite::row,
        "holdfast.contact.EllipticalContactKernel#axisRatio",
        "holdfast.contact.EllipticalContactKernel#coefficientMajor",
        "holdfast.contact.EllipticalContactKernel#coefficientMinor",
        "holdfast.contact.EllipticalContactKernel#coefficientApproach");
  }

  private static void row(Table cases, int row, List<Comparison> result) {
    double cos = cases.number(row, "cos_theta");
    double k = EllipticalContactKernel.axisRatio(1 + cos, 1 - cos);
    double computed = Ellipse.quantity(cases.text(row, "quantity"), k);
    String printed = cases.text(row, "printed");
    result.add(
        Cases.comparison(cases, row, Evidence.RECALLED)
            .numbers(
                Double.parseDouble(printed), computed, Cases.halfLastDigit(printed), "",
                "half a unit of the last printed digit"));
  }
}

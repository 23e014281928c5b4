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

/** Axis ratio and coefficients of the contact ellipse, from circle to nearly a line. */
final class ContactEllipseSuite {
  private ContactEllipseSuite() {}

  static Suite suite() {
    return RowSuite.of(
        "contact/contact-ellipse",
        "Contact ellipse against arbitrary-precision arithmetic",
        ContactEllipseSuite::row,
        "holdfast.contact.EllipticalContactKernel#axisRatio",
        "holdfast.contact.EllipticalContactKernel#coefficientMajor",
        "holdfast.contact.EllipticalContactKernel#coefficientMinor",
        "holdfast.contact.EllipticalContactKernel#coefficientApproach");
  }

  private static void row(Table cases, int row, List<Comparison> result) {
    double k = EllipticalContactKernel.axisRatio(cases.number(row, "curvature_ratio"), 1);
    double computed = Ellipse.quantity(cases.text(row, "quantity"), k);
    double value = cases.number(row, "value");
    result.add(
        Cases.comparison(cases, row, Evidence.REFERENCE)
            .numbers(value, computed, 5e-15 * value, "", "rounding of the logarithm of the ratio in a double"));
  }
}

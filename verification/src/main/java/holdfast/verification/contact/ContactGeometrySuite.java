// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.contact;

import holdfast.contact.ContactGeometryKernel;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.RowSuite;
import holdfast.verification.Suite;
import java.util.List;

/** Curvatures of the gap against the eigenvalues of the summed curvature matrices. */
final class ContactGeometrySuite {
  private ContactGeometrySuite() {}

  static Suite suite() {
    return RowSuite.of(
        "contact/contact-geometry",
        "Curvatures of the gap against eigenvalues",
        ContactGeometrySuite::row,
        "holdfast.contact.ContactGeometryKernel#greater",
        "holdfast.contact.ContactGeometryKernel#lesser",
        "holdfast.contact.ContactGeometryKernel#sum");
  }

  private static void row(Table cases, int row, List<Comparison> result) {
    double c1 = cases.number(row, "c1");
    double c1t = cases.number(row, "c1t");
    double c2 = cases.number(row, "c2");
    double c2t = cases.number(row, "c2t");
    double angle = Math.toRadians(cases.number(row, "angle"));
    double computed =
        cases.text(row, "quantity").equals("greater")
            ? ContactGeometryKernel.greater(c1, c1t, c2, c2t, angle)
            : ContactGeometryKernel.lesser(c1, c1t, c2, c2t, angle);
    result.add(
        Cases.comparison(cases, row, Evidence.REFERENCE)
            .numbers(cases.number(row, "value"), computed, 1e-16, "1/mm", "roundings of the eigenvalue routine"));
  }
}

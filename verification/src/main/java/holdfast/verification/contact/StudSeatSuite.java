// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.contact;

import holdfast.seats.StudSeatKernel;
import holdfast.seats.StudSectionKernel;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.RowSuite;
import holdfast.verification.Suite;
import java.util.List;

/** Deflection and slope at the seat mouth, from short stiff studs to long seats. */
final class StudSeatSuite {
  private StudSeatSuite() {}

  static Suite suite() {
    return RowSuite.of(
        "contact/stud-seat",
        "Stud in an elastic seat against a solution of the beam equation",
        StudSeatSuite::row,
        "holdfast.seats.StudSeatKernel#mouthDeflection",
        "holdfast.seats.StudSeatKernel#mouthSlope",
        "holdfast.seats.StudSectionKernel#inertia");
  }

  private static void row(Table cases, int row, List<Comparison> result) {
    double stiffness = cases.number(row, "modulus") * StudSectionKernel.inertia(cases.number(row, "diameter"), 0);
    double force = cases.number(row, "force");
    double arm = cases.number(row, "arm");
    double foundation = cases.number(row, "foundation_modulus");
    double engaged = cases.number(row, "engaged_length");
    double computed =
        cases.text(row, "quantity").startsWith("slope")
            ? StudSeatKernel.mouthSlope(force, arm, foundation, stiffness, engaged)
            : StudSeatKernel.mouthDeflection(force, arm, foundation, stiffness, engaged);
    double value = cases.number(row, "value");
    result.add(
        Cases.comparison(cases, row, Evidence.REFERENCE)
            .numbers(value, computed, 1e-13 * value, "", "roundings of a double"));
  }
}

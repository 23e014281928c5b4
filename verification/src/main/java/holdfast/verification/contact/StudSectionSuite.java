// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.contact;

import holdfast.seats.StudBendingKernel;
import holdfast.seats.StudSectionKernel;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.RowSuite;
import holdfast.verification.Suite;
import java.util.List;

/** Closed forms of round sections and of the pressed seat mouth. */
final class StudSectionSuite {
  private StudSectionSuite() {}

  static Suite suite() {
    return RowSuite.of(
        "contact/stud-sections",
        "Sections and combined stresses of studs against quadrature",
        StudSectionSuite::row,
        "holdfast.seats.StudSectionKernel#area",
        "holdfast.seats.StudSectionKernel#inertia",
        "holdfast.seats.StudSectionKernel#modulus",
        "holdfast.seats.StudSectionKernel#shearPeak",
        "holdfast.seats.StudBendingKernel#atPressedMouth");
  }

  private static void row(Table cases, int row, List<Comparison> result) {
    double d = cases.number(row, "diameter");
    double bore = cases.number(row, "bore");
    double computed =
        switch (cases.text(row, "quantity")) {
          case "area" -> StudSectionKernel.area(d, bore);
          case "section modulus" -> StudSectionKernel.modulus(d, bore);
          case "shear peak" -> StudSectionKernel.shearPeak(d, bore);
          default -> StudBendingKernel.atPressedMouth(220, 0, cases.number(row, "pressure"), d, bore);
        };
    double value = cases.number(row, "value");
    result.add(
        Cases.comparison(cases, row, Evidence.REFERENCE)
            .numbers(value, computed, 2e-14 * value, "", "printed digits"));
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.contact;

import holdfast.seats.StudFatigueKernel;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.RowSuite;
import holdfast.verification.Suite;
import java.util.List;

/** Margins in the Haigh diagram; the lines themselves are recalled, the search only solves them. */
final class StudFatigueSuite {
  private StudFatigueSuite() {}

  static Suite suite() {
    return RowSuite.of(
        "contact/stud-fatigue",
        "Fatigue margins against a root search on the limit line",
        StudFatigueSuite::row,
        "holdfast.seats.StudFatigueKernel#goodman",
        "holdfast.seats.StudFatigueKernel#gerber",
        "holdfast.seats.StudFatigueKernel#soderberg");
  }

  private static void row(Table cases, int row, List<Comparison> result) {
    double amplitude = cases.number(row, "amplitude");
    double mean = cases.number(row, "mean");
    double computed =
        switch (cases.text(row, "criterion")) {
          case "Goodman" -> StudFatigueKernel.goodman(amplitude, mean, 320, 950);
          case "Gerber" -> StudFatigueKernel.gerber(amplitude, mean, 320, 950);
          default -> StudFatigueKernel.soderberg(amplitude, mean, 320, 700);
        };
    double value = cases.number(row, "value");
    result.add(
        Cases.comparison(cases, row, Evidence.REFERENCE)
            .numbers(value, computed, 2e-14 * value, "", "printed digits"));
  }
}

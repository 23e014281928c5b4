// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.seats;

import holdfast.quantity.KnownUnits;
import holdfast.seats.SurfaceRoughness;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.RowSuite;
import holdfast.verification.Suite;
import java.util.List;

/** Ra of the roughness grades in microinches. */
final class RoughnessGradeSuite {
  private RoughnessGradeSuite() {}

  static Suite suite() {
    return RowSuite.of(
        "seats/roughness-grades",
        "Roughness grades: Ra against the printed microinches",
        RoughnessGradeSuite::row,
        "holdfast.seats.SurfaceRoughness#ofGrade");
  }

  private static void row(Table cases, int row, List<Comparison> result) {
    double printed = cases.number(row, "ra_microinch");
    result.add(
        Cases.comparison(cases, row, Evidence.PRINT)
            .numbers(
                printed,
                SurfaceRoughness.ofGrade(cases.text(row, "grade")).ra().least().in(KnownUnits.UIN),
                printed * 0.02,
                "µin",
                "both series are rounded to preferred numbers, 1, 2, 4 … 63, 125 and 0.025, 0.05 … 1.6, 3.2"));
  }
}

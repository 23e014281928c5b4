// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.fits;

import holdfast.fits.ThermalFitKernel;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.RowSuite;
import holdfast.verification.Suite;
import java.util.List;

/** Clearances away from 20 °C against arithmetic with many digits. */
final class ThermalFitSuite {
  private ThermalFitSuite() {}

  static Suite suite() {
    return RowSuite.of(
        "fits/fits-at-temperature",
        "Clearances away from 20 °C against arithmetic with 40 digits",
        ThermalFitSuite::row,
        "holdfast.fits.ThermalFitKernel#clearance");
  }

  private static void row(Table cases, int row, List<Comparison> result) {
    double clearance =
        ThermalFitKernel.clearance(
            cases.number(row, "hole"),
            cases.number(row, "hole_expansion") * 1e-6,
            cases.number(row, "hole_temperature"),
            cases.number(row, "shaft"),
            cases.number(row, "shaft_expansion") * 1e-6,
            cases.number(row, "shaft_temperature"));
    result.add(
        Cases.comparison(cases, row, Evidence.REFERENCE)
            .numbers(cases.number(row, "clearance"), clearance * 1000, 1e-8, "µm", "noise of sizes in mm"));
  }
}

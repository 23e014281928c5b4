// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.fits;

import holdfast.fits.Fit;
import holdfast.fits.FitAtTemperature;
import holdfast.fits.LimitDeviations;
import holdfast.fits.ThermalFitKernel;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.quantity.Temperature;
import holdfast.quantity.ThermalExpansion;
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
        "holdfast.fits.ThermalFitKernel#clearance",
        "holdfast.fits.FitAtTemperature");
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
            .numbers(cases.number(row, "clearance"), alike(cases, row, clearance * 1000), 1e-8, "µm", "noise of sizes in mm"));
  }

  /** NaN, which never agrees, if a fit of one hole and one shaft says otherwise. */
  private static double alike(Table cases, int row, double clearance) {
    double hole = cases.number(row, "hole");
    Length nominal = new Length(Math.rint(hole));
    FitAtTemperature fit =
        new FitAtTemperature(
            new Fit(nominal, "one pair", exactly(hole, nominal), exactly(cases.number(row, "shaft"), nominal)),
            new ThermalExpansion(cases.number(row, "hole_expansion") * 1e-6),
            new ThermalExpansion(cases.number(row, "shaft_expansion") * 1e-6),
            new Temperature(cases.number(row, "hole_temperature")),
            new Temperature(cases.number(row, "shaft_temperature")));
    double least = fit.minimumClearance().in(KnownUnits.UM);
    double greatest = fit.maximumClearance().in(KnownUnits.UM);
    boolean alike = Math.abs(least - clearance) <= 1e-8 && Math.abs(greatest - clearance) <= 1e-8;
    return alike ? clearance : Double.NaN;
  }

  private static LimitDeviations exactly(double size, Length nominal) {
    Length deviation = new Length(size).minus(nominal);
    return new LimitDeviations(deviation, deviation);
  }
}

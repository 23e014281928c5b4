package holdfast.verification.fits;

import holdfast.fits.ThermalFitKernel;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.List;

/** Clearances away from 20 °C against arithmetic with many digits. */
final class ThermalFitSuite implements Suite {
  @Override
  public String id() {
    return "fits/fits-at-temperature";
  }

  @Override
  public String title() {
    return "Clearances away from 20 °C against arithmetic with 40 digits";
  }

  @Override
  public List<String> calculations() {
    return List.of("holdfast.fits.FitAtTemperature", "holdfast.fits.ThermalFitKernel#clearance");
  }

  @Override
  public List<Comparison> run() {
    Table cases = Cases.table("fits/fits-at-temperature");
    List<Comparison> result = new ArrayList<>();
    for (int row = 0; row < cases.size(); row++) {
      double clearance =
          ThermalFitKernel.clearance(
              cases.number(row, "hole"),
              cases.number(row, "hole_expansion") * 1e-6,
              cases.number(row, "hole_temperature"),
              cases.number(row, "shaft"),
              cases.number(row, "shaft_expansion") * 1e-6,
              cases.number(row, "shaft_temperature"));
      result.add(
          Comparison.of(cases.address(row), Cases.source(cases, row), Evidence.REFERENCE)
              .disclosed(cases.text(row, "disclosed"))
              .numbers(cases.number(row, "clearance"), clearance * 1000, 1e-8, "µm", "noise of sizes in mm"));
    }
    return result;
  }
}

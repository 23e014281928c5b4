package holdfast.verification.seats;

import holdfast.seats.ThermalSeatKernel;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.List;

/** The rise of temperature that opens a shrink fit: textbook examples. */
final class AssemblyTemperatureSuite implements Suite {
  @Override
  public String id() {
    return "seats/assembly-temperatures";
  }

  @Override
  public String title() {
    return "Heating for assembly against worked examples";
  }

  @Override
  public List<String> calculations() {
    return List.of("holdfast.seats.ThermalSeatKernel", "holdfast.seats.ThermalAssembly");
  }

  @Override
  public List<Comparison> run() {
    Table cases = Cases.table("seats/assembly-temperatures");
    List<Comparison> result = new ArrayList<>();
    for (int row = 0; row < cases.size(); row++) {
      double computed =
          ThermalSeatKernel.riseToOpen(
              cases.number(row, "interference"),
              cases.number(row, "clearance"),
              cases.number(row, "joint"),
              cases.number(row, "expansion") * 1e-6);
      result.add(
          Comparison.of(cases.address(row), Cases.source(cases, row), Evidence.WORKED_EXAMPLE)
              .disclosed(cases.text(row, "disclosed"))
              .numbers(
                  cases.number(row, "published"),
                  computed,
                  Cases.halfLastDigit(cases.text(row, "published")),
                  cases.text(row, "unit"),
                  "half a unit of the last printed digit"));
    }
    return result;
  }
}

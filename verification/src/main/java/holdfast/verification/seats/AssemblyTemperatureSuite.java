// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.seats;

import holdfast.seats.ThermalSeatKernel;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.RowSuite;
import holdfast.verification.Suite;
import java.util.List;

/** The rise of temperature that opens a shrink fit: textbook examples. */
final class AssemblyTemperatureSuite {
  private AssemblyTemperatureSuite() {}

  static Suite suite() {
    return RowSuite.of(
        "seats/assembly-temperatures",
        "Heating for assembly against worked examples",
        AssemblyTemperatureSuite::row,
        "holdfast.seats.ThermalSeatKernel", "holdfast.seats.ThermalAssembly");
  }

  private static void row(Table cases, int row, List<Comparison> result) {
    double computed =
        ThermalSeatKernel.riseToOpen(
            cases.number(row, "interference"),
            cases.number(row, "clearance"),
            cases.number(row, "joint"),
            cases.number(row, "expansion") * 1e-6);
    result.add(
        Cases.comparison(cases, row, Evidence.WORKED_EXAMPLE)
            .numbers(
                cases.number(row, "published"),
                computed,
                Cases.halfLastDigit(cases.text(row, "published")),
                cases.text(row, "unit"),
                "half a unit of the last printed digit"));
  }
}

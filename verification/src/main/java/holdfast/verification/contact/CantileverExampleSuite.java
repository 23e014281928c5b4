// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.contact;

import holdfast.seats.StudBeamKernel;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.RowSuite;
import holdfast.verification.Suite;
import java.util.List;

/** Worked examples of two textbooks; the loads of an example add. */
final class CantileverExampleSuite {
  private CantileverExampleSuite() {}

  static Suite suite() {
    return RowSuite.of(
        "contact/cantilever-examples",
        "Worked examples of cantilever deflection",
        CantileverExampleSuite::row,
        "holdfast.seats.StudBeamKernel#deflectionOfForce",
        "holdfast.seats.StudBeamKernel#slopeOfForce",
        "holdfast.seats.StudBeamKernel#deflectionOfMoment",
        "holdfast.seats.StudBeamKernel#deflectionOfLoad",
        "holdfast.seats.StudBeamKernel#slopeOfLoad");
  }

  private static void row(Table cases, int row, List<Comparison> result) {
    double stiffness = cases.number(row, "modulus") * cases.number(row, "inertia");
    double place = cases.number(row, "place");
    String quantity = cases.text(row, "quantity");
    double sum = 0;
    for (String load : cases.text(row, "loads").split(";", -1)) {
      sum += response(load.strip().split(" ", -1), quantity.equals("slope"), place, stiffness);
    }
    // "… for 5 mm": the load asked for, from the deflection of a unit load.
    double computed = (quantity.endsWith("for 5 mm") ? 5 / sum : sum) / cases.number(row, "printed_unit");
    String printed = cases.text(row, "printed");
    result.add(
        Cases.comparison(cases, row, Evidence.WORKED_EXAMPLE)
            .numbers(
                Double.parseDouble(printed), computed, Cases.halfLastDigit(printed), "",
                "half a unit of the last printed digit"));
  }

  private static double response(String[] load, boolean slope, double place, double stiffness) {
    double[] v = new double[4];
    for (int i = 1; i < load.length; i++) {
      v[i - 1] = Double.parseDouble(load[i]);
    }
    return switch (load[0]) {
      case "force" -> slope
          ? StudBeamKernel.slopeOfForce(v[0], v[1], place, stiffness)
          : StudBeamKernel.deflectionOfForce(v[0], v[1], place, stiffness);
      case "moment" -> StudBeamKernel.deflectionOfMoment(v[0], v[1], place, stiffness);
      default -> slope
          ? StudBeamKernel.slopeOfLoad(v[0], v[1], v[2], v[3], place, stiffness)
          : StudBeamKernel.deflectionOfLoad(v[0], v[1], v[2], v[3], place, stiffness);
    };
  }
}

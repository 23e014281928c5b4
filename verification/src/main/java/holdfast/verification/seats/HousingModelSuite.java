// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.seats;

import holdfast.seats.HousingShapeKernel;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.RowSuite;
import holdfast.verification.Suite;
import java.util.List;

/**
 * Bores near an edge and in a block. The closed form of the edge is independent of the models; what was taken from the
 * models themselves only guards against slips.
 */
final class HousingModelSuite {
  private static final String MESH = "mesh of the model: half a percent at the hole, one percent at the outline";
  private static final String TABLE = "half a unit of the fifth digit: the table was built from these results";

  private HousingModelSuite() {}

  static Suite suite() {
    return RowSuite.of(
        "seats/housing-models",
        "Housing shapes: stresses and equivalent rings against finite elements",
        HousingModelSuite::row,
        "holdfast.seats.HousingShapeKernel");
  }

  private static void row(Table cases, int row, List<Comparison> result) {
    Row c = new Row(cases, row);
    double x = c.get("half_size");
    if (c.text("kind").equals("edge")) {
      result.add(
          compare(c, "greatest_hoop", "disclosed_hoop", Evidence.REFERENCE, HousingShapeKernel.edgeHoop(x), 5e-3, MESH));
      result.add(
          compare(
              c, "outline_stress", "disclosed_outline", Evidence.REFERENCE, HousingShapeKernel.edgeOutline(x), 1e-2, MESH));
      result.add(own(c, "equivalent_diameter", HousingShapeKernel.edgeEquivalent(x)));
    } else {
      result.add(own(c, "greatest_hoop", HousingShapeKernel.squareHoop(x)));
      result.add(own(c, "outline_stress", HousingShapeKernel.squareOutline(x)));
      result.add(own(c, "equivalent_diameter", HousingShapeKernel.squareEquivalent(x)));
    }
  }

  private static Comparison own(Row c, String column, double computed) {
    return compare(c, column, "disclosed", Evidence.RECOMBINED, computed, 5e-6, TABLE);
  }

  private static Comparison compare(
      Row c, String column, String disclosed, Evidence evidence, double computed, double relative, String reason) {
    double value = c.get(column);
    return Comparison.of(
            c.table().address(c.index()) + ", " + column.replace('_', ' '), Cases.source(c.table(), c.index()), evidence)
        .disclosed(c.text(disclosed))
        .numbers(value, computed, value * relative, "", reason);
  }
}

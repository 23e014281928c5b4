package holdfast.verification.seats;

import holdfast.seats.HousingShapeKernel;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.List;

/**
 * Bores near an edge and in a block. The closed form of the edge is independent of the models; what was taken from the
 * models themselves only guards against slips.
 */
final class HousingModelSuite implements Suite {
  private static final String MESH = "mesh of the model: half a percent at the hole, one percent at the outline";
  private static final String TABLE = "half a unit of the fifth digit: the table was built from these results";

  @Override
  public String id() {
    return "seats/housing-models";
  }

  @Override
  public String title() {
    return "Housing shapes: stresses and equivalent rings against finite elements";
  }

  @Override
  public List<String> calculations() {
    return List.of("holdfast.seats.HousingShapeKernel");
  }

  @Override
  public List<Comparison> run() {
    Table cases = Cases.table("seats/housing-models");
    List<Comparison> result = new ArrayList<>();
    for (int row = 0; row < cases.size(); row++) {
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
    return result;
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

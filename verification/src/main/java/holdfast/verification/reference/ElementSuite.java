// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.reference;

import holdfast.bearings.reference.LoadDistribution;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Loads, contact angles and pressures of single rolling elements, for some of the cases of the tilted bearings. */
final class ElementSuite implements Suite {
  @Override
  public String id() {
    return "bearings/reference-elements";
  }

  @Override
  public String title() {
    return "Tilted bearings: load, contact angle and pressure of single elements against a computation without laminae";
  }

  @Override
  public List<String> calculations() {
    return List.of(
        "holdfast.bearings.reference.LoadDistributionKernel", "holdfast.bearings.reference.BallDistributionKernel",
        "holdfast.bearings.reference.LaminaKernel#pressure", "holdfast.bearings.reference.BallKernel#pressure");
  }

  @Override
  public List<Comparison> run() {
    Table bearings = Cases.table("bearings/reference-tilted-bearings");
    Table elements = Cases.table(id());
    Map<String, LoadDistribution> solved = new HashMap<>();
    List<Comparison> result = new ArrayList<>();
    for (int row = 0; row < elements.size(); row++) {
      int of = bearings.find("case", elements.text(row, "case"));
      boolean ball = bearings.text(of, "kind").equals("ball");
      LoadDistribution.Element element =
          solved.computeIfAbsent(elements.text(row, "case"), c -> TiltedBearingSuite.bearing(bearings, of, ball)
                  .life(TiltedBearingSuite.loading(bearings, of)).distribution())
              .elements().get((int) elements.number(row, "element"));
      // Laminae against a continuous length at the end of a contact, where the load sets in with a vertical tangent.
      double share = ball ? 1e-6 : 1e-5;
      String reason = ball ? "root search to 1e-7" : "1000 laminae against a continuous length";
      double load = bearings.number(of, "fr");
      add(result, elements, row, "load", element.load().newton(), share * load, "N", reason + ", of the radial load");
      add(result, elements, row, "pressure",
          element.laminae().stream().mapToDouble(l -> l.pressure().megapascal()).max().orElseThrow(), (ball ? 1e-5 : 1e-4) * 3000,
          "MPa", reason + ", of a pressure of 3000 MPa");
      if (ball) {
        add(result, elements, row, "contact_angle", element.contactAngle().radian(), 1e-6, "rad", reason);
      }
    }
    return result;
  }

  private static void add(
      List<Comparison> result, Table t, int row, String column, double ours, double tolerance, String unit, String reason) {
    result.add(
        Comparison.of(t.address(row) + ", " + column.replace('_', ' '), Cases.source(t, row), Evidence.REFERENCE)
            .disclosed(t.text(row, "disclosed"))
            .numbers(t.number(row, column), ours, tolerance, unit, reason));
  }
}

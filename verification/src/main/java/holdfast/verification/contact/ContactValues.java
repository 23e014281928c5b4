// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.contact;

import holdfast.contact.EllipticIntegralKernel;
import holdfast.contact.EllipticalContactKernel;
import holdfast.contact.LineContactKernel;
import holdfast.contact.OuterRingKernel;
import holdfast.contact.TrackCapacityKernel;
import holdfast.verification.CalculationSuite;
import holdfast.verification.NamedInputs;
import holdfast.verification.Suite;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/** Contacts and rings against values of general-purpose libraries, by another road where there is one. */
final class ContactValues {
  private static final Map<String, ToDoubleFunction<NamedInputs>> CALCULATIONS = Map.ofEntries(
      Map.entry("R_D", x -> EllipticIntegralKernel.symmetricSecondKind(x.get("x"), x.get("y"), x.get("z"))),
      Map.entry("ellipse, a", x -> ellipse(x, 0)),
      Map.entry("ellipse, b", x -> ellipse(x, 1)),
      Map.entry("ellipse, p0", x -> ellipse(x, 2)),
      Map.entry("ellipse, approach", x -> ellipse(x, 3)),
      Map.entry("ellipse, b/a", x -> ellipse(x, 4)),
      Map.entry("approach of an ellipse",
          x -> EllipticalContactKernel.approach(x.get("F"), x.get("E"), x.get("a"), x.get("k"))),
      Map.entry("peak pressures of ellipses", x -> {
        double[] pressures = new double[3];
        EllipticalContactKernel.peakPressures(forces(x), x.get("E"), x.get("B"), x.get("A"), pressures);
        return pressures[1];
      }),
      Map.entry("half width of a strip",
          x -> LineContactKernel.halfWidth(x.get("F"), x.get("L"), x.get("R"), x.get("E"))),
      Map.entry("peak pressures of strips", x -> {
        double[] pressures = new double[3];
        LineContactKernel.peakPressures(forces(x), x.get("L"), x.get("R"), x.get("E"), pressures);
        return pressures[1];
      }),
      Map.entry("bending stress of an outer ring", x -> OuterRingKernel.bendingStress(
          x.get("F"), x.get("D"), x.get("Di"), (int) x.get("z"), x.get("b"))),
      Map.entry("peak pressure in shop units",
          x -> TrackCapacityKernel.shopPressurePsi(x.get("F"), x.get("l"), x.get("D"))));

  private ContactValues() {}

  static Suite suite() {
    return CalculationSuite.of(
        "contact/computed-values", "Contacts and rings against values of general-purpose libraries", CALCULATIONS,
        List.of("holdfast.contact.EllipticIntegralKernel#symmetricSecondKind",
            "holdfast.contact.EllipticalContactKernel#solve", "holdfast.contact.EllipticalContactKernel#peakPressures",
            "holdfast.contact.LineContactKernel#halfWidth", "holdfast.contact.LineContactKernel#peakPressures",
            "holdfast.contact.OuterRingKernel#bendingStress", "holdfast.contact.TrackCapacityKernel#shopPressurePsi"));
  }

  private static double ellipse(NamedInputs x, int result) {
    double[] results = new double[EllipticalContactKernel.RESULTS];
    EllipticalContactKernel.solve(x.get("F"), x.get("E"), x.get("B"), x.get("A"), results);
    return results[result];
  }

  /** The wanted force between two others. */
  private static double[] forces(NamedInputs x) {
    return new double[] {1, x.get("F"), 2};
  }
}

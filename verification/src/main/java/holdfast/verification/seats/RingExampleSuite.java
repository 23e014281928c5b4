// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.seats;

import holdfast.seats.ElasticLimitKernel;
import holdfast.seats.EquivalentStressKernel;
import holdfast.seats.ThickRingKernel;
import holdfast.seats.YieldRule;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.RowSuite;
import holdfast.verification.Suite;
import java.util.List;

/** Thick rings under pressure: textbook examples. */
final class RingExampleSuite {
  private RingExampleSuite() {}

  static Suite suite() {
    return RowSuite.of(
        "seats/ring-examples",
        "Thick rings: stresses, growth and limit pressures against worked examples",
        RingExampleSuite::row,
        "holdfast.seats.ThickRingKernel", "holdfast.seats.EquivalentStressKernel", "holdfast.seats.ElasticLimitKernel");
  }

  private static void row(Table cases, int row, List<Comparison> result) {
    result.add(
        Cases.comparison(cases, row, Evidence.WORKED_EXAMPLE)
            .numbers(
                cases.number(row, "published"),
                computed(new Row(cases, row)),
                Cases.halfLastDigit(cases.text(row, "published")),
                cases.text(row, "unit"),
                "half a unit of the last printed digit"));
  }

  private static double computed(Row c) {
    double a = c.get("inner");
    double pi = c.or("inner_pressure", 0);
    double po = c.or("outer_pressure", 0);
    if (c.text("quantity").equals("wall for hoop limit")) {
      return ThickRingKernel.outerRadiusForHoop(a, pi, c.get("limit")) - a;
    }
    if (c.text("quantity").equals("outer radius for hoop limit")) {
      return ThickRingKernel.outerRadiusForHoop(a, pi, c.get("limit"));
    }
    double b = c.get("outer");
    return switch (c.text("quantity")) {
      case "hoop stress" -> ThickRingKernel.hoopStress(c.get("radius"), a, b, pi, po);
      case "radial stress" -> ThickRingKernel.radialStress(c.get("radius"), a, b, pi, po);
      case "greatest shear stress" ->
          EquivalentStressKernel.tresca(
                  ThickRingKernel.hoopStress(a, a, b, pi, po), -pi, ThickRingKernel.axialStressClosed(a, b, pi, po))
              / 2;
      case "growth of a closed cylinder" ->
          ThickRingKernel.radialDisplacementClosed(c.get("radius"), a, b, pi, po, c.get("modulus"), c.get("poisson"));
      case "pressure inside at hoop limit" ->
          ElasticLimitKernel.brittleHousingPressure(c.get("limit"), ThickRingKernel.hoopStress(a, a, b, 1, 0));
      case "pressure outside at hoop limit at the bore" ->
          ElasticLimitKernel.studPressure(YieldRule.VON_MISES, c.get("limit"), a / b);
      // For one unit of pressure inside; the outer pressure is its stated fraction.
      case "pressure inside at yield, greatest principal stress" ->
          c.get("limit") / ThickRingKernel.hoopStress(a, a, b, 1, po);
      case "pressure inside at yield, Tresca" ->
          c.get("limit") / EquivalentStressKernel.tresca(ThickRingKernel.hoopStress(a, a, b, 1, po), -1);
      case "pressure inside at yield, von Mises" ->
          c.get("limit") / EquivalentStressKernel.vonMises(ThickRingKernel.hoopStress(a, a, b, 1, po), -1);
      // Stress is linear in both pressures.
      case "pressure outside for hoop limit" ->
          (c.get("limit") - ThickRingKernel.hoopStress(a, a, b, pi, 0)) / ThickRingKernel.hoopStress(a, a, b, 0, 1);
      case "pressure inside for hoop limit" ->
          (c.get("limit") - ThickRingKernel.hoopStress(a, a, b, 0, po)) / ThickRingKernel.hoopStress(a, a, b, 1, 0);
      default -> throw new IllegalArgumentException("no such quantity: " + c.text("quantity"));
    };
  }
}

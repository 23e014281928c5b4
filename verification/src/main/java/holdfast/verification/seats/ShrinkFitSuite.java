// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.seats;

import holdfast.seats.RotationKernel;
import holdfast.seats.ThickRingKernel;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.RowSuite;
import holdfast.verification.Suite;
import java.util.List;

/** Shrink fits, compound cylinders and a turning shrink fit: textbook examples. */
final class ShrinkFitSuite {
  private ShrinkFitSuite() {}

  static Suite suite() {
    return RowSuite.of(
        "seats/fit-examples",
        "Interference fits: pressure, stresses, interference and rotation against worked examples",
        ShrinkFitSuite::row,
        "holdfast.seats.ThickRingKernel", "holdfast.seats.RotationKernel", "holdfast.seats.InterferenceFit#pressure");
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
    double a = c.get("hole") / 2;
    double r = c.get("joint") / 2;
    double b = c.get("outside") / 2;
    double inside = c.or("inner_pressure", 0);
    return switch (c.text("quantity")) {
      case "joint pressure" -> pressure(c, c.get("interference"));
      case "hoop stress, wall of the hole in the stud" -> ThickRingKernel.hoopStress(a, a, r, 0, given(c));
      case "hoop stress, stud at the joint" -> ThickRingKernel.hoopStress(r, a, r, 0, given(c));
      case "hoop stress, bore of the housing" -> ThickRingKernel.hoopStress(r, r, b, given(c), 0);
      case "hoop stress, outside of the housing" -> ThickRingKernel.hoopStress(b, r, b, given(c), 0);
      // A pressure inside acts on both parts as on one ring; the shrink stresses add.
      case "hoop stress with pressure inside, wall of the hole in the stud" ->
          ThickRingKernel.hoopStress(a, a, r, 0, given(c)) + ThickRingKernel.hoopStress(a, a, b, inside, 0);
      case "hoop stress with pressure inside, bore of the housing" ->
          ThickRingKernel.hoopStress(r, r, b, given(c), 0) + ThickRingKernel.hoopStress(r, a, b, inside, 0);
      case "radial interference of a pressure" ->
          ThickRingKernel.interference(
                  c.get("pressure"),
                  2 * r,
                  2 * a,
                  2 * b,
                  c.get("modulus"),
                  c.get("poisson"),
                  c.get("modulus"),
                  c.get("poisson"))
              / 2;
      case "radial interference lost at speed" -> lostAtSpeed(c) / 2;
      case "pressure of the interference lost at speed" -> pressure(c, lostAtSpeed(c));
      case "hoop stress at standstill of the interference lost at speed" ->
          ThickRingKernel.hoopStress(r, r, b, pressure(c, lostAtSpeed(c)), 0);
      case "hoop stress at the bore by rotation" ->
          RotationKernel.boreHoop(2 * r, 2 * b, c.get("density"), c.get("poisson"), c.get("speed"));
      default -> throw new IllegalArgumentException("no such quantity: " + c.text("quantity"));
    };
  }

  private static double given(Row c) {
    return c.table().has(c.index(), "pressure") ? c.get("pressure") : pressure(c, c.get("interference"));
  }

  /** NaN, which never agrees, if the form for many interferences says otherwise. */
  private static double pressure(Row c, double interference) {
    double[] interferences = {0.5 * interference, interference};
    double[] pressures = new double[2];
    double joint = c.get("joint");
    double hole = c.get("hole");
    double outside = c.get("outside");
    double modulus = c.get("modulus");
    double poisson = c.get("poisson");
    ThickRingKernel.pressures(interferences, joint, hole, outside, modulus, poisson, modulus, poisson, pressures);
    double one = ThickRingKernel.pressure(interference, joint, hole, outside, modulus, poisson, modulus, poisson);
    boolean alike = Math.abs(pressures[1] - one) <= 1e-12 * one && Math.abs(2 * pressures[0] - one) <= 1e-12 * one;
    return alike ? one : Double.NaN;
  }

  private static double lostAtSpeed(Row c) {
    return RotationKernel.interferenceLoss(
        c.get("joint"),
        c.get("hole"),
        c.get("outside"),
        c.get("density"),
        c.get("modulus"),
        c.get("poisson"),
        c.get("density"),
        c.get("modulus"),
        c.get("poisson"),
        c.get("speed"));
  }
}

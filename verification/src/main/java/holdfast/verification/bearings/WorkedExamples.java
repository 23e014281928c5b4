// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.bearings;

import holdfast.bearings.BasicLifeKernel;
import holdfast.bearings.BearingFamily;
import holdfast.bearings.BearingType;
import holdfast.bearings.DutyKernel;
import holdfast.bearings.DynamicRatingKernel;
import holdfast.bearings.EquivalentLoadKernel;
import holdfast.bearings.FactorFcKernel;
import holdfast.bearings.LubricationKernel;
import holdfast.bearings.RatingAdjustmentKernel;
import holdfast.bearings.ReliabilityKernel;
import holdfast.bearings.StaticRatingKernel;
import holdfast.verification.NamedInputs;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * The calculations of the worked examples, by name. Catalogues use a speed factor fn and a life factor fh, with
 * L10h = 500 h · fh^p and fh = fn C/P; they are expressed here through the life kernels.
 */
final class WorkedExamples {
  private static final BearingFamily BALL = BearingFamily.RADIAL_BALL;
  private static final BearingFamily ROLLER = BearingFamily.RADIAL_ROLLER;
  private static final Map<String, ToDoubleFunction<NamedInputs>> CALCULATIONS = Map.ofEntries(
      Map.entry("speed factor ball", x -> speedFactor(BALL, x.get("n"))),
      Map.entry("speed factor roller", x -> speedFactor(ROLLER, x.get("n"))),
      Map.entry("life factor ball", x -> lifeFactor(BALL, x)),
      Map.entry("life factor roller", x -> lifeFactor(ROLLER, x)),
      Map.entry("life hours ball", x -> BasicLifeKernel.hours(BasicLifeKernel.ball(x.get("C"), x.get("P")), x.get("n"))),
      Map.entry("life hours roller", x -> BasicLifeKernel.hours(BasicLifeKernel.roller(x.get("C"), x.get("P")), x.get("n"))),
      Map.entry("factored life hours roller",
          x -> BasicLifeKernel.hours(x.get("factor") * BasicLifeKernel.roller(x.get("C"), x.get("P")), x.get("n"))),
      Map.entry("hours from life factor roller", x -> 500 * BasicLifeKernel.roller(x.get("fh"), 1)),
      Map.entry("required rating ball", x -> BasicLifeKernel.requiredRating(
          BALL, x.get("P"), BasicLifeKernel.millionRevolutions(x.get("Lh"), x.get("n")))),
      Map.entry("allowable load ball", x -> BasicLifeKernel.allowableLoad(
          BALL, x.get("C"), BasicLifeKernel.millionRevolutions(x.get("Lh"), x.get("n")))),
      Map.entry("allowable load roller", x -> BasicLifeKernel.allowableLoad(
          ROLLER, x.get("C"), BasicLifeKernel.millionRevolutions(x.get("Lh"), x.get("n")))),
      Map.entry("reliability", x -> ReliabilityKernel.percent(x.get("a1"))),
      Map.entry("rating from factors roller", x -> ratingFromFactors(ROLLER, x.get("P"), x)),
      Map.entry("rating from loads and factors roller", x -> ratingFromFactors(
          ROLLER, EquivalentLoadKernel.combined(1, x.get("Y"), x.get("Fr"), x.get("Fa")), x)),
      Map.entry("relative axial load",
          x -> EquivalentLoadKernel.relativeAxialLoad(
              BearingType.DEEP_GROOVE_BALL, 1, x.get("f0"), x.get("Fa"), x.get("C0r"))),
      Map.entry("limit e", x -> EquivalentLoadKernel.radialBallE(1, 0, x.get("relative"))),
      Map.entry("axial factor", x -> EquivalentLoadKernel.radialBallY(
          1, 0, EquivalentLoadKernel.relativeAxialLoad(
              BearingType.DEEP_GROOVE_BALL, 1, x.get("f0"), x.get("Fa"), x.get("C0r")))),
      Map.entry("equivalent load",
          x -> EquivalentLoadKernel.combined(x.get("X"), x.get("Y"), x.get("Fr"), x.get("Fa"))),
      Map.entry("equivalent load 40 double row", x -> EquivalentLoadKernel.load(
          BearingType.ANGULAR_CONTACT_BALL, 2, Math.toRadians(40), 0, x.get("Fr"), x.get("Fa"))),
      Map.entry("system life",
          x -> DutyKernel.systemLife(new double[] {x.get("L1"), x.get("L2")}, ROLLER.weibullSlope())),
      Map.entry("viscosity ratio", x -> LubricationKernel.kappa(x.get("nu"), x.get("nu1"))),
      Map.entry("a1", x -> ReliabilityKernel.a1(x.get("S"))),
      Map.entry("factor fc", x -> FactorFcKernel.radialBall(
          BearingType.ANGULAR_CONTACT_BALL, 1, x.get("ratio") * Math.cos(x.angle("alpha")))),
      Map.entry("dynamic rating", x -> DynamicRatingKernel.radialBall(
          x.get("bm"), x.get("fc"), (int) x.get("i"), x.angle("alpha"), x.get("Z"), x.get("Dw"))),
      Map.entry("static rating", x -> StaticRatingKernel.radialBall(
          x.get("f0"), (int) x.get("i"), x.angle("alpha"), x.get("Z"), x.get("Dw"))),
      Map.entry("static rating per element", x -> StaticRatingKernel.radialBall(x.get("f0"), 1, x.angle("alpha"), 1, 1)),
      Map.entry("adjusted dynamic radial", x -> RatingAdjustmentKernel.dynamicRadialGroove(x.get("fc"), x.angle("alpha"))),
      Map.entry("adjusted dynamic thrust",
          x -> RatingAdjustmentKernel.dynamicThrustBearing(x.get("fc") * Math.tan(x.angle("alpha")))),
      Map.entry("adjusted dynamic thrust groove", x -> RatingAdjustmentKernel.dynamicThrustGroove(x.get("C"), x.angle("alpha"))),
      Map.entry("adjusted static radial", x -> RatingAdjustmentKernel.staticRadialGroove(x.get("C0r"), x.get("Y0"))),
      Map.entry("adjusted static thrust", x -> RatingAdjustmentKernel.staticThrustBearing(
          StaticRatingKernel.thrustBall(x.get("f0"), x.angle("alpha"), 1, 1))),
      Map.entry("adjusted static thrust groove",
          x -> RatingAdjustmentKernel.staticThrustGroove(x.get("C0r"), x.get("Y0"))));

  private WorkedExamples() {}

  static double compute(String calculation, String inputs) {
    ToDoubleFunction<NamedInputs> found = CALCULATIONS.get(calculation);
    if (found == null) {
      throw new IllegalArgumentException("no calculation is called '" + calculation + "'");
    }
    return found.applyAsDouble(NamedInputs.parse(inputs));
  }

  /** P/C for 500 h at a speed. */
  private static double speedFactor(BearingFamily family, double rpm) {
    return 1 / BasicLifeKernel.requiredRating(family, 1, BasicLifeKernel.millionRevolutions(500, rpm));
  }

  /** Speed that has a speed factor. */
  private static double speed(BearingFamily family, double speedFactor) {
    return BasicLifeKernel.allowableSpeed(BasicLifeKernel.l10(family, 1, speedFactor), 500);
  }

  private static double lifeFactor(BearingFamily family, NamedInputs x) {
    double life = BasicLifeKernel.l10(family, x.get("C"), x.get("P"));
    double hours = BasicLifeKernel.hours(life, speed(family, x.get("fn")));
    return BasicLifeKernel.requiredRating(family, 1, hours / 500);
  }

  private static double ratingFromFactors(BearingFamily family, double load, NamedInputs x) {
    double hours = 500 * BasicLifeKernel.l10(family, x.get("fh"), 1);
    return BasicLifeKernel.requiredRating(
        family, load, BasicLifeKernel.millionRevolutions(hours, speed(family, x.get("fn"))));
  }
}

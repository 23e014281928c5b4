// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import org.junit.jupiter.api.Test;

/** Lives, films, duties and distributions against their formulas with numbers that are easy to follow by hand. */
class LifeFormulasTest {
  private static final BearingFamily BALL = BearingFamily.RADIAL_BALL;
  private static final BearingFamily ROLLER = BearingFamily.RADIAL_ROLLER;

  private static String refused(Runnable call) {
    return assertThrows(InputException.class, call::run).parameter();
  }

  @Test
  void basicLivesAndTheirInverses() {
    assertEquals(64, BasicLifeKernel.ball(4, 1), 1e-12);
    // 8^(10/3) = 1024.
    assertEquals(1024, BasicLifeKernel.roller(8, 1), 1e-9);
    assertEquals(64, BasicLifeKernel.l10(BearingFamily.THRUST_BALL, 4, 1), 1e-12);
    assertEquals(1024, BasicLifeKernel.l10(BearingFamily.THRUST_ROLLER, 8, 1), 1e-9);
    // A million revolutions at 1000 rpm take 1000 min.
    assertEquals(1000.0 / 60, BasicLifeKernel.hours(1, 1000), 1e-12);
    assertEquals(0, BasicLifeKernel.hours(0, 1000));
    assertEquals(0.6, BasicLifeKernel.millionRevolutions(10, 1000), 1e-12);
    // A wheel of 1000/π mm rolls a metre each turn.
    assertEquals(3000, BasicLifeKernel.kilometres(3, 1000 / Math.PI), 1e-9);
    assertEquals(400, BasicLifeKernel.requiredRating(BALL, 100, 64), 1e-9);
    assertEquals(800, BasicLifeKernel.requiredRating(ROLLER, 100, 1024), 1e-9);
    assertEquals(100, BasicLifeKernel.allowableLoad(ROLLER, 800, 1024), 1e-9);
    assertEquals(1000, BasicLifeKernel.allowableSpeed(0.6, 10), 1e-9);
    double[] lives = new double[2];
    BasicLifeKernel.l10(new boolean[] {true, false}, new double[] {4, 8}, new double[] {1, 1}, lives);
    assertArrayEquals(new double[] {64, 1024}, lives, 1e-9);
    assertThrows(InputException.class,
        () -> BasicLifeKernel.l10(new boolean[] {true}, new double[2], new double[1], new double[1]));
    assertThrows(InputException.class,
        () -> BasicLifeKernel.l10(new boolean[] {true}, new double[] {1}, new double[2], new double[1]));
    assertThrows(InputException.class,
        () -> BasicLifeKernel.l10(new boolean[] {true}, new double[] {1}, new double[] {1}, new double[2]));
    assertEquals("rolling diameter D", refused(() -> BasicLifeKernel.kilometres(1, 0)));
    assertEquals(3, BALL.lifeExponent());
    assertEquals(10.0 / 3, ROLLER.lifeExponent());
    assertEquals(10.0 / 9, BALL.weibullSlope());
    assertEquals(9.0 / 8, ROLLER.weibullSlope());
  }

  @Test
  void factorsForReliabilityAsPrinted() {
    // ISO 281:2007, Table 12; half a unit of the last digit.
    double[][] table = {{90, 1, 0}, {95, 0.64, 0.005}, {96, 0.55, 0.005}, {97, 0.47, 0.005}, {98, 0.37, 0.005},
        {99, 0.25, 0.005}, {99.2, 0.22, 0.005}, {99.4, 0.19, 0.005}, {99.6, 0.16, 0.005}, {99.8, 0.12, 0.005},
        {99.9, 0.093, 0.0005}, {99.95, 0.077, 0.0005}};
    for (double[] row : table) {
      assertEquals(row[1], ReliabilityKernel.a1(row[0]), row[2], row[0] + " %");
    }
    // Up to 0.05 L10 nothing fails; at L10 nine of ten survive.
    assertEquals(1, ReliabilityKernel.survival(0));
    assertEquals(1, ReliabilityKernel.survival(0.05));
    assertTrue(ReliabilityKernel.survival(0.06) < 1);
    assertEquals(0.9, ReliabilityKernel.survival(1), 1e-12);
    assertEquals(90, ReliabilityKernel.percent(1), 1e-9);
    assertEquals(50, ReliabilityKernel.percent(ReliabilityKernel.a1(50)), 1e-9);
    assertEquals(99.95, ReliabilityKernel.percent(ReliabilityKernel.a1(99.95)), 1e-9);
    assertEquals("life modification factor a1", refused(() -> ReliabilityKernel.percent(0.07)));
    assertEquals("reliability S", refused(() -> ReliabilityKernel.a1(99.951)));
  }

  @Test
  void films() {
    // ISO 281:2007, 9.3.3.2: 45000 n^-0.83 Dpw^-0.5 below 1000 rpm, 4500 n^-0.5 Dpw^-0.5 from there.
    assertEquals(45_000 * Math.pow(10, -1.66) / 10, LubricationKernel.referenceViscosity(100, 100), 1e-9);
    assertEquals(15, LubricationKernel.referenceViscosity(1000, 90), 1e-12);
    assertEquals(7.5, LubricationKernel.referenceViscosity(4000, 90), 1e-12);
    assertEquals(2, LubricationKernel.kappa(30, 15), 1e-12);
    assertEquals(2, LubricationKernel.kappa(30, 1000, 90), 1e-12);
    assertEquals(Math.pow(10, 1.3), LubricationKernel.kappaFromFilm(10), 1e-9);
    assertEquals("reference viscosity ν1", refused(() -> LubricationKernel.kappa(30, 0.0)));
    assertEquals("viscosity ν", refused(() -> LubricationKernel.kappa(0, 15)));
    assertEquals("speed n", refused(() -> LubricationKernel.referenceViscosity(0, 90)));
    assertEquals("pitch diameter Dpw", refused(() -> LubricationKernel.referenceViscosity(10, 0)));
  }

  @Test
  void contaminationFactors() {
    // a κ^0.68 Dpw^0.55 (1 - c/∛Dpw) with Dpw = 1000 mm, so that ∛Dpw = 10.
    assertEquals(0.001 * Math.pow(1000, 0.55) * 0.5, ContaminationKernel.factor(0.001, 5, 1, 1000), 1e-12);
    assertEquals(0.001 * Math.pow(0.5, 0.68) * Math.pow(1000, 0.55) * 0.5, ContaminationKernel.factor(0.001, 5, 0.5, 1000), 1e-12);
    assertEquals(0.8, ContaminationKernel.factor(1, 2, 1, 1000), 1e-12);
    assertEquals(0, ContaminationKernel.factor(1, 20, 1, 1000));
    assertEquals("viscosity ratio κ", refused(() -> ContaminationKernel.factor(1, 2, 0, 1000)));
    assertEquals("coefficient a", refused(() -> ContaminationKernel.factor(0, 2, 1, 1000)));
    assertEquals("pitch diameter Dpw", refused(() -> ContaminationKernel.factor(1, 2, 1, 0)));
  }

  @Test
  void modificationFactorsByTheirEquations() {
    // ISO 281:2007, equations (31) to (36), written out for one κ of each branch.
    double[][] branches = {{0.2, 2.2649, 1.3993, 0.054381}, {0.5, 1.9987, 1.2348, 0.19087}, {2, 1.9987, 1.2348, 0.071739}};
    for (double[] b : branches) {
      double ball = 1 - Math.pow(2.5671 - b[1] / Math.pow(b[0], b[3]), 0.83) * Math.pow(0.3, 1.0 / 3);
      assertEquals(0.1 * Math.pow(ball, -9.3), LifeModificationKernel.radialBall(b[0], 0.3), 1e-9, "ball, κ = " + b[0]);
      double roller = 1 - (1.5859 - b[2] / Math.pow(b[0], b[3])) * Math.pow(0.3, 0.4);
      assertEquals(0.1 * Math.pow(roller, -9.185), LifeModificationKernel.radialRoller(b[0], 0.3), 1e-9, "roller, κ = " + b[0]);
      // Thrust bearings: a third and 1/2.5 of the argument.
      assertEquals(LifeModificationKernel.radialBall(b[0], 0.3), LifeModificationKernel.thrustBall(b[0], 0.9), 1e-12);
      assertEquals(LifeModificationKernel.radialRoller(b[0], 0.3), LifeModificationKernel.thrustRoller(b[0], 0.75), 1e-12);
    }
    assertEquals(LifeModificationKernel.radialBall(4, 0.1), LifeModificationKernel.radialBall(40, 0.1));
    assertEquals("eC Cu/P", refused(() -> LifeModificationKernel.radialBall(1, -0.1)));
    assertEquals("fatigue load limit Cu", refused(() -> LifeModificationKernel.life(BALL, 1, 0, 1, 90, 1, 1)));
    assertEquals("contamination factor eC", refused(() -> LifeModificationKernel.life(BALL, 1, 1, 1, 90, 1, 1.01)));
    // a1 aISO L10 with eC Cu/P = 0.5·0.6/1.
    assertEquals(ReliabilityKernel.a1(95) * LifeModificationKernel.radialBall(2, 0.3) * 64,
        LifeModificationKernel.life(BALL, 4, 0.6, 1, 95, 2, 0.5), 1e-9);
  }

  @Test
  void additivesCountFromTwoTenthsOfCleanliness() {
    double real = LifeModificationKernel.factor(BALL, 0.5, 0.2 * 0.4);
    assertTrue(LifeModificationKernel.withAdditives(BALL, 0.5, 0.2, 0.2, 0.4) > real);
    assertEquals(LifeModificationKernel.factor(BALL, 0.5, 0.199 * 0.4), LifeModificationKernel.withAdditives(BALL, 0.5, 0.199, 0.199, 0.4));
    assertEquals("contamination factor eC", refused(() -> LifeModificationKernel.withAdditives(BALL, 0.5, 1.1, 1.1, 0.4)));
  }

  @Test
  void inversesOfTheModifiedLife() {
    double life = LifeModificationKernel.withAdditives(ROLLER, 0.5, 0.5, 0.5, 4000.0 / 10_000) * BasicLifeKernel.roller(1e5, 1e4);
    assertEquals(1e4, InverseLifeKernel.allowableLoad(ROLLER, 1e5, 4000, 90, 0.5, 0.5, true, 0.5, life), 1e-3);
    assertEquals("wanted life", refused(() -> InverseLifeKernel.allowableLoad(ROLLER, 1e5, 4000, 90, 0.5, 0.5, true, 0.5, 0)));
    assertEquals("fatigue load limit Cu",
        refused(() -> InverseLifeKernel.allowableLoad(ROLLER, 1e5, 0, 90, 0.5, 0.5, true, 0.5, 10)));
    double atTwo = LifeModificationKernel.life(BALL, 1e5, 4000, 1e4, 90, 2, 0.5);
    assertEquals(2, InverseLifeKernel.requiredKappa(BALL, 1e5, 4000, 1e4, 90, k -> 0.5, atTwo), 1e-6);
    // A life that the thinnest film gives already needs no more than it; the longest is that at κ = 4.
    double least = LifeModificationKernel.life(BALL, 1e5, 4000, 1e4, 90, 0.1, 0.5);
    assertEquals(0.1, InverseLifeKernel.requiredKappa(BALL, 1e5, 4000, 1e4, 90, k -> 0.5, least));
    double most = LifeModificationKernel.life(BALL, 1e5, 4000, 1e4, 90, 4, 0.5);
    assertEquals(4, InverseLifeKernel.requiredKappa(BALL, 1e5, 4000, 1e4, 90, k -> 0.5, most), 1e-6);
    assertEquals("wanted life",
        refused(() -> InverseLifeKernel.requiredKappa(BALL, 1e5, 4000, 1e4, 90, k -> 0.5, 1.001 * most)));
    assertEquals("wanted life", refused(() -> InverseLifeKernel.requiredKappa(BALL, 1e5, 4000, 1e4, 90, k -> 0.5, 0)));
  }

  @Test
  void meansOfDuties() {
    double[] rpm = {100, 300};
    double[] time = {3, 1};
    assertEquals(150, DutyKernel.meanSpeed(rpm, time), 1e-12);
    // Equal revolutions at 1 and 2: ((1 + 8)/2)^(1/3).
    assertEquals(Math.cbrt(4.5), DutyKernel.meanLoad(3, new double[] {1, 2}, rpm, time), 1e-12);
    assertEquals(0, DutyKernel.meanLoad(3, new double[] {0, 0}, rpm, time));
    assertEquals(1.5, DutyKernel.damageLife(new double[] {1, 1}, new double[] {1, 3}), 1e-12);
    assertEquals("life of a step", refused(() -> DutyKernel.damageLife(new double[] {1}, new double[] {0})));
    assertEquals("sum of the shares", refused(() -> DutyKernel.damageLife(new double[] {0}, new double[] {1})));
    assertThrows(InputException.class, () -> DutyKernel.damageLife(new double[] {1}, new double[] {1, 2}));
    assertThrows(InputException.class, () -> DutyKernel.meanLoad(3, new double[] {1}, rpm, time));
    assertThrows(InputException.class, () -> DutyKernel.meanSpeed(rpm, new double[] {1}));
    assertEquals("life exponent p", refused(() -> DutyKernel.meanLoad(0.99, new double[] {1, 2}, rpm, time)));
    // From zero: mean of x³ is 1/4. Equal ends: the load itself.
    assertEquals(1000 * Math.cbrt(0.25), DutyKernel.linear(3, 0, 1000), 1e-9);
    assertEquals(1000, DutyKernel.linear(3, 1000, 1000), 1e-9);
    assertEquals((400 + 2000) / 3.0, DutyKernel.linearRule(400, 1000), 1e-12);
    // Mean of sin² is 1/2, of sin⁴ 3/8.
    assertEquals(1000 * Math.sqrt(0.5), DutyKernel.rectifiedSine(2, 1000), 1e-9);
    assertEquals(1000 * Math.sqrt(0.375), DutyKernel.sinusoid(2, 1000), 1e-9);
    assertEquals(1500, DutyKernel.stationaryAndRotating(1000, 1000), 1e-9);
    assertEquals(1000 + 60 + 8, DutyKernel.stationaryAndRotating(200, 1000), 1e-9);
    assertEquals("larger load", refused(() -> DutyKernel.stationaryAndRotating(0, 0)));
    assertEquals("greatest load Pmax", refused(() -> DutyKernel.sinusoid(3, 0)));
    assertEquals("greatest load Pmax", refused(() -> DutyKernel.rectifiedSine(3, 0)));
    assertEquals("least load Pmin", refused(() -> DutyKernel.linearRule(2, 1)));
    assertEquals("least load Pmin", refused(() -> DutyKernel.linear(3, -1, 1)));
    assertEquals("life exponent p", refused(() -> DutyKernel.linear(21, 0, 1)));
  }

  @Test
  void swingsAndSystems() {
    // Neighbouring tracks meet when an element rolls its pitch: 2π/(Z (1 - γ)).
    assertEquals(Math.PI / 8, DutyKernel.criticalHalfSwing(20, 0.2), 1e-12);
    assertEquals("ratio γ = Dw cos α/Dpw", refused(() -> DutyKernel.criticalHalfSwing(20, 1)));
    assertEquals("ratio γ = Dw cos α/Dpw", refused(() -> DutyKernel.criticalHalfSwing(20, -0.1)));
    assertEquals(4, DutyKernel.oscillation(2, Math.PI / 4), 1e-12);
    assertEquals(1000 * Math.cbrt(0.5), DutyKernel.oscillationLoad(3, 1000, Math.PI / 4), 1e-9);
    // Three like bearings: L 3^(-1/e).
    assertEquals(900 / Math.pow(3, 1 / 1.125), DutyKernel.systemLife(new double[] {900, 900, 900}, 1.125), 1e-9);
    // Slope 1: rates add, 1/(1/300 + 1/600).
    assertEquals(200, DutyKernel.systemLife(new double[] {300, 600}, 1), 1e-9);
    assertEquals("lives", refused(() -> DutyKernel.systemLife(new double[0], 1)));
    assertEquals("Weibull slope", refused(() -> DutyKernel.systemLife(new double[] {1}, 0.09)));
  }

  @Test
  void weibullByItsDefinition() {
    assertEquals(Math.exp(-1), WeibullKernel.survival(150, 2, 100, 50), 1e-12);
    assertEquals(Math.exp(-0.25), WeibullKernel.survival(100, 2, 100, 50), 1e-12);
    assertEquals(1, WeibullKernel.survival(50, 2, 100, 50));
    assertEquals(150, WeibullKernel.life(Math.exp(-1), 2, 100, 50), 1e-9);
    assertEquals(50, WeibullKernel.life(1, 2, 100, 50), 1e-9);
    assertEquals(100, WeibullKernel.scale(150, Math.exp(-1), 2, 50), 1e-9);
    assertEquals("share that survives", refused(() -> WeibullKernel.scale(150, 1, 2, 50)));
    assertEquals("share that survives", refused(() -> WeibullKernel.scale(150, 0, 2, 50)));
    assertEquals("life less the minimum life", refused(() -> WeibullKernel.scale(50, 0.5, 2, 50)));
    assertEquals("Weibull scale η", refused(() -> WeibullKernel.survival(1, 2, 0, 0)));
    assertEquals("minimum life γ", refused(() -> WeibullKernel.life(0.5, 2, 1, -1)));
    assertEquals("Weibull slope", refused(() -> WeibullKernel.scale(2, 0.5, 1001, 0)));
  }

  @Test
  void likelihoodOfTwoLivesInClosedForm() {
    // For two lives a and b the likelihood equation becomes v tanh v = 1 with v = β ln(b/a)/2; v = 1.19967864025773.
    double[] lives = {100, 200};
    assertEquals(2 * 1.19967864025773 / Math.log(2), WeibullKernel.maximumLikelihoodSlope(lives), 1e-9);
    // η^β is the mean of t^β: the mean itself with slope 1, the root of 12.5 with slope 2.
    assertEquals(150, WeibullKernel.maximumLikelihoodScale(lives, 1), 1e-9);
    assertEquals(Math.sqrt(12.5), WeibullKernel.maximumLikelihoodScale(new double[] {3, 4}, 2), 1e-12);
    assertEquals("lives", refused(() -> WeibullKernel.maximumLikelihoodScale(new double[0], 2)));
    assertEquals("lives", refused(() -> WeibullKernel.maximumLikelihoodSlope(new double[0])));
    assertEquals("life", refused(() -> WeibullKernel.maximumLikelihoodSlope(new double[] {1, 0})));
    assertEquals("Weibull slope", refused(() -> WeibullKernel.maximumLikelihoodScale(lives, 0.05)));
  }

  @Test
  void likelihoodWithSuspensionsInClosedForm() {
    // A failure at a and a suspension at b: v = 1 + e^-v with v = β ln(b/a), v = 1.278464542761074.
    double[] lives = {100, 200};
    boolean[] first = {true, false};
    double slope = WeibullKernel.maximumLikelihoodSlope(lives, first);
    assertEquals(1.278464542761074 / Math.log(2), slope, 1e-9);
    assertEquals(Math.pow(Math.pow(100, slope) + Math.pow(200, slope), 1 / slope),
        WeibullKernel.maximumLikelihoodScale(lives, first, slope), 1e-9);
    assertEquals(300, WeibullKernel.maximumLikelihoodScale(lives, first, 1), 1e-9);
    assertEquals("lives", refused(() -> WeibullKernel.maximumLikelihoodSlope(lives, new boolean[] {false, true})));
    assertEquals("failures", refused(() -> WeibullKernel.maximumLikelihoodSlope(lives, new boolean[2])));
    assertEquals("failures", refused(() -> WeibullKernel.maximumLikelihoodScale(lives, new boolean[2], 1)));
    assertEquals("lives", refused(() -> WeibullKernel.maximumLikelihoodSlope(new double[] {1, 1 + 1e-5})));
    assertEquals("marks of failure", refused(() -> WeibullKernel.maximumLikelihoodSlope(lives, new boolean[1])));
  }

  @Test
  void viscosityIndexOfTheExamplesOfItsMethod() {
    // ASTM D2270, examples of procedures A (73.30 and 8.86 mm²/s: 92) and B (22.83 and 5.05 mm²/s: 156), recalled.
    assertEquals(92, ViscosityKernel.viscosityIndex(73.30, 8.86), 0.5);
    assertEquals(156, ViscosityKernel.viscosityIndex(22.83, 5.05), 0.5);
    // The reference oils themselves have 0 and 100.
    assertEquals(0, ViscosityKernel.viscosityIndex(ViscosityKernel.lowReference(10), 10), 1e-9);
    assertEquals(100, ViscosityKernel.viscosityIndex(ViscosityKernel.highReference(10), 10), 1e-9);
    assertEquals("viscosity at 40 °C", refused(() -> ViscosityKernel.viscosityIndex(10, 10)));
    assertEquals("viscosity at 40 °C", refused(() -> ViscosityKernel.viscosityIndex(1e7, 10)));
    assertEquals("viscosity at 100 °C", refused(() -> ViscosityKernel.viscosityIndex(10, 1.99)));
    assertEquals("viscosity at 40 °C", refused(() -> ViscosityKernel.at100(3, 0)));
    assertEquals("viscosity index VI", refused(() -> ViscosityKernel.at100(100, 251)));
  }
}

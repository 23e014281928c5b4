// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import org.junit.jupiter.api.Test;

/** Ratings, factors and limits against the formulas of the standards with numbers that are easy to follow by hand. */
class RatingFormulasTest {
  private static final double DEG_30 = Math.toRadians(30);
  private static final double DEG_60 = Math.toRadians(60);
  private static final double DEG_90 = Math.PI / 2;

  private static String refused(Runnable call) {
    return assertThrows(InputException.class, call::run).parameter();
  }

  @Test
  void dynamicRatingsOfBalls() {
    // ISO 281:2007, 5.1: bm fc (i cos α)^0.7 Z^(2/3) Dw^1.8 with Z = 8, so that Z^(2/3) = 4.
    assertEquals(1.3 * 50 * 4 * Math.pow(10, 1.8), DynamicRatingKernel.radialBall(1.3, 50, 1, 0, 8, 10), 1e-6);
    assertEquals(1.3 * 50 * Math.pow(2 * Math.cos(DEG_30), 0.7) * 4 * Math.pow(10, 1.8),
        DynamicRatingKernel.radialBall(1.3, 50, 2, DEG_30, 8, 10), 1e-6);
    // Over 25.4 mm: 3.647 Dw^1.4.
    assertEquals(1.3 * 50 * 4 * 3.647 * Math.pow(100, 1.4), DynamicRatingKernel.radialBall(1.3, 50, 1, 0, 8, 100), 1e-5);
    // 6.1.1: at 90° no factor of the angle, else (cos α)^0.7 tan α.
    assertEquals(1.3 * 50 * 4 * Math.pow(10, 1.8), DynamicRatingKernel.thrustBall(1.3, 50, DEG_90, 8, 10), 1e-6);
    assertEquals(1.3 * 50 * Math.pow(0.5, 0.7) * Math.sqrt(3) * 4 * Math.pow(10, 1.8),
        DynamicRatingKernel.thrustBall(1.3, 50, DEG_60, 8, 10), 1e-6);
  }

  @Test
  void dynamicRatingsOfRollers() {
    // 7.1: bm fc (i Lwe cos α)^(7/9) Z^(3/4) Dwe^(29/27) with Z = 16, so that Z^(3/4) = 8.
    double rollers = 8 * Math.pow(10, 29.0 / 27);
    assertEquals(1.1 * 80 * Math.pow(2 * 15 * Math.cos(DEG_30), 7.0 / 9) * rollers,
        DynamicRatingKernel.radialRoller(1.1, 80, 2, DEG_30, 16, 10, 15), 1e-6);
    assertEquals(1.1 * 80 * Math.pow(15, 7.0 / 9) * rollers, DynamicRatingKernel.thrustRoller(1.1, 80, DEG_90, 16, 10, 15), 1e-6);
    assertEquals(1.1 * 80 * Math.pow(15 * 0.5, 7.0 / 9) * Math.sqrt(3) * rollers,
        DynamicRatingKernel.thrustRoller(1.1, 80, DEG_60, 16, 10, 15), 1e-6);
  }

  @Test
  void rowsAndTandems() {
    assertEquals(1000 * Math.pow(3, 0.7), DynamicRatingKernel.tandem(BearingFamily.RADIAL_BALL, 1000, 3), 1e-9);
    assertEquals(1000 * Math.pow(3, 7.0 / 9), DynamicRatingKernel.tandem(BearingFamily.RADIAL_ROLLER, 1000, 3), 1e-9);
    assertEquals("family", refused(() -> DynamicRatingKernel.tandem(BearingFamily.THRUST_BALL, 1000, 3)));
    // A row with half the rating of its like: (10 + 10) [(10/1000)^w + (10/500)^w]^(-1/w) = 2000 (1 + 2^w)^(-1/w).
    assertEquals(2000 * Math.pow(1 + Math.pow(2, 10.0 / 3), -0.3),
        DynamicRatingKernel.thrustBallRows(new double[] {10, 10}, new double[] {1000, 500}), 1e-9);
    assertEquals(2000 * Math.pow(1 + Math.pow(2, 4.5), -2.0 / 9), DynamicRatingKernel.thrustRollerRows(
        new double[] {10, 10}, new double[] {8, 8}, new double[] {1000, 500}), 1e-9);
    // Lengths count like numbers: 5 rollers of 16 mm for 10 of 8 mm.
    assertEquals(2000 * Math.pow(1 + Math.pow(2, 4.5), -2.0 / 9), DynamicRatingKernel.thrustRollerRows(
        new double[] {5, 10}, new double[] {16, 8}, new double[] {1000, 500}), 1e-9);
    assertEquals("rows", refused(() -> DynamicRatingKernel.thrustBallRows(new double[0], new double[0])));
    assertThrows(InputException.class, () -> DynamicRatingKernel.thrustBallRows(new double[] {5}, new double[] {1, 2}));
    assertThrows(InputException.class,
        () -> DynamicRatingKernel.thrustRollerRows(new double[] {5}, new double[] {1}, new double[] {1, 2}));
    assertThrows(InputException.class,
        () -> DynamicRatingKernel.thrustRollerRows(new double[] {5}, new double[] {1, 2}, new double[] {1}));
  }

  @Test
  void numbersOfRowsAndElementsBeginAtOne() {
    assertEquals(1, DynamicRatingKernel.checkElements(1));
    assertEquals("number of rolling elements Z", refused(() -> DynamicRatingKernel.checkElements(0.99)));
    assertEquals("number of rolling elements Z", refused(() -> DynamicRatingKernel.checkElements(1e6)));
    assertEquals(1, DynamicRatingKernel.checkRows(1));
    assertEquals("number of rows i", refused(() -> DynamicRatingKernel.checkRows(0)));
    for (double bad : new double[] {0, -1, Double.NaN}) {
      assertEquals("rating factor bm", refused(() -> DynamicRatingKernel.radialBall(bad, 50, 1, 0, 8, 10)));
      assertEquals("factor fc", refused(() -> DynamicRatingKernel.thrustBall(1, bad, DEG_90, 8, 10)));
      assertEquals("diameter of the rolling elements", refused(() -> DynamicRatingKernel.radialBall(1, 50, 1, 0, 8, bad)));
      assertEquals("effective roller length Lwe", refused(() -> DynamicRatingKernel.radialRoller(1, 50, 1, 0, 8, 10, bad)));
      assertEquals("effective roller length Lwe", refused(() -> DynamicRatingKernel.thrustRoller(1, 50, DEG_90, 8, 10, bad)));
    }
    assertEquals("contact angle α", refused(() -> DynamicRatingKernel.thrustBall(1, 50, DEG_30, 8, 10)));
    assertEquals("contact angle α", refused(() -> DynamicRatingKernel.thrustRoller(1, 50, DEG_30, 8, 10, 10)));
  }

  @Test
  void staticRatings() {
    // ISO 76:2006, 5.1.1: f0 i Z Dw² cos α; 5.2: f0 Z Dw² sin α.
    assertEquals(15 * 2 * 10 * 64 * Math.cos(DEG_30), StaticRatingKernel.radialBall(15, 2, DEG_30, 10, 8), 1e-9);
    assertEquals(50 * 10 * 64 * Math.sin(DEG_60), StaticRatingKernel.thrustBall(50, DEG_60, 10, 8), 1e-9);
    // 6.1: 44 (1 - Dwe cos α/Dpw) i Z Lwe Dwe cos α = 44 · 0.9 · 2 · 10 · 15 · 10.
    assertEquals(118_800, StaticRatingKernel.radialRoller(2, 0, 10, 10, 15, 100), 1e-6);
    assertEquals(44 * (1 - 0.1 * Math.cos(DEG_30)) * 2 * 10 * 15 * 10 * Math.cos(DEG_30),
        StaticRatingKernel.radialRoller(2, DEG_30, 10, 10, 15, 100), 1e-6);
    // 6.2: 220 (1 - Dwe cos α/Dpw) Z Lwe Dwe sin α.
    assertEquals(330_000, StaticRatingKernel.thrustRoller(DEG_90, 10, 10, 15, 100), 1e-6);
    assertEquals(220 * 0.95 * 1500 * Math.sin(DEG_60), StaticRatingKernel.thrustRoller(DEG_60, 10, 10, 15, 100), 1e-6);
    assertEquals("contact angle α", refused(() -> StaticRatingKernel.thrustRoller(DEG_30, 10, 10, 15, 100)));
    assertEquals("pitch diameter Dpw", refused(() -> StaticRatingKernel.radialRoller(1, 0, 10, 10, 15, 10)));
    assertEquals("pitch diameter Dpw", refused(() -> StaticRatingKernel.checkPitch(1.001 * Check.GREATEST, 10)));
    StaticRatingKernel.checkPitch(Check.GREATEST, 10);
    assertEquals("roller diameter Dwe", refused(() -> StaticRatingKernel.radialRoller(1, 0, 10, 0, 15, 10)));
    assertEquals("factor f0", refused(() -> StaticRatingKernel.radialBall(0, 1, 0, 10, 8)));
    assertEquals("ball diameter Dw", refused(() -> StaticRatingKernel.thrustBall(10, DEG_90, 10, 0)));
  }

  @Test
  void factorsOfTheTablesByType() {
    // ISO 76:2006, Table 1 at 0.10: 16.4, self-aligning 2.4, thrust 53.5.
    assertEquals(16.4, StaticRatingKernel.f0(BearingType.DEEP_GROOVE_BALL, 0.10), 1e-12);
    assertEquals(2.4, StaticRatingKernel.f0(BearingType.SELF_ALIGNING_BALL, 0.10), 1e-12);
    assertEquals(53.5, StaticRatingKernel.f0(BearingType.THRUST_BALL, 0.10), 1e-12);
    assertEquals("type of bearing", refused(() -> StaticRatingKernel.f0(BearingType.TAPERED_ROLLER, 0.10)));
    // ISO 281:2007, Table 2 at 0.10 and Tables 4, 7 and 10.
    assertEquals(55.5, FactorFcKernel.radialBall(BearingType.DEEP_GROOVE_BALL, 1, 0.10), 1e-12);
    assertEquals(52.6, FactorFcKernel.radialBall(BearingType.INSERT_BALL, 2, 0.10), 1e-12);
    assertEquals(55.5, FactorFcKernel.radialBall(BearingType.ANGULAR_CONTACT_BALL, 2, 0.10), 1e-12);
    assertEquals(23.4, FactorFcKernel.radialBall(BearingType.SELF_ALIGNING_BALL, 2, 0.10), 1e-12);
    assertEquals(21.5, FactorFcKernel.radialBall(BearingType.MAGNETO_BALL, 1, 0.10), 1e-12);
    assertEquals(84.2, FactorFcKernel.radialRoller(0.10), 1e-12);
    assertEquals(73.3, FactorFcKernel.thrustBall(DEG_90, 0.10), 1e-12);
    assertEquals(175.7, FactorFcKernel.thrustRoller(DEG_90, 0.10), 1e-12);
    // Half way between 55.5 and 56.6.
    assertEquals(56.05, FactorFcKernel.radialBall(BearingType.DEEP_GROOVE_BALL, 1, 0.105), 1e-9);
    assertEquals("contact angle α", refused(() -> FactorFcKernel.thrustBall(DEG_30, 0.1)));
    assertEquals("contact angle α", refused(() -> FactorFcKernel.thrustRoller(DEG_30, 0.1)));
  }

  @Test
  void columnsOfThrustRollersChangeAtTheirAngles() {
    // ISO 281:2007, Table 10: 50° for 45° up to below 60°, 65° for 60° up to below 75°, 80° for 75° up to below 90°.
    double at50 = FactorFcKernel.thrustRoller(Math.toRadians(46), 0.1);
    double at65 = FactorFcKernel.thrustRoller(DEG_60, 0.1);
    double at80 = FactorFcKernel.thrustRoller(Math.toRadians(75), 0.1);
    assertEquals(at50, FactorFcKernel.thrustRoller(Math.toRadians(59.9), 0.1));
    assertEquals(at65, FactorFcKernel.thrustRoller(Math.toRadians(74.9), 0.1));
    assertEquals(at80, FactorFcKernel.thrustRoller(Math.toRadians(89.9), 0.1));
    assertTrue(at50 > at65 && at65 > at80, at50 + " " + at65 + " " + at80);
  }

  @Test
  void adjustedRatings() {
    // ISO 281:2007, Annex C: 2.37 Cr tan α (1 - 0.333 sin α), at 30° tan = 1/√3 and sin = 0.5.
    assertEquals(2.37 * 1000 / Math.sqrt(3) * 0.8335, RatingAdjustmentKernel.dynamicRadialGroove(1000, DEG_30), 1e-9);
    assertEquals(1.91 * 1000 / Math.sqrt(3) * 0.8335, RatingAdjustmentKernel.dynamicThrustGroove(1000, DEG_30), 1e-9);
    assertEquals(1240, RatingAdjustmentKernel.dynamicThrustBearing(1000), 1e-9);
    assertEquals("contact angle α", refused(() -> RatingAdjustmentKernel.dynamicRadialGroove(1000, 0)));
    // ISO 76:2006, Annex A.
    assertEquals(2000, RatingAdjustmentKernel.staticRadialGroove(1000, 0.5), 1e-9);
    assertEquals(1400, RatingAdjustmentKernel.staticThrustGroove(1000, 0.5), 1e-9);
    assertEquals(1430, RatingAdjustmentKernel.staticThrustBearing(1000), 1e-9);
    assertEquals("basic static load rating C0r", refused(() -> RatingAdjustmentKernel.staticRadialGroove(0, 0.5)));
  }

  @Test
  void fatigueLimits() {
    // ISO 281:2007, B.3.2: 0.2288 Z Qu i cos α, thrust Z Qu sin α, rollers 0.2453.
    assertEquals(0.2288 * 10 * 50 * 2 * Math.cos(DEG_30),
        FatigueLimitKernel.fromContact(BearingFamily.RADIAL_BALL, 50, 10, 2, DEG_30, 100), 1e-9);
    assertEquals(0.2453 * 10 * 50 * 2 * Math.cos(DEG_30),
        FatigueLimitKernel.fromContact(BearingFamily.RADIAL_ROLLER, 50, 10, 2, DEG_30, 100), 1e-9);
    assertEquals(10 * 50 * Math.sin(DEG_60) * 0.5,
        FatigueLimitKernel.fromContact(BearingFamily.THRUST_BALL, 50, 10, 1, DEG_60, 400), 1e-9);
    assertEquals(0.2288 * 10 * 50 * 0.5, FatigueLimitKernel.fromContact(BearingFamily.RADIAL_BALL, 50, 10, 1, 0, 400), 1e-9);
    // Line contact by Hertz: p² = Q E*/(π L R), E* = E/(2 (1 - ν²)), R = Dwe (1 - γ)/2.
    double reduced = 207_000 / (2 * (1 - 0.09));
    assertEquals(1500.0 * 1500 * Math.PI * 12 * (10 * 0.8 / 2) / reduced, FatigueLimitKernel.rollerContact(10, 12, 0.2), 1e-9);
    assertEquals(1500.0 * 1500 * Math.PI * 12 * 5 / reduced, FatigueLimitKernel.rollerContact(10, 12, 0), 1e-9);
    assertEquals("ratio γ = Dwe cos α/Dpw", refused(() -> FatigueLimitKernel.rollerContact(10, 12, 1)));
    assertEquals("roller diameter Dwe", refused(() -> FatigueLimitKernel.rollerContact(0, 12, 0)));
    assertEquals("effective roller length Lwe", refused(() -> FatigueLimitKernel.rollerContact(10, 0, 0)));
    assertEquals("pitch diameter Dpw", refused(() -> FatigueLimitKernel.sizeFactor(BearingFamily.RADIAL_BALL, 0)));
    assertEquals("basic static load rating C0", refused(() -> FatigueLimitKernel.simplified(BearingFamily.RADIAL_BALL, 0, 50)));
    assertEquals("load Qu of the contact at the fatigue limit",
        refused(() -> FatigueLimitKernel.fromContact(BearingFamily.RADIAL_BALL, 0, 10, 1, 0, 100)));
  }

  @Test
  void leastLoadsByRule() {
    assertEquals(10, MinimumLoadKernel.guidingValue(BearingFamily.RADIAL_BALL, 1000), 1e-12);
    assertEquals(20, MinimumLoadKernel.guidingValue(BearingFamily.THRUST_ROLLER, 1000), 1e-12);
    assertEquals(16.7, MinimumLoadKernel.trackRoller(1000), 1e-12);
  }

  @Test
  void ballContactsByHertz() {
    // A ring of infinite radius (γ = 0) is the same inside and outside.
    assertEquals(PointContactKernel.innerLoadAtStress(1500, 10, 0, 0.52), PointContactKernel.outerLoadAtStress(1500, 10, 0, 0.52),
        1e-9);
    // Ball on plane by Hertz: p = (6 Q E*²/(π³ R²))^(1/3) with E* = E/(2 (1 - ν²)) and R = Dw/2 on both axes.
    double reduced = 207_000 / (2 * (1 - 0.09));
    double load = Math.pow(1500, 3) * Math.pow(Math.PI, 3) * 25 / (6 * reduced * reduced);
    double both = PointContactKernel.loadAtStress(1500, 4.0 / 10, 0);
    assertEquals(load, both, 1e-9 * load);
    assertEquals("groove radius over Dw", refused(() -> PointContactKernel.innerLoadAtStress(1500, 10, 0, 0.5)));
    assertEquals("ratio γ = Dw cos α/Dpw", refused(() -> PointContactKernel.innerLoadAtStress(1500, 10, 1, 0.52)));
    assertEquals("ball diameter Dw", refused(() -> PointContactKernel.outerLoadAtStress(1500, 0, 0, 0.52)));
    assertEquals("curvature difference F(ρ)", refused(() -> PointContactKernel.axisRatio(-1e-9)));
    assertTrue(PointContactKernel.axisRatio(0.9999999) > 1);
    assertEquals("contact stress σH", refused(() -> PointContactKernel.loadAtStress(0, 0.4, 0)));
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.contact.EllipticIntegralKernel;
import holdfast.quantity.InputException;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class GeometryRatingsTest {
  @Test
  void angularContactExampleOfTheStandard() {
    // ISO 281:2007, C.5.2 and ISO 76:2006, A.5.2: 27 balls of 7.5 mm, 40°, fc 51.1, f0 16.1.
    assertEquals(18651, DynamicRatingKernel.radialBall(1.3, 51.1, 1, Math.toRadians(40), 27, 7.5), 0.5);
    assertEquals(18731, StaticRatingKernel.radialBall(16.1, 1, Math.toRadians(40), 27, 7.5), 0.5);
  }

  @Test
  void everyTypeHasRatings() {
    for (BearingType type : BearingType.values()) {
      double alpha = type.family().thrust() ? 90 : 0;
      BearingGeometry geometry = type.family().ball()
          ? BearingGeometry.balls(type, 1, 12, mm(8), mm(50), deg(alpha))
          : BearingGeometry.rollers(type, 1, 12, mm(8), mm(10), mm(50), deg(alpha));
      GeometryRatings ratings = geometry.ratings();
      assertTrue(ratings.dynamic().newton() > 0 && ratings.staticRating().newton() > 0, type.toString());
      assertEquals(ratings.dynamic().newton(), ratings.explain().result().value(), type.toString());
      assertEquals(type, BearingType.parse(type.toString()));
      assertTrue(geometry.detailedFatigueLimit().newton() > 0, type.toString());
    }
  }

  @Test
  void detailedFatigueLimitByStressRatio() {
    // C0 takes Qmax = 5 Fr/Z at 4200 MPa, Cu takes Qmax = Fr/(0.2288 Z) at 1500 MPa; f0 is rounded.
    BearingGeometry geometry = BearingGeometry.balls(BearingType.DEEP_GROOVE_BALL, 1, 9, mm(7.94), mm(39.04), deg(0));
    double quotient = Math.pow(4200.0 / 1500, 3) / 0.2288 / 5;
    assertEquals(quotient, geometry.ratings().staticRating().ratio(geometry.detailedFatigueLimit()), 0.005 * quotient);
  }

  @Test
  void largeBallsTakeTheOtherExponent() {
    double below = DynamicRatingKernel.radialBall(1.3, 59, 1, 0, 9, 25.4);
    double above = DynamicRatingKernel.radialBall(1.3, 59, 1, 0, 9, Math.nextUp(25.4));
    // 25.4^0.4 = 3.647 to the printed digits.
    assertEquals(1, above / below, 0.0002);
  }

  @Test
  void fatigueLimitOfLargeBearings() {
    assertEquals(1000, FatigueLimitKernel.simplified(BearingFamily.RADIAL_BALL, 22000, 100), 1e-9);
    assertEquals(500, FatigueLimitKernel.simplified(BearingFamily.RADIAL_BALL, 22000, 400), 1e-9);
    assertEquals(1000 * Math.pow(0.25, 0.3), FatigueLimitKernel.simplified(BearingFamily.RADIAL_ROLLER, 8200, 400), 1e-9);
  }

  @Test
  void errorsNameTheTable() {
    BearingGeometry wide = BearingGeometry.balls(BearingType.DEEP_GROOVE_BALL, 1, 5, mm(20), mm(45), deg(0));
    InputException ratio = assertThrows(InputException.class, wide::ratings);
    assertTrue(ratio.getMessage().contains("ISO 281:2007, Table 2") && ratio.getMessage().contains("0.4"), ratio.getMessage());
    InputException angle = assertThrows(InputException.class,
        () -> BearingGeometry.balls(BearingType.ANGULAR_CONTACT_BALL, 1, 9, mm(8), mm(40), deg(50)));
    assertTrue(angle.getMessage().startsWith("contact angle α (50 °) must be from 0 ° to 45 °"), angle.getMessage());
    assertThrows(InputException.class, () -> BearingGeometry.balls(BearingType.THRUST_BALL, 1, 9, mm(8), mm(40), deg(30)));
    assertThrows(InputException.class, () -> BearingGeometry.balls(BearingType.MAGNETO_BALL, 2, 9, mm(8), mm(40), deg(0)));
    assertThrows(InputException.class, () -> BearingGeometry.balls(BearingType.TAPERED_ROLLER, 1, 9, mm(8), mm(40), deg(10)));
    InputException type = assertThrows(InputException.class, () -> BearingType.parse("plain"));
    assertTrue(type.getMessage().startsWith("type of bearing (plain) must be one of: deep groove ball"), type.getMessage());
    InputException kind = assertThrows(InputException.class, () -> FactorFcKernel.radialBall(BearingType.THRUST_BALL, 1, 0.1));
    assertEquals("type of bearing", kind.parameter());
  }

  @Test
  void thrustBallColumnsMeetAndContinue() {
    double at60 = Math.toRadians(60);
    assertEquals(FactorFcKernel.thrustBall(at60 - 1e-7, 0.15), FactorFcKernel.thrustBall(at60 + 1e-7, 0.15), 1e-4);
    // Where the column for 60° has ended, it goes on in proportion (1 - sin 60°/3) : (1 - sin 45°/3).
    double share = (1 - Math.sin(at60) / 3) / (1 - Math.sin(Math.PI / 4) / 3);
    assertEquals(share * FactorFcKernel.thrustBall(Math.PI / 4, 0.25), FactorFcKernel.thrustBall(at60, 0.25), 0.1);
  }

  @Test
  void ellipticIntegralsAgainstKnownValues() {
    // Abramowitz and Stegun, table 17.1: m = 0.5.
    assertEquals(1.854074677301372, EllipticIntegralKernel.first(Math.sqrt(0.5)), 1e-14);
    assertEquals(1.350643881047675, EllipticIntegralKernel.second(Math.sqrt(0.5)), 1e-14);
    assertEquals(Math.PI / 2, EllipticIntegralKernel.first(1), 1e-15);
    assertEquals(1, PointContactKernel.axisRatio(0));
  }

  @Property(tries = 300)
  void axisRatioSolvesItsEquation(@ForAll @DoubleRange(min = 1.01, max = 500) double chi) {
    double quotient = EllipticIntegralKernel.first(1 / chi) / EllipticIntegralKernel.second(1 / chi);
    double f = 1 - 2 / (chi * chi - 1) * (quotient - 1);
    assertEquals(chi, PointContactKernel.axisRatio(f), 1e-7 * chi);
  }

  @Property
  void ratingsGrowWithNumberAndRows(@ForAll @IntRange(min = 5, max = 40) int z, @ForAll @IntRange(min = 1, max = 3) int rows) {
    double one = DynamicRatingKernel.radialRoller(1.1, 80, rows, 0, z, 10, 12);
    assertTrue(DynamicRatingKernel.radialRoller(1.1, 80, rows, 0, z + 1, 10, 12) > one);
    assertTrue(DynamicRatingKernel.radialRoller(1.1, 80, rows + 1, 0, z, 10, 12) > one);
    assertEquals(DynamicRatingKernel.tandem(BearingFamily.RADIAL_ROLLER, one, 2),
        DynamicRatingKernel.radialRoller(1.1, 80, 2 * rows, 0, z, 10, 12), 1e-9 * one);
  }

  @Property
  void equalThrustRowsLikeOneRowOfAllElements(@ForAll @DoubleRange(min = 1000, max = 1e6) double ca) {
    // n equal rows: n Z [n (Z/Ca)^w]^(-1/w) = n^(1-1/w) Ca, w = 10/3 and 9/2.
    assertEquals(ca, DynamicRatingKernel.thrustBallRows(new double[] {12}, new double[] {ca}), 1e-9 * ca);
    assertEquals(Math.pow(2, 0.7) * ca,
        DynamicRatingKernel.thrustBallRows(new double[] {12, 12}, new double[] {ca, ca}), 1e-9 * ca);
    assertEquals(Math.pow(2, 7.0 / 9) * ca, DynamicRatingKernel.thrustRollerRows(
        new double[] {12, 12}, new double[] {10, 10}, new double[] {ca, ca}), 1e-9 * ca);
  }
}

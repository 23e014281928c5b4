// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import org.junit.jupiter.api.Test;

/** Equivalent loads and their factors by ISO 281:2007, Tables 3, 5, 8 and 11, and ISO 76:2006, Tables 2 to 5. */
class LoadFormulasTest {
  private static final double DEG_30 = Math.toRadians(30);
  private static final double DEG_60 = Math.toRadians(60);
  private static final double DEG_90 = Math.PI / 2;
  private static final double TAN_30 = 1 / Math.sqrt(3);
  private static final double TAN_60 = Math.sqrt(3);
  private static final double SIN_60 = Math.sqrt(0.75);

  private static String refused(Runnable call) {
    return assertThrows(InputException.class, call::run).parameter();
  }

  private static void factors(BearingType type, int rows, double alpha, boolean above, double x, double y) {
    assertEquals(x, EquivalentLoadKernel.angleX(type, rows, alpha, above), 1e-12, type + " X");
    assertEquals(y, EquivalentLoadKernel.angleY(type, rows, alpha, above), 1e-12, type + " Y");
  }

  @Test
  void factorsByContactAngle() {
    double cot = Math.sqrt(3);
    factors(BearingType.SELF_ALIGNING_BALL, 1, DEG_30, true, 0.4, 0.4 * cot);
    factors(BearingType.SELF_ALIGNING_BALL, 1, DEG_30, false, 1, 0);
    factors(BearingType.SELF_ALIGNING_BALL, 2, DEG_30, true, 0.65, 0.65 * cot);
    factors(BearingType.SELF_ALIGNING_BALL, 2, DEG_30, false, 1, 0.42 * cot);
    factors(BearingType.MAGNETO_BALL, 1, 0, true, 0.5, 2.5);
    factors(BearingType.MAGNETO_BALL, 1, 0, false, 1, 0);
    factors(BearingType.TAPERED_ROLLER, 1, DEG_30, true, 0.4, 0.4 * cot);
    factors(BearingType.TAPERED_ROLLER, 1, DEG_30, false, 1, 0);
    factors(BearingType.SPHERICAL_ROLLER, 2, DEG_30, true, 0.67, 0.67 * cot);
    factors(BearingType.SPHERICAL_ROLLER, 2, DEG_30, false, 1, 0.45 * cot);
    factors(BearingType.THRUST_BALL, 1, DEG_60, true, 1.25 * TAN_60 * (1 - 2.0 / 3 * SIN_60), 1);
    factors(BearingType.THRUST_BALL, 2, DEG_60, false, 20.0 / 13 * TAN_60 * (1 - SIN_60 / 3), 10.0 / 13 * (1 - SIN_60 / 3));
    factors(BearingType.SPHERICAL_THRUST_ROLLER, 1, DEG_60, true, TAN_60, 1);
    factors(BearingType.SPHERICAL_THRUST_ROLLER, 2, DEG_60, false, 1.5 * TAN_60, 0.67);
  }

  @Test
  void limitsE() {
    assertEquals(1.5 * TAN_30, EquivalentLoadKernel.angleE(BearingType.TAPERED_ROLLER, DEG_30), 1e-12);
    assertEquals(1.5 * TAN_60, EquivalentLoadKernel.angleE(BearingType.SPHERICAL_THRUST_ROLLER, DEG_60), 1e-12);
    assertEquals(1.25 * TAN_60, EquivalentLoadKernel.angleE(BearingType.THRUST_BALL, DEG_60), 1e-12);
    assertEquals(0.2, EquivalentLoadKernel.angleE(BearingType.MAGNETO_BALL, 0));
    assertEquals("type of bearing", refused(() -> EquivalentLoadKernel.angleE(BearingType.DEEP_GROOVE_BALL, DEG_30)));
    assertEquals("contact angle α", refused(() -> EquivalentLoadKernel.angleE(BearingType.TAPERED_ROLLER, 0)));
    assertEquals("contact angle α", refused(() -> EquivalentLoadKernel.angleE(BearingType.THRUST_BALL, DEG_90)));
    assertEquals("number of rows i", refused(() -> EquivalentLoadKernel.angleX(BearingType.MAGNETO_BALL, 2, 0, true)));
    assertEquals("number of rows i", refused(() -> EquivalentLoadKernel.angleY(BearingType.TAPERED_ROLLER, 0, DEG_30, true)));
    assertEquals("ratio Fa/Fr", refused(() -> EquivalentLoadKernel.angleX(BearingType.THRUST_BALL, 1, DEG_60, false)));
    assertEquals("contact angle α", refused(() -> EquivalentLoadKernel.angleY(BearingType.TAPERED_ROLLER, 1, 0, true)));
  }

  @Test
  void loadsOfEachKind() {
    // Tapered, 30°: e = 0.866; above it 0.4 Fr + 0.4 cot α Fa, at it and below Fr.
    assertEquals(400 + 0.4 * Math.sqrt(3) * 2000,
        EquivalentLoadKernel.load(BearingType.TAPERED_ROLLER, 1, DEG_30, 0, 1000, 2000), 1e-9);
    assertEquals(1000, EquivalentLoadKernel.load(BearingType.TAPERED_ROLLER, 1, DEG_30, 0, 1000, 800), 1e-9);
    // Magneto: e = 0.2 belongs to the lower branch: 0.5 Fr + 2.5 Fa would be the same 1000 N, so try 0.21.
    assertEquals(500 + 2.5 * 210, EquivalentLoadKernel.load(BearingType.MAGNETO_BALL, 1, 0, 0, 1000, 210), 1e-9);
    assertEquals(1500, EquivalentLoadKernel.load(BearingType.CYLINDRICAL_ROLLER, 1, 0, 0, 1500, 0));
    assertEquals(1500, EquivalentLoadKernel.load(BearingType.THRUST_BALL, 1, DEG_90, 0, 0, 1500));
    // Angular contact, 40° single row (Table 3): e 1.14, X 0.35, Y 0.57.
    double forty = Math.toRadians(40);
    assertEquals(0.35 * 1000 + 0.57 * 2000,
        EquivalentLoadKernel.load(BearingType.ANGULAR_CONTACT_BALL, 1, forty, 0, 1000, 2000), 1e-9);
    assertEquals(1000, EquivalentLoadKernel.load(BearingType.ANGULAR_CONTACT_BALL, 1, forty, 0, 1000, 1100), 1e-9);
    // The same angle in two rows: X 1, Y 0.55 up to e.
    assertEquals(1000 + 0.55 * 500,
        EquivalentLoadKernel.load(BearingType.ANGULAR_CONTACT_BALL, 2, forty, 0, 1000, 500), 1e-9);
    assertEquals(0.56 * 1000 + 1.6 * 500, EquivalentLoadKernel.combined(0.56, 1.6, 1000, 500), 1e-9);
    assertEquals(1.4, EquivalentLoadKernel.relativeAxialLoad(BearingType.DEEP_GROOVE_BALL, 1, 14, 1000, 10_000), 1e-12);
  }

  @Test
  void loadsThatCannotBe() {
    assertEquals("radial load Fr", refused(() -> EquivalentLoadKernel.checkLoads(-1, 5)));
    assertEquals("axial load Fa", refused(() -> EquivalentLoadKernel.checkLoads(5, -1)));
    assertEquals("load", refused(() -> EquivalentLoadKernel.checkLoads(0, 0)));
    assertEquals("radial load Fr", refused(() -> EquivalentLoadKernel.axialOnly(1, 1)));
    assertEquals("axial load Fa", refused(() -> EquivalentLoadKernel.radialOnly(1, 1)));
    assertEquals("factor X", refused(() -> EquivalentLoadKernel.combined(-1, 1, 1, 1)));
    assertEquals("radial load Fr", refused(() -> EquivalentLoadKernel.combined(1, 1, -1, 2)));
    assertEquals("factor Y", refused(() -> EquivalentLoadKernel.combined(1, -1, 1, 1)));
    assertEquals("number of rows i", refused(() -> EquivalentLoadKernel.load(BearingType.CYLINDRICAL_ROLLER, 0, 0, 0, 1, 0)));
    assertEquals("relative axial load", refused(() -> EquivalentLoadKernel.radialBallE(1, 0, -1)));
    assertEquals("number of rows i", refused(() -> EquivalentLoadKernel.radialBallX(0, 0, 1)));
    assertEquals("factor f0", refused(() -> EquivalentLoadKernel.relativeAxialLoad(BearingType.DEEP_GROOVE_BALL, 1, 0, 1, 1)));
    assertEquals("load", refused(() -> StaticLoadKernel.load(BearingType.DEEP_GROOVE_BALL, 1, 0, 0, 0)));
  }

  @Test
  void staticFactors() {
    assertEquals(0.6, StaticLoadKernel.x0(BearingType.DEEP_GROOVE_BALL, 1, 0));
    assertEquals(0.5, StaticLoadKernel.y0(BearingType.DEEP_GROOVE_BALL, 2, 0));
    assertEquals(0.5, StaticLoadKernel.x0(BearingType.ANGULAR_CONTACT_BALL, 1, DEG_30), 1e-12);
    assertEquals(0.33, StaticLoadKernel.y0(BearingType.ANGULAR_CONTACT_BALL, 1, DEG_30), 1e-12);
    assertEquals(1, StaticLoadKernel.x0(BearingType.ANGULAR_CONTACT_BALL, 2, DEG_30), 1e-12);
    assertEquals(0.66, StaticLoadKernel.y0(BearingType.ANGULAR_CONTACT_BALL, 2, DEG_30), 1e-12);
    // The rows of angular contact begin at 5°; a smaller angle takes that row and not the one for 0°.
    assertEquals(0.52, StaticLoadKernel.y0(BearingType.ANGULAR_CONTACT_BALL, 1, Math.toRadians(2)), 1e-12);
    for (BearingType type : new BearingType[] {BearingType.SELF_ALIGNING_BALL, BearingType.TAPERED_ROLLER}) {
      assertEquals(0.5, StaticLoadKernel.x0(type, 1, DEG_30), type.toString());
      assertEquals(0.22 * Math.sqrt(3), StaticLoadKernel.y0(type, 1, DEG_30), 1e-12, type.toString());
      assertEquals(1, StaticLoadKernel.x0(type, 2, DEG_30), type.toString());
      assertEquals(0.44 * Math.sqrt(3), StaticLoadKernel.y0(type, 2, DEG_30), 1e-12, type.toString());
    }
    assertEquals(1, StaticLoadKernel.x0(BearingType.CYLINDRICAL_ROLLER, 1, 0));
    assertEquals(0, StaticLoadKernel.y0(BearingType.CYLINDRICAL_ROLLER, 1, 0));
    assertEquals("type of bearing", refused(() -> StaticLoadKernel.x0(BearingType.THRUST_BALL, 1, DEG_60)));
    assertEquals("type of bearing", refused(() -> StaticLoadKernel.y0(BearingType.THRUST_BALL, 1, DEG_60)));
    assertEquals("number of rows i", refused(() -> StaticLoadKernel.x0(BearingType.DEEP_GROOVE_BALL, 0, 0)));
    assertEquals("number of rows i", refused(() -> StaticLoadKernel.y0(BearingType.DEEP_GROOVE_BALL, 0, 0)));
    assertEquals("contact angle α", refused(() -> StaticLoadKernel.y0(BearingType.SELF_ALIGNING_BALL, 1, 0)));
  }

  @Test
  void staticLoadsAndSafety() {
    assertEquals(2.3 * 100 * TAN_60 + 1000, StaticLoadKernel.load(BearingType.THRUST_BALL, 1, DEG_60, 100, 1000), 1e-9);
    assertEquals(1000, StaticLoadKernel.load(BearingType.THRUST_BALL, 1, DEG_90, 0, 1000));
    assertEquals(1000, StaticLoadKernel.load(BearingType.NEEDLE_ROLLER, 1, 0, 1000, 0));
    assertEquals("axial load Fa", refused(() -> StaticLoadKernel.load(BearingType.NEEDLE_ROLLER, 1, 0, 1000, 1)));
    assertEquals(0.5 * 1000 + 0.22 * Math.sqrt(3) * 5000,
        StaticLoadKernel.load(BearingType.TAPERED_ROLLER, 1, DEG_30, 1000, 5000), 1e-9);
    assertEquals(2.5, StaticLoadKernel.safety(2500, 1000));
    // 5 Fr/(Z cos α).
    assertEquals(5 * 1000 / (10 * Math.sqrt(0.75)), StaticLoadKernel.greatestElementLoad(1000, 10, DEG_30), 1e-9);
    // ISO 76:2006, Tables 4 and 5.
    assertEquals(2, StaticLoadKernel.leastSafety(BearingType.DEEP_GROOVE_BALL, Running.QUIET));
    assertEquals(1, StaticLoadKernel.leastSafety(BearingType.DEEP_GROOVE_BALL, Running.NORMAL));
    assertEquals(1.5, StaticLoadKernel.leastSafety(BearingType.DEEP_GROOVE_BALL, Running.SHOCK));
    assertEquals(3, StaticLoadKernel.leastSafety(BearingType.TAPERED_ROLLER, Running.QUIET));
    assertEquals(1.5, StaticLoadKernel.leastSafety(BearingType.TAPERED_ROLLER, Running.NORMAL));
    assertEquals(4, StaticLoadKernel.leastSafety(BearingType.SPHERICAL_THRUST_ROLLER, Running.NORMAL));
    assertEquals(3, StaticLoadKernel.leastSafety(BearingType.DRAWN_CUP_NEEDLE_ROLLER, Running.NORMAL));
  }

  @Test
  void contactAnglesIncludeTheirEnds() {
    assertEquals(0, ContactAngle.radial(0));
    assertEquals(Math.PI / 4, ContactAngle.radial(Math.PI / 4));
    assertEquals(Math.PI / 4, ContactAngle.radialWithAngle(Math.PI / 4));
    assertEquals(Math.PI / 4, ContactAngle.thrust(Math.PI / 4));
    assertEquals(DEG_90, ContactAngle.thrust(DEG_90));
    assertTrue(ContactAngle.is90(Math.toRadians(90)));
    assertFalse(ContactAngle.is90(Math.toRadians(89.999)));
    InputException radial = assertThrows(InputException.class, () -> ContactAngle.radial(Math.toRadians(45.001)));
    assertEquals("from 0 ° to 45 °", radial.permitted());
    InputException thrust = assertThrows(InputException.class, () -> ContactAngle.thrust(Math.toRadians(90.001)));
    assertEquals("from 45 ° to 90 °", thrust.permitted());
    assertEquals("contact angle α", refused(() -> ContactAngle.radialWithAngle(Math.toRadians(45.001))));
    assertEquals("contact angle α", refused(() -> ContactAngle.radial(Double.NaN)));
  }

  @Test
  void curvesAreStraightBetweenTheirPointsAndEndWithThem() {
    Curve curve = Curve.of(tables -> new double[][] {{1, 2, 4}, {10, 30, 20}});
    assertEquals(10, curve.at(1, "x", ""));
    assertEquals(30, curve.at(2, "x", ""));
    assertEquals(20, curve.at(4, "x", ""));
    assertEquals(20, curve.at(1.5, "x", ""), 1e-12);
    assertEquals(25, curve.at(3, "x", ""), 1e-12);
    // A rounding error beyond an end still belongs to it.
    assertEquals(10, curve.at(Math.nextDown(1.0), "x", ""));
    assertEquals(20, curve.at(Math.nextUp(4.0), "x", ""));
    assertEquals("x", refused(() -> curve.at(0.999, "x", "")));
    assertEquals("x", refused(() -> curve.at(4.001, "x", "")));
    assertEquals(10, curve.inside(-5));
    assertEquals(20, curve.inside(50));
    assertEquals(7, Curve.of(tables -> new double[][] {{1}, {7}}).inside(3));
  }
}

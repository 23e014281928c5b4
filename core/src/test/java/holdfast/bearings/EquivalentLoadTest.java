// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class EquivalentLoadTest {
  private static final LoadRatings BALL = LoadRatings.radialBall(kN(29.1), kN(17.9));
  private static final LoadedBearing GROOVE = LoadedBearing.of(BearingType.DEEP_GROOVE_BALL, deg(0), BALL).withF0(14.0);

  @Test
  void interpolatesBetweenRowsOfTheTable() {
    // Half way between f0 Fa/C0r = 0.345 (Y 1.99, e 0.22) and 0.689 (Y 1.71, e 0.26).
    assertEquals(1.85, EquivalentLoadKernel.radialBallY(1, 0, 0.517), 1e-12);
    assertEquals(0.24, EquivalentLoadKernel.radialBallE(1, 0, 0.517), 1e-12);
    // Between 25° and 30° in the angle.
    double alpha = Math.toRadians(27.5);
    assertEquals(0.815, EquivalentLoadKernel.radialBallY(1, alpha, 0), 1e-9);
    assertEquals(0.4, EquivalentLoadKernel.radialBallX(1, alpha, 0), 1e-9);
  }

  @Test
  void singleRowWithFiveDegreesTakesDeepGrooveFactors() {
    double alpha = Math.toRadians(5);
    assertEquals(EquivalentLoadKernel.radialBallE(1, 0, 1.2), EquivalentLoadKernel.radialBallE(1, alpha, 1.2), 1e-12);
    assertEquals(0.23, EquivalentLoadKernel.radialBallE(2, alpha, 0.173), 1e-12);
  }

  @Test
  void loadUpToEIsRadialOnly() {
    EquivalentLoad load = GROOVE.dynamicLoad(kN(2.5), kN(0.5));
    assertEquals(2500, load.load().newton(), 1e-9);
    assertEquals(load.load().newton(), load.explain().result().value());
    EquivalentLoad above = GROOVE.dynamicLoad(kN(2.5), kN(1));
    assertTrue(above.load().newton() > 2500);
    assertEquals(above.load().newton(), above.explain().result().value());
    assertEquals(above.life().l10(), BasicLifeKernel.ball(29100, above.load().newton()));
  }

  @Test
  void everyTypeExplainsItself() {
    for (BearingType type : BearingType.values()) {
      double alpha = type.family().thrust() ? 60 : type == BearingType.DEEP_GROOVE_BALL ? 0 : 30;
      LoadRatings ratings = new LoadRatings(type.family(), kN(100), kN(120), null, OuterRing.HOUSED);
      LoadedBearing bearing = LoadedBearing.of(type, deg(alpha), ratings).withF0(14);
      for (double fa : new double[] {2.4, 12}) {
        if (type.family().thrust() && fa < 3) {
          bearing = bearing.withRows(2);
        }
        EquivalentLoad load = bearing.dynamicLoad(kN(4), kN(fa));
        assertEquals(load.load().newton(), load.explain().result().value(), type + " " + fa);
        StaticLoad standing = bearing.staticLoad(kN(4), kN(fa), Running.NORMAL);
        assertEquals(standing.safety(), standing.explain().result().value());
      }
    }
  }

  @Test
  void staticLoadIsNotBelowTheRadialLoad() {
    assertEquals(4000, StaticLoadKernel.load(BearingType.DEEP_GROOVE_BALL, 1, 0, 4000, 100), 1e-9);
    assertEquals(0.6 * 4000 + 0.5 * 9000, StaticLoadKernel.load(BearingType.DEEP_GROOVE_BALL, 1, 0, 4000, 9000), 1e-9);
    // 0.40 between 20° (0.42) and 25° (0.38).
    assertEquals(0.40, StaticLoadKernel.y0(BearingType.ANGULAR_CONTACT_BALL, 1, Math.toRadians(22.5)), 1e-9);
    StaticLoad low = GROOVE.staticLoad(kN(17), kN(0), Running.QUIET);
    assertEquals("static-safety-low", low.warnings().get(0).code());
    assertEquals(false, low.sufficient());
  }

  @Test
  void warnsOutsideTheTableAndBelowTheLeastLoad() {
    assertEquals("relative-axial-load-outside-table", GROOVE.dynamicLoad(kN(1), kN(10)).warnings().get(0).code());
    assertTrue(GROOVE.dynamicLoad(N(100), N(0)).warnings().stream().anyMatch(w -> w.code().equals("load-below-minimum")));
  }

  @Test
  void errors() {
    InputException f0 = assertThrows(InputException.class,
        () -> LoadedBearing.of(BearingType.DEEP_GROOVE_BALL, deg(0), BALL).dynamicLoad(kN(1), kN(1)));
    assertTrue(f0.getMessage().startsWith("factor f0 (0)"), f0.getMessage());
    LoadedBearing cylindrical =
        LoadedBearing.of(BearingType.CYLINDRICAL_ROLLER, deg(0), LoadRatings.radialRoller(kN(10), kN(10)));
    assertThrows(InputException.class, () -> cylindrical.dynamicLoad(kN(1), kN(0.1)));
    LoadedBearing thrust = LoadedBearing.of(BearingType.THRUST_BALL, deg(90), LoadRatings.thrustBall(kN(10), kN(10)));
    assertThrows(InputException.class, () -> thrust.dynamicLoad(kN(0.1), kN(1)));
    assertEquals(1000, thrust.dynamicLoad(kN(0), kN(1)).load().newton());
    LoadedBearing single = LoadedBearing.of(BearingType.THRUST_BALL, deg(60), LoadRatings.thrustBall(kN(10), kN(10)));
    InputException branch = assertThrows(InputException.class, () -> single.dynamicLoad(kN(1), kN(1)));
    assertTrue(branch.getMessage().contains("unsuitable"), branch.getMessage());
    assertThrows(InputException.class, () -> GROOVE.dynamicLoad(kN(0), kN(0)));
    assertThrows(InputException.class, () -> GROOVE.dynamicLoad(kN(-1), kN(0)));
    assertThrows(InputException.class, () -> LoadedBearing.of(BearingType.THRUST_BALL, deg(90), BALL));
  }

  @Property
  void doubleRowLoadIsContinuousAtEAndNeverFalls(
      @ForAll @DoubleRange(min = 0.01, max = 45) double degrees, @ForAll @DoubleRange(min = 0.2, max = 6.9) double relative) {
    double alpha = Math.toRadians(degrees);
    double e = EquivalentLoadKernel.radialBallE(2, alpha, relative);
    double below = EquivalentLoadKernel.load(BearingType.ANGULAR_CONTACT_BALL, 2, alpha, relative, 1000, 1000 * e);
    double above = EquivalentLoadKernel.load(BearingType.ANGULAR_CONTACT_BALL, 2, alpha, relative, 1000, 1000 * e * 1.0001);
    // The printed factors have two decimals; between tabulated rows the branches meet only so far.
    assertEquals(below, above, 0.05 * below);
  }

  @Property
  void equivalentLoadScales(@ForAll @DoubleRange(min = 0.1, max = 100) double factor,
      @ForAll @DoubleRange(min = 0, max = 5000) double fa) {
    double alpha = Math.toRadians(40);
    double one = EquivalentLoadKernel.load(BearingType.ANGULAR_CONTACT_BALL, 1, alpha, 0, 1000, fa);
    double many = EquivalentLoadKernel.load(BearingType.ANGULAR_CONTACT_BALL, 1, alpha, 0, 1000 * factor, fa * factor);
    assertEquals(one * factor, many, 1e-9 * many);
  }
}

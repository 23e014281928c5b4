// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** What must hold for any pair of rings. */
class ThickRingLawsTest {
  private static final double INF = Double.POSITIVE_INFINITY;

  private static double pressure(double u, double d, double holeShare, double wall, double e, double nu) {
    return ThickRingKernel.pressure(u, d, holeShare * d, d * (1 + wall), 210_000, 0.3, e, nu);
  }

  @Property
  void bothPartsCarryTheSamePressureAndTheirChangesAddToTheInterference(
      @ForAll @DoubleRange(min = 5, max = 200) double d,
      @ForAll @DoubleRange(min = 0, max = 0.9) double holeShare,
      @ForAll @DoubleRange(min = 0.1, max = 10) double wall,
      @ForAll @DoubleRange(min = 40_000, max = 220_000) double e,
      @ForAll @DoubleRange(min = 0, max = 0.5) double nu,
      @ForAll @DoubleRange(min = 0.1, max = 2) double perMille) {
    double u = perMille / 1000 * d;
    double p = pressure(u, d, holeShare, wall, e, nu);
    double r = d / 2;
    double a = holeShare * r;
    double b = r * (1 + wall);
    assertEquals(-p, ThickRingKernel.radialStress(r, a, r, 0, p), 1e-9 * p);
    assertEquals(-p, ThickRingKernel.radialStress(r, r, b, p, 0), 1e-9 * p);
    double bore = 2 * ThickRingKernel.radialDisplacement(r, r, b, p, 0, e, nu);
    double stud = 2 * ThickRingKernel.radialDisplacement(r, a, r, 0, p, 210_000, 0.3);
    assertTrue(bore > 0 && stud < 0);
    assertEquals(u, bore - stud, 1e-9 * u);
  }

  @Property
  void forcesBalanceAcrossADiametralCut(
      @ForAll @DoubleRange(min = 0.01, max = 0.95) double ratio,
      @ForAll @DoubleRange(min = 0, max = 200) double inside,
      @ForAll @DoubleRange(min = 0, max = 200) double outside) {
    // Simpson over the wall: the hoop force equals p_i·a - p_o·b.
    double a = 10;
    double b = a / ratio;
    int n = 2000;
    double sum = 0;
    for (int i = 0; i <= n; i++) {
      // Geometric grid: the stress varies as 1/r².
      double r = Math.min(b, a * Math.pow(b / a, (double) i / n));
      double weight = i == 0 || i == n ? 1 : i % 2 == 1 ? 4 : 2;
      sum += weight * ThickRingKernel.hoopStress(r, a, b, inside, outside) * r;
    }
    double force = sum * Math.log(b / a) / n / 3;
    assertEquals(inside * a - outside * b, force, 1e-6 * (inside * a + outside * b) + 1e-9);
  }

  @Property
  void inverseOfTheInverse(
      @ForAll @DoubleRange(min = 5, max = 200) double d,
      @ForAll @DoubleRange(min = 0, max = 0.9) double holeShare,
      @ForAll @DoubleRange(min = 1.05, max = 20) double outsideShare,
      @ForAll @DoubleRange(min = 0, max = 500) double p) {
    double u = ThickRingKernel.interference(p, d, holeShare * d, outsideShare * d, 210_000, 0.3, 70_000, 0.33);
    assertEquals(
        p, ThickRingKernel.pressure(u, d, holeShare * d, outsideShare * d, 210_000, 0.3, 70_000, 0.33), 1e-9 * (p + 1));
  }

  @Property
  void pressureRisesWithInterferenceAndWallAndFallsWithTheHole(
      @ForAll @DoubleRange(min = 5, max = 200) double d,
      @ForAll @DoubleRange(min = 0, max = 0.8) double holeShare,
      @ForAll @DoubleRange(min = 0.1, max = 10) double wall) {
    double p = pressure(d / 1000, d, holeShare, wall, 169_000, 0.275);
    assertTrue(pressure(d / 900, d, holeShare, wall, 169_000, 0.275) > p);
    assertTrue(pressure(d / 1000, d, holeShare, wall * 1.1, 169_000, 0.275) > p);
    assertTrue(pressure(d / 1000, d, holeShare + 0.1, wall, 169_000, 0.275) < p);
    assertEquals(2 * p, pressure(d / 500, d, holeShare, wall, 169_000, 0.275), 1e-9 * p);
  }

  @Property
  void workDoneOnBothPartsIsPositive(
      @ForAll @DoubleRange(min = 0, max = 0.9) double holeShare, @ForAll @DoubleRange(min = 1.05, max = 50) double outsideShare) {
    assertTrue(ThickRingKernel.innerCompliance(holeShare * 20, 20, 210_000, 0.3) > 0);
    assertTrue(ThickRingKernel.outerCompliance(20, outsideShare * 20, 210_000, 0.3) > 0);
  }

  @Test
  void aSolidStudIsTheLimitOfAVanishingHoleExceptAtItsWall() {
    double solid = ThickRingKernel.pressure(0.02, 30, 0, 60, 210_000, 0.3, 169_000, 0.275);
    assertEquals(solid, ThickRingKernel.pressure(0.02, 30, 1e-6, 60, 210_000, 0.3, 169_000, 0.275), 1e-9);
    assertEquals(-100, ThickRingKernel.hoopStress(0, 0, 15, 0, 100), 0);
    // A tiny hole doubles the hoop stress at its wall.
    assertEquals(-200, ThickRingKernel.hoopStress(1e-6, 1e-6, 15, 0, 100), 1e-6);
  }

  @Test
  void anEndlessHousingIsTheLimitOfAGreatOne() {
    double wide = ThickRingKernel.pressure(0.02, 30, 6, INF, 210_000, 0.3, 169_000, 0.275);
    assertEquals(wide, ThickRingKernel.pressure(0.02, 30, 6, 1e8, 210_000, 0.3, 169_000, 0.275), 1e-9);
    assertEquals((1 + 0.275) / 169_000, ThickRingKernel.outerCompliance(30, INF, 169_000, 0.275), 1e-18);
    assertEquals(50, ThickRingKernel.hoopStress(15, 15, INF, 50, 0), 0);
    assertEquals(0, ThickRingKernel.hoopStress(INF, 15, INF, 50, 0), 0);
    assertEquals(-7, ThickRingKernel.hoopStress(20, 0, INF, 50, 7), 0);
  }

  @Test
  void partsByTheirOwnDiametersAgreeForSmallInterference() {
    double nominal = ThickRingKernel.pressure(1e-6, 30, 6, 60, 210_000, 0.3, 169_000, 0.275);
    assertEquals(
        nominal, ThickRingKernel.pressureOfParts(30.000001, 30, 6, 60, 210_000, 0.3, 169_000, 0.275), nominal * 1e-6);
  }

  @Test
  void manyAtOnceEqualOneByOne() {
    double[] u = {0, 0.01, 0.02, 0.05};
    double[] p = new double[5];
    ThickRingKernel.pressures(u, 30, 6, 60, 210_000, 0.3, 169_000, 0.275, p);
    for (int i = 0; i < u.length; i++) {
      assertEquals(ThickRingKernel.pressure(u[i], 30, 6, 60, 210_000, 0.3, 169_000, 0.275), p[i], 0);
    }
    assertEquals(0, p[4], 0);
    assertThrows(
        InputException.class,
        () -> ThickRingKernel.pressures(u, 30, 6, 60, 210_000, 0.3, 169_000, 0.275, new double[3]));
  }

  @Test
  void planeStrainRaisesThePressureByOneOverOneMinusNuSquared() {
    double e = ThickRingKernel.planeStrainModulus(210_000, 0.3);
    double nu = 0.3 / 0.7;
    assertEquals(
        ThickRingKernel.pressure(0.02, 30, 6, 60, 210_000, 0.3, 210_000, 0.3) / (1 - 0.09),
        ThickRingKernel.pressure(0.02, 30, 6, 60, e, nu, e, nu),
        1e-9);
  }

  @Test
  void outerRadiusForAHoopLimitIsTheInverse() {
    double b = ThickRingKernel.outerRadiusForHoop(80, 40, 120);
    assertEquals(120, ThickRingKernel.hoopStress(80, 80, b, 40, 0), 1e-9);
    InputException error = assertThrows(InputException.class, () -> ThickRingKernel.outerRadiusForHoop(80, 40, 40));
    assertEquals("hoop stress limit", error.parameter());
  }

  @Test
  void refusesWhatIsNoRing() {
    assertEquals(
        "interference",
        assertThrows(InputException.class, () -> pressure(-0.01, 30, 0, 1, 210_000, 0.3)).parameter());
    assertEquals(
        "interference", assertThrows(InputException.class, () -> pressure(Double.NaN, 30, 0, 1, 210_000, 0.3)).parameter());
    assertEquals(
        "hole of the stud", assertThrows(InputException.class, () -> pressure(0.01, 30, 1, 1, 210_000, 0.3)).parameter());
    assertEquals(
        "outside diameter of the housing",
        assertThrows(InputException.class, () -> pressure(0.01, 30, 0, 0, 210_000, 0.3)).parameter());
    assertEquals(
        "Poisson's ratio (housing)",
        assertThrows(InputException.class, () -> pressure(0.01, 30, 0, 1, 210_000, 0.6)).parameter());
    assertEquals("radius", assertThrows(InputException.class, () -> ThickRingKernel.hoopStress(9, 10, 20, 1, 0)).parameter());
    assertEquals(
        "outer radius", assertThrows(InputException.class, () -> ThickRingKernel.hoopStress(10, 10, 10, 1, 0)).parameter());
    assertThrows(InputException.class, () -> ThickRingKernel.radialDisplacement(INF, 10, INF, 1, 0, 210_000, 0.3));
    assertThrows(InputException.class, () -> ThickRingKernel.pressureOfParts(29.9, 30, 0, 60, 210_000, 0.3, 210_000, 0.3));
  }
}

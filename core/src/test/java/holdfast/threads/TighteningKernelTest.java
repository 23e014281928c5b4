// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** Levers of a thread of d2 = 20 mm with tan φ = 0.05 and tan ρ' = 0.15. */
class TighteningKernelTest {
  private static final double LEAD = Math.PI;
  private static final double MU = 0.15 * Math.sqrt(3) / 2;

  @Test
  void leversByHand() {
    assertEquals(10 * 0.2 / (1 - 0.0075), TighteningKernel.threadLever(20, LEAD, MU), 1e-12);
    assertEquals(10 * 0.1 / (1 + 0.0075), TighteningKernel.looseningLever(20, LEAD, MU), 1e-12);
    assertEquals(0.5 + 1.5, TighteningKernel.linearThreadLever(20, LEAD, MU), 1e-12);
    assertEquals(0.32 + 0.58, TighteningKernel.printedThreadLever(10, 2, 0.1), 1e-12);
    assertEquals(1000, TighteningKernel.pitchTorque(1000, 2 * Math.PI), 1e-9);
    assertEquals(18, TighteningKernel.meanFaceDiameter(24, 12), 1e-12);
    // (2/3)·(8 − 1)/(4 − 1)
    assertEquals(14.0 / 9, TighteningKernel.uniformPressureDiameter(2, 1), 1e-12);
  }

  @Test
  void thePrevailingTorqueItselfMakesNoPreload() {
    assertEquals(0, TighteningKernel.preload(500, 20, LEAD, MU, 21, 0.1, 500));
    refused(() -> TighteningKernel.preload(Math.nextDown(500.0), 20, LEAD, MU, 21, 0.1, 500), "at least the prevailing torque");
    refused(() -> TighteningKernel.preload(Double.POSITIVE_INFINITY, 20, LEAD, MU, 21, 0.1, 0), "tightening torque MA (Infinity");
  }

  @Test
  void arraysHaveOneLength() {
    double[] two = {1000, 2000};
    double[] mu = {0.1, 0.1};
    double[] one = {0.1};
    assertThrows(IllegalArgumentException.class, () -> TighteningKernel.preloads(two, 20, LEAD, one, 21, mu, 0, new double[2]));
    assertThrows(IllegalArgumentException.class, () -> TighteningKernel.preloads(two, 20, LEAD, mu, 21, one, 0, new double[2]));
    assertThrows(IllegalArgumentException.class, () -> TighteningKernel.preloads(two, 20, LEAD, mu, 21, mu, 0, new double[3]));
  }

  /** Without friction the nut factor is (d2/2)·tan φ/d = 0.025. */
  @Test
  void aNutFactorIsMoreThanThePitchTakes() {
    assertTrue(TighteningKernel.frictionOfNutFactor(0.0251, 20, 20, LEAD, 21) < 1e-3);
    refused(() -> TighteningKernel.frictionOfNutFactor(0.0249, 20, 20, LEAD, 21), "nut factor K (0.0249) must be over 0.025");
    refused(() -> TighteningKernel.frictionOfNutFactor(Double.POSITIVE_INFINITY, 20, 20, LEAD, 21), "over 0.025");
  }

  @Test
  void emptyRingsAndSectionsAreRefused() {
    refused(() -> TighteningKernel.meanFaceDiameter(18, 18), "outer face diameter dW (18 mm)");
    refused(() -> TighteningKernel.meanFaceDiameter(Double.POSITIVE_INFINITY, 18), "outer face diameter dW (Infinity mm)");
    refused(() -> TighteningKernel.uniformPressureDiameter(18, 18), "outer face diameter dW (18 mm)");
    refused(() -> ThreadGeometryKernel.ringArea(10, 10), "axial bore di (10 mm)");
    refused(() -> SectionKernel.elasticModulus(10, 10), "axial bore di (10 mm)");
    refused(() -> SectionKernel.plasticModulus(10, 10), "axial bore di (10 mm)");
    refused(() -> SectionKernel.elasticModulus(10, 2, 10), "cross hole dq (10 mm)");
    refused(() -> SectionKernel.plasticModulus(10, 2, 10), "cross hole dq (10 mm)");
    refused(() -> SectionKernel.area(10, 10, 2), "axial bore di (10 mm)");
    // H28: the rounded root lies 1.375·H below the crest, H = (√3/2)·P.
    assertEquals(10 - 1.375 * Math.sqrt(3), ThreadGeometryKernel.unifiedRoundedMinorDiameter(10, 2), 1e-12);
  }

  /** The preload of a working stress, put back, gives that stress. */
  @Property(tries = 200)
  void preloadInServiceReachesTheStress(
      @ForAll @DoubleRange(min = 100, max = 1200) double stress,
      @ForAll @DoubleRange(min = 0, max = 1) double remaining,
      @ForAll @DoubleRange(min = 0, max = 5000) double prevailing,
      @ForAll @DoubleRange(min = 0, max = 10000) double added) {
    double area = 216;
    double modulus = 1200;
    double lever = 2.4;
    double f = StressKernel.preloadInService(stress, area, modulus, lever, prevailing, added, remaining);
    double back = StressKernel.afterRelaxation((f + added) / area, (lever * f + prevailing) / modulus, remaining);
    assertEquals(stress, back, 1e-9 * stress);
  }

  @Test
  void whatIsAddedMayUseTheWholeStress() {
    assertEquals(0, StressKernel.preloadInService(100, 10, 20, 2, 0, 1000, 0.5));
    assertEquals(0, StressKernel.preloadInService(100, 10, 20, 2, 0, 2000, 0.5));
    assertTrue(StressKernel.preloadInService(100, 10, 20, 2, 0, 999, 0.5) > 0);
  }

  private static void refused(Executable call, String part) {
    InputException e = assertThrows(InputException.class, call);
    assertTrue(e.getMessage().contains(part), e.getMessage());
  }
}

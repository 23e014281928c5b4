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

/** Formulas of the joint with numbers chosen so that the results can be worked out by hand. */
class JointKernelTest {
  private static final double E = 200_000;

  @Test
  void engagedThreadIsCoreAndNut() {
    // d = 10, d3 = 8: 5/(E·16π) + 4/(E·25π).
    assertEquals((0.3125 + 0.16) / (Math.PI * E), JointKernel.engagedResilience(10, 8, 0, E, E, false), 1e-18);
    // Tapped, in a metal of half the modulus: 3.3/((E/2)·25π).
    assertEquals((0.3125 + 0.264) / (Math.PI * E), JointKernel.engagedResilience(10, 8, 0, E, E / 2, true), 1e-18);
    // Bore of 6: the rings have 7π and 16π.
    assertEquals((5 / 7.0 + 0.25) / (Math.PI * E), JointKernel.engagedResilience(10, 8, 6, E, E, false), 1e-18);
  }

  @Test
  void coneTangentWhereTheLogarithmsAreNoughtOrOne() {
    assertEquals(0.362, JointKernel.coneTangent(40, 20, 20, false), 1e-12);
    assertEquals(0.362 + 0.032 + 0.153, JointKernel.coneTangent(40 * Math.E, 20, 20 * Math.E, false), 1e-12);
    assertEquals(0.348, JointKernel.coneTangent(20, 20, 20, true), 1e-12);
    assertEquals(0.348 + 0.013 + 0.193, JointKernel.coneTangent(20 * Math.E, 20, 20 * Math.E, true), 1e-12);
    refused(() -> JointKernel.coneTangent(1e-5, 20, 20, false), "clamp length lK (0.00001 mm) must be long enough for a cone");
  }

  /** The closed form against Hooke's law, slice by slice: two cones or one, cut off at the outer diameter. */
  @Property(tries = 50)
  void partsAreConesCutOffAtTheirOuterDiameter(
      @ForAll @DoubleRange(min = 5, max = 60) double length,
      @ForAll @DoubleRange(min = 15, max = 80) double outer,
      @ForAll boolean tapped) {
    double face = 22;
    double hole = 13;
    double tan = outer > face ? JointKernel.coneTangent(length, face, outer, tapped) : 0;
    double cone = tapped ? length : length / 2;
    int n = 2000;
    double sum = 0;
    for (int i = 0; i < n; i++) {
      double at = (i + 0.5) / n * cone;
      double d = Math.min(outer, face + 2 * at * tan);
      sum += length / n / (E * Math.PI / 4 * (d * d - hole * hole));
    }
    assertEquals(1, JointKernel.partResilience(length, face, hole, outer, E, tapped) / sum, 1e-5);
  }

  @Test
  void partsAndFaceAreRings() {
    refused(() -> JointKernel.partResilience(40, 13, 13, 30, E, false), "outer face diameter dW (13 mm) must be over");
    refused(() -> JointKernel.partResilience(40, 22, 13, 13, E, false), "outer face diameter dW (13 mm) must be over");
    refused(() -> JointKernel.preloadAgainstMoment(1000, 18, 18), "outer face diameter dW (18 mm) must be over");
  }

  /** With 0.5774·l = 2.5·d the logarithm is that of 3. */
  @Test
  void frustumOfTheTextbook() {
    double expected = 0.5774 * Math.PI * E * 10 / (2 * Math.log(3));
    assertEquals(expected, JointKernel.frustumStiffness(10, 25 / 0.5774, E), 1e-9 * expected);
  }

  @Test
  void loadFactorEmbeddingAndTemperature() {
    assertEquals(0.125, JointKernel.loadFactor(3e-6, 1e-6, 0.5), 1e-15);
    assertEquals(0.25, JointKernel.loadFactor(3e-6, 1e-6, 1), 1e-15);
    refused(() -> JointKernel.loadFactor(3e-6, 1e-6, 0), "load introduction n (0) must be over 0 up to 1");
    assertEquals(2000, JointKernel.embeddingLoss(0.008, 3e-6, 1e-6), 1e-9);
    // (lK/d)^0.34 = 10.
    assertEquals(0.0329, JointKernel.embeddingByLength(16 * Math.pow(10, 1 / 0.34), 16), 1e-12);
    // (23·50 - 11·100)e-6 · 50 mm = 0.0025 mm over 5e-6 mm/N.
    assertEquals(500, JointKernel.thermalChange(50, 11e-6, 100, 23e-6, 50, 2e-6, 3e-6), 1e-9);
    assertEquals(0, JointKernel.thermalChange(50, 11e-6, 0, 23e-6, 0, 2e-6, 3e-6));
  }

  private static void refused(Executable call, String part) {
    InputException e = assertThrows(InputException.class, call);
    assertTrue(e.getMessage().contains(part), e.getMessage());
  }
}

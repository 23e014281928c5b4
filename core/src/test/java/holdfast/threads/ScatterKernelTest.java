// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.Force;
import holdfast.quantity.InputException;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

class ScatterKernelTest {
  private static final Tightening NUT = Tightening.of(ScrewThread.of("M18x1.5"));

  @Test
  void factorsAndUncertaintiesByHand() {
    assertEquals(1.0 / 3, ScatterKernel.scatter(2), 1e-15);
    assertEquals(0, ScatterKernel.scatter(1));
    assertEquals(1, ScatterKernel.tighteningFactor(0));
    assertEquals(60, ScatterKernel.leastPreload(90, 1.5), 1e-12);
    assertEquals(132, ScatterKernel.greatestByUncertainty(100, 0.25, 7), 1e-12);
    assertEquals(50, ScatterKernel.leastByUncertainty(100, 0.25, 5, 0.4), 1e-12);
    assertEquals(0, ScatterKernel.leastByUncertainty(100, 0.25, 80, 0.05), "a stud does not push");
    assertEquals(10000, ScatterKernel.preloadByNutFactor(32000, 0.2, 16), 1e-9);
    assertEquals(32000, ScatterKernel.torqueByNutFactor(10000, 0.2, 16), 1e-9);
    InputException e = assertThrows(InputException.class, () -> ScatterKernel.scatter(Math.nextDown(1.0)));
    assertEquals("tightening factor αA", e.parameter());
  }

  @Test
  void withoutScatterEverySampleIsTheSame() {
    double expected = TighteningKernel.preload(60000, 17.026, 1.5, 0.12, 21, 0.14, 500);
    for (boolean normal : new boolean[] {true, false}) {
      double[] sample = new double[10_000];
      SamplingKernel.preloads(sample, 1, normal, 60000, 0, 17.026, 1.5, new Friction(0.12, 0.12, 0.14, 0.14), 21, 500);
      for (double preload : sample) {
        assertEquals(expected, preload, 1e-9 * expected);
      }
    }
  }

  /** Only the tool scatters, by 10 %: the preload is proportional to the torque. */
  @Test
  void shapesOfTheScatter() {
    double set = TighteningKernel.preload(60000, 17.026, 1.5, 0.12, 21, 0.14, 0);
    // Within half of the band lie half of uniform values, and of normal ones ± 1.5 of 3 standard deviations, 86.9 %.
    assertEquals(0.5, shareWithin(0.05, false, set), 0.01);
    assertEquals(0.869, shareWithin(0.05, true, set), 0.01);
    assertEquals(1, shareWithin(0.1 + 1e-12, false, set));
    assertEquals(1, shareWithin(0.1 + 1e-12, true, set));
  }

  private static double shareWithin(double band, boolean normal, double set) {
    double[] sample = new double[100_000];
    SamplingKernel.preloads(sample, 2, normal, 60000, 0.1, 17.026, 1.5, new Friction(0.12, 0.12, 0.14, 0.14), 21, 0);
    return (double) Arrays.stream(sample).filter(f -> Math.abs(f / set - 1) <= band).count() / sample.length;
  }

  /** Three numbers of 53 bits make a sample: two alike among 100 000 mean that parts of the sample repeat each other. */
  @Test
  void noPartOfTheSampleRepeatsAnother() {
    for (boolean normal : new boolean[] {true, false}) {
      double[] sample = new double[100_000];
      SamplingKernel.preloads(sample, 3, normal, 60000, 0.1, 17.026, 1.5, Friction.of(0.1, 0.16), 21, 0);
      assertTrue(Arrays.stream(sample).distinct().count() > 99_990, "distinct samples");
    }
  }

  @Test
  void noSampleMayFallBelowThePrevailingTorque() {
    Friction f = Friction.of(0.12, 0.12);
    SamplingKernel.preloads(new double[1], 1, true, 100, 0.4, 17.026, 1.5, f, 21, 60);
    InputException e =
        assertThrows(
            InputException.class,
            () -> SamplingKernel.preloads(new double[1], 1, true, 100, 0.41, 17.026, 1.5, f, 21, 60));
    assertTrue(e.getMessage().contains("at least the prevailing torque, 60 N·mm"), e.getMessage());
  }

  /** Three causes apart, then all together: the squares add. */
  @Test
  void independentCausesAddInQuadrature() {
    Friction exact = new Friction(0.12, 0.12, 0.13, 0.13);
    Friction thread = new Friction(0.10, 0.14, 0.13, 0.13);
    Friction face = new Friction(0.12, 0.12, 0.10, 0.16);
    Friction both = new Friction(0.10, 0.14, 0.10, 0.16);
    for (boolean up : new boolean[] {true, false}) {
      double t = spread(exact, 0.05, up);
      double g = spread(thread, 0, up);
      double k = spread(face, 0, up);
      assertTrue(t > 0 && g > 0 && k > 0);
      assertEquals(Math.sqrt(t * t + g * g + k * k), spread(both, 0.05, up), 1e-6);
    }
    // A single cause reaches the worst case.
    ScatteredPreload tool = new ScatteredPreload(NUT.friction(exact), Nm(60), Scatter.of(0.05));
    assertEquals(tool.worstCaseGreatest().newton(), tool.rootSumSquareGreatest().newton(), 1e-6);
    assertEquals(tool.worstCaseLeast().newton(), tool.rootSumSquareLeast().newton(), 1e-6);
    ScatteredPreload rub = new ScatteredPreload(NUT.friction(thread), Nm(60), Scatter.of(0));
    assertEquals(rub.worstCaseGreatest().newton(), rub.rootSumSquareGreatest().newton(), 1e-6);
    assertEquals(rub.worstCaseLeast().newton(), rub.rootSumSquareLeast().newton(), 1e-6);
    ScatteredPreload under = new ScatteredPreload(NUT.friction(face), Nm(60), Scatter.of(0));
    assertEquals(under.worstCaseGreatest().newton(), under.rootSumSquareGreatest().newton(), 1e-6);
  }

  private static double spread(Friction friction, double tool, boolean up) {
    ScatteredPreload s = new ScatteredPreload(NUT.friction(friction), Nm(60), Scatter.of(tool));
    Force end = up ? s.rootSumSquareGreatest() : s.rootSumSquareLeast();
    return Math.abs(end.minus(s.middle()).newton());
  }

  @Test
  void serviceTakesLossesFromBelowAndGainsFromAbove() {
    ScatteredPreload s = new ScatteredPreload(NUT.friction(0.12, 0.14), Nm(60), Scatter.of(0.05));
    double least = s.worstCaseLeast().newton();
    double greatest = s.worstCaseGreatest().newton();
    ServicePreload cold = new ServicePreload(s, N(500), N(-1000));
    assertEquals(least - 1500, cold.least().newton(), 1e-9);
    assertEquals(greatest, cold.greatest().newton(), 1e-9);
    ServicePreload warm = new ServicePreload(s, N(500), N(1000));
    assertEquals(least - 500, warm.least().newton(), 1e-9);
    assertEquals(greatest + 1000, warm.greatest().newton(), 1e-9);
    assertEquals("preload in service " + warm.least() + " … " + warm.greatest(), warm.toString());
    assertEquals(
        "60 N·m, tool ± 5 %: preload " + s.worstCaseLeast() + " … " + s.worstCaseGreatest(), s.toString());
    assertEquals(
        "friction-unusual",
        new ScatteredPreload(NUT.friction(0.12, 0.6), Nm(60), Scatter.of(0)).warnings().get(0).code());
  }
}

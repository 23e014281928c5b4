// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class TighteningLawsTest {
  private static final double D2 = 17.0257;

  @Property
  void torqueAndPreloadAreInverse(
      @ForAll @Scale(6) @DoubleRange(min = 1, max = 1e6) double preload,
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 0.6) double muG,
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 0.6) double muK,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 1e4) double prevailing) {
    double torque = TighteningKernel.torque(preload, D2, 1.5, muG, 21, muK, prevailing);
    double back = TighteningKernel.preload(torque, D2, 1.5, muG, 21, muK, prevailing);
    double again = TighteningKernel.torque(back, D2, 1.5, muG, 21, muK, prevailing);
    assertEquals(torque, again, 1e-12 * torque);
  }

  @Property
  void torqueGrowsWithFrictionPreloadAndFace(
      @ForAll @Scale(6) @DoubleRange(min = 1, max = 1e6) double preload,
      @ForAll @Scale(6) @DoubleRange(min = 0.03, max = 0.5) double mu,
      @ForAll @Scale(6) @DoubleRange(min = 1.001, max = 2) double more) {
    double t = TighteningKernel.torque(preload, D2, 1.5, mu, 21, mu, 0);
    assertTrue(TighteningKernel.torque(preload, D2, 1.5, mu * more, 21, mu, 0) > t);
    assertTrue(TighteningKernel.torque(preload, D2, 1.5, mu, 21, mu * more, 0) > t);
    assertTrue(TighteningKernel.torque(preload * more, D2, 1.5, mu, 21, mu, 0) > t);
    assertTrue(TighteningKernel.torque(preload, D2, 1.5, mu, 21 * more, mu, 0) > t);
    assertTrue(TighteningKernel.torque(preload, D2 * more, 1.5, mu, 21, mu, 0) > t);
    assertTrue(TighteningKernel.preload(t, D2, 1.5, mu * more, 21, mu, 0) < preload);
  }

  @Property
  void linearFormIsTheLimitOfTheExactForm(@ForAll @Scale(6) @DoubleRange(min = 0.05, max = 0.3) double mu) {
    double exact = TighteningKernel.threadLever(D2, 1.5, mu) + TighteningKernel.faceLever(21, mu);
    double linear = TighteningKernel.linearLever(D2, 1.5, mu, 21, mu);
    assertTrue(linear < exact);
    assertEquals(1, linear / exact, 0.01);
  }

  @Property
  void frictionOfTheNutFactorGivesTheNutFactorBack(
      @ForAll @Scale(6) @DoubleRange(min = 0.005, max = 1) double mu,
      @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 6) double pitch) {
    double k = TighteningKernel.nutFactor(18, D2, pitch, mu, 21, mu);
    assertEquals(mu, TighteningKernel.frictionOfNutFactor(k, 18, D2, pitch, 21), 1e-11 * mu + 1e-14);
  }

  @Property
  void solidIsTheLimitOfHollow(
      @ForAll @Scale(6) @DoubleRange(min = 2, max = 100) double d,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.99) double ratio) {
    assertEquals(Math.PI / 4 * d * d, ThreadGeometryKernel.ringArea(d, 0), 1e-12 * d * d);
    assertEquals(SectionKernel.plasticModulus(d, 0), SectionKernel.plasticModulus(d, d * 1e-6), 1e-12 * d * d * d);
    assertEquals(SectionKernel.elasticModulus(d, 0), SectionKernel.elasticModulus(d, d * 1e-6), 1e-12 * d * d * d);
    double bore = ratio * d;
    assertEquals(ThreadGeometryKernel.ringArea(d, bore), SectionKernel.area(d, bore, 0), 1e-12 * d * d);
    assertEquals(SectionKernel.plasticModulus(d, bore), SectionKernel.plasticModulus(d, bore, 0), 1e-12 * d * d * d);
    assertEquals(SectionKernel.elasticModulus(d, bore), SectionKernel.elasticModulus(d, bore, 0), 1e-12 * d * d * d);
  }

  /** Closed forms of the cross hole against a midpoint sum over rings. */
  @Property(tries = 50)
  void crossHoleAgreesWithQuadrature(
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 0.95) double hole,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.9) double bore) {
    int n = 20000;
    double area = 0;
    double first = 0;
    double polar = 0;
    for (int i = 0; i < n; i++) {
      double r = bore + (1 - bore) * (i + 0.5) / n;
      double arc = r <= hole ? 0 : 4 * Math.acos(hole / r);
      double w = arc * r * (1 - bore) / n;
      area += w;
      first += w * r;
      polar += w * r * r;
    }
    assertEquals(area, SectionKernel.area(2, 2 * bore, 2 * hole), 2e-5);
    assertEquals(first, SectionKernel.plasticModulus(2, 2 * bore, 2 * hole), 2e-5);
    assertEquals(polar, SectionKernel.elasticModulus(2, 2 * bore, 2 * hole), 2e-5);
  }

  @Property
  void preloadAtAStressReachesIt(
      @ForAll @Scale(6) @DoubleRange(min = 1, max = 1200) double stress,
      @ForAll @Scale(6) @DoubleRange(min = 0.03, max = 0.5) double mu,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 15) double bore,
      @ForAll boolean plastic) {
    double area = ThreadGeometryKernel.ringArea(16.59, bore);
    double w = plastic ? SectionKernel.plasticModulus(16.59, bore) : SectionKernel.elasticModulus(16.59, bore);
    double lever = TighteningKernel.threadLever(D2, 1.5, mu);
    double f = StressKernel.preloadAt(stress, area, w, lever);
    assertEquals(stress, StressKernel.combined(f, f * lever, area, w), 1e-12 * stress);
    assertEquals(stress, StressKernel.combined(f, f * lever, 16.59, bore, plastic), 1e-12 * stress);
    double m = 0.3 * stress * w / Math.sqrt(3);
    double g = StressKernel.preloadAt(stress, area, w, lever, m);
    assertEquals(stress, StressKernel.combined(g, g * lever + m, area, w), 1e-11 * stress);
    assertTrue(g < f);
    assertEquals(0, StressKernel.preloadAt(stress, area, w, lever, stress * w));
  }

  @Property
  void uniformPressureNeverActsInsideTheMeanDiameter(
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.99) double ratio,
      @ForAll @Scale(6) @DoubleRange(min = 1, max = 100) double outer) {
    double mean = TighteningKernel.meanFaceDiameter(outer, ratio * outer);
    double uniform = TighteningKernel.uniformPressureDiameter(outer, ratio * outer);
    assertTrue(uniform >= mean * (1 - 1e-12) && uniform <= outer);
  }
}

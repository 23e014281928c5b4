// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class DutyTest {
  private static final LoadRatings ROLLER = LoadRatings.radialRoller(kN(14.2), kN(17.5));
  private static final LoadSpectrum THREE = LoadSpectrum.builder()
      .step(kN(3), rpm(100), 0.2).step(kN(2), rpm(200), 0.5).step(kN(1), rpm(400), 0.3).build();

  @Test
  void oneStepIsAConstantLoad() {
    LoadSpectrum one = LoadSpectrum.constant(kN(2.1), rpm(180));
    SpectrumLife life = RatingLife.basic(ROLLER, one, Reliability.L10);
    assertEquals(RatingLife.basic(ROLLER, kN(2.1)).millionRevolutions(), life.millionRevolutions(), 1e-9);
    assertEquals(RatingLife.basic(ROLLER, kN(2.1)).hours(rpm(180)).hours(), life.hours().hours(), 1e-6);
    SpectrumLife modified = RatingLife.modified(
        ROLLER, one, Reliability.L10, mm2PerS(60), mm(30), Contamination.ofFactor(0.5));
    assertEquals(RatingLife.modified(ROLLER, kN(2.1), Reliability.L10, Lubrication.of(mm2PerS(60), rpm(180), mm(30)),
        Contamination.ofFactor(0.5)).millionRevolutions(), modified.millionRevolutions(), 1e-9);
  }

  @Test
  void meanLoadAndDamageSumAgree() {
    SpectrumLife life = RatingLife.basic(ROLLER, THREE, Reliability.L10);
    assertEquals(RatingLife.basic(ROLLER, THREE.meanLoad(BearingFamily.RADIAL_ROLLER)).millionRevolutions(),
        life.millionRevolutions(), 1e-6);
    assertEquals(1, life.damageShares().stream().mapToDouble(Double::doubleValue).sum(), 1e-12);
    assertEquals(life.millionRevolutions(), life.explain().result().value());
    assertEquals(240, THREE.meanSpeed().rpm(), 1e-9);
  }

  @Test
  void modifiedLifeStepByStep() {
    SpectrumLife life = RatingLife.modified(ROLLER, THREE, Reliability.L10, mm2PerS(60), mm(30), Contamination.ofFactor(0.5));
    double damage = 0;
    double[] loads = {3000, 2000, 1000};
    double[] speeds = {100, 200, 400};
    double[] shares = {0.2 * 100 / 240, 0.5 * 200 / 240, 0.3 * 400 / 240};
    for (int i = 0; i < 3; i++) {
      damage += shares[i] / LifeModificationKernel.life(BearingFamily.RADIAL_ROLLER, 14200, 17500 / 8.2, loads[i], 90,
          LubricationKernel.kappa(60, speeds[i], 30), 0.5);
    }
    assertEquals(1 / damage, life.millionRevolutions(), 1e-9 / damage);
  }

  @Test
  void stepsByTimeAndIdleSteps() {
    LoadSpectrum duty = LoadSpectrum.builder().step(kN(2), rpm(200), hours(6)).step(kN(0), rpm(0), hours(2)).build();
    SpectrumLife life = RatingLife.basic(ROLLER, duty, Reliability.L10);
    assertEquals(RatingLife.basic(ROLLER, kN(2)).hours(rpm(200)).hours() / 0.75, life.hours().hours(), 1e-6);
    assertEquals("step-without-load", life.warnings().get(0).code());
  }

  @Test
  void errors() {
    InputException empty = assertThrows(InputException.class, () -> LoadSpectrum.builder().build());
    assertTrue(empty.getMessage().startsWith("load spectrum (no steps) must be at least one step"), empty.getMessage());
    InputException negative =
        assertThrows(InputException.class, () -> LoadSpectrum.builder().step(kN(1), rpm(10), -0.1));
    assertTrue(negative.getMessage().startsWith("share of time of a step (-0.1) must be over 0 up to 1"), negative.getMessage());
    InputException sum = assertThrows(InputException.class, () -> LoadSpectrum.builder().step(kN(1), rpm(10), 0.9).build());
    assertTrue(sum.getMessage().startsWith("sum of the shares of time (0.9) must be 1"), sum.getMessage());
    assertThrows(InputException.class, () -> LoadSpectrum.builder().step(kN(1), rpm(10), 0.9).step(kN(1), rpm(10), hours(1)));
    LoadSpectrum standing = LoadSpectrum.constant(kN(1), rpm(0));
    assertThrows(InputException.class, () -> RatingLife.basic(ROLLER, standing, Reliability.L10));
    assertThrows(InputException.class,
        () -> RatingLife.basic(ROLLER, LoadSpectrum.constant(kN(0), rpm(10)), Reliability.L10));
    assertThrows(InputException.class, () -> SystemLife.of(BearingFamily.RADIAL_BALL));
    assertThrows(InputException.class, () -> DutyKernel.linear(3, 2, 1));
  }

  @Test
  void meansOfContinuousLoadsAgainstQuadrature() {
    for (double p : new double[] {3, 10.0 / 3}) {
      assertEquals(mean(p, x -> 400 + 600 * x), DutyKernel.linear(p, 400, 1000), 0.01);
      assertEquals(mean(p, x -> 500 * (1 - Math.cos(2 * Math.PI * x))), DutyKernel.sinusoid(p, 1000), 0.01);
      assertEquals(mean(p, x -> 1000 * Math.abs(Math.sin(2 * Math.PI * x))), DutyKernel.rectifiedSine(p, 1000), 0.01);
    }
    // The rule of thumb lies above the exact mean, by up to 9 %.
    for (double least : new double[] {0, 200, 400, 700, 1000}) {
      double exact = DutyKernel.linear(3, least, 1000);
      double rule = DutyKernel.linearRule(least, 1000);
      assertTrue(rule >= exact * (1 - 1e-9) && rule < 1.09 * exact, least + ": " + rule + " against " + exact);
    }
    for (double rotating : new double[] {0, 300, 700, 1000}) {
      double exact = mean(3, x -> Math.hypot(1000 + rotating * Math.cos(2 * Math.PI * x), rotating * Math.sin(2 * Math.PI * x)));
      // A rule of thumb: up to 5 % above the exact mean.
      assertEquals(exact, DutyKernel.stationaryAndRotating(1000, rotating), 0.05 * exact);
    }
  }

  private static double mean(double p, DoubleUnaryOperator load) {
    int n = 200_000;
    double sum = 0;
    for (int i = 0; i < n; i++) {
      sum += Math.pow(load.applyAsDouble((i + 0.5) / n), p) / n;
    }
    return Math.pow(sum, 1 / p);
  }

  @Test
  void oscillationByHalfSwing() {
    // Half swing 90°: a cycle rolls 360°, one revolution.
    BasicLife life = RatingLife.basic(ROLLER, kN(2.1));
    assertEquals(life.millionRevolutions(), life.oscillating(deg(90)).millionCycles(), 1e-9);
    assertEquals(2 * life.millionRevolutions(), life.oscillating(deg(45)).millionCycles(), 1e-9);
    // 20 elements, narrow: 18° of half swing brings neighbouring tracks together.
    assertEquals(18, Math.toDegrees(DutyKernel.criticalHalfSwing(20, 0)), 1e-9);
  }

  @Test
  void smallSwingsWarnOfFalseBrinelling() {
    OscillatingLife wide = RatingLife.basic(ROLLER, kN(2.1)).oscillating(deg(20));
    assertEquals(wide.millionCycles(), wide.explain().result().value(), 1e-9);
    assertEquals(List.of(), wide.warnings());
    assertEquals(List.of(), wide.withElements(20, 0).warnings());
    // 16 elements: 360°/16 = 22.5°.
    assertEquals("tracks-do-not-meet", wide.withElements(16, 0).warnings().get(0).code());
    assertEquals(deg(22.5).radian(), wide.withElements(16, 0).knownLeastHalfSwing().orElseThrow().radian(), 1e-12);
    assertEquals(List.of(), wide.life().oscillating(deg(10)).warnings());
    assertEquals("small-swing", wide.life().oscillating(deg(9.9)).warnings().get(0).code());
    assertThrows(InputException.class, () -> wide.life().oscillating(deg(0)));
    assertThrows(InputException.class, () -> wide.withElements(0, 0));
  }

  @Property
  void oscillationLoadAndLifeAgree(@ForAll @DoubleRange(min = 5, max = 90) double degrees, @ForAll BearingFamily family) {
    double swing = Math.toRadians(degrees);
    double cycles = DutyKernel.oscillation(BasicLifeKernel.l10(family, 1e4, 1000), swing);
    double load = DutyKernel.oscillationLoad(family.lifeExponent(), 1000, swing);
    assertEquals(cycles, BasicLifeKernel.l10(family, 1e4, load), 1e-9 * cycles);
  }

  @Property
  void systemLivesNoLongerThanItsWeakest(@ForAll @DoubleRange(min = 100, max = 1e5) double a,
      @ForAll @DoubleRange(min = 100, max = 1e5) double b, @ForAll BearingFamily family) {
    SystemLife system = SystemLife.of(family, hours(a), hours(b));
    assertTrue(system.life().hours() < Math.min(a, b));
    assertEquals(a, SystemLife.of(family, hours(a)).life().hours(), 1e-9 * a);
    assertEquals(system.life().hours(), system.explain().result().value());
  }

  @Property
  void weibullGoesBack(@ForAll @DoubleRange(min = 0.5, max = 5) double slope,
      @ForAll @DoubleRange(min = 0.01, max = 0.99) double share,
      @ForAll @DoubleRange(min = 0, max = 50) double minimum) {
    double life = WeibullKernel.life(share, slope, 100, minimum);
    assertEquals(share, WeibullKernel.survival(life, slope, 100, minimum), 1e-9);
    assertEquals(100, WeibullKernel.scale(life, share, slope, minimum), 1e-6);
  }

  @Test
  void weibullErrors() {
    assertThrows(InputException.class, () -> WeibullKernel.maximumLikelihoodSlope(new double[] {3, 3}));
    assertThrows(InputException.class, () -> WeibullKernel.survival(-1, 1, 1, 0));
    assertEquals(List.of(1.0), List.of(WeibullKernel.survival(3, 2, 10, 5)));
  }
}

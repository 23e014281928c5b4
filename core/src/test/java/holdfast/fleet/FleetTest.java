// SPDX-License-Identifier: Apache-2.0
package holdfast.fleet;

import static holdfast.quantity.Units.hours;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.bearings.Reliability;
import holdfast.bearings.ReliabilityKernel;
import holdfast.quantity.InputException;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class FleetTest {
  private static double exponential(double h) {
    return Math.exp(-h / 4000);
  }

  private static DoubleUnaryOperator weibull(double shape, double scale) {
    return h -> Math.exp(-Math.pow(h / scale, shape));
  }

  @Property(tries = 50)
  void constantFailureRateRenewsAtThatRate(@ForAll @Scale(4) @DoubleRange(min = 0.1, max = 20) double years) {
    FleetPlan fleet = FleetPlan.ofLike(FleetTest::exponential, 1, 2000);
    double exact = 2000 * years / 4000;
    assertEquals(exact, fleet.expectedReplacements(years).total(), 2e-4 * exact);
    // It does not matter how old the part in place is.
    FleetPlan old = FleetPlan.of(FleetTest::exponential, List.of(new FleetPosition("old", 2000, hours(9000))));
    assertEquals(exact, old.expectedReplacements(years).total(), 2e-4 * exact);
  }

  /** Sum of two exponential lives: M(t) = t/2 − 1/4 + e^(−2t)/4 with the rate 1. */
  @Property(tries = 50)
  void twoStageLifeHasItsClosedForm(@ForAll @Scale(4) @DoubleRange(min = 0.01, max = 12) double t) {
    FleetPlan fleet = FleetPlan.ofLike(h -> Math.exp(-h / 1000) * (1 + h / 1000), 1, 1000);
    assertEquals(t / 2 - 0.25 + 0.25 * Math.exp(-2 * t), fleet.expectedReplacements(t).total(), 2e-4 * (1 + t));
  }

  /** A life that is uniform from 0 to 1: M(t) = e^t − 1 up to 1. */
  @Property(tries = 50)
  void uniformLifeHasItsClosedForm(@ForAll @Scale(4) @DoubleRange(min = 0.01, max = 1) double t) {
    FleetPlan fleet = FleetPlan.ofLike(h -> Math.max(0, 1 - h / 1000), 1, 1000);
    assertEquals(Math.expm1(t), fleet.expectedReplacements(t).total(), 3e-4);
  }

  /** The part in place has a known age: first its own remaining life, then whole lives. */
  @Property(tries = 50)
  void anAgedPartFailsSooner(
      @ForAll @Scale(4) @DoubleRange(min = 0.05, max = 0.5) double t, @ForAll @Scale(4) @DoubleRange(min = 0.1, max = 0.5) double age) {
    FleetPlan fleet =
        FleetPlan.of(h -> Math.max(0, 1 - h / 1000), List.of(new FleetPosition("aged", 1000, hours(1000 * age))));
    // F_a(t) = t/(1 − a); M_a(t) = ∫ (1 + M(t − x)) dx/(1 − a) = (e^t − 1)/(1 − a), as long as t is below 1 − a.
    assertEquals(Math.expm1(t) / (1 - age), fleet.expectedReplacements(t).total(), 5e-4);
  }

  @Test
  void nothingIsExpectedInNoTimeAndPlacesAdd() {
    FleetPlan fleet =
        FleetPlan.of(
            FleetTest::exponential,
            List.of(FleetPosition.ofNew("a", 1000), FleetPosition.ofNew("b", 3000), FleetPosition.ofNew("c", 1000)));
    assertEquals(0, fleet.expectedReplacements(0).total());
    ExpectedReplacements two = fleet.expectedReplacements(2);
    assertEquals(2.5, two.total(), 1e-3);
    assertEquals(two.each().get(0), two.each().get(2));
    assertEquals(two.total(), two.explain().result().value());
    assertEquals("2.5 replacements in 2 years", two.toString());
    assertEquals(1, two.warnings().size());
    assertEquals(3, fleet.positions().size());
  }

  @Property(tries = 200)
  void groupIntervalReachesTheWantedReliabilityAndNoMore(
      @ForAll @Scale(4) @DoubleRange(min = 0.05, max = 0.999) double wanted,
      @ForAll @IntRange(min = 1, max = 50) int count,
      @ForAll @Scale(4) @DoubleRange(min = 0.8, max = 4) double shape) {
    FleetPlan fleet = FleetPlan.ofLike(weibull(shape, 20_000), count, 1500);
    GroupReplacement group = fleet.groupReplacement(wanted);
    assertTrue(group.reached() >= wanted);
    assertEquals(20_000 / 1500.0 * Math.pow(-Math.log(wanted) / count, 1 / shape), group.years(), 1e-9 * (1 + group.years()));
    assertEquals(group.years(), group.explain().result().value());
    assertTrue(fleet.replacementOfEach(wanted).years() >= group.years() * (1 - 1e-12));
    assertEquals(group.hours(), group.years() * 1500, 1e-9 * group.hours());
  }

  @Test
  void ratingLifeGivesTheIntervalOfItsReliability() {
    double l10h = 12_000;
    FleetPlan fleet = FleetPlan.ofLike(h -> ReliabilityKernel.survival(h / l10h), 40, 1500);
    GroupReplacement each = fleet.replacementOfEach(0.9);
    assertEquals(8, each.years(), 1e-9);
    assertTrue(fleet.groupReplacement(0.9).years() < 1.2);
    assertTrue(each.toString().startsWith("8 years"));
  }

  @Test
  void firstFailuresOfAFleet() {
    double l10h = 20_000;
    FleetPlan fleet = FleetPlan.ofLike(h -> ReliabilityKernel.survival(h / l10h), 400, 1000);
    assertEquals(360, fleet.expectedSurvivors(20), 1e-9);
    assertEquals(400, fleet.expectedSurvivors(1));
    double interval = Reliability.ofPercent(99).a1() * l10h / 1000;
    assertEquals(interval, fleet.replacementOfEach(0.99).years(), 1e-9);
    assertEquals(Math.pow(0.99, 400), fleet.groupReliability(interval), 1e-9);
    // A part that has reached 10 of 20 years fails in the rest with the failures of the rest.
    DoubleUnaryOperator life = h -> ReliabilityKernel.survival(h / l10h);
    FleetPlan aged = FleetPlan.of(life, List.of(new FleetPosition("aged", 1000, hours(10_000))));
    assertEquals(0.9 / life.applyAsDouble(10_000), aged.expectedSurvivors(10), 1e-12);
    assertThrows(InputException.class, () -> fleet.expectedSurvivors(-1));
  }

  @Test
  void aSurvivalThatJumpsIsWarned() {
    FleetPlan fleet = FleetPlan.ofLike(h -> h < 3000 ? 1 : 0, 2, 1000);
    GroupReplacement group = fleet.groupReplacement(0.9);
    assertEquals(3, group.years(), 1e-9);
    assertEquals("survival-jumps", group.warnings().get(0).code());
  }

  @Test
  void refusesWhatIsNoSurvivalAndNoFleet() {
    InputException start = assertThrows(InputException.class, () -> FleetPlan.ofLike(h -> 0.5, 1, 1000));
    assertEquals("survival at 0 h", start.parameter());
    FleetPlan growing = FleetPlan.ofLike(h -> h == 0 ? 1 : Math.min(1, 0.5 + h / 1e6), 1, 1000);
    assertThrows(InputException.class, () -> growing.expectedReplacements(1));
    FleetPlan nan = FleetPlan.ofLike(h -> h == 0 ? 1 : Double.NaN, 1, 1000);
    InputException bad = assertThrows(InputException.class, () -> nan.expectedReplacements(1));
    assertTrue(bad.parameter().startsWith("survival at "), bad.parameter());
    FleetPlan immortal = FleetPlan.ofLike(h -> 1, 1, 1000);
    assertThrows(InputException.class, () -> immortal.groupReplacement(0.9));
    assertThrows(InputException.class, () -> FleetPlan.of(FleetTest::exponential, List.of()));
    assertThrows(InputException.class, () -> FleetPlan.ofLike(FleetTest::exponential, 0, 1000));
    assertThrows(InputException.class, () -> FleetPosition.ofNew("x", 9000));
    FleetPlan fleet = FleetPlan.ofLike(FleetTest::exponential, 1, 1000);
    assertThrows(InputException.class, () -> fleet.groupReplacement(1));
    assertThrows(InputException.class, () -> fleet.groupReplacement(Double.NaN));
    assertThrows(InputException.class, () -> fleet.expectedReplacements(-1));
    FleetPlan dead = FleetPlan.of(h -> Math.max(0, 1 - h / 1000), List.of(new FleetPosition("dead", 1000, hours(2000))));
    assertThrows(InputException.class, () -> dead.expectedReplacements(1));
    FleetPlan brief = FleetPlan.ofLike(h -> Math.exp(-h), 1, 8000);
    InputException often = assertThrows(InputException.class, () -> brief.expectedReplacements(100));
    assertEquals("running hours in the period", often.parameter());
  }

  @Property
  void stockIsTheLeastThatReachesTheLevel(
      @ForAll @Scale(4) @DoubleRange(min = 0, max = 300) double mean, @ForAll @Scale(4) @DoubleRange(min = 0, max = 0.9999) double level) {
    int s = SparesKernel.stock(mean, level);
    assertTrue(SparesKernel.serviceLevel(mean, s) >= level);
    assertTrue(s == 0 || SparesKernel.serviceLevel(mean, s - 1) < level);
  }

  @Property
  void serviceFallsWithDemandAndGrowsWithStock(
      @ForAll @Scale(4) @DoubleRange(min = 0.01, max = 200) double mean, @ForAll @IntRange(min = 0, max = 300) int stock) {
    double p = SparesKernel.serviceLevel(mean, stock);
    assertTrue(p >= 0 && p <= 1);
    assertTrue(SparesKernel.serviceLevel(1.1 * mean, stock) <= p + 1e-12);
    assertTrue(SparesKernel.serviceLevel(mean, stock + 1) >= p);
  }

  @Test
  void sparesOfALeadTime() {
    FleetPlan fleet = FleetPlan.ofLike(FleetTest::exponential, 40, 1500);
    Spares spares = fleet.spares(1, 0.25, 0.95);
    assertEquals(40 * 1500 * 0.25 / 4000, spares.meanDemand(), 0.02);
    assertEquals(SparesKernel.stock(spares.meanDemand(), 0.95), spares.stock());
    assertEquals(spares.stock(), spares.explain().result().value());
    assertEquals("poisson-demand", spares.warnings().get(0).code());
    assertEquals("0 spares (mean demand 0, service level 100 %)", Spares.of(0, 0.99).toString());
    assertEquals(0, SparesKernel.stock(0, 0.99));
    assertThrows(InputException.class, () -> SparesKernel.stock(1, 1));
    assertThrows(InputException.class, () -> SparesKernel.stock(-1, 0.9));
    assertThrows(InputException.class, () -> SparesKernel.serviceLevel(1, -1));
  }
}

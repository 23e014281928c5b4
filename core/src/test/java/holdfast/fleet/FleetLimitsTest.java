// SPDX-License-Identifier: Apache-2.0
package holdfast.fleet;

import static holdfast.quantity.Units.hours;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import holdfast.trace.Derivation;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Ends of the permitted ranges, exact values, and what the results say about themselves. */
class FleetLimitsTest {
  /** A life that is uniform from 0 h to 4000 h: every quarter is a number that a double holds. */
  private static double uniform(double h) {
    return Math.max(0, 1 - h / 4000);
  }

  @Test
  void serviceLevelsAreThoseOfTheRecurrence() {
    // P(0) = e^-m, P(k) = P(k-1) m/k. e^-25 to 40 digits from its series.
    MathContext digits = new MathContext(60);
    BigDecimal exponential = BigDecimal.ONE;
    BigDecimal part = BigDecimal.ONE;
    for (int k = 1; k < 200; k++) {
      part = part.multiply(BigDecimal.valueOf(25)).divide(BigDecimal.valueOf(k), digits);
      exponential = exponential.add(part);
    }
    BigDecimal term = BigDecimal.ONE.divide(exponential, digits);
    BigDecimal sum = term;
    for (int k = 0; k <= 60; k++) {
      assertEquals(sum.doubleValue(), SparesKernel.serviceLevel(25, k), 3e-14, "stock " + k);
      term = term.multiply(BigDecimal.valueOf(25)).divide(BigDecimal.valueOf(k + 1), digits);
      sum = sum.add(term);
    }
  }

  @Test
  void medianOfTheDistributionOfPoissonIsItsWholeMean() {
    // Choi 1994 (memory): the median lies between m - ln 2 and m + 1/3; for a whole mean it is the mean.
    for (int mean : new int[] {1, 2, 19, 20, 100, 100_000}) {
      assertEquals(mean, SparesKernel.stock(mean, 0.5));
    }
    assertEquals(1, SparesKernel.serviceLevel(100, 300), 1e-12);
    assertEquals(1, SparesKernel.serviceLevel(100_000, 200_000), 1e-9);
  }

  @Test
  void endsOfTheRangesOfSpares() {
    assertEquals(Math.exp(-0.25), SparesKernel.serviceLevel(0.25, 0), 1e-15);
    assertEquals(1, SparesKernel.serviceLevel(0, 0));
    assertEquals(0, SparesKernel.stock(5, 0));
    // A level that a stock just reaches needs no more.
    for (int stock = 0; stock < 8; stock++) {
      assertEquals(stock, SparesKernel.stock(3, SparesKernel.serviceLevel(3, stock)));
    }
    assertTrue(SparesKernel.stock(5, Math.nextDown(1.0)) > 20);
    refused("mean demand", "from 0 to 100000", () -> SparesKernel.stock(100_001, 0.5));
    refused("mean demand", "from 0 to 100000", () -> SparesKernel.serviceLevel(-0.001, 1));
    refused("stock", "0 or more", () -> SparesKernel.serviceLevel(1, -1));
    refused("service level", "from 0 to below 1", () -> SparesKernel.stock(1, -1e-9));
    refused("service level", "from 0 to below 1", () -> SparesKernel.stock(1, 1));
    refused("service level", "from 0 to below 1", () -> SparesKernel.stock(1, Double.NaN));
  }

  @Test
  void sparesSayWhatTheyReach() {
    // e^-1 (1 + 1) = 0.7358 for one spare, e^-1 · 5/2 = 0.9197 for two.
    Spares one = Spares.of(1, 0.7);
    assertEquals(2 / Math.E, one.reached(), 1e-15);
    assertEquals("1 spare (mean demand 1, service level 73.6 %)", one.toString());
    assertEquals("2 spares (mean demand 1, service level 92 %)", Spares.of(1, 0.8).toString());
    assertEquals(2 / Math.E, one.explain().steps().get(0).value(), 1e-15);
    assertTrue(one.explain().toString().contains("wanted level = 0.7"), one.explain().toString());
  }

  @Test
  void demandOfALeadTimeIsTheDifferenceOfTwoExpectations() {
    // Uniform life of one year: M(t) = e^t - 1 up to one year.
    FleetPlan fleet = FleetPlan.ofLike(FleetLimitsTest::uniform, 3, 4000);
    assertEquals(3 * (Math.exp(0.75) - Math.exp(0.25)), fleet.spares(0.25, 0.5, 0.9).meanDemand(), 2e-3);
    assertEquals(0, fleet.spares(0.25, 0, 0.9).meanDemand());
    refused("lead time", "0 years or more", () -> fleet.spares(0.5, -0.25, 0.9));
    refused("period", "0 years or more", () -> fleet.spares(-0.5, 1, 0.9));
  }

  @Test
  void expectationIsWithinItsStatedAccuracyOfTheClosedForm() {
    // The search stops when doubling the steps changes the result by 1e-4 of it; the midpoint sum is of second order.
    FleetPlan uniform = FleetPlan.ofLike(FleetLimitsTest::uniform, 1, 4000);
    assertEquals(Math.E - 1, uniform.expectedReplacements(1).total(), 1e-4 * (Math.E - 1));
    FleetPlan often = FleetPlan.ofLike(h -> Math.exp(-h / 100), 1, 1000);
    assertEquals(100, often.expectedReplacements(10).total(), 1e-4 * 100);
    // A part that certainly outlives the period is not replaced.
    assertEquals(0, FleetPlan.ofLike(h -> h <= 5000 ? 1 : 0, 1, 1000).expectedReplacements(4).total());
    // A part that lives for exactly 1000 h: three are replaced within 3500 h.
    assertEquals(3, FleetPlan.ofLike(h -> h < 1000 ? 1 : 0, 1, 1000).expectedReplacements(3.5).total(), 1e-9);
  }

  @Test
  void ratesThatOnlyFineStepsResolveAreStillFound() {
    // 50 failures in the period: the first grid has five steps a life.
    FleetPlan fleet = FleetPlan.ofLike(h -> Math.exp(-h / 160), 1, 8000);
    assertEquals(50, fleet.expectedReplacements(1).total(), 1e-4 * 50);
  }

  @Test
  void placesOfTheSameHoursButAnotherAgeAreNotTheSame() {
    FleetPlan fleet =
        FleetPlan.of(
            FleetLimitsTest::uniform,
            List.of(
                FleetPosition.ofNew("new", 1000),
                new FleetPosition("aged", 1000, hours(2000)),
                FleetPosition.ofNew("fast", 2000),
                new FleetPosition("aged too", 1000, hours(2000))));
    List<Double> each = fleet.expectedReplacements(1).each();
    assertEquals(Math.expm1(0.25), each.get(0), 1e-4);
    assertEquals(2 * Math.expm1(0.25), each.get(1), 1e-4);
    assertEquals(Math.expm1(0.5), each.get(2), 1e-4);
    assertEquals(each.get(1), each.get(3));
    // Survivors: 3/4, 1/4 of 1/2, 1/2, 1/4 of 1/2.
    assertEquals(0.75 + 0.5 + 0.5 + 0.5, fleet.expectedSurvivors(1), 1e-15);
    assertEquals(0.75 * 0.75 * 0.5 * 0.75, fleet.groupReliability(1), 1e-15);
    refused("period", "0 years or more", () -> fleet.groupReliability(-1));
    refused("period", "0 years or more", () -> fleet.expectedSurvivors(-1));
    Derivation steps = fleet.expectedReplacements(0.5).explain();
    String text = steps.toString();
    assertTrue(text.contains("expected replacements, aged too") && text.contains("t = 1000 h"), text);
    assertTrue(text.contains("t = 500 h") && text.contains("age = 2000 h"), text);
    assertTrue(steps.steps().get(0).source().toString().contains("renewal equation"), steps.sources().toString());
  }

  @Test
  void likePlacesAreNumberedFromOne() {
    List<FleetPosition> places = FleetPlan.ofLike(FleetLimitsTest::uniform, 3, 1000).positions();
    assertEquals(List.of("place 1", "place 2", "place 3"), places.stream().map(FleetPosition::name).toList());
    assertEquals(0, places.get(0).age().hours());
    refused("number of places", "from 1 to 1000000", () -> FleetPlan.ofLike(FleetLimitsTest::uniform, 1_000_001, 1000));
    refused("number of places", "from 1 to 1000000", () -> FleetPlan.ofLike(FleetLimitsTest::uniform, 0, 1000));
    refused("positions", "at least one", () -> FleetPlan.of(FleetLimitsTest::uniform, List.of()));
  }

  @Test
  void aLeapYearIsTheLongest() {
    assertEquals(8784, FleetPosition.ofNew("always", 8784).hoursPerYear());
    refused("running hours per year", "over 0 h up to 8784 h", () -> FleetPosition.ofNew("more", 8784.1));
    refused("running hours per year", "over 0 h up to 8784 h", () -> FleetPosition.ofNew("never", 0));
    refused("age of the roller", "0 h or more", () -> new FleetPosition("x", 1000, hours(-1)));
  }

  @Test
  void anIntervalReachesExactlyTheWantedReliability() {
    // 1 - 1000 T/4000 = 3/4 at one year, 5/8 at a year and a half: numbers that a double holds.
    FleetPlan fleet = FleetPlan.ofLike(FleetLimitsTest::uniform, 1, 1000);
    assertEquals(1, fleet.groupReplacement(0.75).years(), 1e-15);
    assertTrue(fleet.groupReplacement(0.75).years() >= 1);
    assertEquals(0.75, fleet.groupReplacement(0.75).reached());
    assertEquals(1.5, fleet.groupReplacement(0.625).years(), 1e-15);
    assertEquals(0.625, fleet.groupReplacement(0.625).reached());
    assertEquals(3, fleet.groupReplacement(0.25).years(), 1e-15);
    assertTrue(fleet.groupReplacement(0.25).warnings().isEmpty());
    assertEquals("1.5 years (1500 h at the place that runs most)", fleet.groupReplacement(0.625).toString());
    refused("wanted reliability", "over 0 and below 1", () -> fleet.groupReplacement(0));
    refused("wanted reliability", "over 0 and below 1", () -> fleet.groupReplacement(1));
    refused("wanted reliability", "over 0 and below 1", () -> fleet.replacementOfEach(Double.NaN));
    refused("wanted reliability", "above the least survival",
        () -> FleetPlan.ofLike(h -> 1, 1, 1000).groupReplacement(0.9));
  }

  @Test
  void thePlaceThatRunsMostGovernsTheIntervalOfEach() {
    FleetPlan fleet =
        FleetPlan.of(FleetLimitsTest::uniform, List.of(FleetPosition.ofNew("slow", 1000), FleetPosition.ofNew("fast", 2000)));
    GroupReplacement each = fleet.replacementOfEach(0.75);
    assertEquals(0.5, each.years(), 1e-15);
    assertEquals(1000, each.hours(), 1e-12);
    assertEquals(1, each.places());
    assertTrue(each.explain().toString().contains("S(h·T)") && each.explain().toString().contains("places: 1"));
    assertFalse(each.explain().toString().contains("over the places"));
    // (1 - T/4)(1 - T/2) = 3/8 has the root T = 1.
    GroupReplacement all = fleet.groupReplacement(0.375);
    assertEquals(1, all.years(), 1e-14);
    assertEquals(2000, all.hours(), 1e-10);
    assertEquals(2, all.places());
    assertTrue(all.explain().toString().contains("Π S(h·T) over the places"));
  }

  @Test
  void aJumpIsWarnedBeyondAMillionth() {
    assertTrue(new GroupReplacement(1, 1000, 0, 1e-6, 1).warnings().isEmpty());
    assertEquals("survival-jumps", new GroupReplacement(1, 1000, 0.5, 0.500002, 1).warnings().get(0).code());
  }

  @Test
  void aSurvivalMayStayLevelButNotGrow() {
    DoubleUnaryOperator level = h -> h < 3000 ? 1 : 0.5;
    FleetPlan aged = FleetPlan.of(level, List.of(new FleetPosition("aged", 1000, hours(1000))));
    assertEquals(1, aged.expectedSurvivors(1));
    assertEquals(0.5, aged.expectedSurvivors(2));
    DoubleUnaryOperator growing = h -> h == 0 ? 1 : h < 1500 ? 0.5 : 0.75;
    FleetPlan reborn = FleetPlan.of(growing, List.of(new FleetPosition("aged", 1000, hours(1000))));
    refused("survival at 2000 h", "at most 0.5", () -> reborn.expectedSurvivors(1));
    refused("survival at 1500 h", "at most 0.5", () -> reborn.expectedReplacements(1));
    refused("survival near 1500 h", "falling or level", () -> FleetPlan.ofLike(growing, 1, 1000).expectedReplacements(3));
    // Between a point of the grid, every 11.7 h, and the middle behind it.
    DoubleUnaryOperator later = h -> h == 0 ? 1 : h < 1501 ? 0.5 : 0.75;
    refused("survival near 1500 h", "falling or level", () -> FleetPlan.ofLike(later, 1, 1000).expectedReplacements(3));
    assertEquals("0.75", assertThrows(InputException.class, () -> reborn.expectedSurvivors(1)).value());
    FleetPlan gone = FleetPlan.of(FleetLimitsTest::uniform, List.of(new FleetPosition("gone", 1000, hours(4000))));
    refused("survival at the age of 4000 h", "over 0", () -> gone.expectedSurvivors(1));
    refused("survival at 0 h", "1", () -> FleetPlan.ofLike(h -> 0.999, 1, 1000));
    FleetPlan odd = FleetPlan.ofLike(h -> h == 0 ? 1 : -0.1, 1, 1000);
    refused("survival at 1000 h", "from 0 to 1", () -> odd.expectedSurvivors(1));
  }

  private static void refused(String parameter, String permitted, org.junit.jupiter.api.function.Executable call) {
    InputException e = assertThrows(InputException.class, call);
    assertTrue(e.parameter().startsWith(parameter), e::getMessage);
    assertTrue(e.permitted().startsWith(permitted), e::getMessage);
  }
}

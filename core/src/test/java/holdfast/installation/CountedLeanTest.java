// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import static holdfast.quantity.Units.hours;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.Angle;
import holdfast.quantity.InputException;
import org.junit.jupiter.api.Test;

/** Replacement time, margins and verdict count what the lean costs. */
class CountedLeanTest {
  private static final InstallationPlan PRESS = InstallationPlan.example();
  private static final PrintedLifeLawsTest.Inputs FLAT =
      new PrintedLifeLawsTest.Inputs(2.1, 180, 90, 2, 3, 12, 0, 20, 95);

  @Test
  void aKnownInteriorIsCounted() {
    CountedLean lean = PRESS.countedLean();
    assertTrue(lean.counted());
    assertEquals(PRESS.tilt().total().radian(), lean.lean().radian(), 1e-12);
    double aligned = PRESS.atWork().fatigueHours().hours();
    assertEquals(lean.price().lifeRatio() * aligned, PRESS.replaceAfter().hours(), 1e-9 * aligned);
    assertTrue(PRESS.replaceAfter().hours() < aligned);
  }

  @Test
  void anUnknownInteriorIsSaid() {
    MountingPlan slip = ExampleJobs.all().get("slip-fit");
    CountedLean lean = slip.countedLean();
    assertFalse(lean.counted());
    assertEquals(1, lean.factor());
    assertTrue(lean.whyNot().contains("inside of the roller"), lean.whyNot());
    assertTrue(slip.allLimits().notKnown().stream().anyMatch(warning -> warning.code().equals("lean-not-counted")));
    assertThrows(InputException.class, () -> new CountedLean(new Angle(0), 1, null, ""));
  }

  @Test
  void theLeanLowersTheMarginOfFatigueByItsShareOfTheLoad() {
    InstallationPlan flat = FLAT.plan();
    double aligned = flat.limits().limits().stream()
        .filter(limit -> limit.name().equals("fatigue")).findFirst().orElseThrow().load().newton();
    LimitCheck check = flat.allLimits().checks().stream()
        .filter(limit -> limit.name().equals("fatigue")).findFirst().orElseThrow();
    assertEquals(flat.countedLean().factor(), Math.pow(check.permitted().base() / aligned, 10.0 / 3), 1e-9);
  }

  @Test
  void aLifeThatFailsByTheLeanAloneStopsTheJobAndSaysWhatOpensIt() {
    InstallationPlan flat = FLAT.plan();
    double aligned = flat.atWork().fatigueHours().hours();
    double leaning = flat.fatigueHours().hours();
    assertTrue(leaning < 0.9 * aligned, leaning + " of " + aligned);
    InstallationPlan wants = wanting(flat, (leaning + aligned) / 2);
    Stop stop = Verdict.stops(wants).stream().filter(s -> s.cause() == StopCause.LEAN_COSTS_LIFE).findFirst().orElseThrow();
    assertTrue(stop.text().contains("the lean must stay within"), stop.text());
    // The life wanted is kept at the greatest lean that the remedy finds, and by what it names.
    InstallationPlan square = FLAT.withRunOut(0).plan();
    assertTrue(square.fatigueHours().hours() > (leaning + aligned) / 2, "a square face opens it");
    assertTrue(Verdict.stops(wanting(square, (leaning + aligned) / 2)).stream()
        .noneMatch(s -> s.cause() == StopCause.LEAN_COSTS_LIFE));
    assertTrue(Verdict.stops(wanting(flat, 1.1 * aligned)).stream().anyMatch(s -> s.cause() == StopCause.SHORT_LIFE));
    assertTrue(Verdict.stops(wanting(flat, 0.9 * leaning)).stream()
        .noneMatch(s -> s.cause() == StopCause.LEAN_COSTS_LIFE || s.cause() == StopCause.SHORT_LIFE));
  }

  @Test
  void withoutLeanTheOldNumbersReturn() {
    CountedLean none = CountedLean.at(PRESS, new Angle(0));
    assertEquals(1, none.factor(), 1e-12);
    assertEquals(0, none.price().tilt().raceways().radian(), 1e-15);
  }

  private static InstallationPlan wanting(InstallationPlan plan, double life) {
    Duty d = plan.duty();
    Duty other = new Duty(d.spectrum(), hours(life), d.reliability(), d.staticSafety(), d.workingTemperature(), d.viscosity(),
        d.contamination(), d.track(), d.trackHardness(), d.trackMisalignment(), d.feed(), d.uprightAxis(), d.surroundings(),
        d.loadChange());
    return new InstallationPlan(plan.job(), plan.roller(), plan.member(), plan.nut(), other);
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import static holdfast.quantity.Units.mm2PerS;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.bearings.Cleanliness;
import holdfast.bearings.Contamination;
import holdfast.bearings.ContaminationLevel;
import holdfast.bearings.LoadRatings;
import holdfast.bearings.OuterRing;
import holdfast.rollers.RollerKind;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Dirt is entered once, or what is entered twice agrees; the other reading of the standard stands beside the first. */
class DirtReadingTest {
  private static final InstallationPlan EXAMPLE = InstallationPlan.example();

  private static StudRoller roller(boolean sealed) {
    StudRoller r = EXAMPLE.roller();
    return new StudRoller(r.name(), r.outsideDiameter(), r.ringWidth(), r.crownRadius(), r.flangeDiameter(), r.ringGap(),
        r.studDiameter(), r.studTolerance(), r.lengths(), r.thread(), r.greaseBore(), r.crossHole(), r.material(), r.seatRoughness(),
        new RollerBuild(r.build().system(), RollerKind.CAGED_NEEDLE, sealed, r.build().head(), r.build().fittingInSocket(),
            r.build().eccentricCollar(), r.build().openings()),
        r.ratings(), r.ratingsFrom(), r.limits(), r.interior(), r.endurance());
  }

  private static Duty duty(Contamination stated, Dust dust, boolean forLife) {
    Duty d = EXAMPLE.duty();
    return new Duty(d.spectrum(), d.wantedLife(), d.reliability(), d.staticSafety(), d.workingTemperature(), d.viscosity(), stated,
        d.track(), d.trackHardness(), d.trackMisalignment(), forLife ? null : d.feed(), d.uprightAxis(),
        Surroundings.clean().dirt(dust), d.loadChange());
  }

  private static ContaminationLevel allowed(boolean sealed, Dust dust, boolean forLife) {
    return new DirtReading(roller(sealed), duty(null, dust, forLife)).cleanest();
  }

  @Test
  void thePlaceAndTheSealsGiveTheLevel() {
    // ISO 281:2007, Table 13: sealed and greased for life is high cleanliness, no integral seals contaminated.
    assertEquals(ContaminationLevel.HIGH_CLEANLINESS, allowed(true, Dust.NONE, true));
    assertEquals(ContaminationLevel.NORMAL_CLEANLINESS, allowed(true, Dust.LIGHT, false));
    assertEquals(ContaminationLevel.SLIGHT_CONTAMINATION, allowed(true, Dust.SEVERE, false));
    assertEquals(ContaminationLevel.SLIGHT_CONTAMINATION, allowed(false, Dust.NONE, false));
    assertEquals(ContaminationLevel.TYPICAL_CONTAMINATION, allowed(false, Dust.LIGHT_ABRASIVE, false));
    assertEquals(ContaminationLevel.SEVERE_CONTAMINATION, allowed(false, Dust.SEVERE_ABRASIVE, false));
  }

  @Test
  void aContradictionStopsTheJob() {
    Contamination slight = Contamination.of(ContaminationLevel.SLIGHT_CONTAMINATION);
    InstallationPlan open = new InstallationPlan("job", roller(false), EXAMPLE.member(), EXAMPLE.nut(), duty(slight, Dust.SEVERE, false));
    assertTrue(open.stops().stream().anyMatch(stop -> stop.startsWith("the dirt contradicts itself: slight contamination")),
        open.stops().toString());
    InstallationPlan sealed = new InstallationPlan("job", roller(true), EXAMPLE.member(), EXAMPLE.nut(), duty(slight, Dust.SEVERE, false));
    assertFalse(sealed.stops().stream().anyMatch(stop -> stop.contains("contradicts")), sealed.stops().toString());
  }

  @Test
  void aGreaseOfAnnexAIsComparedAndAnOilCodeIsTakenAsMeasured() {
    assertTrue(contradicts(Cleanliness.GREASE_HIGH));
    assertTrue(contradicts(Cleanliness.GREASE_SLIGHT_TO_TYPICAL));
    assertFalse(contradicts(Cleanliness.GREASE_SEVERE));
    assertFalse(contradicts(Cleanliness.CIRCULATING_13_10));
  }

  private static boolean contradicts(Cleanliness stated) {
    return new DirtReading(roller(false), duty(Contamination.of(stated), Dust.SEVERE_ABRASIVE, false)).contradiction().isPresent();
  }

  @Test
  void moreDustNeverMakesTheLubricantCleaner() {
    for (boolean sealed : new boolean[] {true, false}) {
      for (boolean forLife : new boolean[] {true, false}) {
        ContaminationLevel before = allowed(sealed, Dust.NONE, forLife);
        for (Dust dust : List.of(Dust.LIGHT, Dust.LIGHT_ABRASIVE, Dust.SEVERE_ABRASIVE)) {
          ContaminationLevel now = allowed(sealed, dust, forLife);
          assertTrue(now.compareTo(before) >= 0, dust + " after " + before);
          before = now;
        }
        assertTrue(allowed(true, Dust.SEVERE, forLife).compareTo(allowed(false, Dust.SEVERE, forLife)) <= 0);
      }
    }
  }

  @Test
  void whatIsNotStatedFollowsFromThePlace() {
    InstallationPlan derived =
        new InstallationPlan("job", roller(false), EXAMPLE.member(), EXAMPLE.nut(), duty(null, Dust.SEVERE, false));
    InstallationPlan stated = new InstallationPlan("job", roller(false), EXAMPLE.member(), EXAMPLE.nut(),
        duty(Contamination.of(ContaminationLevel.TYPICAL_CONTAMINATION), Dust.SEVERE, false));
    assertEquals(stated.replaceAfter(), derived.replaceAfter());
    assertTrue(derived.sheet().text().contains("as dust and seals"), derived.sheet().text());
    assertTrue(derived.stops().stream().noneMatch(stop -> stop.contains("contradicts")));
    assertEquals(java.util.Optional.empty(),
        Duty.of(EXAMPLE.duty().load(), EXAMPLE.duty().speed()).life(EXAMPLE.duty().wantedLife(), EXAMPLE.duty().reliability())
            .staticSafety(2).at(EXAMPLE.duty().workingTemperature()).lubricant(mm2PerS(150)).track(EXAMPLE.duty().track(), 45)
            .lubricatedForLife().build().statedContamination());
  }

  @Test
  void theOtherReadingStandsOnTheSheet() {
    String text = EXAMPLE.sheet().text().replaceAll("\\s+", " ");
    assertTrue(text.contains("slight contamination (Table 13, careful end of its range)"), text);
    assertTrue(text.contains("The same by the other reading of dirt grease"), text);
    assertTrue(text.contains("(Figure A.12)"), text);
  }

  @Test
  void ratingsOfARigidRingAreSaidToBeSoAndCarryARange() {
    assertTrue(EXAMPLE.atWork().hoursOfBendingRing().isEmpty(), "its ratings count the bending");
    YokePlan yoke = ExampleJobs.yokeInFork();
    double full = yoke.atWork().fatigueHours().hours();
    double least = yoke.atWork().hoursOfBendingRing().orElseThrow().get(0).hours();
    double greatest = yoke.atWork().hoursOfBendingRing().orElseThrow().get(1).hours();
    // The basic life alone falls with the power 10/3 of the rating; lubrication at the higher load takes more.
    assertTrue(least <= Math.pow(0.672, 10.0 / 3) * full && least > 0.1 * full, least + " of " + full);
    assertTrue(greatest <= Math.pow(0.873, 10.0 / 3) * full && greatest > 0.5 * full, greatest + " of " + full);
    assertTrue(yoke.sheet().text().contains("The ratings are for a rigid ring"), yoke.sheet().text());
  }

  @Test
  void aLifeThatWearEndsFirstIsCutAndSaidToBe() {
    StudRoller strong = EXAMPLE.roller();
    StudRoller r = new StudRoller(strong.name(), strong.outsideDiameter(), strong.ringWidth(), strong.crownRadius(),
        strong.flangeDiameter(), strong.ringGap(), strong.studDiameter(), strong.studTolerance(), strong.lengths(), strong.thread(),
        strong.greaseBore(), strong.crossHole(), strong.material(), strong.seatRoughness(), strong.build(),
        LoadRatings.trackRoller(strong.ratings().dynamic().times(5), strong.ratings().staticRating().times(5), OuterRing.DEFLECTING),
        strong.ratingsFrom(), strong.limits(), null, null);
    InstallationPlan plan = new InstallationPlan("job", r, EXAMPLE.member(), EXAMPLE.nut(), EXAMPLE.duty());
    assertTrue(plan.atWork().fatigueHours().hours() > 100_000);
    assertEquals(RollerAtWork.LONGEST, plan.replaceAfter());
    assertTrue(plan.sheet().text().replaceAll("\\s+", " ").contains("wear, corrosion, grease or seals end the roller before"));
    assertFalse(EXAMPLE.sheet().text().contains("fatigue alone would allow"));
  }
}

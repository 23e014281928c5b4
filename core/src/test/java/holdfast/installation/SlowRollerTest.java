// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.bearings.Reliability;
import holdfast.quantity.InputException;
import holdfast.seats.Ductility;
import holdfast.seats.Material;
import holdfast.seats.MaterialGroup;
import holdfast.sheet.Block;
import holdfast.tables.SourceRef;
import org.junit.jupiter.api.Test;

/** At 5 rpm the viscosity ratio is below 0.1, where ISO 281 has no factor: everything else is still printed. */
class SlowRollerTest {
  private static final InstallationPlan PRESS = InstallationPlan.example();

  private static InstallationPlan slow(double kilonewton, double wanted) {
    Duty duty = Duty.of(kN(kilonewton), rpm(5)).life(hours(wanted), Reliability.ofPercent(90)).staticSafety(1.5).at(degC(60))
        .lubricant(mm2PerS(40), PRESS.duty().contamination()).track(PRESS.duty().track(), 45)
        .greaseThrough(holdfast.lubrication.Port.HEAD).build();
    return new InstallationPlan("slow (invented)", PRESS.roller(), PRESS.member(), PRESS.nut(), duty);
  }

  @Test
  void aSlowRollerGetsASheetWithAllThatCanBeComputed() {
    InstallationPlan plan = slow(2.1, 20000);
    assertTrue(plan.lubrication().kappa() < 0.1);
    assertEquals(java.util.Optional.empty(), plan.atWork().knownModifiedLife());
    String text = plan.sheet().text();
    for (String kept : new String[] {"Torque window", "Port, head end", "Fit", "Basic rating life", "Limit: track"}) {
      assertTrue(text.contains(kept), kept + " is missing in " + text);
    }
    String notes = SheetSectionsTest.notices(SheetSectionsTest.section(plan, "Expected life and replacement"), Block.Weight.NOTE);
    assertTrue(notes.startsWith("No modified life: ") && notes.contains("Wear ends such a roller"), notes);
    assertTrue(plan.stops().isEmpty(), plan.stops()::toString);
    PlanSummary summary = plan.summary();
    assertTrue(summary.warnings().stream().anyMatch(warning -> warning.startsWith("no modified life: ")));
    assertFalse(summary.values().stream().anyMatch(value -> value.id().equals("life.replace-after")));
  }

  /** (14.2/2.1)^(10/3) million revolutions at 5 rpm are 1.95 million hours. */
  @Test
  void withoutAModifiedLifeTheBasicOneMustReachTheHoursWanted() {
    assertTrue(slow(2.1, 1_900_000).stops().isEmpty());
    assertTrue(slow(2.1, 2_000_000).stops().stream().anyMatch(stop -> stop.startsWith("the basic life with 90 %")));
  }

  @Test
  void whatCannotBeJoinedIsRefusedAtTheDoor() {
    assertThrows(InputException.class, () -> PRESS.withBore("zz9"));
    StudRoller r = PRESS.roller();
    Material soft = Material.named("invented steel", SourceRef.commonPractice("invented"))
        .kind(MaterialGroup.STEEL, Ductility.DUCTILE).elastic(r.material().elasticModulus(), 0.3)
        .expansion(r.material().thermalExpansion()).build();
    assertThrows(InputException.class, () -> with(r, r.greaseBore(), soft), "no yield strength: no torque can be judged");
    assertThrows(InputException.class, () -> with(r, mm(16.5), r.material()), "the bore is wider than the root of the thread");
  }

  private static InstallationPlan with(StudRoller r, holdfast.quantity.Length greaseBore, Material material) {
    StudRoller changed = new StudRoller(r.name(), r.outsideDiameter(), r.ringWidth(), r.crownRadius(), r.flangeDiameter(),
        r.ringGap(), r.studDiameter(), r.studTolerance(), r.lengths(), r.thread(), greaseBore, r.crossHole(), material, r.seatRoughness(),
        r.build(), r.ratings(), r.ratingsFrom(), r.limits(), r.interior(), r.knownEndurance().orElse(null));
    return new InstallationPlan("job", changed, PRESS.member(), PRESS.nut(), PRESS.duty());
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import static holdfast.quantity.Units.MPa;
import static holdfast.quantity.Units.Nm;
import static holdfast.quantity.Units.inLbf;
import static holdfast.quantity.Units.inch;
import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.mmPerS;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import holdfast.seats.StudDuty;
import holdfast.seats.StudMaterial;
import java.util.List;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

/** Fatigue of the stud and locking of its nut, inside a plan. */
class StudAtWorkTest {
  private final InstallationPlan example = InstallationPlan.example();

  private InstallationPlan with(StudEndurance endurance, StudDuty change) {
    StudRoller r = example.roller();
    StudRoller roller =
        new StudRoller(r.name(), r.outsideDiameter(), r.ringWidth(), r.crownRadius(), r.flangeDiameter(), r.ringGap(),
            r.studDiameter(), r.studTolerance(), r.lengths(), r.thread(), r.greaseBore(), r.crossHole(), r.material(), r.seatRoughness(), r.build(),
            r.ratings(), r.ratingsFrom(), r.limits(), r.interior(), endurance);
    Duty d = example.duty();
    Duty duty =
        new Duty(d.spectrum(), d.wantedLife(), d.reliability(), d.staticSafety(), d.workingTemperature(), d.viscosity(),
            d.contamination(), d.track(), d.trackHardness(), d.trackMisalignment(), d.feed(), d.uprightAxis(),
            d.surroundings(), change);
    return new InstallationPlan("test (invented)", roller, example.member(), example.nut(), duty);
  }

  private static LimitCheck limit(InstallationPlan plan, String name) {
    return plan.allLimits().checks().stream().filter(check -> check.name().equals(name)).findFirst().orElseThrow();
  }

  @Test
  void fatigueIsRatedOrSaidNotToBe() {
    for (StudDuty change : List.of(StudDuty.REPEATED, StudDuty.REVERSED)) {
      PlanLimits limits = with(null, change).allLimits();
      assertTrue(limits.checks().stream().noneMatch(check -> check.name().contains("catalogue")), "784 MPa can never govern");
      assertTrue(limits.warnings().stream().anyMatch(w -> w.code().equals("catalogue-stud-stress")));
      assertTrue(limits.warnings().stream().anyMatch(w -> w.code().equals("stud-fatigue-not-rated")));
    }
    assertTrue(with(null, null).allLimits().warnings().stream().anyMatch(w -> w.code().equals("load-change-not-stated")));
  }

  @Test
  void aWeakStudStopsTheWork() {
    StudMaterial weak = new StudMaterial(MPa(60), MPa(700), MPa(400));
    InstallationPlan plan = with(new StudEndurance(weak, 3), StudDuty.REVERSED);
    // By hand: margin 1/(σA/σe + σm/Rm), with Kf on the amplitude preload and what the faces force as the mean.
    double amplitude = 3 * plan.stud().bending().megapascal();
    double haigh = 1 / (amplitude / 60 + plan.stud().resting().megapascal() / 700);
    assertEquals(haigh, limit(plan, "stud, fatigue (Goodman)").margin().orElseThrow(), 1e-9);
    assertTrue(plan.stops().stream().anyMatch(stop -> stop.contains("fatigue (Goodman)")), plan.stops().toString());
    StudMaterial strong = new StudMaterial(MPa(600), MPa(1400), MPa(1100));
    assertEquals(List.of(), with(new StudEndurance(strong, 2), StudDuty.REPEATED).stops());
    InstallationPlan resting = with(new StudEndurance(weak, 3), StudDuty.STATIC);
    assertFalse(resting.allLimits().checks().stream().anyMatch(check -> check.name().contains("Goodman")));
    assertThrows(InputException.class, () -> new StudEndurance(strong, 0.9));
  }

  @Test
  void aSelfLockingNutTakesItsTorqueFirst() {
    Nut.Builder plain = Nut.onFace(mm(24.8), mm(19)).friction(ThreadCondition.OILED, 0.10, 0.16).wrench(Nm(75), 0.04).reserve(1.5);
    Nut.Builder locking =
        Nut.onFace(mm(24.8), mm(19)).friction(ThreadCondition.OILED, 0.10, 0.16).wrench(Nm(83), 0.0).reserve(1.5).selfLocking(Nm(8));
    InstallationPlan free = new InstallationPlan("a", example.roller(), example.member(), plain.build(), example.duty());
    InstallationPlan held = new InstallationPlan("b", example.roller(), example.member(), locking.build(), example.duty());
    // 83 N·m less 8 N·m pull as 75 N·m do.
    assertEquals(free.tightening().preload(Nm(75)).leastPreload().newton(), held.loosest().leastPreload().newton(), 1e-6);
    assertEquals(free.torqueWindow().lowest().newtonMillimetre() + 8000, held.torqueWindow().lowest().newtonMillimetre(),
        0.05 * free.torqueWindow().lowest().newtonMillimetre());
    assertTrue(held.sheet().text().contains("prevailing torque 8 N·m"), held.sheet().text());
  }

  @Test
  void nutsThatCannotBeAreRefused() {
    Nut.Builder nut = Nut.onFace(mm(24.8), mm(19)).friction(ThreadCondition.OILED, 0.10, 0.16).wrench(Nm(20), 0.04).reserve(1.5);
    assertThrows(InputException.class, () -> nut.selfLocking(Nm(0)).build());
    InputException all = assertThrows(InputException.class, () -> nut.selfLocking(Nm(20)).build());
    assertTrue(all.getMessage().contains("pulls nothing"), all.getMessage());
    assertThrows(InputException.class, () -> nut.locking(NutLocking.SELF_LOCKING).build());
    assertThrows(InputException.class,
        () -> new Nut(mm(24.8), mm(19), 0.1, 0.16, Nm(75), 0.04, 1.5, null, null, NutLocking.LOCK_WASHER, ThreadCondition.OILED, null, Nm(3)));
  }

  @Test
  void vibrationAsksForALockAndAWornNutIsNamed() {
    InstallationPlan inch = ExampleJobs.inchSlipFit();
    assertTrue(inch.sheet().text().contains("a lock washer"));
    Supplier<Nut.Builder> nut = () ->
        Nut.onFace(inch("0.876"), inch("0.656")).friction(ThreadCondition.OILED, 0.10, 0.16).wrench(inLbf(380), 0.04).reserve(1.2);
    assertTrue(nut(inch, nut.get().build()).sheet().text().replaceAll("\\s+", " ").contains("the place vibrates"));
    assertEquals(6, inch.duty().surroundings().vibration().value() * 10, 1e-9);
    assertEquals(Surroundings.clean().vibration(mmPerS(6)).vibration(), inch.duty().surroundings().vibration());
    String worn = nut(inch, nut.get().selfLocking(inLbf(1)).build()).sheet().text().replaceAll("\\s+", " ");
    assertTrue(worn.contains("it is worn, take a new one"), worn);
    assertTrue(nut(inch, nut.get().locking(NutLocking.THREAD_LOCKER).build()).sheet().text().contains("thread locker"));
  }

  private static InstallationPlan nut(InstallationPlan plan, Nut nut) {
    return new InstallationPlan(plan.job(), plan.roller(), plan.member(), nut, plan.duty());
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import static holdfast.installation.SheetSectionsTest.entry;
import static holdfast.installation.SheetSectionsTest.notices;
import static holdfast.installation.SheetSectionsTest.section;
import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.sheet.Block;
import org.junit.jupiter.api.Test;

/** The nut must clamp before it runs out of thread and end before the stud does: 36.5 mm of stud, 17.5 mm of it plain, pitch 1.5. */
class GripTest {
  private static final InstallationPlan PRESS = InstallationPlan.example();

  private static InstallationPlan plan(double thickness, double nut, double washer) {
    MachineMember.Builder member = MachineMember.named("lever").body(PRESS.member().body()).bore("S6", mm(12))
        .pressingFriction(PRESS.member().pressingFriction()).thickness(mm(thickness));
    Nut.Builder made = Nut.onFace(mm(24.8), mm(19)).friction(ThreadCondition.GREASED, 0.1, 0.16).wrench(Nm(75), 0.04)
        .reserve(1.5).stack(mm(nut), mm(washer));
    return new InstallationPlan(PRESS.job(), PRESS.roller(), member.build(), made.build(), PRESS.duty());
  }

  private static boolean stops(InstallationPlan plan, String reason) {
    return plan.stops().stream().anyMatch(stop -> stop.contains(reason));
  }

  private static String warned(InstallationPlan plan) {
    return notices(section(plan, "Tighten"), Block.Weight.NOTE);
  }

  @Test
  void aNutThatReachesTheShankBeforeItClampsStops() {
    assertTrue(stops(plan(14.5, 9, 3), "the nut runs onto the plain shank before it clamps"));
    assertFalse(stops(plan(14.6, 9, 3), "the nut runs onto the plain shank"));
    assertTrue(stops(plan(17.5, 9, 0), "the nut runs onto the plain shank"), "at 17.5 mm nothing is clamped");
  }

  @Test
  void aStudThatEndsInsideItsNutStops() {
    assertTrue(stops(plan(24.6, 9, 3), "the stud ends inside the nut"), "24.6 + 3 + 9 = 36.6");
    assertFalse(stops(plan(24.5, 9, 3), "the stud ends inside the nut"));
  }

  /** Normal run-out 2.5 P: full thread from 17.5 + 3.75 = 21.25 mm; two pitches are 3 mm. */
  @Test
  void runOutAndThreadThatShowsAreWatched() {
    assertTrue(warned(plan(18.2, 9, 3)).contains("may reach the run-out of the thread, which ends up to 21.25 mm"));
    assertFalse(warned(plan(18.25, 9, 3)).contains("run-out"));
    assertTrue(warned(plan(21.6, 9, 3)).contains("Only 2.9 mm of thread shows"));
    assertFalse(warned(plan(21.5, 9, 3)).contains("of thread shows behind"));
    assertEquals("member 20 mm, washer 3 mm, nut 9 mm; stud 36.5 mm of which plain 17.5 mm; 4.5 mm of thread shows",
        entry(section(plan(20, 9, 3), "Tighten"), "Grip"));
  }

  @Test
  void aSeatLongerThanThePlainShankIsRefusedAtTheDoor() {
    MachineMember deep = MachineMember.named("lever").body(PRESS.member().body()).bore("S6", mm(18))
        .pressingFriction(PRESS.member().pressingFriction()).build();
    InputException e = assertThrows(InputException.class,
        () -> new InstallationPlan(PRESS.job(), PRESS.roller(), deep, PRESS.nut(), PRESS.duty()));
    assertEquals("seat length", e.parameter());
    Length thin = mm(11);
    assertThrows(InputException.class, () -> MachineMember.named("lever").body(PRESS.member().body()).bore("S6", mm(12))
        .pressingFriction(PRESS.member().pressingFriction()).thickness(thin).build());
    assertThrows(InputException.class, () -> new StudLengths(mm(36.5), mm(36.5)));
    assertThrows(InputException.class, () -> new NutStack(mm(0), mm(3)));
  }

  @Test
  void aGripThatIsNotStatedIsTriedByHand() {
    MachineMember open = MachineMember.named("lever").body(PRESS.member().body()).bore("S6", mm(12))
        .pressingFriction(PRESS.member().pressingFriction()).build();
    assertTrue(warned(new InstallationPlan(PRESS.job(), PRESS.roller(), open, PRESS.nut(), PRESS.duty()))
        .contains("The grip is not looked at"));
  }

  @Test
  void theBundledJobsClampAndShowThread() {
    assertTrue(PRESS.stops().isEmpty(), PRESS.stops()::toString);
    assertFalse(warned(PRESS).contains("run-out") || warned(PRESS).contains("shows behind"), warned(PRESS));
    assertFalse(warned(ExampleJobs.inchSlipFit()).contains("The grip is not looked at"));
  }

  /** A dry value on oiled threads overloads the bolt (Army TM 5-3895-367-14&P): the sheet says which it is. */
  @Test
  void theConditionOfTheThreadStandsBesideTheTorque() {
    assertEquals("greased on thread and face; friction 0.1 … 0.16",
        entry(section(plan(20, 9, 3), "Tighten"), "Thread and face while tightening"));
    InputException e = assertThrows(InputException.class,
        () -> Nut.onFace(mm(24.8), mm(19)).wrench(Nm(75), 0.04).reserve(1.5).build());
    assertTrue(e.getMessage().contains("without friction"), e.getMessage());
  }

  /** A longer stud gives more: what settles takes less of the preload. */
  @Test
  void aLongerGripLosesLessBySettling() {
    assertTrue(plan(22, 9, 3).torqueWindow().lowest().compareTo(plan(16, 9, 3).torqueWindow().lowest()) < 0);
  }
}

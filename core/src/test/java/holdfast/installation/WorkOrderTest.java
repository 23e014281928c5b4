// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import static holdfast.installation.SheetSectionsTest.blanks;
import static holdfast.installation.SheetSectionsTest.entry;
import static holdfast.installation.SheetSectionsTest.labels;
import static holdfast.installation.SheetSectionsTest.notices;
import static holdfast.installation.SheetSectionsTest.section;
import static holdfast.installation.SheetSectionsTest.signals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.sheet.Block;
import holdfast.sheet.Section;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A fitter reads the sheet from the top and does what it says: everything stands where it is done, and nothing hurts. */
class WorkOrderTest {
  private final InstallationPlan press = InstallationPlan.example();
  private final InstallationPlan slip = ExampleJobs.inchSlipFit();
  private final YokePlan yoke = ExampleJobs.yokeInFork();
  private final InstallationPlan impossible = ExampleJobs.impossible();

  private static List<String> titles(MountingPlan plan) {
    return plan.sheet().sections().stream().map(Section::title).toList();
  }

  private static String cautions(MountingPlan plan, String title) {
    return signals(section(plan, title));
  }

  private static void says(String text, String... parts) {
    for (String part : parts) {
      assertTrue(text.contains(part), part + " is missing in:\n" + text);
    }
  }

  /** Catalogue C: unused openings are closed by a plug or a fitting before mounting. */
  @Test
  void fittingsAndPlugsStandBeforePressing() {
    for (MountingPlan plan : List.of(press, slip)) {
      List<String> titles = titles(plan);
      int joins = Math.max(titles.indexOf("Press or heat"), titles.indexOf("Slip in"));
      assertTrue(titles.indexOf("Prepare the parts") < joins, titles.toString());
      assertTrue(labels(section(plan, "Prepare the parts")).contains("Port, head end"), titles.toString());
      assertFalse(labels(section(plan, "Lubricate")).contains("Port, head end"), titles.toString());
    }
    List<String> titles = titles(yoke);
    assertTrue(titles.indexOf("Prepare the parts") < titles.indexOf("Fit and secure the pin"), titles.toString());
    assertTrue(labels(section(yoke, "Prepare the parts")).contains("At the pin"));
    says(cautions(press, "Prepare the parts"), "A fitting in the head stands where the ram pushes");
    assertFalse(cautions(slip, "Prepare the parts").contains("ram"), "nothing presses a stud that slips in");
  }

  /** Catalogue F and trade/job: push on the central part of the head, never on flange rim or ring. */
  @Test
  void aStudIsPushedOnTheMiddleOfItsHead() {
    says(cautions(press, "Press or heat"), "Push only on the middle of the head", "never on the flange rim or the running ring");
    for (MountingPlan plan : List.of(press, slip, yoke, impossible)) {
      assertFalse(plan.sheet().toString().contains("push only on the one that has the tight fit"), plan.job());
    }
    says(cautions(yoke, "Fit and secure the pin"), "Push only on the end face of the pin");
  }

  @Test
  void nothingThatCanHurtGoesUnsaid() {
    says(cautions(press, "Isolate and protect"), "Slacken or clamp tensioned belts, chains and ropes");
    says(cautions(press, "Prepare the parts"), "Take off every burr", "purge its passages before mounting");
    says(cautions(press, "Press or heat"), "Support the member close round its bore", "feeler all round the shoulder",
        "blows only through a soft drift or sleeve on the middle of the stud's head, never on the bearing");
    says(cautions(press, "Tighten"), "More than the stated torque stretches and bends the drilled stud");
    says(cautions(press, "Lubricate"), "Stop if the back pressure rises", "Lubricate the track");
    says(cautions(press, "Run in"), "tools removed, guards back", "each lock taken off by the person who fitted it");
    says(cautions(yoke, "Run in"), "each lock taken off by the person who fitted it");
  }

  @Test
  void aSheetThatIsNotReleasedLeavesNothingToSignAndNothingToSet() {
    for (Section part : impossible.sheet().sections()) {
      assertEquals(part.title().equals("Not released") ? 1 : 0, blanks(part).size(), part.title());
    }
    assertFalse(labels(section(impossible, "Tighten")).contains("Wrench setting"));
    assertTrue(SheetSectionsTest.pictures(section(impossible, "Tighten")).isEmpty());
    assertTrue(labels(section(press, "Tighten")).contains("Wrench setting"));
  }

  @Test
  void aNutThatOnlyItsPreloadHoldsDrawsANoteAtEveryTrackRoller() {
    assertEquals(NutLocking.NONE, press.nut().locking());
    assertFalse(press.duty().surroundings().shaken());
    says(notices(section(press, "Tighten"), Block.Weight.NOTE), "nothing but the preload locks the nut");
  }

  @Test
  void whereTheSeatHoldsTheStudNothingIsHeldAtTheHead() {
    Section price = section(press, "What the seat costs");
    for (String label : labels(price)) {
      assertFalse(entry(price, label).contains("hold 0 "), entry(price, label));
    }
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import static holdfast.installation.SheetSectionsTest.blanks;
import static holdfast.installation.SheetSectionsTest.entry;
import static holdfast.installation.SheetSectionsTest.hint;
import static holdfast.installation.SheetSectionsTest.labels;
import static holdfast.installation.SheetSectionsTest.notices;
import static holdfast.installation.SheetSectionsTest.pictures;
import static holdfast.installation.SheetSectionsTest.section;
import static holdfast.installation.SheetSectionsTest.signals;
import static holdfast.installation.YokePlanTest.anyDuty;
import static holdfast.installation.YokePlanTest.anyRoller;
import static holdfast.installation.YokePlanTest.duty;
import static holdfast.installation.YokePlanTest.fork;
import static holdfast.installation.YokePlanTest.pin;
import static holdfast.installation.YokePlanTest.plan;
import static holdfast.installation.YokePlanTest.roller;
import static holdfast.quantity.Units.kN;
import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.mm2PerS;
import static holdfast.quantity.Units.rpm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.bearings.ContaminationLevel;
import holdfast.bearings.LoadRatings;
import holdfast.bearings.OuterRing;
import holdfast.lubrication.Port;
import holdfast.quantity.Units;
import holdfast.rollers.RollerKind;
import holdfast.seats.Material;
import holdfast.sheet.Block;
import holdfast.sheet.Section;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What the sheet of a yoke roller holds: entries that must and entries that must not appear. */
class YokeSheetTest {
  private static final String PARTS = "Parts and drawing limits";
  private static final String FIT = "Fit and secure the pin";
  private static final YokePlan EXAMPLE = ExampleJobs.yokeInFork();
  private static final YokePlan SLIDING = plan(roller(), pin(), fork().bore("H7"), duty());
  private static final YokePlan PRESSED = plan(roller(), pin(), fork().bore("R7").ringClamped(), duty());
  private static final YokePlan BARE =
      plan(anyRoller().ring(mm(52), mm(24), mm(500)).withoutInnerRing(mm(20), "F6", mm(20)).inside(RollerKind.CAGED_NEEDLE, true),
          pin().drilled(mm(4), mm(3), true).hardness(61), fork(), duty());

  private static List<String> titles(MountingPlan plan) {
    return plan.sheet().sections().stream().map(Section::title).toList();
  }

  private static List<String> entries(Section section, String label) {
    return section.blocks().stream()
        .filter(block -> block instanceof Block.Entry entry && entry.label().equals(label))
        .map(block -> ((Block.Entry) block).value())
        .toList();
  }

  @Test
  void sectionsStandInTheOrderOfTheWork() {
    assertEquals(
        List.of("Verdict", "Isolate and protect", PARTS, "Check before joining", "Prepare the parts", FIT, "Lubricate",
            "Run in", "Expected life and replacement", "Limits and margins", "What the seat costs", "Watch for", "Sign-off"),
        titles(EXAMPLE));
    List<String> stopped = titles(SLIDING);
    assertEquals("Do not install", stopped.get(0));
    assertEquals("Not released", stopped.get(stopped.size() - 1));
    assertFalse(stopped.contains("Run in") || stopped.contains("Sign-off"), stopped.toString());
    assertEquals(String.join("\n", SLIDING.stops()), notices(section(SLIDING, "Do not install"), Block.Weight.STOP));
  }

  @Test
  void partsAreThoseOfTheYoke() {
    Section parts = section(EXAMPLE, PARTS);
    assertEquals("yoke roller 52 x 24 (invented), D 52 mm, ring width 24 mm, flat; full complement of needle rollers, sealed",
        entry(parts, "Roller"));
    assertEquals("20 mm, grease bore 4 mm from one end, cross hole 3 mm, " + Material.of("16MnCr5") + ", surface 60.0 HRC",
        entry(parts, "Pin"));
    assertTrue(entry(parts, "Fork").startsWith("tension fork, "));
    assertTrue(entry(parts, "Fork").endsWith(", ears 12 mm thick, gap 26 mm"));
    // ISO 286-2: N7 -7/-28 and h6 0/-13 over 18 mm up to 24 mm.
    assertEquals("19.972 mm … 19.993 mm  (-7 µm / -28 µm)", entry(parts, "Ears N7, go … no-go"));
    assertEquals("19.987 mm … 20.000 mm  (0 µm / -13 µm)", entry(parts, "Pin h6"));
    assertEquals("19.990 mm … 20.000 mm  (0 µm / -10 µm)", entry(parts, "Roller bore 0/-0.010 mm"));
    assertEquals("20 mm N7/h6: transition fit, 28 µm interference … 6 µm clearance", entry(parts, "Fit of the pin in the ears"));
    assertTrue(entry(parts, "Fit of the roller on the pin").endsWith(": transition fit, 10 µm interference … 13 µm clearance"));
    assertFalse(labels(parts).contains("Pin as a raceway"));
    assertEquals(2, pictures(parts).size());
    assertTrue(notices(parts, Block.Weight.NOTE).contains("estimated"));
  }

  @Test
  void aRollerWithoutInnerRingMakesThePinARaceway() {
    Section parts = section(BARE, PARTS);
    assertEquals("test roller, D 52 mm, ring width 24 mm, crowned; caged needle rollers, sealed, without inner ring",
        entry(parts, "Roller"));
    // ISO 286-2: F6 +33/+20.
    assertEquals("20.020 mm … 20.033 mm  (+33 µm / +20 µm)", entry(parts, "Inscribed circle F6"));
    assertEquals("20 mm F6/h6: clearance fit, 20 µm … 46 µm clearance", entry(parts, "Radial internal clearance"));
    assertTrue(entry(parts, "Pin as a raceway").startsWith("58 to 64 HRC"));
    assertTrue(entry(parts, "Pin").startsWith("20 mm, grease bore 4 mm right through, cross hole 3 mm, "));
    assertFalse(labels(parts).contains("Fit of the roller on the pin"));
    // 58 HRC are enough, anything less is not.
    YokeRollerBuilder bare = anyRoller().withoutInnerRing(mm(20), "F6", mm(20));
    assertEquals(List.of(), plan(bare, pin().hardness(58), fork(), duty()).stops());
    assertEquals(1, plan(bare, pin().hardness(57.9), fork(), duty()).stops().size());
  }

  @Test
  void aPinIsDescribedAsItIsDrilled() {
    Section solid = section(plan(roller(), pin().drilled(mm(0), mm(0), false), fork(), anyDuty().lubricatedForLife()), PARTS);
    assertEquals("20 mm, solid, " + Material.of("16MnCr5"), entry(solid, "Pin"));
    Section along = section(plan(roller(), pin().drilled(mm(4), mm(0), false), fork(), duty()), PARTS);
    assertEquals("20 mm, grease bore 4 mm from one end, " + Material.of("16MnCr5"), entry(along, "Pin"));
  }

  @Test
  void checksAskForEarsPinBoreAndGap() {
    Section check = section(EXAMPLE, "Check before joining");
    assertEquals("accept 19.972 mm … 19.993 mm", hint(check, "Bores of both ears, least and greatest"));
    assertEquals("accept 19.987 mm … 20.000 mm", hint(check, "Pin, least and greatest"));
    assertEquals("at least 25 mm", hint(check, "Gap between the ears"));
  }

  @Test
  void aPinIsPressedOrPushedIn() {
    Section press = section(PRESSED, FIT);
    assertTrue(labels(press).containsAll(List.of("Joint pressure in each ear", "Press force, in the first ear alone",
        "Press force at the end of the stroke", "Stress by the tightest pair", "Heating the fork for a cold pin", "At work, 45 °C")));
    assertTrue(signals(press).contains("put a spacer into the gap"));
    assertFalse(signals(press).contains("push the pin in by hand"));
    assertTrue(entry(press, "Side of the roller").contains("is clamped"));
    assertEquals(List.of("H2  Released for pressing by", "Greatest press force seen", "Roller turns freely between the ears",
        "H3  Pin secured by"), blanks(press));
    Section slide = section(SLIDING, FIT);
    assertEquals(
        List.of("Press force at the end of the stroke", "Side of the roller", "The pin is secured by"), labels(slide));
    assertTrue(entry(slide, "Press force at the end of the stroke").startsWith("the inner ring: 0 kN … "));
    assertTrue(entry(slide, "Side of the roller").startsWith("guide the ring by end plates"));
    assertTrue(signals(slide).contains("press the pin through the ring"));
    assertEquals("end plates, clamped", entry(slide, "The pin is secured by"));
    assertEquals(List.of(), blanks(slide), "not released");
    assertEquals(List.of("Roller turns freely between the ears", "H3  Pin secured by"), blanks(PinSection.of(SLIDING)));
  }

  @Test
  void onlyRingsAndThePressFitLetALoosePinTurn() {
    assertEquals(List.of(PinSecuring.RETAINING_RINGS, PinSecuring.PRESS_FIT),
        java.util.Arrays.stream(PinSecuring.values()).filter(means -> !means.againstTurning()).toList());
    YokePlan rings = plan(roller(), pin().securedBy(PinSecuring.RETAINING_RINGS), fork().bore("R7"), duty());
    assertEquals("retaining rings outside the ears", entry(section(rings, FIT), "The pin is secured by"), "a tight pin stays");
  }

  @Test
  void everyOpeningOfThePinIsFedOrClosed() {
    Section grease = section(EXAMPLE, "Lubricate");
    Section prepare = section(EXAMPLE, "Prepare the parts");
    List<String> lines = entries(prepare, "At the pin");
    assertEquals(2, lines.size(), "the accessible end and the cross hole; nothing else is open");
    assertEquals("accessible end of the pin: FEED by grease fitting", lines.get(0));
    assertTrue(lines.get(1).startsWith("cross hole of the pin: "));
    assertEquals(List.of(), entries(prepare, "Ways in"));
    // 0.002 · 52 · 24 g = 2.496 g.
    assertTrue(entry(grease, "At each greasing").startsWith("2.496 g") || entry(grease, "At each greasing").startsWith("2.5 g"),
        entry(grease, "At each greasing"));
    YokePlan ear = plan(roller(), pin().drilled(mm(4), mm(3), true), fork().feedHole(), duty().greaseThrough(Port.RADIAL));
    lines = entries(section(ear, "Prepare the parts"), "At the pin");
    assertEquals(List.of("accessible end of the pin: closed by plug", "other end of the pin: closed by plug",
        "feed hole in the ear: FEED by grease fitting"), lines.subList(0, 3));
    YokePlan solid = plan(roller(), pin().drilled(mm(0), mm(0), false), fork(), duty());
    assertTrue(entry(section(solid, "Prepare the parts"), "Ways in").startsWith("the pin is solid"));
    assertEquals(List.of(), entries(section(solid, "Prepare the parts"), "At the pin"));
  }

  @Test
  void aRollerForLifeIsNotGreased() {
    Section life = section(plan(roller(), pin(), fork(), anyDuty().lubricatedForLife()), "Lubricate");
    assertEquals(List.of("Viscosity at work", "Kind of grease", "Grease"), labels(life));
    assertTrue(entry(life, "Viscosity at work").endsWith(" (mean of seat and outside diameter)"));
    assertFalse(entry(section(EXAMPLE, "Lubricate"), "Viscosity at work").contains("mean of"), "its inside is known");
  }

  @Test
  void aSpeedBeyondTheFormulaLeavesNoInterval() {
    YokePlan fast = plan(roller(), pin(), fork(), Duty.of(kN(1), rpm(200_000)).life(Units.hours(1),
        holdfast.bearings.Reliability.ofPercent(90)).staticSafety(1).at(Units.degC(45))
        .lubricant(mm2PerS(180), ContaminationLevel.NORMAL_CLEANLINESS).track(holdfast.contact.ContactSurface.flat(), 42)
        .greaseThrough(Port.HEAD));
    PinGreasing greasing = fast.greasing().orElseThrow();
    assertTrue(greasing.knownInterval().isEmpty());
    Section grease = section(fast, "Lubricate");
    assertTrue(notices(grease, Block.Weight.NOTE).contains("No interval by the formula: " + greasing.schedule().noInterval()));
    assertEquals("every 6 months", entry(grease, "Grease again"));
    assertTrue(EXAMPLE.greasing().orElseThrow().knownInterval().isPresent());
  }

  @Test
  void firstFillAndKindOfGreaseNameTheirSources() {
    List<Block> blocks = section(EXAMPLE, "Lubricate").blocks();
    for (String label : List.of("Kind of grease", "First fill")) {
      Block found = blocks.stream().filter(block -> block instanceof Block.Entry e && e.label().equals(label)).findFirst()
          .orElseThrow();
      assertEquals(1, found.sources().size(), label);
      assertTrue(found.sources().get(0).toString().contains("atalogue"), label);
    }
  }

  @Test
  void limitsShowTheTiltOfPinAndRing() {
    // 34 µm over 50 mm, 13 µm over 25 mm.
    assertEquals("0.68 mrad of the pin in the ears, 0.52 mrad of the ring on the pin",
        entry(section(SLIDING, "Limits and margins"), "Tilt by the loosest pairs").replaceAll("(\\.\\d\\d)\\d*", "$1"));
    assertTrue(entry(section(PRESSED, "Limits and margins"), "Tilt by the loosest pairs")
        .endsWith(" of the pin in the ears, none of the ring on the pin"));
  }

  @Test
  void theSummaryOfAYokeStatesItsResults() {
    PlanSummary summary = EXAMPLE.summary();
    Map<String, Double> values =
        summary.values().stream().collect(Collectors.toMap(PlanSummary.Value::id, PlanSummary.Value::value));
    Map.of("ear.lower-limit", 19.972, "ear.upper-limit", 19.993, "roller-bore.lower-limit", 19.99, "roller-bore.upper-limit",
        20.0, "pin.lower-limit", 19.987, "pin.upper-limit", 20.0, "ear-fit.clearance.least", -28.0, "ear-fit.clearance.greatest",
        6.0, "roller-fit.clearance.least", -10.0, "roller-fit.clearance.greatest", 13.0)
        .forEach((id, value) -> assertEquals(value, values.get(id), 1e-9, id));
    // 4.5 kN halved over the hollow section of the pin, π/4 (20² - 4²) less the cross hole or not: of this order.
    assertTrue(values.get("pin.shear") > 2250 / 314.2 && values.get("pin.shear") < 5 * 2250 / 301.6, values.toString());
    // 6 µm, 25 K warmer by 11.5·10⁻⁶ /K, over 50 mm of pin, to second order with its thickness of 20 mm; the ring is clamped.
    double slope = 6 * (1 + 25 * 11.5e-6) / 50;
    assertEquals(slope + 20 * slope * slope / (2 * 50) * 1e-3, values.get("tilt.roller"), 1e-9);
    // Basic life at 90 %: (21/4.5)^(10/3) million revolutions at 90 rpm.
    assertEquals(Math.pow(21 / 4.5, 10 / 3.0) * 1e6 / (90 * 60), values.get("life.basic-l10"), 1e-6);
    assertEquals(EXAMPLE.replaceAfter().hours(), values.get("life.replace-after"), 1e-9);
    assertEquals(0.002 * 52 * 24, values.get("grease.quantity"), 1e-9);
    assertTrue(values.get("grease.interval") > 0);
    assertTrue(values.get("press-each-ear.force.greatest") > values.get("press-each-ear.force.least"));
    assertTrue(summary.warnings().stream().anyMatch(warning -> warning.contains("load ratings are estimated")));
    YokePlan stated = plan(roller().ratings(LoadRatings.trackRoller(kN(21), kN(34), OuterRing.RIGID)), pin(), fork(), duty());
    assertFalse(stated.summary().warnings().stream().anyMatch(warning -> warning.contains("ratings are estimated")));
    assertFalse(SLIDING.summary().values().stream().anyMatch(value -> value.id().startsWith("press-each-ear")));
  }
}

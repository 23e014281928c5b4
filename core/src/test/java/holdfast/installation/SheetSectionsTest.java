// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.bearings.LoadSpectrum;
import holdfast.bearings.Reliability;
import holdfast.contact.ContactSurface;
import holdfast.failures.Margin;
import holdfast.lubrication.Port;
import holdfast.rollers.RollerKind;
import holdfast.sheet.Block;
import holdfast.sheet.Section;
import holdfast.sheet.SheetUnits;
import holdfast.trace.SignalWord;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What each section of the sheet holds, and the figures in it that can be worked out by hand. */
class SheetSectionsTest {
  private final InstallationPlan press = InstallationPlan.example().withBore("S6");
  private final InstallationPlan slip = ExampleJobs.inchSlipFit();
  private final InstallationPlan impossible = ExampleJobs.impossible();

  static Section section(MountingPlan plan, String title) {
    return plan.sheet().sections().stream().filter(section -> section.title().equals(title)).findFirst().orElseThrow();
  }

  static String entry(Section section, String label) {
    return section.blocks().stream()
        .filter(block -> block instanceof Block.Entry entry && entry.label().equals(label))
        .map(block -> ((Block.Entry) block).value())
        .findFirst()
        .orElseThrow(() -> new AssertionError(label + " is missing in " + section));
  }

  static List<String> labels(Section section) {
    return section.blocks().stream().filter(Block.Entry.class::isInstance).map(block -> ((Block.Entry) block).label()).toList();
  }

  static List<String> blanks(Section section) {
    return section.blocks().stream().filter(Block.Blank.class::isInstance).map(block -> ((Block.Blank) block).label()).toList();
  }

  static String hint(Section section, String label) {
    return section.blocks().stream()
        .filter(block -> block instanceof Block.Blank blank && blank.label().equals(label))
        .map(block -> ((Block.Blank) block).hint())
        .findFirst()
        .orElseThrow();
  }

  /** The notices that carry a signal word. */
  static String signals(Section section) {
    return Stream.of(SignalWord.values()).map(word -> notices(section, Block.Weight.of(word))).filter(text -> !text.isEmpty())
        .collect(Collectors.joining("\n"));
  }

  static String notices(Section section, Block.Weight weight) {
    return String.join("\n", section.blocks().stream()
        .filter(block -> block instanceof Block.Notice notice && notice.weight() == weight)
        .map(block -> ((Block.Notice) block).text())
        .toList());
  }

  static List<Block.Picture> pictures(Section section) {
    return section.blocks().stream().filter(Block.Picture.class::isInstance).map(Block.Picture.class::cast).toList();
  }

  @Test
  void everySheetHasItsSectionsInOrder() {
    List<String> titles = press.sheet().sections().stream().map(Section::title).toList();
    assertEquals(
        List.of("Verdict", "Isolate and protect", "Parts and drawing limits", "Check before joining", "Prepare the parts",
            "Press or heat", "Tighten", "Lubricate", "Run in", "Expected life and replacement", "Limits and margins", "What the seat costs", "Watch for", "Sign-off"),
        titles);
    titles = impossible.sheet().sections().stream().map(Section::title).toList();
    assertEquals("Do not install", titles.get(0));
    assertFalse(titles.contains("Run in") || titles.contains("Sign-off"), titles.toString());
    assertEquals("Not released", titles.get(titles.size() - 1));
    // The governing limit and the picture of the margins follow the reasons.
    assertEquals(impossible.stops().size() + 2, section(impossible, "Do not install").blocks().size());
    assertEquals(List.of("What was changed, by, date; then print a new sheet"), blanks(section(impossible, "Not released")));
    assertEquals(List.of("Fitted by, date", "Checked by, date", "Deviations, concessions"), blanks(section(press, "Sign-off")));
    String isolate = signals(section(press, "Isolate and protect"));
    assertEquals(7, isolate.lines().count(), "four on isolating, two on stored energy, one on what is worn");
    assertTrue(notices(section(press, "Isolate and protect"), Block.Weight.ADVICE).contains("licensed engineer"));
  }

  @Test
  void partsAreThoseOfTheJob() {
    Section parts = section(press, "Parts and drawing limits");
    assertEquals(
        List.of("Roller", "Stud", "Load ratings, stated by the maker", "Machine member", "Bore S6, go … no-go", "Stud h7", "Fit",
            "Face, square to the bore within"),
        labels(parts));
    assertTrue(entry(parts, "Roller").startsWith("stud roller 40 x 20 (invented), D 40 mm, ring width 20 mm, crowned; "));
    assertTrue(entry(parts, "Stud").startsWith("18 mm, thread M18x1.5, grease bore 3 mm, 16MnCr5"));
    assertTrue(entry(parts, "Load ratings, stated by the maker").startsWith("C = 14.2 kN, C0 = 17.5 kN; "));
    assertTrue(entry(parts, "Machine member").startsWith("traverse lever of the layering head, "));
    assertTrue(entry(parts, "Machine member").endsWith(", seat 16 mm"));
    // ISO 286-2: S6 -25/-36 and h7 0/-18 over 10 mm up to 18 mm.
    assertEquals("17.964 mm … 17.975 mm  (-25 µm / -36 µm)", entry(parts, "Bore S6, go … no-go"));
    assertEquals("17.982 mm … 18.000 mm  (0 µm / -18 µm)", entry(parts, "Stud h7"));
    assertEquals("18 mm S6/h7: interference fit, 7 µm … 36 µm interference", entry(parts, "Fit"));
    assertEquals("12 µm over 32 mm of the flange", entry(parts, "Face, square to the bore within"));
    Section inch = section(slip, "Parts and drawing limits");
    assertTrue(entry(inch, "Roller").contains(", flat; "), entry(inch, "Roller"));
    // 0.0012 - 0.001 and 0.0020 - 0 in.
    assertTrue(entry(inch, "Fit").contains("bore +0.0020/+0.0012 in, stud +0.001/0 in: clearance fit, 0.0002 in … 0.0020 in"));
    assertTrue(entry(inch, "Fit").endsWith(" clearance"));
    // 0.5 mrad, the published budget of a face, over 32 mm.
    assertEquals("not stated; the usual budget is 16 µm over 32 mm of the flange",
        entry(section(impossible, "Parts and drawing limits"), "Face, square to the bore within"));
    // K7 +6/-12 on h7: 12 µm interference to 24 µm clearance.
    assertTrue(entry(section(press.withBore("K7"), "Parts and drawing limits"), "Fit")
        .endsWith("transition fit, 12 µm interference … 24 µm clearance"));
  }

  @Test
  void checksAskForTheLimits() {
    Section check = section(press, "Check before joining");
    assertEquals(
        List.of("Bore, least and greatest", "Stud, least and greatest", "Run-out of the face", "Temperature of the parts",
            "Gauges, calibration due", "H1  Seat accepted by"),
        blanks(check));
    assertEquals("accept 17.964 mm … 17.975 mm", hint(check, "Bore, least and greatest"));
    assertEquals("accept 17.982 mm … 18.000 mm", hint(check, "Stud, least and greatest"));
    assertEquals("at most 12 µm", hint(check, "Run-out of the face"));
    assertEquals("", hint(MeasureSection.of(impossible), "Run-out of the face"));
  }

  @Test
  void seatSectionsSuitTheFit() {
    Section hard = section(press, "Press or heat");
    assertEquals(
        List.of("Joint pressure", "Press force at the end of the stroke", "Stress by the tightest pair",
            "Heating the member for a cold stud", "At work, 60 °C", "The loosest pair lets go at"),
        labels(hard));
    assertTrue(notices(hard, Block.Weight.ADVICE).contains("grease hole of the raceway"));
    assertEquals(8, signals(hard).lines().count());
    assertEquals(List.of("H2  Released for pressing by", "Greatest press force seen"), blanks(hard));
    assertTrue(entry(hard, "Press force at the end of the stroke").endsWith(", friction 0.08 … 0.2"));
    assertTrue(entry(hard, "Stress by the tightest pair").matches(
        "stud [\\d.]+ MPa at .* \\(.*\\), yield strength .*, safety .*; member [\\d.]+ MPa at its bore .*"));
    // Interference only: nothing leans. Transition: up to the clearance of 24 µm, and 0.7 µm by 40 K.
    Section transition = section(press.withBore("K7"), "Press or heat");
    assertTrue(entry(transition, "Tilt that the loosest pair allows").matches("up to 1\\.54\\d* mrad"));
    Section loose = section(press.withBore("H7"), "Slip in");
    // A stud of 18 mm over 16 mm in 36 µm, 0.7 µm more at work: the lean of a rectangle, a little over 36.7/16 mrad.
    assertEquals(List.of("Tilt that the clearance allows"), labels(loose));
    assertTrue(entry(loose, "Tilt that the clearance allows").startsWith("up to 2.29"));
    assertTrue(signals(loose).contains("Never hammer"));
    assertTrue(notices(loose, Block.Weight.ADVICE).contains("grease hole of the raceway"));
  }

  @Test
  void tighteningIsThatOfTheNut() {
    Section tighten = section(press, "Tighten");
    assertEquals(
        List.of("Torque window", "Lower end", "Upper end", "Flange closed all round from", "Wrench setting",
            "Thread and face while tightening", "Nut locked by", "Preload, loosest … tightest",
            "Stress in the drilled stud, at most", "Hold at the head of the stud", "Grip"),
        labels(tighten));
    // 75 N·m less and more 4 %.
    assertEquals("75 N·m; it may give 72 N·m … 78 N·m", entry(tighten, "Wrench setting"));
    assertEquals("oiled on thread and face; friction 0.1 … 0.16", entry(tighten, "Thread and face while tightening"));
    // 85/1.04 = 81.73.
    assertTrue(entry(tighten, "Torque window").endsWith(" … 81.73 N·m"), entry(tighten, "Torque window"));
    assertTrue(entry(tighten, "Upper end").contains("85 N·m"));
    assertTrue(entry(tighten, "Stress in the drilled stud, at most").contains(" combined, in the thread M18x1.5, "));
    assertTrue(entry(tighten, "Stress in the drilled stud, at most").endsWith(" % of the yield strength 590 MPa"));
    assertTrue(entry(tighten, "Hold at the head of the stud").contains("(slot): up to "));
    assertEquals(List.of("H3  Torque reached, wrench number"), blanks(tighten));
    assertTrue(signals(tighten).contains("calibrated hand tool"));
    Section closed = section(impossible, "Tighten");
    assertEquals("empty", entry(closed, "Torque window"));
    assertTrue(notices(closed, Block.Weight.ADVICE).contains("To open the window: "));
    assertTrue(notices(closed, Block.Weight.NOTE).contains("no torque satisfies both ends"));
    // So tight a seat that it holds what passes through the stud.
    MachineMember rough = MachineMember.named("lever").body(press.member().body()).bore("X7", mm(17))
        .pressingFriction(holdfast.seats.FrictionBand.of(0.6, 0.7)).build();
    InstallationPlan held = new InstallationPlan("job", press.roller(), rough, press.nut(), press.duty());
    assertEquals(0, held.torqueToBeHeld().newtonMillimetre());
    assertTrue(entry(section(held, "Tighten"), "Hold at the head of the stud").matches(
        "nothing: up to .* N·m passes through the stud, and the seat holds it"));
  }

  @Test
  void greasingIsThatOfTheRoller() {
    Section grease = section(press, "Lubricate");
    assertTrue(entry(grease, "Viscosity at work").startsWith("150 mm²/s, κ = "));
    Section ports = section(press, "Prepare the parts");
    assertTrue(entry(ports, "Port, head end").startsWith("FEED by "));
    assertTrue(entry(ports, "Port, thread end").startsWith("closed by "));
    assertTrue(labels(ports).contains("At the ports"));
    // A third to a half of 0.9 g/cm³ times the ring π · 23 · 3.5 · 20 mm³ less 16 rollers of 3.5 x 12 mm: 3.21 cm³.
    assertTrue(entry(grease, "First fill").startsWith("0.96 g to 1.4 g ("), entry(grease, "First fill"));
    // Rolling bearings catalogue 17000 EN: 0.002 D B = 0.002 · 40 · 20 g.
    assertTrue(entry(grease, "At each greasing").startsWith("1.6 g, slowly"));
    assertEquals("every 30000 h at most of running or 6 months, whichever comes first", entry(grease, "Grease again"));
    assertTrue(entry(grease, "Because").contains("6 to 24 months, the short end because the place shortens it (dirt"),
        entry(grease, "Because"));
    assertTrue(notices(grease, Block.Weight.NOTE).contains("above 30000 h"), "the warnings of the interval are not dropped");
    assertTrue(notices(ports, Block.Weight.NOTE).contains("usual for the size"));
    // The inside of the inch roller is not known.
    assertTrue(notices(section(slip, "Lubricate"), Block.Weight.NOTE).contains("The maker's interval goes first"));
    assertTrue(signals(grease).contains("injection"));
    assertEquals(List.of("Grease used, grams, next date due"), blanks(grease));
    assertEquals(1, pictures(ports).size());
    String none = entry(section(impossible, "Prepare the parts"), "Ports");
    assertTrue(none.startsWith("the radial hole in the shank cannot feed it (") && none.contains("possible instead: head end"),
        none);
    assertTrue(pictures(section(impossible, "Prepare the parts")).isEmpty());
    // Full complement: a tenth.
    assertTrue(entry(section(slip, "Lubricate"), "Because").contains("× 0.1"));
    Section life = section(with(anyDuty().lubricatedForLife().build()), "Lubricate");
    assertEquals(List.of("Viscosity at work", "Kind of grease", "Grease"), labels(life));
    assertTrue(entry(life, "Grease").startsWith("none later"));
    assertEquals(List.of(), blanks(life));
  }

  private DutyBuilder duty() {
    return anyDuty().greaseThrough(Port.HEAD);
  }

  private DutyBuilder anyDuty() {
    return Duty.of(LoadSpectrum.constant(kN(2.1), rpm(180))).life(hours(20000), Reliability.ofPercent(95)).staticSafety(2)
        .at(degC(60)).lubricant(press.duty().viscosity(), press.duty().contamination()).track(ContactSurface.flat(), 45);
  }

  private InstallationPlan with(Duty duty) {
    return new InstallationPlan(press.job(), press.roller(), press.member(), press.nut(), duty);
  }

  @Test
  void anUprightAxisIsGreasedMoreOften() {
    double lying = with(duty().build()).greasing().orElseThrow().knownInterval().orElseThrow().begin().interval().hours();
    GreasePlan upright = with(duty().uprightAxis().build()).greasing().orElseThrow();
    assertEquals(lying, upright.knownInterval().orElseThrow().begin().interval().hours(), 1e-9 * lying);
    // Rolling bearings catalogue 17000 EN: halve it.
    assertEquals(0.5, upright.knownInterval().orElseThrow().factors().stream().filter(f -> f.meaning().contains("vertical")).findFirst()
        .orElseThrow().value());
    assertFalse(upright.openingsSeen());
    assertEquals(RollerKind.CAGED_NEEDLE, press.roller().build().kind());
  }

  @Test
  void livesAreThoseOfTheRatings() {
    Section life = section(press, "Expected life and replacement");
    assertEquals(
        List.of("Duty", "Lubricant at work", "Basic rating life", "Modified life, 95 % reliability",
            "The same by the other reading of dirt", "Lean counted, loosest pair", "Replace after"),
        labels(life));
    assertEquals("2.1 kN at 180 rpm, 20000 h wanted", entry(life, "Duty"));
    assertEquals("150 mm²/s, slight contamination (Table 13, careful end of its range)", entry(life, "Lubricant at work"));
    // (14.2/2.1)^(10/3) = 584.65, over 180 · 60 rpm: 54134 h.
    assertEquals("584.7 million revolutions, 54130 h (90 %, P = 2.1 kN)", entry(life, "Basic rating life"));
    assertTrue(entry(life, "Modified life, 95 % reliability").contains(" (aISO = "));
    assertTrue(entry(life, "Replace after").matches("\\d+ h, \\S+ times the life wanted"));
    assertTrue(notices(life, Block.Weight.NOTE).contains("Cu"));
    Section fleet = section(slip, "Expected life and replacement");
    assertEquals(
        List.of("Duty", "Lubricant at work", "Basic rating life", "Modified life, 90 % reliability",
            "The same by the other reading of dirt", "Replace after",
            "Places that run it", "Replace all together", "Replace each", "Due now", "Rollers at hand"),
        labels(fleet));
    assertTrue(entry(fleet, "Duty").startsWith("380 lbf at 220 rpm for 60 % of the time; 450 lbf"));
    assertEquals("40, up to 1500 h in a year", entry(fleet, "Places that run it"));
    assertTrue(entry(fleet, "Replace all together").endsWith("the chance that none of the 40 fails in between is 50 %"));
    // The rollers are 350 h, 700 h … 14000 h old; the interval of all is 4759 h at 1500 h in a year.
    assertTrue(entry(fleet, "Due now").startsWith("27 older already than the interval of all, oldest first: strander 40 (14000 h)"),
        entry(fleet, "Due now"));
    assertTrue(entry(fleet, "Due now").endsWith("strander 14 (4900 h)"), entry(fleet, "Due now"));
    assertTrue(entry(fleet, "Rollers at hand").matches("27: 27 for the places due now, .* 0 spares .*"), entry(fleet, "Rollers at hand"));
    assertTrue(entry(fleet, "Replace each").startsWith("after "));
    assertTrue(entry(fleet, "Modified life, 90 % reliability").contains(" (aISO step by step)"));
    // Each is replaced at its own life: 90 % reliability is the L10 of the modified life.
    double hours = slip.replaceAfter().hours();
    assertTrue(entry(fleet, "Replace each").contains(Math.round(hours / 100) * 100 + " h"), entry(fleet, "Replace each"));
  }

  @Test
  void limitsAreThoseOfRollerAndDuty() {
    Section limits = section(press, "Limits and margins");
    // C/2 = 7.1, C0/2 = 8.75, stated ring, stud and temperature limits, over 2.1 kN.
    assertEquals("2.1 kN, at most 7.1 kN; margin 3.38", entry(limits, "Limit: half of C"));
    assertEquals("2.1 kN, at most 8.75 kN; margin 4.17", entry(limits, "Limit: static"));
    assertEquals("2.1 kN, at most 8.4 kN; margin 4", entry(limits, "Limit: outer ring, turning"));
    assertEquals("2.1 kN, at most 13 kN; margin 6.19", entry(limits, "Limit: outer ring, standing"));
    assertEquals("2.1 kN, at most 9 kN; margin 4.29", entry(limits, "Limit: stud"));
    assertEquals("60 °C, at most 110 °C", entry(limits, "Limit: temperature, hot"));
    assertEquals("60 °C, at least -20 °C", entry(limits, "Limit: temperature, cold"));
    assertTrue(entry(limits, "Limit: stud at the mouth of the seat").contains("at most 590 MPa"));
    assertTrue(entry(limits, "Limit: least load for rolling").contains("at least "));
    assertEquals("fatigue, 1.17 times", entry(section(press, "Verdict"), "Governing limit"));
    assertTrue(entry(limits, "Tilt of the stud under load").startsWith("tilt "));
    assertTrue(entry(limits, "Largest shear in the track").matches("[\\d.]+ MPa, 0\\.\\d\\d mm deep"));
    assertTrue(notices(limits, Block.Weight.NOTE).contains("crowned ring takes more"));
    assertEquals("118 °C, at most 110 °C — EXCEEDED",
        entry(section(impossible, "Limits and margins"), "Limit: temperature, hot"));
    // A flat ring on a flat track: p0 = √(F E*/(π L R)) with E = 206 000 MPa, ν = 0.3, R = 19.05 mm, L = 22.225 mm, 520 lbf.
    String peak = entry(section(slip.withUnits(SheetUnits.METRIC), "Limits and margins"), "Pressure on the track, peak");
    double p = Math.sqrt(520 * 4.4482216152605 * (206000 / 1.82) / (Math.PI * 22.225 * 19.05));
    assertTrue(peak.contains(Math.round(p) + " MPa")
        || peak.contains(String.format("%.1f", p).replace(',', '.')),
        () -> p + " in " + peak);
  }

  @Test
  void theSeatIsPricedForEveryBore() {
    Section price = section(press, "What the seat costs");
    assertEquals(List.of("Life ratio, loosest pair", "With bore S6", "With bore H7", "With bore K7", "With bore N7", "With bore P7"),
        labels(price));
    assertTrue(entry(price, "With bore S6").startsWith("7 µm … 36 µm interference; no play to lean in, life ratio "));
    assertTrue(entry(price, "With bore H7").startsWith("0 mm … 36 µm clearance; its play lets it lean up to 2.29"));
    assertTrue(entry(price, "With bore H7").contains("; slips in; hold "));
    assertTrue(entry(price, "With bore K7").contains("; press 0 kN … "));
    assertTrue(entry(price, "With bore P7").contains(" (member, safety "));
    assertEquals(1, pictures(price).size());
    assertTrue(notices(price, Block.Weight.NOTE).contains("no print at hand"));
    // Three pairs of a loose seat differ.
    assertTrue(labels(section(press.withBore("H7"), "What the seat costs")).containsAll(
        List.of("Life ratio, loosest pair", "Life ratio, mean pair", "Life ratio, tightest pair")));
  }

  @Test
  void slimMarginsAreWatched() {
    // Fatigue 1.18 is under 1.5, and so is the stud, bent by its face in a tight fit; the pressed lever is near its yield; the
    // seat does not hold all of the torque.
    assertEquals(List.of(watched(Margin.LIFE), watched(Margin.STUD_BENDING), watched(Margin.HOOP_STRESS),
        watched(Margin.HOLDING_TORQUE)), labels(section(press, "Watch for")));
    assertTrue(labels(section(press.withBore("H7"), "Watch for")).contains(watched(Margin.SEAT_CLEARANCE)));
    assertTrue(labels(section(impossible, "Watch for")).contains(watched(Margin.TRACK_LOAD)));
    assertFalse(labels(section(impossible, "Watch for")).contains(watched(Margin.SEAT_CLEARANCE)));
    assertEquals(4, labels(section(impossible, "Watch for")).size());
  }

  private static String watched(Margin margin) {
    return "Slim " + margin + " shows as";
  }

  @Test
  void runningInSuitsTheRing() {
    assertEquals("a band in the middle", hint(section(press, "Run in"), "Ink pattern across the ring"));
    assertEquals("even over the width", hint(section(slip, "Run in"), "Ink pattern across the ring"));
    assertEquals(2, notices(section(press, "Run in"), Block.Weight.ADVICE).lines().count());
  }

  @Test
  void picturesAreToScale() {
    // -36 … 0 µm over 96 units from 26: the bore from -25 to -36, the stud from 0 to -18.
    Block.Picture zones = pictures(section(press, "Parts and drawing limits")).get(0);
    assertEquals("Tolerance zones of 18 mm S6/h7, to scale, deviations in µm", zones.title());
    double scale = 96.0 / 36;
    assertTrue(zones.svg().contains("<rect x=\"110\" y=\"" + px(26 + 25 * scale) + "\" width=\"80\" height=\"" + px(11 * scale)),
        zones.svg());
    assertTrue(zones.svg().contains("<rect x=\"250\" y=\"26\" width=\"80\" height=\"" + px(18 * scale)), zones.svg());
    assertTrue(zones.svg().contains("y1=\"26\"") && zones.svg().contains("viewBox=\"0 0 420 136\""), zones.svg());
    assertTrue(zones.svg().contains(">−25<") && zones.svg().contains(">−36<") && zones.svg().contains(">0<"), zones.svg());
    assertTrue(zones.svg().contains("<text x=\"194\" y=\"" + px(26 + 25 * scale - 2) + "\">−25<"), zones.svg());
    assertTrue(zones.svg().contains("<text x=\"334\" y=\"" + px(26 + 18 * scale + 9) + "\">−18<"), zones.svg());
    assertTrue(zones.svg().contains("<text x=\"150\" y=\"12\""), zones.svg());
    assertTrue(zones.description().startsWith("bore -25 µm / -36 µm, stud 0 µm / -18 µm from the nominal size: "));
    // 0 … 2 thou: bore 1.2 to 2, zero line at the bottom.
    Block.Picture inch = pictures(section(slip, "Parts and drawing limits")).get(0);
    assertTrue(inch.title().endsWith("deviations in thou"), inch.title());
    assertTrue(inch.svg().contains("<rect x=\"110\" y=\"26\" width=\"80\" height=\"" + px(0.8 * 48)), inch.svg());
    assertTrue(inch.svg().contains("y1=\"122\"") && inch.svg().contains(">+1.2<"), inch.svg());
  }

  @Test
  void theTorqueWindowIsDrawnFromZero() {
    Block.Picture window = pictures(section(press, "Tighten")).get(0);
    // The right end is 1.15 times the greatest of both ends and the setting: 1.15 · 85/1.04.
    double high = 85 / 1.04;
    double end = 1.15 * high;
    assertTrue(window.svg().contains("x1=\"" + px(20 + 480 * high / end) + "\""), window.svg());
    assertTrue(window.svg().contains("<path d=\"M " + px(20 + 480 * 75 / end) + " 28"), window.svg());
    assertTrue(window.svg().contains(">set 75<") && window.svg().contains(">81.73<"), window.svg());
    double low = press.torqueWindow().lowest().newtonMillimetre() / 1000;
    assertTrue(window.svg().contains("<rect x=\"" + px(20 + 480 * low / end) + "\" y=\"28\" width=\""
        + px(480 * (high - low) / end) + "\""), window.svg());
    assertTrue(window.description().startsWith("window ") && window.description().endsWith("wrench set to 75 N·m"));
    Block.Picture closed = WindowPicture.of(impossible.torqueWindow(), impossible.nut().torque(), impossible.units());
    assertTrue(closed.svg().contains("width=\"0\""), closed.svg());
    assertTrue(closed.description().startsWith("no window: at least ") && closed.description().contains(", at most "));
    assertTrue(pictures(section(slip, "Tighten")).get(0).title().endsWith("lbf·in"));
  }

  @Test
  void portsAreDrawnOpenAndClosed() {
    Block.Picture ports = pictures(section(press, "Prepare the parts")).get(0);
    assertTrue(ports.svg().contains(">FEED: grease fitting") && ports.svg().contains(">closed: plug"), ports.svg());
    assertTrue(ports.svg().contains("M 128 52"), "the head is fed: " + ports.svg());
    assertFalse(ports.svg().contains("M 390 52") || ports.svg().contains("M 263 16"), "the others are not: " + ports.svg());
    assertTrue(ports.svg().contains("<rect x=\"368\" y=\"46\"") && ports.svg().contains("<rect x=\"257\" y=\"30\""), ports.svg());
    assertTrue(ports.svg().contains("x1=\"150\" y1=\"52\""), "the bore is drawn: " + ports.svg());
    assertTrue(ports.description().contains("head end") && ports.description().contains("; "), ports.description());
  }

  private static String px(double value) {
    return java.math.BigDecimal.valueOf(Math.rint(value * 100) / 100).stripTrailingZeros().toPlainString();
  }

  @Test
  void unitsChangeTheTextOnly() {
    InstallationPlan inch = press.withUnits(SheetUnits.INCH_AND_METRIC);
    // 75 N·m over 0.1129848 N·m.
    assertTrue(entry(section(inch, "Tighten"), "Wrench setting").startsWith("663.8 lbf·in (75 N·m)"));
    assertEquals(labels(section(press, "Tighten")), labels(section(inch, "Tighten")));
    assertEquals(press.stops(), inch.stops());
  }
}

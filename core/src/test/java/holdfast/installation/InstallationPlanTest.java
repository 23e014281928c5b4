// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import static holdfast.quantity.Units.Nm;
import static holdfast.quantity.Units.degC;
import static holdfast.quantity.Units.hours;
import static holdfast.quantity.Units.kN;
import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.rpm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.bearings.LoadSpectrum;
import holdfast.bearings.Reliability;
import holdfast.lubrication.Port;
import holdfast.quantity.InputException;
import holdfast.seats.FrictionBand;
import holdfast.sheet.SheetUnits;
import holdfast.tables.TableSet;
import holdfast.trace.Cautions;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class InstallationPlanTest {
  private final InstallationPlan example = InstallationPlan.example().withBore("S6");

  private InstallationPlan with(MachineMember member, Nut nut, Duty duty) {
    return new InstallationPlan(example.job(), example.roller(), member, nut, duty);
  }

  private DutyBuilder duty(LoadSpectrum spectrum) {
    return Duty.of(spectrum)
        .life(hours(20000), Reliability.ofPercent(95))
        .staticSafety(2)
        .at(degC(60))
        .lubricant(example.duty().viscosity(), example.duty().contamination())
        .track(example.duty().track(), 45)
        .greaseThrough(Port.HEAD);
  }

  @Test
  void theSheetShowsFitForceTorqueLifeAndDigest() {
    String text = example.sheet().text();
    assertTrue(text.contains("18 mm S6/h7: interference fit, 7 µm … 36 µm interference"), text);
    assertTrue(text.contains("17.964 mm … 17.975 mm"), text);
    for (String word : new String[] {"Press force", "Preload", "Basic rating life", "Port, head end", "Governing limit",
      "Ink pattern", "SIGN-OFF", "H1 ", "H2 ", "H3 ", "H4 "}) {
      assertTrue(text.contains(word), word + " is missing in " + text);
    }
    assertTrue(text.contains(TableSet.bundled().digest()), text);
    assertTrue(text.contains("(invented"), "an example is labelled invented");
    assertFalse(text.contains("DO NOT INSTALL"), text);
  }

  @Test
  void everySheetInAllUnitsIsCleanText() {
    for (MountingPlan plan : ExampleJobs.all().values()) {
      for (SheetUnits units : SheetUnits.values()) {
        String text = plan.withUnits(units).sheet().text();
        assertFalse(text.contains("NaN") || text.contains("Infinity") || text.contains("null"), text);
        text.lines().forEach(line -> assertTrue(line.length() <= 100, line));
        text.lines().forEach(line -> assertFalse(line.matches(".*\\d\\.\\d{6,}.*"), "digits that no input supports: " + line));
      }
    }
  }

  @Test
  void inchSheetsKeepMetricOnlyInNamesOfParts() {
    // Names of threads, fittings and drawn deviations, and the reference temperature in the title of a standard.
    Pattern names = Pattern.compile("6 mm, drive-in|core of about 30 mm section|0/-0\\.010 mm|reference temperature (of )?20 °C|T - 20 °C");
    Pattern metric = Pattern.compile("\\d (mm|µm|kN|N|N·m|MPa|°C)(?![\\w·/²])");
    for (MountingPlan plan : ExampleJobs.all().values()) {
      String text = plan.withUnits(SheetUnits.INCH).sheet().text().replaceAll("\\s+", " ");
      String left = names.matcher(text).replaceAll("");
      assertFalse(metric.matcher(left).find(), left);
    }
  }

  @Test
  void theSheetIsTheSameEveryTime() {
    assertEquals(example.sheet().html(), InstallationPlan.example().withBore("S6").sheet().html());
  }

  @Test
  void aWrenchThatMayExceedTheMakersTorqueStopsTheWork() {
    Nut hard = Nut.onFace(mm(24.8), mm(19)).friction(ThreadCondition.OILED, 0.10, 0.16).wrench(Nm(84), 0.04).reserve(1.5).build();
    String text = with(example.member(), hard, example.duty()).sheet().text();
    assertTrue(text.contains("DO NOT INSTALL"), text);
    assertTrue(text.replaceAll("\\s+", " ").contains("may give 87.36 N·m, more than the 85 N·m"), text);
  }

  @Test
  void aLifeTooShortStopsTheWork() {
    Duty hard = duty(LoadSpectrum.constant(kN(4), rpm(300))).life(hours(20000), Reliability.ofPercent(99)).build();
    String text = with(example.member(), example.nut(), hard).sheet().text();
    assertTrue(text.contains("DO NOT INSTALL"), text);
  }

  @Test
  void aJobThatCannotWorkSaysEveryReason() {
    String stops = String.join("\n", ExampleJobs.impossible().stops());
    for (String reason : new String[] {"no torque", "permits", "modified life", "'track'", "'temperature, hot'", "run dry"}) {
      assertTrue(stops.contains(reason), reason + " is missing in " + stops);
    }
    String text = ExampleJobs.impossible().sheet().text();
    assertTrue(text.contains("DO NOT INSTALL"), text);
    assertFalse(text.contains("SIGN-OFF") || text.contains("RUN IN"), "nobody signs for what must not be installed");
  }

  @Test
  void aClearanceFitSlipsIn() {
    MachineMember loose =
        new MachineMember("lever", example.member().body(), "H7", mm(16), FrictionBand.general());
    InstallationPlan plan = with(loose, example.nut(), example.duty());
    assertTrue(plan.seat().isEmpty());
    String text = plan.sheet().text();
    assertTrue(text.contains("SLIP IN"), text);
    // 36 µm, and 0.7 µm by 40 K and 1 µm/(m·K) over 18 mm, over 16 mm: 2.296 mrad, and a little more: the stud is thick.
    assertTrue(text.contains("up to 2.299 mrad"), text);
  }

  @Test
  void aSpectrumOfEqualStepsIsTheConstantDuty() {
    LoadSpectrum steps =
        LoadSpectrum.builder().step(kN(2.1), rpm(180), 0.25).step(kN(2.1), rpm(180), 0.75).build();
    InstallationPlan plan = with(example.member(), example.nut(), duty(steps).build());
    assertEquals(example.replaceAfter().hours(), plan.replaceAfter().hours(), 1e-9 * example.replaceAfter().hours());
    assertEquals(example.life().millionRevolutions(), plan.life().millionRevolutions(), 1e-9 * 600);
  }

  @Test
  void limitsUseTheGreatestLoadAndTheLeast() {
    LoadSpectrum steps = LoadSpectrum.builder().step(kN(1), rpm(300), 0.5).step(kN(2), rpm(100), 0.5).build();
    Duty duty = duty(steps).build();
    assertEquals(kN(2), duty.load());
    assertEquals(kN(1), duty.leastLoad());
    assertEquals(rpm(300), duty.greatestSpeed());
    assertEquals(200, duty.speed().rpm(), 1e-9);
  }

  @Test
  void oneErrorNamesAllThatIsMissing() {
    InputException plan = assertThrows(InputException.class, () -> InstallationPlan.of(example.roller()).build());
    assertEquals("without job, member, nut, duty", plan.value());
    InputException roller = assertThrows(InputException.class, () -> StudRoller.named("r").thread("M18x1.5").build());
    assertTrue(roller.getMessage().contains("temperatures, flange, stud, grease bore"), roller.getMessage());
  }

  @Test
  void oneErrorNamesWhatTheWholeJobLacksAndContradicts() {
    PlanBuilder job =
        InstallationPlan.of(StudRoller.named("r").thread("M18x1.5"))
            .member(MachineMember.named("lever").bore("H7", mm(-1)))
            .nut(Nut.onFace(mm(24), mm(19)).friction(ThreadCondition.OILED, 0.1, 0.2).wrench(Nm(-5), 0.04).reserve(1.2))
            .duty(Duty.of(kN(1), rpm(100)).staticSafety(2));
    String message = assertThrows(InputException.class, job::build).getMessage();
    for (String part : new String[] {
      "job", "roller: ring", "roller: ratings", "member: body", "member: pressing friction", "duty: life", "duty: track",
      "duty: port for grease", "tightening torque (-5000 N·mm)"
    }) {
      assertTrue(message.contains(part), part + " is missing in " + message);
    }
  }

  @Test
  void thePlanTravelsAndItsSummaryIsJson() throws IOException, ClassNotFoundException {
    for (MountingPlan plan : ExampleJobs.all().values()) {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
        out.writeObject(plan);
      }
      try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
        assertEquals(plan, in.readObject());
      }
    }
    PlanSummary summary = example.summary();
    assertTrue(summary.install());
    assertFalse(ExampleJobs.impossible().summary().install());
    assertTrue(summary.json().contains("{\"id\":\"bore.lower-limit\",\"value\":17.964,\"unit\":\"mm\"}"), summary.json());
    assertTrue(summary.json().startsWith("{\"job\":\"Larkmere"), summary.json());
  }

  @Test
  void cautionsNameTheirTopics() {
    assertEquals(2, Cautions.of("press-first", "press-straight").size());
    InputException topic = assertThrows(InputException.class, () -> Cautions.about("juggle"));
    assertTrue(topic.getMessage().contains("isolate"), topic.getMessage());
    InputException id = assertThrows(InputException.class, () -> Cautions.of("press-99"));
    assertEquals("'press-99'", id.value());
    Cautions.topics().forEach(name -> assertFalse(Cautions.about(name).isEmpty()));
  }
}

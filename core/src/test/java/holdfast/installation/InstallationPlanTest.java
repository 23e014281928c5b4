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

import holdfast.bearings.Reliability;
import holdfast.quantity.InputException;
import holdfast.seats.FrictionBand;
import holdfast.tables.TableSet;
import holdfast.trace.Cautions;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import org.junit.jupiter.api.Test;

class InstallationPlanTest {
  private final InstallationPlan example = InstallationPlan.example();

  private InstallationPlan with(MachineMember member, Nut nut, Duty duty) {
    return new InstallationPlan(example.job(), example.roller(), member, nut, duty);
  }

  @Test
  void theSheetShowsFitForceTorqueLifeAndDigest() {
    String text = example.sheet().text();
    assertTrue(text.contains("18 S6/h7: interference fit, 7 µm … 36 µm interference"), text);
    assertTrue(text.contains("17.964 mm … 17.975 mm"), text);
    assertTrue(text.contains("Press force"), text);
    assertTrue(text.contains("Preload"), text);
    assertTrue(text.contains("Basic rating life"), text);
    assertTrue(text.contains(TableSet.bundled().digest()), text);
    assertTrue(text.contains("(invented"), "an example is labelled invented");
    assertFalse(text.contains("DO NOT INSTALL"), text);
    assertFalse(text.contains("NaN"), text);
    text.lines().forEach(line -> assertTrue(line.length() <= 100, line));
  }

  @Test
  void theSheetIsTheSameEveryTime() {
    assertEquals(example.sheet().html(), InstallationPlan.example().sheet().html());
  }

  @Test
  void aWrenchThatMayExceedTheMakersTorqueStopsTheWork() {
    Nut hard = new Nut(mm(24.8), mm(19), 0.10, 0.16, Nm(84), 0.04, 1.5);
    String text = with(example.member(), hard, example.duty()).sheet().text();
    assertTrue(text.contains("DO NOT INSTALL"), text);
    assertTrue(text.replaceAll("\\s+", " ").contains("may give 87.36 N·m, more than the 85 N·m"), text);
  }

  @Test
  void aLifeTooShortStopsTheWork() {
    Duty hardDuty = new Duty(
            kN(4),
            rpm(300),
            hours(20000),
            Reliability.ofPercent(99),
            2,
            degC(60),
            example.duty().viscosity(),
            example.duty().contamination(),
            example.duty().track(),
            45);
    String text = with(example.member(), example.nut(), hardDuty).sheet().text();
    assertTrue(text.contains("DO NOT INSTALL"), text);
  }

  @Test
  void aClearanceFitSlipsIn() {
    MachineMember loose =
        new MachineMember("lever", example.member().body(), "H7", mm(16), FrictionBand.general());
    InstallationPlan plan = with(loose, example.nut(), example.duty());
    assertTrue(plan.seat().isEmpty());
    String text = plan.sheet().text();
    assertTrue(text.contains("SLIP IN"), text);
    // 36 µm over 16 mm: 2.25 mrad, and a little more because the stud is thick.
    assertTrue(text.contains("up to 2.253 mrad"), text);
  }

  @Test
  void oneErrorNamesAllThatIsMissing() {
    InputException plan = assertThrows(InputException.class, () -> InstallationPlan.of(example.roller()).build());
    assertEquals("without job, member, nut, duty", plan.value());
    InputException roller = assertThrows(InputException.class, () -> StudRoller.named("r").thread("M18x1.5").build());
    assertTrue(roller.getMessage().contains("ring, flange, stud, grease bore"), roller.getMessage());
  }

  @Test
  void aPlanTravels() throws IOException, ClassNotFoundException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(example);
    }
    try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      assertEquals(example, in.readObject());
    }
  }

  @Test
  void cautionsNameTheirTopics() {
    assertEquals(2, Cautions.about("press", 1, 3).size());
    InputException topic = assertThrows(InputException.class, () -> Cautions.about("juggle"));
    assertTrue(topic.getMessage().contains("isolate"), topic.getMessage());
    InputException number = assertThrows(InputException.class, () -> Cautions.about("press", 99));
    assertEquals("99", number.value());
    Cautions.topics().forEach(name -> assertFalse(Cautions.about(name).isEmpty()));
  }
}

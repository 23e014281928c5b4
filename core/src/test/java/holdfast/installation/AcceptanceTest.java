// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import static holdfast.quantity.Units.GPa;
import static holdfast.quantity.Units.MPa;
import static holdfast.quantity.Units.degC;
import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.thou;
import static holdfast.quantity.Units.um;
import static holdfast.quantity.Units.umPerMK;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.fits.Conformity;
import holdfast.fits.Fit;
import holdfast.fits.FitKind;
import holdfast.fits.Gauge;
import holdfast.fits.LimitsOfSize;
import holdfast.fits.MeasuredPart;
import holdfast.fits.MeasuringScheme;
import holdfast.fits.TolerancedSize;
import holdfast.quantity.InputException;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import holdfast.seats.Ductility;
import holdfast.seats.FrictionBand;
import holdfast.seats.InterferenceBand;
import holdfast.seats.InterferenceFit;
import holdfast.seats.Material;
import holdfast.seats.MaterialGroup;
import holdfast.seats.OuterPart;
import holdfast.seats.YieldRule;
import holdfast.sheet.Sheet;
import holdfast.sheet.SheetUnits;
import holdfast.tables.SourceRef;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Parts are stated by where they lie in the tolerances of the plan: 0 lower limit, 1 upper limit. */
class AcceptanceTest {
  private static final InstallationPlan PLAN = InstallationPlan.example().withBore("S6");
  private static final Length U = um(1);

  private static Length in(TolerancedSize drawing, double share) {
    return drawing.limits().lower().plus(drawing.tolerance().times(share));
  }

  private static MeasuredPart even(String gauge, Length size) {
    return MeasuredPart.by(Gauge.of(gauge, U)).station(size, size).station(size, size).station(size, size).allAt(degC(20));
  }

  private static Acceptance judged(InstallationPlan plan, double bore, double stud) {
    Fit fit = plan.fit();
    return Acceptance.of(plan, even("bore gauge", in(fit.hole(), bore)), even("micrometer", in(fit.shaft(), stud)));
  }

  private static Acceptance judged(double bore, double stud) {
    return judged(PLAN, bore, stud);
  }

  private static List<String> codes(Acceptance acceptance) {
    return acceptance.remedies().stream().map(Remedy::code).toList();
  }

  private static InstallationPlan in(Material material, String boreTolerance) {
    MachineMember member =
        new MachineMember("lever", OuterPart.ring(material, mm(50)), boreTolerance, mm(16), FrictionBand.of(0.08, 0.20));
    return new InstallationPlan(PLAN.job(), PLAN.roller(), member, PLAN.nut(), PLAN.duty());
  }

  private static String text(Acceptance acceptance) {
    return new Sheet("Parts", "job", List.of(acceptance.section()), List.of()).text();
  }

  @Test
  void partsInTheMiddleOfTheirTolerancesPass() {
    Acceptance parts = judged(0.5, 0.5);
    assertEquals(Conformity.PROVEN, parts.verdict());
    assertTrue(parts.accepted());
    assertEquals(PLAN.fit().meanClearance().mm(), parts.fit().clearance().mm(), 1e-9);
    assertEquals(List.of(), parts.remedies());
    assertEquals(List.of(), parts.stops());
    assertEquals(parts.fit().clearance().in(KnownUnits.UM), parts.explain().result().value(), 0);
    assertTrue(parts.sources().containsAll(parts.explain().sources()));
    String text = text(parts);
    assertTrue(text.contains("conforming: accepted for joining"), text);
    assertTrue(text.contains("Hold point: join nothing before this section is signed"), text);
    assertFalse(text.contains("DO NOT INSTALL"), text);
    text.lines().forEach(line -> assertTrue(line.length() <= 100, line));
  }

  /** What follows is that of a press fit with the measured interference, widened by the uncertainty. */
  @Test
  void whatFollowsComesFromTheMeasuredInterference() {
    Acceptance parts = judged(0.5, 0.5);
    MeasuredSeat seat = parts.seat();
    Length mean = PLAN.fit().meanClearance().negated();
    Length uncertainty = um(Math.sqrt(2));
    InterferenceFit planned = PLAN.seat().orElseThrow();
    InterferenceFit expected =
        InterferenceFit.of(
            planned.stud(),
            planned.housing(),
            InterferenceBand.of(PLAN.fit().nominalSize(), mean.minus(uncertainty), mean.plus(uncertainty)),
            planned.length());
    InterferenceFit press = seat.press().orElseThrow();
    assertEquals(expected.pressure().least().base(), press.pressure().least().base(), 1e-6);
    assertEquals(expected.pressure().greatest().base(), press.pressure().greatest().base(), 1e-6);
    FrictionBand friction = PLAN.member().pressingFriction();
    assertEquals(
        expected.pressInForce(friction).greatest().base(), seat.pressing().orElseThrow().pressIn().greatest().base(), 1e-3);
    assertEquals(
        expected.holding(friction).torqueToBeHeld(PLAN.torqueThroughStud()).base(), seat.torqueToBeHeld().base(), 1e-3);
    assertEquals(
        expected.limits(YieldRule.VON_MISES).housing().safety().orElseThrow(),
        seat.limits().orElseThrow().housing().safety().orElseThrow(), 1e-8);
    assertEquals(
        expected.atWork(PLAN.duty().workingTemperature(), PLAN.duty().workingTemperature()).pressure().least().base(),
        seat.pressAtWork().orElseThrow().pressure().least().base(), 1e-6);
    // Free growth to 60 °C: cast iron and steel differ by 1 µm/(m·K) here, so about 0.7 µm more clearance over 18 mm.
    double growth = PLAN.member().body().material().thermalExpansion().perKelvin()
        - PLAN.roller().material().thermalExpansion().perKelvin();
    double rise = PLAN.duty().workingTemperature().celsius() - 20;
    assertEquals(
        seat.clearance().least().mm() + 18 * growth * rise, seat.clearanceAtWork().least().mm(), 1e-4);
  }

  @Test
  void aBoreThatIsTooLargeAsksForAMatchedStudOrASleeve() {
    Acceptance parts = judged(2, 0.5);
    assertEquals(Conformity.DISPROVED, parts.verdict());
    assertTrue(codes(parts).contains("bore-large"), codes(parts).toString());
    String advice = parts.remedies().get(0).toString();
    assertTrue(advice.contains("fit a sleeve") && advice.contains("Never knurl"), advice);
    assertTrue(advice.contains("[common practice]"), advice);
    // Bore 17.986 mm: the stud must be 7 µm … 36 µm larger, less 1.414 µm at both ends; the drawing ends at 18 mm.
    assertTrue(advice.contains("a stud that conforms and measures 17.9945 mm … 18.0000 mm at 20 °C"), advice);
    String special = judged(4, 0.5).remedies().get(0).text();
    assertTrue(special.contains("a special stud, agreed with its maker, that measures 18.0165 mm … 18.0425 mm"), special);
    String text = text(parts);
    assertTrue(text.contains("DO NOT INSTALL"), text);
    // A stud in the zone named makes the planned fit: as a matched pair, with a concession.
    LimitsOfSize zone = parts.matchingStud().orElseThrow();
    for (Length size : List.of(zone.lower(), zone.upper())) {
      MeasuredPart bore = even("bore gauge", in(PLAN.fit().hole(), 2));
      Acceptance matched = Acceptance.of(PLAN, bore, even("micrometer", size));
      assertEquals(Conformity.PROVEN, matched.fitConformity());
      assertEquals(Conformity.DISPROVED, matched.verdict());
      assertTrue(codes(matched).contains("concession"));
    }
  }

  @Test
  void aBoreThatIsTooSmallIsReamed() {
    Acceptance parts = judged(-1, 0.5);
    assertEquals(Conformity.DISPROVED, parts.verdict());
    assertEquals("bore-small", parts.remedies().get(0).code());
    assertTrue(parts.remedies().get(0).text().contains("ream or hone, to 17.9650 mm … 17.9740 mm at 20 °C"),
        parts.remedies().get(0).text());
  }

  @Test
  void aStudThatIsOutGoesBack() {
    Acceptance small = judged(0.5, -1);
    Acceptance large = judged(0.5, 1.5);
    assertTrue(small.remedies().get(0).text().startsWith("The stud is 18.0 µm too small"), small.remedies().toString());
    assertTrue(large.remedies().get(0).text().startsWith("The stud is 9.0 µm too large"), large.remedies().toString());
    assertEquals("stud-out", large.remedies().get(0).code());
    LimitsOfSize bore = large.matchingBore().orElseThrow();
    Acceptance matched = Acceptance.of(PLAN, even("bore gauge", bore.lower()), even("micrometer", in(PLAN.fit().shaft(), 1.5)));
    assertEquals(Conformity.PROVEN, matched.fitConformity());
  }

  @Test
  void aReadingNearALimitAsksForABetterGauge() {
    Acceptance parts = judged(0.95, 0.5);
    assertEquals(Conformity.UNDECIDED, parts.verdict());
    assertFalse(parts.accepted());
    // 5 % of IT6 = 11 µm.
    assertTrue(parts.remedies().get(0).text().contains("uncertainty of at most 0.6 µm would show that it does conform"),
        parts.remedies().toString());
    assertTrue(judged(1, 0.5).remedies().get(0).text().contains("a reading lies on the limit"));
    assertTrue(judged(1.05, 0.5).remedies().get(0).text().contains("does not conform"));
  }

  @Test
  void tooFewReadingsNeverPass() {
    Fit fit = PLAN.fit();
    MeasuredPart bore = MeasuredPart.by(Gauge.of("bore gauge", U)).station(in(fit.hole(), 0.5));
    MeasuredPart stud = even("micrometer", in(fit.shaft(), 0.5));
    Acceptance parts = Acceptance.of(PLAN, bore, stud, degC(20));
    assertEquals(Conformity.UNDECIDED, parts.verdict());
    assertEquals(List.of("bore-readings"), codes(parts));
    assertTrue(text(parts).contains("read at 1 station × 1 direction"), text(parts));
    // Whoever answers for the drawing may ask for less.
    Acceptance single =
        Acceptance.of(PLAN, bore.allAt(degC(20)), stud, new MeasuringScheme(1, 1));
    assertTrue(single.accepted());
  }

  @Test
  void oneErrorNamesAllThatIsMissing() {
    MeasuredPart bore = MeasuredPart.by(Gauge.of("bore gauge", U));
    MeasuredPart stud = bore.station(in(PLAN.fit().shaft(), 0.5)).at(degC(20));
    InputException error = assertThrows(InputException.class, () -> Acceptance.of(PLAN, bore, stud));
    assertEquals(
        "without bore: readings, bore: temperature of the part, bore: temperature of the gauge, stud: temperature of the gauge",
        error.value());
  }

  @Test
  void partsOfAnotherDrawingAreRefused() {
    Acceptance parts = judged(0.5, 0.5);
    InstallationPlan other = in(Material.of("EN-GJS-600-3"), "H7");
    InputException bore = assertThrows(InputException.class, () -> new Acceptance(other, parts.bore(), parts.stud()));
    assertEquals("bore", bore.parameter());
    InputException stud = assertThrows(InputException.class, () -> new Acceptance(PLAN, parts.bore(), parts.bore()));
    assertEquals("stud", stud.parameter());
  }

  @Test
  void anOvalBoreIsNamed() {
    TolerancedSize hole = PLAN.fit().hole();
    Length wide = in(hole, 0.88);
    Length narrow = in(hole, 0.12);
    MeasuredPart bore = MeasuredPart.by(Gauge.of("bore gauge", U)).station(wide, narrow).station(wide, narrow).station(wide, narrow);
    Acceptance parts = Acceptance.of(PLAN, bore, even("micrometer", in(PLAN.fit().shaft(), 0.5)), degC(20));
    assertTrue(parts.accepted(), "its readings conform");
    assertEquals(List.of("bore-form"), codes(parts));
  }

  @Test
  void aClearanceFitSlipsAndTilts() {
    InstallationPlan slip = in(Material.of("EN-GJS-600-3"), "H7");
    Acceptance parts = judged(slip, 0.5, 0.5);
    assertTrue(parts.accepted(), parts.toString());
    assertTrue(parts.seat().press().isEmpty());
    assertEquals(slip.torqueThroughStud(), parts.seat().torqueToBeHeld());
    // 18 µm, 1.4 µm of uncertainty and 0.7 µm by 40 K and 1 µm/(m·K), over 16 mm: 1.259 mrad, and a little more because the stud is thick.
    assertEquals(1.259, parts.seat().tilt().byClearance().in(KnownUnits.MRAD), 2e-3);
    assertTrue(parts.seat().tilt().byClearance().compareTo(slip.tilt().byClearance()) < 0);
    assertTrue(text(parts).contains("Tilt that the clearance allows"));
  }

  @Test
  void aPairThatCracksItsHousingIsStopped() {
    Material weak =
        Material.named("weak grey iron (invented)", SourceRef.commonPractice("invented for a test"))
            .kind(MaterialGroup.GREY_IRON, Ductility.BRITTLE)
            .elastic(GPa(110), 0.26)
            .expansion(umPerMK(10.5))
            .tensileStrength(MPa(60))
            .build();
    Acceptance parts = judged(in(weak, "S6"), 0.5, 0.5);
    assertEquals(Conformity.PROVEN, parts.bore().conformity());
    assertEquals(Conformity.DISPROVED, parts.verdict());
    assertEquals(1, parts.stops().size());
    assertTrue(codes(parts).contains("do-not-join"));
    assertTrue(parts.warnings().stream().anyMatch(w -> w.code().equals("must-not-be-joined")));
    assertTrue(text(parts).contains("would crack the lever"), text(parts));
  }

  /** The trade asks: hole 0.0001 in and stud 0.0004 in over nominal, slip or tap? Here both with six readings. */
  @Test
  void anInchPairReadsInInches() {
    InstallationPlan plan = ExampleJobs.inchSlipFit().withBore("+0.0005/0 in");
    Length nominal = plan.fit().nominalSize();
    Acceptance parts =
        Acceptance.of(plan, even("bore gauge", nominal.plus(thou(0.1))), even("micrometer", nominal.plus(thou(0.4))));
    assertTrue(parts.accepted(), parts.toString());
    assertEquals(Optional.of(FitKind.INTERFERENCE), parts.fit().certainKind());
    assertTrue(parts.seat().press().isPresent());
    String text = text(parts).replaceAll("\\s+", " ");
    assertTrue(text.contains("mean 0.00030 in"), text);
    assertFalse(text.contains("NaN") || text.contains("Infinity"), text);
    // The sheet permits 0.00004 in (1 µm) inside both limits, rounded inwards.
    String inches = text(Acceptance.of(
        plan.withUnits(SheetUnits.INCH), parts.bore().measured(), parts.stud().measured())).replaceAll("\\s+", " ");
    String low = Numbers.fixed(nominal.in(KnownUnits.INCH) + 0.00004, 5);
    String high = Numbers.fixed(nominal.in(KnownUnits.INCH) + 0.00046, 5);
    assertTrue(inches.contains("accepted at 20 °C: " + low + " in … " + high + " in"), inches);
    assertFalse(inches.contains(" mm") || inches.contains("µm "), inches);
  }

  @Test
  void anAcceptanceTravels() throws IOException, ClassNotFoundException {
    Acceptance parts = judged(0.5, 0.5);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(parts);
    }
    try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      assertEquals(parts, in.readObject());
    }
    assertNotEquals(parts, judged(0.5, 0.6));
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import static holdfast.quantity.Units.degC;
import static holdfast.quantity.Units.inch;
import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.thou;
import static holdfast.quantity.Units.um;
import static holdfast.quantity.Units.umPerMK;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.quantity.ThermalExpansion;
import holdfast.tables.SourceRef;
import holdfast.trace.Warning;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One measured part against its drawing: 25 H7 is 25.000 mm … 25.021 mm. */
class PartAcceptanceTest {
  private static final TolerancedSize BORE = TolerancedSize.of(mm(25), "H7");
  private static final ThermalExpansion STEEL = umPerMK(11.5);
  private static final Gauge GAUGE = Gauge.of("bore gauge 7", um(2)).steelAt(degC(20));

  private static PartAcceptance judged(MeasuredPart part) {
    return new PartAcceptance("bore", BORE, part, STEEL, MeasuringScheme.usual());
  }

  private static MeasuredPart even(Length size) {
    return MeasuredPart.by(GAUGE).station(size, size).station(size, size).station(size, size).at(degC(20));
  }

  private static List<String> codes(PartAcceptance part) {
    return part.warnings().stream().map(Warning::code).toList();
  }

  @ParameterizedTest
  @CsvSource({
    "25.002, PROVEN", "25.019, PROVEN", "25.0015, UNDECIDED", "25.0225, UNDECIDED", "25.0231, DISPROVED", "24.9979, DISPROVED"
  })
  void theWholeUncertaintyIsTheGuardBand(double size, Conformity expected) {
    assertEquals(expected, judged(even(mm(size))).conformity());
  }

  @Test
  void formErrorsAreDifferencesOfDiameters() {
    PartAcceptance part =
        judged(
            MeasuredPart.by(GAUGE)
                .station(mm(25.012), mm(25.008))
                .station(mm(25.009), mm(25.009))
                .station(mm(25.004), mm(25.006))
                .at(degC(20)));
    assertEquals(4, part.outOfRound().in(KnownUnits.UM), 1e-9);
    // Means of the stations: 25.010, 25.009, 25.005.
    assertEquals(5, part.taper().in(KnownUnits.UM), 1e-9);
    assertEquals(25.008, part.mean().mm(), 1e-12);
    assertEquals(4, part.margin().in(KnownUnits.UM), 1e-9);
    assertEquals(part.margin().in(KnownUnits.UM), part.explain().result().value(), 0);
    assertEquals("bore 25 H7: conforming, 25.0040 mm … 25.0120 mm at 20 °C, ± 2 µm", part.toString());
  }

  @Test
  void warmPartsAndWarmGaugesAreCorrected() {
    // 25.010 mm shown by a steel gauge at 24 °C: 25.010 (1 + 11.5e-6 · 4) = 25.01115046 mm at the part's 30 °C, and
    // divided by 1 + 23e-6 · 10 of an aluminium part 25.00539922 mm.
    MeasuredPart warm =
        MeasuredPart.by(Gauge.of("bore gauge 7", um(1)).steelAt(degC(24))).station(mm(25.010), mm(25.010)).at(degC(30));
    PartAcceptance part = new PartAcceptance("bore", BORE, warm, umPerMK(23), new MeasuringScheme(1, 2));
    assertEquals(25.00539922, part.mean().mm(), 1e-8);
    assertTrue(codes(part).contains("temperature-correction"), part.warnings().toString());
    // The gauge must show 25.001 (1 + 23e-6 · 10) / (1 + 11.5e-6 · 4) = 25.00559997 for a bore of 25.001 mm.
    assertEquals(25.00559997, part.shownZone().orElseThrow().lower().mm(), 1e-8);
  }

  @Test
  void aReadingOnBothSidesOfALimitHasItsExcessAndItsLack() {
    PartAcceptance part = judged(MeasuredPart.by(GAUGE).station(mm(24.990), mm(25.025)).at(degC(20)));
    assertEquals(10, part.lack().in(KnownUnits.UM), 1e-9);
    assertEquals(4, part.excess().in(KnownUnits.UM), 1e-9);
    assertEquals(-10, part.margin().in(KnownUnits.UM), 1e-9);
  }

  @Test
  void tooFewReadingsProveNoConformityButStillTheOpposite() {
    PartAcceptance good = judged(MeasuredPart.by(GAUGE).station(mm(25.01)).station(mm(25.01), mm(25.01)).at(degC(20)));
    assertEquals(Conformity.PROVEN, good.bySize());
    assertEquals(Conformity.UNDECIDED, good.conformity());
    assertEquals(List.of("read at 2 stations × 1 direction, 3 stations × 2 directions are required"), good.limitations());
    assertTrue(codes(good).contains("limited-readings"));
    PartAcceptance bad = judged(MeasuredPart.by(GAUGE).station(mm(25.05)).at(degC(20)));
    assertEquals(Conformity.DISPROVED, bad.conformity());
  }

  @Test
  void aReadingWithinTheUncertaintyIsNamed() {
    assertTrue(judged(even(mm(25.020))).warnings().toString().contains("lies 1 µm inside a limit"));
    assertTrue(judged(even(mm(25.022))).warnings().toString().contains("lies 1 µm outside a limit"));
    assertTrue(judged(even(mm(25.021))).warnings().toString().contains("lies on a limit"));
    assertFalse(codes(judged(even(mm(25.010)))).contains("within-uncertainty"));
  }

  @Test
  void aGaugeOutOfCalibrationProvesNothing() {
    LocalDate end = LocalDate.of(2026, 3, 31);
    MeasuredPart part = even(mm(25.05)).on(end.plusDays(1));
    MeasuredPart late = new MeasuredPart(GAUGE.calibratedUntil(end), part.stations(), part.temperature(), part.date());
    assertEquals(Conformity.UNDECIDED, judged(late).conformity());
    assertEquals(
        List.of("bore gauge 7 was out of calibration: it ended on 2026-03-31, the part was measured on 2026-04-01"),
        judged(late).limitations());
    PartAcceptance inTime = judged(late.on(end));
    assertEquals(Conformity.DISPROVED, inTime.conformity());
    assertFalse(codes(inTime).contains("calibration-unknown"));
    assertTrue(codes(judged(part)).contains("calibration-unknown"));
  }

  @Test
  void aCoarseGaugeIsNamed() {
    MeasuredPart quarter = even(mm(25.01));
    Gauge coarse = Gauge.of("vernier 1", um(20)).steelAt(degC(20));
    PartAcceptance part = judged(new MeasuredPart(coarse, quarter.stations(), degC(20), null));
    assertEquals(Optional.empty(), part.acceptanceZone());
    assertEquals(Optional.empty(), part.shownZone());
    assertEquals(Conformity.UNDECIDED, part.conformity());
    String warnings = part.warnings().toString();
    assertTrue(warnings.contains("the uncertainty is 95.2 % of the tolerance, so no reading can prove conformity"), warnings);
    Gauge fair = Gauge.of("vernier 1", um(6)).steelAt(degC(20));
    String fairly = judged(new MeasuredPart(fair, quarter.stations(), degC(20), null)).warnings().toString();
    assertTrue(fairly.contains("a quarter is the usual most"), fairly);
    assertFalse(codes(judged(quarter)).contains("coarse-gauge"));
  }

  @Test
  void oneErrorNamesAllThatWasNotRecorded() {
    MeasuredPart nothing = MeasuredPart.by(Gauge.of("bore gauge 7", um(2)));
    InputException error = assertThrows(InputException.class, () -> judged(nothing));
    assertEquals("without readings, temperature of the part, temperature of the gauge", error.value());
    assertEquals(List.of(), nothing.station(mm(25)).allAt(degC(21)).missing());
    // What was stated stays as it was stated.
    MeasuredPart own = even(mm(25)).at(degC(27)).allAt(degC(21));
    assertEquals(degC(27), own.temperature());
    assertEquals(degC(20), own.gauge().temperature());
  }

  @Test
  void slipsOfUnitAreRefused() {
    MeasuredPart inches = MeasuredPart.by(GAUGE).station(mm(0.9843)).at(degC(20));
    InputException error = assertThrows(InputException.class, () -> judged(inches));
    assertEquals("check unit and decimal point", error.reason());
    assertThrows(InputException.class, () -> MeasuredPart.by(GAUGE).station());
    assertThrows(InputException.class, () -> MeasuredPart.by(GAUGE).station(mm(0)));
    assertThrows(InputException.class, () -> Gauge.of(" ", um(1)));
    assertThrows(InputException.class, () -> Gauge.of("g", um(-1)));
    assertThrows(InputException.class, () -> new MeasuringScheme(0, 2));
    MeasuringScheme scheme = MeasuringScheme.usual();
    assertThrows(InputException.class, () -> new PartAcceptance(" ", BORE, even(mm(25)), STEEL, scheme));
  }

  /** "My hole measures 0.6251 in and stud 0.6254 in. Slip or tap fit?" Hole +0.0005/0, stud +0.001/0 on 5/8 in. */
  @Test
  void threeTenthsTightIsATapFit() {
    SourceRef drawing = SourceRef.commonPractice("limits of a drawing");
    Length nominal = inch("5/8");
    Fit asked =
        Fit.of(
            TolerancedSize.given(nominal, new LimitDeviations(mm(0), thou(0.5)), "+0.0005/0", drawing),
            TolerancedSize.given(nominal, new LimitDeviations(mm(0), thou(1)), "+0.001/0", drawing));
    MeasuredPart hole = MeasuredPart.by(Gauge.of("bore gauge", thou(0.1))).station(inch(0.6251)).allAt(degC(20));
    MeasuredPart stud = MeasuredPart.by(Gauge.of("micrometer", thou(0.1))).station(inch(0.6254)).allAt(degC(20));
    MeasuredFit fit = new MeasuredFit(asked, hole.readings(umPerMK(10.5)), stud.readings(STEEL));
    assertEquals(-0.3, fit.clearance().in(KnownUnits.THOU), 1e-9);
    assertEquals(0.1 * Math.sqrt(2), fit.uncertainty().in(KnownUnits.THOU), 1e-9);
    assertEquals(Optional.of(FitKind.INTERFERENCE), fit.certainKind());
    // The hole was warm from the reamer, 30 °C: it is 0.6251 · 10.5e-6 · 10 = 0.0656 thou smaller at 20 °C, so tighter still.
    MeasuredPart warm = new MeasuredPart(hole.gauge(), hole.stations(), degC(30), null);
    assertEquals(
        -0.36563, new MeasuredFit(asked, warm.readings(umPerMK(10.5)), stud.readings(STEEL)).clearance().in(KnownUnits.THOU), 1e-5);
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import static holdfast.installation.SheetSectionsTest.entry;
import static holdfast.installation.SheetSectionsTest.labels;
import static holdfast.installation.SheetSectionsTest.notices;
import static holdfast.quantity.Units.degC;
import static holdfast.quantity.Units.um;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.fits.Conformity;
import holdfast.fits.Fit;
import holdfast.fits.FitKind;
import holdfast.fits.Gauge;
import holdfast.fits.MeasuredPart;
import holdfast.fits.TolerancedSize;
import holdfast.quantity.Length;
import holdfast.sheet.Block;
import holdfast.sheet.Section;
import holdfast.trace.Warning;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the acceptance of measured parts says beside its verdict, under each condition. */
class AcceptanceNotesTest {
  private static final InstallationPlan PLAN = InstallationPlan.example().withBore("S6");

  private static Length in(TolerancedSize drawing, double share) {
    return drawing.limits().lower().plus(drawing.tolerance().times(share));
  }

  private static MeasuredPart measured(String gauge, double uncertainty, int stations, Length size) {
    MeasuredPart part = MeasuredPart.by(Gauge.of(gauge, um(uncertainty)));
    for (int i = 0; i < stations; i++) {
      part = part.station(size, size);
    }
    return part.allAt(degC(20));
  }

  private static Acceptance judged(InstallationPlan plan, double bore, double stud) {
    Fit fit = plan.fit();
    return Acceptance.of(plan, measured("bore gauge", 1, 3, in(fit.hole(), bore)),
        measured("micrometer", 1, 3, in(fit.shaft(), stud)));
  }

  private static List<String> codes(Acceptance parts) {
    return parts.warnings().stream().map(Warning::code).toList();
  }

  @Test
  void eitherEndOfTheFitMayFail() {
    // Middle of S6 with studs far below and above h7: the fit falls out at its loose and at its tight end.
    assertEquals(Conformity.DISPROVED, judged(PLAN, 0.5, -2).fitConformity());
    assertEquals(Conformity.DISPROVED, judged(PLAN, 0.5, 3).fitConformity());
    assertEquals(Conformity.PROVEN, judged(PLAN, 0.5, 0.5).fitConformity());
  }

  @Test
  void aFitOfOnePartMeasuredTooSeldomIsUndecided() {
    Fit fit = PLAN.fit();
    Acceptance parts = Acceptance.of(PLAN, measured("bore gauge", 1, 3, in(fit.hole(), 0.5)),
        measured("micrometer", 1, 1, in(fit.shaft(), 0.5)));
    assertEquals(Conformity.UNDECIDED, parts.fitConformity(), "the stud alone");
    parts = Acceptance.of(PLAN, measured("bore gauge", 1, 1, in(fit.hole(), 0.5)),
        measured("micrometer", 1, 3, in(fit.shaft(), 0.5)));
    assertEquals(Conformity.UNDECIDED, parts.fitConformity(), "the bore alone");
  }

  @Test
  void thePriceIsThatOfTheMeasuredPair() {
    Acceptance parts = judged(PLAN.withBore("H7"), 0.9, 0.1);
    SeatPrice price = parts.price().orElseThrow();
    // The loosest pair is the clearance as measured, and the uncertainty of both gauges, √2 µm.
    assertEquals(parts.fit().maximumClearance().mm() + Math.sqrt(2) * 1e-3, price.loosest().seat().clearance().mm(), 1e-9);
    assertTrue(entry(parts.section(), "Life ratio of the loosest reading, this pair").endsWith(" of the aligned life"));
    InstallationPlan slip = ExampleJobs.inchSlipFit();
    assertTrue(judged(slip, 0.5, 0.5).price().isEmpty(), "the inside of the inch roller is not known");
    assertFalse(labels(judged(slip, 0.5, 0.5).section()).contains("Life ratio of the loosest reading, this pair"));
  }

  @Test
  void theAcceptanceRepeatsWhatItsFitAndSeatWarnOf() {
    // Parts far out of their limits turn the interference fit into a clearance fit.
    Acceptance loose = judged(PLAN, 1, -2);
    assertEquals(FitKind.CLEARANCE, loose.fit().kind());
    List<String> ofFit = loose.fit().warnings().stream().map(Warning::code).filter(code -> code.startsWith("kind-")).toList();
    assertEquals(1, ofFit.size());
    assertTrue(codes(loose).containsAll(ofFit));
    assertTrue(codes(judged(PLAN, 0.5, 0.5)).stream().noneMatch(code -> code.startsWith("kind-")));
    Acceptance tight = judged(PLAN, 0.2, 0.8);
    assertTrue(tight.warnings().containsAll(tight.seat().press().orElseThrow().warnings()));
    assertTrue(tight.warnings().containsAll(tight.seat().pressAtWork().orElseThrow().warnings()));
    assertTrue(tight.warnings().containsAll(tight.seat().tilt().warnings()));
    String said = notices(tight.section(), Block.Weight.NOTE);
    tight.warnings().forEach(warning -> assertTrue(said.contains(warning.message()), warning.message()));
  }

  @Test
  void theAcceptanceCitesItsSeatAndItsAdvice() {
    Acceptance parts = judged(PLAN, 2, 0.5);
    assertFalse(parts.remedies().isEmpty());
    parts.remedies().forEach(remedy -> assertTrue(parts.sources().contains(remedy.source()), remedy.code()));
    assertTrue(parts.sources().containsAll(parts.seat().tilt().sources()));
    Acceptance good = judged(PLAN, 0.5, 0.5);
    assertTrue(good.sources().containsAll(good.seat().press().orElseThrow().sources()));
  }

  @Test
  void inWordsTheVerdictComesFirstAndThenTheFit() {
    Acceptance parts = judged(PLAN, 0.5, 0.5);
    assertEquals("conforming (bore conforming, stud conforming, fit conforming): " + parts.fit(), parts.toString());
    assertEquals(parts.toString(), parts.explain().title());
  }

  @Test
  void aPressedPairStatesPressureForceAndHold() {
    Section section = judged(PLAN, 0.5, 0.5).section();
    assertTrue(labels(section).containsAll(List.of("Verdict", "Bore at 20 °C", "Stud at 20 °C", "Joint pressure, this pair",
        "Press force, this pair", "Stress, this pair", "Seat holds", "At work, this pair", "Hold at the head of the stud")));
    assertFalse(labels(section).contains("Tilt that the clearance allows"), "an interfering pair has none");
    assertTrue(entry(section, "Stress, this pair").matches("stud .*; member .*"));
    assertEquals("nothing: the seat holds the torque", entry(section, "Hold at the head of the stud"));
    assertEquals("", notices(section, Block.Weight.STOP));
    assertTrue(entry(section, "Bore, how measured").startsWith("6 readings with bore gauge, ± 1.0 µm"),
        entry(section, "Bore, how measured"));
  }

  @Test
  void aLoosePairStatesItsTiltAndNoPressure() {
    Section section = judged(PLAN.withBore("H7"), 0.5, 0.5).section();
    assertTrue(labels(section).containsAll(List.of("Hold at the head of the stud", "Tilt that the clearance allows")));
    assertFalse(labels(section).contains("Joint pressure, this pair"));
  }

  @Test
  void aPairAboutToTouchMayBePressedOrLean() {
    // H7 at its lower limit and h7 at its upper: nominally no play; either side of it within the uncertainty of √2 µm.
    Acceptance touching = judged(PLAN.withBore("H7"), 0, 1);
    assertEquals(0, touching.fit().clearance().mm(), 1e-9);
    Section section = touching.section();
    assertTrue(labels(section).containsAll(List.of("Joint pressure, this pair", "Tilt that the clearance allows")));
    // Rz 4 µm and 2 µm smooth away more than 1.4 µm of interference.
    assertEquals("none: smoothing takes the interference", entry(section, "Stress, this pair"));
  }

  @Test
  void partsThatAreNotAcceptedStop() {
    String stop = notices(judged(PLAN, 2, 0.5).section(), Block.Weight.STOP);
    assertTrue(stop.contains("The parts are not accepted: bore not conforming, stud conforming, fit "), stop);
  }
}

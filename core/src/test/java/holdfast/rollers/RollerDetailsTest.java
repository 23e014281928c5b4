// SPDX-License-Identifier: Apache-2.0
package holdfast.rollers;

import static holdfast.quantity.Units.inch;
import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.um;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import holdfast.trace.Warning;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Single values of the dimension tables as the catalogues print them, the ends of ranges, and what is said in words. */
class RollerDetailsTest {
  private static final RollerSize D35 = RollerSeries.METRIC.size(mm(35));
  private static final RollerSize D10 = RollerSeries.METRIC.size(mm(10));
  private static final RollerSize HALF_INCH = RollerSeries.INCH_STANDARD_STUD.size(inch("1/2"));

  @Test
  void lengthsAddUpAlongTheDrawing() {
    // 35 mm roller: ring 18 mm, flanges 0.8 mm before it on both sides, stud 32.5 mm with 17 mm of thread.
    assertEquals(52.1, RollerGeometryKernel.overallLength(18, 0.8, 32.5), 1e-12);
    assertEquals(50.5, RollerGeometryKernel.overallLength(18, 0, 32.5), 1e-12);
    assertEquals(15.5, RollerGeometryKernel.shankLength(32.5, 17), 1e-12);
    assertEquals("thread length",
        assertThrows(InputException.class, () -> RollerGeometryKernel.shankLength(20, 0)).parameter());
  }

  @Test
  void holesAsPrinted() {
    assertTrue(D35.holes().drilled());
    assertEquals(mm(6), D35.holes().axial().orElseThrow());
    assertEquals(mm(3), D35.holes().radial().orElseThrow());
    assertFalse(D10.holes().drilled());
    assertTrue(D10.holes().axial().isEmpty() && D10.holes().radial().isEmpty() && D10.holes().radialPosition().isEmpty());
    // Inch rollers state the fitting of the axial hole and not its diameter.
    assertTrue(HALF_INCH.holes().drilled());
    assertTrue(HALF_INCH.holes().axial().isEmpty() && HALF_INCH.holes().radial().isEmpty());
  }

  @Test
  void facesSourcesAndDocuments() {
    // Printed 8.5 mm by one practice and 8.3 mm by another: the greater is safe, whichever is printed first.
    assertEquals(8.5, RollerSeries.METRIC.size(mm(12)).safeFaceDiameter().mm());
    assertEquals(15, RollerSeries.METRIC.size(mm(19)).safeFaceDiameter().mm());
    assertEquals(7.366, HALF_INCH.safeFaceDiameter().mm());
    assertEquals("ISO 7063:2003", RollerSeries.METRIC.source().document());
    assertEquals(RollerSeries.INCH_HEAVY_STUD.sizes().get(3).source(), RollerSeries.INCH_HEAVY_STUD.source());
    // The cited catalogue and two that confirm it; of the heavy stud one.
    assertEquals(3, HALF_INCH.agreeingDocuments());
    assertEquals(2, RollerSeries.INCH_HEAVY_STUD.size(inch("1/2")).agreeingDocuments());
    // A catalogue that is cited and confirms itself counts once.
    RollerSize r = HALF_INCH;
    RollerSize twice = new RollerSize(r.series(), r.outsideDiameter(), r.ringWidth(), r.statedOverallLength(), r.stud(), r.holes(),
        r.faceDiameter(), r.otherFaceDiameter(), r.statedRaceway(), r.tolerances(), r.source(),
        List.of(r.source().document(), "Linear motion and cam follower catalogue"), r.note());
    assertEquals(2, twice.agreeingDocuments());
    // The standard was not at hand: two catalogues print the 10 mm roller.
    assertEquals(2, D10.agreeingDocuments());
  }

  @Test
  void aStudThatIsMadeWithTwoThreadsNamesBoth() {
    assertEquals("10 mm × 23 mm, M10x1 or M10x1.25", RollerSeries.METRIC.size(mm(22)).stud().toString());
    assertEquals("inch, heavy stud", RollerSeries.INCH_HEAVY_STUD.toString());
    assertEquals(MeasureSystem.INCH, RollerSeries.INCH_HEAVY_STUD.system());
    assertEquals(List.of("metric", "inch"), List.of(MeasureSystem.METRIC.toString(), MeasureSystem.INCH.toString()));
  }

  @Test
  void sizesAreFoundDespiteRoundingToAMicrometreAndNoFurther() {
    for (double off : new double[] {-0.001, 0.001}) {
      assertEquals(D35, RollerSeries.METRIC.size(mm(35 + off)));
      assertEquals(List.of(D35), RollerSeries.byOutsideDiameter(mm(35 + off), MeasureSystem.METRIC));
      assertEquals(3, RollerSeries.byStud(mm(30 + off), MeasureSystem.METRIC).size());
      assertEquals(3, RollerSeries.METRIC.withStud(mm(30 + off)).size());
    }
    for (double off : new double[] {-0.002, 0.002}) {
      InputException error = assertThrows(InputException.class, () -> RollerSeries.METRIC.size(mm(35 + off)));
      assertEquals("outside diameter D", error.parameter());
      assertTrue(error.permitted().contains("32 mm, 35 mm, 40 mm"), error.permitted());
      assertTrue(RollerSeries.byOutsideDiameter(mm(35 + off), MeasureSystem.METRIC).isEmpty());
      assertTrue(RollerSeries.byStud(mm(30 + off), MeasureSystem.METRIC).isEmpty());
      assertTrue(RollerSeries.METRIC.withStud(mm(30 + off)).isEmpty());
    }
  }

  @Test
  void aStudOfTheOtherSystemIsNotFound() {
    assertEquals(List.of(), RollerSeries.byStud(inch("7/16"), MeasureSystem.METRIC));
    assertEquals(List.of(), RollerSeries.byStud(mm(12), MeasureSystem.INCH));
  }

  @Test
  void seatPracticesAreClassesOrDeviations() {
    assertTrue(RollerSeries.METRIC.seatPractices().get(0).toleranceClass());
    SeatPractice inch = RollerSeries.INCH_STANDARD_STUD.seatPractices().get(0);
    assertFalse(inch.toleranceClass());
    // 0.0005 in is 12.7 µm.
    assertEquals("+12.7/0 µm", inch.deviations().toString());
    assertEquals(new Deviations(um(-18), um(0)), Deviations.ofMicrometres(-18, 0));
    assertEquals("0/0 µm", new Deviations(um(0), um(0)).toString());
  }

  @Test
  void limitsOfSpeedOfTheThreeKinds() {
    // Linear motion and cam follower catalogue, d1·n with grease and with oil, for a stud of 10 mm.
    assertEquals(8400, SpeedLimit.greased(RollerKind.CAGED_NEEDLE, mm(10)).limit().rpm(), 1e-9);
    assertEquals(14_000, SpeedLimit.greased(RollerKind.CAGED_NEEDLE, mm(10)).withOil().limit().rpm(), 1e-9);
    assertEquals(4200, SpeedLimit.greased(RollerKind.FULL_COMPLEMENT_NEEDLE, mm(10)).limit().rpm(), 1e-9);
    assertEquals(7000, SpeedLimit.greased(RollerKind.FULL_COMPLEMENT_NEEDLE, mm(10)).withOil().limit().rpm(), 1e-9);
    assertEquals(6600, SpeedLimit.greased(RollerKind.DOUBLE_ROW_CYLINDRICAL, mm(10)).limit().rpm(), 1e-9);
    assertEquals(11_000, SpeedLimit.greased(RollerKind.DOUBLE_ROW_CYLINDRICAL, mm(10)).withOil().limit().rpm(), 1e-9);
    assertFalse(RollerKind.CAGED_NEEDLE.fullComplement());
    assertTrue(RollerKind.DOUBLE_ROW_CYLINDRICAL.fullComplement());
  }

  @Test
  void aLimitOfSpeedSaysHowItWasFound() {
    SpeedLimit open = SpeedLimit.greased(RollerKind.CAGED_NEEDLE, mm(16));
    assertEquals("Limit of speed, caged needle rollers, grease", open.explain().title());
    assertEquals("Limit of speed, caged needle rollers, oil", open.withOil().explain().title());
    assertEquals("(d1·n)/d1", open.explain().result().expression());
    assertEquals("0.1·(d1·n)/d1", open.withAxialLoad().explain().result().expression());
    assertEquals("d1·n = 84000 mm·rpm", open.explain().result().inputs().get(0));
    // One step open, two with seals: what the seals take is shown against the open roller.
    assertEquals(1, open.explain().steps().size());
    assertEquals(List.of(5250.0, 3675.0),
        open.withSeals().explain().steps().stream().map(s -> Math.rint(s.value())).toList());
    assertEquals("5250 rpm", open.toString());
    assertEquals(List.of(), open.withSeals().warnings());
    assertEquals(List.of(), open.withAxialLoad().warnings());
  }

  @Test
  void aMeasuredRollerListsItsDimensionsInTheOrderOfTheDrawing() {
    MeasuredRoller roller = MeasuredRoller.studOnly(mm(12)).threadLength(mm(13)).ringWidth(mm(14.02)).studLength(mm(25));
    assertEquals("ring width 14.02 mm, stud diameter 12 mm, stud length 25 mm, thread length 13 mm", roller.toString());
  }

  @Test
  void aDifferenceOfExactlyTheToleranceIsWithinIt() {
    // 37 mm against 38.1 mm (1-1/2 in), with a standard and a heavy stud; 35 mm is 2 mm off.
    Identification found = MeasuredRoller.outsideDiameter(mm(37)).identify(mm(1.1));
    assertEquals(2, found.candidates().size());
    assertTrue(MeasuredRoller.outsideDiameter(mm(37)).identify(mm(1.0999)).candidates().isEmpty());
    assertEquals(2, found.toString().split("\n", -1).length);
    assertTrue(found.toString().startsWith("38.1 mm"), found.toString());
    assertTrue(found.toString().contains("outside diameter 37 mm (table 38.1 mm, -1100.0 µm)"), found.toString());
    // 5 mm is the widest tolerance that is permitted.
    assertEquals(mm(5), MeasuredRoller.outsideDiameter(mm(37)).identify(mm(5)).tolerance());
  }

  @Test
  void warningsOfAnIdentificationNameWhatToDo() {
    Identification two = MeasuredRoller.studOnly(mm(10)).identify(mm(0.01));
    // 22 mm and 26 mm rings share the stud of 10 mm with its two threads: said once.
    assertEquals(List.of("thread-differs-by-practice", "several-sizes"), two.warnings().stream().map(Warning::code).toList());
    assertTrue(two.warnings().get(1).message().startsWith("2 sizes are within"), two.warnings().get(1).message());
    Identification none = MeasuredRoller.outsideDiameter(mm(37)).identify(mm(0.2));
    assertTrue(none.warnings().get(0).message().contains("the closest is 38.1 mm"), none.warnings().get(0).message());
    Identification both = MeasuredRoller.outsideDiameter(mm(19.02)).identify(mm(0.1));
    String message = both.warnings().get(0).message();
    assertTrue(message.contains("19 mm with M8x1.25") && message.contains("19.05 mm with 3/8-24"), message);
    assertFalse(both.warnings().stream().anyMatch(w -> w.code().equals("several-sizes")));
  }

  @Test
  void atTheMiddleOfTheStrokeTheWholeEccentricityIsTheArm() {
    // T = F·e: 100 N·mm over 0.5 mm is 200 N; at 45° the arm is shorter by √2.
    assertEquals(200, EccentricKernel.load(100, 0.5, 0), 1e-12);
    assertEquals(200 * Math.sqrt(2), EccentricKernel.load(100, 0.5, -Math.PI / 4), 1e-9);
    assertEquals(0.25, EccentricKernel.height(0.5, Math.PI / 6), 1e-15);
    assertEquals(0.5 * Math.sqrt(0.5), EccentricKernel.height(0.5, Math.PI / 4), 1e-15);
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import static holdfast.quantity.Units.deg;
import static holdfast.quantity.Units.kN;
import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.rpm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.Force;
import holdfast.quantity.InputException;
import holdfast.tables.Provenance;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where a clause of ISO 281 or ISO 76 is easily read in another way. */
class StandardsRoadTest {
  /**
   * Table 3 finds its rows by Fa/(Z Dw²) for angular contact: two rows share no axial load, so the same load on a ball finds
   * the same row for one row and for two.
   */
  @ParameterizedTest
  @CsvSource({"10, 1.4, 2.18", "15, 0.357, 2.28", "15, 5.35, 1.63"})
  void oneRowOfAPairCarriesTheWholeAxialLoad(double alpha, double relative, double printedY) {
    double z = 12;
    double dw = 9.525;
    double f0 = 15;
    // Fa/(Z Dw²) over the cosine is the head of the row.
    Force fa = new Force(relative * z * dw * dw * Math.cos(Math.toRadians(alpha)));
    Force oneRow = new Force(f0 * z * dw * dw * Math.cos(Math.toRadians(alpha)));
    LoadedBearing pair = LoadedBearing
        .of(BearingType.ANGULAR_CONTACT_BALL, deg(alpha), LoadRatings.radialBall(kN(30), oneRow.times(2))).withRows(2).withF0(f0);
    EquivalentLoad p = pair.dynamicLoad(new Force(1), fa);
    assertEquals(relative, p.relativeAxialLoad(), 1e-12);
    assertEquals(printedY, p.explain().steps().stream().filter(s -> s.symbol().equals("Y")).findFirst().orElseThrow().value(), 1e-9);
    assertTrue(p.explain().steps().get(0).text().contains("i f0 Fa"), p.explain().steps().get(0).text());
    // A tandem takes i = 1: load and rating of two are those of one, twice.
    LoadedBearing tandem = LoadedBearing
        .of(BearingType.ANGULAR_CONTACT_BALL, deg(alpha), LoadRatings.radialBall(kN(30), oneRow.times(2))).withF0(f0);
    assertEquals(relative, tandem.dynamicLoad(new Force(1), fa.times(2)).relativeAxialLoad(), 1e-12);
  }

  @Test
  void rowsOfARadialContactBearingShareTheAxialLoad() {
    LoadedBearing two = LoadedBearing
        .of(BearingType.DEEP_GROOVE_BALL, deg(0), LoadRatings.radialBall(kN(30), kN(20))).withRows(2).withF0(14);
    assertEquals(0.7, two.dynamicLoad(kN(1), kN(1)).relativeAxialLoad(), 1e-12);
    assertThrows(InputException.class, () -> EquivalentLoadKernel.relativeAxialLoad(BearingType.CYLINDRICAL_ROLLER, 1, 14, 1, 1));
  }

  /** ISO 281:2007, 9.3.3.3.4. */
  @Test
  void provenAdditivesRaiseTheContaminationFactorWithTheFilm() {
    Lubrication film = Lubrication.ofKappa(0.3, mm(50));
    Contamination clean = Contamination.of(Cleanliness.CIRCULATING_13_10);
    double atReal = clean.factor(0.3, mm(50));
    double atOne = clean.factor(1, mm(50));
    assertTrue(atReal >= 0.2 && atOne > 1.5 * atReal, atReal + " and " + atOne);
    LoadRatings ratings = new LoadRatings(BearingFamily.RADIAL_ROLLER, kN(30), kN(40), kN(1), OuterRing.HOUSED);
    ModifiedLife life = RatingLife.modified(ratings, kN(4), Reliability.L10, film.withProvenAdditives(), clean);
    double standard = LifeModificationKernel.radialRoller(1, atOne * 0.25);
    assertTrue(standard < 3, "the cap does not hide it: " + standard);
    assertEquals(standard, life.modification(), 1e-12);
    assertEquals(Provenance.PUBLISHED,
        life.explain().steps().stream().filter(s -> s.symbol().equals("aISO")).findFirst().orElseThrow().source().provenance());
    // The load that is allowed for that life is the load, fed back.
    double hours = life.millionRevolutions() * 1e6 / (60 * 500);
    Force back = RatingLife.allowableLoad(
        ratings, holdfast.quantity.Units.hours(hours), rpm(500), Reliability.L10, film.withProvenAdditives(), clean);
    assertEquals(4000, back.newton(), 1e-6);
  }

  /** Single-direction thrust bearings: 0.44 cot α and 0.67 cot α of ISO 76. */
  @Test
  void beyondItsRadialShareTheStaticLoadOfAThrustBearingIsOutsideTheStandard() {
    LoadedBearing oneWay = LoadedBearing.of(BearingType.THRUST_BALL, deg(60), LoadRatings.thrustBall(kN(30), kN(60)));
    double cot = 1 / Math.tan(Math.toRadians(60));
    assertEquals(List.of(), shares(oneWay, 0.43 * cot));
    assertEquals(List.of("radial-share-high"), shares(oneWay, 0.66 * cot));
    assertEquals(List.of("radial-share-outside-standard"), shares(oneWay, 0.68 * cot));
    assertEquals(List.of(), shares(oneWay.withRows(2), 0.68 * cot), "double-direction bearings have no such limit");
  }

  private static List<String> shares(LoadedBearing bearing, double ratio) {
    return bearing.staticLoad(kN(10).times(ratio), kN(10), Running.NORMAL).warnings().stream()
        .map(w -> w.code()).filter(code -> code.startsWith("radial-share")).toList();
  }

  @Test
  void threeThirdsWrittenWithThreeDecimalsAreTheWhole() {
    LoadSpectrum thirds = LoadSpectrum.builder()
        .step(kN(1), rpm(100), 0.333).step(kN(2), rpm(100), 0.333).step(kN(3), rpm(100), 0.333).build();
    LoadSpectrum exact = LoadSpectrum.builder()
        .step(kN(1), rpm(100), 1.0 / 3).step(kN(2), rpm(100), 1.0 / 3).step(kN(3), rpm(100), 1.0 / 3).build();
    assertEquals(exact.meanLoad(BearingFamily.RADIAL_BALL).newton(), thirds.meanLoad(BearingFamily.RADIAL_BALL).newton(), 1e-9);
    assertEquals(1, thirds.steps().stream().mapToDouble(LoadSpectrum.Step::share).sum(), 1e-15);
    assertThrows(InputException.class, () -> LoadSpectrum.builder().step(kN(1), rpm(100), 0.5).step(kN(2), rpm(100), 0.49).build());
  }

  @Test
  void whatIsPrintedWithTheTableIsNotMarkedRecalled() throws NoSuchMethodException {
    var method = StaticLoadKernel.class.getMethod("greatestElementLoad", double.class, double.class, double.class);
    assertEquals(Provenance.PUBLISHED, method.getAnnotation(holdfast.tables.Source.class).provenance());
    var additives = LifeModificationKernel.class.getMethod(
        "withAdditives", BearingFamily.class, double.class, double.class, double.class, double.class);
    assertEquals(Provenance.PUBLISHED, additives.getAnnotation(holdfast.tables.Source.class).provenance());
  }
}

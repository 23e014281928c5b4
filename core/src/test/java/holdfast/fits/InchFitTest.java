// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import static holdfast.quantity.KnownUnits.THOU;
import static holdfast.quantity.Units.inch;
import static holdfast.quantity.Units.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import holdfast.trace.Derivation;
import holdfast.trace.Step;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class InchFitTest {
  private static final List<String> TABLES =
      List.of(
          "running-and-sliding", "locational-clearance", "locational-transition", "locational-interference",
          "force-and-shrink");

  @Test
  void everyRowIsFoundOverItsLowerAndUpToItsUpperEnd() {
    int rows = 0;
    double[] d = new double[4];
    for (String name : TABLES) {
      Table table = TableSet.bundled().table("fits/ansi-b4.1/1967/" + name);
      for (int row = 0; row < table.size(); row++) {
        rows++;
        int code = InchFitClass.of(table.text(row, "class")).code();
        double from = table.number(row, "over_in");
        double to = table.number(row, "up_to_in");
        for (double size : new double[] {Math.nextUp(from * 25.4) + 1e-9, (from + to) / 2 * 25.4, to * 25.4, inch(to).mm()}) {
          InchLimitsKernel.fit(size, code, d);
          String place = table.address(row) + " at " + size;
          assertEquals(table.number(row, "hole_upper"), d[0], place);
          assertEquals(table.number(row, "hole_lower"), d[1], place);
          assertEquals(table.number(row, "shaft_upper"), d[2], place);
          assertEquals(table.number(row, "shaft_lower"), d[3], place);
          assertEquals(d[0] - d[3], InchLimitsKernel.maximumClearance(size, code));
          assertEquals(d[1] - d[2], InchLimitsKernel.minimumClearance(size, code));
        }
      }
    }
    assertEquals(492, rows);
  }

  @Test
  void everyStandardToleranceIsFound() {
    Table table = TableSet.bundled().table("fits/ansi-b4.1/1967/standard-tolerances");
    for (int row = 0; row < table.size(); row++) {
      AnsiGrade grade = AnsiGrade.of(Integer.parseInt(table.text(row, "grade")));
      Length end = inch(table.number(row, "up_to_in"));
      Length start = inch(table.number(row, "over_in")).plus(mm(1e-6));
      for (Length size : List.of(start, end)) {
        assertEquals(table.number(row, "value"), grade.tolerance(size).in(THOU), 1e-12, table.address(row));
        assertEquals(end.mm() < 501, grade.isAgreed(size), table.address(row));
        assertEquals(table.address(row), grade.explain(size).result().expression());
        assertEquals(table.number(row, "value"), grade.explain(size).result().value());
      }
    }
    assertEquals(210, table.size());
    assertEquals("grade 7", AnsiGrade.of(7).toString());
    assertEquals(7, AnsiGrade.GRADE_7.number());
  }

  @Test
  void codesFollowTheOrderOfTheClasses() {
    int next = 0;
    for (InchFitClass fit : InchFitClass.values()) {
      assertEquals(next, fit.code());
      assertEquals(fit, InchFitClass.at(next++));
    }
    assertEquals("H7", InchFitClass.FN2.holeZone());
    assertEquals("s6", InchFitClass.FN2.shaftZone());
    assertEquals("", InchFitClass.FN1.shaftZone());
    assertEquals("force and shrink fits", InchFitClass.FN2.family().toString());
    assertEquals("medium drive fit", InchFitClass.FN2.description());
  }

  @Test
  void textGoesToTheInchTables() {
    Fit fit = Fit.of(inch("5/8"), "FN2");
    assertEquals("0.625 in FN2: interference fit, 0.0005 in … 0.0016 in interference (12.7 µm … 40.64 µm)", fit.toString());
    assertEquals(
        "0.625 in FN2 hole: +0.0007 in / 0.0000 in, 0.6250 in … 0.6257 in (15.875 mm … 15.89278 mm)", fit.hole().toString());
    assertEquals(
        "0.625 in FN2 shaft: +0.0016 in / +0.0012 in, 0.6262 in … 0.6266 in (15.90548 mm … 15.91564 mm)",
        fit.shaft().toString());
    for (String text : List.of(" FN2 ", "FN 2", "fn2", "Fn 2")) {
      assertEquals(fit, Fit.of(inch("5/8"), text), text);
    }
    for (String text : List.of("5/8 in FN2", "0.625 in FN 2", "15.875 mm FN2", "5/8\" FN2", "5/8 in  fn2 ")) {
      assertEquals(fit, Fit.of(text), text);
    }
    assertEquals(Fit.of(inch("1-1/2"), "RC5"), Fit.of("1-1/2 in RC 5"));
    assertEquals("25 H7/p6: interference fit, 1 µm … 35 µm interference", Fit.of("25 H7/p6").toString());
  }

  @Test
  void fifthDecimalIsPrintedWhereItIsNeeded() {
    assertEquals(
        "0.3 in LT2: transition fit, 0.0003 in interference … 0.0012 in clearance (7.62 µm … 30.48 µm)",
        Fit.of(inch("0.3"), "LT2").toString());
    assertEquals(
        "0.1 in RC1: clearance fit, 0.0001 in … 0.00045 in clearance (2.54 µm … 11.43 µm)",
        Fit.of(inch("0.1"), "RC1").toString());
    assertEquals("0.1 in LT1 shaft: +0.00012 in / -0.00012 in, 0.09988 in … 0.10012 in (2.53695 mm … 2.54305 mm)",
        Fit.of(inch("0.1"), "LT1").shaft().toString());
  }

  @Test
  void contactWithoutClearanceIsAnInterferenceFit() {
    Fit fit = Fit.of(inch("0.1"), "LN1");
    assertEquals(FitKind.INTERFERENCE, fit.kind());
    assertEquals(0, fit.maximumClearance().mm());
  }

  @ParameterizedTest
  @ValueSource(strings = {"FN7", "FN0", "RC10", "LC12", "LT7", "LN4", "FN", "FN22", "FN2/RC3", "FN2x", "FN-2", "RC 5.0", "LN١"})
  void unknownClassListsTheKnownOnes(String text) {
    InputException e = assertThrows(InputException.class, () -> Fit.of(inch("5/8"), text));
    assertEquals(
        "class of the inch fit ('" + text + "') must be RC1 to RC9, LC1 to LC11, LT1 to LT6, LN1 to LN3 or FN1 to FN5; "
            + "ANSI B4.1-1967 has no other classes",
        e.getMessage());
  }

  @Test
  void sizesOutsideTheRowsOfAClassAreRefused() {
    InputException e = assertThrows(InputException.class, () -> Fit.of(inch("5/8"), "FN3"));
    assertEquals(
        "nominal size D (0.625 in, 15.875 mm) must be over 0.95 in up to 19.69 in; ANSI B4.1-1967, fits FN3", e.getMessage());
    e = assertThrows(InputException.class, () -> Fit.of(inch("0.24"), "LT3"));
    assertTrue(e.getMessage().contains("over 0.24 in up to 19.69 in"), e.getMessage());
    assertThrows(InputException.class, () -> Fit.of(inch("0.95"), "FN3"));
    assertEquals("FN3", Fit.of(inch("0.951"), "FN3").designation());
    assertThrows(InputException.class, () -> Fit.of(inch("19.7"), "RC1"));
    assertThrows(InputException.class, () -> Fit.of(inch("0"), "RC1"));
    assertThrows(InputException.class, () -> Fit.of(inch("-1"), "RC1"));
    e = assertThrows(InputException.class, () -> InchLimitsKernel.fit(Double.NaN, 0, new double[4]));
    assertTrue(e.getMessage().contains("over 0 in up to 19.69 in"), e.getMessage());
    assertThrows(InputException.class, () -> InchLimitsKernel.fit(10, 34, new double[4]));
    assertThrows(InputException.class, () -> InchLimitsKernel.fit(10, -1, new double[4]));
    assertThrows(InputException.class, () -> AnsiGrade.GRADE_7.tolerance(inch("200.1")));
    e = assertThrows(InputException.class, () -> AnsiGrade.of(3));
    assertEquals("tolerance grade (3) must be from 4 to 13; ANSI B4.1-1967, table 1", e.getMessage());
    assertThrows(InputException.class, () -> InchLimitsKernel.standardTolerance(10, 14));
    assertThrows(InputException.class, () -> InchLimitsKernel.standardTolerance(Double.NaN, 7));
  }

  @Test
  void theStandardTolerancesRunOverZeroUpTo200Inches() {
    assertEquals(AnsiGrade.GRADE_4, AnsiGrade.of(4));
    assertEquals(AnsiGrade.GRADE_13, AnsiGrade.of(13));
    assertEquals(AnsiGrade.GRADE_7.tolerance(inch("199")), AnsiGrade.GRADE_7.tolerance(inch("200")));
    InputException e = assertThrows(InputException.class, () -> AnsiGrade.GRADE_7.tolerance(inch("0")));
    assertEquals("nominal size D (0 in, 0 mm) must be over 0 in up to 200 in; ANSI B4.1-1967, table 1", e.getMessage());
  }

  @ParameterizedTest
  @ValueSource(strings = {"FN2", "0.625 FN2", "5/8 FN2", "0,625 in FN2", "5/8 in FN7", "5/8 inches FN2", "x FN2", "30 in FN2"})
  void sizedTextNeedsAUnitAndAKnownClass(String text) {
    assertThrows(InputException.class, () -> Fit.of(text));
  }

  @Test
  void derivationNamesTheCellsAndEndsWithTheResult() {
    Fit fit = Fit.of(inch("5/8"), "FN2");
    Derivation d = fit.explain();
    List<String> expressions = d.steps().stream().map(Step::expression).toList();
    assertEquals("ANSI B4.1-1967, force and shrink fits, FN2, over 0.56 up to 0.71 in", expressions.get(0));
    assertEquals("ES - ei", expressions.get(4));
    assertEquals("thou", d.result().unit());
    assertEquals(fit.minimumClearance().in(THOU), d.result().value());
    assertTrue(d.toString().contains("es = +1.6 thou"), d.toString());
    assertEquals(List.of("ES", "EI"), fit.hole().explain().steps().stream().map(Step::symbol).toList());
    Derivation shaft = fit.shaft().explain();
    assertEquals(List.of("es", "ei"), shaft.steps().stream().map(Step::symbol).toList());
    assertEquals(fit.shaft().lower().in(THOU), shaft.result().value(), 1e-12);
  }

  @Test
  void recalledRowsWarnAndPrintedRowsDoNot() {
    assertEquals(List.of(), Fit.of(inch("5/8"), "FN2").warnings());
    List<String> warned = Fit.of(inch("4"), "FN2").warnings().stream().map(w -> w.code()).toList();
    assertEquals(List.of("recalled-cell"), warned);
    assertTrue(Fit.of(inch("4"), "FN2").warnings().get(0).message().contains("FN2, over 3.94 up to 4.73 in: recalled"));
  }

  @Test
  void inchFitsTravel() throws IOException, ClassNotFoundException {
    Fit fit = Fit.of(inch("5/8"), "FN2");
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(fit);
    }
    try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      assertEquals(fit, in.readObject());
    }
  }

  @Test
  void fiveFamiliesAndNoOtherPairOfLetters() {
    List<String> families = List.of("RC", "LC", "LT", "LN", "FN");
    for (char first = 'A'; first <= 'Z'; first++) {
      for (char second = 'A'; second <= 'Z'; second++) {
        String pair = "" + first + second;
        assertEquals(families.contains(pair), InchText.isInchFit(" " + pair.toLowerCase(Locale.ROOT) + "1"), pair);
        assertEquals(families.contains(pair), InchText.endsWithInchFit("1 in " + pair + "1 "), pair);
      }
    }
    assertTrue(InchText.endsWithInchFit("FN2"));
    assertFalse(InchText.endsWithInchFit("xFN2"));
    assertFalse(InchText.isInchFit("F"));
    InputException e = assertThrows(InputException.class, () -> InchFitClass.of(" "));
    assertEquals("the text is empty", e.reason());
  }

  @Test
  void isoFitsAreNotTakenForInchFits() {
    assertFalse(InchText.isInchFit("H7/p6"));
    assertFalse(InchText.endsWithInchFit("25 H7/p6"));
    assertFalse(InchText.endsWithInchFit(""));
    assertFalse(InchText.isInchFit(""));
    for (DeviationLetter letter : DeviationLetter.values()) {
      assertFalse(InchText.isInchFit(letter.name() + "7/h6"), letter.name());
    }
    assertNotEquals(Fit.of(inch("5/8"), "H7/s6"), Fit.of(inch("5/8"), "FN2"));
  }
}

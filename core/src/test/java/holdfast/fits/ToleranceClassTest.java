// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.um;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ToleranceClassTest {
  @ParameterizedTest
  @CsvSource({
    // Delta rule, examples found in reprints.
    "P7, 25, -14, -35",
    "N6, 65, -14, -33",
    "K7, 40, 7, -18",
    "M8, 150, 8, -55",
    "R7, 26, -20, -41",
    // Exception of M6, and its neighbours.
    "M6, 300, -9, -41",
    "M6, 250, -8, -37",
    "M6, 315.1, -10, -46",
    "M7, 300, 0, -52",
    // N above IT8.
    "N9, 25, 0, -52",
    "N9, 2, -4, -29",
    "N8, 25, -3, -36",
    // K above IT8 exists up to 3 mm only; no correction up to 3 mm.
    "K9, 3, 0, -25",
    "P7, 3, -6, -16",
    // P and later: the correction ends at IT7.
    "P8, 25, -22, -55",
    // No correction over 500 mm.
    "K6, 600, 0, -44",
    "P7, 600, -78, -148",
    // k of IT4 to IT7 and of other grades; k over 500 mm.
    "k3, 25, 4, 0",
    "k4, 25, 8, 2",
    "k7, 25, 23, 2",
    "k8, 25, 33, 0",
    "k6, 600, 44, 0",
    // j and J are tabulated.
    "j5, 25, 5, -4",
    "j6, 25, 9, -4",
    "j7, 25, 13, -8",
    "j8, 3, 8, -6",
    "J6, 25, 8, -5",
    "J7, 25, 12, -9",
    "J8, 25, 20, -13",
    // Half of an odd tolerance stays exact.
    "js7, 25, 10.5, -10.5",
    "JS01, 2, 0.15, -0.15",
    // Sub-ranges.
    "s6, 60, 72, 53",
    "s6, 70, 78, 59",
    "t6, 24.001, 54, 41",
    "cd5, 12, -70, -78",
    // Corrigendum 1 of 2006.
    "A13, 330, 2090, 1200",
    "f9, 300, -56, -186",
    "zc7, 500, 2663, 2600",
    "h18, 3150, 0, -33000"
  })
  void limitDeviationsAreThoseOfTheStandard(String toleranceClass, double size, double upper, double lower) {
    LimitDeviations deviations = ToleranceClass.of(toleranceClass).limitDeviations(mm(size));
    assertEquals(new LimitDeviations(um(lower), um(upper)), deviations);
  }

  @ParameterizedTest
  @CsvSource(delimiter = ';', value = {
    "j8; 25; over 0 mm up to 3 mm; j in the grades 5 to 7",
    "t6; 24; t6 for over 24 mm up to 3150 mm; one of the letters a b c cd",
    "v6; 14; v6 for over 14 mm up to 500 mm; Tables 2 to 5",
    "y6; 18; y6 for over 18 mm up to 500 mm; Tables 2 to 5",
    "j6; 600; j6 for over 0 mm up to 500 mm; d e f g h js k m n p r s t u",
    "J5; 25; J in the grades 6 to 8; Tables 2 to 5",
    "K9; 25; K in the grades 3 to 8; Tables 2 to 5",
    "K9; 600; K in the grades; sources differ: one catalogue prints ES = 0 for K in all grades up to IT16",
    "K2; 25; over 0 mm up to 3 mm and over 500 mm; Table 3 gives the correction Delta for IT3 to IT8",
    "ZC2; 25; ZC in the grades 3 to 18; correction Delta",
    "a9; 1; a9 for over 1 mm up to 500 mm; not used for sizes up to and including 1 mm",
    "B9; 1; B9 for over 1 mm up to 500 mm; not used for sizes up to and including 1 mm",
    "N9; 0.5; N in the grades 01 to 8; N above IT8 is not used",
    "H14; 1; H14 for over 1 mm up to 3150 mm; IT14 to IT18 are not used",
    "h0; 501; h0 for over 0 mm up to 500 mm; IT01 and IT0 up to 500 mm",
    "cd7; 60; cd7 for over 0 mm up to 50 mm; Tables 2 to 5"
  })
  void undefinedClassesSayWhatExists(String text, double size, String permitted, String also) {
    ToleranceClass toleranceClass = ToleranceClass.of(text);
    assertFalse(toleranceClass.isDefinedFor(mm(size)));
    InputException e = assertThrows(InputException.class, () -> toleranceClass.limitDeviations(mm(size)));
    assertEquals("tolerance class", e.parameter());
    assertTrue(e.getMessage().contains(permitted), e.getMessage());
    assertTrue(e.getMessage().contains(also), e.getMessage());
  }

  @ParameterizedTest
  @CsvSource({"0", "-25", "3150.0001", "4000"})
  void sizesOutsideTheTablesAreRefused(double size) {
    ToleranceClass h7 = ToleranceClass.of("H7");
    InputException e = assertThrows(InputException.class, () -> h7.limitDeviations(mm(size)));
    assertEquals("nominal size D", e.parameter());
    assertEquals("over 0 mm up to 3150 mm", e.permitted());
    assertTrue(e.reason().contains("ISO 286-1:2010"));
    assertThrows(InputException.class, () -> h7.isDefinedFor(mm(size)));
    assertThrows(InputException.class, () -> ToleranceGrade.IT7.tolerance(mm(size)));
  }

  @Test
  void notANumberIsRefusedByTheKernel() {
    int code = ToleranceClass.of("H7").code();
    assertThrows(InputException.class, () -> LimitDeviationsKernel.upper(Double.NaN, code));
    assertThrows(InputException.class, () -> LimitDeviationsKernel.lower(Double.POSITIVE_INFINITY, code));
    assertThrows(InputException.class, () -> LimitDeviationsKernel.upper(25, -1));
    assertThrows(InputException.class, () -> LimitDeviationsKernel.upper(25, 1120));
    assertThrows(InputException.class, () -> LimitDeviationsKernel.isDefined(25, 1120));
    assertThrows(InputException.class, () -> LimitDeviationsKernel.standardTolerance(25, 20));
    assertThrows(InputException.class, () -> LimitDeviationsKernel.standardTolerance(25, -1));
    assertThrows(InputException.class, () -> LimitDeviationsKernel.fit(Double.NaN, code, code, new double[4]));
    InputException places = assertThrows(InputException.class, () -> LimitDeviationsKernel.fit(25, code, code, new double[3]));
    assertEquals("4 or more", places.permitted());
    double[] two = {25, 26};
    assertThrows(InputException.class, () -> LimitDeviationsKernel.limits(two, code, new double[2], new double[1]));
    assertEquals(
        "array for the result (1 places) must be 2 or more; nothing is left out",
        assertThrows(InputException.class, () -> LimitDeviationsKernel.limits(two, code, new double[1], new double[2]))
            .getMessage());
  }

  @Test
  void boundarySizesBelongToTheRangeBelow() {
    assertEquals(um(25), ToleranceGrade.IT7.tolerance(mm(50)));
    assertEquals(um(30), ToleranceGrade.IT7.tolerance(new Length(Math.nextUp(50.0))));
    assertEquals(um(10), ToleranceGrade.IT7.tolerance(new Length(Double.MIN_VALUE)));
  }

  @Test
  void gradesAreReadWithOrWithoutPrefix() {
    assertEquals(ToleranceGrade.IT01, ToleranceGrade.of("IT01"));
    assertEquals(ToleranceGrade.IT18, ToleranceGrade.of(" 18 "));
    InputException e = assertThrows(InputException.class, () -> ToleranceGrade.of("IT19"));
    assertTrue(e.getMessage().contains("IT01, IT0 or IT1 to IT18"));
    assertEquals(ToleranceGrade.IT6, ToleranceGrade.IT7.finer());
    assertThrows(InputException.class, ToleranceGrade.IT01::finer);
    InputException undefined = assertThrows(InputException.class, () -> ToleranceGrade.IT0.tolerance(mm(501)));
    assertEquals("over 0 mm up to 500 mm", undefined.permitted());
    assertEquals("nominal size 501 mm", undefined.value());
    InputException small = assertThrows(InputException.class, () -> ToleranceGrade.IT14.tolerance(mm(1)));
    assertEquals("over 1 mm up to 3150 mm", small.permitted());
    assertEquals(um(250), ToleranceGrade.IT14.tolerance(mm(1.001)));
  }

  @Test
  void printsAsOnADrawing() {
    assertEquals("+6 µm / -15 µm", ToleranceClass.of("K7").limitDeviations(mm(25)).toString());
    assertEquals("25.000 mm … 25.021 mm", ToleranceClass.of("H7").limitsOfSize(mm(25)).toString());
    assertEquals("25 H7: +21 µm / 0 µm, 25.000 mm … 25.021 mm", ToleranceClass.of("H7").at(mm(25)).toString());
    assertEquals("25 js7: +10.5 µm / -10.5 µm, 24.9895 mm … 25.0105 mm", TolerancedSize.of(mm(25), "js7").toString());
  }

  @Test
  void lettersUpToHGiveClearance() {
    assertTrue(DeviationLetter.A.givesClearance() && DeviationLetter.H.givesClearance());
    assertFalse(DeviationLetter.JS.givesClearance());
  }

  @Test
  void mirrorsAndGradesChangeOnePartOfTheClass() {
    assertEquals("P7", ToleranceClass.of("p7").mirrored().toString());
    assertEquals("p6", ToleranceClass.of("p7").withGrade(ToleranceGrade.IT6).toString());
    assertEquals(ToleranceClass.of("JS7"), ToleranceClass.of("js7").mirrored());
    assertNotEquals(ToleranceClass.of("JS7"), ToleranceClass.of("js7"));
  }

  @Test
  void explanationNamesTheCellsAndEndsWithTheResult() {
    TolerancedSize k7 = TolerancedSize.of(mm(25), "K7");
    String text = k7.explain().toString();
    assertTrue(text.contains("ISO 286-1:2010, Table 1, over 18 up to 30 mm, IT7"), text);
    assertTrue(text.contains("Table 2, over 18 up to 30 mm, K, up to IT8"), text);
    assertTrue(text.contains("Delta for IT7"), text);
    assertEquals(-15, k7.explain().result().value(), 1e-9);
    assertTrue(k7.warnings().isEmpty());
    assertTrue(TolerancedSize.of(mm(25), "js7").explain().toString().contains("+IT7 / 2"));
    assertTrue(TolerancedSize.of(mm(300), "M6").explain().toString().contains("M, IT6"));
    assertFalse(TolerancedSize.of(mm(300), "M6").explain().toString().contains("Delta for"));
    assertTrue(TolerancedSize.of(mm(60), "s6").explain().toString().contains("over 50 up to 65 mm, s"));
  }

  @Test
  void recalledAndDoubtfulCellsWarn() {
    assertEquals("listed-cell", TolerancedSize.of(mm(25), "cd7").warnings().get(0).code());
    assertEquals("doubtful-cell", TolerancedSize.of(mm(380), "x7").warnings().get(0).code());
    assertEquals("recalled-cell", TolerancedSize.of(mm(1100), "h4").warnings().get(0).code());
  }

  @Test
  void roundedJsIsAnOptionWithALabel() {
    RoundedSymmetricClass rounded = RoundedSymmetricClass.of(ToleranceClass.of("JS7"));
    assertEquals("+10 µm / -10 µm", rounded.limitDeviations(mm(25)).toString());
    assertEquals("+12.5 µm / -12.5 µm", ToleranceClass.of("JS7").limitDeviations(mm(40)).toString());
    assertEquals("+12 µm / -12 µm", rounded.limitDeviations(mm(40)).toString());
    // An even tolerance is not changed.
    assertEquals("+15 µm / -15 µm", rounded.limitDeviations(mm(60)).toString());
    TolerancedSize size = rounded.at(mm(25));
    assertEquals("25 JS7 (1988, rounded): +10 µm / -10 µm, 24.990 mm … 25.010 mm", size.toString());
    assertEquals(-10, size.explain().result().value(), 1e-9);
    assertEquals("rounded-js", size.warnings().get(0).code());
    assertEquals("+55 µm / -55 µm", RoundedSymmetricClass.of(ToleranceClass.of("js11")).limitDeviations(mm(10.5)).toString());
    assertFalse(RoundedSymmetricClass.isRounded(ToleranceClass.of("js12")));
    ToleranceClass js6 = ToleranceClass.of("js6");
    InputException e = assertThrows(InputException.class, () -> RoundedSymmetricClass.of(js6));
    assertEquals("js or JS in the grades 7 to 11", e.permitted());
    assertThrows(InputException.class, () -> LimitDeviationsKernel.roundedHalf(25, 7));
  }
}

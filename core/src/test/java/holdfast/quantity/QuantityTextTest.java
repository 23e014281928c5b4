// SPDX-License-Identifier: Apache-2.0
package holdfast.quantity;

import static holdfast.quantity.KnownUnits.*;
import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How quantities are written and read. The tests run in a locale with a decimal comma. */
class QuantityTextTest {
  @Test
  void lengthsAsTheShopWritesThem() {
    assertEquals("21 µm", um(21).toString());
    assertEquals("0.5 µm", um(0.5).toString());
    assertEquals("12.5 µm", um(12.5).toString());
    assertEquals("-15 µm", um(-15).toString());
    assertEquals("25.4 mm", inch(1).toString());
    assertEquals("25.4 µm", thou(1).toString());
    assertEquals("6.35 µm", tenths(2.5).toString());
    assertEquals("0.1 mm", mm(0.1).toString());
    assertEquals("25.021 mm", mm(25.021).toString());
    assertEquals("3150 mm", mm(3150).toString());
    assertEquals("12000 mm", m(12).toString());
    assertEquals("0 mm", mm(-0.0).toString());
    assertEquals("0.1 mm", mm(0.1).minus(mm(1e-17)).toString());
  }

  @Test
  void lengthsInAWantedUnit() {
    assertEquals("1 thou", thou(1).exactly(THOU));
    assertEquals("2.5 tenth", tenths(2.5).exactly(TENTH));
    assertEquals("0.6250 in", inch("5/8").text(INCH, 4));
    assertEquals("15.875 mm", inch("5/8").exactly(MM));
    assertEquals("0.00 mm", mm(-0.001).text(MM, 2));
    assertEquals("1 in", mm(25.4).exactly(INCH));
  }

  @Test
  void bigAndSmallValues() {
    assertEquals("850 N", N(850).toString());
    assertEquals("12.35 kN", N(12345.6).toString());
    assertEquals("2500 kN", kN(2500).toString());
    assertEquals("0.002 N", N(0.002).toString());
    assertEquals("-4.448 kN", kip(-1).toString());
    assertEquals("500 N·mm", Nmm(500).toString());
    assertEquals("57.38 N·m", Nm(57.3829).toString());
    assertEquals("12000 N·m", Nm(12000).toString());
    assertEquals("640 MPa", MPa(640).toString());
    assertEquals("206 GPa", MPa(206000).toString());
    assertEquals("0.05 MPa", MPa(0.05).toString());
    assertEquals("689.5 MPa", ksi(100).toString());
    assertEquals("1.2 mrad", mrad(1.2).toString());
    assertEquals("30 °", deg(30).toString());
    assertEquals("20 °C", degF(68).toString());
    assertEquals("20.5 °C", degC(20.5).toString());
    assertEquals("0 °C", degC(-0.04).toString());
    assertEquals("11.5 µm/(m·K)", umPerMK(11.5).toString());
    assertEquals("1.5 kg", g(1500).toString());
    assertEquals("180 rpm", rpm(180).toString());
  }

  @Test
  void theLargerUnitStartsAtItsFirstWholeOne() {
    assertEquals("1 kN", N(1000).toString());
    assertEquals("1 N·m", Nmm(1000).toString());
    assertEquals("10 GPa", MPa(10000).toString());
    assertEquals("1 kg", g(1000).toString());
    assertEquals("3.5 g", g(3.5).toString());
    // 0.02 rad = 0.02 · 180/π = 1.1459 degrees
    assertEquals("1.146 °", mrad(20).toString());
  }

  @Test
  void belowAMicrometreTwoDigitsAreEnough() {
    assertEquals("0.12 µm", um(0.1234).toString());
    assertEquals("1.234 µm", um(1.234).toString());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1-1/2|1.5", "1 1/2|1.5", "5/8|0.625", ".6250|0.625", "0.625|0.625", "-5/8|-0.625", "-1-1/2|-1.5", "2|2", "2.|2",
        "+3/4|0.75", "1  1/4|1.25", "63/64|0.984375", "3/2|1.5", "1e-3|0.001",
      })
  void shopFractions(String text, double inches) {
    assertEquals(inches * 25.4, inch(text).mm(), 1e-13);
    assertEquals(inch(text), Length.parse(text + " in"));
    assertEquals(inch(text), Length.parse(text + "\""));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "", " ", "/", "5/", "/8", "5/0", "5/00", "1-5/0", "1 - 1/2", "1--1/2", "1-3/2", "1-8/8", "1-1/2-1/4", "five", "0x10", "1d",
        ".", "1.5/2", "5/8/2", "NaN", "Infinity", "1e999", "--1", "5 /8"
      })
  void whatIsNoNumberIsRefused(String text) {
    InputException e = assertThrows(InputException.class, () -> inch(text));
    assertTrue(e.parameter().equals("size in inches") || e.permitted().equals("a finite number"), e.getMessage());
  }

  @Test
  void nothingIsDividedByNothing() {
    InputException e = assertThrows(InputException.class, () -> inch("5/0"));
    assertEquals("size in inches", e.parameter());
    assertEquals("it cannot be read as a number", e.reason());
  }

  @ParameterizedTest
  @ValueSource(strings = {"25,4 mm", "1,000 mm", "25,4", ",5 in", "1.000,5 mm"})
  void commaIsRefusedAndNotGuessed(String text) {
    InputException e = assertThrows(InputException.class, () -> Length.parse(text));
    assertTrue(e.getMessage().contains("the decimal sign is a point") || e.getMessage().contains("the unit is missing"));
    assertEquals("length", e.parameter());
  }

  @Test
  void unknownUnitListsTheAcceptedOnes() {
    InputException e = assertThrows(InputException.class, () -> Length.parse("25 parsec"));
    assertEquals("'25 parsec'", e.value());
    assertEquals("a number and one of the units mm, µm, cm, m, in, thou, tenth, µin, ft", e.permitted());
    assertEquals("'parsec' is not one of them", e.reason());
    e = assertThrows(InputException.class, () -> Force.parse("12.5"));
    assertEquals("the unit is missing", e.reason());
    assertTrue(e.permitted().contains("kN, MN, lbf"), e.permitted());
    assertThrows(InputException.class, () -> Force.parse("12.5 mm"));
    assertThrows(InputException.class, () -> Force.parse("kN"));
    assertThrows(InputException.class, () -> Stress.parse("5 mpa"));
  }

  @Test
  void unitsThatStartWithADigitAreReadAfterANumber() {
    assertEquals(rpm(1500), RotationalSpeed.parse("1500 1/min"));
    assertEquals(umPerMK(11), ThermalExpansion.parse("11 1e-6/K"));
    assertEquals(umPerMK(11), ThermalExpansion.parse("11e-6 1/K"));
  }

  @Test
  void longTextIsRefusedWithoutDelay() {
    String text = "1".repeat(200_000) + ",";
    assertTimeoutPreemptively(Duration.ofSeconds(20), () -> assertThrows(InputException.class, () -> inch(text)));
    assertTimeoutPreemptively(Duration.ofSeconds(20), () -> assertThrows(InputException.class, () -> Length.parse(text)));
  }

  @Test
  void temperatureBelowAbsoluteZero() {
    assertEquals(-273.15, degC(-273.15).celsius());
    InputException e = assertThrows(InputException.class, () -> degC(-273.16));
    assertEquals("temperature (-273.16 °C) must be -273.15 °C or more; absolute zero", e.getMessage());
    assertThrows(InputException.class, () -> degF(-460));
    assertThrows(InputException.class, () -> degC(20).minus(kelvin(300)));
    assertEquals(degC(-5), degC(20).minus(kelvin(25)));
    assertThrows(InputException.class, () -> Temperature.parse("-300 °C"));
  }

  @Test
  void errorsReadAsOneSentence() {
    assertEquals("length (NaN mm) must be a finite number; NaN and infinity are refused",
        assertThrows(InputException.class, () -> mm(Double.NaN)).getMessage());
  }

  @Test
  void numbersHaveAPointAndNoExponent() {
    assertEquals("25.400", Numbers.fixed(25.4, 3));
    assertEquals("0.000", Numbers.fixed(-0.0004, 3));
    assertEquals("0.12", Numbers.fixed(0.125, 2));
    assertEquals("57.38", Numbers.significant(57.3829, 4));
    assertEquals("12000", Numbers.significant(12000, 4));
    assertEquals("123500", Numbers.significant(123456, 4));
    assertEquals("0", Numbers.significant(-0.0, 4));
    assertEquals("0.0000000001", Numbers.shortest(1e-10));
    assertEquals("0.3", Numbers.shortest(0.1 + 0.2));
    assertEquals("100000000000000000000", Numbers.shortest(1e20));
    assertEquals("NaN", Numbers.fixed(Double.NaN, 2));
    assertEquals("Infinity", Numbers.significant(Double.POSITIVE_INFINITY, 2));
  }
}

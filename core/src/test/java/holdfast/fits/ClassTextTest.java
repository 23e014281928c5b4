// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import static holdfast.quantity.Units.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ClassTextTest {
  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '"', value = {
    "7H| '7H' at character 1 stands where the letter code must stand",
    "H77| '77' at character 2 is not a grade",
    "H19| '19' at character 2 is not a grade",
    "H001| '001' at character 2 is not a grade",
    "H02| '02' at character 2 is not a grade",
    "\"\"| the text is empty",
    "\"  \"| the text is empty",
    "H| the text ends where the grade must stand",
    "Hx| 'Hx' at character 1 mixes capital and small letters",
    "Hh7| 'Hh' at character 1 mixes capital and small letters",
    "hH7| 'hH' at character 1 mixes capital and small letters",
    "I7| 'I' at character 1 is not a letter code; those are A B C CD",
    "w7| 'w' at character 1 is not a letter code; those are a b c cd",
    "CZ7| 'CZ' at character 1 is not a letter code; those are A B C CD",
    "abc7| 'abc' at character 1 is not a letter code",
    "H7/p6| '/p6' at character 3: this is a fit, not one class",
    "H7 p| 'p' at character 4 is too much",
    "H7.5| '.5' at character 3 is too much",
    "H-7| '-7' at character 2 stands where the grade must stand",
    "ı7| 'ı7' at character 1 stands where the letter code must stand",
    "H٧| '٧' at character 2 stands where the grade must stand"
  })
  void classErrorsSayWhere(String text, String reason) {
    InputException e = assertThrows(InputException.class, () -> ToleranceClass.of(text));
    assertEquals("tolerance class", e.parameter());
    assertEquals("'" + text + "'", e.value());
    assertTrue(e.permitted().contains("for example H7 or js6"), e.getMessage());
    assertTrue(e.reason().startsWith(reason), e.reason());
  }

  @ParameterizedTest
  @CsvSource(delimiter = ';', quoteCharacter = '"', value = {
    "H7; the text ends where the slash and the shaft class must stand",
    "H7/; the text ends where the letter code must stand",
    "H7/p; the text ends where the grade must stand",
    "H7-p6; '-p6' at character 3 stands where the slash",
    "H7/p6/; '/' at character 6 is too much",
    "p6/H7; 'p6' at character 1 is a shaft class; the hole stands first, in capitals",
    "H7/ P6; 'P6' at character 5 is a hole class; the shaft stands last, in small letters",
    "\"\"; the text is empty"
  })
  void fitErrorsSayWhere(String text, String reason) {
    InputException e = assertThrows(InputException.class, () -> Fit.of(mm(25), text));
    assertEquals("fit", e.parameter());
    assertTrue(e.permitted().contains("for example H7/p6"), e.getMessage());
    assertTrue(e.reason().startsWith(reason), e.reason());
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '"', value = {
    "25,5 H7/p6| '25,5' at character 1 is not a number; the decimal sign is a point",
    "1.2.3 H7/p6| '1.2.3' at character 1 is not a number",
    "1/2 H7/p6| '1/2' at character 1 is not a number",
    "H7/p6| 'H7/p6' at character 1 stands where the nominal size must stand",
    "\"\"| the text is empty",
    "25| the text ends where the letter code must stand",
    "25 mm| the text ends where the letter code must stand",
    "25 H77/p6| '77' at character 5 is not a grade"
  })
  void sizedFitErrorsSayWhere(String text, String reason) {
    InputException e = assertThrows(InputException.class, () -> Fit.of(text));
    assertEquals("fit", e.parameter());
    assertTrue(e.permitted().contains("for example 25 H7/p6"), e.getMessage());
    assertTrue(e.reason().startsWith(reason), e.reason());
  }

  @ParameterizedTest
  @ValueSource(strings = {"0 H7/p6", "-25 H7/p6", "3150.0001 H7/p6"})
  void sizesOutsideTheTablesAreRefused(String text) {
    InputException e = assertThrows(InputException.class, () -> Fit.of(text));
    assertEquals("nominal size D", e.parameter());
    assertEquals("over 0 mm up to 3150 mm", e.permitted());
  }

  @ParameterizedTest
  @ValueSource(strings = {"25 H7/p6", " 25H7/p6 ", "25 mm H7 / p6", "25.0 H 7/p 6", "25mm H7/p6"})
  void spacesAndUnitAreOptional(String text) {
    assertEquals(Fit.of(mm(25), "H7/p6"), Fit.of(text));
  }

  @Test
  void theDecimalSignIsBlamedOnlyWhereThereIsAComma() {
    InputException e = assertThrows(InputException.class, () -> Fit.of("1.2.3 H7/p6"));
    assertEquals("'1.2.3' at character 1 is not a number", e.reason());
  }

  @Test
  void namesKeepTheirTwoLetters() {
    assertEquals(DeviationLetter.ZC, ToleranceClass.of("ZC8").letter());
    assertEquals(DeviationLetter.Z, ToleranceClass.of("z8").letter());
    assertEquals(DeviationLetter.JS, ToleranceClass.of("js13").letter());
    assertEquals(DeviationLetter.CD, ToleranceClass.of("CD01").letter());
    assertEquals(ToleranceGrade.IT01, ToleranceClass.of("h01").grade());
    assertEquals(ToleranceGrade.IT0, ToleranceClass.of("h0").grade());
    assertEquals(ToleranceGrade.IT10, ToleranceClass.of("h10").grade());
  }
}

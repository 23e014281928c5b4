// SPDX-License-Identifier: Apache-2.0
package holdfast.quantity;

import static holdfast.quantity.Units.inch;
import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.um;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;

/** One length is one double, in whatever unit it was written. */
class EqualInEveryUnitTest {
  @Test
  void wholeMicrometresAreThousandthsOfAMillimetre() {
    for (int i = -1000; i <= 1_000_000; i++) {
      assertEquals(mm(i / 1000.0), um(i));
    }
  }

  @Test
  void everyDecimalFactorRoundsOnce() {
    for (Unit<Length> unit : KnownUnits.LENGTHS) {
      BigDecimal factor = BigDecimal.valueOf(unit.factor());
      for (int i = 1; i <= 10_000; i++) {
        assertEquals(factor.multiply(BigDecimal.valueOf(i)).doubleValue(), unit.of(i).mm(), i + " " + unit);
      }
    }
  }

  @Test
  void fractionsOfAnInchAreTheirMillimetres() {
    for (int n = 1; n <= 640; n++) {
      assertEquals(new BigDecimal("0.396875").multiply(BigDecimal.valueOf(n)).doubleValue(), inch(n / 64.0).mm(), n + "/64 in");
    }
  }

  @Test
  void aRefusalKeepsTheBeginningOfALongText() {
    String pasted = "7".repeat(100_000) + " parsecs";
    try {
      Length.parse(pasted);
      throw new AssertionError("taken");
    } catch (InputException e) {
      assertEquals(true, e.getMessage().length() < 5000, e.getMessage().length() + " characters");
      assertEquals(true, e.value().endsWith("… (100010 characters)"), e.value());
    }
  }

  @Test
  void aRefusedValueBesideItsLimitShowsItsDigits() {
    assertEquals("1.0000000000000002", value(Math.nextUp(1.0)));
    assertEquals("-4.9E-324", value(-Double.MIN_VALUE));
    assertEquals("1.5", value(1.5));
  }

  private static String value(double refused) {
    try {
      Check.within(refused, 0, 1, "share", "", "it is a part of a whole");
      throw new AssertionError("taken");
    } catch (InputException e) {
      return e.value();
    }
  }
}

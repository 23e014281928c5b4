// SPDX-License-Identifier: Apache-2.0
package holdfast.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Permitted ranges: the last number inside is returned as it is, its neighbour outside is refused and named. */
class CheckTest {
  private static final double MOST = Check.GREATEST;
  private static final double LEAST = Check.LEAST;

  private static void accepts(DoubleUnaryOperator check, double... values) {
    for (double value : values) {
      assertEquals(value, check.applyAsDouble(value));
    }
  }

  private static void refuses(DoubleUnaryOperator check, double... values) {
    for (double value : values) {
      InputException e = assertThrows(InputException.class, () -> check.applyAsDouble(value), () -> "accepted: " + value);
      assertEquals("x", e.parameter());
    }
    assertThrows(InputException.class, () -> check.applyAsDouble(Double.NaN));
    assertThrows(InputException.class, () -> check.applyAsDouble(Double.POSITIVE_INFINITY));
    assertThrows(InputException.class, () -> check.applyAsDouble(Double.NEGATIVE_INFINITY));
  }

  private static String message(DoubleUnaryOperator check, double value) {
    return assertThrows(InputException.class, () -> check.applyAsDouble(value)).getMessage();
  }

  @Test
  void finite() {
    DoubleUnaryOperator check = x -> Check.finite(x, "x", "mm");
    accepts(check, 0, Double.MIN_VALUE, MOST, -MOST);
    refuses(check, Math.nextUp(MOST), -Math.nextUp(MOST));
    assertEquals("x (NaN mm) must be a finite number; NaN and infinity are refused", message(check, Double.NaN));
  }

  @Test
  void nonZero() {
    DoubleUnaryOperator check = x -> Check.nonZero(x, "x", "", "why");
    accepts(check, LEAST, -LEAST, MOST, -MOST);
    refuses(check, 0, -0.0, Math.nextDown(LEAST), Math.nextUp(MOST));
    assertEquals("x (0) must be a finite number other than 0; why", message(check, 0));
  }

  @Test
  void positive() {
    DoubleUnaryOperator check = x -> Check.positive(x, "x", "N", "why");
    accepts(check, LEAST, MOST);
    refuses(check, 0, -LEAST, Math.nextDown(LEAST), Math.nextUp(MOST));
    assertEquals("x (0 N) must be over 0 N; why", message(check, 0));
  }

  @Test
  void notNegative() {
    DoubleUnaryOperator check = x -> Check.notNegative(x, "x", "N", "why");
    accepts(check, 0, Double.MIN_VALUE, MOST);
    refuses(check, -Double.MIN_VALUE, Math.nextUp(MOST));
    assertEquals("x (-1 N) must be 0 N or more; why", message(check, -1));
  }

  @Test
  void atLeast() {
    assertEquals(1, Check.atLeast(1, 1, "x", "", "why"));
    assertEquals("x (0.9 mm) must be 1 mm or more; why",
        assertThrows(InputException.class, () -> Check.atLeast(0.9, 1, "x", "mm", "why")).getMessage());
    assertThrows(InputException.class, () -> Check.atLeast(Double.NaN, 1, "x", "", "why"));
    assertThrows(InputException.class, () -> Check.atLeast(2e30, 1, "x", "", "why"));
  }

  @Test
  void within() {
    DoubleUnaryOperator check = x -> Check.within(x, 1, 7, "x", "", "why");
    accepts(check, 1, 7);
    refuses(check, Math.nextDown(1.0), Math.nextUp(7.0));
    assertEquals("x (8) must be from 1 to 7; why", message(check, 8));
    assertEquals(7, Check.within(7, 7, 7, "x", "", ""));
  }

  @Test
  void overUpTo() {
    DoubleUnaryOperator check = x -> Check.overUpTo(x, 1, 3150, "x", "mm", "ISO 286-1:2010, Table 1");
    accepts(check, Math.nextUp(1.0), 3150);
    refuses(check, 1, Math.nextUp(3150.0));
    assertEquals("x (1 mm) must be over 1 mm up to 3150 mm; ISO 286-1:2010, Table 1", message(check, 1));
  }
}

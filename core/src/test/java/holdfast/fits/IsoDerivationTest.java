// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import static holdfast.quantity.Units.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.trace.Step;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The cells behind limit deviations, and how they combine; values as printed in ISO 286-1. */
class IsoDerivationTest {
  private static List<String> lines(double size, String toleranceClass) {
    return TolerancedSize.of(mm(size), toleranceClass).explain().steps().stream().map(IsoDerivationTest::line).toList();
  }

  private static String line(Step s) {
    return s.symbol() + ", " + s.meaning() + " = " + s.expression() + " " + s.inputs() + " = " + Math.rint(s.value() * 100) / 100;
  }

  @Test
  void shaftFromItsLowerDeviation() {
    assertEquals(
        List.of(
            "IT6, standard tolerance = ISO 286-1:2010, Table 1, over 18 up to 30 mm, IT6 [] = 13.0",
            "ei, fundamental deviation (lower limit deviation) = ISO 286-1:2010, Table 5, over 18 up to 30 mm, p [] = 22.0",
            "es, upper limit deviation = ei + IT6 [IT6 = 13 µm] = 35.0",
            "ei, lower limit deviation = as tabulated [] = 22.0"),
        lines(25, "p6"));
  }

  @Test
  void shaftFromItsUpperDeviation() {
    assertEquals(
        List.of(
            "es, fundamental deviation (upper limit deviation) = ISO 286-1:2010, Table 4, over 18 up to 30 mm, g [] = -7.0",
            "es, upper limit deviation = as tabulated [] = -7.0",
            "ei, lower limit deviation = es - IT6 [IT6 = 13 µm] = -20.0"),
        lines(25, "g6").subList(1, 4));
  }

  @Test
  void holeWithTheCorrection() {
    assertEquals(
        List.of(
            "IT7, standard tolerance = ISO 286-1:2010, Table 1, over 18 up to 30 mm, IT7 [] = 21.0",
            "ES_0, fundamental deviation (upper limit deviation) before the correction"
                + " = ISO 286-1:2010, Table 2, over 18 up to 30 mm, K, up to IT8 [] = -2.0",
            "Delta, correction of the hole = ISO 286-1:2010, Table 3, values of Delta, over 18 up to 30 mm, Delta for IT7 [] = 8.0",
            "ES, upper limit deviation = ES_0 + Delta [] = 6.0",
            "EI, lower limit deviation = ES - IT7 [IT7 = 21 µm] = -15.0"),
        lines(25, "K7"));
  }

  @Test
  void symmetricClassFromItsTolerance() {
    assertEquals(
        List.of(
            "es, upper limit deviation = +IT7 / 2 [IT7 = 21 µm] = 10.5",
            "ei, lower limit deviation = -IT7 / 2 [IT7 = 21 µm] = -10.5"),
        lines(25, "js7").subList(1, 3));
  }

  /** M6 over 250 up to 315 mm has a row of its own; its neighbours M5 and M7 follow the general rule. */
  @Test
  void anExceptionHoldsForItsGradeOnly() {
    assertTrue(lines(300, "M6").get(1).endsWith("over 250 up to 315 mm, M, IT6 [] = -9.0"), lines(300, "M6").toString());
    for (String neighbour : List.of("M5", "M7")) {
      assertTrue(lines(300, neighbour).get(1).endsWith("over 250 up to 315 mm, M, up to IT8 [] = -20.0"), neighbour);
    }
  }

  @Test
  void aSizeOnTheEndOfARangeBelongsToIt() {
    assertTrue(lines(30, "p6").get(1).contains("over 18 up to 30 mm"), lines(30, "p6").toString());
    assertTrue(lines(18, "p6").get(1).contains("over 10 up to 18 mm"), lines(18, "p6").toString());
  }

  @Test
  void everyWeakCellUsedWarns() {
    assertEquals(
        List.of("doubtful-cell: ISO 286-1:2010, Table 3, over 200 up to 225 mm, U, up to IT7: reprints differ"),
        TolerancedSize.of(mm(210), "U7").warnings().stream()
            .map(w -> w.code() + ": " + w.message().replaceAll("(reprints differ).*", "$1")).toList());
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.rollers;

import static holdfast.quantity.Units.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class IdentificationTest {
  private static List<String> codes(Identification found) {
    return found.warnings().stream().map(w -> w.code()).toList();
  }

  @Test
  void aWornRollerIsFoundWithItsDifferences() {
    Identification found = MeasuredRoller.outsideDiameter(mm(34.93)).stud(mm(15.99)).identify(mm(0.1));
    assertTrue(found.unique());
    Candidate only = found.candidates().get(0);
    assertEquals(mm(35), only.size().outsideDiameter());
    assertEquals(0.07, only.greatestDifference().mm(), 1e-12);
    assertEquals("stud diameter 15.99 mm (table 16 mm, -10.0 µm)", only.differences().get(1).toString());
    assertEquals(List.of(), codes(found));
  }

  @Test
  void metricAndInchSizesThatAreAlikeAreBothReturnedAndWarned() {
    Identification found = MeasuredRoller.outsideDiameter(mm(19.02)).identify(mm(0.1));
    assertEquals(3, found.candidates().size());
    assertTrue(codes(found).contains("metric-and-inch"));
    assertTrue(found.threads().contains("M8x1.25") && found.threads().contains("3/8-24"));
  }

  @Test
  void aTenMillimetreStudWarnsOfItsTwoPitches() {
    Identification found = MeasuredRoller.outsideDiameter(mm(22)).ringWidth(mm(12)).stud(mm(10)).identify(mm(0.1));
    assertTrue(found.unique());
    assertEquals(List.of("M10x1", "M10x1.25"), List.copyOf(found.threads()));
    assertEquals(List.of("thread-differs-by-practice"), codes(found));
    assertTrue(found.warnings().get(0).message().contains("M10x1 and with M10x1.25"));
  }

  @Test
  void oneStudForTwoRingsAsksForMore() {
    Identification found = MeasuredRoller.studOnly(mm(12)).studLength(mm(25)).threadLength(mm(13)).identify(mm(0.05));
    assertEquals(2, found.candidates().size());
    assertEquals(List.of("several-sizes"), codes(found));
    assertFalse(found.unique());
  }

  @Test
  void nothingWithinToleranceNamesTheClosest() {
    Identification found = MeasuredRoller.outsideDiameter(mm(37)).identify(mm(0.2));
    assertTrue(found.candidates().isEmpty());
    assertEquals(List.of("no-size-within-tolerance"), codes(found));
    assertEquals(38.1, found.closest().size().outsideDiameter().mm());
    assertEquals("no tabulated size within 0.2 mm", found.toString());
  }

  @Test
  void refusesMeasurementsAndTolerancesThatCannotBe() {
    InputException size = assertThrows(InputException.class, () -> MeasuredRoller.outsideDiameter(mm(0)));
    assertEquals("outside diameter (0 mm) must be over 0 mm; it is a measured dimension", size.getMessage());
    MeasuredRoller roller = MeasuredRoller.outsideDiameter(mm(35));
    InputException tolerance = assertThrows(InputException.class, () -> roller.identify(mm(6)));
    assertEquals("over 0 mm up to 5 mm", tolerance.permitted());
    assertThrows(InputException.class, () -> roller.identify(mm(0)));
  }

  @Property
  void everySizeIsFoundFromItsOwnDimensions(
      @ForAll @IntRange(min = 0, max = 67) int index, @ForAll @Scale(4) @DoubleRange(min = -0.04, max = 0.04) double error) {
    RollerSize size = RollerSeries.all().get(index);
    Length off = mm(error);
    Identification found =
        MeasuredRoller.outsideDiameter(size.outsideDiameter().plus(off))
            .ringWidth(size.ringWidth().plus(off))
            .stud(size.stud().diameter().plus(off))
            .studLength(size.stud().length().plus(off))
            .identify(mm(0.05));
    assertTrue(found.candidates().stream().anyMatch(c -> c.size().equals(size)));
  }

  @Property
  void candidatesAreWithinTheToleranceAndInOrder(
      @ForAll @Scale(4) @DoubleRange(min = 5, max = 200) double diameter, @ForAll @Scale(4) @DoubleRange(min = 0.001, max = 5) double tolerance) {
    Identification found = MeasuredRoller.outsideDiameter(mm(diameter)).identify(mm(tolerance));
    double last = 0;
    for (Candidate candidate : found.candidates()) {
      double d = candidate.greatestDifference().mm();
      assertTrue(d <= tolerance * (1 + 1e-9) && d >= last);
      last = d;
    }
    long expected =
        RollerSeries.all().stream()
            .filter(s -> Math.abs(mm(diameter).minus(s.outsideDiameter()).mm()) <= tolerance * (1 + 1e-9))
            .count();
    assertEquals(expected, found.candidates().size());
  }
}

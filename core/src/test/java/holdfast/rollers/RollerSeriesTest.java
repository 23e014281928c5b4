// SPDX-License-Identifier: Apache-2.0
package holdfast.rollers;

import static holdfast.quantity.Units.inch;
import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.um;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import holdfast.threads.ScrewThread;
import java.util.List;
import org.junit.jupiter.api.Test;

class RollerSeriesTest {
  @Test
  void threeSeriesAreTabulated() {
    assertEquals(18, RollerSeries.METRIC.sizes().size());
    assertEquals(25, RollerSeries.INCH_STANDARD_STUD.sizes().size());
    assertEquals(25, RollerSeries.INCH_HEAVY_STUD.sizes().size());
    assertEquals(68, RollerSeries.all().size());
  }

  @Test
  void aSizeIsFoundByItsOutsideDiameter() {
    RollerSize size = RollerSeries.METRIC.size(mm(35));
    assertEquals("35 mm × 18 mm, stud 16 mm × 32.5 mm, M16x1.5 (metric)", size.toString());
    assertEquals(15.5, size.stud().shankLength().mm(), 1e-12);
    assertEquals("0/-18 µm", size.tolerances().stud().toString());
    assertEquals(5, size.agreeingDocuments());
    assertEquals(27.6, size.safeFaceDiameter().mm());
    assertEquals(18, size.innerRaceway().orElseThrow().mm());
    assertEquals(52, size.overallLength().orElseThrow().mm());
    assertEquals(8, size.holes().radialPosition().orElseThrow().mm());
  }

  @Test
  void inchDiametersComeWithBothStuds() {
    List<RollerSize> sizes = RollerSeries.byOutsideDiameter(inch("1-1/2"), MeasureSystem.INCH);
    assertEquals(List.of("5/8-18", "7/8-14"), sizes.stream().map(s -> s.stud().threads().get(0)).toList());
    assertEquals("+25/0 µm", sizes.get(0).tolerances().stud().toString());
    assertTrue(RollerSeries.byOutsideDiameter(mm(35), MeasureSystem.INCH).isEmpty());
    // 9/16 in is 14.2875 mm, printed 14.287 mm.
    assertEquals(2, RollerSeries.byOutsideDiameter(inch("9/16"), MeasureSystem.INCH).size());
  }

  @Test
  void studsAreSharedByTwoOrThreeSizes() {
    assertEquals(3, RollerSeries.byStud(mm(30), MeasureSystem.METRIC).size());
    assertEquals(4, RollerSeries.byStud(inch("7/16"), MeasureSystem.INCH).size());
    assertEquals(2, RollerSeries.INCH_HEAVY_STUD.withStud(inch("7/16")).size());
    assertTrue(RollerSeries.byStud(mm(7), MeasureSystem.METRIC).isEmpty());
  }

  @Test
  void anUnknownSizeNamesThoseThatExist() {
    InputException error = assertThrows(InputException.class, () -> RollerSeries.METRIC.size(mm(36)));
    assertEquals("outside diameter D", error.parameter());
    assertTrue(error.permitted().contains("35 mm, 40 mm"), error.permitted());
  }

  @Test
  void everyMetricThreadIsKnownAndFitsItsStud() {
    for (RollerSize size : RollerSeries.METRIC.sizes()) {
      for (String designation : size.stud().threads()) {
        assertEquals(size.stud().diameter().mm(), ScrewThread.of(designation).majorDiameter().mm(), 1e-9, size.toString());
      }
    }
  }

  @Test
  void everyRowNamesItsDocumentsAndStaysInsideTheRing() {
    for (RollerSize size : RollerSeries.all()) {
      assertTrue(size.agreeingDocuments() >= 1, size.toString());
      boolean single = size.note().equals("one catalogue only");
      assertEquals(single, size.agreeingDocuments() == 1, size.toString());
      assertTrue(size.stud().diameter().compareTo(size.outsideDiameter()) < 0);
      assertTrue(size.stud().shankLength().mm() > 0);
      assertTrue(size.safeFaceDiameter().compareTo(size.stud().diameter()) > 0);
      assertTrue(size.safeFaceDiameter().compareTo(size.outsideDiameter()) < 0);
    }
  }

  @Test
  void seatPracticesOfTheTwoSystems() {
    assertEquals("[H7]", RollerSeries.METRIC.seatPractices().toString());
    assertEquals("[nominal, +0.0005/0 in, F7]", RollerSeries.INCH_HEAVY_STUD.seatPractices().toString());
  }

  @Test
  void deviationsInTheWrongOrderAreRefused() {
    InputException error = assertThrows(InputException.class, () -> new Deviations(um(1), um(0)));
    assertEquals("upper deviation", error.parameter());
  }
}

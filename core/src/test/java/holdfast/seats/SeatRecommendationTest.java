// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.fits.ToleranceClass;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SeatRecommendationTest {
  @Test
  void theLoadCaseDecidesTheClass() {
    List<String> classes = SeatRecommendation.of("shaft", mm(20)).stream()
        .filter(row -> row.bearing().equals("radial ball") && row.loadCase().startsWith("rotating"))
        .map(row -> row.load() + " " + row.toleranceClass()).toList();
    assertEquals(List.of("light j6", "normal to heavy k5"), classes);
    assertEquals("H7", SeatRecommendation.of("housing", mm(52)).stream()
        .filter(row -> row.loadCase().equals("stationary outer ring") && row.load().equals("all")).findFirst().orElseThrow()
        .toleranceClass());
  }

  @Test
  void everyClassIsOneOfTheStandardOrSaysThatItIsShifted() {
    long shifted = SeatRecommendation.all().stream().filter(row -> row.standardClass().isEmpty()).count();
    assertEquals(2, shifted);
    assertEquals(Optional.of(ToleranceClass.of("h6")), SeatRecommendation.all().stream()
        .filter(row -> row.load().equals("easy displacement unnecessary")).findFirst().orElseThrow().standardClass());
    assertTrue(SeatRecommendation.of("shaft", mm(600)).size() >= 5);
  }
}

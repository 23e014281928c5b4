// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import static holdfast.quantity.Units.inch;
import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.um;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DrawnDeviationsTest {
  @Test
  void deviationsAreReadAsADrawingWritesThem() {
    TolerancedSize bore = TolerancedSize.of(inch("5/8"), "+0.0005/0 in");
    assertEquals(inch(0.0005).mm(), bore.upper().mm(), 1e-15);
    assertEquals(0, bore.lower().mm());
    assertEquals("+0.0005/0 in", bore.designation());
    assertTrue(bore.origin().inInches());
    assertEquals(0.5, bore.explain().steps().get(0).value(), 1e-12, "explained in thou");

    TolerancedSize stud = TolerancedSize.of(mm(18), "-10/-28 um");
    assertEquals(um(-10), stud.upper());
    assertEquals(um(-28), stud.lower());
    TolerancedSize minus = TolerancedSize.of(mm(18), "\u221210/\u221228 µm");
    assertEquals(stud.deviations(), minus.deviations(), "a typographic minus is a minus");
  }

  @Test
  void aClassIsStillAClass() {
    assertEquals(ToleranceClass.of("H7"), TolerancedSize.of(mm(18), "H7").origin());
  }

  @ParameterizedTest
  @ValueSource(strings = {"+0.0005/0", "+5 um", "0/+5 um", "+1/2/3 um", "+x/0 um", "+1/0 kg"})
  void whatIsNoPairOfDeviationsIsRefused(String text) {
    assertThrows(InputException.class, () -> TolerancedSize.of(mm(18), text));
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import static holdfast.quantity.Units.kN;
import static holdfast.quantity.Units.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class PinTest {
  private final PinStrength pin =
      new PinStrength(ShankSection.solid(mm(20)), kN(10), mm(40), mm(15), mm(30));

  @Test
  void momentOfAPointLoadIsThatOfTheTextbookBeam() {
    // F·l/4 with the span l between the middles of the ears.
    assertEquals(1000.0 * 55 / 4, PinKernel.moment(1000, 40, 15, 1e-9), 1e-6);
  }

  @Property
  void momentIsTheIntegralOfTheShear(@ForAll @DoubleRange(min = 10, max = 80) double gap,
      @ForAll @DoubleRange(min = 2, max = 40) double ear, @ForAll @DoubleRange(min = 0.1, max = 1) double share) {
    double width = share * gap;
    double sum = 0;
    int steps = 20_000;
    double from = -(gap + ear) / 2;
    for (int i = 0; i < steps; i++) {
      double x = from * (1 - (i + 0.5) / steps);
      double carried = Math.max(0, width / 2 + x) / width;
      sum += (0.5 - carried) * 1000 * -from / steps;
    }
    assertEquals(sum, PinKernel.moment(1000, gap, ear, width), 1e-3 * sum);
  }

  @Test
  void stressesOfASolidPin() {
    double moment = 10_000.0 / 2 * 27.5 - 10_000.0 / 2 * 7.5;
    assertEquals(32 * moment / (Math.PI * 8000), pin.bending().megapascal(), 1e-9);
    assertEquals(2 * 10_000 / (Math.PI * 400), pin.shear().megapascal(), 1e-9);
    assertEquals(4.0 / 3 * 2 * 10_000 / (Math.PI * 400), pin.largestShear().megapascal(), 1e-9);
    assertEquals(5000.0 / (20 * 15), pin.earPressure().megapascal(), 1e-9);
    assertEquals(pin.bending().megapascal(), pin.equivalent().megapascal());
    assertEquals(pin.equivalent().megapascal(), pin.explain().result().value(), 1e-12);
    assertTrue(pin.warnings().isEmpty(), pin.warnings().toString());
  }

  @Test
  void shearGovernsAShortPin() {
    PinStrength stub = new PinStrength(ShankSection.solid(mm(20)), kN(10), mm(4), mm(2), mm(4));
    assertEquals(Math.sqrt(3) * stub.largestShear().megapascal(), stub.equivalent().megapascal(), 1e-9);
    assertEquals("short-pin", stub.warnings().get(0).code());
  }

  @Test
  void crossHolesWeakenThePin() {
    ShankSection drilled = ShankSection.drilled(mm(20), mm(5)).crossDrilled(mm(4));
    PinStrength weak = new PinStrength(drilled, kN(10), mm(40), mm(15), mm(30));
    assertTrue(weak.bending().compareTo(pin.bending()) > 0);
    assertEquals("cross-hole", weak.warnings().get(0).code());
  }

  @Test
  void refusesARollerWiderThanTheGap() {
    InputException wide = assertThrows(InputException.class, () -> PinKernel.moment(1, 20, 5, 20.1));
    assertTrue(wide.getMessage().contains("between the ears"), wide.getMessage());
    assertThrows(InputException.class, () -> PinKernel.moment(1, 0, 5, 1));
    assertThrows(InputException.class, () -> PinKernel.moment(1, 20, 0, 1));
    assertThrows(InputException.class, () -> PinKernel.moment(-1, 20, 5, 1));
    assertThrows(InputException.class, () -> PinKernel.pressure(1, 0, 1));
    assertThrows(InputException.class, () -> PinKernel.pressure(1, 1, 0));
    assertThrows(InputException.class, () -> PinKernel.pressure(-1, 1, 1));
    assertThrows(InputException.class, () -> new PinStrength(ShankSection.solid(mm(20)), kN(1), mm(20), mm(5), mm(21)));
  }
}

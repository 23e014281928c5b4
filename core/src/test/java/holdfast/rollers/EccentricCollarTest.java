// SPDX-License-Identifier: Apache-2.0
package holdfast.rollers;

import static holdfast.quantity.Units.N;
import static holdfast.quantity.Units.deg;
import static holdfast.quantity.Units.inch;
import static holdfast.quantity.Units.kN;
import static holdfast.quantity.Units.lbf;
import static holdfast.quantity.Units.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import holdfast.quantity.InputException;
import holdfast.quantity.KnownUnits;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class EccentricCollarTest {
  @Property
  void theAdjustingTorqueLoadsWithATenthOfTheRatingAtTheEndOfTheRange(
      @ForAll @DoubleRange(min = 1, max = 1e6) double c,
      @ForAll @DoubleRange(min = 0.05, max = 5) double e,
      @ForAll @DoubleRange(min = -45, max = 45) double angle) {
    EccentricCollar collar = new EccentricCollar(N(c), mm(e));
    assertEquals(0.1 * c, collar.load(collar.adjustingTorque(), deg(45)).newton(), 1e-12 * c);
    assertEquals(collar.height(deg(angle)).mm(), -collar.height(deg(-angle)).mm(), 1e-15);
    assertEquals(Math.sqrt(2) * e, collar.range().mm(), 1e-12 * e);
    assertEquals(collar.adjustingTorque().base(), collar.explain().result().value());
  }

  @Test
  void readsInBothUnitSystems() {
    EccentricCollar collar = new EccentricCollar(lbf(5000), inch(0.03125));
    assertEquals("11.05 lbf·in", collar.adjustingTorque().text(KnownUnits.LBF_IN, 2));
    assertEquals("friction-left-out", collar.warnings().get(0).code());
    assertEquals("e 0.5 mm: 0.71 mm of height within 45° to either side, adjust with up to 353.6 N·mm",
        new EccentricCollar(kN(10), mm(0.5)).toString());
  }

  @Test
  void refusesWhatDoesNotAdjust() {
    EccentricCollar collar = new EccentricCollar(kN(10), mm(0.5));
    assertEquals("angle of the eccentricity", assertThrows(InputException.class, () -> collar.height(deg(46))).parameter());
    assertEquals("eccentricity e",
        assertThrows(InputException.class, () -> new EccentricCollar(kN(10), mm(0))).parameter());
    assertThrows(InputException.class, () -> new EccentricCollar(kN(0), mm(1)));
  }
}

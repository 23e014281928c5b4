// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import org.junit.jupiter.api.Test;

/** Rings, gauges and general tolerances as the documents print them. */
class FitPartnersTest {
  @Test
  void aRingIsAPartnerOfAFit() {
    Fit fit = Fit.of(BearingRing.bore(mm(6)), TolerancedSize.of(mm(6), "k5"));
    assertEquals(um(-1), fit.maximumClearance());
    assertEquals(um(-14), fit.minimumClearance());
    assertEquals(um(-13), BearingRing.outside(mm(52)).deviations().lower());
    assertThrows(InputException.class, () -> BearingRing.bore(mm(2.5)));
    assertThrows(InputException.class, () -> BearingRing.outside(mm(181)));
  }

  /** 18 H7: EI 0, ES 18, z 2.5, y 2, H 3. */
  @Test
  void aGaugeLiesWithinTheWorkAndWearsOutOfIt() {
    PlainGauge plug = new PlainGauge(ToleranceClass.of("H7"), mm(18));
    assertEquals(um(4), plug.go().upper());
    assertEquals(um(1), plug.go().lower());
    assertEquals(um(-2), plug.worn());
    assertEquals(um(19.5), plug.noGo().upper());
    PlainGauge ring = new PlainGauge(ToleranceClass.of("h6"), mm(25));
    assertEquals(um(-1), ring.go().upper());
    assertEquals(um(-5), ring.go().lower());
    assertEquals(um(3), ring.worn());
    assertThrows(InputException.class, () -> new PlainGauge(ToleranceClass.of("H8"), mm(18)));
    assertThrows(InputException.class, () -> new PlainGauge(ToleranceClass.of("H7"), mm(501)));
  }

  @Test
  void dimensionsWithoutToleranceHaveOne() {
    assertEquals(mm(0.2), GeneralTolerance.MEDIUM.deviation(mm(25)));
    assertEquals(mm(0.1), GeneralTolerance.MEDIUM.deviation(mm(6)));
    assertEquals(mm(0.05), GeneralTolerance.FINE.deviation(mm(0.5)));
    assertEquals(mm(8), GeneralTolerance.VERY_COARSE.deviation(mm(4000)));
    for (Length none : new Length[] {mm(0.4), mm(4001)}) {
      assertThrows(InputException.class, () -> GeneralTolerance.MEDIUM.deviation(none));
    }
    assertThrows(InputException.class, () -> GeneralTolerance.FINE.deviation(mm(2001)));
    assertThrows(InputException.class, () -> GeneralTolerance.VERY_COARSE.deviation(mm(3)));
    assertThrows(InputException.class, () -> GeneralTolerance.COARSE.deviation(mm(6)));
    assertEquals(mm(0.5), GeneralTolerance.COARSE.deviation(mm(30)));
  }
}

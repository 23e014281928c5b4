// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import static holdfast.quantity.Units.kN;
import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.um;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.bearings.LoadRatings;
import holdfast.bearings.OuterRing;
import holdfast.bearings.reference.RollerSet;
import holdfast.bearings.reference.TiltedBearing;
import holdfast.bearings.reference.TiltedLife;
import holdfast.fits.Fit;
import holdfast.quantity.Angle;
import holdfast.seats.SeatTilt;
import org.junit.jupiter.api.Test;

/** The tilt of a seat goes straight into the life of the bearing on it. */
class TiltToLifeTest {
  private final TiltedBearing bearing =
      TiltedBearing.trackRoller(
              LoadRatings.trackRoller(kN(14.2), kN(17.5), OuterRing.RIGID), RollerSet.of(16, mm(3.5), mm(12), mm(23)))
          .clearance(um(20));

  private TiltedLife in(String fit) {
    SeatTilt tilt = SeatTilt.of(Fit.of(mm(18), fit).maximumClearance(), mm(18), mm(16)).build();
    return bearing.life(kN(2.1), tilt.total());
  }

  @Test
  void aLooseSeatCostsLifeAndATightOneDoesNot() {
    assertEquals(1, in("S6/h7").lifeRatio(), 1e-12);
    assertTrue(in("H7/h7").lifeRatio() < in("H7/k6").lifeRatio());
    assertTrue(in("H7/k6").lifeRatio() < 1);
    assertEquals(1, bearing.life(kN(2.1), new Angle(0)).lifeRatio());
  }
}

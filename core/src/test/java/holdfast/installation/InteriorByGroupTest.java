// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.bearings.ClearanceGroup;
import holdfast.bearings.LoadRatings;
import holdfast.bearings.OuterRing;
import holdfast.bearings.reference.RollerProfile;
import holdfast.quantity.Angle;
import org.junit.jupiter.api.Test;

/** The group of the internal clearance reaches the tilted life: more play, no longer life. */
class InteriorByGroupTest {
  private static RollerInterior inside(ClearanceGroup group) {
    return RollerInterior.describe()
        .rollers(16, mm(3.5), mm(12), ValueOrigin.STATED)
        .pitchDiameter(mm(23), ValueOrigin.STATED)
        .clearance(group, mm(19.5), ValueOrigin.STATED)
        .profile(RollerProfile.logarithmic(), ValueOrigin.ESTIMATED)
        .build();
  }

  @Test
  void moreClearanceNeverLengthensTheTiltedLife() {
    assertEquals(um(45), inside(ClearanceGroup.CN).clearance());
    LoadRatings ratings = LoadRatings.trackRoller(kN(14.2), kN(17.5), OuterRing.DEFLECTING);
    Angle tilt = mrad(1);
    double before = Double.POSITIVE_INFINITY;
    for (ClearanceGroup group : ClearanceGroup.values()) {
      double life = inside(group).bearing(ratings).life(kN(2.1), tilt).life();
      assertTrue(life <= before, group + ": " + life + " after " + before);
      before = life;
    }
  }
}

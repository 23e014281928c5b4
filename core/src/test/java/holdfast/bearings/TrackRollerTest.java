// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import org.junit.jupiter.api.Test;

class TrackRollerTest {
  // Invented data.
  private static final TrackRoller ROLLER =
      TrackRoller.of(LoadRatings.trackRoller(kN(13), kN(18), OuterRing.DEFLECTING), mm(40), true)
          .withRingLimits(kN(9), kN(12)).withStudLimit(kN(8)).withTrackCapacity(kN(3)).withSpeedLimit(rpm(600));

  @Test
  void speeds() {
    assertEquals(60 * 1000 / (Math.PI * 40), ROLLER.speedOnTrack(mPerS(1)).rpm(), 1e-9);
    assertEquals(250, ROLLER.speedOnCam(rpm(100), mm(100)).rpm(), 1e-9);
    assertThrows(InputException.class, () -> ROLLER.speedOnTrack(mPerS(0)));
    assertThrows(InputException.class, () -> ROLLER.speedOnCam(rpm(0), mm(100)));
  }

  @Test
  void theLeastLimitGoverns() {
    PermissibleLoad soft = PermissibleLoad.of(ROLLER, hours(5000), Reliability.L10, rpm(300), 1.5, 30);
    assertEquals("track", soft.governing().name());
    assertEquals(3000 * 0.446, soft.load().newton(), 1e-9);
    assertEquals(soft.load().newton(), soft.explain().result().value());
    PermissibleLoad hard = PermissibleLoad.of(ROLLER, hours(50000), Reliability.L10, rpm(300), 1.5, 58);
    assertEquals("fatigue", hard.governing().name());
    assertEquals(7, hard.limits().size());
    assertEquals("speed-above-limit",
        PermissibleLoad.of(ROLLER, hours(5000), Reliability.L10, rpm(700), 1.5, 50).warnings().get(0).code());
    assertEquals(300.6, ROLLER.minimumLoad().newton(), 1e-9);
  }

  @Test
  void missingLimitsAreSaid() {
    TrackRoller bare = TrackRoller.of(LoadRatings.trackRoller(kN(13), kN(18), OuterRing.RIGID), mm(40), false);
    PermissibleLoad load = PermissibleLoad.of(bare, hours(5000), Reliability.L10, rpm(300), 1, 50);
    assertTrue(load.warnings().stream().map(w -> w.code()).toList()
        .containsAll(java.util.List.of("rigid-ring-rating", "ring-limit-unknown", "stud-limit-unknown", "track-capacity-unknown")));
  }

  @Test
  void errors() {
    InputException soft = assertThrows(InputException.class, () -> ROLLER.trackCapacityAt(15));
    assertEquals("track hardness", soft.parameter());
    assertThrows(InputException.class, () -> MinimumLoadKernel.trackRoller(0));
    assertThrows(InputException.class,
        () -> TrackRoller.of(LoadRatings.radialRoller(kN(1), kN(1)), mm(20), false));
    assertThrows(InputException.class, () -> ROLLER.withStudLimit(kN(0)));
  }
}

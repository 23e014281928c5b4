// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.failures.MisalignmentKind;
import holdfast.failures.MisalignmentLimit;
import holdfast.quantity.Angle;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A lean or tilt against a published limit.
 *
 * @param limit the published limit
 * @param pair which pair of stud and bore
 * @param tilt lean of the stud against the track for limits of track rollers, tilt between the raceways for the others
 * @param passes whether the limit permits it
 */
public record MisalignmentCheck(MisalignmentLimit limit, String pair, Angle tilt, boolean passes) implements Serializable {
  private static final List<MisalignmentKind> INSIDE =
      List.of(MisalignmentKind.NEEDLE, MisalignmentKind.CYLINDRICAL_PROFILED);

  public MisalignmentCheck {
    Objects.requireNonNull(limit, "limit");
    Objects.requireNonNull(pair, "pair");
    Objects.requireNonNull(tilt, "tilt");
  }

  static List<MisalignmentCheck> of(PricedPair pair, double loadShare) {
    List<MisalignmentCheck> checks = new ArrayList<>();
    RacewayTilt tilt = pair.tilt();
    if (tilt.crownRadius().mm() == 0) {
      // A crowned ring is the published remedy above this limit.
      add(checks, MisalignmentKind.TRACK_ROLLER_FLAT, loadShare, pair.name(), tilt.studTilt());
    }
    INSIDE.forEach(kind -> add(checks, kind, loadShare, pair.name(), tilt.raceways()));
    return List.copyOf(checks);
  }

  private static void add(List<MisalignmentCheck> checks, MisalignmentKind kind, double loadShare, String pair, Angle tilt) {
    MisalignmentLimit.of(kind, loadShare)
        .forEach(limit -> checks.add(new MisalignmentCheck(limit, pair, tilt, limit.permits(tilt))));
  }

  /** For example {@code "loosest pair: 2.253 mrad is above 1 mrad (track roller, flat ring; 0.001 in/in)"}. */
  @Override
  public String toString() {
    return pair + ": " + tilt + (passes ? " is within " : " is above ") + limit;
  }
}

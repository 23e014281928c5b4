// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.quantity.Check;
import holdfast.quantity.Force;
import holdfast.quantity.InputException;
import holdfast.quantity.RotationalSpeed;
import holdfast.quantity.Temperature;
import holdfast.quantity.Torque;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;

/**
 * Limits that the maker states for a roller. What is not stated is null and shows on the sheet as not stated.
 *
 * @param coldest lowest temperature that the roller may take
 * @param hottest highest temperature that the roller may take, above the lowest
 * @param turning greatest radial load of the outer ring while it turns; null if it is not stated
 * @param standing greatest radial load of the outer ring at standstill; null if it is not stated
 * @param stud greatest radial load of the stud; null if it is not stated
 * @param trackAt40Hrc load that a track of 40 HRC takes from this roller; null if it is not stated
 * @param speed greatest speed of the outer ring; null if it is not stated
 * @param tightening greatest tightening torque; null if it is not stated
 */
public record MakersLimits(
    Temperature coldest,
    Temperature hottest,
    Force turning,
    Force standing,
    Force stud,
    Force trackAt40Hrc,
    RotationalSpeed speed,
    Torque tightening)
    implements Serializable {

  // Refuses limits that nothing could keep.
  public MakersLimits {
    Objects.requireNonNull(coldest, "coldest");
    Objects.requireNonNull(hottest, "hottest");
    if (hottest.compareTo(coldest) <= 0) {
      throw new InputException("highest temperature", hottest.toString(), "above " + coldest, "it is not below the lowest");
    }
    positive(turning, "greatest load of the turning ring");
    positive(standing, "greatest load of the standing ring");
    positive(stud, "greatest load of the stud");
    positive(trackAt40Hrc, "load on a track of 40 HRC");
    if (speed != null) {
      Check.positive(speed.rpm(), "greatest speed", "rpm", "leave it out if it is not stated");
    }
    if (tightening != null) {
      Check.positive(tightening.newtonMillimetre(), "greatest tightening torque", "N·mm", "leave it out if it is not stated");
    }
  }

  /**
   * Greatest speed, if it is stated.
   *
   * @return the speed
   */
  public Optional<RotationalSpeed> statedSpeed() {
    return Optional.ofNullable(speed);
  }

  /**
   * Greatest tightening torque, if it is stated.
   *
   * @return the torque
   */
  public Optional<Torque> statedTorque() {
    return Optional.ofNullable(tightening);
  }

  private static void positive(Force force, String name) {
    if (force != null) {
      Check.positive(force.newton(), name, "N", "leave it out if it is not stated");
    }
  }
}

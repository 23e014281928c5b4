// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.quantity.Angle;
import holdfast.quantity.Length;
import holdfast.quantity.OperatingTime;
import holdfast.quantity.RotationalSpeed;
import holdfast.trace.Traced;
import java.io.Serializable;
import java.util.Objects;

/** A life in revolutions, with the ways in which it is told. */
public interface RatedLife extends Traced, Serializable {
  /**
   * The life.
   *
   * @return million revolutions
   */
  double millionRevolutions();

  /**
   * The reliability with which the life is reached.
   *
   * @return the reliability
   */
  Reliability reliability();

  /**
   * The life in operating hours at a constant speed.
   *
   * @param speed speed n, over 0
   * @return 10⁶ L / (60 n)
   * @throws holdfast.quantity.InputException if the speed is not above zero
   */
  default OperatingTime hours(RotationalSpeed speed) {
    Objects.requireNonNull(speed, "speed");
    return new OperatingTime(BasicLifeKernel.hours(millionRevolutions(), speed.rpm()));
  }

  /**
   * The life as distance travelled by a wheel or roller.
   *
   * @param diameter rolling diameter, over 0
   * @return π D L
   * @throws holdfast.quantity.InputException if the diameter is not above zero
   */
  default Length distance(Length diameter) {
    Objects.requireNonNull(diameter, "diameter");
    return new Length(1e6 * BasicLifeKernel.kilometres(millionRevolutions(), diameter.mm()));
  }

  /**
   * The life in oscillation under the same load. A cycle is four half swings: there, back, to the other end and back.
   *
   * @param halfSwing angle φ from the middle position to one end, over 0
   * @return million cycles, and warnings where false brinelling takes over
   * @throws holdfast.quantity.InputException if the angle is not above zero
   */
  default OscillatingLife oscillating(Angle halfSwing) {
    Objects.requireNonNull(halfSwing, "halfSwing");
    return new OscillatingLife(this, halfSwing, null);
  }
}

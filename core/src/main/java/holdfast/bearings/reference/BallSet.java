// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings.reference;

import holdfast.bearings.BearingFamily;
import holdfast.quantity.Check;
import holdfast.quantity.Length;
import java.util.Objects;

/**
 * Balls of a deep groove ball bearing with one row.
 *
 * @param count balls Z, 3 to 1000
 * @param diameter ball diameter Dw, over 0 and under Dpw
 * @param pitchDiameter pitch diameter Dpw
 * @param innerGroove groove radius of the inner ring, over Dw/2 up to Dw
 * @param outerGroove groove radius of the outer ring, over Dw/2 up to Dw
 */
public record BallSet(int count, Length diameter, Length pitchDiameter, Length innerGroove, Length outerGroove)
    implements RollingElements {

  // Refuses what is no bearing.
  public BallSet {
    Objects.requireNonNull(diameter, "diameter");
    Objects.requireNonNull(pitchDiameter, "pitchDiameter");
    Objects.requireNonNull(innerGroove, "innerGroove");
    Objects.requireNonNull(outerGroove, "outerGroove");
    Inputs.elements(count);
    ProfileKernel.diameter(diameter.mm());
    Inputs.pitch(pitchDiameter.mm(), diameter.mm(), count);
    groove(innerGroove, diameter, "groove radius of the inner ring");
    groove(outerGroove, diameter, "groove radius of the outer ring");
  }

  private static void groove(Length radius, Length diameter, String name) {
    Check.within(radius.mm() / diameter.mm(), 0.501, 1, name + " over Dw", "", "a groove is a little wider than the ball");
  }

  /**
   * Balls in grooves of 0.52 Dw, the widest that the rating of ISO 281 allows for both rings.
   *
   * @param count Z, 3 to 1000
   * @param diameter Dw, over 0
   * @param pitchDiameter Dpw, over Dw
   * @return the balls
   * @throws holdfast.quantity.InputException if a value is outside its range
   */
  public static BallSet of(int count, Length diameter, Length pitchDiameter) {
    Objects.requireNonNull(diameter, "diameter");
    Objects.requireNonNull(pitchDiameter, "pitchDiameter");
    return new BallSet(count, diameter, pitchDiameter, diameter.times(0.52), diameter.times(0.52));
  }

  /**
   * The same balls in other grooves.
   *
   * @param inner groove radius of the inner ring
   * @param outer groove radius of the outer ring
   * @return the balls
   * @throws holdfast.quantity.InputException if a radius is outside its range
   */
  public BallSet grooves(Length inner, Length outer) {
    Objects.requireNonNull(inner, "inner");
    Objects.requireNonNull(outer, "outer");
    return new BallSet(count, diameter, pitchDiameter, inner, outer);
  }

  @Override
  public BearingFamily family() {
    return BearingFamily.RADIAL_BALL;
  }

  /** For example {@code "9 balls 7.94 mm on 38.5 mm"}. */
  @Override
  public String toString() {
    return count + " balls " + diameter + " on " + pitchDiameter;
  }
}

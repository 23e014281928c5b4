// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.bearings.BasicLifeKernel;
import holdfast.bearings.reference.TiltedLife;
import holdfast.quantity.Angle;
import holdfast.quantity.Numbers;
import holdfast.quantity.OperatingTime;
import holdfast.quantity.RotationalSpeed;
import holdfast.seats.SeatTilt;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;

/**
 * One pair of stud and bore with the tilt that it allows and what the tilt costs.
 *
 * @param name which pair, for example {@code "loosest pair"}
 * @param seat what leans the stud
 * @param tilt the greatest lean, with the nut tight or with the play used up, and what of it the rollers see
 * @param life life at that tilt against the aligned bearing
 * @param nutTight life while the clamped face alone sets the lean; null if the squareness of the face was not given
 */
public record PricedPair(String name, SeatTilt seat, RacewayTilt tilt, TiltedLife life, TiltedLife nutTight)
    implements Serializable {
  public PricedPair {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(seat, "seat");
    Objects.requireNonNull(tilt, "tilt");
    Objects.requireNonNull(life, "life");
  }

  static Angle greatest(SeatTilt seat) {
    return seat.total().compareTo(seat.totalIfLoose()) > 0 ? seat.total() : seat.totalIfLoose();
  }

  /**
   * Life over the life of the aligned bearing, at the greatest lean.
   *
   * @return the ratio; multiply a basic or modified rating life by it
   */
  public double lifeRatio() {
    return life.lifeRatio();
  }

  /**
   * The ratio while the nut is tight and the face that it clamps sets the lean.
   *
   * @return the ratio; empty if the squareness of the face was not given
   */
  public Optional<Double> lifeRatioNutTight() {
    return Optional.ofNullable(nutTight).map(TiltedLife::lifeRatio);
  }

  /**
   * Absolute reference life as recalled (memory): not confirmed by any text. Use the ratio.
   *
   * @param speed speed of the outer ring, over 0
   * @return hours
   */
  public OperatingTime recalledHours(RotationalSpeed speed) {
    Objects.requireNonNull(speed, "speed");
    return new OperatingTime(BasicLifeKernel.hours(life.recalledLife(), speed.rpm()));
  }

  /** For example {@code "loosest pair: lean 2.3 mrad, life ratio 0.15"}. */
  @Override
  public String toString() {
    return name + ": lean " + tilt + ", life ratio " + Numbers.significant(lifeRatio(), 2)
        + lifeRatioNutTight().map(r -> " (" + Numbers.significant(r, 2) + " while the nut is tight)").orElse("");
  }
}

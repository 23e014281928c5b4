// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.fits.Fit;
import holdfast.fits.FitKind;
import holdfast.quantity.Check;
import holdfast.quantity.Force;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import holdfast.quantity.Torque;
import holdfast.seats.Band;
import holdfast.seats.FitLimits;
import holdfast.seats.FrictionBand;
import holdfast.seats.InterferenceFit;
import holdfast.seats.YieldRule;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;

/**
 * One choice of bore for the same roller: what it costs and what it buys.
 *
 * @param fit the fit of the stud in this bore
 * @param price life against play
 * @param press the seat as a press fit; null for a clearance fit
 * @param friction band of friction in the seat
 * @param throughStud torque that passes through the stud while the nut is tightened, 0 or more
 */
public record SeatOption(Fit fit, SeatPrice price, InterferenceFit press, FrictionBand friction, Torque throughStud)
    implements Serializable {
  public SeatOption {
    Objects.requireNonNull(fit, "fit");
    Objects.requireNonNull(price, "price");
    Objects.requireNonNull(friction, "friction");
    Objects.requireNonNull(throughStud, "throughStud");
    Check.notNegative(throughStud.base(), "torque through the stud", "N·mm", "state its size");
  }

  /**
   * Kind of the fit.
   *
   * @return clearance (slip), transition or interference (press)
   */
  public FitKind kind() {
    return fit.kind();
  }

  /**
   * Clearance of the loosest pair.
   *
   * @return negative for an interference
   */
  public Length greatestClearance() {
    return fit.maximumClearance();
  }

  /**
   * Clearance of the tightest pair.
   *
   * @return negative for an interference
   */
  public Length leastClearance() {
    return fit.minimumClearance();
  }

  /**
   * Force at the end of the stroke when the stud is pressed in.
   *
   * @return from the loosest pair with the least friction to the tightest with the greatest; empty for a clearance fit
   */
  public Optional<Band<Force>> pressForce() {
    return seat().map(seat -> seat.pressInForce(friction));
  }

  /**
   * Torque at which the stud turns in its seat, at 20 °C and without the nut.
   *
   * @return the band; only its low end may be counted on; empty for a clearance fit
   */
  public Optional<Band<Torque>> holdingTorque() {
    return seat().map(seat -> seat.holding(friction).torque());
  }

  /**
   * Torque to be held at the head of the stud while the nut is tightened.
   *
   * @return what the loosest pair does not hold; all of it in a clearance fit
   */
  public Torque torqueToBeHeld() {
    return seat().map(seat -> seat.holding(friction).torqueToBeHeld(throughStud)).orElse(throughStud);
  }

  /**
   * Elastic limit of the machine member against the tightest pair.
   *
   * @return limit and safety (von Mises; greatest principal stress for brittle material); empty for a clearance fit
   */
  public Optional<FitLimits.PartLimit> housing() {
    return seat().map(seat -> seat.limits(YieldRule.VON_MISES).housing());
  }

  private Optional<InterferenceFit> seat() {
    return Optional.ofNullable(press);
  }

  /** The choice in one line, for example {@code "18 H7/h7: clearance fit, … lean 2.3 mrad, life ratio 0.15, …"}. */
  @Override
  public String toString() {
    return fit + "; loosest pair leans " + price.loosest().tilt().studTilt() + ", life ratio "
        + Numbers.significant(price.lifeRatio(), 2)
        + pressForce().map(force -> "; press in with " + force).orElse("; slips in")
        + "; hold " + torqueToBeHeld() + " while the nut is tightened"
        + housing().map(limit -> "; member " + limit).orElse("");
  }
}

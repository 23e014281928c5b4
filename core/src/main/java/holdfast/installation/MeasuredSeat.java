// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.fits.MeasuredFit;
import holdfast.fits.ThermalFitKernel;
import holdfast.quantity.Length;
import holdfast.quantity.Temperature;
import holdfast.quantity.ThermalExpansion;
import holdfast.quantity.Torque;
import holdfast.seats.Band;
import holdfast.seats.FitLimits;
import holdfast.seats.Holding;
import holdfast.seats.InnerPart;
import holdfast.seats.InterferenceBand;
import holdfast.seats.InterferenceFit;
import holdfast.seats.Pressing;
import holdfast.seats.SeatTilt;
import holdfast.seats.ServiceState;
import holdfast.seats.YieldRule;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;

/**
 * The seat of a plan with the parts as measured in place of their tolerances. Every band runs from the loosest place to the
 * tightest place of this pair, widened by the uncertainty.
 *
 * @param plan the plan
 * @param fit the fit as measured
 */
public record MeasuredSeat(InstallationPlan plan, MeasuredFit fit) implements Serializable {

  // Refuses a seat of nothing.
  public MeasuredSeat {
    Objects.requireNonNull(plan, "plan");
    Objects.requireNonNull(fit, "fit");
  }

  /**
   * Least and greatest clearance of this pair at 20 °C, with the uncertainty.
   *
   * @return the band; negative for an interference
   */
  public Band<Length> clearance() {
    return new Band<>(
        fit.minimumClearance().minus(fit.uncertainty()), fit.maximumClearance().plus(fit.uncertainty()));
  }

  /**
   * The same at the working temperature, both parts free to grow.
   *
   * @return the band; negative for an interference
   */
  public Band<Length> clearanceAtWork() {
    return new Band<>(
        atWork(fit.hole().range().lower(), fit.shaft().range().upper()).minus(fit.uncertainty()),
        atWork(fit.hole().range().upper(), fit.shaft().range().lower()).plus(fit.uncertainty()));
  }

  /**
   * This pair as a press fit.
   *
   * @return pressure, stresses and limits; empty if the pair has clearance everywhere, the uncertainty counted
   */
  public Optional<InterferenceFit> press() {
    if (clearance().least().mm() >= 0) {
      return Optional.empty();
    }
    InnerPart stud =
        InnerPart.hollow(plan.roller().material(), plan.roller().greaseBore()).withRoughness(plan.roller().seatRoughness());
    return Optional.of(
        InterferenceFit.of(stud, plan.member().body(), InterferenceBand.of(fit), plan.member().seatLength()));
  }

  /**
   * Pressing the stud in.
   *
   * @return force and cautions; empty without interference
   */
  public Optional<Pressing> pressing() {
    return press().map(press -> press.pressing(plan.member().pressingFriction()));
  }

  /**
   * Safety of housing and stud at the tightest place, against yielding after von Mises or against fracture.
   *
   * @return the limits; empty without interference
   */
  public Optional<FitLimits> limits() {
    return press().map(press -> press.limits(YieldRule.VON_MISES));
  }

  /**
   * The press fit at the working temperature.
   *
   * @return interference and pressure at work; empty without interference at 20 °C
   */
  public Optional<ServiceState> pressAtWork() {
    Temperature work = plan.duty().workingTemperature();
    return press().map(press -> press.atWork(work, work));
  }

  /**
   * What the seat holds by friction at 20 °C.
   *
   * @return forces and torques; empty without interference
   */
  public Optional<Holding> holding() {
    return press().map(press -> press.holding(plan.member().pressingFriction()));
  }

  /**
   * Torque to be held at the head of the stud while its nut is tightened.
   *
   * @return what the loosest place does not hold; all that passes through the stud without interference
   */
  public Torque torqueToBeHeld() {
    Torque through = plan.torqueThroughStud();
    return holding().map(holding -> holding.torqueToBeHeld(through)).orElse(through);
  }

  /**
   * How far the stud can lean: the greatest clearance of this pair, in the shop or at work, in place of that of the
   * tolerances, the rest as planned.
   *
   * @return the tilt
   */
  public SeatTilt tilt() {
    SeatTilt planned = plan.tilt();
    Length inShop = clearance().greatest();
    Length atWork = clearanceAtWork().greatest();
    Length greatest = inShop.compareTo(atWork) >= 0 ? inShop : atWork;
    SeatTilt tilt = SeatTilt.of(greatest, planned.stud(), planned.engagement()).bending(planned.byBending()).build();
    return new SeatTilt(tilt.clearance(), tilt.stud(), tilt.engagement(), planned.clamped(), tilt.byClearance(),
        planned.byFaces(), tilt.byBending());
  }

  private Length atWork(Length hole, Length shaft) {
    ThermalExpansion housing = plan.member().body().material().thermalExpansion();
    ThermalExpansion stud = plan.roller().material().thermalExpansion();
    double celsius = plan.duty().workingTemperature().celsius();
    return new Length(
        ThermalFitKernel.clearance(hole.mm(), housing.perKelvin(), celsius, shaft.mm(), stud.perKelvin(), celsius));
  }
}

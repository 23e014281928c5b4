// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Check;
import holdfast.quantity.Force;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import holdfast.quantity.OperatingTime;
import holdfast.quantity.Speed;
import holdfast.quantity.Work;
import holdfast.tables.SourceRef;
import holdfast.trace.Caution;
import holdfast.trace.Derivation;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * Pressing a stud in, with the pressure that the parts bring: a housing that yields presses less than its elastic figure.
 * Whether a figure holds at all is told by {@link InterferenceFit#validity}. The force grows about in proportion to the
 * stroke and is greatest at its end.
 *
 * @param fit the fit
 * @param friction band of friction while pressing
 * @param pressIn force at the end of the stroke: loosest pair and least friction to tightest pair and greatest friction
 * @param greatestWork work of the hardest case
 */
public record Pressing(InterferenceFit fit, FrictionBand friction, Band<Force> pressIn, Work greatestWork)
    implements Traced, Serializable {
  private static final SourceRef FORCE = SourceRef.derived("force = friction factor × pressure × area of the seat");

  public Pressing {
    Objects.requireNonNull(fit, "fit");
    Objects.requireNonNull(friction, "friction");
    Objects.requireNonNull(pressIn, "pressIn");
    Objects.requireNonNull(greatestWork, "greatestWork");
  }

  static Pressing of(InterferenceFit fit, FrictionBand friction) {
    double greatest = force(fit, fit.attainedPressure().greatest().base(), friction.greatest());
    return new Pressing(
        fit,
        friction,
        new Band<>(new Force(force(fit, fit.attainedPressure().least().base(), friction.least())), new Force(greatest)),
        new Work(PressForceKernel.pressWork(greatest, fit.length().mm())));
  }

  /**
   * Force that breaks the joint loose again.
   *
   * @param adhesion band of adhesion of the joint when it breaks loose; higher than while pressing in
   * @return the band
   */
  public Band<Force> pressOut(FrictionBand adhesion) {
    Objects.requireNonNull(adhesion, "adhesion");
    return of(fit, adhesion).pressIn();
  }

  /**
   * Force after part of the stroke.
   *
   * @param joined length already joined, from 0 to the joint length
   * @return the band, in proportion to the length
   * @throws holdfast.quantity.InputException if the length is out of range
   */
  public Band<Force> at(Length joined) {
    Objects.requireNonNull(joined, "joined");
    double share =
        Check.within(joined.mm(), 0, fit.length().mm(), "length already joined", "mm", "part of the joint length")
            / fit.length().mm();
    return new Band<>(pressIn.least().times(share), pressIn.greatest().times(share));
  }

  /**
   * Length of the chamfer on the edge that goes in first, at about 5° (recalled from DIN 7190-1).
   *
   * @return about the cube root of the joint diameter in mm
   */
  public Length chamfer() {
    return new Length(SeatGeometryKernel.chamferLength(fit.interference().joint().mm()));
  }

  /**
   * Greatest speed of pressing (recalled from DIN 7190-1).
   *
   * @return 50 mm/s
   */
  public Speed greatestSpeed() {
    return new Speed(50);
  }

  /**
   * Rest before the full load may come on a pressed joint (recalled from DIN 7190-1).
   *
   * @return 24 h
   */
  public OperatingTime restBeforeLoad() {
    return new OperatingTime(24);
  }

  /**
   * What can hurt while pressing.
   *
   * @return the cautions
   */
  public List<Caution> cautions() {
    return SeatCautions.pressing();
  }

  /** Derivation of the greatest force. */
  @Override
  public Derivation explain() {
    return Derivation.of("Greatest pressing force")
        .steps(plastic() ? fit.elasticPlastic(YieldRule.MODIFIED_SHEAR).explain() : fit.explain())
        .step(
            "F",
            "greatest force at the end of the stroke",
            "μ·p·π·D·l",
            pressIn.greatest().base(),
            "N",
            FORCE,
            "μ = " + Numbers.shortest(friction.greatest()) + " (" + friction.source() + ")",
            "l = " + Numbers.shortest(fit.length().mm()) + " mm")
        .build();
  }

  @Override
  public List<Warning> warnings() {
    return fit.warnings();
  }

  @Override
  public String toString() {
    return "press in with " + pressIn + " at the end of the stroke (friction " + friction + ")";
  }

  private boolean plastic() {
    return fit.attainedPressure().greatest().base() < fit.pressure().greatest().base();
  }

  private static double force(InterferenceFit fit, double pressure, double friction) {
    return PressForceKernel.axialForce(pressure, fit.interference().joint().mm(), fit.length().mm(), friction);
  }
}

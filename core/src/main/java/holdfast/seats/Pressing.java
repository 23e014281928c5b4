package holdfast.seats;

import holdfast.quantity.Force;
import holdfast.quantity.Numbers;
import holdfast.quantity.Work;
import holdfast.tables.SourceRef;
import holdfast.trace.Caution;
import holdfast.trace.Derivation;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.List;

/**
 * Pressing a stud in. The force grows about in proportion to the stroke and is greatest at its end.
 *
 * @param fit the fit
 * @param friction band of friction while pressing
 * @param pressIn force at the end of the stroke: loosest pair and least friction to tightest pair and greatest friction
 * @param greatestWork work of the hardest case
 */
public record Pressing(InterferenceFit fit, FrictionBand friction, Band<Force> pressIn, Work greatestWork)
    implements Traced, Serializable {
  private static final SourceRef FORCE = SourceRef.published("shrink fit slides", "force of an interference fit");

  static Pressing of(InterferenceFit fit, FrictionBand friction) {
    double greatest = force(fit, fit.pressure().greatest().base(), friction.greatest());
    return new Pressing(
        fit,
        friction,
        new Band<>(new Force(force(fit, fit.pressure().least().base(), friction.least())), new Force(greatest)),
        new Work(PressForceKernel.pressWork(greatest, fit.length().mm())));
  }

  /**
   * Force that breaks the joint loose again.
   *
   * @param adhesion band of adhesion of the joint when it breaks loose; higher than while pressing in
   * @return the band
   */
  public Band<Force> pressOut(FrictionBand adhesion) {
    return of(fit, adhesion).pressIn();
  }

  /**
   * What can hurt while pressing.
   *
   * @return the cautions
   */
  public List<Caution> cautions() {
    return SeatCautions.PRESSING;
  }

  /** Derivation of the greatest force. */
  @Override
  public Derivation explain() {
    return Derivation.of("Greatest pressing force")
        .steps(fit.explain())
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

  private static double force(InterferenceFit fit, double pressure, double friction) {
    return PressForceKernel.axialForce(pressure, fit.interference().joint().mm(), fit.length().mm(), friction);
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.fits.Conformity;
import holdfast.fits.DecisionRule;
import holdfast.fits.Fit;
import holdfast.fits.LimitsOfSize;
import holdfast.fits.MeasuredFit;
import holdfast.fits.PartAcceptance;
import holdfast.fits.TolerancedSize;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;

/**
 * The fit that a measured hole and a measured shaft make, against the planned one.
 *
 * @param planned the fit of the plan
 * @param hole the hole against its drawing
 * @param shaft the shaft against its drawing
 */
public record PairAcceptance(Fit planned, PartAcceptance hole, PartAcceptance shaft) implements Serializable {

  // Refuses parts that were measured against another drawing than that of the plan.
  public PairAcceptance {
    Objects.requireNonNull(planned, "planned");
    Objects.requireNonNull(hole, "hole");
    Objects.requireNonNull(shaft, "shaft");
    sameDrawing("hole", hole, planned.hole());
    sameDrawing("shaft", shaft, planned.shaft());
  }

  static void sameDrawing(String role, PartAcceptance part, TolerancedSize planned) {
    if (!part.drawing().equals(planned)) {
      throw new InputException(role, part.drawing().toString(), planned.toString(), "the plan asks for it");
    }
  }

  /**
   * The fit that the parts make at 20 °C.
   *
   * @return clearances from the readings, with uncertainty
   */
  public MeasuredFit fit() {
    return new MeasuredFit(planned, hole.readings(), shaft.readings());
  }

  /**
   * Whether the fit lies between the least and the greatest clearance of the plan. Parts that do not conform can still make
   * such a fit; it needs a concession.
   *
   * @return the verdict on the fit, with the guard band of the rule by which the parts are judged
   */
  public Conformity conformity() {
    MeasuredFit fit = fit();
    Length low = fit.minimumClearance().minus(planned.minimumClearance());
    Length high = planned.maximumClearance().minus(fit.maximumClearance());
    Conformity bySize = Conformity.of(low.compareTo(high) <= 0 ? low : high, fit.uncertainty(), rule());
    boolean limited = !hole.limitations().isEmpty() || !shaft.limitations().isEmpty();
    return limited ? Conformity.UNDECIDED : bySize;
  }

  /**
   * The rule of decision on the fit: that of the parts.
   *
   * @return the rule of both, the cautious one where they differ
   */
  public DecisionRule rule() {
    DecisionRule ofHole = hole.scheme().rule();
    return ofHole == shaft.scheme().rule() ? ofHole : DecisionRule.WHOLE_UNCERTAINTY;
  }

  /**
   * Sizes of a shaft that make the planned fit in this hole, measured as well as this shaft.
   *
   * @return the extreme sizes that it may have; empty if this hole is too uneven for any
   */
  public Optional<LimitsOfSize> matchingShaft() {
    LimitsOfSize sizes = hole.sizes();
    Length guard = rule().guardBand(fit().uncertainty());
    return zone(
        sizes.upper().minus(planned.maximumClearance()).plus(guard),
        sizes.lower().minus(planned.minimumClearance()).minus(guard));
  }

  /**
   * Sizes of a hole that make the planned fit with this shaft, measured as well as this hole.
   *
   * @return the extreme sizes that it may have; empty if this shaft is too uneven for any
   */
  public Optional<LimitsOfSize> matchingHole() {
    LimitsOfSize sizes = shaft.sizes();
    Length guard = rule().guardBand(fit().uncertainty());
    return zone(
        sizes.upper().plus(planned.minimumClearance()).plus(guard),
        sizes.lower().plus(planned.maximumClearance()).minus(guard));
  }

  static Optional<LimitsOfSize> zone(Length lower, Length upper) {
    return lower.compareTo(upper) <= 0 ? Optional.of(new LimitsOfSize(lower, upper)) : Optional.empty();
  }
}

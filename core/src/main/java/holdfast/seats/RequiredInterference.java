// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.fits.Fit;
import holdfast.fits.FitCandidate;
import holdfast.fits.FitSelector;
import holdfast.quantity.Check;
import holdfast.quantity.Force;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import holdfast.quantity.Stress;
import holdfast.quantity.Torque;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Message;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.function.BiFunction;

/**
 * The interference that a load needs and that the parts allow: the way back from holding force and torque to a fit. Both
 * ends are interferences as measured on the parts, smoothing included.
 *
 * @param stud the inner part
 * @param housing the outer part
 * @param joint joint diameter
 * @param length joint length
 * @param smoothing rule for the interference lost to smoothing
 * @param resultant force to be held on the joint face by axial force and torque together
 * @param adhesion coefficient of adhesion counted on
 * @param safety safety factor against slipping
 * @param requiredPressure joint pressure that the load needs
 * @param allowedPressure joint pressure that the parts allow; the required pressure is above it if no fit will do
 * @param least least interference that holds the load
 * @param greatest greatest interference that the parts allow
 */
public record RequiredInterference(
    InnerPart stud,
    OuterPart housing,
    Length joint,
    Length length,
    RoughnessRule smoothing,
    Force resultant,
    double adhesion,
    double safety,
    Stress requiredPressure,
    Stress allowedPressure,
    Length least,
    Length greatest)
    implements Traced, Serializable {
  private static final SourceRef FRICTION = SourceRef.derived("force = friction factor × pressure × area of the seat");
  private static final SourceRef RING = SourceRef.published("Boresi & Schmidt", "chapter 11, thick-wall cylinders");

  public RequiredInterference {
    Objects.requireNonNull(stud, "stud");
    Objects.requireNonNull(housing, "housing");
    Objects.requireNonNull(joint, "joint");
    Objects.requireNonNull(length, "length");
    Objects.requireNonNull(smoothing, "smoothing");
    Objects.requireNonNull(resultant, "resultant");
    Objects.requireNonNull(requiredPressure, "requiredPressure");
    Objects.requireNonNull(allowedPressure, "allowedPressure");
    Objects.requireNonNull(least, "least");
    Objects.requireNonNull(greatest, "greatest");
    Check.finite(adhesion, "coefficient of adhesion", "");
    Check.finite(safety, "safety against slipping", "");
  }

  /**
   * Starts from the parts.
   *
   * @param stud the inner part
   * @param housing the outer part
   * @param joint joint diameter
   * @param length joint length
   * @return a builder; smoothing after the 2017 rule, safety against yield 1 by von Mises
   */
  public static Builder of(InnerPart stud, OuterPart housing, Length joint, Length length) {
    return new Builder(stud, housing, joint, length);
  }

  /**
   * Whether some interference holds the load without harm to the parts.
   *
   * @return true if the least is not above the greatest
   */
  public boolean possible() {
    return least.compareTo(greatest) <= 0;
  }

  /**
   * Whether every pair of a fit holds the load and spares the parts.
   *
   * @param fit a fit of the joint diameter
   * @return true if its interferences lie between both ends
   */
  public boolean suits(Fit fit) {
    Objects.requireNonNull(fit, "fit");
    return fit.maximumClearance().negated().compareTo(least) >= 0 && fit.minimumClearance().negated().compareTo(greatest) <= 0;
  }

  /**
   * Fits of ISO 286 on the hole basis of which every pair holds the load and spares the parts.
   *
   * @return the fits, in the order of preference of {@link FitSelector}; empty if the band is too narrow for any
   * @throws InputException if no interference will do, or the joint is outside of ISO 286
   */
  public List<Fit> isoFits() {
    return fits(
        (size, band) ->
            FitSelector.holeBasis(size).interferenceBetween(band.least(), band.greatest()).candidates().stream()
                .map(FitCandidate::fit)
                .toList());
  }

  /**
   * Fits that a selector finds between both ends.
   *
   * @param selector gives fits for a nominal size and a band of interference, for example a search through the tolerance
   *     classes of ISO 286
   * @return those of its fits that {@link #suits} accepts, in its order
   * @throws InputException if no interference will do
   */
  public List<Fit> fits(BiFunction<Length, Band<Length>, List<Fit>> selector) {
    Objects.requireNonNull(selector, "selector");
    if (!possible()) {
      throw new InputException(
          "required interference",
          least.toString(),
          "at most " + greatest,
          "the parts yield or break before they hold the load; lengthen the joint, thicken the housing or hold it otherwise");
    }
    return selector.apply(joint, new Band<>(least, greatest)).stream().filter(this::suits).toList();
  }

  /** Derivation of the least interference. */
  @Override
  public Derivation explain() {
    InterferenceFit one = probe(stud, housing, joint, length, smoothing);
    return Derivation.of("Interference that holds the load")
        .step(
            "p",
            "pressure that holds the load",
            "S·√(F² + (2T/D)²)/(ν·π·D·l)",
            requiredPressure.base(),
            "MPa",
            FRICTION,
            "√… = " + resultant,
            "S = " + Numbers.shortest(safety),
            "ν = " + Numbers.shortest(adhesion),
            "D = " + joint,
            "l = " + length)
        .step(
            "U_w",
            "effective interference",
            "p·D·(K_I + K_A)",
            one.interferenceFor(requiredPressure.base()) * 1000,
            "µm",
            RING)
        .step(
            "U",
            "least interference of the parts",
            "U_w + G, G = " + smoothing.expression(),
            least.mm() * 1000,
            "µm",
            smoothing.source(),
            "G = " + one.smoothingLoss())
        .build();
  }

  @Override
  public List<Warning> warnings() {
    return possible()
        ? List.of()
        : List.of(
            new Warning(
                "load-above-parts",
                Message.of("the load needs ", requiredPressure, ", the parts allow ", allowedPressure),
                SourceRef.derived("required against allowed joint pressure")));
  }

  @Override
  public String toString() {
    return "interference from " + least + " to " + greatest + (possible() ? "" : ": no fit will do");
  }

  private static InterferenceFit probe(
      InnerPart stud, OuterPart housing, Length joint, Length length, RoughnessRule smoothing) {
    // Any interference will do: the probe only carries the stiffness of the pair and the smoothing loss.
    Length any = joint.times(1e-4);
    return new InterferenceFit(stud, housing, InterferenceBand.of(joint, any, any), length, smoothing);
  }

  /** Collects load and limits. Not thread-safe. */
  public static final class Builder {
    private final InnerPart stud;
    private final OuterPart housing;
    private final Length joint;
    private final Length length;
    private RoughnessRule smoothing = RoughnessRule.DIN_7190_1_2017;
    private Force force = new Force(0);
    private Torque torque = new Torque(0);
    private double adhesion = Double.NaN;
    private double safety = 1;
    private YieldRule rule = YieldRule.VON_MISES;
    private double partSafety = 1;

    private Builder(InnerPart stud, OuterPart housing, Length joint, Length length) {
      this.stud = Objects.requireNonNull(stud, "stud");
      this.housing = Objects.requireNonNull(housing, "housing");
      this.joint = Objects.requireNonNull(joint, "joint");
      this.length = Objects.requireNonNull(length, "length");
    }

    /**
     * States the load.
     *
     * @param axial axial force, any sign
     * @param torsion torque, any sign
     * @return this builder
     */
    public Builder hold(Force axial, Torque torsion) {
      force = Objects.requireNonNull(axial, "axial");
      torque = Objects.requireNonNull(torsion, "torsion");
      return this;
    }

    /**
     * States the adhesion counted on and the safety against slipping. Usual safeties are 1.2 to 2.
     *
     * @param band band of adhesion, of which the low end is counted on; over 0
     * @param slipSafety safety against slipping, over 0
     * @return this builder
     * @throws InputException if a value is out of range
     */
    public Builder adhesion(FrictionBand band, double slipSafety) {
      Objects.requireNonNull(band, "band");
      adhesion = Check.positive(band.least(), "least coefficient of adhesion", "", "without adhesion nothing holds");
      safety = Check.positive(slipSafety, "safety against slipping", "", "it multiplies the load");
      return this;
    }

    /**
     * States the rule for smoothing; the 2017 rule if not stated.
     *
     * @param value the rule
     * @return this builder
     */
    public Builder smoothing(RoughnessRule value) {
      Objects.requireNonNull(value, "value");
      smoothing = Objects.requireNonNull(value, "smoothing");
      return this;
    }

    /**
     * States how the parts are limited; by von Mises with safety 1 if not stated. Brittle housings are limited by their
     * tensile strength with the same safety.
     *
     * @param yieldRule theory of yield
     * @param againstLimit safety against the limit, over 0
     * @return this builder
     * @throws InputException if the safety is out of range
     */
    public Builder limit(YieldRule yieldRule, double againstLimit) {
      Objects.requireNonNull(yieldRule, "yieldRule");
      rule = Objects.requireNonNull(yieldRule, "rule");
      partSafety = Check.positive(againstLimit, "safety against the limit", "", "it divides the limit");
      return this;
    }

    /**
     * Computes both ends.
     *
     * @return the result
     * @throws InputException if no adhesion was stated or the strength of a part is unknown
     */
    public RequiredInterference build() {
      if (Double.isNaN(adhesion)) {
        throw new InputException("coefficient of adhesion", "not stated", "stated", "the load is held by friction");
      }
      InterferenceFit one = probe(stud, housing, joint, length, smoothing);
      double resultant = PressForceKernel.resultant(force.base(), torque.base(), joint.mm());
      double required = PressForceKernel.pressureToHold(resultant, joint.mm(), length.mm(), adhesion, safety);
      Stress any = new Stress(required);
      FitLimits limits = FitLimits.of(one, rule, any, one.stresses(any), true);
      double allowed =
          Math.min(limit(limits.stud()), limit(limits.housing())) / partSafety;
      double loss = one.smoothingLoss().mm();
      return new RequiredInterference(
          stud,
          housing,
          joint,
          length,
          smoothing,
          new Force(resultant),
          adhesion,
          safety,
          new Stress(required),
          new Stress(allowed),
          new Length(one.interferenceFor(required) + loss),
          new Length(one.interferenceFor(allowed) + loss));
    }

    private static double limit(FitLimits.PartLimit part) {
      return part.pressure().map(Stress::base)
          .orElseThrow(
              () -> new InputException("limit of a part", part.criterion(), "a known strength", "it bounds the interference"));
    }
  }
}

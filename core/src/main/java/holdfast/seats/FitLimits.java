// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Numbers;
import holdfast.quantity.Stress;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Message;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * Elastic limits of both parts and safety of the tightest pair against them.
 *
 * @param rule theory of yield for parts that yield
 * @param greatestPressure greatest joint pressure of the fit
 * @param stud limit of the stud
 * @param housing limit of the housing
 */
public record FitLimits(YieldRule rule, Stress greatestPressure, PartLimit stud, PartLimit housing)
    implements Traced, Serializable {
  private static final SourceRef YIELD = SourceRef.derived("yield theories on the stresses of a thick ring");
  private static final SourceRef SAFETY = SourceRef.derived("limit pressure over greatest pressure");

  public FitLimits {
    Objects.requireNonNull(rule, "rule");
    Objects.requireNonNull(greatestPressure, "greatestPressure");
    Objects.requireNonNull(stud, "stud");
    Objects.requireNonNull(housing, "housing");
  }

  /**
   * Limit of one part.
   *
   * @param criterion what sets the limit: the theory of yield, tensile strength, or what is unknown
   * @param limitPressure joint pressure at the limit; null if the strength is unknown
   * @param greatestPressure greatest joint pressure of the fit
   * @param brittle whether the limit is fracture, not yield
   */
  public record PartLimit(String criterion, Stress limitPressure, Stress greatestPressure, boolean brittle)
      implements Serializable {
    public PartLimit {
      Objects.requireNonNull(criterion, "criterion");
      Objects.requireNonNull(greatestPressure, "greatestPressure");
    }

    /**
     * Joint pressure at the limit.
     *
     * @return the pressure; empty if the strength is unknown
     */
    public Optional<Stress> pressure() {
      return Optional.ofNullable(limitPressure);
    }

    /**
     * Limit pressure over the greatest pressure.
     *
     * @return the safety, a ratio; empty if the strength is unknown or nothing presses
     */
    public OptionalDouble safety() {
      double safety = limitPressure == null ? Double.POSITIVE_INFINITY : limitPressure.base() / greatestPressure.base();
      return Double.isFinite(safety) ? OptionalDouble.of(safety) : OptionalDouble.empty();
    }

    /**
     * Whether the tightest pair stays below the limit.
     *
     * @return true if the strength is known and the pressure is not above the limit
     */
    public boolean holds() {
      return limitPressure != null && greatestPressure.base() <= limitPressure.base();
    }

    /**
     * Whether the tightest pair is beyond the limit.
     *
     * @return true if the strength is known and the pressure is above the limit
     */
    public boolean exceeded() {
      return limitPressure != null && greatestPressure.base() > limitPressure.base();
    }

    /**
     * The limit in words, its pressure as a quantity.
     *
     * @return for example limit and safety, or what is unknown
     */
    public Message words() {
      return limitPressure == null
          ? Message.of(criterion)
          : Message.of(criterion, ": limit ", limitPressure,
              safety().isPresent() ? ", safety " + Numbers.significant(safety().getAsDouble(), 3) : ", nothing presses");
    }

    @Override
    public String toString() {
      return limitPressure == null
          ? criterion
          : criterion + ": limit " + Numbers.fixed(limitPressure.base(), 1) + " MPa"
              + (safety().isPresent() ? ", safety " + Numbers.significant(safety().getAsDouble(), 3) : ", nothing presses");
    }
  }

  /** Limit and safety of both parts; a part whose strength is unknown has neither. */
  @Override
  public Derivation explain() {
    Derivation.Builder steps = Derivation.of("Elastic limits of the tightest pair, " + rule)
        .step("pmax", "greatest joint pressure", "pressure of the tightest pair", greatestPressure.megapascal(), "MPa",
            FitDerivation.RING);
    explain(steps, stud, "S", "stud", "yield strength over the stresses of the stud for a pressure of 1");
    explain(steps, housing, "H", "housing", housing.brittle()
        ? "tensile strength over the greatest principal stress of the housing for a pressure of 1"
        : "yield strength over the stresses of the housing for a pressure of 1");
    Stream.of(stud, housing).flatMapToDouble(part -> part.safety().stream()).min()
        .ifPresent(least -> steps.step("S", "safety that governs", "min(SS, SH)", least, "", SAFETY));
    return steps.build();
  }

  private void explain(Derivation.Builder steps, PartLimit part, String index, String name, String expression) {
    part.pressure().ifPresent(limit -> steps.step("p" + index, "joint pressure at the limit of the " + name + ", "
        + part.criterion(), expression, limit.megapascal(), "MPa", YIELD));
    part.safety().ifPresent(safety -> steps.step("S" + index, "safety of the " + name, "p" + index + "/pmax", safety, "", SAFETY,
        "pmax = " + greatestPressure));
  }

  /** What is not judged, because a strength is not known. */
  @Override
  public List<Warning> warnings() {
    return Stream.of(stud, housing)
        .filter(part -> part.pressure().isEmpty())
        .map(part -> new Warning("strength-unknown", part.criterion() + ": its limit is not judged", YIELD))
        .toList();
  }

  static FitLimits of(InterferenceFit fit, YieldRule rule) {
    Stress pressure = fit.pressure().greatest();
    return new FitLimits(rule, pressure, stud(fit, rule, pressure), housing(fit, rule, pressure));
  }

  static PartLimit stud(InterferenceFit fit, YieldRule rule, Stress pressure) {
    Material material = fit.stud().material();
    if (material.yieldStrength().isEmpty()) {
      return new PartLimit("yield strength of " + material.name() + " unknown", null, pressure, false);
    }
    double limit =
        ElasticLimitKernel.studPressure(
            rule, material.yieldStrength().get().base(), fit.stud().hole().mm() / fit.interference().joint().mm());
    return new PartLimit(rule.toString(), new Stress(limit), pressure, false);
  }

  static PartLimit housing(InterferenceFit fit, YieldRule rule, Stress pressure) {
    Material material = fit.housing().material();
    double joint = fit.interference().joint().mm();
    double hoop = fit.housing().shape().hoopFactor(joint);
    double outline = fit.housing().shape().outlineFactor(joint);
    if (material.brittle()) {
      if (material.tensileStrength().isEmpty()) {
        return new PartLimit("tensile strength of " + material.name() + " unknown", null, pressure, true);
      }
      // Near an edge the outline can be stressed higher than the bore.
      double limit =
          ElasticLimitKernel.brittleHousingPressure(material.tensileStrength().get().base(), Math.max(hoop, outline));
      return new PartLimit("greatest principal stress", new Stress(limit), pressure, true);
    }
    if (material.yieldStrength().isEmpty()) {
      return new PartLimit("yield strength of " + material.name() + " unknown", null, pressure, false);
    }
    double yield = material.yieldStrength().get().base();
    double limit = Math.min(ElasticLimitKernel.housingPressure(rule, yield, hoop), outline == 0 ? yield : yield / outline);
    return new PartLimit(rule.toString(), new Stress(limit), pressure, false);
  }

  @Override
  public String toString() {
    return "stud " + stud + "; housing " + housing;
  }
}

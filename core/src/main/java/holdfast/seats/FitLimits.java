// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Numbers;
import holdfast.quantity.Stress;
import java.io.Serializable;
import java.util.OptionalDouble;

/**
 * Elastic limits of both parts and safety of the tightest pair against them.
 *
 * @param rule theory of yield for parts that yield
 * @param greatestPressure greatest joint pressure of the fit
 * @param stud limit of the stud
 * @param housing limit of the housing
 */
public record FitLimits(YieldRule rule, Stress greatestPressure, PartLimit stud, PartLimit housing) implements Serializable {

  /**
   * Limit of one part.
   *
   * @param criterion what sets the limit: the theory of yield, tensile strength, or what is unknown
   * @param limitPressure joint pressure at the limit in MPa; NaN if the strength is unknown
   * @param safety limit pressure over the greatest pressure; NaN if unknown, infinite without pressure
   * @param brittle whether the limit is fracture, not yield
   */
  public record PartLimit(String criterion, double limitPressure, double safety, boolean brittle) implements Serializable {
    /**
     * Joint pressure at the limit.
     *
     * @return MPa; empty if the strength is unknown
     */
    public OptionalDouble pressure() {
      return Double.isNaN(limitPressure) ? OptionalDouble.empty() : OptionalDouble.of(limitPressure);
    }

    /**
     * Whether the tightest pair stays below the limit.
     *
     * @return true if the safety is known and at least 1
     */
    public boolean holds() {
      return safety >= 1;
    }

    /**
     * Whether the tightest pair is beyond the limit.
     *
     * @return true if the safety is known and below 1
     */
    public boolean exceeded() {
      return safety < 1;
    }

    @Override
    public String toString() {
      return Double.isNaN(limitPressure)
          ? criterion
          : criterion + ": limit " + Numbers.fixed(limitPressure, 1) + " MPa, safety " + Numbers.significant(safety, 3);
    }
  }

  static FitLimits of(InterferenceFit fit, YieldRule rule) {
    double p = fit.pressure().greatest().base();
    return new FitLimits(rule, new Stress(p), stud(fit, rule, p), housing(fit, rule, p));
  }

  static PartLimit stud(InterferenceFit fit, YieldRule rule, double p) {
    Material material = fit.stud().material();
    if (material.yieldStrength().isEmpty()) {
      return new PartLimit("yield strength of " + material.name() + " unknown", Double.NaN, Double.NaN, false);
    }
    double limit =
        ElasticLimitKernel.studPressure(
            rule, material.yieldStrength().get().base(), fit.stud().hole().mm() / fit.interference().joint().mm());
    return new PartLimit(rule.toString(), limit, limit / p, false);
  }

  static PartLimit housing(InterferenceFit fit, YieldRule rule, double p) {
    Material material = fit.housing().material();
    double joint = fit.interference().joint().mm();
    double hoop = fit.housing().shape().hoopFactor(joint);
    double outline = fit.housing().shape().outlineFactor(joint);
    if (material.brittle()) {
      if (material.tensileStrength().isEmpty()) {
        return new PartLimit("tensile strength of " + material.name() + " unknown", Double.NaN, Double.NaN, true);
      }
      // Near an edge the outline can be stressed higher than the bore.
      double limit =
          ElasticLimitKernel.brittleHousingPressure(material.tensileStrength().get().base(), Math.max(hoop, outline));
      return new PartLimit("greatest principal stress", limit, limit / p, true);
    }
    if (material.yieldStrength().isEmpty()) {
      return new PartLimit("yield strength of " + material.name() + " unknown", Double.NaN, Double.NaN, false);
    }
    double yield = material.yieldStrength().get().base();
    double limit = Math.min(ElasticLimitKernel.housingPressure(rule, yield, hoop), outline == 0 ? yield : yield / outline);
    return new PartLimit(rule.toString(), limit, limit / p, false);
  }

  @Override
  public String toString() {
    return "stud " + stud + "; housing " + housing;
  }
}

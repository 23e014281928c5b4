// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings.reference;

import holdfast.quantity.Check;
import holdfast.tables.Provenance;
import holdfast.tables.Source;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;

/**
 * Life of a deep groove ball bearing from its ball loads: the ring load is [mean Q^3]^(1/3) on a ring that rotates
 * against the load and [mean Q^(10/3)]^(3/10) on one that stands still, and
 * {@code L = [(Qei/Qci)^(10/3) + (Qee/Qce)^(10/3)]^(-9/10)}. Derived as for laminae, with load exponent 3 and slope 10/9.
 */
@Source(document = "ISO/TS 16281:2008", locator = "dynamic equivalent load of a ring, reference life",
    provenance = Provenance.MEMORY)
@Source(document = "derivation", locator = "weakest link, Weibull slope 10/9, load exponent 3", provenance = Provenance.DERIVED)
public final class BallLifeKernel {
  private BallLifeKernel() {}

  /**
   * Life after a solve.
   *
   * @param w solved workspace
   * @param qci rating of the inner ring in N, over 0
   * @param qce rating of the outer ring in N, over 0
   * @param innerRotates whether the inner ring rotates against the load
   * @param outerRotates whether the outer ring rotates against the load
   * @return life in 10^6 revolutions, over 0
   * @throws holdfast.quantity.InputException if a rating is not above zero
   */
  public static double life(BallWorkspace w, double qci, double qce, boolean innerRotates, boolean outerRotates) {
    Objects.requireNonNull(w, "w");
    check(w, qci, qce);
    return Math.pow(Inputs.consumed(power(w, qci, innerRotates) + power(w, qce, outerRotates)), -0.9);
  }

  /**
   * Life after a solve when the life of each ring is multiplied by a factor for lubrication and cleanliness.
   *
   * @param w solved workspace
   * @param qci rating of the inner ring in N, over 0
   * @param qce rating of the outer ring in N, over 0
   * @param innerRotates whether the inner ring rotates against the load
   * @param outerRotates whether the outer ring rotates against the load
   * @param factor aISO as a function of Qe/Qc of the ring; must give numbers above 0
   * @return life in 10^6 revolutions
   * @throws holdfast.quantity.InputException if a rating or a factor is not above zero
   */
  public static double modifiedLife(
      BallWorkspace w, double qci, double qce, boolean innerRotates, boolean outerRotates, DoubleUnaryOperator factor) {
    Objects.requireNonNull(w, "w");
    Objects.requireNonNull(factor, "factor");
    check(w, qci, qce);
    double inner = power(w, qci, innerRotates);
    double outer = power(w, qce, outerRotates);
    return Math.pow(Inputs.consumed(modified(inner, factor) + modified(outer, factor)), -0.9);
  }

  private static double modified(double power, DoubleUnaryOperator factor) {
    double a = Check.positive(factor.applyAsDouble(Math.pow(power, 0.3)), "factor aISO of a ring", "",
        "a life cannot be multiplied by nothing");
    return power * Math.pow(a, -10.0 / 9);
  }

  /** (Qe/Qc)^(10/3). */
  private static double power(BallWorkspace w, double qc, boolean rotates) {
    double sum = 0;
    for (int j = 0; j < w.evaluated; j++) {
      double v = w.load[j] / qc;
      sum += w.weight[j] * v * v * v * (rotates ? 1 : Math.cbrt(v));
    }
    double mean = sum / w.elements;
    return rotates ? mean * Math.pow(mean, 1.0 / 9) : mean;
  }

  private static void check(BallWorkspace w, double qci, double qce) {
    if (w.iterations == 0) {
      throw Inputs.refused("workspace", "unsolved", "solved", "the life follows from the ball loads");
    }
    Check.positive(qci, "rating of the inner ring", "N", "a rating is a force above zero");
    Check.positive(qce, "rating of the outer ring", "N", "a rating is a force above zero");
  }
}

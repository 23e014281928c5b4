// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings.reference;

import holdfast.quantity.Check;
import holdfast.tables.Provenance;
import holdfast.tables.Source;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;

/**
 * Life of a radial roller bearing from its lamina loads.
 *
 * <p>Derived from the weakest link with Weibull slope e = 9/8 and the load exponent 4 of line contacts: a volume element
 * of a ring that moves through the load zone takes the mean of Q^4 (linear accumulation); the elements of a ring that
 * stands still in the load zone each keep their own load, and the product of their survival chances takes the mean of
 * Q^(4e) = Q^(9/2). Lamina k then has the ring load
 * {@code qe = [mean (f q)^4]^(1/4)} or {@code [mean (f q)^(9/2)]^(2/9)} and the life (qe/qc)^-4 in 10^6 revolutions; all
 * laminae of both rings together have {@code L = {Σ [(qei/qci)^(9/2) + (qee/qce)^(9/2)]}^(-8/9)}.
 */
@Source(document = "ISO/TS 16281:2008", locator = "dynamic equivalent load of a lamina, reference life",
    provenance = Provenance.MEMORY)
@Source(document = "derivation", locator = "weakest link, Weibull slope 9/8, load exponent 4", provenance = Provenance.DERIVED)
public final class LaminaLifeKernel {
  private LaminaLifeKernel() {}

  /**
   * Life after a solve.
   *
   * @param w solved workspace
   * @param qci rating Qci of the inner ring contact in N, over 0
   * @param qce rating Qce of the outer ring contact in N, over 0
   * @param innerRotates whether the inner ring rotates against the load
   * @param outerRotates whether the outer ring rotates against the load
   * @return life in 10^6 revolutions, over 0
   * @throws holdfast.quantity.InputException if a rating is not above zero
   */
  public static double life(LaminaWorkspace w, double qci, double qce, boolean innerRotates, boolean outerRotates) {
    Objects.requireNonNull(w, "w");
    check(w, qci, qce);
    double toInner = w.stiffness / qci;
    double outerOverInner = power9Over2(qci / qce);
    boolean rotating = innerRotates || outerRotates;
    boolean standing = !innerRotates || !outerRotates;
    double inner = 0;
    double outer = 0;
    for (int k = 0; k < w.laminae; k++) {
      double unit = w.severity[k] * toInner;
      double moving = rotating ? rotating(w, k, unit) : 0;
      double still = standing ? standing(w, k, unit) : 0;
      inner += innerRotates ? moving : still;
      outer += outerRotates ? moving : still;
    }
    return Math.pow(Inputs.consumed(inner + outerOverInner * outer), -8.0 / 9);
  }

  /**
   * Life after a solve when the life of each lamina is multiplied by a factor for lubrication and cleanliness.
   *
   * <p>Derived: a lamina with the life a (qe/qc)^-4 enters the sum as a^(-9/8) (qe/qc)^(9/2). The load on which the
   * factor of the recalled method is based is not certain and left out; the factor is asked for as a function of Qe/Qc of
   * a whole roller loaded like the lamina, (qe/qc) w^(-2/9) with w the share of the lamina, which does not depend on how the
   * roller is cut. It stands where P/C stands for a whole bearing.
   *
   * @param w solved workspace
   * @param qci rating Qci of the inner ring contact in N, over 0
   * @param qce rating Qce of the outer ring contact in N, over 0
   * @param innerRotates whether the inner ring rotates against the load
   * @param outerRotates whether the outer ring rotates against the load
   * @param factor aISO as a function of Qe/Qc of a roller loaded like the lamina; must give numbers above 0
   * @return life in 10^6 revolutions
   * @throws holdfast.quantity.InputException if a rating or a factor is not above zero
   */
  public static double modifiedLife(
      LaminaWorkspace w, double qci, double qce, boolean innerRotates, boolean outerRotates, DoubleUnaryOperator factor) {
    Objects.requireNonNull(w, "w");
    Objects.requireNonNull(factor, "factor");
    check(w, qci, qce);
    double sum = 0;
    for (int k = 0; k < w.laminae; k++) {
      double i = w.severity[k] * w.stiffness / qci;
      double e = w.severity[k] * w.stiffness / qce;
      sum += modified(innerRotates ? rotating(w, k, i) : standing(w, k, i), w.share[k], factor);
      sum += modified(outerRotates ? rotating(w, k, e) : standing(w, k, e), w.share[k], factor);
    }
    return Math.pow(Inputs.consumed(sum), -8.0 / 9);
  }

  /**
   * Life ratios against the same bearing without tilt, for many tilts in the plane of the load. Constant factors of the
   * ratings cancel.
   *
   * @param w workspace with rollers and laminae set
   * @param load radial load Fr in N, over 0
   * @param clearance radial clearance s in mm; negative for preload
   * @param tilts tilts in rad, -0.2 to 0.2
   * @param qci rating Qci of the inner ring contact in N, over 0
   * @param qce rating Qce of the outer ring contact in N, over 0
   * @param innerRotates whether the inner ring rotates against the load
   * @param outerRotates whether the outer ring rotates against the load
   * @param ratios receives the ratios (dimensionless), 1 at tilt 0
   * @throws holdfast.quantity.InputException if the arrays differ in length or an argument is outside its range
   */
  public static void lifeRatios(
      LaminaWorkspace w, double load, double clearance, double[] tilts, double qci, double qce, boolean innerRotates,
      boolean outerRotates, double[] ratios) {
    Objects.requireNonNull(w, "w");
    Objects.requireNonNull(tilts, "tilts");
    Objects.requireNonNull(ratios, "ratios");
    if (tilts.length != ratios.length) {
      throw Inputs.refused("life ratios", ratios.length + " entries", tilts.length + " entries", "one ratio for each tilt");
    }
    LoadDistributionKernel.tilted(w, load, clearance, 0, 0);
    double aligned = life(w, qci, qce, innerRotates, outerRotates);
    for (int i = 0; i < tilts.length; i++) {
      LoadDistributionKernel.tilted(w, load, clearance, tilts[i], 0);
      ratios[i] = life(w, qci, qce, innerRotates, outerRotates) / aligned;
    }
  }

  private static double modified(double power, double share, DoubleUnaryOperator factor) {
    if (power == 0) {
      return 0;
    }
    double a = Check.positive(factor.applyAsDouble(Math.pow(power / share, 2.0 / 9)), "factor aISO of a lamina", "",
        "a life cannot be multiplied by nothing");
    return power * Math.pow(a, -9.0 / 8);
  }

  /** (qe/qc)^(9/2) of a lamina on a ring that rotates against the load: the mean of fourth powers, to the power 9/8. */
  private static double rotating(LaminaWorkspace w, int k, double unit) {
    double sum = 0;
    for (int j = 0; j < w.evaluated; j++) {
      if (w.loaded[j]) {
        double v = unit * w.load[j * w.laminae + k];
        double square = v * v;
        sum += w.weight[j] * square * square;
      }
    }
    double mean = sum / w.elements;
    return mean * Math.sqrt(Math.sqrt(Math.sqrt(mean)));
  }

  /** (qe/qc)^(9/2) of a lamina on a ring that stands still under the load: the mean of the powers 9/2. */
  private static double standing(LaminaWorkspace w, int k, double unit) {
    double sum = 0;
    for (int j = 0; j < w.evaluated; j++) {
      if (w.loaded[j]) {
        sum += w.weight[j] * power9Over2(unit * w.load[j * w.laminae + k]);
      }
    }
    return sum / w.elements;
  }

  private static double power9Over2(double v) {
    double square = v * v;
    return square * square * Math.sqrt(v);
  }

  private static void check(LaminaWorkspace w, double qci, double qce) {
    if (w.iterations == 0) {
      throw Inputs.refused("workspace", "unsolved", "solved", "the life follows from the lamina loads");
    }
    Check.positive(qci, "rating of the inner ring contact", "N", "a rating is a force above zero");
    Check.positive(qce, "rating of the outer ring contact", "N", "a rating is a force above zero");
  }
}

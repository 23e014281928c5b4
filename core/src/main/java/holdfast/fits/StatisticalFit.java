// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.quantity.Check;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import holdfast.tables.Provenance;
import holdfast.tables.Source;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * What a fit becomes in production: the clearance of parts taken at random from two independent processes.
 *
 * @param fit the fit on the drawing
 * @param hole sizes of the holes
 * @param shaft sizes of the shafts
 */
@Source(
    document = "derivation",
    locator = "convolution of two independent normal or uniform distributions",
    provenance = Provenance.DERIVED)
public record StatisticalFit(Fit fit, SizeDistribution hole, SizeDistribution shaft) implements Traced, Serializable {
  private static final SourceRef CONVOLUTION =
      SourceRef.derived("difference of two independent sizes: means subtract, variances add, distributions convolve");
  /** A share of parts outside the limits above this is worth a warning: 0.27 % lies beyond ± 3 σ. */
  private static final double USUAL_SHARE = 0.0028;

  public StatisticalFit {
    Objects.requireNonNull(fit, "fit");
    Objects.requireNonNull(hole, "hole");
    Objects.requireNonNull(shaft, "shaft");
  }

  /**
   * Normal processes in the middle of both tolerances.
   *
   * @param fit the fit on the drawing
   * @param cp capability index Cp of both processes, over 0
   * @return the statistical fit
   */
  public static StatisticalFit centred(Fit fit, double cp) {
    Objects.requireNonNull(fit, "fit");
    return new StatisticalFit(
        fit, SizeDistribution.centred(fit.hole().limits(), cp), SizeDistribution.centred(fit.shaft().limits(), cp));
  }

  /**
   * Sizes spread evenly over both tolerances.
   *
   * @param fit the fit on the drawing
   * @return the statistical fit
   */
  public static StatisticalFit uniform(Fit fit) {
    Objects.requireNonNull(fit, "fit");
    return new StatisticalFit(
        fit, SizeDistribution.uniform(fit.hole().limits()), SizeDistribution.uniform(fit.shaft().limits()));
  }

  /**
   * Mean clearance.
   *
   * @return mean hole - mean shaft; negative for an interference
   */
  public Length meanClearance() {
    return LimitDeviations.difference(hole.mean(), shaft.mean());
  }

  /**
   * Standard deviation of the clearance.
   *
   * @return root of the sum of both variances
   */
  public Length standardDeviation() {
    return new Length(Math.hypot(hole.standardDeviation().mm(), shaft.standardDeviation().mm()));
  }

  /**
   * Probability that a pair interferes.
   *
   * @return probability of a clearance below 0
   */
  public double probabilityOfInterference() {
    return probabilityBelow(new Length(0));
  }

  /**
   * Probability that the clearance stays below a value.
   *
   * @param clearance the value; negative for an interference
   * @return probability from 0 to 1
   */
  public double probabilityBelow(Length clearance) {
    Objects.requireNonNull(clearance, "clearance");
    return ClearanceDistributionKernel.probabilityBelow(
        clearance.in(KnownUnits.UM), meanUm(), hole.deviationUm(), hole.isNormal(), shaft.deviationUm(), shaft.isNormal());
  }

  /**
   * Probability that the clearance lies between two values.
   *
   * @param least the lower value
   * @param greatest the upper value
   * @return probability from 0 to 1
   */
  public double probabilityBetween(Length least, Length greatest) {
    Objects.requireNonNull(least, "least");
    Objects.requireNonNull(greatest, "greatest");
    return Math.max(0, probabilityBelow(greatest) - probabilityBelow(least));
  }

  /**
   * Clearance that is not exceeded with a probability.
   *
   * @param probability over 0 and under 1 (dimensionless)
   * @return the quantile; negative for an interference
   * @throws holdfast.quantity.InputException if the probability is not over 0 and under 1
   */
  public Length quantile(double probability) {
    return KnownUnits.UM.of(
        ClearanceDistributionKernel.quantile(
            probability, meanUm(), hole.deviationUm(), hole.isNormal(), shaft.deviationUm(), shaft.isNormal()));
  }

  /**
   * Draws pairs at random.
   *
   * @param pairs how many, 1 or more
   * @param seed start of the random numbers; the same seed gives the same sample
   * @return the sample
   * @throws holdfast.quantity.InputException if no pair is asked for
   */
  public FitSample sample(int pairs, long seed) {
    return FitSample.draw(this, pairs, seed);
  }

  double meanUm() {
    return meanClearance().in(KnownUnits.UM);
  }

  /** Mean and standard deviation of the clearance, and, as the last step, the probability of interference. */
  @Override
  public Derivation explain() {
    return Derivation.of(fit.name() + ", clearance in production")
        .steps(fit.explain())
        .step("mu", "mean clearance", "mu_hole - mu_shaft", meanUm(), "µm", CONVOLUTION, "hole " + hole, "shaft " + shaft)
        .step("sigma", "standard deviation of the clearance", "sqrt(sigma_hole² + sigma_shaft²)",
            standardDeviation().in(KnownUnits.UM), "µm", CONVOLUTION)
        .step("P", "probability of interference", "F(0), F the distribution function of the clearance",
            probabilityOfInterference(), "", CONVOLUTION)
        .build();
  }

  @Override
  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>(fit.warnings());
    outside(warnings, "holes", hole.shareOutside(fit.hole().limits()));
    outside(warnings, "shafts", shaft.shareOutside(fit.shaft().limits()));
    return List.copyOf(warnings);
  }

  private static void outside(List<Warning> warnings, String parts, double share) {
    if (share > USUAL_SHARE) {
      String message = percent(share) + " of the " + parts + " lie outside their limits of size";
      warnings.add(new Warning("parts-outside-limits", message, CONVOLUTION));
    }
  }

  static String percent(double share) {
    return Numbers.significant(Check.finite(share, "share", "") * 100, 3) + " %";
  }

  /** For example {@code "25 H7/k6 in production: mean clearance 2 µm ± 4.1 µm (one sigma), 31.3 % interfere"}. */
  @Override
  public String toString() {
    return fit.name() + " in production: mean clearance " + Numbers.significant(meanUm(), 4) + " µm ± "
        + Numbers.significant(standardDeviation().in(KnownUnits.UM), 3) + " µm (one sigma), "
        + percent(probabilityOfInterference()) + " interfere";
  }
}

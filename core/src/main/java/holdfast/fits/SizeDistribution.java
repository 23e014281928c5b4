// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import holdfast.tables.Provenance;
import holdfast.tables.Source;
import java.io.Serializable;
import java.util.Objects;

/**
 * How the sizes of parts from one process scatter.
 *
 * @param shape normal or uniform
 * @param mean mean size
 * @param standardDeviation standard deviation of the size, 0 or more
 */
@Source(document = "derivation", locator = "Cp = T / (6 sigma), Cpk = distance to the nearer limit / (3 sigma)",
    provenance = Provenance.DERIVED)
public record SizeDistribution(Shape shape, Length mean, Length standardDeviation) implements Serializable {

  /** Shape of a distribution. */
  public enum Shape {
    /** Normal distribution: an undisturbed process. */
    NORMAL,
    /** Uniform distribution: nothing is known but the limits, or a tool that wears between them. */
    UNIFORM
  }

  /** Towards which limit a process lies off the middle. */
  public enum Side {
    /** Towards the lower limit of size. */
    LOWER,
    /** Towards the upper limit of size. */
    UPPER
  }

  // Refuses a negative standard deviation.
  public SizeDistribution {
    Objects.requireNonNull(shape, "shape");
    Objects.requireNonNull(mean, "mean");
    Objects.requireNonNull(standardDeviation, "standardDeviation");
    if (standardDeviation.mm() < 0) {
      throw new InputException(
          "standard deviation", standardDeviation.toString(), "0 µm or more", "it is the root of a variance");
    }
  }

  /**
   * A normal process.
   *
   * @param mean mean size
   * @param standardDeviation standard deviation, 0 or more
   * @return the distribution
   * @throws InputException if the standard deviation is negative
   */
  public static SizeDistribution normal(Length mean, Length standardDeviation) {
    return new SizeDistribution(Shape.NORMAL, mean, standardDeviation);
  }

  /**
   * A normal process in the middle of the tolerance.
   *
   * @param limits limits of size
   * @param cp capability index Cp = T / (6 σ), over 0; 1 puts the limits at ± 3 σ
   * @return the distribution
   * @throws InputException if the index is not positive
   */
  public static SizeDistribution centred(LimitsOfSize limits, double cp) {
    Objects.requireNonNull(limits, "limits");
    return capable(limits, cp, cp, Side.UPPER);
  }

  /**
   * A normal process off the middle of the tolerance.
   *
   * @param limits limits of size
   * @param cp capability index Cp = T / (6 σ), over 0
   * @param cpk index of the nearer limit, Cpk = distance of the mean to it / (3 σ); not above Cp, negative beyond the limit
   * @param side which limit is nearer
   * @return the distribution
   * @throws InputException if Cp is not positive or Cpk above Cp
   */
  public static SizeDistribution capable(LimitsOfSize limits, double cp, double cpk, Side side) {
    Objects.requireNonNull(limits, "limits");
    Objects.requireNonNull(side, "side");
    Check.positive(cp, "capability index Cp", "", "Cp = T / (6 sigma)");
    Check.within(cpk, -100, cp, "capability index Cpk", "", "Cpk is at most Cp, then the process is centred");
    double sigma = limits.tolerance().mm() / (6 * cp);
    double fromLimit = 3 * sigma * cpk;
    double mean = side == Side.UPPER ? limits.upper().mm() - fromLimit : limits.lower().mm() + fromLimit;
    return normal(new Length(mean), new Length(sigma));
  }

  /**
   * Sizes spread evenly over the whole tolerance.
   *
   * @param limits limits of size
   * @return the distribution
   */
  public static SizeDistribution uniform(LimitsOfSize limits) {
    Objects.requireNonNull(limits, "limits");
    Length mean = limits.lower().plus(limits.upper()).times(0.5);
    return new SizeDistribution(Shape.UNIFORM, mean, new Length(limits.tolerance().mm() / Math.sqrt(12)));
  }

  /**
   * Share of parts outside limits of size.
   *
   * @param limits the limits
   * @return share from 0 to 1
   */
  public double shareOutside(LimitsOfSize limits) {
    Objects.requireNonNull(limits, "limits");
    double above = fromMean(limits.upper());
    double within = ClearanceDistributionKernel.probability(above, 0, deviationUm(), isNormal(), 0, isNormal());
    double below = fromMean(limits.lower());
    return ClearanceDistributionKernel.probabilityBelow(below, 0, deviationUm(), isNormal(), 0, isNormal()) + (1 - within);
  }

  /** In µm from the mean; a fixed second size of 0 makes the difference the size itself. */
  private double fromMean(Length size) {
    return LimitDeviations.difference(size, mean).in(KnownUnits.UM);
  }

  boolean isNormal() {
    return shape == Shape.NORMAL;
  }

  double deviationUm() {
    return standardDeviation.in(KnownUnits.UM);
  }

  /** For example {@code "normal, mean 25.0105 mm, standard deviation 3.5 µm"}. */
  @Override
  public String toString() {
    return (isNormal() ? "normal" : "uniform") + ", mean " + FitText.size(mean) + ", standard deviation "
        + Numbers.significant(deviationUm(), 4) + " µm";
  }
}

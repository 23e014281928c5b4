// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import java.io.InvalidObjectException;
import java.io.ObjectStreamException;
import java.io.Serializable;
import java.util.Arrays;
import java.util.Objects;
import java.util.SplittableRandom;

/**
 * Clearances of pairs drawn at random from two processes. The same seed gives the same sample on every platform: the
 * generator is fixed, and the functions are those of {@link StrictMath}.
 */
public final class FitSample implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Clearances in µm, ascending. */
  private final double[] sorted;
  private final double mean;
  private final double deviation;

  private FitSample(double[] sorted) {
    this.sorted = sorted;
    double sum = 0;
    for (double value : sorted) {
      sum += value;
    }
    this.mean = sum / sorted.length;
    double squares = 0;
    for (double value : sorted) {
      squares += (value - mean) * (value - mean);
    }
    this.deviation = sorted.length > 1 ? Math.sqrt(squares / (sorted.length - 1)) : 0;
  }

  private static final int MOST = 10_000_000;

  /** A stream may hold anything: sorted anew, and mean and deviation computed from what came. */
  private Object readResolve() throws ObjectStreamException {
    if (sorted == null || sorted.length == 0 || sorted.length > MOST) {
      throw new InvalidObjectException("sample: 1 to " + MOST + " clearances are wanted");
    }
    double[] clearances = sorted.clone();
    for (double clearance : clearances) {
      if (!(Math.abs(clearance) <= Check.GREATEST)) {
        throw new InvalidObjectException("sample: a clearance of " + clearance + " µm");
      }
    }
    Arrays.sort(clearances);
    return new FitSample(clearances);
  }

  static FitSample draw(StatisticalFit fit, int pairs, long seed) {
    Check.within(pairs, 1, MOST, "number of pairs", "", "an empty sample says nothing, a larger one no more");
    SplittableRandom random = new SplittableRandom(seed);
    double[] clearances = new double[pairs];
    double middle = fit.meanUm();
    for (int i = 0; i < pairs; i++) {
      clearances[i] = middle + deviate(fit.hole(), random) - deviate(fit.shaft(), random);
    }
    Arrays.sort(clearances);
    return new FitSample(clearances);
  }

  /** Deviation of a size from its mean, µm. */
  private static double deviate(SizeDistribution size, SplittableRandom random) {
    double u = random.nextDouble();
    if (!size.isNormal()) {
      return (2 * u - 1) * Math.sqrt(3) * size.deviationUm();
    }
    // Box and Muller; 1 - u is never 0.
    double radius = Math.sqrt(-2 * StrictMath.log(1 - u));
    return size.deviationUm() * radius * StrictMath.cos(2 * Math.PI * random.nextDouble());
  }

  /**
   * Number of pairs.
   *
   * @return how many were drawn
   */
  public int pairs() {
    return sorted.length;
  }

  /**
   * Mean clearance of the sample.
   *
   * @return the mean; negative for an interference
   */
  public Length meanClearance() {
    return KnownUnits.UM.of(mean);
  }

  /**
   * Standard deviation of the clearance in the sample.
   *
   * @return the standard deviation, 0 for a single pair
   */
  public Length standardDeviation() {
    return KnownUnits.UM.of(deviation);
  }

  /**
   * Share of pairs that interfere.
   *
   * @return share from 0 to 1
   */
  public double shareOfInterference() {
    return shareBelow(new Length(0));
  }

  /**
   * Share of pairs with a clearance below a value.
   *
   * @param clearance the value; negative for an interference
   * @return share from 0 to 1
   */
  public double shareBelow(Length clearance) {
    Objects.requireNonNull(clearance, "clearance");
    double limit = clearance.in(KnownUnits.UM);
    int low = 0;
    int high = sorted.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (sorted[middle] < limit) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return (double) low / sorted.length;
  }

  /**
   * Standard error of a share: by how much samples of this size scatter about the probability.
   *
   * @param share a share or probability, 0 to 1
   * @return root of share · (1 - share) / pairs
   * @throws InputException if the share is not from 0 to 1
   */
  public double standardError(double share) {
    Check.within(share, 0, 1, "share", "", "it is a part of a whole");
    return Math.sqrt(share * (1 - share) / sorted.length);
  }

  /**
   * Clearance that a share of the pairs does not exceed.
   *
   * @param share share of the sample, over 0, up to 1
   * @return the smallest clearance of the sample with at least that share of pairs at or below it
   * @throws InputException if the share is not over 0 and up to 1
   */
  public Length quantile(double share) {
    Check.overUpTo(share, 0, 1, "share", "", "it is a part of a whole");
    int index = Math.min(sorted.length, (int) Math.ceil(share * sorted.length)) - 1;
    return KnownUnits.UM.of(sorted[Math.max(0, index)]);
  }

  /** Number of pairs, mean and standard deviation, share of interference. */
  @Override
  public String toString() {
    return sorted.length + " pairs: mean clearance " + FitText.deviation(meanClearance()) + ", standard deviation "
        + FitText.amount(standardDeviation(), false) + ", " + StatisticalFit.percent(shareOfInterference()) + " interfere";
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.quantity.Numbers;
import java.io.Serializable;

/**
 * Share of like bearings that are expected to reach a life.
 *
 * @param percent S in %, from 50 to 99.95
 */
public record Reliability(double percent) implements Serializable, Comparable<Reliability> {
  /** The 90 % of the basic rating life L10. */
  public static final Reliability L10 = new Reliability(90);
  /** The 50 % of the median life L50. */
  public static final Reliability MEDIAN = new Reliability(50);

  // Refuses what the life modification factor does not cover.
  public Reliability {
    ReliabilityKernel.checkPercent(percent);
  }

  /**
   * A reliability in percent.
   *
   * @param percent S in %, from 50 to 99.95
   * @return the reliability
   * @throws holdfast.quantity.InputException if the number is outside the range
   */
  public static Reliability ofPercent(double percent) {
    return new Reliability(percent);
  }

  /**
   * Life modification factor for reliability.
   *
   * @return a1; 1 at 90 %
   */
  public double a1() {
    return ReliabilityKernel.a1(percent);
  }

  /**
   * Symbol of the life with this reliability.
   *
   * @return for example {@code "L10"} for 90 %, {@code "L0.05"} for 99.95 %
   */
  public String lifeSymbol() {
    return "L" + Numbers.significant(100 - percent, 6);
  }

  @Override
  public int compareTo(Reliability other) {
    return Double.compare(percent, other.percent);
  }

  /** For example {@code "95 %"}. */
  @Override
  public String toString() {
    return Numbers.significant(percent, 6) + " %";
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.tables.Provenance;
import holdfast.tables.Source;

/** Interference lost when the peaks of the joint faces are smoothed on joining. Lengths in mm. */
public final class RoughnessLossKernel {
  private static final String REASON = "a roughness height";

  private RoughnessLossKernel() {}

  /**
   * Loss from profile heights as recalled from the 2017 edition, {@code G = 0.4·(Rz_A + Rz_I)}.
   *
   * @param outer Rz of the housing bore in mm, 0 or more
   * @param inner Rz of the stud in mm, 0 or more
   * @return G in mm
   * @throws holdfast.quantity.InputException if a height is negative
   */
  @Source(document = "DIN 7190-1:2017", locator = "effective interference, Rz known", provenance = Provenance.MEMORY)
  public static double loss2017(double outer, double inner) {
    return 0.4 * sum(outer, inner);
  }

  /**
   * Loss from profile peak heights as recalled from the 2017 edition, {@code G = 0.8·(Rp_A + Rp_I)}.
   *
   * @param outerPeak Rp of the housing bore in mm, 0 or more
   * @param innerPeak Rp of the stud in mm, 0 or more
   * @return G in mm
   * @throws holdfast.quantity.InputException if a height is negative
   */
  @Source(document = "DIN 7190-1:2017", locator = "effective interference, Rp known", provenance = Provenance.MEMORY)
  public static double loss2017OfPeaks(double outerPeak, double innerPeak) {
    return 0.8 * sum(outerPeak, innerPeak);
  }

  /**
   * Loss from profile heights as recalled from the 2001 edition, {@code G = 0.8·(Rz_A + Rz_I)}.
   *
   * @param outer Rz of the housing bore in mm, 0 or more
   * @param inner Rz of the stud in mm, 0 or more
   * @return G in mm
   * @throws holdfast.quantity.InputException if a height is negative
   */
  @Source(document = "DIN 7190:2001", locator = "effective interference", provenance = Provenance.MEMORY)
  public static double loss2001(double outer, double inner) {
    return 0.8 * sum(outer, inner);
  }

  private static double sum(double outer, double inner) {
    return SeatChecks.gap(outer, "roughness of the housing bore", REASON)
        + SeatChecks.gap(inner, "roughness of the stud", REASON);
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.quantity.Check;
import holdfast.tables.Source;

/** Contamination factor eC by the equations of Annex A. */
public final class ContaminationKernel {
  private ContaminationKernel() {}

  /**
   * Contamination factor {@code eC = min(a κ^0.68 Dpw^0.55, 1) (1 - c / Dpw^(1/3))}, 0 where this is negative.
   *
   * @param a coefficient of the cleanliness, over 0
   * @param c coefficient of the cleanliness, over 0
   * @param kappa viscosity ratio κ, over 0
   * @param dpw pitch diameter in mm, over 0
   * @return eC, from 0 to 1
   * @throws holdfast.quantity.InputException if an argument is not above zero
   */
  @Source(document = "ISO 281:2007", locator = "Annex A, Figures A.1 to A.14")
  public static double factor(double a, double c, double kappa, double dpw) {
    Check.positive(a, "coefficient a", "", "a coefficient above zero");
    Check.positive(c, "coefficient c", "", "a coefficient above zero");
    Check.positive(kappa, "viscosity ratio κ", "", "a film carries the load");
    FatigueLimitKernel.checkPitch(dpw);
    double film = Math.min(1, a * Math.pow(kappa, 0.68) * Math.pow(dpw, 0.55));
    return film * Math.max(0, 1 - c / Math.cbrt(dpw));
  }

  static double checkFactor(double contamination) {
    return Check.within(contamination, 0, 1, "contamination factor eC", "", "ISO 281:2007, 9.3.3.3: 0 (very dirty) to 1 (clean)");
  }
}

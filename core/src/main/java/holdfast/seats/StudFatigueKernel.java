// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Check;
import holdfast.tables.Provenance;
import holdfast.tables.Source;

/**
 * Fatigue margins in the Haigh diagram (amplitude over mean stress) when amplitude and mean grow together. A mean stress
 * in compression gets no credit: it counts as 0. Stresses in MPa; σa ≥ 0, and σa and σm are not both without effect.
 */
public final class StudFatigueKernel {
  private StudFatigueKernel() {}

  /**
   * Margin by the straight line to the tensile strength.
   *
   * @param amplitude stress amplitude σa in MPa, 0 or more
   * @param mean mean stress σm in MPa
   * @param endurance endurance limit σe at mean stress 0 in MPa, over 0
   * @param strength tensile strength Rm in MPa, over 0
   * @return 1/(σa/σe + σm/Rm)
   * @throws holdfast.quantity.InputException if an argument is outside its range or nothing loads the stud
   */
  @Source(document = "Goodman 1899", locator = "straight line, modified form", provenance = Provenance.MEMORY)
  public static double goodman(double amplitude, double mean, double endurance, double strength) {
    double pull = check(amplitude, mean, endurance, strength, "tensile strength Rm");
    return 1 / (amplitude / endurance + pull / strength);
  }

  /**
   * Margin by the straight line to the yield strength.
   *
   * @param amplitude stress amplitude σa in MPa, 0 or more
   * @param mean mean stress σm in MPa
   * @param endurance endurance limit σe at mean stress 0 in MPa, over 0
   * @param yield yield strength Re in MPa, over 0
   * @return 1/(σa/σe + σm/Re)
   * @throws holdfast.quantity.InputException if an argument is outside its range or nothing loads the stud
   */
  @Source(document = "Soderberg 1930", locator = "straight line to the yield strength", provenance = Provenance.MEMORY)
  public static double soderberg(double amplitude, double mean, double endurance, double yield) {
    double pull = check(amplitude, mean, endurance, yield, "yield strength Re");
    return 1 / (amplitude / endurance + pull / yield);
  }

  /**
   * Margin by the parabola to the tensile strength.
   *
   * @param amplitude stress amplitude σa in MPa, 0 or more
   * @param mean mean stress σm in MPa
   * @param endurance endurance limit σe at mean stress 0 in MPa, over 0
   * @param strength tensile strength Rm in MPa, over 0
   * @return n from n σa/σe + (n σm/Rm)² = 1
   * @throws holdfast.quantity.InputException if an argument is outside its range or nothing loads the stud
   */
  @Source(document = "Gerber 1874", locator = "parabola", provenance = Provenance.MEMORY)
  public static double gerber(double amplitude, double mean, double endurance, double strength) {
    double pull = check(amplitude, mean, endurance, strength, "tensile strength Rm");
    double a = amplitude / endurance;
    double m = pull / strength;
    // The positive root, written so that it neither divides by m nor cancels.
    return 2 / (a + Math.sqrt(a * a + 4 * m * m));
  }

  /**
   * Margin against yielding in the first cycle.
   *
   * @param amplitude stress amplitude σa in MPa, 0 or more
   * @param mean mean stress σm in MPa
   * @param yield yield strength Re in MPa, over 0
   * @return Re/(σa + |σm|)
   * @throws holdfast.quantity.InputException if an argument is outside its range or nothing loads the stud
   */
  @Source(
      document = "derivation",
      locator = "largest stress of the cycle against the yield strength",
      provenance = Provenance.DERIVED)
  public static double firstYield(double amplitude, double mean, double yield) {
    Check.notNegative(amplitude, "stress amplitude σa", "MPa", "half the range of the stress");
    Check.finite(mean, "mean stress σm", "MPa");
    Check.positive(yield, "yield strength Re", "MPa", "strength of the stud");
    return yield / Check.positive(amplitude + Math.abs(mean), "largest stress", "MPa", "nothing loads the stud");
  }

  private static double check(double amplitude, double mean, double endurance, double limit, String limitName) {
    Check.notNegative(amplitude, "stress amplitude σa", "MPa", "half the range of the stress");
    Check.finite(mean, "mean stress σm", "MPa");
    Check.positive(endurance, "endurance limit σe", "MPa", "strength of the stud");
    Check.positive(limit, limitName, "MPa", "strength of the stud");
    double pull = Math.max(0, mean);
    Check.positive(amplitude + pull, "amplitude plus tensile mean stress", "MPa", "nothing tires the stud");
    return pull;
  }
}

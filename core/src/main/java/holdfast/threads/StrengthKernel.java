// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.tables.Source;

/** Loads of fasteners from stress area and stress. Units: mm², MPa, N (or any consistent set). Allocation-free. */
public final class StrengthKernel {
  private StrengthKernel() {}

  /**
   * Proof or ultimate load, F = AS·S.
   *
   * @param stressArea AS in mm², as the standard rounds it, over 0
   * @param stress proof stress or tensile strength in MPa, over 0
   * @return the load
   * @throws InputException if a value is outside its range
   */
  @Source(document = "ISO 898-1:2013", locator = "load tables: stress area times stress")
  public static double load(double stressArea, double stress) {
    return Check.positive(stressArea, "stress area AS", "mm²", "a section carries the load")
        * Check.positive(stress, "stress", "MPa", "a strength");
  }

  /**
   * Shear strength as a part of the tensile strength.
   *
   * @param tensile Rm in MPa, over 0
   * @param ratio τB/Rm (dimensionless), over 0 up to 1; about 0.6 for bolt steels
   * @return τB
   * @throws InputException if a value is outside its range
   */
  @Source(document = "ISO/TR 16224:2012", locator = "shear strength ratio", provenance = holdfast.tables.Provenance.MEMORY)
  public static double shearStrength(double tensile, double ratio) {
    return Check.positive(tensile, "tensile strength Rm", "MPa", "a strength")
        * Check.overUpTo(ratio, 0, 1, "shear strength ratio τB/Rm", "", "shear strength is below tensile strength");
  }
}

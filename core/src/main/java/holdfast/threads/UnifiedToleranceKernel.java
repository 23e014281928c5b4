// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.tables.Provenance;
import holdfast.tables.Source;

/**
 * Tolerance formulas of unified inch threads, not rounded. All lengths in inches. Recalled and then checked against
 * published limits of class 2A and 2B; classes 1 and 3 are recalled only. Allocation-free.
 */
@Source(document = "ASME B1.1-2003", locator = "tolerance formulas", provenance = Provenance.MEMORY)
public final class UnifiedToleranceKernel {
  private UnifiedToleranceKernel() {}

  /**
   * Pitch diameter tolerance of class 2A, the base of all others: 0.0015·∛D + 0.0015·√LE + 0.015·∛(p²).
   *
   * @param diameter D in inches, over 0
   * @param pitch p in inches, over 0
   * @param engagement LE in inches: D for coarse, fine and 8-thread series, 9·p else
   * @return Td2(2A) in inches
   * @throws InputException if a value is outside its range
   */
  public static double basePitchTolerance(double diameter, double pitch, double engagement) {
    Check.positive(diameter, "major diameter D", "in", "a thread has a diameter");
    Check.positive(pitch, "pitch p", "in", "a thread has a pitch");
    Check.positive(engagement, "length of engagement LE", "in", "threads engage");
    return 0.0015 * Math.cbrt(diameter) + 0.0015 * Math.sqrt(engagement) + 0.015 * Math.cbrt(pitch * pitch);
  }

  /**
   * Factor on the base tolerance for the pitch diameter of a class.
   *
   * @param number 1, 2 or 3
   * @param external whether the thread is external (A)
   * @return 1A 1.5, 2A 1, 3A 0.75; 1B 1.95, 2B 1.3, 3B 0.975
   * @throws InputException if a value is outside its range
   */
  public static double pitchFactor(int number, boolean external) {
    Check.within(number, 1, 3, "thread class", "", "classes 1, 2 and 3");
    double a = number == 1 ? 1.5 : number == 2 ? 1 : 0.75;
    return external ? a : 1.3 * a;
  }

  /**
   * Allowance of the external thread.
   *
   * @param number 1, 2 or 3
   * @param basePitchTolerance Td2(2A) in inches, 0 or more
   * @return 0.3·Td2(2A) for 1A and 2A, 0 for 3A, in inches
   * @throws InputException if a value is outside its range
   */
  public static double allowance(int number, double basePitchTolerance) {
    Check.within(number, 1, 3, "thread class", "", "classes 1, 2 and 3");
    Check.notNegative(basePitchTolerance, "base pitch diameter tolerance", "in", "a tolerance is a width");
    return number == 3 ? 0 : 0.3 * basePitchTolerance;
  }

  /**
   * Major diameter tolerance of the external thread.
   *
   * @param number 1, 2 or 3
   * @param pitch p in inches, over 0
   * @return 0.09·∛(p²) for 1A, 0.06·∛(p²) for 2A and 3A, in inches
   * @throws InputException if a value is outside its range
   */
  public static double externalCrest(int number, double pitch) {
    Check.within(number, 1, 3, "thread class", "", "classes 1, 2 and 3");
    Check.positive(pitch, "pitch p", "in", "a thread has a pitch");
    return (number == 1 ? 0.09 : 0.06) * Math.cbrt(pitch * pitch);
  }

  /**
   * Minor diameter tolerance of the internal thread.
   *
   * <p>1B and 2B below 1/4 in: 0.05·∛(p²) + 0.03·p/D − 0.002, held between 0.25·p − 0.4·p² and 0.394·p; from 1/4 in:
   * 0.25·p − 0.4·p² with 4 threads per inch and more, 0.15·p with fewer. 3B: the first formula, at most 0.394·p and at
   * least 0.23·p − 1.5·p² with more than 12 threads per inch; 0.12·p with 12 and fewer.
   *
   * @param number 1, 2 or 3
   * @param diameter D in inches, over 0
   * @param pitch p in inches, over 0
   * @return TD1 in inches
   * @throws InputException if a value is outside its range
   */
  public static double internalCrest(int number, double diameter, double pitch) {
    Check.within(number, 1, 3, "thread class", "", "classes 1, 2 and 3");
    Check.positive(diameter, "major diameter D", "in", "a thread has a diameter");
    Check.positive(pitch, "pitch p", "in", "a thread has a pitch");
    double fine = 0.05 * Math.cbrt(pitch * pitch) + 0.03 * pitch / diameter - 0.002;
    double coarse = 0.25 * pitch - 0.4 * pitch * pitch;
    if (number < 3) {
      if (diameter < 0.25 - 1e-9) {
        return Math.min(Math.max(fine, coarse), 0.394 * pitch);
      }
      return pitch <= 0.25 + 1e-9 ? coarse : 0.15 * pitch;
    }
    return pitch < 1 / 12.5 ? Math.min(Math.max(fine, 0.23 * pitch - 1.5 * pitch * pitch), 0.394 * pitch) : 0.12 * pitch;
  }
}

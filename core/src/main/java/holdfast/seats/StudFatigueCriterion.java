// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

/** How mean stress is weighed against amplitude. */
public enum StudFatigueCriterion {
  /** Straight line to the tensile strength: the usual one. */
  GOODMAN,
  /** Parabola to the tensile strength: the mean of tests on ductile steel, less careful. */
  GERBER,
  /** Straight line to the yield strength: the most careful. */
  SODERBERG;

  /**
   * Margin of a cycle.
   *
   * @param amplitude stress amplitude in MPa
   * @param mean mean stress in MPa
   * @param endurance endurance limit in MPa
   * @param strength tensile strength in MPa
   * @param yield yield strength in MPa
   * @return how often amplitude and mean could be multiplied
   */
  double margin(double amplitude, double mean, double endurance, double strength, double yield) {
    return switch (this) {
      case GOODMAN -> StudFatigueKernel.goodman(amplitude, mean, endurance, strength);
      case GERBER -> StudFatigueKernel.gerber(amplitude, mean, endurance, strength);
      case SODERBERG -> StudFatigueKernel.soderberg(amplitude, mean, endurance, yield);
    };
  }
}

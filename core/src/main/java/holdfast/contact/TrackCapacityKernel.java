// SPDX-License-Identifier: Apache-2.0
package holdfast.contact;

import holdfast.quantity.Check;
import holdfast.tables.Provenance;
import holdfast.tables.Source;
import java.util.Objects;

/**
 * Capacity of a track against its hardness and strength. A Hertz contact carries a load that grows with the square of
 * the permitted pressure on a line and with its cube on an ellipse; the permitted pressure follows the tensile strength.
 */
public final class TrackCapacityKernel {
  /** Exponent of line contact, a cylindrical outer ring. */
  public static final int LINE = 2;
  /** Exponent of elliptical contact, a crowned outer ring. */
  public static final int ELLIPSE = 3;

  private TrackCapacityKernel() {}

  /**
   * Capacity of a track relative to one of reference strength.
   *
   * @param strength tensile strength Rm of the track in MPa
   * @param reference tensile strength for which the capacity is known, in MPa
   * @param exponent {@link #LINE} or {@link #ELLIPSE}
   * @return (Rm/Rm,ref)^exponent
   * @throws holdfast.quantity.InputException if a strength is not positive or the exponent is neither
   */
  @Source(
      document = "derivation",
      locator = "load at a given Hertz pressure: F ~ p² on a line, F ~ p³ on an ellipse; p ~ Rm",
      provenance = Provenance.DERIVED)
  @Source(
      document = "Needle roller bearings catalogue 2300/E",
      locator = "track load capacity factors: both exponents agree")
  public static double strengthFactor(double strength, double reference, int exponent) {
    Check.positive(strength, "tensile strength Rm", "MPa", "strength of the track");
    Check.positive(reference, "reference strength", "MPa", "strength of the track with the known capacity");
    Check.within(exponent, LINE, ELLIPSE, "exponent", "", "2 for a line, 3 for an ellipse");
    double ratio = strength / reference;
    return exponent == LINE ? ratio * ratio : ratio * ratio * ratio;
  }

  /**
   * Value between the rows of a printed table, geometric: the logarithm of the value is linear in the hardness. Between
   * rows five points apart that meets the rows which another catalogue prints; a straight line would lie above them.
   *
   * @param hardness Rockwell C hardness of the track in HRC
   * @param hardnesses hardnesses of the table in HRC, rising
   * @param values values of the table, all in the unit of the answer, over 0
   * @return the interpolated value; never extrapolated
   * @throws holdfast.quantity.InputException if the hardness is outside the table
   */
  @Source(
      document = "common practice",
      locator = "linear between the rows of a table",
      provenance = Provenance.COMMON_PRACTICE)
  public static double interpolate(double hardness, double[] hardnesses, double[] values) {
    Objects.requireNonNull(hardnesses, "hardnesses");
    Objects.requireNonNull(values, "values");
    Check.within(hardnesses.length, 2, Integer.MAX_VALUE, "rows of the table", "", "a value lies between two rows");
    Check.within(values.length, hardnesses.length, hardnesses.length, "values of the table", "", "one value a hardness");
    int last = hardnesses.length - 1;
    Check.within(hardness, hardnesses[0], hardnesses[last], "track hardness", "HRC", "range of the printed table");
    int i = 1;
    while (i < last && hardness > hardnesses[i]) {
      i++;
    }
    double step = Check.positive(hardnesses[i] - hardnesses[i - 1], "step of the hardnesses", "HRC", "the rows rise");
    double below = Check.positive(values[i - 1], "value of the table", "", "its logarithm is interpolated");
    double above = Check.positive(values[i], "value of the table", "", "its logarithm is interpolated");
    return below * Math.pow(above / below, (hardness - hardnesses[i - 1]) / step);
  }

  /**
   * Peak pressure of a steel cylinder on a flat steel track in shop units: 3237 √(F/(l D)). The constant is that of
   * E = 30·10⁶ psi and ν = 0.3, printed a little low; a check of {@link LineContactKernel}, not a replacement.
   *
   * @param force force F in lbf
   * @param length effective contact length l in inches
   * @param diameter diameter D of the roller in inches
   * @return peak pressure in psi
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "Cam followers catalogue 2008", locator = "technical section, contact stress on a flat steel track")
  public static double shopPressurePsi(double force, double length, double diameter) {
    Check.notNegative(force, "force F", "lbf", "a contact only pushes");
    Check.positive(length, "effective contact length l", "in", "line contact needs a length");
    Check.positive(diameter, "roller diameter D", "in", "size of the roller");
    return 3237 * Math.sqrt(force / (length * diameter));
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.quantity.Check;
import holdfast.tables.Source;

/**
 * Adjusted axial ratings of ball bearings, for comparing bearings with contact angles on both sides of 45°, where the
 * formulas for radial and thrust bearings meet with a step. Only for comparison, never for the life of a bearing.
 */
public final class RatingAdjustmentKernel {
  private RatingAdjustmentKernel() {}

  /**
   * Adjusted axial dynamic rating of an angular contact bearing with radial-type grooves,
   * {@code Caar = 2.37 tan α (1 - 0.333 sin α) Cr}.
   *
   * @param cr basic dynamic radial load rating in N, over 0
   * @param alpha contact angle in rad, over 0 to 45°
   * @return Caar in N
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "ISO 281:2007", locator = "Annex C, C.5.1")
  public static double dynamicRadialGroove(double cr, double alpha) {
    return 2.37 * axialPart(cr, alpha);
  }

  /**
   * Adjusted axial dynamic rating of an angular contact bearing with thrust-type grooves,
   * {@code Caar = 1.91 tan α (1 - 0.333 sin α) Cr}.
   *
   * @param cr basic dynamic radial load rating in N, over 0
   * @param alpha contact angle in rad, over 0 to 45°
   * @return Caar in N
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "ISO 281:2007", locator = "Annex C, C.5.2")
  public static double dynamicThrustGroove(double cr, double alpha) {
    return 1.91 * axialPart(cr, alpha);
  }

  /**
   * Adjusted axial dynamic rating of a thrust bearing with radial-type grooves, {@code Caaa = 1.24 Ca}.
   *
   * @param ca basic dynamic axial load rating in N, over 0
   * @return Caaa in N
   * @throws holdfast.quantity.InputException if the rating is not above zero
   */
  @Source(document = "ISO 281:2007", locator = "Annex C, C.5.1")
  public static double dynamicThrustBearing(double ca) {
    return 1.24 * BasicLifeKernel.checkRating(ca);
  }

  /**
   * Adjusted axial static rating of an angular contact bearing with radial-type grooves, {@code C0aar = C0r/Y0}.
   *
   * @param c0r basic static radial load rating in N, over 0
   * @param y0 factor Y0 of the contact angle, over 0
   * @return C0aar in N
   * @throws holdfast.quantity.InputException if an argument is not above zero
   */
  @Source(document = "ISO 76:2006", locator = "Annex A, A.5.1")
  public static double staticRadialGroove(double c0r, double y0) {
    Check.positive(c0r, "basic static load rating C0r", "N", "a rating is a force above zero");
    return c0r / Check.positive(y0, "factor Y0", "", "a factor above zero");
  }

  /**
   * Adjusted axial static rating of an angular contact bearing with thrust-type grooves, {@code C0aar = 0.7 C0r/Y0}.
   *
   * @param c0r basic static radial load rating in N, over 0
   * @param y0 factor Y0 of the contact angle, over 0
   * @return C0aar in N
   * @throws holdfast.quantity.InputException if an argument is not above zero
   */
  @Source(document = "ISO 76:2006", locator = "Annex A, A.5.2")
  public static double staticThrustGroove(double c0r, double y0) {
    return 0.7 * staticRadialGroove(c0r, y0);
  }

  /**
   * Adjusted axial static rating of a thrust bearing with radial-type grooves, {@code C0aaa = 1.43 C0a}.
   *
   * @param c0a basic static axial load rating in N, over 0
   * @return C0aaa in N
   * @throws holdfast.quantity.InputException if the rating is not above zero
   */
  @Source(document = "ISO 76:2006", locator = "Annex A, A.5.1")
  public static double staticThrustBearing(double c0a) {
    return 1.43 * Check.positive(c0a, "basic static load rating C0a", "N", "a rating is a force above zero");
  }

  private static double axialPart(double cr, double alpha) {
    ContactAngle.radialWithAngle(alpha);
    return BasicLifeKernel.checkRating(cr) * Math.tan(alpha) * (1 - 0.333 * Math.sin(alpha));
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Numbers;
import holdfast.tables.Source;

/**
 * Geometry of the 60° screw thread profile, metric and unified. Lengths in mm (any one unit gives that unit back),
 * areas in its square. Symbols: d major diameter, P pitch, H height of the fundamental triangle, d2 pitch diameter, D1
 * minor diameter of the internal thread, d3 root diameter of the external thread, dS diameter of the stress area.
 */
@Source(document = "ISO 68-1:1998", locator = "basic profile, as reprinted with DIN 13-1")
public final class ThreadGeometryKernel {
  /** Cosine of half the thread angle, cos 30°. */
  public static final double COS_HALF_ANGLE = 0.5 * Math.sqrt(3);

  private ThreadGeometryKernel() {}

  /**
   * Height of the fundamental triangle, H = (√3/2)·P.
   *
   * @param pitch P in the unit of all lengths, over 0
   * @return H
   * @throws InputException if the pitch is not over 0
   */
  public static double triangleHeight(double pitch) {
    return COS_HALF_ANGLE * Check.positive(pitch, "pitch P", "mm", "a thread has a pitch");
  }

  /**
   * Pitch diameter, d2 = D2 = d − (3/4)·H.
   *
   * @param majorDiameter d in the unit of all lengths
   * @param pitch P in the unit of all lengths, over 0
   * @return d2
   * @throws InputException if the pitch is too coarse for the diameter
   */
  @Source(document = "ISO 724:1993", locator = "basic dimensions, as reprinted with DIN 13-1")
  public static double pitchDiameter(double majorDiameter, double pitch) {
    return left(majorDiameter, 0.75 * triangleHeight(pitch));
  }

  /**
   * Minor diameter of the internal thread, D1 = d − (5/4)·H.
   *
   * @param majorDiameter d in the unit of all lengths
   * @param pitch P in the unit of all lengths, over 0
   * @return D1
   * @throws InputException if the pitch is too coarse for the diameter
   */
  @Source(document = "ISO 724:1993", locator = "basic dimensions, as reprinted with DIN 13-1")
  public static double internalMinorDiameter(double majorDiameter, double pitch) {
    return left(majorDiameter, 1.25 * triangleHeight(pitch));
  }

  /**
   * Root diameter of the metric external thread with root radius H/6, d3 = d − (17/12)·H.
   *
   * @param majorDiameter d in the unit of all lengths
   * @param pitch P in the unit of all lengths, over 0
   * @return d3
   * @throws InputException if the pitch is too coarse for the diameter
   */
  @Source(document = "DIN 13-1:1986", locator = "formulas")
  public static double metricRootDiameter(double majorDiameter, double pitch) {
    return left(majorDiameter, 17.0 / 12.0 * triangleHeight(pitch));
  }

  /**
   * Diameter at the root of the unified external thread for section properties, D − (3/2)·H = D − 1.29903811·p.
   *
   * @param majorDiameter D in the unit of all lengths
   * @param pitch p in the unit of all lengths, over 0
   * @return the diameter of the section at minor diameter
   * @throws InputException if the pitch is too coarse for the diameter
   */
  @Source(document = "ASME B1.1-2003", locator = "section at minor diameter", provenance = holdfast.tables.Provenance.MEMORY)
  public static double unifiedRootDiameter(double majorDiameter, double pitch) {
    return left(majorDiameter, 1.5 * triangleHeight(pitch));
  }

  /**
   * Minor diameter of the unified external thread with rounded root (UNR), D − (11/8)·H = D − 1.19078493·p.
   *
   * @param majorDiameter D in the unit of all lengths
   * @param pitch p in the unit of all lengths, over 0
   * @return the UNR minor diameter
   * @throws InputException if the pitch is too coarse for the diameter
   */
  @Source(document = "ASME B1.1-2003", locator = "UNR thread form", provenance = holdfast.tables.Provenance.MEMORY)
  public static double unifiedRoundedMinorDiameter(double majorDiameter, double pitch) {
    return left(majorDiameter, 1.375 * triangleHeight(pitch));
  }

  /**
   * Diameter of the metric stress area, dS = (d2 + d3)/2.
   *
   * @param majorDiameter d in the unit of all lengths
   * @param pitch P in the unit of all lengths, over 0
   * @return dS
   * @throws InputException if the pitch is too coarse for the diameter
   */
  @Source(document = "ISO 898-1:2013", locator = "9.1.6.1, nominal stress area")
  public static double metricStressDiameter(double majorDiameter, double pitch) {
    return 0.5 * (pitchDiameter(majorDiameter, pitch) + metricRootDiameter(majorDiameter, pitch));
  }

  /**
   * Diameter of the unified tensile stress area, dS = D − 0.9743·p.
   *
   * @param majorDiameter D in the unit of all lengths
   * @param pitch p = 1/n in the unit of all lengths, over 0
   * @return dS
   * @throws InputException if the pitch is too coarse for the diameter
   */
  @Source(document = "NASA TM-106943", locator = "eq. (4)")
  public static double unifiedStressDiameter(double majorDiameter, double pitch) {
    return left(majorDiameter, 0.9743 * Check.positive(pitch, "pitch p", "mm", "a thread has a pitch"));
  }

  /**
   * Area of a ring, A = (π/4)·(D² − di²).
   *
   * @param diameter D in the unit of all lengths, over 0
   * @param bore di in the unit of all lengths, 0 for a solid section, less than D
   * @return A
   * @throws InputException if the bore is negative or not less than the diameter
   */
  @Source(document = "derivation", locator = "area of a ring", provenance = holdfast.tables.Provenance.DERIVED)
  public static double ringArea(double diameter, double bore) {
    checkBore(diameter, bore);
    return 0.25 * Math.PI * (diameter - bore) * (diameter + bore);
  }

  /**
   * Helix angle at the pitch diameter, φ = atan(Ph/(π·d2)).
   *
   * @param pitchDiameter d2 in the unit of all lengths, over 0
   * @param lead Ph in the unit of all lengths, over 0
   * @return φ in rad
   * @throws InputException if an argument is not over 0
   */
  @Source(document = "ISO 68-1:1998", locator = "helix of the pitch cylinder")
  public static double helixAngle(double pitchDiameter, double lead) {
    Check.positive(pitchDiameter, "pitch diameter d2", "mm", "a thread has a pitch diameter");
    return Math.atan(Check.positive(lead, "lead Ph", "mm", "a thread has a lead") / (Math.PI * pitchDiameter));
  }

  static void checkBore(double diameter, double bore) {
    Check.positive(diameter, "diameter of the section", "mm", "a section has a diameter");
    if (!(bore >= 0 && bore < diameter)) {
      throw new InputException(
          "axial bore di",
          Numbers.shortest(bore) + " mm",
          "from 0 mm to less than " + Numbers.significant(diameter, 6) + " mm",
          "the bore must leave material");
    }
  }

  private static double left(double majorDiameter, double depth) {
    Check.positive(majorDiameter, "major diameter d", "mm", "a thread has a diameter");
    if (!(depth < majorDiameter)) {
      throw new InputException(
          "major diameter d",
          Numbers.shortest(majorDiameter) + " mm",
          "over " + Numbers.significant(depth, 6) + " mm",
          "a thread of this pitch would leave no core");
    }
    return majorDiameter - depth;
  }
}

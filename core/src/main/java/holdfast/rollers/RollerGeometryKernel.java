// SPDX-License-Identifier: Apache-2.0
package holdfast.rollers;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Numbers;
import holdfast.tables.Provenance;
import holdfast.tables.Source;

/** Lengths of a stud-type track roller, in mm. */
@Source(document = "derivation", locator = "sums of the lengths on the drawing", provenance = Provenance.DERIVED)
public final class RollerGeometryKernel {
  private RollerGeometryKernel() {}

  /**
   * Length of the plain shank, {@code stud length − thread length}. The machine member must be thicker than this (or a
   * washer must fill the difference), else the nut runs up against the shank.
   *
   * @param studLength length of the stud from the face in mm, over 0
   * @param threadLength length of the thread in mm, over 0 and below the stud length
   * @return shank length in mm
   * @throws InputException if a length is outside its range
   */
  public static double shankLength(double studLength, double threadLength) {
    Check.positive(studLength, "stud length", "mm", "it is a length");
    if (!(threadLength > 0 && threadLength < studLength)) {
      throw new InputException("thread length", Numbers.shortest(threadLength) + " mm",
          "over 0 mm and below the stud length " + Numbers.shortest(studLength) + " mm", "the thread is part of the stud");
    }
    return studLength - threadLength;
  }

  /**
   * Length over all, {@code ring width + 2 · overhang + stud length}.
   *
   * @param ringWidth width of the outer ring in mm, over 0
   * @param overhang distance by which each flange stands before the ring in mm, 0 or more
   * @param studLength length of the stud from the face in mm, over 0
   * @return length in mm
   * @throws InputException if a length is outside its range
   */
  public static double overallLength(double ringWidth, double overhang, double studLength) {
    Check.positive(ringWidth, "ring width", "mm", "it is a length");
    Check.notNegative(overhang, "overhang", "mm", "the flange does not stand behind the ring");
    Check.positive(studLength, "stud length", "mm", "it is a length");
    return ringWidth + 2 * overhang + studLength;
  }
}

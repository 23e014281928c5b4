package holdfast.rollers;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Numbers;
import holdfast.tables.Provenance;
import holdfast.tables.Source;

/** Lengths of a stud-type track roller and the tilt that clearance allows. Lengths in mm, angles in rad. */
@Source(document = "derivation", locator = "sums and quotients of the lengths on the drawing", provenance = Provenance.DERIVED)
public final class RollerGeometryKernel {
  private RollerGeometryKernel() {}

  /**
   * Length of the plain shank, {@code stud length − thread length}. The machine member must be thicker than this (or a
   * washer must fill the difference), else the nut runs up against the shank.
   *
   * @param studLength length of the stud from the face, over 0
   * @param threadLength length of the thread, over 0 and below the stud length
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
   * @param ringWidth width of the outer ring, over 0
   * @param overhang distance by which each flange stands before the ring, 0 or more
   * @param studLength length of the stud from the face, over 0
   * @return length in mm
   * @throws InputException if a length is outside its range
   */
  public static double overallLength(double ringWidth, double overhang, double studLength) {
    Check.positive(ringWidth, "ring width", "mm", "it is a length");
    Check.notNegative(overhang, "overhang", "mm", "the flange does not stand behind the ring");
    Check.positive(studLength, "stud length", "mm", "it is a length");
    return ringWidth + 2 * overhang + studLength;
  }

  /**
   * Tilt of a stud that touches its bore at both ends, {@code φ = clearance / engaged length}. A clamped face that is
   * square to the bore keeps the stud straighter; without one this is the greatest tilt.
   *
   * @param clearance diametral clearance, 0 or more
   * @param engagedLength length of stud in the bore, over 0
   * @return angle in rad
   * @throws InputException if an argument is outside its range
   */
  public static double clearanceTilt(double clearance, double engagedLength) {
    Check.notNegative(clearance, "clearance", "mm", "an interference fit does not tilt");
    Check.positive(engagedLength, "engaged length", "mm", "tilt is clearance over length");
    return clearance / engagedLength;
  }

  /**
   * Squareness tolerance of the seat face, {@code t = share · φ · D_face}: how far the face may run out over its
   * diameter so that it uses no more than a share of the permitted misalignment.
   *
   * @param permittedTilt permitted misalignment φ in rad, over 0
   * @param share share of it that the face may use, over 0 up to 1
   * @param faceDiameter diameter of the face in mm, over 0
   * @return squareness tolerance in mm
   * @throws InputException if an argument is outside its range
   */
  public static double squareness(double permittedTilt, double share, double faceDiameter) {
    Check.positive(permittedTilt, "permitted misalignment", "rad", "without any no face is square enough");
    Check.overUpTo(share, 0, 1, "share of the face", "", "it is a part of the whole");
    Check.positive(faceDiameter, "face diameter", "mm", "it is a diameter");
    return permittedTilt * share * faceDiameter;
  }
}

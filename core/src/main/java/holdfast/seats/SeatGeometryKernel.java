// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Numbers;
import holdfast.tables.Provenance;
import holdfast.tables.Source;

/** Chamfers and engagement of a seat, and the angles at which a stud can stand in it. Lengths in mm, angles in rad. */
public final class SeatGeometryKernel {
  private SeatGeometryKernel() {}

  /**
   * Length of the press-fit chamfer, about the cube root of the joint diameter in mm, at about 5°.
   *
   * @param joint joint diameter D in mm, over 0
   * @return length along the axis in mm
   * @throws InputException if the diameter is out of range
   */
  @Source(document = "DIN 7190-1:2017", locator = "chamfer of pressed parts", provenance = Provenance.MEMORY)
  public static double chamferLength(double joint) {
    return Math.cbrt(SeatChecks.joint(joint));
  }

  /**
   * Length over which stud and bore really touch.
   *
   * @param length length of the bore covered by the stud in mm, over 0
   * @param studChamfer length of the chamfers of the stud within it in mm, 0 or more
   * @param boreChamfer length of the chamfers of the bore within it in mm, 0 or more
   * @return engaged length, over 0
   * @throws InputException if the chamfers leave nothing
   */
  @Source(document = "derivation", locator = "chamfered length carries no pressure", provenance = Provenance.DERIVED)
  public static double engagedLength(double length, double studChamfer, double boreChamfer) {
    SeatChecks.size(length, "joint length", "a joint has a length");
    SeatChecks.gap(studChamfer, "chamfer of the stud", "a length");
    SeatChecks.gap(boreChamfer, "chamfer of the bore", "a length");
    double engaged = length - studChamfer - boreChamfer;
    if (!(engaged > 0)) {
      throw new InputException(
          "chamfers",
          Numbers.shortest(studChamfer + boreChamfer) + " mm",
          "less than the joint length " + Numbers.shortest(length) + " mm",
          "something must be left to touch");
    }
    return engaged;
  }

  /**
   * Greatest tilt of a stud in a bore with clearance: it touches both mouths,
   * {@code L·sin φ + d·cos φ = D}; to first order {@code φ = s/L}.
   *
   * @param clearance diametral clearance s = D - d in mm, 0 or more
   * @param stud stud diameter d in mm, over 0
   * @param engagement engaged length L in mm, over 0
   * @return φ in rad
   * @throws InputException if a value is out of range, or the engagement is too short to stop the stud
   */
  @Source(document = "derivation", locator = "a rectangle d by L turned in a gap D", provenance = Provenance.DERIVED)
  public static double clearanceTilt(double clearance, double stud, double engagement) {
    SeatChecks.gap(clearance, "clearance", "a stud that interferes does not tilt freely");
    SeatChecks.size(stud, "stud diameter", "a stud has a size");
    SeatChecks.size(engagement, "engaged length", "a seat has a length");
    double root = engagement * engagement - (2 * stud + clearance) * clearance;
    if (!(root >= 0)) {
      throw new InputException(
          "engaged length",
          Numbers.shortest(engagement) + " mm",
          "at least " + Numbers.significant(Math.sqrt((2 * stud + clearance) * clearance), 4) + " mm",
          "a shorter seat with this clearance does not stop the stud");
    }
    // Half-angle tangent of the exact equation; no difference of near numbers.
    return 2 * Math.atan(clearance / (engagement + Math.sqrt(root)));
  }

  /**
   * Tilt of a face that is out of square, {@code atan(t/D_F)}.
   *
   * @param runout axial run-out t over the face in mm, 0 or more
   * @param faceDiameter diameter D_F over which it is measured in mm, over 0
   * @return angle in rad
   * @throws InputException if a value is out of range
   */
  @Source(
      document = "derivation", locator = "a flat face leans by its run-out over its diameter", provenance = Provenance.DERIVED)
  public static double faceTilt(double runout, double faceDiameter) {
    Check.notNegative(runout, "run-out of the face", "mm", "a run-out has no sign");
    SeatChecks.size(faceDiameter, "diameter of the face", "a face has a size");
    return Math.atan(runout / faceDiameter);
  }

  /**
   * Squareness tolerance of the seat face, {@code t = D_F · tan(share · φ)}: how far the face may run out over its
   * diameter so that it uses no more than a share of the permitted misalignment.
   *
   * @param permittedTilt permitted misalignment φ in rad, over 0 and below π/2
   * @param share share of it that the face may use, over 0 up to 1
   * @param faceDiameter diameter D_F of the face in mm, over 0
   * @return squareness tolerance in mm
   * @throws InputException if an argument is outside its range
   */
  @Source(
      document = "derivation", locator = "inverse of the tilt of a face, for a share of a limit", provenance = Provenance.DERIVED)
  public static double squareness(double permittedTilt, double share, double faceDiameter) {
    Check.positive(permittedTilt, "permitted misalignment", "rad", "without any no face is square enough");
    Check.within(permittedTilt, 0, 0.5 * Math.PI, "permitted misalignment", "rad", "an angle of a face in its seat");
    Check.overUpTo(share, 0, 1, "share of the face", "", "it is a part of the whole");
    SeatChecks.size(faceDiameter, "diameter of the face", "a face has a size");
    return faceDiameter * Math.tan(share * permittedTilt);
  }

  /**
   * Sideways shift of a point outside of the seat by tilt about the far mouth, {@code (a + L)·sin φ}.
   *
   * @param tilt φ in rad, from 0 to π/2
   * @param distance distance a of the point from the near mouth in mm, 0 or more
   * @param engagement engaged length L in mm, over 0
   * @return shift in mm
   * @throws InputException if a value is out of range
   */
  @Source(document = "derivation", locator = "rotation about the contact at the far mouth", provenance = Provenance.DERIVED)
  public static double shift(double tilt, double distance, double engagement) {
    Check.within(tilt, 0, Math.PI / 2, "tilt", "rad", "an angle of a stud in its seat");
    SeatChecks.gap(distance, "distance from the mouth", "outside of the seat");
    SeatChecks.size(engagement, "engaged length", "a seat has a length");
    return (distance + engagement) * Math.sin(tilt);
  }
}

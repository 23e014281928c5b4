// SPDX-License-Identifier: Apache-2.0
package holdfast.rollers;

import holdfast.quantity.Length;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;

/**
 * Grease holes of a stud as the dimension tables print them.
 *
 * @param axialDiameter diameter of the axial hole at its ends; null if the table does not state it
 * @param fitting fitting of the axial hole as printed for inch rollers, for example {@code "3/16"}; empty for metric
 * @param radialDiameter diameter of the radial hole in the shank; null if there is none
 * @param radialOffset distance of the radial hole from the face that meets the machine member; null if there is none
 */
public record GreaseHoles(Length axialDiameter, String fitting, Length radialDiameter, Length radialOffset)
    implements Serializable {
  public GreaseHoles {
    Objects.requireNonNull(fitting, "fitting");
  }

  /**
   * Whether the stud is drilled along its axis.
   *
   * @return true if the table states an axial hole or its fitting
   */
  public boolean drilled() {
    return axialDiameter != null || !fitting.isEmpty();
  }

  /**
   * The axial hole.
   *
   * @return its diameter at the ends; empty if it is not stated as a length
   */
  public Optional<Length> axial() {
    return Optional.ofNullable(axialDiameter);
  }

  /**
   * The radial hole in the shank.
   *
   * @return its diameter; empty if there is none
   */
  public Optional<Length> radial() {
    return Optional.ofNullable(radialDiameter);
  }

  /**
   * Where the radial hole is.
   *
   * @return distance from the face that meets the machine member; empty if there is no radial hole
   */
  public Optional<Length> radialPosition() {
    return Optional.ofNullable(radialOffset);
  }

  /** For example {@code "axial 6 mm, radial 3 mm at 8 mm from the face"}. */
  @Override
  public String toString() {
    // The table may add a remark behind the size, as in "1/8 (flange end only)".
    String size = axialDiameter != null ? axialDiameter.toString() : "for a fitting " + fitting.replaceFirst("^\\S+", "$0 in");
    String axial = drilled() ? "axial " + size : "no hole";
    return axial + (radialDiameter == null ? "" : ", radial " + radialDiameter + " at " + radialOffset + " from the face");
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.rollers;

import holdfast.quantity.Length;
import holdfast.tables.SourceRef;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * One practice for the hole in the machine member.
 *
 * @param designation tolerance class such as {@code "H7"}, or the deviations in words
 * @param toleranceClass true if the designation is a tolerance class to ISO 286 on the stud's nominal diameter
 * @param deviations deviations from the stud's nominal diameter; null for a tolerance class
 * @param source who recommends it
 */
public record SeatPractice(String designation, boolean toleranceClass, Deviations deviations, SourceRef source)
    implements Serializable {

  static final List<SeatPractice> METRIC =
      List.of(
          new SeatPractice("H7", true, null,
              SourceRef.published("Needle roller bearings catalogue 2300/E", "cam follower pages, fit of the stud")));
  static final List<SeatPractice> INCH =
      List.of(
          new SeatPractice("nominal, +0.0005/0 in", false,
              new Deviations(new Length(0), new Length(0.0127)),
              SourceRef.published("Cam followers catalogue 2008", "technical section, pages 40 to 45, hole for the stud")),
          new SeatPractice("F7", true, null,
              SourceRef.published("Needle roller bearings catalogue 2300/E", "cam follower pages, fit of inch studs")));

  public SeatPractice {
    Objects.requireNonNull(designation, "designation");
    Objects.requireNonNull(source, "source");
  }

  /** For example {@code "F7"}. */
  @Override
  public String toString() {
    return designation;
  }
}

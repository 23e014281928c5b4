// SPDX-License-Identifier: Apache-2.0
package holdfast.rollers;

import holdfast.quantity.Length;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * Dimensions of the stud of a track roller.
 *
 * @param diameter nominal diameter d1 of the shank
 * @param length length of the stud from the face that meets the machine member
 * @param threadLength length of the thread, part of the stud's length
 * @param overhang distance by which the flange stands before the outer ring
 * @param threads designations of the threads in use on this stud; more than one where practices differ
 * @param socket width across flats of the hexagon socket where the head has one, for example {@code "5/16"} (inch);
 *     empty if the tables do not state it
 */
public record StudSize(
    Length diameter, Length length, Length threadLength, Length overhang, List<String> threads, String socket)
    implements Serializable {
  // Keeps an unmodifiable copy.
  public StudSize {
    Objects.requireNonNull(diameter, "diameter");
    Objects.requireNonNull(length, "length");
    Objects.requireNonNull(threadLength, "threadLength");
    Objects.requireNonNull(overhang, "overhang");
    Objects.requireNonNull(threads, "threads");
    Objects.requireNonNull(socket, "socket");
    threads = List.copyOf(threads);
  }

  /**
   * Length of the plain shank: what can engage in the machine member.
   *
   * @return stud length less thread length
   */
  public Length shankLength() {
    return new Length(RollerGeometryKernel.shankLength(length.mm(), threadLength.mm()));
  }

  /** For example {@code "16 mm × 32.5 mm, M16x1.5"}. */
  @Override
  public String toString() {
    return diameter + " × " + length + ", " + String.join(" or ", threads);
  }
}

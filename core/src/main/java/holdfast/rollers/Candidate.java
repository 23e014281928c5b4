// SPDX-License-Identifier: Apache-2.0
package holdfast.rollers;

import holdfast.quantity.Length;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * A size that a measured roller may be.
 *
 * @param size the tabulated size
 * @param differences every measured dimension against the table; at least one
 */
public record Candidate(RollerSize size, List<Difference> differences) implements Serializable {
  // Keeps an unmodifiable copy.
  public Candidate {
    Objects.requireNonNull(size, "size");
    Objects.requireNonNull(differences, "differences");
    differences = List.copyOf(differences);
  }

  /**
   * The greatest of the differences, without its sign.
   *
   * @return the difference
   */
  public Length greatestDifference() {
    double greatest = 0;
    for (Difference difference : differences) {
      greatest = Math.max(greatest, Math.abs(difference.deviation().mm()));
    }
    return new Length(greatest);
  }

  /** The size and the differences in one line. */
  @Override
  public String toString() {
    return size + ": " + differences.stream().map(Difference::toString).collect(Collectors.joining("; "));
  }
}

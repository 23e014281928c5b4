// SPDX-License-Identifier: Apache-2.0
package holdfast.rollers;

import java.io.Serializable;
import java.util.Objects;

/**
 * Deviations of the dimensions of a track roller, as the catalogues print them.
 *
 * @param crownedRing outside diameter of a crowned ring
 * @param cylindricalRing outside diameter of a cylindrical ring
 * @param ringWidth width of the outer ring
 * @param stud diameter of the shank
 */
public record RollerTolerances(Deviations crownedRing, Deviations cylindricalRing, Deviations ringWidth, Deviations stud)
    implements Serializable {
  public RollerTolerances {
    Objects.requireNonNull(crownedRing, "crownedRing");
    Objects.requireNonNull(cylindricalRing, "cylindricalRing");
    Objects.requireNonNull(ringWidth, "ringWidth");
    Objects.requireNonNull(stud, "stud");
  }
}

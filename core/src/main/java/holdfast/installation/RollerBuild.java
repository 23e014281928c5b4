// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.lubrication.HeadForm;
import holdfast.lubrication.Openings;
import holdfast.quantity.InputException;
import holdfast.rollers.MeasureSystem;
import holdfast.rollers.RollerKind;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;

/**
 * How a stud roller is built.
 *
 * @param system metric or inch, as the sizes of its fittings are
 * @param kind its rolling elements
 * @param sealed whether it has contact seals
 * @param head form of the head of the stud
 * @param fittingInSocket whether a grease fitting is built into the hexagon socket
 * @param eccentricCollar whether the stud sits in an eccentric collar
 * @param openings openings of the part in hand; null if they were not looked at, then those usual for the size are taken
 *     and the sheet says so
 */
public record RollerBuild(
    MeasureSystem system,
    RollerKind kind,
    boolean sealed,
    HeadForm head,
    boolean fittingInSocket,
    boolean eccentricCollar,
    Openings openings)
    implements Serializable {

  // Refuses a fitting in a socket that is not there.
  public RollerBuild {
    Objects.requireNonNull(system, "system");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(head, "head");
    if (fittingInSocket && head != HeadForm.HEXAGON_SOCKET) {
      throw new InputException("fitting in the socket", "present", "absent with a head that has a " + head,
          "only a hexagon socket takes it");
    }
  }

  /**
   * The openings of the part in hand, if they were looked at.
   *
   * @return the openings
   */
  public Optional<Openings> seenOpenings() {
    return Optional.ofNullable(openings);
  }

  /** For example {@code "caged needle rollers, sealed, slot in the head"}. */
  @Override
  public String toString() {
    return kind + (sealed ? ", sealed, " : ", open, ") + head + " at the head"
        + (fittingInSocket ? " with a built-in fitting" : "") + (eccentricCollar ? ", eccentric collar" : "");
  }
}

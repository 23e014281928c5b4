// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Length;
import java.io.Serializable;
import java.util.Objects;

/**
 * Section of a stud at the seat mouth.
 *
 * @param diameter stud diameter
 * @param bore bore along the axis, 0 for a solid stud
 * @param crossHole cross hole at the section, 0 for none
 */
public record ShankSection(Length diameter, Length bore, Length crossHole) implements Serializable {
  // Refuses bores and holes that leave no stud.
  public ShankSection {
    Objects.requireNonNull(diameter, "diameter");
    Objects.requireNonNull(bore, "bore");
    Objects.requireNonNull(crossHole, "crossHole");
    StudSectionKernel.netModulus(diameter.mm(), bore.mm(), crossHole.mm());
  }

  /**
   * A solid stud.
   *
   * @param diameter stud diameter
   * @return the section
   * @throws holdfast.quantity.InputException if the diameter is not positive
   */
  public static ShankSection solid(Length diameter) {
    return new ShankSection(diameter, new Length(0), new Length(0));
  }

  /**
   * A stud with a lubrication bore.
   *
   * @param diameter stud diameter
   * @param bore bore along the axis
   * @return the section
   * @throws holdfast.quantity.InputException if the bore does not fit
   */
  public static ShankSection drilled(Length diameter, Length bore) {
    return new ShankSection(diameter, bore, new Length(0));
  }

  /**
   * The same with a cross hole in the section.
   *
   * @param hole its diameter
   * @return the section
   * @throws holdfast.quantity.InputException if the hole does not fit
   */
  public ShankSection crossDrilled(Length hole) {
    Objects.requireNonNull(hole, "hole");
    return new ShankSection(diameter, bore, hole);
  }

  /** For example {@code stud 16 mm, bore 4 mm}. */
  @Override
  public String toString() {
    return "stud " + diameter + (bore.mm() > 0 ? ", bore " + bore : "") + (crossHole.mm() > 0 ? ", cross hole " + crossHole : "");
  }
}

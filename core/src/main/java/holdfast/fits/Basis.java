// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.quantity.InputException;
import java.util.Objects;

/** Which part of a fit has zero fundamental deviation (ISO 286-1:2010, 5.3). */
public enum Basis {
  /** Hole-basis system: the hole is H. */
  HOLE("hole basis"),
  /** Shaft-basis system: the shaft is h. */
  SHAFT("shaft basis"),
  /** Neither part has zero fundamental deviation. */
  NEITHER("no basis");

  private final String label;

  Basis(String label) {
    this.label = label;
  }

  /**
   * The basis of two classes; H with h counts as hole basis.
   *
   * @param hole class of the hole
   * @param shaft class of the shaft
   * @return the basis
   */
  public static Basis of(ToleranceClass hole, ToleranceClass shaft) {
    Objects.requireNonNull(hole, "hole");
    Objects.requireNonNull(shaft, "shaft");
    if (hole.letter() == DeviationLetter.H) {
      return HOLE;
    }
    return shaft.letter() == DeviationLetter.H ? SHAFT : NEITHER;
  }

  static ToleranceClass isoClass(TolerancedSize part, Feature feature) {
    if (part.origin() instanceof ToleranceClass toleranceClass) {
      return toleranceClass;
    }
    throw new InputException(
        feature.toString(), part.designation(), "a tolerance class of ISO 286", "only its fits have a basis");
  }

  @Override
  public String toString() {
    return label;
  }
}

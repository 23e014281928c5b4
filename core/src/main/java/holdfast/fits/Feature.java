// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.quantity.InputException;
import java.util.Objects;

/** What a tolerance class applies to. Capital letter codes belong to holes, small ones to shafts. */
public enum Feature {
  /** An internal feature of size. */
  HOLE("hole", 0),
  /** An external feature of size. */
  SHAFT("shaft", 1);

  private final String label;
  /** Place in the arrays of the kernel. */
  final int index;

  Feature(String label, int index) {
    this.label = label;
    this.index = index;
  }

  /** How its classes are written. */
  String letters() {
    return this == HOLE ? "capital letters" : "small letters";
  }

  /**
   * Refuses a tolerance that cannot be one of this feature, before a size is known.
   *
   * @param tolerance a tolerance class or limit deviations with their unit, as {@link TolerancedSize#of} reads them
   * @return the tolerance
   * @throws InputException if it can be read as neither, or is a class of the other feature
   */
  public String require(String tolerance) {
    Objects.requireNonNull(tolerance, "tolerance");
    requireOf(DrawnDeviations.isWrittenLike(tolerance) ? DrawnDeviations.read(tolerance) : ToleranceClass.of(tolerance));
    return tolerance;
  }

  /** Refuses limits that say of themselves that they are for the other feature. */
  void requireOf(DeviationOrigin origin) {
    if (origin.appliesTo().filter(feature -> feature != this).isPresent()) {
      throw new InputException(
          "tolerance class of the " + this,
          origin.designation(),
          "in " + letters(),
          "capital letters mean a hole, small ones a shaft (ISO 286-1:2010, 4.2)");
    }
  }

  @Override
  public String toString() {
    return label;
  }
}

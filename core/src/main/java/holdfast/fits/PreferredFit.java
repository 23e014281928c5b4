// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.quantity.Length;
import holdfast.tables.SourceRef;
import java.io.Serializable;
import java.util.Objects;

/**
 * A fit that a standard recommends.
 *
 * @param list the list it stands in
 * @param basis hole or shaft basis, as listed
 * @param hole class of the hole
 * @param shaft class of the shaft
 * @param kind kind as listed; a few fits change their kind with the size
 * @param use what it is used for
 * @param source where it is listed, with provenance
 * @param useSource where the words on its use come from
 */
public record PreferredFit(
    PreferredList list,
    Basis basis,
    ToleranceClass hole,
    ToleranceClass shaft,
    FitKind kind,
    String use,
    SourceRef source,
    SourceRef useSource)
    implements Serializable {
  public PreferredFit {
    Objects.requireNonNull(list, "list");
    Objects.requireNonNull(basis, "basis");
    Objects.requireNonNull(hole, "hole");
    Objects.requireNonNull(shaft, "shaft");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(use, "use");
    Objects.requireNonNull(source, "source");
    Objects.requireNonNull(useSource, "useSource");
  }

  /**
   * As on a drawing.
   *
   * @return for example {@code "H7/p6"}
   */
  public String designation() {
    return hole + "/" + shaft;
  }

  /**
   * The fit for a size.
   *
   * @param nominalSize nominal size D, over 0 up to 3150 mm
   * @return the fit
   * @throws holdfast.quantity.InputException if a class is not defined for the size
   */
  public Fit at(Length nominalSize) {
    Objects.requireNonNull(nominalSize, "nominalSize");
    return Fit.of(nominalSize, hole, shaft);
  }

  /**
   * Whether both classes are defined for a size.
   *
   * @param nominalSize nominal size D, over 0 up to 3150 mm
   * @return true if {@link #at} gives a fit
   * @throws holdfast.quantity.InputException if the size is outside the tables
   */
  public boolean isDefinedFor(Length nominalSize) {
    Objects.requireNonNull(nominalSize, "nominalSize");
    return hole.isDefinedFor(nominalSize) && shaft.isDefinedFor(nominalSize);
  }

  /** Designation, kind, use and list. */
  @Override
  public String toString() {
    return designation() + ", " + kind + ": " + use + " [" + useSource.provenance() + "]; "
        + list + " [" + source.provenance() + "]";
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.rollers;

import holdfast.quantity.Length;
import holdfast.tables.SourceRef;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Boundary dimensions of one size of a series of stud-type track rollers. It holds no load ratings.
 *
 * @param series the series
 * @param outsideDiameter outside diameter D of the outer ring
 * @param ringWidth width of the outer ring
 * @param statedOverallLength length over all; null if the table does not state it
 * @param stud the stud
 * @param holes its grease holes
 * @param faceDiameter least diameter of the face of the machine member, as the first catalogue prints it
 * @param otherFaceDiameter the same in another practice; null if none differs
 * @param statedRaceway diameter of the inner raceway; null if the table does not state it
 * @param tolerances deviations of the dimensions
 * @param source where the row stands
 * @param confirmedBy ids of the documents that print the row
 * @param note what is uncertain; empty if nothing is
 */
public record RollerSize(
    RollerSeries series,
    Length outsideDiameter,
    Length ringWidth,
    Length statedOverallLength,
    StudSize stud,
    GreaseHoles holes,
    Length faceDiameter,
    Length otherFaceDiameter,
    Length statedRaceway,
    RollerTolerances tolerances,
    SourceRef source,
    List<String> confirmedBy,
    String note)
    implements Serializable {
  // Keeps an unmodifiable copy.
  public RollerSize {
    Objects.requireNonNull(series, "series");
    Objects.requireNonNull(outsideDiameter, "outsideDiameter");
    Objects.requireNonNull(ringWidth, "ringWidth");
    Objects.requireNonNull(stud, "stud");
    Objects.requireNonNull(holes, "holes");
    Objects.requireNonNull(faceDiameter, "faceDiameter");
    Objects.requireNonNull(tolerances, "tolerances");
    Objects.requireNonNull(source, "source");
    Objects.requireNonNull(confirmedBy, "confirmedBy");
    Objects.requireNonNull(note, "note");
    confirmedBy = List.copyOf(confirmedBy);
  }

  /**
   * Length over all as the table states it.
   *
   * @return the length; empty if the table does not state it
   */
  public Optional<Length> overallLength() {
    return Optional.ofNullable(statedOverallLength);
  }

  /**
   * Diameter of the inner raceway on the stud.
   *
   * @return the diameter; empty if the table does not state it
   */
  public Optional<Length> innerRaceway() {
    return Optional.ofNullable(statedRaceway);
  }

  /**
   * The greatest of the least face diameters of the machine member: the safe choice where practices differ.
   *
   * @return the diameter to which the face is to reach
   */
  public Length safeFaceDiameter() {
    boolean other = otherFaceDiameter != null && otherFaceDiameter.compareTo(faceDiameter) > 0;
    return other ? otherFaceDiameter : faceDiameter;
  }

  /**
   * How many different documents print the row.
   *
   * @return the cited document and those that confirm it, each once; a standard that was not at hand does not count
   */
  public int agreeingDocuments() {
    boolean standard = source.document().startsWith("ISO ");
    return (int) confirmedBy.stream().distinct().count() + (standard || confirmedBy.contains(source.document()) ? 0 : 1);
  }

  /** For example {@code "35 mm × 18 mm, stud 16 mm × 32.5 mm, M16x1.5 (metric)"}. */
  @Override
  public String toString() {
    return outsideDiameter + " × " + ringWidth + ", stud " + stud + " (" + series + ")";
  }
}

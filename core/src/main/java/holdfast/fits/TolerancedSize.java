// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * A nominal size with limit deviations: one part of a fit.
 *
 * @param nominalSize nominal size D, over 0
 * @param deviations limit deviations; stated ones within a tenth of D (0.2 mm below 2 mm) and no farther out than the classes
 *     of ISO 286-1 at that size
 * @param origin where the deviations come from
 */
public record TolerancedSize(Length nominalSize, LimitDeviations deviations, DeviationOrigin origin)
    implements Traced, Serializable {
  /** A deviation of more than this share of the size is a slip of the unit or of the decimal point. */
  private static final double SLIP = 0.1;
  /** Tolerances of sizes about 1 mm are a larger share: this is what class C13 reaches there, mm. */
  private static final double SMALL = 0.2;

  // Refuses a size that is none, and stated deviations that are a slip.
  public TolerancedSize {
    Objects.requireNonNull(nominalSize, "nominalSize");
    Objects.requireNonNull(deviations, "deviations");
    Objects.requireNonNull(origin, "origin");
    Check.positive(nominalSize.mm(), "nominal size D", "mm", "a part has a size");
    if (origin.appliesTo().isEmpty()) {
      refuseSlip(nominalSize, deviations.lower());
      refuseSlip(nominalSize, deviations.upper());
      Check.positive(nominalSize.mm() + deviations.lower().mm(), "lower limit of size", "mm", "a part has a size");
    }
  }

  /** Stated deviations in a wrong unit, or with a lost decimal point, are farther out than any class of the standard. */
  private static void refuseSlip(Length nominalSize, Length deviation) {
    double size = nominalSize.mm();
    double farthest = Math.min(Math.max(SLIP * size, SMALL), IsoTables.get().farthest(size));
    if (Math.abs(deviation.mm()) > farthest) {
      throw new InputException(
          "limit deviation", FitText.deviation(deviation),
          "within " + FitText.deviation(new Length(farthest)) + " of the nominal size " + nominalSize,
          "no tolerance of a seat reaches farther; check unit and decimal point");
    }
  }

  /**
   * A size in a tolerance class of ISO 286, or with limit deviations as a drawing writes them.
   *
   * @param nominalSize nominal size D, over 0 up to 3150 mm for a class
   * @param tolerance a class, for example {@code "H7"}, or deviations with their unit, for example {@code "+0.0005/0 in"}
   * @return the toleranced size
   * @throws holdfast.quantity.InputException if the text cannot be read or the class is not defined for the size
   */
  public static TolerancedSize of(Length nominalSize, String tolerance) {
    Objects.requireNonNull(nominalSize, "nominalSize");
    Objects.requireNonNull(tolerance, "tolerance");
    if (DrawnDeviations.isWrittenLike(tolerance)) {
      DrawnDeviations drawn = DrawnDeviations.read(tolerance);
      return new TolerancedSize(nominalSize, drawn.deviations(), drawn);
    }
    return ToleranceClass.of(tolerance).at(nominalSize);
  }

  /**
   * A size with limit deviations that a document states.
   *
   * @param nominalSize nominal size D
   * @param deviations limit deviations
   * @param designation how to name them, for example {@code "bore of the inner ring"}
   * @param source the document
   * @return the toleranced size
   */
  public static TolerancedSize given(Length nominalSize, LimitDeviations deviations, String designation, SourceRef source) {
    return new TolerancedSize(nominalSize, deviations, new GivenDeviations(designation, deviations, source));
  }

  /**
   * The limits of size.
   *
   * @return nominal size + deviations
   */
  public LimitsOfSize limits() {
    return deviations.at(nominalSize);
  }

  /**
   * Upper limit deviation.
   *
   * @return ES of a hole, es of a shaft
   */
  public Length upper() {
    return deviations.upper();
  }

  /**
   * Lower limit deviation.
   *
   * @return EI of a hole, ei of a shaft
   */
  public Length lower() {
    return deviations.lower();
  }

  /**
   * The tolerance.
   *
   * @return upper - lower deviation
   */
  public Length tolerance() {
    return deviations.tolerance();
  }

  /**
   * How a drawing names the tolerance.
   *
   * @return for example {@code "H7"}
   */
  public String designation() {
    return origin.designation();
  }

  @Override
  public Derivation explain() {
    return origin.explain(nominalSize);
  }

  @Override
  public List<Warning> warnings() {
    return origin.warnings(nominalSize);
  }

  /** Size, class, deviations and limits, for example {@code "25 H7: +21 µm / 0 µm, 25.000 mm … 25.021 mm"}. */
  @Override
  public String toString() {
    boolean inches = origin.inInches();
    return FitText.nominal(nominalSize, inches)
        + " "
        + designation()
        + ": "
        + FitText.deviations(deviations, inches)
        + ", "
        + FitText.limits(limits(), inches);
  }
}

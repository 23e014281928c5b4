// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.quantity.InputException;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import holdfast.tables.Provenance;
import holdfast.tables.Source;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;

/**
 * Searches the fits of ISO 286 whose clearances stay within a wanted range for every pair of parts made to their
 * limits. All classes defined for the size are searched; the candidates come ranked, preferred fits first. Immutable.
 *
 * <pre>{@code FitSelector.holeBasis(mm(25)).interferenceBetween(um(5), um(45)).candidates()}</pre>
 *
 * @param nominalSize nominal size D, over 0 up to 3150 mm
 * @param basis hole basis, shaft basis, or {@link Basis#NEITHER} for every pair of classes
 * @param finest finest grade to search
 * @param coarsest coarsest grade to search
 * @param preferredOnly whether only fits in a list of preferred or commonly used fits are wanted
 */
@Source(document = "ISO 286-1:2010", locator = "Tables 1 to 5")
@Source(document = "ANSI B4.2-1978", locator = "description of preferred fits")
@Source(document = "common practice", locator = "order of the candidates", provenance = Provenance.COMMON_PRACTICE)
public record FitSelector(
    Length nominalSize, Basis basis, ToleranceGrade finest, ToleranceGrade coarsest, boolean preferredOnly)
    implements Serializable {

  // Refuses sizes outside the tables and grades in the wrong order.
  public FitSelector {
    Objects.requireNonNull(nominalSize, "nominalSize");
    Objects.requireNonNull(basis, "basis");
    Objects.requireNonNull(finest, "finest");
    Objects.requireNonNull(coarsest, "coarsest");
    LimitDeviationsKernel.range(nominalSize.mm());
    if (finest.compareTo(coarsest) > 0) {
      throw new InputException("finest grade", finest.toString(), "not coarser than " + coarsest, "the grades span a range");
    }
  }

  /**
   * Searches the hole-basis system: holes H with all shafts.
   *
   * @param nominalSize nominal size D, over 0 up to 3150 mm
   * @return a selector over all grades
   * @throws InputException if the size is outside the tables
   */
  public static FitSelector holeBasis(Length nominalSize) {
    return new FitSelector(nominalSize, Basis.HOLE, ToleranceGrade.IT01, ToleranceGrade.IT18, false);
  }

  /**
   * Searches the shaft-basis system: shafts h with all holes.
   *
   * @param nominalSize nominal size D, over 0 up to 3150 mm
   * @return a selector over all grades
   * @throws InputException if the size is outside the tables
   */
  public static FitSelector shaftBasis(Length nominalSize) {
    return new FitSelector(nominalSize, Basis.SHAFT, ToleranceGrade.IT01, ToleranceGrade.IT18, false);
  }

  /**
   * Searches all holes with all shafts.
   *
   * @param nominalSize nominal size D, over 0 up to 3150 mm
   * @return a selector over all grades
   * @throws InputException if the size is outside the tables
   */
  public static FitSelector anyBasis(Length nominalSize) {
    return new FitSelector(nominalSize, Basis.NEITHER, ToleranceGrade.IT01, ToleranceGrade.IT18, false);
  }

  /**
   * Limits the grades of both parts.
   *
   * @param from finest grade
   * @param to coarsest grade
   * @return a selector over these grades
   * @throws InputException if the grades are in the wrong order
   */
  public FitSelector grades(ToleranceGrade from, ToleranceGrade to) {
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(to, "to");
    return new FitSelector(nominalSize, basis, from, to, preferredOnly);
  }

  /**
   * Keeps to fits that stand in a list of preferred or commonly used fits.
   *
   * @return a selector over these fits
   */
  public FitSelector onlyPreferred() {
    return new FitSelector(nominalSize, basis, finest, coarsest, true);
  }

  /**
   * Wants clearance fits.
   *
   * @param least least permitted clearance, 0 or more
   * @param greatest greatest permitted clearance
   * @return the request
   * @throws InputException if an amount is negative or the greatest is below the least
   */
  public FitRequest clearanceBetween(Length least, Length greatest) {
    Objects.requireNonNull(least, "least");
    Objects.requireNonNull(greatest, "greatest");
    requireAmounts("clearance", least, greatest);
    return new FitRequest(this, least, greatest);
  }

  /**
   * Wants interference fits.
   *
   * @param least least permitted interference, 0 or more
   * @param greatest greatest permitted interference
   * @return the request
   * @throws InputException if an amount is negative or the greatest is below the least
   */
  public FitRequest interferenceBetween(Length least, Length greatest) {
    Objects.requireNonNull(least, "least");
    Objects.requireNonNull(greatest, "greatest");
    requireAmounts("interference", least, greatest);
    return new FitRequest(this, greatest.negated(), least.negated());
  }

  /**
   * Wants fits that may turn out either way.
   *
   * @param greatestInterference greatest permitted interference, 0 or more
   * @param greatestClearance greatest permitted clearance, 0 or more
   * @return the request; its candidates may be fits of any kind
   * @throws InputException if an amount is negative
   */
  public FitRequest between(Length greatestInterference, Length greatestClearance) {
    Objects.requireNonNull(greatestInterference, "greatestInterference");
    Objects.requireNonNull(greatestClearance, "greatestClearance");
    requireNotNegative("greatest interference", greatestInterference);
    requireNotNegative("greatest clearance", greatestClearance);
    return new FitRequest(this, greatestInterference.negated(), greatestClearance);
  }

  private static void requireAmounts(String what, Length least, Length greatest) {
    requireNotNegative("least " + what, least);
    if (greatest.compareTo(least) < 0) {
      throw new InputException(
          "greatest " + what, um(greatest), um(least) + " or more", "it is not below the least " + what);
    }
  }

  private static void requireNotNegative(String what, Length amount) {
    if (amount.mm() < 0) {
      throw new InputException(what, um(amount), "0 µm or more", "amounts of clearance and interference carry no sign here");
    }
  }

  private static String um(Length length) {
    return Numbers.shortest(length.in(KnownUnits.UM)) + " µm";
  }

  /** Whether a class is to be searched. */
  boolean admits(ToleranceClass part) {
    boolean grade = part.grade().compareTo(finest) >= 0 && part.grade().compareTo(coarsest) <= 0;
    boolean basic = part.letter() == DeviationLetter.H;
    boolean free =
        switch (basis) {
          case HOLE -> part.feature() == Feature.SHAFT || basic;
          case SHAFT -> part.feature() == Feature.HOLE || basic;
          case NEITHER -> true;
        };
    return grade && free && part.isDefinedFor(nominalSize);
  }

  List<ToleranceClass> classes(Feature feature) {
    return IntStream.range(0, IsoTables.CLASSES)
        .mapToObj(ToleranceClass::at)
        .filter(c -> c.feature() == feature && admits(c))
        .toList();
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.quantity.InputException;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.tables.Source;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Warning;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A class js or JS of the grades 7 to 11 with its limit deviations in whole micrometres: if ITn is odd, the even value
 * below it is halved. The edition of 1988 allowed this and many printed tables follow it; the edition of 2010, and
 * {@link ToleranceClass}, keep the exact half.
 *
 * @param toleranceClass js or JS in a grade from IT7 to IT11
 */
@Source(document = "Machine Drawing", locator = "table 15.2, footnote on js (edition of 1988)")
public record RoundedSymmetricClass(ToleranceClass toleranceClass) implements DeviationOrigin {
  private static final SourceRef FOOTNOTE =
      SourceRef.published("Machine Drawing", "table 15.2, footnote on js (edition of 1988)");

  // Refuses classes to which the footnote does not apply.
  public RoundedSymmetricClass {
    if (!isRounded(toleranceClass)) {
      throw new InputException(
          "tolerance class", toleranceClass.toString(), "js or JS in the grades 7 to 11", FOOTNOTE.locator());
    }
  }

  /**
   * The rounded form of a class.
   *
   * @param toleranceClass js or JS in a grade from IT7 to IT11
   * @return the rounded form
   * @throws InputException if the footnote does not apply to the class
   */
  public static RoundedSymmetricClass of(ToleranceClass toleranceClass) {
    return new RoundedSymmetricClass(toleranceClass);
  }

  /**
   * Whether the footnote applies to a class.
   *
   * @param toleranceClass a class
   * @return true for js and JS in the grades 7 to 11
   */
  public static boolean isRounded(ToleranceClass toleranceClass) {
    Objects.requireNonNull(toleranceClass, "toleranceClass");
    return toleranceClass.letter() == DeviationLetter.JS
        && toleranceClass.grade().compareTo(ToleranceGrade.IT7) >= 0
        && toleranceClass.grade().compareTo(ToleranceGrade.IT11) <= 0;
  }

  /**
   * The limit deviations.
   *
   * @param nominalSize nominal size D, over 0 up to 3150 mm
   * @return plus and minus half of the greatest even number not above ITn, µm
   * @throws InputException if the size is outside the tables
   */
  public LimitDeviations limitDeviations(Length nominalSize) {
    Objects.requireNonNull(nominalSize, "nominalSize");
    Length half = KnownUnits.UM.of(LimitDeviationsKernel.roundedHalf(nominalSize.mm(), toleranceClass.grade().code()));
    return new LimitDeviations(half.negated(), half);
  }

  /**
   * A size with this class as its tolerance.
   *
   * @param nominalSize nominal size D, over 0 up to 3150 mm
   * @return the toleranced size
   * @throws InputException if the size is outside the tables
   */
  public TolerancedSize at(Length nominalSize) {
    Objects.requireNonNull(nominalSize, "nominalSize");
    return new TolerancedSize(nominalSize, limitDeviations(nominalSize), this);
  }

  @Override
  public Optional<Feature> appliesTo() {
    return Optional.of(toleranceClass.feature());
  }

  @Override
  public String designation() {
    return toString();
  }

  @Override
  public Derivation explain(Length nominalSize) {
    Objects.requireNonNull(nominalSize, "nominalSize");
    LimitDeviations result = limitDeviations(nominalSize);
    String it = toleranceClass.grade().name();
    return Derivation.of(FitText.nominal(nominalSize, false) + " " + this)
        .steps(IsoDerivation.tolerance(toleranceClass, nominalSize))
        .step("upper", "upper limit deviation", "half of the greatest even number not above " + it,
            result.upper().in(KnownUnits.UM), "µm", FOOTNOTE)
        .step("lower", "lower limit deviation", "-upper", result.lower().in(KnownUnits.UM), "µm", FOOTNOTE)
        .build();
  }

  @Override
  public List<Warning> warnings(Length nominalSize) {
    Objects.requireNonNull(nominalSize, "nominalSize");
    String message = "half tolerance of " + toleranceClass + " rounded to whole µm as the edition of 1988 allowed";
    return List.of(new Warning("rounded-js", message, FOOTNOTE));
  }

  /** For example {@code "JS7 (1988, rounded)"}. */
  @Override
  public String toString() {
    return toleranceClass + " (1988, rounded)";
  }
}

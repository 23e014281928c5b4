// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.quantity.InputException;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.tables.Source;
import holdfast.trace.Derivation;
import holdfast.trace.Warning;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A tolerance class such as H7 or js6: the letter code of a fundamental deviation and the number of a standard
 * tolerance grade (ISO 286-1:2010, 4.2).
 *
 * @param feature hole (capital letters) or shaft (small letters)
 * @param letter fundamental deviation
 * @param grade standard tolerance grade
 */
@Source(document = "ISO 286-1:2010", locator = "Tables 1 to 5")
public record ToleranceClass(Feature feature, DeviationLetter letter, ToleranceGrade grade) implements DeviationOrigin {
  private static final ToleranceClass[] ALL = all();

  public ToleranceClass {
    Objects.requireNonNull(feature, "feature");
    Objects.requireNonNull(letter, "letter");
    Objects.requireNonNull(grade, "grade");
  }

  /**
   * Reads a tolerance class.
   *
   * @param text for example {@code "H7"} or {@code "js6"}; spaces around it are ignored
   * @return the class; whether it is defined depends on the size
   * @throws InputException if the text is not a letter code and a grade
   */
  public static ToleranceClass of(String text) {
    Objects.requireNonNull(text, "text");
    return ClassText.toleranceClass(text);
  }

  /**
   * The number by which {@link LimitDeviationsKernel} knows the class.
   *
   * @return 0 or more
   */
  public int code() {
    return IsoTables.classIndex(feature.index, letter.index, grade.index);
  }

  /**
   * The limit deviations.
   *
   * @param nominalSize nominal size D, over 0 up to 3150 mm
   * @return EI and ES of a hole, ei and es of a shaft
   * @throws InputException if the size is outside the tables or the class not defined for it
   */
  public LimitDeviations limitDeviations(Length nominalSize) {
    Objects.requireNonNull(nominalSize, "nominalSize");
    int code = code();
    return new LimitDeviations(
        KnownUnits.UM.of(LimitDeviationsKernel.lower(nominalSize.mm(), code)),
        KnownUnits.UM.of(LimitDeviationsKernel.upper(nominalSize.mm(), code)));
  }

  /**
   * A size with this class as its tolerance.
   *
   * @param nominalSize nominal size D, over 0 up to 3150 mm
   * @return the toleranced size, which explains itself
   * @throws InputException if the size is outside the tables or the class not defined for it
   */
  public TolerancedSize at(Length nominalSize) {
    Objects.requireNonNull(nominalSize, "nominalSize");
    return new TolerancedSize(nominalSize, limitDeviations(nominalSize), this);
  }

  /**
   * The limits of size.
   *
   * @param nominalSize nominal size D, over 0 up to 3150 mm
   * @return lower and upper limit of size
   * @throws InputException if the size is outside the tables or the class not defined for it
   */
  public LimitsOfSize limitsOfSize(Length nominalSize) {
    Objects.requireNonNull(nominalSize, "nominalSize");
    return limitDeviations(nominalSize).at(nominalSize);
  }

  /**
   * Whether the standard defines the class for a size.
   *
   * @param nominalSize nominal size D, over 0 up to 3150 mm
   * @return true if it has limit deviations there
   * @throws InputException if the size is outside the tables
   */
  public boolean isDefinedFor(Length nominalSize) {
    Objects.requireNonNull(nominalSize, "nominalSize");
    return LimitDeviationsKernel.isDefined(nominalSize.mm(), code());
  }

  /**
   * The class with another grade.
   *
   * @param other the grade
   * @return the same letter with that grade
   */
  public ToleranceClass withGrade(ToleranceGrade other) {
    Objects.requireNonNull(other, "other");
    return at(IsoTables.classIndex(feature.index, letter.index, other.index));
  }

  /**
   * The class of the mating part with the same letter and grade: P7 for p7.
   *
   * @return the class of the other feature
   */
  public ToleranceClass mirrored() {
    return at(IsoTables.classIndex(1 - feature.index, letter.index, grade.index));
  }

  @Override
  public Optional<Feature> appliesTo() {
    return Optional.of(feature);
  }

  @Override
  public String designation() {
    return toString();
  }

  @Override
  public Derivation explain(Length nominalSize) {
    Objects.requireNonNull(nominalSize, "nominalSize");
    return IsoDerivation.of(this, nominalSize);
  }

  @Override
  public List<Warning> warnings(Length nominalSize) {
    Objects.requireNonNull(nominalSize, "nominalSize");
    return IsoDerivation.warnings(this, nominalSize);
  }

  /** As on a drawing, for example {@code "H7"}. */
  @Override
  public String toString() {
    return letter.text(feature) + grade.number();
  }

  /** The class with a code; always the same object. */
  static ToleranceClass at(int code) {
    return ALL[code];
  }

  private static ToleranceClass[] all() {
    ToleranceClass[] classes = new ToleranceClass[IsoTables.CLASSES];
    for (Feature feature : Feature.values()) {
      for (DeviationLetter letter : DeviationLetter.values()) {
        for (ToleranceGrade grade : ToleranceGrade.values()) {
          int code = IsoTables.classIndex(feature.index, letter.index, grade.index);
          classes[code] = new ToleranceClass(feature, letter, grade);
        }
      }
    }
    return classes;
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.quantity.InputException;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.quantity.Unit;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import java.util.Objects;

/**
 * Limit deviations as a drawing writes them, for example {@code "+0.0005/0 in"}.
 *
 * @param text as written
 * @param deviations the deviations
 * @param inInches whether they are written in inches or thou
 */
record DrawnDeviations(String text, LimitDeviations deviations, boolean inInches) implements DeviationOrigin {
  private static final SourceRef DRAWING = SourceRef.commonPractice("limit deviations as the drawing or the maker states them");

  /** Whether a text cannot be a tolerance class because it starts with a number. */
  static boolean isWrittenLike(String text) {
    return text != null && text.strip().matches("[+\\-\u2212.0-9].*");
  }

  static DrawnDeviations read(String text) {
    String[] parts = text.strip().split("/", -1);
    int unitStart = parts[parts.length - 1].strip().lastIndexOf(' ');
    if (parts.length != 2 || unitStart < 0) {
      throw new InputException(
          "limit deviations", "'" + text + "'", "upper, slash, lower, blank, unit, such as +0.0005/0 in", "the drawing has both");
    }
    String lower = parts[1].strip();
    String unit = lower.substring(unitStart).strip();
    Length high = Length.parse(parts[0].strip() + " " + unit);
    Length low = Length.parse(lower);
    return new DrawnDeviations(text.strip(), new LimitDeviations(low, high), inch(unit));
  }

  private static boolean inch(String unit) {
    return unit.equals("in") || unit.equals("inch") || unit.equals("\"") || unit.equals("thou") || unit.equals("mil")
        || unit.startsWith("tenth");
  }

  @Override
  public String designation() {
    return text;
  }

  @Override
  public Derivation explain(Length nominalSize) {
    Objects.requireNonNull(nominalSize, "nominalSize");
    Unit<Length> unit = inInches ? KnownUnits.THOU : KnownUnits.UM;
    return Derivation.of(text)
        .step("upper", "upper limit deviation", "as written: " + text, deviations.upper().in(unit), unit.symbol(), DRAWING)
        .step("lower", "lower limit deviation", "as written: " + text, deviations.lower().in(unit), unit.symbol(), DRAWING)
        .build();
  }
}

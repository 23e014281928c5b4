// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.tables.Source;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import java.util.Objects;

/** General tolerances of linear dimensions without a tolerance of their own. */
@Source(document = "ISO 2768-1:1989", locator = "table 1, linear dimensions")
public enum GeneralTolerance {
  /** Class f, fine; up to 2000 mm. */
  FINE("f"),
  /** Class m, medium. */
  MEDIUM("m"),
  /** Class c, coarse; over 6 mm, for no print was found below. */
  COARSE("c"),
  /** Class v, very coarse; over 3 mm. */
  VERY_COARSE("v");

  private final String letter;

  GeneralTolerance(String letter) {
    this.letter = letter;
  }

  /**
   * Permitted deviation.
   *
   * @param size nominal size, 0.5 to 4000 mm
   * @return the deviation that is permitted to either side
   * @throws InputException if the class has none for the size
   */
  public Length deviation(Length size) {
    Objects.requireNonNull(size, "size");
    Table table = TableSet.bundled().table("fits/iso-2768-1/1989/linear");
    for (int row = 0; row < table.size(); row++) {
      double over = table.number(row, "over_mm");
      boolean above = size.mm() > over || (over == 0.5 && size.mm() == 0.5);
      if (table.text(row, "class").equals(letter) && above && size.mm() <= table.number(row, "up_to_mm")) {
        return new Length(table.number(row, "deviation"));
      }
    }
    String permitted =
        switch (this) {
          case FINE -> "0.5 to 2000 mm";
          case MEDIUM -> "0.5 to 4000 mm";
          case COARSE -> "over 6 up to 4000 mm";
          case VERY_COARSE -> "over 3 up to 4000 mm";
        };
    throw new InputException(
        "nominal size",
        size.toString(),
        permitted,
        "no deviation of class " + letter + " for other sizes was found in print, or ISO 2768-1:1989 has none");
  }

  /** The class as drawings name it, for example {@code "m"}. */
  @Override
  public String toString() {
    return letter;
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.quantity.InputException;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.tables.Source;
import java.util.Objects;

/** Standard tolerance grades IT01 to IT18, from fine to coarse (ISO 286-1:2010, Table 1). */
public enum ToleranceGrade {
  /** Grade 01. */
  IT01(0),
  /** Grade 0. */
  IT0(1),
  /** Grade 1. */
  IT1(2),
  /** Grade 2. */
  IT2(3),
  /** Grade 3. */
  IT3(4),
  /** Grade 4. */
  IT4(5),
  /** Grade 5. */
  IT5(6),
  /** Grade 6. */
  IT6(7),
  /** Grade 7. */
  IT7(8),
  /** Grade 8. */
  IT8(9),
  /** Grade 9. */
  IT9(10),
  /** Grade 10. */
  IT10(11),
  /** Grade 11. */
  IT11(12),
  /** Grade 12. */
  IT12(13),
  /** Grade 13. */
  IT13(14),
  /** Grade 14. */
  IT14(15),
  /** Grade 15. */
  IT15(16),
  /** Grade 16. */
  IT16(17),
  /** Grade 17. */
  IT17(18),
  /** Grade 18. */
  IT18(19);

  private static final ToleranceGrade[] ALL = values();
  /** Place in the arrays of the kernel. */
  final int index;

  ToleranceGrade(int index) {
    this.index = index;
  }

  /**
   * The standard tolerance.
   *
   * @param nominalSize nominal size D, over 0 up to 3150 mm; up to 500 mm for IT01 and IT0, over 1 mm for IT14 to IT18
   * @return the tolerance ITn
   * @throws InputException if the grade is not defined for the size
   */
  @Source(document = "ISO 286-1:2010", locator = "Table 1")
  public Length tolerance(Length nominalSize) {
    Objects.requireNonNull(nominalSize, "nominalSize");
    return KnownUnits.UM.of(LimitDeviationsKernel.standardTolerance(nominalSize.mm(), index));
  }

  /**
   * The number by which {@link LimitDeviationsKernel} knows the grade.
   *
   * @return 0 for IT01, 1 for IT0, 2 for IT1, up to 19 for IT18
   */
  public int code() {
    return index;
  }

  /**
   * The number of the grade as it stands in a tolerance class.
   *
   * @return {@code "01"}, {@code "0"}, {@code "1"} to {@code "18"}
   */
  public String number() {
    return name().substring(2);
  }

  /**
   * The next finer grade.
   *
   * @return the grade before this one
   * @throws InputException for IT01
   */
  public ToleranceGrade finer() {
    if (this == IT01) {
      throw new InputException("tolerance grade", "IT01", "IT0 to IT18", "no grade is finer than IT01");
    }
    return ALL[index - 1];
  }

  /**
   * Reads a grade.
   *
   * @param text for example {@code "IT7"} or {@code "7"}
   * @return the grade
   * @throws InputException if the text is not a grade
   */
  public static ToleranceGrade of(String text) {
    Objects.requireNonNull(text, "text");
    String stripped = text.strip();
    String number = stripped.startsWith("IT") ? stripped.substring(2) : stripped;
    for (ToleranceGrade grade : ALL) {
      if (grade.number().equals(number)) {
        return grade;
      }
    }
    throw new InputException(
        "tolerance grade", "'" + text + "'", "IT01, IT0 or IT1 to IT18", "'" + number + "' is not the number of a grade");
  }

  static ToleranceGrade at(int index) {
    return ALL[index];
  }
}

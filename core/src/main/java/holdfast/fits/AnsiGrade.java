// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.tables.Cell;
import holdfast.tables.Source;
import holdfast.trace.Derivation;
import java.util.Objects;

/** A standard tolerance grade of ANSI B4.1-1967 for inch sizes. */
@Source(document = "ANSI B4.1-1967", locator = "table 1")
public enum AnsiGrade {
  /** Grade 4. */
  GRADE_4(4),
  /** Grade 5. */
  GRADE_5(5),
  /** Grade 6. */
  GRADE_6(6),
  /** Grade 7. */
  GRADE_7(7),
  /** Grade 8. */
  GRADE_8(8),
  /** Grade 9. */
  GRADE_9(9),
  /** Grade 10. */
  GRADE_10(10),
  /** Grade 11. */
  GRADE_11(11),
  /** Grade 12. */
  GRADE_12(12),
  /** Grade 13. */
  GRADE_13(13);

  private static final AnsiGrade[] ALL = values();

  private final int number;

  AnsiGrade(int number) {
    this.number = number;
  }

  /**
   * The grade with a number.
   *
   * @param number 4 to 13
   * @return the grade
   * @throws InputException if there is no such grade
   */
  public static AnsiGrade of(int number) {
    Check.within(number, InchTables.LEAST_GRADE, InchTables.GREATEST_GRADE, "tolerance grade", "", "ANSI B4.1-1967, table 1");
    return ALL[number - InchTables.LEAST_GRADE];
  }

  /**
   * Number of the grade.
   *
   * @return 4 to 13
   */
  public int number() {
    return number;
  }

  /**
   * The tolerance.
   *
   * @param nominalSize nominal size D, over 0 up to 200 in
   * @return the standard tolerance
   * @throws InputException if the size is outside the table
   */
  public Length tolerance(Length nominalSize) {
    Objects.requireNonNull(nominalSize, "nominalSize");
    return KnownUnits.THOU.of(InchLimitsKernel.standardTolerance(nominalSize.mm(), number));
  }

  /**
   * Whether the tolerance belongs to those on which America, Britain and Canada agreed.
   *
   * @param nominalSize nominal size D, over 0 up to 200 in
   * @return true up to 19.69 in
   * @throws InputException if the size is outside the table
   */
  public boolean isAgreed(Length nominalSize) {
    Objects.requireNonNull(nominalSize, "nominalSize");
    return InchTables.get().tolerances.text(row(nominalSize), "abc_agreement").equals("yes");
  }

  /**
   * The cell behind the tolerance.
   *
   * @param nominalSize nominal size D, over 0 up to 200 in
   * @return one step, in thousandths of an inch
   * @throws InputException if the size is outside the table
   */
  public Derivation explain(Length nominalSize) {
    Objects.requireNonNull(nominalSize, "nominalSize");
    Cell cell = InchTables.get().tolerances.cell(row(nominalSize), "value");
    return Derivation.of(FitText.nominal(nominalSize, true) + ", " + this)
        .step("T", "standard tolerance", cell.address(), cell.value(), "thou", cell.source())
        .build();
  }

  private int row(Length nominalSize) {
    int range = InchLimitsKernel.toleranceRange(nominalSize.mm());
    int skip = 0;
    int row = 0;
    while (!InchTables.get().tolerances.text(row, "grade").equals(Integer.toString(number)) || skip++ < range) {
      row++;
    }
    return row;
  }

  /** For example {@code "grade 7"}. */
  @Override
  public String toString() {
    return "grade " + number;
  }
}

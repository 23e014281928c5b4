// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Numbers;
import holdfast.tables.Source;
import java.util.Objects;

/**
 * Standard tolerances and limit deviations of ANSI B4.1-1967 in thousandths of an inch (thou), in which the tables are
 * printed, for a nominal size in millimetres.
 *
 * <p>A fit is a number, {@link InchFitClass#code()}. A size on the end of a range belongs to the range below; a size
 * within 1e-12 of an end counts as the end, because the ends are no round numbers of millimetres. Thread-safe; nothing
 * is allocated unless the input is refused.
 */
@Source(document = "ANSI B4.1-1967", locator = "table 1 and the tables of fits RC, LC, LT, LN and FN")
public final class InchLimitsKernel {
  private static final String SIZE = "nominal size D";
  /** Room for the rounding of an inch in millimetres, relative. */
  private static final double END = 1 + 1e-12;

  private InchLimitsKernel() {}

  /**
   * Standard tolerance of a grade.
   *
   * @param nominalSize nominal size D, mm, over 0 up to 5080 (200 in)
   * @param grade 4 to 13
   * @return the tolerance, thou
   * @throws InputException if size or grade are outside the table
   */
  public static double standardTolerance(double nominalSize, int grade) {
    if (grade < InchTables.LEAST_GRADE || grade > InchTables.GREATEST_GRADE) {
      Check.within(grade, InchTables.LEAST_GRADE, InchTables.GREATEST_GRADE, "tolerance grade", "", "ANSI B4.1-1967, table 1");
    }
    InchTables tables = InchTables.get();
    return tables.tolerance[(grade - InchTables.LEAST_GRADE) * tables.toleranceRanges + toleranceRange(nominalSize)];
  }

  /**
   * Limit deviations of both parts of a fit.
   *
   * @param nominalSize nominal size D, mm, within the ranges of the class
   * @param fit code of the fit class
   * @param deviations receives ES, EI, es, ei, thou
   * @throws InputException if the class has no row for the size
   */
  public static void fit(double nominalSize, int fit, double[] deviations) {
    Objects.requireNonNull(deviations, "deviations");
    requirePlaces(deviations, 4);
    System.arraycopy(InchTables.get().deviations, 4 * range(nominalSize, fit), deviations, 0, 4);
  }

  /**
   * Limit deviations of many sizes in one fit class.
   *
   * @param nominalSizes nominal sizes D, mm
   * @param fit code of the fit class
   * @param deviations receives ES, EI, es, ei of each size in turn, thou; four times as long as the sizes
   * @throws InputException if the class has no row for a size; the deviations before it are then written
   */
  public static void fit(double[] nominalSizes, int fit, double[] deviations) {
    Objects.requireNonNull(nominalSizes, "nominalSizes");
    Objects.requireNonNull(deviations, "deviations");
    requirePlaces(deviations, 4L * nominalSizes.length);
    for (int i = 0; i < nominalSizes.length; i++) {
      System.arraycopy(InchTables.get().deviations, 4 * range(nominalSizes[i], fit), deviations, 4 * i, 4);
    }
  }

  /**
   * Greatest clearance, ES - ei; negative for an interference.
   *
   * @param nominalSize nominal size D, mm, within the ranges of the class
   * @param fit code of the fit class
   * @return the greatest clearance, thou
   * @throws InputException if the class has no row for the size
   */
  public static double maximumClearance(double nominalSize, int fit) {
    int range = range(nominalSize, fit);
    double[] deviations = InchTables.get().deviations;
    return deviations[4 * range] - deviations[4 * range + 3];
  }

  /**
   * Least clearance, EI - es; negative for an interference.
   *
   * @param nominalSize nominal size D, mm, within the ranges of the class
   * @param fit code of the fit class
   * @return the least clearance, thou
   * @throws InputException if the class has no row for the size
   */
  public static double minimumClearance(double nominalSize, int fit) {
    int range = range(nominalSize, fit);
    double[] deviations = InchTables.get().deviations;
    return deviations[4 * range + 1] - deviations[4 * range + 2];
  }

  /** Index of the range of a size among the ranges of a class. */
  static int range(double nominalSize, int fit) {
    if (fit < 0 || fit >= InchTables.CLASSES) {
      Check.within(fit, 0, InchTables.CLASSES - 1, "code of the fit class", "", "see InchFitClass.code()");
    }
    InchTables tables = InchTables.get();
    int range = tables.start[fit];
    int end = tables.start[fit + 1];
    double[] over = tables.over;
    double[] upTo = tables.upTo;
    if (!(nominalSize > over[range] * END && nominalSize <= upTo[end - 1] * END)) {
      throw outside(nominalSize, over[range], upTo[end - 1], "ANSI B4.1-1967, fits " + InchFitClass.at(fit));
    }
    while (nominalSize > upTo[range] * END) {
      range++;
    }
    return range;
  }

  /** Index of the range of a size among the ranges of the standard tolerances. */
  static int toleranceRange(double nominalSize) {
    double[] upTo = InchTables.get().toleranceUpTo;
    int last = upTo.length - 1;
    if (!(nominalSize > 0 && nominalSize <= upTo[last] * END)) {
      throw outside(nominalSize, 0, upTo[last], "ANSI B4.1-1967, table 1");
    }
    int range = 0;
    while (nominalSize > upTo[range] * END) {
      range++;
    }
    return range;
  }

  private static InputException outside(double size, double over, double upTo, String reason) {
    return new InputException(
        SIZE, both(size), "over " + inches(over) + " up to " + inches(upTo), reason);
  }

  private static String both(double mm) {
    return inches(mm) + ", " + Numbers.significant(mm, 10) + " mm";
  }

  private static String inches(double mm) {
    return Numbers.significant(mm / 25.4, 10) + " in";
  }
  private static void requirePlaces(double[] result, long places) {
    if (result.length < places) {
      throw new InputException("array for the result", result.length + " places", places + " or more", "nothing is left out");
    }
  }

}

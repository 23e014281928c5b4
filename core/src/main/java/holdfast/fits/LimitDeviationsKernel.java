// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.tables.Source;
import java.util.Objects;

/**
 * Standard tolerances and limit deviations of ISO 286-1:2010 in micrometres for a nominal size in millimetres.
 *
 * <p>A tolerance class is a number, {@link ToleranceClass#code()}; a grade is a number, {@link ToleranceGrade#code()}.
 * Values are those of the tables, added exactly: the result is the double nearest to the decimal number. A size on
 * the end of a range belongs to the range below. Thread-safe; nothing is allocated unless the input is refused.
 */
@Source(document = "ISO 286-1:2010", locator = "Tables 1 to 5")
public final class LimitDeviationsKernel {
  private static final int GRADES = IsoTables.GRADES;
  private static final int SHAFTS = IsoTables.CLASSES / 2;

  private LimitDeviationsKernel() {}

  /**
   * Standard tolerance ITn.
   *
   * @param nominalSize nominal size D, mm, over 0 up to 3150
   * @param grade 0 (IT01) to 19 (IT18)
   * @return ITn, µm
   * @throws InputException if the size is outside the tables or the grade not defined for it
   */
  public static double standardTolerance(double nominalSize, int grade) {
    int range = range(nominalSize);
    Check.within(grade, 0, GRADES - 1, "index of the tolerance grade", "", "0 is IT01, 19 is IT18");
    int value = IsoTables.get().tolerance(grade, range);
    if (value == IsoTables.UNDEFINED) {
      throw Undefined.grade(nominalSize, grade);
    }
    return value / 100.0;
  }

  /**
   * Half tolerance of js and JS in whole micrometres, as the edition of 1988 allowed it for the grades 7 to 11.
   *
   * @param nominalSize nominal size D, mm, over 0 up to 3150
   * @param grade 8 (IT7) to 12 (IT11)
   * @return half of the greatest even number not above ITn, µm
   * @throws InputException if the size is outside the tables or the grade is another
   */
  @Source(document = "Machine Drawing", locator = "table 15.2, footnote on js (edition of 1988)")
  public static double roundedHalf(double nominalSize, int grade) {
    Check.within(grade, 8, 12, "index of the tolerance grade", "", "the footnote is on IT7 (8) to IT11 (12)");
    return Math.floor(standardTolerance(nominalSize, grade) / 2);
  }

  /**
   * Upper limit deviation, ES of a hole or es of a shaft.
   *
   * @param nominalSize nominal size D, mm, over 0 up to 3150
   * @param toleranceClass code of the class
   * @return ES or es, µm
   * @throws InputException if the size is outside the tables or the class not defined for it
   */
  public static double upper(double nominalSize, int toleranceClass) {
    return upperAt(range(nominalSize), nominalSize, toleranceClass) / 100.0;
  }

  /**
   * Lower limit deviation, EI of a hole or ei of a shaft.
   *
   * @param nominalSize nominal size D, mm, over 0 up to 3150
   * @param toleranceClass code of the class
   * @return EI or ei, µm
   * @throws InputException if the size is outside the tables or the class not defined for it
   */
  public static double lower(double nominalSize, int toleranceClass) {
    int range = range(nominalSize);
    int upper = upperAt(range, nominalSize, toleranceClass);
    return (upper - IsoTables.get().toleranceOf(toleranceClass, range)) / 100.0;
  }

  /**
   * Limit deviations of both parts of a fit, with one search of the size range.
   *
   * @param nominalSize nominal size D, mm, over 0 up to 3150
   * @param hole code of the class of the hole
   * @param shaft code of the class of the shaft
   * @param deviations receives ES, EI, es, ei, µm; at least four places
   * @throws InputException if the size is outside the tables, a class not defined for it or of the other
   *     feature, or the array too short
   */
  public static void fit(double nominalSize, int hole, int shaft, double[] deviations) {
    Objects.requireNonNull(deviations, "deviations");
    requirePlaces(deviations, 4);
    requireFeatures(hole, shaft);
    int range = range(nominalSize);
    int holeUpper = upperAt(range, nominalSize, hole);
    int shaftUpper = upperAt(range, nominalSize, shaft);
    deviations[0] = holeUpper / 100.0;
    deviations[1] = (holeUpper - IsoTables.get().toleranceOf(hole, range)) / 100.0;
    deviations[2] = shaftUpper / 100.0;
    deviations[3] = (shaftUpper - IsoTables.get().toleranceOf(shaft, range)) / 100.0;
  }

  /**
   * Least clearance of a fit, EI - es; negative for an interference.
   *
   * @param nominalSize nominal size D, mm, over 0 up to 3150
   * @param hole code of the class of the hole
   * @param shaft code of the class of the shaft
   * @return the least clearance, µm
   * @throws InputException if the size is outside the tables, or a class not defined for it or of the other feature
   */
  public static double minimumClearance(double nominalSize, int hole, int shaft) {
    requireFeatures(hole, shaft);
    int range = range(nominalSize);
    int holeLower = upperAt(range, nominalSize, hole) - IsoTables.get().toleranceOf(hole, range);
    return (holeLower - upperAt(range, nominalSize, shaft)) / 100.0;
  }

  /**
   * Greatest clearance of a fit, ES - ei; negative for an interference.
   *
   * @param nominalSize nominal size D, mm, over 0 up to 3150
   * @param hole code of the class of the hole
   * @param shaft code of the class of the shaft
   * @return the greatest clearance, µm
   * @throws InputException if the size is outside the tables, or a class not defined for it or of the other feature
   */
  public static double maximumClearance(double nominalSize, int hole, int shaft) {
    requireFeatures(hole, shaft);
    int range = range(nominalSize);
    int shaftLower = upperAt(range, nominalSize, shaft) - IsoTables.get().toleranceOf(shaft, range);
    return (upperAt(range, nominalSize, hole) - shaftLower) / 100.0;
  }

  /**
   * Limit deviations of many sizes in one class.
   *
   * @param nominalSizes nominal sizes D, mm, each over 0 up to 3150
   * @param toleranceClass code of the class
   * @param upper receives the upper limit deviations, µm; as long as the sizes
   * @param lower receives the lower limit deviations, µm; as long as the sizes
   * @throws InputException if a size is outside the tables, the class not defined for it, or an array too short
   */
  public static void limits(double[] nominalSizes, int toleranceClass, double[] upper, double[] lower) {
    Objects.requireNonNull(nominalSizes, "nominalSizes");
    Objects.requireNonNull(upper, "upper");
    Objects.requireNonNull(lower, "lower");
    requirePlaces(upper, nominalSizes.length);
    requirePlaces(lower, nominalSizes.length);
    for (int i = 0; i < nominalSizes.length; i++) {
      int range = range(nominalSizes[i]);
      int top = upperAt(range, nominalSizes[i], toleranceClass);
      upper[i] = top / 100.0;
      lower[i] = (top - IsoTables.get().toleranceOf(toleranceClass, range)) / 100.0;
    }
  }

  /**
   * Whether a class is defined for a size.
   *
   * @param nominalSize nominal size D, mm, over 0 up to 3150
   * @param toleranceClass code of the class
   * @return true if it has limit deviations there
   * @throws InputException if the size is outside the tables
   */
  public static boolean isDefined(double nominalSize, int toleranceClass) {
    requireCode(toleranceClass);
    return IsoTables.get().upper(toleranceClass, range(nominalSize)) != IsoTables.UNDEFINED;
  }

  /** Index of the size range. Range ends are whole millimetres, so the size rounded up decides. */
  static int range(double nominalSize) {
    if (!(nominalSize > 0 && nominalSize <= IsoRanges.MAX)) {
      Check.overUpTo(nominalSize, 0, IsoRanges.MAX, "nominal size D", "mm", "ISO 286-1:2010, Table 1");
    }
    return IsoTables.get().ranges.ofWholeMillimetre[(int) Math.ceil(nominalSize)];
  }

  private static void requirePlaces(double[] result, int places) {
    if (result.length < places) {
      throw new InputException("array for the result", result.length + " places", places + " or more", "nothing is left out");
    }
  }

  private static void requireCode(int toleranceClass) {
    if (toleranceClass < 0 || toleranceClass >= IsoTables.CLASSES) {
      Check.within(toleranceClass, 0, IsoTables.CLASSES - 1, "code of the tolerance class", "", "see ToleranceClass.code()");
    }
  }

  /** Codes of holes stand before those of shafts. */
  private static void requireFeatures(int hole, int shaft) {
    requireCode(hole);
    requireCode(shaft);
    if (hole >= SHAFTS || shaft < SHAFTS) {
      Feature.HOLE.requireOf(ToleranceClass.at(hole));
      Feature.SHAFT.requireOf(ToleranceClass.at(shaft));
    }
  }

  private static int upperAt(int range, double nominalSize, int toleranceClass) {
    requireCode(toleranceClass);
    int value = IsoTables.get().upper(toleranceClass, range);
    if (value == IsoTables.UNDEFINED) {
      throw Undefined.toleranceClass(nominalSize, toleranceClass);
    }
    return value;
  }
}

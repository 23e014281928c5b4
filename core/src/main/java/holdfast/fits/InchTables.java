// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.tables.Table;
import holdfast.tables.TableSet;
import java.util.List;

/** The tables of ANSI B4.1-1967 as arrays, read once. Sizes in mm, deviations and tolerances in thousandths of an inch. */
final class InchTables {
  private static final String FOLDER = "fits/ansi-b4.1/1967/";
  private static final double INCH = 25.4;

  static final Table TOLERANCES = TableSet.bundled().table(FOLDER + "standard-tolerances");

  /** One table a family, in the order of {@link InchFitClass.Family}. */
  private static final List<Table> FITS =
      List.of(
          TableSet.bundled().table(FOLDER + "running-and-sliding"),
          TableSet.bundled().table(FOLDER + "locational-clearance"),
          TableSet.bundled().table(FOLDER + "locational-transition"),
          TableSet.bundled().table(FOLDER + "locational-interference"),
          TableSet.bundled().table(FOLDER + "force-and-shrink"));

  static final int LEAST_GRADE = 4;
  static final int GREATEST_GRADE = 13;
  static final int GRADES = GREATEST_GRADE - LEAST_GRADE + 1;
  static final int CLASSES = InchFitClass.values().length;

  /** Where the ranges of a fit class start in the arrays below; they end where those of the next class start. */
  static final int[] START = new int[CLASSES + 1];
  /** Open lower end of each range, mm. */
  static final double[] OVER;
  /** Closed upper end of each range, mm. */
  static final double[] UP_TO;
  /** ES, EI, es, ei of each range, thou. */
  static final double[] DEVIATIONS;

  private static final int[] ROW;

  /** Ranges of the standard tolerances. */
  static final int TOLERANCE_RANGES = TOLERANCES.size() / GRADES;
  /** Upper end of each of them, mm. */
  static final double[] TOLERANCE_UP_TO = new double[TOLERANCE_RANGES];
  /** Standard tolerance, index (grade - 4) · ranges + range, thou. */
  static final double[] TOLERANCE = new double[TOLERANCES.size()];

  static {
    int rows = FITS.stream().mapToInt(Table::size).sum();
    OVER = new double[rows];
    UP_TO = new double[rows];
    DEVIATIONS = new double[4 * rows];
    ROW = new int[rows];
    int at = 0;
    for (InchFitClass fit : InchFitClass.values()) {
      START[fit.code()] = at;
      Table table = table(fit);
      for (int row = 0; row < table.size(); row++) {
        if (table.text(row, "class").equals(fit.name())) {
          OVER[at] = table.number(row, "over_in") * INCH;
          UP_TO[at] = table.number(row, "up_to_in") * INCH;
          DEVIATIONS[4 * at] = table.number(row, "hole_upper");
          DEVIATIONS[4 * at + 1] = table.number(row, "hole_lower");
          DEVIATIONS[4 * at + 2] = table.number(row, "shaft_upper");
          DEVIATIONS[4 * at + 3] = table.number(row, "shaft_lower");
          ROW[at] = row;
          at++;
        }
      }
    }
    START[CLASSES] = at;
    for (int grade = LEAST_GRADE; grade <= GREATEST_GRADE; grade++) {
      int range = 0;
      for (int row = 0; row < TOLERANCES.size(); row++) {
        if (TOLERANCES.text(row, "grade").equals(Integer.toString(grade))) {
          TOLERANCE_UP_TO[range] = TOLERANCES.number(row, "up_to_in") * INCH;
          TOLERANCE[(grade - LEAST_GRADE) * TOLERANCE_RANGES + range] = TOLERANCES.number(row, "value");
          range++;
        }
      }
    }
  }

  private InchTables() {}

  /** The table with the rows of a class. */
  static Table table(InchFitClass fit) {
    return FITS.get(fit.family().index);
  }

  /** Row of a range in the table of its class. */
  static int row(int range) {
    return ROW[range];
  }
}

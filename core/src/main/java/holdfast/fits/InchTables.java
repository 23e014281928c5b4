// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.tables.FromTables;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import java.util.List;

/** The tables of ANSI B4.1-1967 as arrays, read once. Sizes in mm, deviations and tolerances in thousandths of an inch. */
final class InchTables {
  private static final String FOLDER = "fits/ansi-b4.1/1967/";
  private static final double INCH = 25.4;

  static final int LEAST_GRADE = 4;
  static final int GREATEST_GRADE = 13;
  static final int GRADES = GREATEST_GRADE - LEAST_GRADE + 1;
  static final int CLASSES = InchFitClass.values().length;

  private static final FromTables<InchTables> TABLES = FromTables.of(InchTables::new);

  final Table tolerances;

  /** One table a family, in the order of {@link InchFitClass.Family}. */
  private final List<Table> fits;

  /** Where the ranges of a fit class start in the arrays below; they end where those of the next class start. */
  final int[] start = new int[CLASSES + 1];
  /** Open lower end of each range, mm. */
  final double[] over;
  /** Closed upper end of each range, mm. */
  final double[] upTo;
  /** ES, EI, es, ei of each range, thou. */
  final double[] deviations;

  private final int[] rows;

  /** Ranges of the standard tolerances. */
  final int toleranceRanges;
  /** Upper end of each of them, mm. */
  final double[] toleranceUpTo;
  /** Standard tolerance, index (grade - 4) · ranges + range, thou. */
  final double[] tolerance;

  private InchTables(TableSet tables) {
    tolerances = tables.table(FOLDER + "standard-tolerances");
    fits =
        List.of(
            tables.table(FOLDER + "running-and-sliding"),
            tables.table(FOLDER + "locational-clearance"),
            tables.table(FOLDER + "locational-transition"),
            tables.table(FOLDER + "locational-interference"),
            tables.table(FOLDER + "force-and-shrink"));
    int count = fits.stream().mapToInt(Table::size).sum();
    over = new double[count];
    upTo = new double[count];
    deviations = new double[4 * count];
    rows = new int[count];
    toleranceRanges = tolerances.size() / GRADES;
    toleranceUpTo = new double[toleranceRanges];
    tolerance = new double[tolerances.size()];
    int at = 0;
    for (InchFitClass fit : InchFitClass.values()) {
      start[fit.code()] = at;
      Table table = table(fit);
      for (int row = 0; row < table.size(); row++) {
        if (table.text(row, "class").equals(fit.name())) {
          over[at] = table.number(row, "over_in") * INCH;
          upTo[at] = table.number(row, "up_to_in") * INCH;
          deviations[4 * at] = table.number(row, "hole_upper");
          deviations[4 * at + 1] = table.number(row, "hole_lower");
          deviations[4 * at + 2] = table.number(row, "shaft_upper");
          deviations[4 * at + 3] = table.number(row, "shaft_lower");
          rows[at] = row;
          at++;
        }
      }
    }
    start[CLASSES] = at;
    for (int grade = LEAST_GRADE; grade <= GREATEST_GRADE; grade++) {
      int range = 0;
      for (int row = 0; row < tolerances.size(); row++) {
        if (tolerances.text(row, "grade").equals(Integer.toString(grade))) {
          toleranceUpTo[range] = tolerances.number(row, "up_to_in") * INCH;
          tolerance[(grade - LEAST_GRADE) * toleranceRanges + range] = tolerances.number(row, "value");
          range++;
        }
      }
    }
  }

  static InchTables get() {
    return TABLES.get();
  }

  /** The table with the rows of a class. */
  Table table(InchFitClass fit) {
    return fits.get(fit.family().index);
  }

  /** Row of a range in the table of its class. */
  int row(int range) {
    return rows[range];
  }
}

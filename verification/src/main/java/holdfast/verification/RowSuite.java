// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import holdfast.tables.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/**
 * A suite that makes its comparisons row by row.
 *
 * @param id short stable name
 * @param title what is compared with what
 * @param calculations the public calculations that it checks
 * @param table the rows
 * @param check makes the comparisons of one row
 */
public record RowSuite(String id, String title, List<String> calculations, Supplier<Table> table, Check check) implements Suite {
  /** Makes the comparisons of one row. */
  @FunctionalInterface
  public interface Check {
    /**
     * Adds the comparisons of a row to a list.
     *
     * @param table the rows
     * @param row index of the row
     * @param result the list
     */
    void row(Table table, int row, List<Comparison> result);
  }

  /**
   * A suite whose id is that of its case table.
   *
   * @param id of suite and table
   * @param title what is compared with what
   * @param check makes the comparisons of one row
   * @param calculations the public calculations that it checks
   * @return the suite
   */
  public static RowSuite of(String id, String title, Check check, String... calculations) {
    return new RowSuite(id, title, List.of(calculations), () -> Cases.table(id), check);
  }

  @Override
  public List<Comparison> run() {
    Table rows = table.get();
    List<Comparison> result = new ArrayList<>();
    for (int row = 0; row < rows.size(); row++) {
      check.row(rows, row, result);
    }
    return result;
  }
}

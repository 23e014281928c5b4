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

// SPDX-License-Identifier: Apache-2.0
package holdfast.lubrication;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.PlainText;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A factor of the empirical interval: bearing type, or one of the recalled trade factors Ft (housing temperature), Fc
 * (contamination), Fm (moisture), Fv (vibration) and Fp (position of the axis).
 *
 * @param factor name of the factor, for example {@code "Fc"}
 * @param condition the condition in words
 * @param value the factor
 * @param source document, locator and provenance
 */
public record TradeFactor(String factor, String condition, double value, SourceRef source) implements Serializable {
  public TradeFactor {
    Objects.requireNonNull(factor, "factor");
    PlainText.name(factor, "name of the factor");
    Objects.requireNonNull(condition, "condition");
    PlainText.name(condition, "condition of the factor");
    Objects.requireNonNull(source, "source");
    Check.finite(value, "value of the factor", "");
  }

  /**
   * All factors.
   *
   * @return the factors in the order of the table
   */
  public static List<TradeFactor> all() {
    Table table = table();
    List<TradeFactor> all = new ArrayList<>();
    for (int row = 0; row < table.size(); row++) {
      all.add(row(table, row));
    }
    return List.copyOf(all);
  }

  /**
   * A factor by its condition.
   *
   * @param factor {@code "bearing type"}, {@code "Ft"}, {@code "Fc"}, {@code "Fm"}, {@code "Fv"} or {@code "Fp"}
   * @param condition condition as tabulated, or the beginning of just one
   * @return the factor
   * @throws InputException if no condition or more than one begins so; the message lists them
   */
  public static TradeFactor of(String factor, String condition) {
    List<TradeFactor> named = all().stream().filter(f -> f.factor().equals(factor)).toList();
    List<TradeFactor> found = named.stream().filter(f -> f.condition().startsWith(condition)).toList();
    if (found.size() == 1) {
      return found.get(0);
    }
    throw new InputException("condition of factor " + factor, "'" + condition + "'",
        "the beginning of just one of: " + String.join("; ", named.stream().map(TradeFactor::condition).toList()),
        "these are tabulated");
  }

  /**
   * A factor by a number, for the factors with ranges.
   *
   * @param factor {@code "Ft"} with the housing temperature in °C, or {@code "Fv"} with the peak velocity in mm/s
   * @param value the number; the limit of a range belongs to the lower one
   * @return the factor
   * @throws InputException if the factor has no ranges or the number is not finite
   */
  public static TradeFactor of(String factor, double value) {
    Table table = table();
    for (int row = 0; row < table.size(); row++) {
      boolean ranged = table.has(row, "over") || table.has(row, "up_to");
      if (table.text(row, "factor").equals(factor)
          && ranged
          && (!table.has(row, "over") || value > table.number(row, "over"))
          && (!table.has(row, "up_to") || value <= table.number(row, "up_to"))) {
        return row(table, row);
      }
    }
    throw new InputException("factor " + factor, Double.toString(value), "Ft or Fv with a finite number",
        "only these factors have ranges");
  }

  private static TradeFactor row(Table table, int row) {
    return new TradeFactor(
        table.text(row, "factor"),
        table.text(row, "condition"),
        table.number(row, "value"),
        new SourceRef(table.confirmedBy(row).get(0), "factor " + table.text(row, "factor"), table.provenance(row)));
  }

  private static Table table() {
    return TableSet.bundled().table("installation/relubrication-interval-guide/2026/relubrication-factors");
  }

  /** For example {@code "Fc = 0.4 (light, abrasive dust)"}. */
  @Override
  public String toString() {
    return factor + " = " + value + " (" + condition + ")";
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import holdfast.tables.Table;
import java.math.BigDecimal;
import java.util.List;

/**
 * Values of many quantities in one case table with the columns {@code quantity}, {@code arguments} and {@code value}, as
 * the programs beside the checks write them.
 */
public final class ValueSuite {
  private static final String LAST_DIGIT = "a unit of the last digit kept: rounding, and the accuracy of the reference";

  private ValueSuite() {}

  /** Computes a quantity. */
  @FunctionalInterface
  public interface Computation {
    /**
     * Our value.
     *
     * @param quantity what is asked for
     * @param arguments its inputs
     * @return the value
     */
    double value(String quantity, NamedInputs arguments);
  }

  /**
   * A suite whose id and title are those of its case table.
   *
   * @param id of suite and table
   * @param evidence kind of all rows
   * @param computation computes our values
   * @param calculations the public calculations that it checks
   * @return the suite
   */
  public static Suite of(String id, Evidence evidence, Computation computation, String... calculations) {
    return new RowSuite(
        id,
        Cases.table(id).descriptor().title(),
        List.of(calculations),
        () -> Cases.table(id),
        (cases, row, result) -> result.add(compare(cases, row, evidence, computation)));
  }

  private static Comparison compare(Table cases, int row, Evidence evidence, Computation computation) {
    BigDecimal value = new BigDecimal(cases.text(row, "value"));
    double computed = computation.value(cases.text(row, "quantity"), NamedInputs.parse(cases.text(row, "arguments")));
    return Cases.comparison(cases, row, evidence)
        .numbers(value.doubleValue(), computed, value.ulp().doubleValue(), "", LAST_DIGIT);
  }
}

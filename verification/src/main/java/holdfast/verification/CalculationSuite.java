// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * Suites whose rows name a calculation and its inputs. The case table has the columns calculation, inputs, value, tolerance
 * (relative), unit, reason and kind (an {@link Evidence}) besides those of every case table.
 */
public final class CalculationSuite {
  private CalculationSuite() {}

  /**
   * A suite whose id is that of its case table.
   *
   * @param id of suite and table
   * @param title what is compared with what
   * @param byName the calculations by the names in the table
   * @param calculations the public calculations that it checks
   * @return the suite
   */
  public static Suite of(
      String id, String title, Map<String, ToDoubleFunction<NamedInputs>> byName, List<String> calculations) {
    return new RowSuite(id, title, calculations, () -> Cases.table(id), (t, row, result) -> {
      ToDoubleFunction<NamedInputs> calculation = byName.get(t.text(row, "calculation"));
      if (calculation == null) {
        throw new IllegalArgumentException("no calculation is called '" + t.text(row, "calculation") + "'");
      }
      double value = t.number(row, "value");
      result.add(
          Cases.comparison(t, row, Evidence.valueOf(t.text(row, "kind")))
              .numbers(value, calculation.applyAsDouble(NamedInputs.parse(t.text(row, "inputs"))),
                  t.number(row, "tolerance") * Math.abs(value), t.text(row, "unit"), t.text(row, "reason")));
    });
  }
}

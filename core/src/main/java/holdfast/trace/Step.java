// SPDX-License-Identifier: Apache-2.0
package holdfast.trace;

import holdfast.quantity.InputException;
import holdfast.quantity.Numbers;
import holdfast.tables.SourceRef;
import holdfast.tables.TableSet;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * One step of a derivation.
 *
 * @param symbol symbol of the result, for example {@code "p"}
 * @param meaning what the symbol stands for
 * @param expression the formula in symbols, or where the value was read
 * @param inputs the numbers put in, for example {@code "d = 16 mm"}
 * @param value the result in the unit named
 * @param unit unit of the result, empty for a pure number
 * @param source document, locator and provenance of the formula or value
 */
public record Step(
    String symbol, String meaning, String expression, List<String> inputs, double value, String unit, SourceRef source)
    implements Serializable {

  // Keeps an unmodifiable copy of the list; a step without a finite value is a fault of the calculation.
  public Step {
    Objects.requireNonNull(symbol, "symbol");
    Objects.requireNonNull(meaning, "meaning");
    Objects.requireNonNull(expression, "expression");
    Objects.requireNonNull(inputs, "inputs");
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(source, "source");
    inputs = List.copyOf(inputs);
    if (!Double.isFinite(value)) {
      throw new InputException("value of step '" + symbol + "'", Double.toString(value), "a finite number", "it was calculated");
    }
  }

  /**
   * The step as one or two lines.
   *
   * @return the text, with source
   */
  public String text() {
    StringBuilder line = new StringBuilder();
    line.append(symbol).append("  ").append(meaning).append('\n');
    line.append("    = ").append(expression);
    if (!inputs.isEmpty()) {
      line.append("   with ").append(String.join(", ", inputs));
    }
    line.append('\n').append("    = ").append(Numbers.significant(value, 6));
    line.append(unit.isEmpty() ? "" : " " + unit).append("   (").append(TableSet.bundled().sources().cite(source)).append(')');
    return line.toString();
  }
}

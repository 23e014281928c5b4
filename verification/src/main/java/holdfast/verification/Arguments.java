// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Inputs of a case, written in one column: {@code "U = 0.02; d = 30"}.
 *
 * @param values by name
 */
public record Arguments(Map<String, String> values) {
  // Keeps an unmodifiable copy.
  public Arguments {
    values = Map.copyOf(values);
  }

  /**
   * Reads the column.
   *
   * @param text names and values
   * @return the inputs
   */
  public static Arguments of(String text) {
    Map<String, String> values = new LinkedHashMap<>();
    for (String pair : text.split("; ", -1)) {
      int equals = pair.indexOf(" = ");
      if (equals < 0 || values.put(pair.substring(0, equals), pair.substring(equals + 3)) != null) {
        throw new IllegalArgumentException("no input with a name of its own: " + pair);
      }
    }
    return new Arguments(values);
  }

  /**
   * A number.
   *
   * @param name of the input
   * @return its value
   * @throws IllegalArgumentException if the case has no such number
   */
  public double get(String name) {
    return Double.parseDouble(text(name));
  }

  /**
   * A word.
   *
   * @param name of the input
   * @return its value
   * @throws IllegalArgumentException if the case has no such input
   */
  public String text(String name) {
    String value = values.get(name);
    if (value == null) {
      throw new IllegalArgumentException("the case has no input " + name);
    }
    return value;
  }

  /**
   * A yes or no.
   *
   * @param name of the input
   * @return whether it is yes
   * @throws IllegalArgumentException if the case has no such input
   */
  public boolean yes(String name) {
    return text(name).equals("yes");
  }

  /**
   * Whether the case has an input.
   *
   * @param name of the input
   * @return true if it has
   */
  public boolean has(String name) {
    return values.containsKey(name);
  }
}

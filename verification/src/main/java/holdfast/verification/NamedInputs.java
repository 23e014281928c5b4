// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Inputs of a case in one cell, written as {@code "C=29100; P=2500; steps=1|2|3"} or {@code "U = 0.02; d = 30"}: numbers,
 * lists of numbers and words.
 */
public final class NamedInputs {
  private final Map<String, String> values;

  private NamedInputs(Map<String, String> values) {
    this.values = values;
  }

  /**
   * Reads a cell.
   *
   * @param text the cell
   * @return the inputs
   * @throws IllegalArgumentException if an input has no name, or the name of another
   */
  public static NamedInputs parse(String text) {
    Map<String, String> values = new LinkedHashMap<>();
    for (String part : text.split(";", -1)) {
      String[] pair = part.split("=", 2);
      if (pair.length < 2 || values.put(pair[0].strip(), pair[1].strip()) != null) {
        throw new IllegalArgumentException("no input with a name of its own: '" + part + "'");
      }
    }
    return new NamedInputs(values);
  }

  /**
   * A number.
   *
   * @param name its name
   * @return the number, in the unit of the case
   */
  public double get(String name) {
    return Double.parseDouble(word(name));
  }

  /**
   * A list of numbers.
   *
   * @param name its name
   * @return the numbers, in the unit of the case
   */
  public double[] list(String name) {
    return Arrays.stream(word(name).split("\\|", -1)).mapToDouble(Double::parseDouble).toArray();
  }

  /**
   * An angle.
   *
   * @param name its name; the case holds degrees
   * @return the angle in rad
   */
  public double angle(String name) {
    return Math.toRadians(get(name));
  }

  /**
   * A word.
   *
   * @param name its name
   * @return the word
   */
  public String word(String name) {
    String value = values.get(name);
    if (value == null) {
      throw new IllegalArgumentException("input '" + name + "' is missing in " + values);
    }
    return value;
  }

  /**
   * A yes or no.
   *
   * @param name its name
   * @return whether it is yes
   */
  public boolean yes(String name) {
    return word(name).equals("yes");
  }

  /**
   * Whether the case has an input.
   *
   * @param name its name
   * @return true if it has
   */
  public boolean has(String name) {
    return values.containsKey(name);
  }
}

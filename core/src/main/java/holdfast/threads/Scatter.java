// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Numbers;
import holdfast.quantity.Torque;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import java.io.Serializable;
import java.util.Objects;

/**
 * Accuracy of the tightening tool: the applied torque is the set torque ± a part of it.
 *
 * @param name what tool it is
 * @param below share of deviation for tools up to the step torque, 0 or more, below 1
 * @param above share of deviation for tools above the step torque, 0 or more, below 1
 * @param step torque at which the deviation changes
 * @param source where the deviation stands
 */
public record Scatter(String name, double below, double above, Torque step, SourceRef source) implements Serializable {

  // Refuses deviations of the whole torque and more.
  public Scatter {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(step, "step");
    Objects.requireNonNull(source, "source");
    Check.within(below, 0, 0.9, "tool deviation", "", "a part of the set torque");
    Check.within(above, 0, 0.9, "tool deviation", "", "a part of the set torque");
  }

  /**
   * A setting torque wrench with scale, type II class A: 6 % up to 10 N·m, 4 % above.
   *
   * @return the tool
   */
  public static Scatter torqueWrench() {
    return ofTool("II", "A");
  }

  /**
   * A hand torque tool by type and class.
   *
   * @param type {@code "I"} indicating, {@code "II"} setting
   * @param toolClass {@code "A"} and on
   * @return the tool
   * @throws InputException if there is no such type and class
   */
  public static Scatter ofTool(String type, String toolClass) {
    Table table = TableSet.bundled().table("threads/iso-6789/2003/tool-accuracy");
    int row = table.find("type", type, "class", toolClass);
    if (row < 0) {
      throw new InputException(
          "torque tool", "type " + type + " class " + toolClass, "type I class A to E or type II class A to G", "ISO 6789:2003");
    }
    return new Scatter(
        table.text(row, "tool") + " (type " + type + " class " + toolClass + ")",
        table.number(row, "up_to_10") / 100,
        table.number(row, "above_10") / 100,
        new Torque(10000),
        new SourceRef("ISO 6789:2003", "Tables for type I and type II tools", table.provenance(row)));
  }

  /**
   * Any tool.
   *
   * @param deviation share of the set torque, 0 or more, up to 0.9
   * @return the tool
   * @throws InputException if the deviation is outside its range
   */
  public static Scatter of(double deviation) {
    return new Scatter(
        "tool ± " + Numbers.significant(100 * deviation, 3) + " %",
        deviation,
        deviation,
        new Torque(0),
        SourceRef.commonPractice("tool deviation stated by the user"));
  }

  /**
   * The deviation at a torque.
   *
   * @param torque set torque, taken as the greatest torque of the tool
   * @return part of the set torque
   */
  public double deviation(Torque torque) {
    Objects.requireNonNull(torque, "torque");
    return torque.compareTo(step) <= 0 ? below : above;
  }

  /** The tool. */
  @Override
  public String toString() {
    return name;
  }
}

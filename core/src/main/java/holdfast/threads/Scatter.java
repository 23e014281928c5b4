// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Numbers;
import holdfast.quantity.PlainText;
import holdfast.quantity.Torque;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * Accuracy of the tightening tool: the applied torque is the set torque ± a part of it. It is that of the tool, whatever
 * it is set to.
 *
 * @param name what tool it is
 * @param deviation greatest deviation as a share of the set torque, 0 to 0.9
 * @param greatest greatest torque of the tool; null if it has not been stated
 * @param source where the deviation stands
 */
public record Scatter(String name, double deviation, Torque greatest, SourceRef source) implements Serializable {
  /** Tools up to this torque are allowed more deviation, in N·mm. */
  private static final double SMALL = 10_000;
  /** Part of the tool's range below which the stated deviation is not promised. */
  private static final double RANGE = 0.2;

  // Refuses deviations of the whole torque and more, and a tool without a torque.
  public Scatter {
    PlainText.name(name, "name of the tool");
    Objects.requireNonNull(source, "source");
    Check.within(deviation, 0, 0.9, "tool deviation", "", "a part of the set torque");
    if (greatest != null) {
      Check.positive(greatest.newtonMillimetre(), "greatest torque of the tool", "N·mm", "a tool turns");
    }
  }

  /**
   * A setting torque wrench with scale, type II class A: 6 % if its greatest torque is up to 10 N·m, else 4 %.
   *
   * @param greatest greatest torque of the wrench, over 0
   * @return the tool
   * @throws InputException if the torque is not over 0
   */
  public static Scatter torqueWrench(Torque greatest) {
    Objects.requireNonNull(greatest, "greatest");
    return ofTool("II", "A", greatest);
  }

  /**
   * A hand torque tool by type, class and size.
   *
   * @param type {@code "I"} indicating, {@code "II"} setting
   * @param toolClass {@code "A"} and on
   * @param greatest greatest torque of the tool, over 0
   * @return the tool
   * @throws InputException if there is no such type and class, or the torque is not over 0
   */
  public static Scatter ofTool(String type, String toolClass, Torque greatest) {
    Objects.requireNonNull(type, "type");
    Objects.requireNonNull(toolClass, "toolClass");
    Objects.requireNonNull(greatest, "greatest");
    Table table = TableSet.bundled().table("threads/iso-6789/2003/tool-accuracy");
    int row = table.find("type", type, "class", toolClass);
    if (row < 0) {
      throw new InputException(
          "torque tool", "type " + type + " class " + toolClass, "type I class A to E or type II class A to G", "ISO 6789:2003");
    }
    return new Scatter(
        table.text(row, "tool") + " (type " + type + " class " + toolClass + ", to " + greatest + ")",
        table.number(row, greatest.newtonMillimetre() <= SMALL ? "up_to_10" : "above_10") / 100,
        greatest,
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
        null,
        SourceRef.commonPractice("tool deviation stated by the user"));
  }

  /** What a setting outside the range of the tool draws. */
  List<Warning> warnings(Torque setting) {
    if (greatest == null || (setting.compareTo(greatest) <= 0 && setting.compareTo(greatest.times(RANGE)) >= 0)) {
      return List.of();
    }
    return List.of(
        new Warning(
            "setting-outside-tool",
            "a setting of " + setting + " is outside the range of the tool, " + greatest.times(RANGE) + " to " + greatest
                + ": its deviation is not promised there",
            SourceRef.memory("ISO 6789:2003", "deviation holds from 20 % of the greatest torque")));
  }

  /** The tool. */
  @Override
  public String toString() {
    return name;
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.lubrication;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * A rule of the guide to greasing track rollers: kind of grease, mixing, first fill, calendar intervals, limits of
 * temperature, ports, speed.
 *
 * @param topic what it is about, for example {@code "grease type"}
 * @param rule the rule in words
 * @param low low end of a range; null if the rule states none
 * @param high high end of a range; null if the rule states none
 * @param unit unit of both, empty if there is no number
 * @param appliesTo what it holds for
 * @param condition condition; empty if none is stated
 * @param source the first document that states it
 * @param confirmedBy all documents that state it
 * @param note remark; empty if there is none
 */
public record LubricationGuide(
    String topic,
    String rule,
    Double low,
    Double high,
    String unit,
    String appliesTo,
    String condition,
    SourceRef source,
    List<String> confirmedBy,
    String note)
    implements Serializable {
  private static final String TEMPERATURE = "temperature limits";

  // Keeps an unmodifiable copy.
  public LubricationGuide {
    Objects.requireNonNull(topic, "topic");
    Objects.requireNonNull(rule, "rule");
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(appliesTo, "appliesTo");
    Objects.requireNonNull(condition, "condition");
    Objects.requireNonNull(source, "source");
    Objects.requireNonNull(confirmedBy, "confirmedBy");
    Objects.requireNonNull(note, "note");
    if (low != null) {
      Check.finite(low, "low end of a range", unit);
    }
    if (high != null) {
      Check.finite(high, "high end of a range", unit);
    }
    confirmedBy = List.copyOf(confirmedBy);
  }

  /**
   * The topics of the guide.
   *
   * @return the topics in the order of the table
   */
  public static Set<String> topics() {
    Set<String> topics = new LinkedHashSet<>();
    all().forEach(rule -> topics.add(rule.topic()));
    return topics;
  }

  /**
   * The rules on a topic.
   *
   * @param topic one of {@link #topics()}
   * @return the rules in the order of the table
   * @throws InputException if there is no such topic
   */
  public static List<LubricationGuide> about(String topic) {
    List<LubricationGuide> found = all().stream().filter(rule -> rule.topic().equals(topic)).toList();
    if (found.isEmpty()) {
      throw new InputException("topic", "'" + topic + "'", "one of " + topics(), "these are the topics of the guide");
    }
    return found;
  }

  /** The guide in months, by kind of roller. */
  static LubricationGuide calendar(boolean fullComplement) {
    return numbered(fullComplement ? "8" : "7");
  }

  /** The share of the inside that a roller is filled to before it runs first. */
  static LubricationGuide firstFill() {
    return numbered("1");
  }

  private static LubricationGuide numbered(String number) {
    Table table = table();
    return row(table, table.find("number", number));
  }

  private static Table table() {
    return TableSet.bundled().table("installation/collected/2026/lubrication-guide");
  }

  /** The catalogue with the lowest upper limit of temperature. */
  static LubricationGuide narrowestHottest() {
    return about(TEMPERATURE).stream().min(Comparator.comparingDouble(LubricationGuide::high)).orElseThrow();
  }

  /** The catalogue with the highest upper limit of temperature. */
  static LubricationGuide widestHottest() {
    return about(TEMPERATURE).stream().max(Comparator.comparingDouble(LubricationGuide::high)).orElseThrow();
  }

  /**
   * All rules.
   *
   * @return the rules in the order of the table
   */
  public static List<LubricationGuide> all() {
    Table table = table();
    List<LubricationGuide> all = new ArrayList<>();
    for (int row = 0; row < table.size(); row++) {
      all.add(row(table, row));
    }
    return List.copyOf(all);
  }

  private static LubricationGuide row(Table table, int row) {
    List<String> documents = table.confirmedBy(row);
    return new LubricationGuide(
        table.text(row, "topic"),
        table.text(row, "rule"),
        table.has(row, "low") ? (Double) table.number(row, "low") : null,
        table.has(row, "high") ? (Double) table.number(row, "high") : null,
        table.text(row, "unit"),
        table.text(row, "applies_to"),
        table.text(row, "condition"),
        new SourceRef(documents.get(0), table.text(row, "topic"), table.provenance(row)),
        documents,
        table.text(row, "note"));
  }

  /** The rule with its source in one line. */
  @Override
  public String toString() {
    return rule + (condition.isEmpty() ? "" : " (" + condition + ")") + " [" + source + "]";
  }
}

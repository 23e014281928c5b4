// SPDX-License-Identifier: Apache-2.0
package holdfast.failures;

import holdfast.quantity.InputException;
import holdfast.tables.FromTables;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;

/** The table of failures: look-up by words, by class of damage and by computed margin. */
public final class FailureReading {
  private static final FromTables<List<FailureMode>> MODES =
      FromTables.of(tables -> read(tables.table("installation/collected/2026/failure-reading")));

  private FailureReading() {}

  /**
   * All failure modes.
   *
   * @return the modes in the order of the table
   */
  public static List<FailureMode> all() {
    return MODES.get();
  }

  /**
   * Finds failure modes by words of the symptom. Case, punctuation, plurals and the endings -ing and -ed do not count;
   * words that say nothing (such as "the" and "on") are left out.
   *
   * @param words for example {@code "red rust on the stud"}
   * @return the modes in which a word occurs: most words found in the symptom first, then most words found at all, then
   *     in the order of the table; empty if none holds any of the words
   * @throws InputException if the text holds no word
   */
  public static List<Finding> search(String words) {
    Objects.requireNonNull(words, "words");
    Set<String> seen = new HashSet<>();
    List<String> query = new ArrayList<>();
    for (String token : Words.tokens(words)) {
      if (seen.add(Words.stem(token))) {
        query.add(token);
      }
    }
    if (query.isEmpty()) {
      throw new InputException("words of the symptom", "'" + words + "'", "at least one word that says something",
          "for example: spalls at one edge");
    }
    List<Finding> found = new ArrayList<>();
    for (FailureMode mode : MODES.get()) {
      Set<String> symptom = Words.of(mode.symptom());
      Set<String> rest = Words.of(mode.classes() + " " + mode.causes() + " " + mode.checks() + " " + mode.corrections());
      List<String> inSymptom = query.stream().filter(word -> symptom.contains(Words.stem(word))).toList();
      List<String> elsewhere =
          query.stream().filter(word -> !inSymptom.contains(word) && rest.contains(Words.stem(word))).toList();
      if (!inSymptom.isEmpty() || !elsewhere.isEmpty()) {
        found.add(new Finding(mode, inSymptom, elsewhere));
      }
    }
    found.sort(
        Comparator.comparingInt((Finding f) -> f.inSymptom().size()).thenComparingInt(Finding::matches).reversed());
    return List.copyOf(found);
  }

  /**
   * Failure modes of a class of damage.
   *
   * @param damage the class; a class contains those below it
   * @return the modes in the order of the table; empty if none has the class
   */
  public static List<FailureMode> ofClass(DamageClass damage) {
    Objects.requireNonNull(damage, "damage");
    return MODES.get().stream().filter(mode -> mode.classes().stream().anyMatch(damage::contains)).toList();
  }

  /**
   * Failure modes for which a small margin speaks: edge load if tilt is high, fretting if the holding torque is low.
   *
   * @param margin the margin
   * @return the modes in the order of the table
   */
  public static List<FailureMode> linkedTo(Margin margin) {
    Objects.requireNonNull(margin, "margin");
    return MODES.get().stream().filter(mode -> mode.margins().contains(margin)).toList();
  }

  private static List<FailureMode> read(Table table) {
    List<FailureMode> modes = new ArrayList<>();
    for (int row = 0; row < table.size(); row++) {
      Set<Margin> margins = new TreeSet<>();
      list(table.text(row, "margins")).forEach(label -> margins.add(Margin.read(label)));
      List<String> documents = table.confirmedBy(row);
      modes.add(
          new FailureMode(
              table.text(row, "symptom"),
              list(table.text(row, "classes")).stream().map(DamageClass::of).toList(),
              table.text(row, "group"),
              list(table.text(row, "causes")),
              list(table.text(row, "checks")),
              list(table.text(row, "corrections")),
              margins,
              new SourceRef(documents.get(0), "failures and their causes", table.provenance(row)),
              documents));
    }
    return List.copyOf(modes);
  }

  private static List<String> list(String cell) {
    List<String> entries = new ArrayList<>();
    for (String entry : cell.split(";", -1)) {
      if (!entry.isBlank()) {
        entries.add(entry.strip());
      }
    }
    return entries;
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.tables;

import java.io.Serializable;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What changes from one edition of a table set to another: documents first, then table by table. Rows are matched by their
 * key; their order in the file is not compared. Immutable.
 *
 * @param from the earlier edition
 * @param to the later edition
 * @param changes every difference
 */
public record EditionDiff(Edition from, Edition to, List<EditionChange> changes) implements Serializable {
  public EditionDiff {
    changes = List.copyOf(changes);
  }

  /**
   * Compares two table sets. All tables of both are read and validated.
   *
   * @param from the earlier set
   * @param to the later set
   * @return the differences
   * @throws TableFormatException if a file of either set cannot be used
   */
  public static EditionDiff between(TableSet from, TableSet to) {
    return new EditionDiff(from.edition(), to.edition(), new EditionComparison(from, to).changes());
  }

  /**
   * The differences of one kind.
   *
   * @param kind what differs
   * @return those differences, in order
   */
  public List<EditionChange> of(EditionChange.Kind kind) {
    return changes.stream().filter(change -> change.kind() == kind).toList();
  }

  /**
   * The differences to read: both editions, the count of each kind, and every difference below its table or document.
   *
   * @return lines of text, each ended by a line feed
   */
  public String text() {
    StringBuilder text = new StringBuilder();
    text.append("from ").append(from).append("\nto   ").append(to).append('\n');
    if (changes.isEmpty()) {
      text.append(
          from.digest().equals(to.digest())
              ? "the same files\n"
              : "no difference in values, sources and descriptions; the files differ in order, comments or spelling\n");
      return text.toString();
    }
    Map<EditionChange.Kind, Integer> counts = new EnumMap<>(EditionChange.Kind.class);
    changes.forEach(change -> counts.merge(change.kind(), 1, Integer::sum));
    counts.forEach((kind, count) -> text.append(kind.label()).append(": ").append(count).append('\n'));
    String id = "";
    for (EditionChange change : changes) {
      if (!change.id().equals(id)) {
        id = change.id();
        text.append('\n').append(id).append('\n');
      }
      text.append("  ").append(change.text()).append('\n');
    }
    return text.toString();
  }
}

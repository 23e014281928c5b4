// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import holdfast.tables.TableSet;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The files of the table set against the digests that were committed with the code, in the format of sha256sum. No check
 * against print notices when a recalled value changes; this one notices any change, and by whom it was wanted stands in
 * the CHANGELOG.
 *
 * @param differing paths of files that differ, are missing or are not among those committed
 * @param files number of files committed
 * @param sameFrame whether version and subjects of the set are those committed; false for another edition
 */
public record CommittedTables(List<String> differing, int files, boolean sameFrame) {
  private static final String FRAME = "table-set.properties";

  // Keeps an unmodifiable copy.
  public CommittedTables {
    differing = List.copyOf(differing);
  }

  /**
   * Compares a table set with the digests of this audit.
   *
   * @param set the set
   * @return what differs
   */
  public static CommittedTables of(TableSet set) {
    return of(set.digests(), committed());
  }

  static CommittedTables of(SortedMap<String, String> found, SortedMap<String, String> wanted) {
    TreeSet<String> paths = new TreeSet<>(found.keySet());
    paths.addAll(wanted.keySet());
    List<String> differing = paths.stream().filter(path -> !Objects.equals(found.get(path), wanted.get(path))).toList();
    return new CommittedTables(differing, wanted.size(), !differing.contains(FRAME));
  }

  static SortedMap<String, String> committed() {
    try (InputStream in = CommittedTables.class.getResourceAsStream("/holdfast/verification/tables.sha256")) {
      SortedMap<String, String> digests = new TreeMap<>();
      for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList()) {
        int gap = line.indexOf("  ");
        digests.put(line.substring(gap + 2), line.substring(0, gap));
      }
      return digests;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Whether the tables may be audited as those of this version: another edition may differ, the committed one may not.
   *
   * @return false if the frame is the committed one and another file is not
   */
  public boolean passes() {
    return !sameFrame || differing.isEmpty();
  }

  /**
   * The finding in one line.
   *
   * @return for example {@code "Files of the tables as committed: 163 of 163"}
   */
  public String text() {
    if (differing.isEmpty()) {
      return "Files of the tables as committed: " + files + " of " + files;
    }
    return (sameFrame ? "FAILED: files of the tables that are not those committed: " : "Another edition than the one committed: ")
        + String.join(", ", differing);
  }
}

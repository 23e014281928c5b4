// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.tables.TableSet;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class CommittedTablesTest {
  @Test
  void everyFileOfTheTablesIsTheOneThatWasCommitted() {
    CommittedTables tables = CommittedTables.of(TableSet.bundled());
    assertEquals(List.of(), tables.differing(), "a table changed: if that is wanted, run .ci/table-digests --write");
    assertTrue(tables.passes() && tables.text().startsWith("Files of the tables as committed: "), tables.text());
  }

  @Test
  void theChangelogNamesTheVersionOfTheTables() throws IOException {
    String version = TableSet.bundled().version();
    assertTrue(Files.readString(Path.of("../CHANGELOG.md")).contains("Table set " + version), version);
  }

  @Test
  void oneChangedRecalledValueFailsAndAnotherEditionIsNamed() {
    SortedMap<String, String> changed = new TreeMap<>(CommittedTables.committed());
    String strengths = "seats/collected/2026/material-properties.csv";
    assertTrue(changed.containsKey(strengths));
    changed.put(strengths, "0".repeat(64));
    CommittedTables found = CommittedTables.of(changed, CommittedTables.committed());
    assertEquals(List.of(strengths), found.differing());
    assertFalse(found.passes());
    assertTrue(found.text().startsWith("FAILED: ") && found.text().endsWith(strengths), found.text());
    changed.put("table-set.properties", "0".repeat(64));
    CommittedTables other = CommittedTables.of(changed, CommittedTables.committed());
    assertTrue(other.passes() && other.text().startsWith("Another edition than the one committed: "), other.text());
    changed.remove("fits/contents.txt");
    changed.put("fits/more.csv", "0".repeat(64));
    assertEquals(List.of("fits/contents.txt", "fits/more.csv", strengths, "table-set.properties"),
        CommittedTables.of(changed, CommittedTables.committed()).differing());
  }
}

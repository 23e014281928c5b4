// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.tables.Provenance;
import holdfast.tables.SourceRef;
import holdfast.tables.SourceRegister;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import holdfast.verification.TableCoverage.Confirmation;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class TableCoverageTest {
  private static final Map<String, String> FILES =
      Map.of(
          "table-set.properties", "version = 1\nsubjects = s\n",
          "s/sources.csv",
              """
              id,title,kind,note
              standard,A standard,standard,
              a,A reprint,handbook,
              b,B reprint,handbook,
              derivation,Derived,derivation,
              """,
          "s/contents.txt", "t\n",
          "s/t.properties",
              """
              title = T
              document = standard
              locator = Table 1
              provenance = published
              key = size
              address = size {size}
              column.size = text
              column.provenance = provenance optional
              column.confirmed_by = sources optional
              column.mirrored_by = sources optional
              """,
          "s/t.csv",
              """
              size,provenance,confirmed_by,mirrored_by
              1,,a; b,
              2,,a,
              3,,,b
              4,derived,,
              5,,,
              6,memory,,
              7,memory,,a
              8,memory,,
              9,memory,derivation,
              10,memory,a,
              11,,a; a,
              """);

  private static TableCoverage coverage(Comparison... comparisons) {
    TableSet set =
        TableSet.load(
            path -> {
              if (!FILES.containsKey(path)) {
                throw new IOException(path);
              }
              return new ByteArrayInputStream(FILES.get(path).getBytes(StandardCharsets.UTF_8));
            },
            SourceRegister.of(List.of()));
    return TableCoverage.of(set, List.of(comparisons)).get(0);
  }

  private static Comparison reconstruction(String name, double computed) {
    return Comparison.of(name, SourceRef.derived("formula"), Evidence.RECONSTRUCTION).numbers(1, computed, 0.1, "", "");
  }

  @Test
  void rowsAreCountedByProvenanceAndConfirmation() {
    TableCoverage t = coverage();
    assertEquals(11, t.rows());
    assertEquals(Map.of(Provenance.PUBLISHED, 5, Provenance.DERIVED, 1, Provenance.MEMORY, 5), t.byProvenance());
    assertEquals(
        Map.of(Confirmation.TWO_OR_MORE, 1, Confirmation.ONE, 3, Confirmation.LISTING, 0, Confirmation.INDIRECT, 4, Confirmation.NONE, 3),
        t.byConfirmation());
    assertEquals(9, t.covered());
    assertEquals(0, t.reconstructed());
  }

  @Test
  void recalledRowsAreListedUnlessAPrintHoldsThem() {
    assertEquals(
        List.of(
            "standard, Table 1, size 6",
            "standard, Table 1, size 7 (only a mirror or a derivation confirms it)",
            "standard, Table 1, size 8",
            "standard, Table 1, size 9 (only a mirror or a derivation confirms it)"),
        coverage().memoryOnly());
  }

  @Test
  void agreeingReconstructionsAreFoundByTheAddressOfTheRow() {
    TableCoverage t =
        coverage(
            reconstruction("standard, Table 1, size 6", 1),
            reconstruction("standard, Table 1, size 8: by formula", 1),
            reconstruction("standard, Table 1, size 1", 2),
            reconstruction("standard, Table 1, size 10", 1));
    assertEquals(3, t.reconstructed());
    assertEquals(11, t.covered());
    assertEquals("standard, Table 1, size 6 (a formula reconstruction agrees)", t.memoryOnly().get(0));
  }

  @Test
  void everyCellOfEveryTableHasAProvenanceAndADocumentOfTheRegister() {
    TableSet tables = TableSet.bundled();
    List<TableCoverage> coverage = TableCoverage.of(tables, List.of());
    assertTrue(coverage.size() > 50, "tables of the bundled set");
    for (TableCoverage t : coverage) {
      assertEquals(t.rows(), t.byProvenance().values().stream().mapToInt(Integer::intValue).sum(), t.id());
      assertTrue(tables.sources().contains(tables.table(t.id()).descriptor().source().document()), t.id());
    }
  }

  /** Rows that are recalled and found nowhere. This number only falls. */
  @Test
  void recalledRows() {
    int recalled = TableCoverage.of(TableSet.bundled(), List.of()).stream().mapToInt(t -> t.memoryOnly().size()).sum();
    assertTrue(recalled <= 299, recalled + " rows are recalled and found nowhere");
  }

  /** A row that is no longer recalled names what it rests on. */
  @Test
  void everyRowFromAListingNamesTheListingAndEveryDerivedThreadToleranceItsRule() {
    for (Table table : TableSet.bundled().all()) {
      for (int row = 0; row < table.size(); row++) {
        if (table.provenance(row) == Provenance.LISTING) {
          assertTrue(!table.confirmedBy(row).isEmpty() || !table.mirroredBy(row).isEmpty(), table.address(row));
        }
        if (table.provenance(row) == Provenance.DERIVED && table.descriptor().id().startsWith("threads/iso-965-1")) {
          assertTrue(!table.text(row, "note").isEmpty(), table.address(row));
        }
      }
    }
  }

  @Test
  void cellsAreValuesAndNotKeysOrRemarks() {
    TableCoverage t = coverage();
    assertEquals(11, t.cells(), "a table of keys states its rows");
    assertEquals(5, t.cellsByProvenance().get(Provenance.MEMORY));
    assertEquals(4, t.cellsOfMemoryOnly());
    assertEquals(4, t.cellsByDocument().get("a (handbook)"));
    assertEquals(1, t.cellsByDocument().get("derivation (derivation)"));
  }
}

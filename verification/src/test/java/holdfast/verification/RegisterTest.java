package holdfast.verification;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.Length;
import holdfast.tables.Column;
import holdfast.tables.Document;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The case tables and the registers of documents. */
class RegisterTest {
  @Test
  void everyCaseTableLoadsAndCitesKnownDocuments() {
    for (Table cases : Cases.set().all()) {
      assertTrue(cases.size() > 0, cases.descriptor().id() + " has no rows");
      if (!cases.descriptor().columns().containsKey("source")) {
        continue; // Reasons that apply to cases found by rule; such a table cites its document once, in its descriptor.
      }
      for (int row = 0; row < cases.size(); row++) {
        String document = Cases.source(cases, row).document();
        assertTrue(Cases.set().sources().contains(document), cases.address(row) + ": unknown document " + document);
      }
      assertTrue(cases.descriptor().columns().containsKey("disclosed"), cases.descriptor().id() + " cannot disclose");
    }
  }

  @Test
  void everyRegisteredDocumentIsUsed() throws IOException {
    Set<String> used = new HashSet<>();
    TableSet.bundled().all().forEach(table -> addCited(table, used));
    Cases.set().all().forEach(table -> addCited(table, used));
    // Sources in annotations and in derivations are constants of the compiled classes.
    for (Class<?> type : List.of(TableSet.class, Length.class, Suites.class)) {
      used.addAll(ConstantPool.textsOfModuleWith(type));
    }
    // The cases may cite all documents of the tables, so their register holds both; ids twice are refused by the loader.
    List<String> unused = new ArrayList<>(Cases.set().sources().documents().stream().map(Document::id).toList());
    assertTrue(unused.size() > 200, "registers of tables and cases");
    unused.removeAll(used);
    assertEquals(List.of(), unused, "documents that no table, case or calculation cites");
  }

  /** The archive in the jar holds every byte of the files in the sources. */
  @Test
  void theJarHoldsTheTablesOfTheSources() {
    TableSet sources = TableSet.load(Path.of("../tables/src/main/resources/holdfast/tables/data"));
    assertEquals(sources.digest(), TableSet.bundled().digest());
  }

  private static void addCited(Table table, Set<String> used) {
    used.add(table.descriptor().source().document());
    for (Column column : table.descriptor().columns().values()) {
      if (column.type() == Column.Type.SOURCES) {
        for (int row = 0; row < table.size(); row++) {
          for (String id : table.text(row, column.name()).split(";", -1)) {
            used.add(id.strip());
          }
        }
      }
    }
  }
}

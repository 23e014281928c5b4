// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import holdfast.quantity.Length;
import holdfast.tables.Column;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

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

  /** One test a subject; each names all its unused documents at once. */
  @TestFactory
  Stream<DynamicTest> everyRegisteredDocumentIsUsed() throws IOException {
    Set<String> used = new HashSet<>();
    TableSet.bundled().all().forEach(table -> addCited(table, used));
    Cases.set().all().forEach(table -> addCited(table, used));
    // Sources in annotations and in derivations are constants of the compiled classes.
    for (Class<?> type : List.of(TableSet.class, Length.class, Suites.class)) {
      used.addAll(ConstantPool.textsOfModuleWith(type));
    }
    return registers().map(register -> dynamicTest(register, () -> requireUsed(register, used)));
  }

  /** Documents that a stranger could not identify. This number only falls. */
  @Test
  void documentsThatAStrangerCannotIdentify() {
    List<String> lost =
        Cases.set().sources().documents().stream()
            .filter(document -> !document.missing().isEmpty())
            .map(document -> document.id() + ": " + document.missing())
            .toList();
    assertTrue(lost.size() <= 15, lost.size() + " " + lost);
  }

  private static void requireUsed(String register, Set<String> used) throws IOException {
    List<String> unused = new ArrayList<>(documents(register));
    assertEquals(unused.size(), new HashSet<>(unused).size(), "ids are given once");
    unused.removeAll(used);
    assertEquals(List.of(), unused, register + ": documents that no table, case or calculation cites");
  }

  /** The registers of the tables and of the cases, subject by subject. */
  private static Stream<String> registers() throws IOException {
    List<String> registers = new ArrayList<>();
    for (String root : List.of("/holdfast/tables/data/", "/holdfast/verification/cases/")) {
      Properties frame = new Properties();
      try (InputStream in = RegisterTest.class.getResourceAsStream(root + "table-set.properties")) {
        frame.load(in);
      }
      for (String subject : frame.getProperty("subjects").split("\\s*,\\s*", -1)) {
        registers.add(root + subject.strip() + "/sources.csv");
      }
    }
    return registers.stream();
  }

  private static List<String> documents(String register) throws IOException {
    List<String> ids = new ArrayList<>();
    try (InputStream in = RegisterTest.class.getResourceAsStream(register);
        CsvReader<CsvRecord> reader =
            CsvReader.builder().ofCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      reader.forEach(line -> ids.add(line.getField(0)));
    }
    return ids.subList(1, ids.size());
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

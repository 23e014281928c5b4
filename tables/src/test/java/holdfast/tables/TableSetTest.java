// SPDX-License-Identifier: Apache-2.0
package holdfast.tables;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TableSetTest {
  @TempDir Path path;

  @Test
  void tableOfAnEmbedderIsReadThroughTheSameDoor() {
    Table table = new Folder(path).table();
    assertEquals(4, table.size());
    assertEquals("Standard tolerances", table.descriptor().title());
    assertEquals(8, table.number(1, "value"));
    assertEquals("IT7", table.text(2, "grade"));
    assertFalse(table.has(0, "note"));
    assertTrue(table.has(2, "note"));
    assertArrayEquals(new double[] {6, 8, 10, 12}, table.numbers("value"));
    assertEquals(3, table.find("grade", "IT7", "over_mm", "3"));
    assertEquals(-1, table.find("grade", "IT8"));
  }

  @Test
  void cellsNameTheirPlaceAndWhoConfirmsThem() {
    Table table = new Folder(path).table();
    assertEquals("ISO 286-1:2010, Table 1, over 3 up to 6 mm, IT6", table.address(1));
    Cell cell = table.cell(1, "value");
    assertEquals(8, cell.value());
    assertEquals("µm", cell.unit());
    assertEquals(table.address(1), cell.address());
    assertEquals(List.of("reprint", "sheet"), cell.confirmedBy());
    assertEquals(Provenance.PUBLISHED, cell.source().provenance());
    Cell recalled = table.cell(2, "value");
    assertEquals(Provenance.MEMORY, recalled.source().provenance());
    assertEquals(List.of(), recalled.confirmedBy());
    assertEquals("recalled", recalled.note());
    assertEquals(List.of(), table.mirroredBy(2));
  }

  @Test
  void mirroredRowsNameWhoHoldsTheMirror() {
    Folder folder = new Folder(path);
    folder.descriptor("column.confirmed_by", "column.mirrored_by").csv(Folder.CSV.replace("confirmed_by", "mirrored_by"));
    assertEquals(List.of("reprint", "sheet"), folder.table().mirroredBy(1));
    assertEquals(List.of(), folder.table().confirmedBy(1));
  }

  @Test
  void tableWithoutRangesMayLeaveGaps() {
    Folder folder = new Folder(path);
    folder.descriptor("ranges = over_mm..up_to_mm\n", "").csv(Folder.CSV.replace("3,6,IT6", "5,4,IT6"));
    assertFalse(folder.table().descriptor().hasRanges());
    assertEquals(5, folder.table().number(1, "over_mm"));
  }

  @Test
  void addressTakesCellsAsTheyStand() {
    Folder folder = new Folder(path);
    folder.csv(Folder.CSV.replace("IT6", "{over_mm}$1\\"));
    assertEquals("ISO 286-1:2010, Table 1, over 3 up to 6 mm, {over_mm}$1\\", folder.table().address(1));
  }

  @Test
  void mistakesOfTheCallerAreNamed() {
    Table table = new Folder(path).table();
    for (String column : List.of("grad", "grade")) {
      IllegalArgumentException e = assertThrows(IllegalArgumentException.class, () -> table.number(0, column));
      assertTrue(e.getMessage().contains("'" + column + "'"), e.getMessage());
      assertTrue(e.getMessage().contains("[confirmed_by, grade, note, over_mm, provenance, up_to_mm, value]"), e.getMessage());
    }
    assertThrows(IllegalArgumentException.class, () -> table.text(0, "absent"));
    assertThrows(IllegalArgumentException.class, () -> table.numbers("grade"));
    assertThrows(IllegalArgumentException.class, () -> table.find("grade"));
    assertThrows(IndexOutOfBoundsException.class, () -> table.text(4, "grade"));
  }

  @Test
  void emptyOptionalNumberHasNoValue() {
    Folder folder = new Folder(path);
    folder.descriptor("number µm", "number µm optional").csv(Folder.CSV.replace("IT6,8,", "IT6,,"));
    Table table = folder.table();
    IllegalArgumentException e = assertThrows(IllegalArgumentException.class, () -> table.number(1, "value"));
    assertEquals("ISO 286-1:2010, Table 1, over 3 up to 6 mm, IT6: no value in column 'value'", e.getMessage());
    assertTrue(Double.isNaN(table.numbers("value")[1]));
  }

  @Test
  void columnsOfATableAreCopies() {
    Table table = new Folder(path).table();
    table.numbers("value")[0] = 99;
    assertEquals(6, table.number(0, "value"));
  }

  @Test
  void byteOrderMarkCommentsAndLineEndsDoNotMatter() {
    Folder folder = new Folder(path);
    folder.csv("\uFEFF# made by a spreadsheet\n" + Folder.CSV.replace("\n", "\r\n"));
    assertEquals(4, folder.table().size());
    assertEquals("recalled", folder.table().text(2, "note"));
  }

  @Test
  void digestChangesWithOneByteOfAnyFile() throws IOException {
    String before = new Folder(path).load().digest();
    assertTrue(before.matches("[0-9a-f]{64}"), before);
    for (String name :
        List.of(
            "table-set.properties", "fits/sources.csv", "fits/contents.txt", "fits/iso/tolerances.csv",
            "fits/iso/tolerances.properties")) {
      byte[] content = Files.readAllBytes(path.resolve(name));
      byte[] changed = content.clone();
      changed[changed.length - 1] = ' ';
      Files.write(path.resolve(name), changed);
      assertNotEquals(before, TableSet.load(path).digest(), name);
      Files.write(path.resolve(name), content);
    }
    assertEquals(before, TableSet.load(path).digest());
  }

  @Test
  void digestIsThatOfPathsAndContentsInAlphabeticalOrder() throws IOException, NoSuchAlgorithmException {
    TableSet set = new Folder(path).load();
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    for (String name :
        List.of(
            "fits/contents.txt", "fits/iso/tolerances.csv", "fits/iso/tolerances.properties", "fits/sources.csv",
            "table-set.properties")) {
      all.write((name + "\0").getBytes(StandardCharsets.UTF_8));
      all.write(Files.readAllBytes(path.resolve(name)));
    }
    byte[] sha = MessageDigest.getInstance("SHA-256").digest(all.toByteArray());
    assertEquals(HexFormat.of().formatHex(sha), set.digest());
  }

  @Test
  void whatHappensToTheFilesAfterLoadingChangesNeitherDigestNorValues() throws IOException {
    Folder folder = new Folder(path);
    TableSet set = folder.load();
    Edition edition = set.edition();
    folder.csv(Folder.CSV.replace("3,6,IT6,8", "3,6,IT6,9"));
    Files.delete(path.resolve("fits/iso/tolerances.properties"));
    assertEquals(edition, set.edition());
    assertSame(set, set.pinned(edition));
    assertEquals(8, set.table("fits/iso/tolerances").number(1, "value"));
    assertEquals(8, set.table("fits/iso/tolerances").number(1, "value"));
    folder.descriptor("", "");
    assertNotEquals(edition, folder.load().edition());
    assertEquals(9, folder.table().number(1, "value"));
  }

  @Test
  void eachFileHasADigestOfItsOwn() throws IOException, NoSuchAlgorithmException {
    TableSet set = new Folder(path).load();
    assertEquals(5, set.digests().size());
    for (String name : set.digests().keySet()) {
      byte[] sha = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(path.resolve(name)));
      assertEquals(HexFormat.of().formatHex(sha), set.digests().get(name), name);
    }
  }

  @Test
  void digestDoesNotDependOnWhatWasReadBefore() {
    Folder folder = new Folder(path);
    folder.file("fits/contents.txt", "iso/tolerances\niso/other\n");
    folder.file("fits/iso/other.csv", Folder.CSV).file("fits/iso/other.properties", Folder.DESCRIPTOR);
    TableSet a = folder.load();
    TableSet b = folder.load();
    a.all();
    b.table("fits/iso/other");
    assertEquals(a.digest(), b.digest());
    assertEquals(a.digest(), folder.load().digest());
  }

  @Test
  void ownTablesMayCiteTheDocumentsOfAnotherSet() {
    new Folder(path).file("fits/sources.csv", "id,title,kind,note\nreprint,R,handbook,\nsheet,S,reference page,\n");
    assertThrows(TableFormatException.class, () -> TableSet.load(path).all());
    SourceRegister known = SourceRegister.of(List.of(new Document("ISO 286-1:2010", "T", DocumentKind.STANDARD, "")));
    TableSet set = TableSet.load(name -> Files.newInputStream(path.resolve(name)), known);
    assertEquals(1, set.all().size());
    assertTrue(set.sources().contains("ISO 286-1:2010") && set.sources().contains("sheet"));
  }

  @Test
  void tableIsReadOnce() {
    TableSet set = new Folder(path).load();
    assertSame(set.table("fits/iso/tolerances"), set.table("fits/iso/tolerances"));
    assertEquals("7", set.version());
  }

  @Test
  void everyBundledTableLoadsAndSaysWhereItsRowsComeFrom() {
    TableSet set = TableSet.bundled();
    assertEquals(set.ids().size(), set.all().size());
    for (Table table : set.all()) {
      assertTrue(table.size() > 0, table.descriptor().id());
      for (int row = 0; row < table.size(); row++) {
        assertFalse(table.address(row).contains("{"), table.address(row));
        assertFalse(table.provenance(row).label().isEmpty());
        table.confirmedBy(row).forEach(id -> assertTrue(set.sources().contains(id), id));
      }
    }
    assertTrue(set.digest().matches("[0-9a-f]{64}"));
  }

  @Test
  void noSourceOfTheBundledSetHoldsAnAddressOnTheNet() {
    for (Document document : TableSet.bundled().sources().documents()) {
      String all = document.id() + document.title() + document.note();
      assertFalse(all.contains("://") || all.contains("www."), document.id());
    }
  }

  @Test
  void registerRefusesAndNames() {
    SourceRegister register = SourceRegister.of(List.of(new Document("a", "A", DocumentKind.STANDARD, "")));
    assertEquals("A", register.document("a").title());
    IllegalArgumentException e = assertThrows(IllegalArgumentException.class, () -> register.document("b"));
    assertTrue(e.getMessage().contains("'b'"), e.getMessage());
    Document twice = new Document("a", "A", DocumentKind.STANDARD, "");
    assertThrows(IllegalArgumentException.class, () -> SourceRegister.of(List.of(twice, twice)));
    assertThrows(IllegalArgumentException.class, () -> new Document(" ", "A", DocumentKind.STANDARD, ""));
    assertThrows(IllegalArgumentException.class, () -> SourceRef.published("a", " "));
    assertEquals("a, Table 1 [published]", SourceRef.published("a", "Table 1").toString());
    assertEquals("a, Table 1 [memory]", SourceRef.memory("a", "Table 1").toString());
    assertEquals(Provenance.DERIVED, SourceRef.derived("from b").provenance());
    assertEquals(Provenance.COMMON_PRACTICE, SourceRef.commonPractice("so it is done").provenance());
  }

  @Test
  void provenanceLabelsReadBackInTheTurkishLocaleToo() {
    for (Provenance p : Provenance.values()) {
      assertEquals(p, Provenance.of(p.label()));
      assertEquals(p, Provenance.of(" " + p.label().toUpperCase(java.util.Locale.ROOT) + " "));
      assertEquals(p.label(), p.toString());
    }
  }
}

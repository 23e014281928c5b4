// SPDX-License-Identifier: Apache-2.0
package holdfast.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.tables.EditionChange.Kind;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class EditionTest {
  private static final String ID = "fits/iso/tolerances";
  private static final String PLACE = "ISO 286-1:2010, Table 1, over 3 up to 6 mm, IT6";

  @TempDir Path path;
  private TableSet before;
  private Folder folder;

  @BeforeEach
  void twoEditions() {
    before = new Folder(path.resolve("before")).load();
    folder = new Folder(path.resolve("after"));
  }

  private List<EditionChange> changes() {
    return EditionDiff.between(before, folder.load()).changes();
  }

  private static EditionChange change(Kind kind, String item, String unit, String old, String now) {
    return new EditionChange(kind, ID, PLACE, item, unit, old, now);
  }

  @Test
  void onePinnedEditionIsThisOneAndNoOther() {
    Edition edition = before.edition();
    assertEquals("table set 7, SHA-256 " + before.digest(), edition.toString());
    assertSame(before, before.pinned(edition));
    TableSet other = folder.csv(Folder.CSV.replace("IT6,8", "IT6,9")).load();
    EditionException e = assertThrows(EditionException.class, () -> other.pinned(edition));
    assertEquals(edition, e.wanted());
    assertEquals(other.edition(), e.found());
    assertTrue(e.getMessage().contains(before.digest()) && e.getMessage().contains(other.digest()), e.getMessage());
    assertThrows(EditionException.class, () -> before.pinned(new Edition("8", before.digest())));
    assertThrows(IllegalArgumentException.class, () -> new Edition(" ", before.digest()));
    assertThrows(IllegalArgumentException.class, () -> new Edition("7", before.digest().substring(1)));
  }

  @Test
  void equalSetsDoNotDiffer() {
    EditionDiff diff = EditionDiff.between(before, folder.load());
    assertEquals(List.of(), diff.changes());
    assertTrue(diff.text().endsWith("\nthe same files\n"), diff.text());
  }

  @Test
  void orderAndSpellingAreNoDifference() {
    folder.csv(
        """
        # the same table
        note,over_mm,up_to_mm,grade,value,provenance,confirmed_by
        recalled,0,3.0,IT7,10,Memory,
        ,3,6,IT7,12.0,,
        ,0,3,IT6,6,,reprint
        ,3,6,IT6,8e0,published,reprint; sheet
        """);
    EditionDiff diff = EditionDiff.between(before, folder.load());
    assertEquals(List.of(), diff.changes());
    assertTrue(diff.text().contains("the files differ in order, comments or spelling"), diff.text());
  }

  @Test
  void cells() {
    folder.csv(Folder.CSV.replace("3,6,IT6,8,,reprint;sheet,", "3,6,IT6,9,memory,sheet,see print"));
    assertEquals(
        List.of(
            change(Kind.EVIDENCE_CHANGED, "confirmed_by", "", "reprint;sheet", "sheet"),
            change(Kind.NOTE_CHANGED, "note", "", "", "see print"),
            change(Kind.VALUE_CHANGED, "value", "µm", "8", "9"),
            change(Kind.PROVENANCE_CHANGED, "provenance", "", "published", "memory")),
        changes());
    assertEquals("value changed: " + PLACE + ": value 8 µm → 9 µm", changes().get(2).text());
    assertEquals("note changed: " + PLACE + ": note (empty) → see print", changes().get(1).text());
  }

  @Test
  void provenanceOfTheTableIsThatOfItsRows() {
    folder.descriptor("provenance = published", "provenance = derived");
    EditionDiff diff = EditionDiff.between(before, folder.load());
    assertEquals(3, diff.of(Kind.PROVENANCE_CHANGED).size());
    assertEquals(3, diff.changes().size());
    assertTrue(diff.text().contains("provenance changed: 3\n\n" + ID + "\n  provenance changed: "), diff.text());
  }

  @Test
  void rows() {
    folder.csv(Folder.CSV.replace("3,6,IT7,12,,,\n", "0,3,IT8,14,,,\n"));
    List<EditionChange> changes = changes();
    assertEquals(
        List.of(
            new EditionChange(
                Kind.ROW_REMOVED, ID, "ISO 286-1:2010, Table 1, over 3 up to 6 mm, IT7", "", "", "value 12 µm", ""),
            new EditionChange(
                Kind.ROW_ADDED, ID, "ISO 286-1:2010, Table 1, over 0 up to 3 mm, IT8", "", "", "", "value 14 µm")),
        changes);
    assertEquals("row added: ISO 286-1:2010, Table 1, over 0 up to 3 mm, IT8: value 14 µm", changes.get(1).text());
  }

  @Test
  void anotherKeyMatchesNoRow() {
    folder.descriptor("key = over_mm, up_to_mm, grade", "key = grade, over_mm, up_to_mm");
    EditionDiff diff = EditionDiff.between(before, folder.load());
    assertEquals("grade, over_mm, up_to_mm", diff.of(Kind.DESCRIPTION_CHANGED).get(0).after());
    assertEquals(4, diff.of(Kind.ROW_REMOVED).size());
    assertEquals(4, diff.of(Kind.ROW_ADDED).size());
  }

  @Test
  void descriptions() {
    folder.descriptor("column.value = number µm", "column.value = number mm optional");
    List<EditionChange> changes = changes();
    assertEquals(1, changes.size());
    assertEquals("description changed: column.value number µm → number mm optional", changes.get(0).text());
    folder.descriptor("note = text optional\n", "note = text optional\ncolumn.extra = text optional\n")
        .csv("over_mm,up_to_mm,grade,value,extra,provenance,confirmed_by,note\n3,6,IT6,8,new,,reprint;sheet,\n");
    assertEquals(1, EditionDiff.between(before, folder.load()).of(Kind.DESCRIPTION_CHANGED).size());
    assertEquals(3, EditionDiff.between(before, folder.load()).of(Kind.ROW_REMOVED).size());
  }

  @Test
  void tablesAndDocuments() {
    folder.file("fits/contents.txt", "iso/others\n");
    folder.file("fits/iso/others.csv", Folder.CSV).file("fits/iso/others.properties", Folder.DESCRIPTOR);
    folder.file(
        "fits/sources.csv",
        """
        id,title,kind,note
        ISO 286-1:2010,ISO code system for tolerances,standard,read
        reprint,A reprint,handbook,
        sheet,A sheet,reference page,
        sketch,A sketch,paper,
        """);
    TableSet after = folder.load();
    assertEquals(
        List.of(Kind.DOCUMENT_CHANGED, Kind.DOCUMENT_ADDED, Kind.TABLE_REMOVED, Kind.TABLE_ADDED),
        EditionDiff.between(before, after).changes().stream().map(EditionChange::kind).toList());
    EditionDiff back = EditionDiff.between(after, before);
    assertEquals("A sketch", back.of(Kind.DOCUMENT_REMOVED).get(0).before());
    assertTrue(back.text().contains("\nsketch\n  document removed: A sketch\n"), back.text());
  }

  @Test
  void aJarIsAnEditionToo() throws IOException {
    Path jar = path.resolve("edition.jar");
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(jar))) {
      for (String name : List.of("table-set.properties", "fits/sources.csv", "fits/contents.txt", ID + ".csv")) {
        zip.putNextEntry(new ZipEntry("holdfast/tables/data/" + name));
        zip.write(Files.readAllBytes(path.resolve("before").resolve(name)));
      }
    }
    UncheckedIOException e = assertThrows(UncheckedIOException.class, () -> TableSet.load(jar));
    assertTrue(e.getMessage().contains(ID + ".properties") && e.getMessage().contains(jar.toString()), e.getMessage());
    Path whole = path.resolve("whole.jar");
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(whole))) {
      for (String name : before.digests().keySet()) {
        zip.putNextEntry(new ZipEntry("holdfast/tables/data/" + name));
        zip.write(Files.readAllBytes(path.resolve("before").resolve(name)));
      }
    }
    assertEquals(before.edition(), TableSet.load(whole).edition());
    assertEquals(4, TableSet.load(whole).table(ID).size());
  }

  @Test
  void bundledSetWithOneValueChanged() {
    TableSet other = bundledButFor("table-set.properties", "version = 2", "version = example-of-2");
    assertTrue(other.version().startsWith("example-of-2"), other.version());
    assertEquals(List.of(), EditionDiff.between(TableSet.bundled(), other).changes());
    TableSet changed = bundledButFor("fits/iso-286-1/2010/standard-tolerances.csv", "18,30,IT7,21,", "18,30,IT7,22,");
    List<EditionChange> changes = EditionDiff.between(TableSet.bundled(), changed).changes();
    assertEquals(1, changes.size(), changes::toString);
    assertEquals(Kind.VALUE_CHANGED, changes.get(0).kind());
    assertEquals("21 to 22", changes.get(0).before() + " to " + changes.get(0).after());
    assertEquals("fits/iso-286-1/2010/standard-tolerances", changes.get(0).id());
  }

  private static TableSet bundledButFor(String file, String old, String replacement) {
    TableSet.Opener opener =
        name -> {
          try (InputStream in = TableSet.class.getResourceAsStream("/holdfast/tables/data/" + name)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            if (name.equals(file)) {
              assertTrue(text.contains(old), name);
              text = text.replace(old, replacement);
            }
            return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
          }
        };
    return TableSet.load(opener, SourceRegister.of(List.of()));
  }

  @Test
  void anEditionStandsInOnlyIfNothingIsMissing() {
    TableSet newer = folder.file("table-set.properties", "version = 8\nsubjects = fits\n").load();
    assertSame(newer, BundledTables.fit(newer, before));
    assertSame(before, BundledTables.fit(before, before));
    refused("two editions have one version", new Folder(path.resolve("other")).csv(Folder.CSV + "0,3,IT8,14,,,\n").load());
    folder.descriptor("number µm", "number mm");
    refused("unit=mm", folder.load());
    folder.descriptor("number µm", "number µm optional");
    refused("optional=true", folder.load());
    folder.descriptor("column.note = text optional\n", "").csv("over_mm,up_to_mm,grade,value,provenance,confirmed_by\n0,3,IT6,6,,\n");
    refused("has null", folder.load());
    refused("lacks the table '" + ID + "'", folder.file("fits/contents.txt", "iso/others\n")
        .file("fits/iso/others.csv", Folder.CSV).file("fits/iso/others.properties", Folder.DESCRIPTOR).load());
  }

  private void refused(String reason, TableSet other) {
    EditionException e = assertThrows(EditionException.class, () -> BundledTables.fit(other, before));
    assertTrue(e.getMessage().contains(reason), e.getMessage());
  }

  @Test
  void differencesSurviveTheWayThroughAStream() throws Exception {
    folder.csv(Folder.CSV.replace("IT6,8", "IT6,9"));
    EditionDiff diff = EditionDiff.between(before, folder.load());
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(diff);
    }
    try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      assertEquals(diff, in.readObject());
    }
  }
}

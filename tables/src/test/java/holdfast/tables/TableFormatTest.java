// SPDX-License-Identifier: Apache-2.0
package holdfast.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every kind of bad file gives an error that names the file, the line where there is one, and what is wrong. */
class TableFormatTest {
  private static final String CSV = "fits/iso/tolerances.csv";
  private static final String DESCRIPTOR = "fits/iso/tolerances.properties";

  @TempDir Path path;
  private Folder folder;

  @BeforeEach
  void writeAGoodSet() {
    folder = new Folder(path);
  }

  private void refused(String file, long line, String... parts) {
    TableFormatException e = assertThrows(TableFormatException.class, () -> folder.table());
    assertEquals(file, e.file(), e.getMessage());
    assertEquals(line, e.line(), e.getMessage());
    assertTrue(e.getMessage().startsWith(line > 0 ? file + ":" + line + ": " : file + ": "), e.getMessage());
    for (String part : parts) {
      assertTrue(e.getMessage().contains(part), e.getMessage());
    }
  }

  @Test
  void wrongColumn() {
    folder.csv(Folder.CSV.replace("grade,", "grad,"));
    refused(CSV, 1, "columns [grad] are not described", "columns [grade] are missing");
  }

  @Test
  void missingColumn() {
    folder.csv("over_mm,up_to_mm,grade,value\n0,3,IT6,6\n");
    refused(CSV, 1, ": columns [confirmed_by, note, provenance] are missing; described are [confirmed_by, grade,");
  }

  @Test
  void columnTooMany() {
    folder.csv("over_mm,up_to_mm,grade,value,provenance,confirmed_by,note,page\n0,3,IT6,6,,,,9\n");
    refused(CSV, 1, ": columns [page] are not described; described are [confirmed_by, grade,");
  }

  @Test
  void columnTwice() {
    folder.csv("over_mm,up_to_mm,grade,value,provenance,confirmed_by,note,note\n0,3,IT6,6,,,,\n");
    refused(CSV, 1, "a column occurs twice");
  }

  @ParameterizedTest
  @ValueSource(strings = {"six", "6 mm", "6d", "0x6", "1e", "--6", "6.5.1", "+", "."})
  void notANumber(String cell) {
    folder.csv(Folder.CSV.replace("IT6,8,", "IT6," + cell + ","));
    refused(CSV, 3, "column 'value'", "'" + cell + "' is not a number");
  }

  @ParameterizedTest
  @ValueSource(strings = {"NaN", "nan", "Infinity", "-Infinity", "inf", "1e999"})
  void notFinite(String cell) {
    folder.csv(Folder.CSV.replace("IT6,8,", "IT6," + cell + ","));
    refused(CSV, 3, "column 'value'", "'" + cell + "' is not a finite number");
  }

  @Test
  void commaDecimal() {
    folder.csv(Folder.CSV.replace("IT6,8,", "IT6,\"8,5\","));
    refused(CSV, 3, "'8,5' is not a number (decimal point, no unit)");
    folder.csv(Folder.CSV.replace("IT6,8,", "IT6,8,5,"));
    refused(CSV, 3, "8 fields instead of the 7 of the header");
  }

  @Test
  void raggedLine() {
    folder.csv(Folder.CSV.replace("3,6,IT7,12,,,", "3,6,IT7,12"));
    refused(CSV, 5, "4 fields instead of the 7 of the header");
  }

  @Test
  void blankRequiredCell() {
    folder.csv(Folder.CSV.replace("IT6,8,", "IT6, ,"));
    refused(CSV, 3, "column 'value' must not be empty");
    folder.csv(Folder.CSV.replace("3,6,IT6", "3,6,"));
    refused(CSV, 3, "column 'grade' must not be empty");
  }

  @Test
  void duplicateKey() {
    folder.csv(Folder.CSV.replace("3,6,IT7,12", "0,3,IT7,12"));
    refused(CSV, 5, "same key", "as in line 4");
  }

  @Test
  void gapOverlapAndEmptyRange() {
    folder.csv(Folder.CSV.replace("3,6,IT6", "4,6,IT6"));
    refused(CSV, 3, "range starts at 4.0 but the one before it ends at 3.0");
    folder.csv(Folder.CSV.replace("3,6,IT6", "2,6,IT6"));
    refused(CSV, 3, "range starts at 2.0 but the one before it ends at 3.0");
    folder.csv(Folder.CSV.replace("3,6,IT6", "3,3,IT6"));
    refused(CSV, 3, "range over 3.0 up to 3.0 is empty");
    folder.csv(Folder.CSV.replace("3,6,IT6", "6,3,IT6"));
    refused(CSV, 3, "range over 6.0 up to 3.0 is empty");
  }

  @Test
  void unknownDocument() {
    folder.csv(Folder.CSV.replace("reprint;sheet", "reprint;shet"));
    refused(CSV, 3, "document 'shet' is not in the register");
    folder.csv(Folder.CSV).descriptor("= ISO 286-1:2010", "= ISO 286-1:2011");
    refused(DESCRIPTOR, 0, "document 'ISO 286-1:2011' is not in the register");
  }

  @Test
  void unknownProvenance() {
    folder.csv(Folder.CSV.replace("memory", "web"));
    refused(CSV, 4, "provenance 'web' is not one of: published");
    folder.csv(Folder.CSV).descriptor("provenance = published", "provenance = found");
    refused(DESCRIPTOR, 4, "provenance 'found' is not one of");
  }

  @Test
  void emptyFile() {
    folder.csv("");
    refused(CSV, 0, "the file is empty");
    folder.csv("# only a comment\n");
    refused(CSV, 0, "the file is empty");
    folder.csv("over_mm,up_to_mm,grade,value,provenance,confirmed_by,note\n");
    refused(CSV, 0, "has no rows");
  }

  @Test
  void quoteThatNeverEnds() {
    folder.csv(Folder.CSV.replace("IT6,8,", "IT6,\"8,"));
    refused(CSV, 3, "a quotation mark is not closed on its line");
  }

  @Test
  void textBehindAClosedQuote() {
    folder.csv(Folder.CSV.replace("IT6,8,", "IT6,\"8\"mm,"));
    refused(CSV, 3, "a quotation mark is not closed on its line, or stands inside a cell");
  }

  @Test
  void aQuoteThatIsNotClosedSwallowsNoRows() {
    // Up to the next quotation mark, the end of the file, or the end of its last line.
    folder.csv(Folder.CSV.replace("IT6,6,,reprint,", "IT6,6,,reprint,\"see").replace(",recalled", ",end\""));
    refused(CSV, 2, "a quotation mark is not closed on its line");
    folder.csv(Folder.CSV.stripTrailing() + "\"see print");
    refused(CSV, 5, "a quotation mark is not closed on its line");
    folder.csv(Folder.CSV.replace("recalled", "3/4\" bar"));
    refused(CSV, 4, "stands inside a cell without being doubled");
    folder.csv(Folder.CSV.replace("recalled", "\"3/4\"\" bar, \"\"A\"\"\""));
    assertEquals("3/4\" bar, \"A\"", folder.table().text(2, "note"));
    folder.csv(Folder.CSV.replace("recalled", "\"\""));
    assertEquals("", folder.table().text(2, "note"));
    folder.file("fits/sources.csv", "id,title,kind,note\na,\"A,standard,\nb,B,standard,\n");
    refused("fits/sources.csv", 2, "a quotation mark is not closed");
  }

  @Test
  void aRowThatBeginsWithANumberSignIsNoComment() {
    String numbers = "grade,over_mm,up_to_mm,value,provenance,confirmed_by,note\n";
    folder.csv("# comment\n" + numbers + "#10-24,0,3,6,,,\nIT6,3,6,8,,,\n");
    refused(CSV, 3, "the row starts with '#'");
    folder.csv(numbers + "\"#10-24\",0,3,6,,,\nIT6,3,6,8,,,\n");
    assertEquals("#10-24", folder.table().text(0, "grade"));
    assertEquals(2, folder.table().size());
  }

  @ParameterizedTest
  @ValueSource(strings = {"3.0", "3.00", "3e0", "+3", "0.3e1"})
  void oneNumberSpeltInTwoWaysIsOneKey(String three) {
    folder.descriptor("ranges = over_mm..up_to_mm\n", "").csv(Folder.CSV + three + ",6,IT7,13,,,\n");
    refused(CSV, 6, "same key [over_mm, up_to_mm, grade] = [3, 6, IT7] as in line 5");
  }

  @Test
  void rangesOfOneGroupSpeltInTwoWaysMustJoin() {
    folder.descriptor("column.grade = text", "column.grade = number 1");
    folder.csv(Folder.CSV.replace("IT", "").replace("\n3,6,6", "\n4,6,6.0"));
    refused(CSV, 3, "range starts at 4.0 but the one before it ends at 3.0");
  }

  @Test
  void anEntryStandsOnce() {
    folder.descriptor("locator = Table 1\n", "locator = Table 1\nlocator = Table 2\n");
    refused(DESCRIPTOR, 4, "entry 'locator' stands in line 3 already");
    folder.descriptor("locator = Table 1\n", "locator = Table 1\n# \\\nnote = a \\\n  b\n\\u006eote:c\n");
    refused(DESCRIPTOR, 7, "entry 'note' stands in line 5 already");
    folder.descriptor("locator = Table 1\n", "locator = Table 1\nnote = a \\\n  b\n");
    assertEquals("a b", folder.table().descriptor().note());
    folder.file("table-set.properties", "version = 1\nsubjects = fits\nversion = 2\n");
    refused("table-set.properties", 3, "entry 'version' stands in line 1 already");
  }

  @ParameterizedTest
  @ValueSource(strings = {"../tolerances", "iso/../tolerances", "/etc/passwd", "iso//tolerances", "./iso", "iso/.hidden", "iso\\t",
      "C:/tolerances", "iso/tol erances", "iso/t\u00f6l", "..", "iso/"})
  void pathsStayBelowTheFolder(String line) {
    folder.file("fits/contents.txt", "iso/tolerances\n" + line + "\n");
    refused("fits/contents.txt", 2, "table '" + line + "' is not a path below the folder");
    folder.file("fits/contents.txt", "iso/tolerances\n");
    folder.file("table-set.properties", "version = 1\nsubjects = fits, " + line.replace("\\", "\\\\") + "\n");
    refused("table-set.properties", 2, "subject '" + line + "' is listed twice, or not a path below the folder");
  }

  @Test
  void aListWithoutTablesIsRefused() {
    folder.file("fits/contents.txt", "");
    refused("fits/contents.txt", 0, "the file lists no table");
    folder.file("fits/contents.txt", "# none yet\n\n");
    refused("fits/contents.txt", 0, "the file lists no table");
  }

  @ParameterizedTest
  @ValueSource(strings = {"\0", "\u0007", "\u001b", "\u202e", "\u200b", "\u2028", "\ufeff", "\u0085", "\ud800"})
  void whatCannotBePrintedIsNoPartOfANameOrText(String c) {
    String shown = "U+%04X, cannot be printed".formatted((int) c.charAt(0));
    if (!c.equals("\ud800")) {
      folder.csv(Folder.CSV.replace("recalled", "re" + c + "called"));
      refused(CSV, 4, shown);
      folder.csv(Folder.CSV).file("fits/contents.txt", "iso/tolerances\niso/" + c + "x\n");
      refused("fits/contents.txt", 2, shown);
      folder.file("fits/contents.txt", "iso/tolerances\n");
    }
    folder.descriptor("Table 1", "Table \\u%04x 1".formatted((int) c.charAt(0)));
    refused(DESCRIPTOR, 3, shown);
    assertThrows(IllegalArgumentException.class, () -> new Document("a", "A" + c, DocumentKind.STANDARD, ""));
  }

  @ParameterizedTest
  @ValueSource(strings = {"1\\nTable set 9", "1\\u200b", "1 beta", "ä", "1_2"})
  void aVersionIsOfLettersDigitsPointsAndHyphens(String version) {
    folder.file("table-set.properties", "subjects = fits\nversion = " + version + "\n");
    TableFormatException e = assertThrows(TableFormatException.class, folder::load);
    assertEquals("table-set.properties", e.file());
    assertEquals(2, e.line(), e.getMessage());
    folder.file("table-set.properties", "subjects = fits\nversion = 2026.1-rc.B\n");
    assertEquals("2026.1-rc.B", folder.load().version());
    String digest = folder.load().digest();
    assertThrows(IllegalArgumentException.class, () -> new Edition("1\nTable set 9", digest));
  }

  @Test
  void aFileFarLargerThanAnyTableIsRefused() {
    folder.file(CSV, new byte[SetFiles.MOST_BYTES_OF_A_FILE + 1]);
    refused(CSV, 0, "the file is longer than 8388608 bytes");
  }

  @Test
  void aSmallArchiveOfHugeFilesIsRefusedByName() throws IOException {
    Path jar = path.resolve("bomb.jar");
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(jar))) {
      put(zip, "table-set.properties", "version = 1\nsubjects = fits\n".getBytes(StandardCharsets.UTF_8));
      put(zip, "fits/sources.csv", "id,title,kind,note\n".getBytes(StandardCharsets.UTF_8));
      put(zip, "fits/contents.txt", "a\nb\nc\nd\ne\n".getBytes(StandardCharsets.UTF_8));
      byte[] eightMegabytes = new byte[8 << 20];
      for (char table = 'a'; table <= 'e'; table++) {
        put(zip, "fits/" + table + ".csv", eightMegabytes);
        put(zip, "fits/" + table + ".properties", eightMegabytes);
      }
    }
    assertTrue(Files.size(jar) < 200_000);
    TableFormatException e = assertThrows(TableFormatException.class, () -> TableSet.load(jar));
    assertEquals("fits/d.properties", e.file());
    assertTrue(e.getMessage().contains("longer than 67108864 bytes") && e.getMessage().contains(jar.toString()), e.getMessage());
  }

  private static void put(ZipOutputStream zip, String name, byte[] content) throws IOException {
    zip.putNextEntry(new ZipEntry(TableSet.FOLDER + name));
    zip.write(content);
  }

  @Test
  void everyErrorOfAFolderOrJarNamesIt() throws IOException {
    folder.csv(Folder.CSV.replace("IT6,8,", "IT6,x,"));
    refused(CSV, 3, "(in " + path + ")");
    Path noJar = Files.writeString(path.resolve("no.jar"), "no jar");
    UncheckedIOException e = assertThrows(UncheckedIOException.class, () -> TableSet.load(noJar));
    assertTrue(e.getMessage().contains(noJar.toString()), e.getMessage());
    Path nowhere = path.resolve("nowhere");
    e = assertThrows(UncheckedIOException.class, () -> TableSet.load(nowhere));
    assertTrue(e.getMessage().contains(nowhere.toString()) && e.getMessage().contains("table-set.properties"), e.getMessage());
  }

  @Test
  void otherEncoding() {
    folder.file(CSV, Folder.CSV.replace("recalled", "Größe").getBytes(StandardCharsets.ISO_8859_1));
    refused(CSV, 0, "not written in UTF-8");
    folder.file("table-set.properties", "version=é".getBytes(StandardCharsets.ISO_8859_1));
    refused("table-set.properties", 0, "not written in UTF-8");
  }

  @ParameterizedTest
  @ValueSource(strings = {"title", "document", "locator", "provenance", "key", "address"})
  void missingDescriptorEntry(String entry) {
    String line = Folder.DESCRIPTOR.lines().filter(l -> l.startsWith(entry + " =")).findFirst().orElseThrow();
    folder.descriptor(line + "\n", "");
    refused(DESCRIPTOR, 0, "entry '" + entry + "' is missing or empty");
    folder.descriptor(line + "\n", entry + " =\n");
    refused(DESCRIPTOR, 1 + Folder.DESCRIPTOR.lines().toList().indexOf(line), "entry '" + entry + "' is missing or empty");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "title =|titel = x%ntitle =|unknown entry 'titel'",
        "grade = text|grade = string|column.grade: column type 'string' is not number, text, provenance or sources",
        "grade = text|grade = text mm|column type 'text' takes no unit",
        "number µm|number|a number column needs a unit",
        "number µm|number µm max|a number column needs a unit",
        "mm, grade|mm, grad|key column 'grad' is not described",
        ", {grade}|, {grad}|address: column 'grad' is not described",
        "over_mm..up_to_mm|over_mm|ranges must be 'from_column..to_column', not 'over_mm'",
        "over_mm..up_to_mm|over_mm..|ranges: '' must be a described number column",
        "over_mm..up_to_mm|..up_to_mm|ranges: '' must be a described number column",
        "over_mm..up_to_mm|over_mm..grade|ranges: 'grade' must be a described number column",
        "over_mm = number mm|over_mm = number mm optional|ranges: 'over_mm' must be a described number column",
        "provenance optional|text optional|column.provenance: a column of this name has the type provenance",
        "sources optional|text optional|column.confirmed_by: a column of this name has the type sources",
        "= Table 1|= \\u12|Malformed",
      })
  void badDescriptor(String old, String replacement, String fault) {
    folder.descriptor(old, replacement.replace("%n", "\n"));
    String place = fault.startsWith("ranges") ? "ranges" : old;
    String before = Folder.DESCRIPTOR.substring(0, Folder.DESCRIPTOR.indexOf(place));
    refused(DESCRIPTOR, 1 + before.chars().filter(c -> c == '\n').count(), fault);
  }

  @Test
  void badFrame() {
    folder.file("table-set.properties", "subjects = fits\n");
    refused("table-set.properties", 0, "entry 'version' is missing or empty");
    folder.file("table-set.properties", "version = 1\n");
    refused("table-set.properties", 0, "entry 'subjects' is missing or empty");
    folder.file("table-set.properties", "version = 1\nsubjects = fits, fits\n");
    refused("table-set.properties", 2, "subject 'fits' is listed twice");
    folder.file("table-set.properties", "version = 1\nsubjects = fits,\n");
    refused("table-set.properties", 2, "subject '' is listed twice, or not a path below the folder");
    folder.file("table-set.properties", "version = 1\nsubject = fits\nsubjects = fits\n");
    refused("table-set.properties", 2, "unknown entry 'subject'");
  }

  @Test
  void tableListedTwice() {
    folder.file("fits/contents.txt", "iso/tolerances\n# again\niso/tolerances\n");
    refused("fits/contents.txt", 3, "table 'iso/tolerances' is listed twice");
  }

  @Test
  void badRegister() {
    folder.file("fits/sources.csv", "id,title,note\na,A,\n");
    refused("fits/sources.csv", 1, "columns must be of id,authors,publisher,title,");
    folder.file("fits/sources.csv", "id,title,kind,colour\na,A,standard,red\n");
    refused("fits/sources.csv", 1, "columns must be of id,authors,publisher,title,");
    folder.file("fits/sources.csv", "id,title,kind,note\na,A,standard,\na,B,standard,\n");
    refused("fits/sources.csv", 3, "document 'a' is registered twice");
    folder.file("fits/sources.csv", "id,title,kind,note\na,,standard,\n");
    refused("fits/sources.csv", 2, "no field but the note may be blank");
    folder.file("fits/sources.csv", "id,title,kind,note\na,A, ,\n");
    refused("fits/sources.csv", 2, "kind ' ' is none of: standard, handbook");
    folder.file("fits/sources.csv", "");
    refused("fits/sources.csv", 0, "the file is empty");
  }

  @Test
  void missingFilesAreNamed() {
    folder.file("fits/contents.txt", "iso/tolerances\niso/absent\n");
    UncheckedIOException e = assertThrows(UncheckedIOException.class, folder::load);
    assertTrue(e.getMessage().contains("fits/iso/absent.csv") && e.getMessage().contains(path.toString()), e.getMessage());
    folder.file("table-set.properties", "version = 1\nsubjects = other\n");
    e = assertThrows(UncheckedIOException.class, folder::load);
    assertTrue(e.getMessage().contains("other/sources.csv"), e.getMessage());
  }

  @Test
  void unknownTableListsTheKnownOnes() {
    IllegalArgumentException e = assertThrows(IllegalArgumentException.class, () -> folder.load().table("fits/x"));
    assertTrue(e.getMessage().contains("fits/x") && e.getMessage().contains("fits/iso/tolerances"), e.getMessage());
    assertEquals(List.of("fits/iso/tolerances"), folder.load().ids());
  }
}

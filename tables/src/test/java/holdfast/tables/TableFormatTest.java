// SPDX-License-Identifier: Apache-2.0
package holdfast.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
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
    refused(DESCRIPTOR, 0, "provenance 'found' is not one of");
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
    // The open quote swallows the rest of the file, so that fields are missing.
    folder.csv(Folder.CSV.replace("IT6,8,", "IT6,\"8,"));
    refused(CSV, 3, "4 fields instead of the 7");
  }

  @Test
  void textBehindAClosedQuote() {
    folder.csv(Folder.CSV.replace("IT6,8,", "IT6,\"8\"mm,"));
    refused(CSV, 0, "not readable as CSV", "line 3");
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
    refused(DESCRIPTOR, 0, "entry '" + entry + "' is missing or empty");
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
    refused(DESCRIPTOR, 0, fault);
  }

  @Test
  void badFrame() {
    folder.file("table-set.properties", "subjects = fits\n");
    refused("table-set.properties", 0, "entry 'version' is missing or empty");
    folder.file("table-set.properties", "version = 1\n");
    refused("table-set.properties", 0, "entry 'subjects' is missing or empty");
    folder.file("table-set.properties", "version = 1\nsubjects = fits, fits\n");
    refused("table-set.properties", 0, "'fits' is empty or listed twice");
    folder.file("table-set.properties", "version = 1\nsubjects = fits,\n");
    refused("table-set.properties", 0, "'' is empty or listed twice");
  }

  @Test
  void tableListedTwice() {
    folder.file("fits/contents.txt", "iso/tolerances\n# again\niso/tolerances\n");
    refused("fits/contents.txt", 3, "table 'iso/tolerances' is listed twice");
  }

  @Test
  void badRegister() {
    folder.file("fits/sources.csv", "id,title,kind\na,A,standard\n");
    refused("fits/sources.csv", 1, "columns must be id,title,kind,note");
    folder.file("fits/sources.csv", "id,title,kind,note\na,A,standard,\na,B,standard,\n");
    refused("fits/sources.csv", 3, "document 'a' is registered twice");
    folder.file("fits/sources.csv", "id,title,kind,note\na,,standard,\n");
    refused("fits/sources.csv", 2, "id, title and kind must not be blank");
    folder.file("fits/sources.csv", "id,title,kind,note\na,A, ,\n");
    refused("fits/sources.csv", 2, "id, title and kind must not be blank");
    folder.file("fits/sources.csv", "");
    refused("fits/sources.csv", 0, "the file is empty");
  }

  @Test
  void missingFilesAreNamed() {
    folder.file("fits/contents.txt", "iso/tolerances\niso/absent\n");
    TableSet set = folder.load();
    UncheckedIOException e = assertThrows(UncheckedIOException.class, () -> set.table("fits/iso/absent"));
    assertTrue(e.getMessage().contains("fits/iso/absent.properties"), e.getMessage());
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

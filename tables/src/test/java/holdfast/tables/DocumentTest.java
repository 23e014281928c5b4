// SPDX-License-Identifier: Apache-2.0
package holdfast.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class DocumentTest {
  private static final String HEAD =
      "id,authors,publisher,title,edition,year,number,kind,seen,address,read,superseded_by,consequence,note";

  private static Document line(String cells) {
    return Document.of(List.of(HEAD.split(",", -1)), List.of(cells.split("\\|", -1)));
  }

  @Test
  void aBookIsKnownByItsAuthors() {
    Document book =
        line("Design 9|Budynas, R. G.; Nisbett, J. K.|unknown|Design|unknown|2011|none|textbook|reprint|unknown|unknown|none|none|");
    assertEquals(List.of(), book.missing());
    assertEquals("Budynas and Nisbett, Design 9, 2011", book.citation());
    assertEquals(List.of("Budynas", "Nisbett"), book.families());
  }

  @Test
  void aStandardCitesItself() {
    Document standard =
        line("ISO 1:2022|none|ISO|Temperature|none|2022|ISO 1|standard|not seen|unknown|unknown|none|none|");
    assertEquals(List.of(), standard.missing());
    assertEquals("ISO 1:2022", standard.citation());
  }

  @Test
  void anUnsignedSheetCannotBeIdentifiedThoughItHasAnAddress() {
    Document sheet =
        line("A sheet|none|unknown|Sheet|none|unknown|none|reference page|excerpt|a.example/1|unknown|none|none|");
    assertEquals(List.of("author or publisher"), sheet.missing());
    assertEquals("author unknown, A sheet, year unknown", sheet.citation());
  }

  @Test
  void aPageOfASiteNeedsItsAddress() {
    String page = "A page|none|site a.example|Page|none|unknown|none|reference page|excerpt|%s|unknown|none|none|";
    assertEquals(List.of(), line(page.formatted("a.example/1")).missing());
    assertEquals(
        List.of("year, edition, number or address", "the copy that was read"), line(page.formatted("unknown")).missing());
  }

  @Test
  void whatIsNoPublicationHasNothingToLookUp() {
    Document derivation = line("derivation|none|none|Derived|none|none|none|derivation|none|none|none|none|none|");
    assertEquals(List.of(), derivation.missing());
    assertEquals("derivation", derivation.citation());
  }

  @Test
  void columnsThatARegisterLacksAreUnknown() {
    Document own = Document.of(List.of("id", "title", "kind"), List.of("List 7", "Gauges", "house document"));
    assertEquals(new Document("List 7", "Gauges", DocumentKind.HOUSE, ""), own);
    assertEquals("author unknown, List 7, year unknown", own.citation());
    assertEquals(Document.COLUMNS, List.copyOf(own.fields().keySet()));
  }

  @Test
  void blankFieldsAndUnknownWordsAreRefused() {
    List<String> columns = List.of("id", "title", "kind", "seen");
    assertThrows(IllegalArgumentException.class, () -> Document.of(columns, List.of("a", " ", "standard", "reprint")));
    assertThrows(IllegalArgumentException.class, () -> Document.of(columns, List.of("a", "A", "leaflet", "reprint")));
    IllegalArgumentException e =
        assertThrows(IllegalArgumentException.class, () -> Document.of(columns, List.of("a", "A", "standard", "heard")));
    assertTrue(e.getMessage().contains("original, reprint, excerpt, data file, not seen, none"), e.getMessage());
  }

  @Test
  void aRegisterCitesAuthorTitleYearAndPlace() {
    SourceRegister register =
        SourceRegister.of(
            List.of(
                line("Rings 9|none|Maker|Rings|none|2018|No. 9|catalogue|reprint|a.example|unknown|none|none|p. 3"),
                line("Rings 2019|none|Maker|Rings|none|2019|No. 9|catalogue|reprint|a.example|unknown|none|none|p. 3")));
    assertEquals("Maker, Rings 9, 2018, p. 4 [published]", register.cite(SourceRef.published("Rings 9", "p. 4")));
    assertEquals("Maker, Rings 2019, p. 4 [memory]", register.cite(SourceRef.memory("Rings 2019", "p. 4")));
    assertEquals("other, p. 4 [published]", register.cite(SourceRef.published("other", "p. 4")));
  }
}

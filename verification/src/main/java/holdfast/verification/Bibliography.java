// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import holdfast.tables.Document;
import holdfast.tables.DocumentKind;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The register of documents for reference managers: BibTeX and CSL-JSON. Only publications; what is not known is left out. */
public final class Bibliography {
  private static final Pattern YEAR = Pattern.compile("\\d{4}");

  private Bibliography() {}

  /**
   * BibTeX entries.
   *
   * @param documents the documents
   * @return one entry a publication, keyed {@code d1}, {@code d2} and so on in the order given; its keyword is the id
   */
  public static String bibtex(Collection<Document> documents) {
    StringBuilder text = new StringBuilder();
    int number = 0;
    for (Document document : documents) {
      if (document.kind().publication()) {
        number++;
        text.append('@').append(bibtexType(document.kind())).append("{d").append(number).append(",\n");
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("author", document.authors().replaceAll("\\s*;\\s*", " and "));
        fields.put("publisher", document.publisher());
        fields.put("title", document.title());
        fields.put("edition", document.edition());
        fields.put("year", year(document));
        fields.put("number", document.number());
        fields.put("howpublished", document.address());
        fields.put("note", document.note());
        fields.put("keywords", document.id());
        fields.forEach((name, value) -> {
          if (!value.isBlank() && Document.known(value)) {
            text.append("  ").append(name).append(" = {").append(value.replaceAll("[{}\\\\]", "")).append("},\n");
          }
        });
        text.append("}\n");
      }
    }
    return text.toString();
  }

  /**
   * CSL-JSON items.
   *
   * @param documents the documents
   * @return a JSON array, one object a publication, identified by the id of the register
   */
  public static String cslJson(Collection<Document> documents) {
    List<Object> items = new ArrayList<>();
    for (Document document : documents) {
      if (document.kind().publication()) {
        items.add(cslItem(document));
      }
    }
    return Json.of(items);
  }

  private static Map<String, Object> cslItem(Document document) {
    Map<String, Object> item = new LinkedHashMap<>();
    item.put("id", document.id());
    item.put("type", cslType(document.kind()));
    item.put("title", document.title());
    if (Document.known(document.authors())) {
      List<Object> authors = new ArrayList<>();
      for (String author : document.authors().split(";", -1)) {
        String[] parts = author.split(",", -1);
        Map<String, Object> name = new LinkedHashMap<>();
        name.put("family", parts[0].strip());
        if (parts.length > 1) {
          name.put("given", parts[1].strip());
        }
        authors.add(name);
      }
      item.put("author", authors);
    }
    putKnown(item, "publisher", document.publisher());
    putKnown(item, "edition", document.edition());
    putKnown(item, "number", document.number());
    if (!year(document).isEmpty()) {
      item.put("issued", Map.of("date-parts", List.of(List.of(Integer.parseInt(year(document))))));
    }
    putKnown(item, "source", document.address());
    putKnown(item, "note", document.note());
    return item;
  }

  private static void putKnown(Map<String, Object> item, String name, String value) {
    if (!value.isBlank() && Document.known(value)) {
      item.put(name, value);
    }
  }

  /** The first year that the field names; empty if it names none. */
  private static String year(Document document) {
    Matcher year = YEAR.matcher(document.year());
    return year.find() ? year.group() : "";
  }

  private static String bibtexType(DocumentKind kind) {
    return switch (kind) {
      case HANDBOOK, TEXTBOOK -> "book";
      case PAPER -> "article";
      case STANDARD, GOVERNMENT -> "techreport";
      case CATALOGUE -> "manual";
      default -> "misc";
    };
  }

  private static String cslType(DocumentKind kind) {
    return switch (kind) {
      case HANDBOOK, TEXTBOOK, CATALOGUE -> "book";
      case PAPER -> "article-journal";
      case STANDARD -> "standard";
      case GOVERNMENT -> "report";
      case SOFTWARE -> "software";
      case DATA_LISTING -> "dataset";
      default -> "webpage";
    };
  }
}

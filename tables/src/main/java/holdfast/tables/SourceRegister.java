// SPDX-License-Identifier: Apache-2.0
package holdfast.tables;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;

/** The documents that tables, formulas and checks may cite. Immutable. */
public final class SourceRegister {
  private final Map<String, Document> documents;

  private SourceRegister(Map<String, Document> documents) {
    this.documents = Collections.unmodifiableMap(documents);
  }

  /**
   * Builds a register.
   *
   * @param documents the documents; no id twice
   * @return the register
   * @throws IllegalArgumentException if an id occurs twice
   */
  public static SourceRegister of(Collection<Document> documents) {
    Map<String, Document> map = new LinkedHashMap<>();
    for (Document document : documents) {
      if (map.put(document.id(), document) != null) {
        throw new IllegalArgumentException("document '" + document.id() + "' is registered twice");
      }
    }
    return new SourceRegister(map);
  }

  /**
   * Finds a document.
   *
   * @param id its id
   * @return the document
   * @throws IllegalArgumentException if the register does not hold it
   */
  public Document document(String id) {
    Document found = documents.get(id);
    if (found == null) {
      throw new IllegalArgumentException("document '" + id + "' is not in the register of sources");
    }
    return found;
  }

  /**
   * Whether the register holds a document.
   *
   * @param id the id
   * @return true if it does
   */
  public boolean contains(String id) {
    return documents.containsKey(id);
  }

  /**
   * A place as a reader looks it up: author, short title, year and place of a registered document, for example
   * {@code "NTN, Needle roller bearings catalogue 2300/E, year unknown, table 2.4 [published]"}.
   *
   * @param source the place
   * @return the citation; with the bare id if this register does not hold the document
   */
  public String cite(SourceRef source) {
    return citation(source.document()) + ", " + source.locator() + " [" + source.provenance() + "]";
  }

  /**
   * Author, short title and year of a document.
   *
   * @param id its id
   * @return the citation; the id itself if this register does not hold the document
   */
  public String citation(String id) {
    return contains(id) ? document(id).citation() : id;
  }

  /**
   * Mark of a document in names of files and in links: its id in small letters, everything but letters and digits a hyphen.
   * Sheets and the audit use the same marks.
   *
   * @param id its id
   * @return for example {@code "iso-286-1-2010"} of {@code "ISO 286-1:2010"}
   */
  public static String mark(String id) {
    Objects.requireNonNull(id, "id");
    return id.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
  }

  /**
   * All documents in the order of the register.
   *
   * @return an unmodifiable view
   */
  public Collection<Document> documents() {
    return documents.values();
  }
}

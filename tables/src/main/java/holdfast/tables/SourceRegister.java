// SPDX-License-Identifier: Apache-2.0
package holdfast.tables;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

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
   * All documents in the order of the register.
   *
   * @return an unmodifiable view
   */
  public Collection<Document> documents() {
    return documents.values();
  }
}

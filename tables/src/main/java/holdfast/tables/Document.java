// SPDX-License-Identifier: Apache-2.0
package holdfast.tables;

import java.io.Serializable;

/**
 * One entry of the register of documents. A blank id, title or kind is refused, and what cannot be printed.
 *
 * @param id the key by which tables, formulas and checks cite it, for example {@code "ISO 286-1:2010"}
 * @param title author and title, as they would be cited
 * @param kind what it is: standard, handbook, textbook, government, catalogue, paper, reference page, software, derivation
 * @param note what was taken from it, and how it reached us
 */
public record Document(String id, String title, String kind, String note) implements Serializable {
  public Document {
    if (id.isBlank() || title.isBlank() || kind.isBlank()) {
      throw new IllegalArgumentException("document '" + id + "': id, title and kind must not be blank");
    }
    String fault = Printable.fault(id + title + kind + note);
    if (fault != null) {
      throw new IllegalArgumentException("document '" + id + "': " + fault);
    }
  }
}

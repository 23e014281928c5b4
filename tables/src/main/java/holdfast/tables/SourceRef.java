// SPDX-License-Identifier: Apache-2.0
package holdfast.tables;

import java.io.Serializable;

/**
 * A place in a document, and how what stands there reached us. A blank document or locator is refused.
 *
 * @param document id of the document in the {@link SourceRegister}
 * @param locator clause, table, equation or page; never blank
 * @param provenance how it reached us
 */
public record SourceRef(String document, String locator, Provenance provenance) implements Serializable {
  public SourceRef {
    if (document.isBlank() || locator.isBlank()) {
      throw new IllegalArgumentException("source '" + document + "', '" + locator + "': document and locator must not be blank");
    }
  }

  /**
   * A place that was found in print.
   *
   * @param document id of the document
   * @param locator clause, table, equation or page
   * @return the reference, with provenance published
   */
  public static SourceRef published(String document, String locator) {
    return new SourceRef(document, locator, Provenance.PUBLISHED);
  }

  /**
   * A relation derived in this project.
   *
   * @param statement what it was derived from, in one line
   * @return the reference, with provenance derived
   */
  public static SourceRef derived(String statement) {
    return new SourceRef("derivation", statement, Provenance.DERIVED);
  }

  /**
   * A place that is recalled and was not found in print.
   *
   * @param document id of the document
   * @param locator clause, table, equation or page
   * @return the reference, with provenance memory
   */
  public static SourceRef memory(String document, String locator) {
    return new SourceRef(document, locator, Provenance.MEMORY);
  }

  /**
   * Trade practice that no publication states.
   *
   * @param statement the practice, in one line
   * @return the reference, with provenance common practice
   */
  public static SourceRef commonPractice(String statement) {
    return new SourceRef("common practice", statement, Provenance.COMMON_PRACTICE);
  }

  @Override
  public String toString() {
    return document + ", " + locator + " [" + provenance + "]";
  }
}

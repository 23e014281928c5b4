// SPDX-License-Identifier: Apache-2.0
package holdfast.tables;

import java.util.Locale;

/** How a value, a formula or a table reached this project. */
public enum Provenance {
  /** Found in a publication or in a printed reprint of it; the source names where. */
  PUBLISHED("published"),
  /** Held by a public data listing whose own origin is not stated: weaker than print; the row names the listing. */
  LISTING("listing"),
  /** Derived from first principles or from published values; the derivation is stated. */
  DERIVED("derived"),
  /** Computed with a general-purpose library or solver, whose version is stated. */
  REFERENCE_COMPUTATION("reference computation"),
  /** Trade practice without a publication behind it. */
  COMMON_PRACTICE("common practice"),
  /** Recalled from a document that was not at hand, and not found in print. */
  MEMORY("memory");

  private final String label;

  Provenance(String label) {
    this.label = label;
  }

  /**
   * The words used in tables and reports.
   *
   * @return the label, for example {@code "common practice"}
   */
  public String label() {
    return label;
  }

  /**
   * Reads a label.
   *
   * @param text one of the labels, in any case
   * @return the provenance
   * @throws IllegalArgumentException if the text is none of them
   */
  public static Provenance of(String text) {
    String wanted = text.strip().toLowerCase(Locale.ROOT);
    for (Provenance candidate : values()) {
      if (candidate.label.equals(wanted)) {
        return candidate;
      }
    }
    throw new IllegalArgumentException(
        "provenance '" + text + "' is not one of: published, listing, derived, reference computation, common practice, memory");
  }

  @Override
  public String toString() {
    return label;
  }
}

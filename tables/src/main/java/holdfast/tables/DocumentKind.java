// SPDX-License-Identifier: Apache-2.0
package holdfast.tables;

import java.util.Arrays;
import java.util.stream.Collectors;

/** What an entry of the register is. */
public enum DocumentKind {
  /** A standard or technical specification. */
  STANDARD("standard", true),
  /** A handbook of the trade. */
  HANDBOOK("handbook", true),
  /** A textbook. */
  TEXTBOOK("textbook", true),
  /** A publication of a public authority. */
  GOVERNMENT("government", true),
  /** A catalogue or manual of a maker. */
  CATALOGUE("catalogue", true),
  /** A paper in a journal or magazine. */
  PAPER("paper", true),
  /** A page of reference values, printed or on the web. */
  REFERENCE_PAGE("reference page", true),
  /** Notes or slides of a course. */
  LECTURE_NOTES("lecture notes", true),
  /** A question with its solution. */
  WORKED_EXAMPLE("worked example", true),
  /** A table in a public repository or data file whose own origin is seldom stated: weaker than print. */
  DATA_LISTING("data listing", true),
  /** A list or report of one's own house. */
  HOUSE("house document", true),
  /** A general-purpose library or solver. */
  SOFTWARE("software", true),
  /** A model computed for this project with general-purpose software. */
  OWN_MODEL("own model", false),
  /** A derivation of this project. */
  DERIVATION("derivation", false),
  /** Trade practice without a publication. */
  COMMON_PRACTICE("common practice", false),
  /** Values of several documents, each named beside its row. */
  COLLECTION("collection", false);

  private final String label;
  private final boolean publication;

  DocumentKind(String label, boolean publication) {
    this.label = label;
    this.publication = publication;
  }

  /**
   * The words used in registers and reports.
   *
   * @return the label, for example {@code "reference page"}
   */
  public String label() {
    return label;
  }

  /**
   * Whether it is a work that someone outside this project made and that can be looked up.
   *
   * @return false for derivations, common practice, collections and own models
   */
  public boolean publication() {
    return publication;
  }

  /**
   * Reads a label.
   *
   * @param label one of the labels
   * @return the kind
   * @throws IllegalArgumentException if it is none of them
   */
  public static DocumentKind of(String label) {
    return Arrays.stream(values())
        .filter(kind -> kind.label.equals(label))
        .findFirst()
        .orElseThrow(
            () -> new IllegalArgumentException("kind '" + label + "' is none of: "
                + Arrays.stream(values()).map(DocumentKind::label).collect(Collectors.joining(", "))));
  }

  @Override
  public String toString() {
    return label;
  }
}

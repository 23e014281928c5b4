// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.tables.SourceRef;
import holdfast.trace.Warning;
import java.util.List;

/** Where a value that describes a roller comes from. */
public enum ValueOrigin {
  /** The maker of the roller states it. */
  STATED("stated by the maker"),
  /** Measured on a roller of this kind, opened or cut. */
  MEASURED("measured"),
  /** Estimated from outside dimensions, or assumed. */
  ESTIMATED("estimated");

  private static final SourceRef RATINGS = SourceRef.commonPractice("as stated for this roller");

  private final String words;

  ValueOrigin(String words) {
    this.words = words;
  }

  /**
   * What the reader must know of load ratings with this origin.
   *
   * @return one warning if they are estimated; else empty
   */
  List<Warning> warnings() {
    return this == ESTIMATED
        ? List.of(
            new Warning("ratings-estimated", "the load ratings are estimated from geometry, not stated by the maker: ask the"
                + " maker before life or limits decide anything", RATINGS))
        : List.of();
  }

  /** The origin in words, for example {@code "stated by the maker"}. */
  @Override
  public String toString() {
    return words;
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

/** Where a value of the inside of a roller comes from. */
public enum InteriorOrigin {
  /** The maker of the roller states it. */
  STATED("stated by the maker"),
  /** Measured on a roller of this kind, opened or cut. */
  MEASURED("measured"),
  /** Estimated from outside dimensions, or assumed. */
  ESTIMATED("estimated");

  private final String words;

  InteriorOrigin(String words) {
    this.words = words;
  }

  /** The origin in words, for example {@code "stated by the maker"}. */
  @Override
  public String toString() {
    return words;
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.tables;

/** A table set is not the edition that was asked for, or cannot stand in for the one of the library. */
public final class EditionException extends IllegalStateException {
  private static final long serialVersionUID = 1L;

  private final Edition wanted;
  private final Edition found;

  EditionException(Edition wanted, Edition found, String reason) {
    super(reason + "; wanted: " + wanted + "; found: " + found);
    this.wanted = wanted;
    this.found = found;
  }

  /**
   * The edition that was asked for.
   *
   * @return version and digest
   */
  public Edition wanted() {
    return wanted;
  }

  /**
   * The edition that is there.
   *
   * @return version and digest
   */
  public Edition found() {
    return found;
  }
}

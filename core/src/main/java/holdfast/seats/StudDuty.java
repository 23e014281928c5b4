// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

/** How the load on a stud changes. */
public enum StudDuty {
  /** Rests, or changes too seldom to matter. */
  STATIC("static"),
  /** From zero to the load and back, always in one direction. */
  REPEATED("repeated"),
  /** In both directions. */
  REVERSED("reversed");

  private final String label;

  StudDuty(String label) {
    this.label = label;
  }

  /**
   * The word used in tables and reports.
   *
   * @return the label
   */
  public String label() {
    return label;
  }

  @Override
  public String toString() {
    return label;
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.lubrication;

/** How the head of the stud is held while the nut is turned. */
public enum HeadForm {
  /** A slot for a screwdriver with a rounded tip. */
  SLOT("slot"),
  /** An outside hexagon. */
  HEXAGON("hexagon"),
  /** A hexagon socket. */
  HEXAGON_SOCKET("hexagon socket");

  private final String label;

  HeadForm(String label) {
    this.label = label;
  }

  /** For example {@code "hexagon socket"}. */
  @Override
  public String toString() {
    return label;
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings.reference;

/** How a ring moves against the direction of the load. */
public enum RingMotion {
  /** The ring rotates against the load: every place of its raceway passes the load zone. */
  ROTATING("rotates against the load"),
  /** The ring stands still against the load: one place of its raceway always carries the most. */
  STATIONARY("stands still under the load");

  private final String words;

  RingMotion(String words) {
    this.words = words;
  }

  boolean rotates() {
    return this == ROTATING;
  }

  /** The motion in words. */
  @Override
  public String toString() {
    return words;
  }
}

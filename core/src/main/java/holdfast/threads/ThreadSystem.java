// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

/** System of screw threads. Both have the 60° profile of ISO 68-1. */
public enum ThreadSystem {
  /** ISO metric screw thread, M. */
  METRIC("ISO metric"),
  /** Unified inch screw thread, UN. */
  UNIFIED("unified inch");

  private final String label;

  ThreadSystem(String label) {
    this.label = label;
  }

  /** The words used in texts. */
  @Override
  public String toString() {
    return label;
  }
}

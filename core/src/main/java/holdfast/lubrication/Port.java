// SPDX-License-Identifier: Apache-2.0
package holdfast.lubrication;

/** Where a stud-type track roller can have an opening for grease. */
public enum Port {
  /** In the head, at the roller's end of the stud. */
  HEAD("head end"),
  /** In the end of the thread. */
  THREAD_END("thread end"),
  /** Across the shank, where the machine member covers it. */
  RADIAL("radial hole in the shank");

  private final String label;

  Port(String label) {
    this.label = label;
  }

  /** For example {@code "thread end"}. */
  @Override
  public String toString() {
    return label;
  }
}

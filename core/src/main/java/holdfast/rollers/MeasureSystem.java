// SPDX-License-Identifier: Apache-2.0
package holdfast.rollers;

/** The system of measures in which a roller is made. */
public enum MeasureSystem {
  /** Millimetres, metric threads. */
  METRIC("metric"),
  /** Inches, unified threads. */
  INCH("inch");

  private final String label;

  MeasureSystem(String label) {
    this.label = label;
  }

  /** The word used in tables, for example {@code "metric"}. */
  @Override
  public String toString() {
    return label;
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

/** How torsion is spread over a section when its stress is computed. */
public enum TorsionModel {
  /** Fully plastic, WP = (π/12)·(D³ − di³): the section yields as a whole. Reproduces the printed assembly tables. */
  PLASTIC("fully plastic torsion"),
  /** Elastic, WP = (π/16)·(D⁴ − di⁴)/D: first yield at the surface; the cautious choice for hardened studs. */
  ELASTIC("elastic torsion");

  private final String label;

  TorsionModel(String label) {
    this.label = label;
  }

  /** The words used in texts. */
  @Override
  public String toString() {
    return label;
  }
}

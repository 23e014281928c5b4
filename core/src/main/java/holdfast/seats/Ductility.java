// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

/** How a material fails, which decides the limit that a fit is held to. */
public enum Ductility {
  /** Breaks without yielding: the greatest tensile stress is held against the tensile strength. */
  BRITTLE("brittle"),
  /** Yields, but not far enough (elongation under about 10 %) for a fit that yields on purpose. */
  LIMITED("limited ductility"),
  /** Yields far (elongation from about 10 %). */
  DUCTILE("ductile");

  private final String label;

  Ductility(String label) {
    this.label = label;
  }

  @Override
  public String toString() {
    return label;
  }
}

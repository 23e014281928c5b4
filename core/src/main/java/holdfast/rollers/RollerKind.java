// SPDX-License-Identifier: Apache-2.0
package holdfast.rollers;

/** Kinds of stud-type track rollers by their rolling elements, with the published limits of d1·n. */
public enum RollerKind {
  /** Needle rollers in a cage. */
  CAGED_NEEDLE("caged needle rollers", 84_000, 140_000),
  /** Full complement of needle rollers. */
  FULL_COMPLEMENT_NEEDLE("full complement of needle rollers", 42_000, 70_000),
  /** Two rows of cylindrical rollers, full complement. */
  DOUBLE_ROW_CYLINDRICAL("two rows of cylindrical rollers", 66_000, 110_000);

  private final String label;
  private final double grease;
  private final double oil;

  RollerKind(String label, double grease, double oil) {
    this.label = label;
    this.grease = grease;
    this.oil = oil;
  }

  /**
   * Limit of d1·n (stud diameter times speed) under radial load alone.
   *
   * @param oilLubricated true for oil, false for grease
   * @return the limit in mm·rpm
   */
  public double speedFactor(boolean oilLubricated) {
    return oilLubricated ? oil : grease;
  }

  /**
   * Whether the rollers stand side by side without a cage.
   *
   * @return true for a full complement
   */
  public boolean fullComplement() {
    return this != CAGED_NEEDLE;
  }

  /** For example {@code "caged needle rollers"}. */
  @Override
  public String toString() {
    return label;
  }
}

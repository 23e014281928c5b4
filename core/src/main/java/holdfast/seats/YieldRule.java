// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

/** The theory of yield that sets the elastic limit of a ductile part. */
public enum YieldRule {
  /** Distortion energy, exact in plane stress. */
  VON_MISES("von Mises"),
  /** Greatest shear stress. */
  TRESCA("Tresca"),
  /** Greatest shear stress times √3/2, the form of DIN 7190: less strict than Tresca throughout. */
  MODIFIED_SHEAR("modified shear stress (DIN 7190)");

  private final String label;

  YieldRule(String label) {
    this.label = label;
  }

  @Override
  public String toString() {
    return label;
  }
}

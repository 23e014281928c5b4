// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

/** What a tolerance class applies to. Capital letter codes belong to holes, small ones to shafts. */
public enum Feature {
  /** An internal feature of size. */
  HOLE("hole", 0),
  /** An external feature of size. */
  SHAFT("shaft", 1);

  private final String label;
  /** Place in the arrays of the kernel. */
  final int index;

  Feature(String label, int index) {
    this.label = label;
    this.index = index;
  }

  @Override
  public String toString() {
    return label;
  }
}

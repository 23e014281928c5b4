// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

/** A change of section that concentrates stress in a stud. */
public enum StudNotch {
  /** Shoulder fillet between a greater and a smaller diameter. */
  FILLET("fillet"),
  /** Relief groove with a round bottom. */
  GROOVE("groove");

  private final String label;

  StudNotch(String label) {
    this.label = label;
  }

  /** The word used in reports. */
  @Override
  public String toString() {
    return label;
  }

  /** How a notched stud is loaded. */
  public enum Loading {
    /** Bending. */
    BENDING("bending"),
    /** Tension along the axis. */
    TENSION("tension"),
    /** Torsion. */
    TORSION("torsion");

    private final String label;

    Loading(String label) {
      this.label = label;
    }

    /** The word used in reports. */
    @Override
    public String toString() {
      return label;
    }
  }
}

package holdfast.seats;

import holdfast.quantity.Check;
import holdfast.quantity.Length;
import java.io.Serializable;

/**
 * Shape of a housing round its bore.
 *
 * @param kind kind of shape
 * @param size outside diameter of a ring; without meaning for a wide plate
 */
public record HousingShape(Kind kind, Length size) implements Serializable {
  /** Kinds of housings. */
  public enum Kind {
    /** A ring concentric with the bore: a bush, a hub, a lever eye. */
    RING("ring"),
    /** So wide on all sides that its outline does not matter. */
    WIDE("wide plate");

    private final String label;

    Kind(String label) {
      this.label = label;
    }

    @Override
    public String toString() {
      return label;
    }
  }

  // Refuses shapes without a size.
  public HousingShape {
    if (kind != Kind.WIDE) {
      Check.positive(size.mm(), "size of the housing", "mm", "the housing needs a wall");
    }
  }

  /**
   * A ring, hub or lever eye.
   *
   * @param outside its outside diameter
   * @return the shape
   */
  public static HousingShape ring(Length outside) {
    return new HousingShape(Kind.RING, outside);
  }

  /**
   * A housing so wide on all sides that its outline does not matter.
   *
   * @return the shape
   */
  public static HousingShape wide() {
    return new HousingShape(Kind.WIDE, new Length(0));
  }

  /** Outside diameter in mm of the ring that grows under the joint pressure as this housing does; may be infinite. */
  double pressureDiameter(double joint) {
    return kind == Kind.WIDE ? Double.POSITIVE_INFINITY : size.mm();
  }

  /** Greatest hoop stress at the bore over the joint pressure. */
  double hoopFactor(double joint) {
    return ThickRingKernel.hoopStress(joint / 2, joint / 2, pressureDiameter(joint) / 2, 1, 0);
  }

  @Override
  public String toString() {
    return kind == Kind.WIDE ? kind.toString() : kind + " " + size;
  }
}

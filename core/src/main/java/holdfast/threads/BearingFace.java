// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.Area;
import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import java.io.Serializable;
import java.util.Objects;

/**
 * The ring on which a nut or head turns.
 *
 * @param outer outer diameter dW
 * @param inner inner diameter DKi: the largest of hole, chamfer and washer bore; the outer is at least a twentieth greater
 * @param frictionDiameter diameter DKm at which the friction acts
 */
public record BearingFace(Length outer, Length inner, Length frictionDiameter) implements Serializable {
  /** Least outer over inner diameter. Standard hexagons over a medium hole have 1.2 and more. */
  public static final double LEAST_RATIO = 1.05;

  // Refuses an empty ring and one that is no more than an edge.
  public BearingFace {
    Objects.requireNonNull(outer, "outer");
    Objects.requireNonNull(inner, "inner");
    Objects.requireNonNull(frictionDiameter, "frictionDiameter");
    TighteningKernel.checkRing(outer.mm(), inner.mm());
    if (outer.mm() < LEAST_RATIO * inner.mm()) {
      throw new InputException(
          "outer face diameter dW",
          outer.toString(),
          "at least " + LEAST_RATIO + " times the inner diameter " + inner,
          "a nut needs something to stand on; standard hexagons have 1.2 and more");
    }
    Check.within(
        frictionDiameter.mm(), inner.mm(), outer.mm(), "friction diameter DKm", "mm", "friction acts within the ring");
  }

  /**
   * A ring with the mean diameter as the printed assembly tables take it.
   *
   * @param outer outer diameter dW
   * @param inner inner diameter DKi, less than dW
   * @return the face with DKm = (dW + DKi)/2
   */
  public static BearingFace of(Length outer, Length inner) {
    Objects.requireNonNull(outer, "outer");
    Objects.requireNonNull(inner, "inner");
    return new BearingFace(outer, inner, new Length(TighteningKernel.meanFaceDiameter(outer.mm(), inner.mm())));
  }

  /**
   * A ring under uniform pressure.
   *
   * @param outer outer diameter dW
   * @param inner inner diameter DKi, less than dW
   * @return the face with DKm = (2/3)·(dW³ − DKi³)/(dW² − DKi²)
   */
  public static BearingFace ofUniformPressure(Length outer, Length inner) {
    Objects.requireNonNull(outer, "outer");
    Objects.requireNonNull(inner, "inner");
    return new BearingFace(outer, inner, new Length(TighteningKernel.uniformPressureDiameter(outer.mm(), inner.mm())));
  }

  /**
   * Area of the ring.
   *
   * @return (π/4)·(dW² − DKi²)
   */
  public Area area() {
    return new Area(ThreadGeometryKernel.ringArea(outer.mm(), inner.mm()));
  }

  /** Outer and inner diameter. */
  @Override
  public String toString() {
    return "face " + outer + " / " + inner;
  }
}

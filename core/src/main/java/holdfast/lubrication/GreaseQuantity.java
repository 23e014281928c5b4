// SPDX-License-Identifier: Apache-2.0
package holdfast.lubrication;

import holdfast.quantity.Length;
import holdfast.quantity.Mass;
import holdfast.rollers.RollerSize;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Grease for one relubrication.
 *
 * @param outsideDiameter outside diameter D, over 0
 * @param width width B, over 0
 * @param route how the grease enters
 */
public record GreaseQuantity(Length outsideDiameter, Length width, GreaseRoute route) implements Traced, Serializable {
  // Refuses what the kernel refuses at once.
  public GreaseQuantity {
    Objects.requireNonNull(outsideDiameter, "outsideDiameter");
    Objects.requireNonNull(width, "width");
    Objects.requireNonNull(route, "route");
    route.gram(outsideDiameter.mm(), width.mm());
  }

  /**
   * For a stud roller that is fed through its stud.
   *
   * @param outsideDiameter outside diameter D, over 0
   * @param ringWidth width B of the ring, over 0
   * @return the quantity by the rule for feeding through a ring, the nearest published case
   * @throws holdfast.quantity.InputException if a size is not above zero
   */
  public static GreaseQuantity throughStud(Length outsideDiameter, Length ringWidth) {
    Objects.requireNonNull(ringWidth, "ringWidth");
    return new GreaseQuantity(outsideDiameter, ringWidth, GreaseRoute.THROUGH_RING);
  }

  /**
   * For a tabulated stud roller that is fed through its stud.
   *
   * @param size the size
   * @return the quantity
   */
  public static GreaseQuantity throughStud(RollerSize size) {
    Objects.requireNonNull(size, "size");
    return throughStud(size.outsideDiameter(), size.ringWidth());
  }

  /**
   * For a bearing that is fed from the side.
   *
   * @param outsideDiameter outside diameter D, over 0
   * @param width width B, over 0
   * @return the quantity
   * @throws holdfast.quantity.InputException if a size is not above zero
   */
  public static GreaseQuantity fromSide(Length outsideDiameter, Length width) {
    return new GreaseQuantity(outsideDiameter, width, GreaseRoute.FROM_SIDE);
  }

  /**
   * The grease.
   *
   * @return its mass
   */
  public Mass mass() {
    return new Mass(route.gram(outsideDiameter.mm(), width.mm()));
  }

  @Override
  public Derivation explain() {
    return Derivation.of("Grease for one relubrication, " + route)
        .step("Gp", "grease", route.expression(), mass().gram(), "g", route.source(), "D = " + outsideDiameter, "B = " + width)
        .build();
  }

  @Override
  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>();
    if (route == GreaseRoute.THROUGH_RING) {
      warnings.add(new Warning("nearest-case",
          "the rule is for bearings fed through holes in a ring, the nearest published case for a"
          + " roller fed through its stud; feed slowly with the roller turning until fresh grease shows", route.source()));
    }
    warnings.add(new Warning("share-of-first-fill", "another catalogue takes 50 % to 80 % of the first fill",
        SourceRef.published("Rolling bearings catalogue HR 1", "relubrication, share of the initial quantity")));
    return List.copyOf(warnings);
  }

  /** For example {@code "1.26 g"}. */
  @Override
  public String toString() {
    return mass().toString();
  }
}

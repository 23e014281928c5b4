// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Check;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import holdfast.tables.Provenance;
import holdfast.tables.SourceRef;
import holdfast.trace.Message;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Shape of a housing round its bore.
 *
 * @param kind kind of shape
 * @param size outside diameter of a ring, distance from the bore's centre to an edge, side of a block; without meaning
 *     for a wide plate
 */
public record HousingShape(Kind kind, Length size) implements Serializable {
  /** Kinds of housings. */
  public enum Kind {
    /** A ring concentric with the bore: a bush, a hub, a lever eye. */
    RING("ring"),
    /** So wide on all sides that its outline does not matter. */
    WIDE("wide plate"),
    /** A wide plate with one straight edge near the bore. */
    EDGE("plate with an edge at"),
    /** A square block with the bore in its middle. */
    BLOCK("square block");

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
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(size, "size");
    if (kind != Kind.WIDE) {
      Check.positive(size.mm(), "size of the housing", "mm", "the housing needs a wall");
    }
  }

  /**
   * A ring, hub or bush.
   *
   * @param outside its outside diameter
   * @return the shape
   */
  public static HousingShape ring(Length outside) {
    Objects.requireNonNull(outside, "outside");
    return new HousingShape(Kind.RING, outside);
  }

  /**
   * The eye of a lever: taken as the ring that its round outline makes; the arm only stiffens it.
   *
   * @param outside outside diameter of the eye
   * @return the shape
   */
  public static HousingShape leverEye(Length outside) {
    Objects.requireNonNull(outside, "outside");
    return ring(outside);
  }

  /**
   * A housing so wide on all sides that its outline does not matter.
   *
   * @return the shape
   */
  public static HousingShape wide() {
    return new HousingShape(Kind.WIDE, new Length(0));
  }

  /**
   * A wide plate or block with one straight edge near the bore.
   *
   * @param distance from the centre of the bore to the edge; at least 0.75 joint diameters
   * @return the shape
   */
  public static HousingShape nearEdge(Length distance) {
    Objects.requireNonNull(distance, "distance");
    return new HousingShape(Kind.EDGE, distance);
  }

  /**
   * A square block with the bore in its middle.
   *
   * @param side its side; at least 1.5 joint diameters
   * @return the shape
   */
  public static HousingShape block(Length side) {
    Objects.requireNonNull(side, "side");
    return new HousingShape(Kind.BLOCK, side);
  }

  /**
   * Least wall between bore and outline over the joint diameter.
   *
   * @param joint joint diameter
   * @return the wall factor; infinite for a wide plate
   * @throws holdfast.quantity.InputException if the joint has no size
   */
  public double wallFactor(Length joint) {
    Objects.requireNonNull(joint, "joint");
    double d = SeatChecks.joint(joint.mm());
    return switch (kind) {
      case WIDE -> Double.POSITIVE_INFINITY;
      case EDGE -> size.mm() / d - 0.5;
      case RING, BLOCK -> (size.mm() / d - 1) / 2;
    };
  }

  /**
   * Outside diameter of the ring that yields under the joint pressure as this housing does.
   *
   * @param joint joint diameter
   * @return diameter in mm; infinite for a wide plate
   * @throws holdfast.quantity.InputException if an edge or block is too small for the joint
   */
  public double equivalentDiameter(Length joint) {
    Objects.requireNonNull(joint, "joint");
    return pressureDiameter(SeatChecks.joint(joint.mm()));
  }

  double pressureDiameter(double joint) {
    return switch (kind) {
      case WIDE -> Double.POSITIVE_INFINITY;
      case RING -> size.mm();
      case EDGE -> joint * HousingShapeKernel.edgeEquivalent(size.mm() / joint);
      case BLOCK -> joint * HousingShapeKernel.squareEquivalent(size.mm() / (2 * joint));
    };
  }

  /** Greatest hoop stress at the bore over the joint pressure. */
  double hoopFactor(double joint) {
    return switch (kind) {
      case WIDE -> 1;
      case RING -> ThickRingKernel.hoopStress(joint / 2, joint / 2, size.mm() / 2, 1, 0);
      case EDGE -> HousingShapeKernel.edgeHoop(size.mm() / joint);
      case BLOCK -> HousingShapeKernel.squareHoop(size.mm() / (2 * joint));
    };
  }

  /** Greatest stress along the outline over the joint pressure; 0 for a wide plate. */
  double outlineFactor(double joint) {
    return switch (kind) {
      case WIDE -> 0;
      case RING -> ThickRingKernel.hoopStress(size.mm() / 2, joint / 2, size.mm() / 2, 1, 0);
      case EDGE -> HousingShapeKernel.edgeOutline(size.mm() / joint);
      case BLOCK -> HousingShapeKernel.squareOutline(size.mm() / (2 * joint));
    };
  }

  /** Distance from the axis to the nearest outline in mm. */
  double outlineRadius() {
    return kind == Kind.EDGE ? size.mm() : size.mm() / 2;
  }

  List<Warning> warnings(Length joint) {
    List<Warning> warnings = new ArrayList<>();
    if (wallFactor(joint) < 0.5) {
      warnings.add(
          new Warning(
              "thin-wall",
              "the wall is only "
                  + Numbers.significant(wallFactor(joint), 3)
                  + " joint diameters; keep at least 0.5 all round, or compute the housing with finite elements",
              SourceRef.commonPractice("wall of at least half a diameter, edge distance of at least one diameter")));
    }
    double x = outlineRadius() / joint.mm();
    if ((kind == Kind.EDGE || kind == Kind.BLOCK) && x > HousingShapeKernel.GREATEST) {
      warnings.add(
          new Warning(
              "shape-beyond-results",
              "the outline is " + Numbers.significant(x, 3) + " diameters away; results end at 3, the last ratio is kept",
              new SourceRef(
                  "plane-stress housing models",
                  "half size 3",
                  Provenance.REFERENCE_COMPUTATION)));
    }
    return warnings;
  }

  /** The shape in words, its size as a quantity. */
  Message words() {
    return kind == Kind.WIDE ? Message.of(kind) : Message.of(kind, " ", size);
  }

  @Override
  public String toString() {
    return words().toString();
  }
}

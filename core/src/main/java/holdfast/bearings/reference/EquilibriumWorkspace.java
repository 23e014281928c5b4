// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings.reference;

import holdfast.quantity.Check;

/**
 * Working memory of a solve: arrangement of the rolling elements, unknowns, generalised forces and tangent stiffness.
 * Reused between solves so that a solve allocates nothing. Not thread-safe: one for each thread.
 */
public abstract sealed class EquilibriumWorkspace permits LaminaWorkspace, BallWorkspace {
  /** Greatest number of unknowns. */
  static final int MOST = 5;

  final int unknowns;
  /** Part of the unknowns at which the constants of the elements were taken; see {@link #rebase}. */
  final double[] base = new double[MOST];
  /** The rest of the unknowns. */
  final double[] step = new double[MOST];
  /** Generalised forces of the contacts on the unknowns. */
  final double[] force = new double[MOST];
  /** Derivative of the forces by the unknowns, row by row; symmetric and positive semidefinite. */
  final double[] tangent = new double[MOST * MOST];
  /** Sum of the loads on all elements, by which rounding is judged. */
  double magnitude;
  /** Applied generalised forces. */
  final double[] applied = new double[MOST];

  final double[] direction = new double[MOST];
  final double[] start = new double[MOST];
  final double[] gradient = new double[MOST];
  final double[] matrix = new double[MOST * MOST];
  final int[] active = new int[MOST];
  int activeCount;

  int elements;
  double firstAngle;
  /** The elements stand symmetrically about the load direction. */
  boolean symmetric;
  /** Only one element of each symmetric pair is evaluated in this solve. */
  boolean halved;
  /** Evaluated elements: all, or one of each pair. */
  int evaluated;
  final double[] cos;
  final double[] sin;
  final int[] weight;

  double residual;
  int iterations;

  EquilibriumWorkspace(int unknowns, int mostElements) {
    this.unknowns = unknowns;
    this.cos = new double[mostElements];
    this.sin = new double[mostElements];
    this.weight = new int[mostElements];
  }

  /** Computes {@link #force} and {@link #tangent} at base + step. */
  abstract void evaluate();

  /** Takes the constants of the elements at {@link #base}, so that small steps from there are resolved. */
  abstract void rebase();

  /** Length in mm by which a tilt counts as a displacement: the last two unknowns are tilts, along and across the load. */
  abstract double lever();

  /** Places the elements. Angles are measured from the load direction. */
  final void arrange(int z, double first) {
    elements = z;
    firstAngle = first;
    double pitch = 2 * Math.PI / z;
    symmetric = first == 0 || first == 0.5 * pitch;
    for (int j = 0; j < z; j++) {
      double angle = first + pitch * j;
      cos[j] = Math.cos(angle);
      sin[j] = Math.sin(angle);
    }
    if (symmetric) {
      for (int j = 0; j < z; j++) {
        int mirror = mirror(j);
        if (mirror > j) {
          cos[mirror] = cos[j];
          sin[mirror] = -sin[j];
        } else if (mirror == j) {
          sin[j] = 0;
        }
      }
    }
  }

  /** Chooses whether one element of each pair stands for both. */
  final void halve(boolean wanted) {
    halved = wanted && symmetric;
    evaluated = 0;
    for (int j = 0; j < elements; j++) {
      int mirror = halved ? mirror(j) : j;
      if (mirror >= j) {
        // Elements before the middle come first in both arrangements, so the index of an element is kept.
        weight[evaluated++] = mirror > j ? 2 : 1;
      }
    }
  }

  private int mirror(int j) {
    return firstAngle == 0 ? (elements - j) % elements : elements - 1 - j;
  }

  /** The evaluated element that stands for an element. */
  final int representative(int j) {
    return halved ? Math.min(j, mirror(j)) : j;
  }

  /** The element that was evaluated for one of those set up. */
  final int checked(int element) {
    Check.within(element, 0, elements - 1.0, "number of the rolling element", "", "they are counted from 0");
    return representative(element);
  }

  /** Refuses to speak of an equilibrium that was not looked for. */
  final void requireSolved() {
    if (iterations == 0) {
      throw Inputs.refused("workspace", "unsolved", "solved", "the answer follows from the equilibrium");
    }
  }

  final void activate(boolean along, boolean across, boolean axial, boolean tiltAlong, boolean tiltAcross) {
    activeCount = 0;
    int index = 0;
    index = activateIf(along, index);
    index = activateIf(across, index);
    if (unknowns == MOST) {
      index = activateIf(axial, index);
    }
    index = activateIf(tiltAlong, index);
    activateIf(tiltAcross, index);
  }

  private int activateIf(boolean wanted, int index) {
    if (wanted) {
      active[activeCount++] = index;
    }
    return index + 1;
  }

  /**
   * How far the last solve missed equilibrium.
   *
   * @return norm of the missing force over the applied load; missing moments count as forces at the ends of the rollers
   *     or on the circle of groove centres
   */
  public final double residual() {
    return residual;
  }

  /**
   * Effort of the last solve.
   *
   * @return evaluations of all contacts
   */
  public final int iterations() {
    return iterations;
  }

  /**
   * Number of rolling elements of one row.
   *
   * @return Z
   */
  public final int elements() {
    return elements;
  }

  /**
   * Position of a rolling element.
   *
   * @param element index from 0
   * @return angle from the load direction in rad
   */
  public final double angle(int element) {
    checked(element);
    return firstAngle + 2 * Math.PI / elements * element;
  }

  /**
   * Whether the last solve took advantage of symmetry about the load direction.
   *
   * @return true if only one of each pair was evaluated
   */
  public final boolean symmetryUsed() {
    return halved;
  }

  /**
   * Displacement of the rings against each other along the load.
   *
   * @return displacement in mm from the concentric position
   */
  public final double displacement() {
    return base[0] + step[0];
  }

  /**
   * Displacement of the rings against each other across the load.
   *
   * @return displacement in mm from the concentric position
   */
  public final double sideDisplacement() {
    return base[1] + step[1];
  }

  /**
   * Radial stiffness at the solution.
   *
   * @return derivative of the load by the displacement in N/mm, at this tilt, free to move across the load
   */
  public final double radialStiffness() {
    requireSolved();
    return SmallMatrix.condensed(tangent, unknowns, 0, unknowns == MOST ? new int[] {1, 2} : new int[] {1});
  }

  /**
   * Tilt in the plane of the load.
   *
   * @return angle in rad
   */
  public final double tiltAlong() {
    requireSolved();
    return Math.atan((base[unknowns - 2] + step[unknowns - 2]) / lever());
  }

  /**
   * Tilt across the plane of the load.
   *
   * @return angle in rad
   */
  public final double tiltAcross() {
    requireSolved();
    return Math.atan((base[unknowns - 1] + step[unknowns - 1]) / lever());
  }

  /**
   * Moment of the contact loads in the plane of the load.
   *
   * @return moment in N·mm, positive if it acts in the direction of a positive tilt
   */
  public final double momentAlong() {
    return lever() * force[unknowns - 2];
  }

  /**
   * Moment of the contact loads across the plane of the load.
   *
   * @return moment in N·mm
   */
  public final double momentAcross() {
    return lever() * force[unknowns - 1];
  }

  /**
   * Tilt stiffness at the solution.
   *
   * @return derivative of the moment by the tilt in the plane of the load in N·mm/rad, at constant forces
   */
  public abstract double tiltStiffness();
}

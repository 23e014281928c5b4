// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings.reference;

import holdfast.quantity.Check;
import holdfast.tables.Provenance;
import holdfast.tables.Source;
import java.util.Objects;

/**
 * Equilibrium of a radial roller bearing cut into laminae. Lamina k of the roller at angle φ from the load is compressed by
 * {@code d = δ·u - s/2 + x (τ·u) - 2 P(x)}, u = (cos φ, sin φ), δ displacement of the rings, τ tangent of the tilt (both
 * with a part along and a part across the load), s radial clearance, P profile; where d > 0 it carries
 * {@code q = w cL d^(10/9)}, w its share of the length. With the recalled {@code ψ_j = atan(tan ψ cos φ_j)} this is the
 * same expression, because tan ψ_j = τ·u.
 *
 * <p>The loads are the gradient of the convex energy {@code Σ (9/19) w cL d^(19/9)}: force and displacement are monotone, and
 * an equilibrium exists for every load and moment.
 *
 * <p>Not thread-safe through its workspace: one workspace for each thread.
 */
@Source(document = "ISO/TS 16281:2008", locator = "deflection and equilibrium of laminae", provenance = Provenance.MEMORY)
@Source(document = "derivation", locator = "rigid rings: displacement and tilt of one raceway against the other, minimum of a"
    + " convex energy", provenance = Provenance.DERIVED)
public final class LoadDistributionKernel {
  private LoadDistributionKernel() {}

  /**
   * Sets the rollers of a workspace.
   *
   * @param w workspace
   * @param z rollers of one row, 3 up to what the workspace holds
   * @param firstAngle angle of the first roller from the load in rad, 0 or more and under one pitch; 0 and half a pitch make
   *     the bearing symmetrical about the load, which halves the effort
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  public static void rollers(LaminaWorkspace w, int z, double firstAngle) {
    Objects.requireNonNull(w, "w");
    place(w, z, firstAngle);
  }

  static void place(EquilibriumWorkspace w, int z, double firstAngle) {
    Inputs.elements(z);
    Check.within(z, 3, w.cos.length, "number of rolling elements Z", "", "the workspace holds no more");
    Check.within(firstAngle, 0, 2 * Math.PI / z, "angle of the first element", "rad", "elements are one pitch apart");
    w.arrange(z, firstAngle);
  }

  /**
   * Sets the laminae of a workspace.
   *
   * @param w workspace
   * @param n laminae of all rows together, 2 up to what the workspace holds
   * @param x axial positions of their middles in mm from the middle of the bearing, not all 0
   * @param share share of each lamina in the length of its roller, over 0 up to 1; of one row they sum to 1
   * @param drop profile P at these positions in mm, 0 or more
   * @param edgeStressFactor factor f on the lamina load for the life, 1 or more
   * @param stiffness cL of a roller in N/mm^(10/9), over 0
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  public static void laminae(
      LaminaWorkspace w, int n, double[] x, double[] share, double[] drop, double[] edgeStressFactor,
      double stiffness) {
    Objects.requireNonNull(w, "w");
    Objects.requireNonNull(x, "x");
    Objects.requireNonNull(share, "share");
    Objects.requireNonNull(drop, "drop");
    Objects.requireNonNull(edgeStressFactor, "edgeStressFactor");
    Inputs.laminae(n);
    Check.within(n, 2, w.position.length, "number of laminae", "", "the workspace holds no more");
    Check.within(Math.min(Math.min(x.length, share.length), Math.min(drop.length, edgeStressFactor.length)), n,
        Integer.MAX_VALUE, "length of the arrays", "", "one entry a lamina");
    w.stiffness = Check.positive(stiffness, "stiffness of a roller", "N/mm^(10/9)", "a contact is elastic");
    double reach = 0;
    double total = 0;
    for (int k = 0; k < n; k++) {
      reach = Math.max(reach, Math.abs(Check.finite(x[k], "axial position x", "mm")));
    }
    w.reach = Check.within(reach, Inputs.LEAST_SIZE, 10_000, "greatest axial position", "mm",
        "laminae at one place know no tilt");
    for (int k = 0; k < n; k++) {
      w.position[k] = x[k] / reach;
      w.relief[k] = 2 * ProfileKernel.drop(drop[k]);
      w.share[k] = share[k];
      total += share[k];
      double f = Check.within(edgeStressFactor[k], 1, 100, "edge stress factor f", "", "an edge does not unload");
      w.severity[k] = f * share[k] / LaminaKernel.ratingShare(share[k]);
    }
    w.laminae = n;
    w.rows = total;
  }

  /**
   * Solves for the loads at a given tilt. Results are read from the workspace.
   *
   * @param w workspace with rollers and laminae set
   * @param load radial load Fr in N, over 0
   * @param clearance radial clearance s (diametral) in mm; negative for preload
   * @param tiltAlong tilt of one raceway against the other in the plane of the load in rad, -0.2 to 0.2
   * @param tiltAcross tilt across that plane in rad, -0.2 to 0.2
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  public static void tilted(LaminaWorkspace w, double load, double clearance, double tiltAlong, double tiltAcross) {
    Objects.requireNonNull(w, "w");
    prepare(w, load, clearance);
    w.halve(Inputs.tilt(tiltAcross) == 0);
    w.activate(true, !w.halved, false, false, false);
    w.base[2] = w.reach * Math.tan(Inputs.tilt(tiltAlong));
    w.base[3] = w.reach * Math.tan(tiltAcross);
    start(w);
    Equilibrium.solve(w, load, scale(w, load));
  }

  /**
   * Solves for the loads and the tilt at a given moment between the rings. Results are read from the workspace.
   *
   * @param w workspace with rollers and laminae set
   * @param load radial load Fr in N, over 0
   * @param clearance radial clearance s (diametral) in mm; negative for preload
   * @param momentAlong moment in the plane of the load in N·mm
   * @param momentAcross moment across that plane in N·mm
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  public static void underMoment(
      LaminaWorkspace w, double load, double clearance, double momentAlong, double momentAcross) {
    Objects.requireNonNull(w, "w");
    prepare(w, load, clearance);
    w.halve(Check.finite(momentAcross, "moment across the load", "N·mm") == 0);
    w.activate(true, !w.halved, false, true, !w.halved);
    w.applied[2] = Check.finite(momentAlong, "moment in the plane of the load", "N·mm") / w.reach;
    w.applied[3] = momentAcross / w.reach;
    w.base[2] = 0;
    w.base[3] = 0;
    start(w);
    Equilibrium.solve(w, load, scale(w, load));
  }

  private static void prepare(LaminaWorkspace w, double load, double clearance) {
    if (w.elements == 0 || w.laminae == 0) {
      throw Inputs.refused("workspace", "empty", "set up by rollers(...) and laminae(...)", "there is nothing to solve for");
    }
    w.applied[0] = Inputs.load(load);
    w.applied[1] = 0;
    w.clearance = Check.finite(clearance, "radial clearance s", "mm");
  }

  private static void start(LaminaWorkspace w) {
    w.base[0] = w.firstContact(w.base[2], w.base[3]);
    w.base[1] = 0;
  }

  /** Deflection of the most loaded roller if it carried 5 Fr/Z over its whole length. */
  private static double scale(LaminaWorkspace w, double load) {
    return Math.pow(5 * load / (w.elements * w.rows * w.stiffness), 0.9);
  }
}

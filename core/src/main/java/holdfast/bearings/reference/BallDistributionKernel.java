// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings.reference;

import holdfast.quantity.Check;
import holdfast.tables.Provenance;
import holdfast.tables.Source;
import java.util.Objects;

/**
 * Equilibrium of a deep groove ball bearing under radial load, axial load and tilt. The centre of the inner groove is
 * displaced against that of the outer groove by {@code A - s/2 + δ·u} radially and {@code δa + R (τ·u)} axially, with
 * A = ri + re - Dw, R = Dpw/2 + (ri - Dw/2) cos α0, cos α0 = 1 - s/(2A). A ball is compressed by the length of that line
 * less A, and pushes along it, so a tilt enters through the contact angles. Derived from geometry; the energy
 * {@code Σ (2/5) cP d^(5/2)} is convex, so an equilibrium exists.
 *
 * <p>Not thread-safe through its workspace: one workspace for each thread.
 */
@Source(document = "ISO/TS 16281:2008", locator = "deflection and equilibrium of balls", provenance = Provenance.MEMORY)
@Source(document = "derivation", locator = "distance of the groove centres of rigid rings", provenance = Provenance.DERIVED)
public final class BallDistributionKernel {
  private BallDistributionKernel() {}

  /**
   * Sets the balls of a workspace.
   *
   * @param w workspace
   * @param z balls, 3 up to what the workspace holds
   * @param firstAngle angle of the first ball from the load in rad, 0 or more and under one pitch
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  public static void balls(BallWorkspace w, int z, double firstAngle) {
    Objects.requireNonNull(w, "w");
    LoadDistributionKernel.place(w, z, firstAngle);
  }

  /**
   * Sets the contacts of a workspace.
   *
   * @param w workspace
   * @param dw ball diameter in mm, over 0
   * @param dpw pitch diameter in mm, over Dw
   * @param ri groove radius of the inner ring in mm
   * @param re groove radius of the outer ring in mm
   * @param clearance radial clearance s in mm, under 2 (ri + re - Dw); negative for preload
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  public static void contacts(BallWorkspace w, double dw, double dpw, double ri, double re, double clearance) {
    Objects.requireNonNull(w, "w");
    w.stiffness = BallKernel.stiffness(dw, dpw, ri, re);
    double a = ri + re - dw;
    Check.within(clearance, -0.5 * a, 1.99 * a, "radial clearance s", "mm", "the grooves must hold the balls");
    w.centres = a;
    w.clearance = clearance;
    w.circle = 0.5 * dpw + (ri - 0.5 * dw) * Math.min(1, 1 - 0.5 * clearance / a);
  }

  /**
   * Solves for the loads at a given tilt. Results are read from the workspace.
   *
   * @param w workspace with balls and contacts set
   * @param load radial load Fr in N, over 0
   * @param axialLoad axial load Fa in N, of either sign
   * @param tiltAlong tilt of one raceway against the other in the plane of the load in rad, -0.2 to 0.2
   * @param tiltAcross tilt across that plane in rad, -0.2 to 0.2
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  public static void tilted(BallWorkspace w, double load, double axialLoad, double tiltAlong, double tiltAcross) {
    Objects.requireNonNull(w, "w");
    prepare(w, load, axialLoad);
    w.halve(Inputs.tilt(tiltAcross) == 0);
    w.activate(true, !w.halved, true, false, false);
    w.base[3] = w.circle * Math.tan(Inputs.tilt(tiltAlong));
    w.base[4] = w.circle * Math.tan(tiltAcross);
    solve(w, load);
  }

  /**
   * Solves for the loads and the tilt at a given moment between the rings. Results are read from the workspace.
   *
   * @param w workspace with balls and contacts set
   * @param load radial load Fr in N, over 0
   * @param axialLoad axial load Fa in N, of either sign
   * @param momentAlong moment in the plane of the load in N·mm
   * @param momentAcross moment across that plane in N·mm
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  public static void underMoment(BallWorkspace w, double load, double axialLoad, double momentAlong, double momentAcross) {
    Objects.requireNonNull(w, "w");
    prepare(w, load, axialLoad);
    w.halve(Check.finite(momentAcross, "moment across the load", "N·mm") == 0);
    w.activate(true, !w.halved, true, true, !w.halved);
    w.applied[3] = Check.finite(momentAlong, "moment in the plane of the load", "N·mm") / w.circle;
    w.applied[4] = momentAcross / w.circle;
    w.base[3] = 0;
    w.base[4] = 0;
    solve(w, load);
  }

  private static void prepare(BallWorkspace w, double load, double axialLoad) {
    if (w.elements == 0 || w.stiffness == 0) {
      throw Inputs.refused("workspace", "empty", "set up by balls(...) and contacts(...)", "there is nothing to solve for");
    }
    w.applied[0] = Inputs.load(load);
    w.applied[1] = 0;
    w.applied[2] = Check.finite(axialLoad, "axial load Fa", "N");
  }

  private static void solve(BallWorkspace w, double load) {
    w.base[0] = 0.5 * w.clearance;
    w.base[1] = 0;
    w.base[2] = 0;
    double deflection = Math.cbrt(5 * load / (w.elements * w.stiffness));
    Equilibrium.solve(w, load, deflection * deflection);
  }
}

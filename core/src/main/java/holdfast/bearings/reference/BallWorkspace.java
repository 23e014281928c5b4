// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings.reference;

import java.util.Arrays;

/**
 * Working memory of a deep groove ball bearing, and after a solve the loads on its balls. Not thread-safe: one for each
 * thread.
 *
 * <p>Unknowns: displacement along and across the load, axial displacement, tilt along and across the load, all in mm; a
 * tilt counts as the axial displacement that it causes on the circle of the inner groove centres.
 */
public final class BallWorkspace extends EquilibriumWorkspace {
  /** Distance A of the groove centres at which a ball just touches both rings. */
  double centres;
  /** Radius of the circle of the inner groove centres. */
  double circle;
  double stiffness;
  double clearance;
  final double[] load;
  private final double[] angle;
  private final double[] radial;
  private final double[] axial;

  /**
   * Memory for bearings up to a size.
   *
   * @param mostBalls balls, 3 or more
   * @throws holdfast.quantity.InputException if the number is too small or over 1000
   */
  public BallWorkspace(int mostBalls) {
    super(MOST, Inputs.elements(mostBalls));
    load = new double[mostBalls];
    angle = new double[mostBalls];
    radial = new double[mostBalls];
    axial = new double[mostBalls];
  }

  @Override
  void rebase() {
    for (int j = 0; j < evaluated; j++) {
      radial[j] = cos[j] * base[0] + sin[j] * base[1] - 0.5 * clearance;
      axial[j] = base[2] + cos[j] * base[3] + sin[j] * base[4];
    }
  }

  @Override
  void evaluate() {
    Arrays.fill(force, 0);
    Arrays.fill(tangent, 0);
    magnitude = 0;
    for (int j = 0; j < evaluated; j++) {
      double c = cos[j];
      double s = sin[j];
      double r = radial[j] + c * step[0] + s * step[1];
      double a = axial[j] + step[2] + c * step[3] + s * step[4];
      double l = Math.hypot(centres + r, a);
      // l - A without cancellation.
      double d = (2 * centres * r + r * r + a * a) / (l + centres);
      if (!(d > 0)) {
        load[j] = 0;
        continue;
      }
      double root = Math.sqrt(d);
      double q = stiffness * d * root;
      load[j] = q;
      double nr = (centres + r) / l;
      double na = a / l;
      angle[j] = Math.atan2(na, nr);
      double w = weight[j];
      double along = 1.5 * stiffness * root;
      double turning = q / l;
      add(w, c, halved ? 0 : s, q * nr, q * na);
      stiffen(w, c, s, along * nr * nr + turning * na * na, (along - turning) * nr * na, along * na * na + turning * nr * nr);
    }
  }

  private void add(double w, double c, double s, double qr, double qa) {
    magnitude += w * (qr + Math.abs(qa));
    force[0] += w * c * qr;
    force[1] += w * s * qr;
    force[2] += w * qa;
    force[3] += w * c * qa;
    force[4] += w * s * qa;
  }

  private void stiffen(double w, double c, double s, double rr, double ra, double aa) {
    // Of a pair the sines cancel, their squares do not.
    double cs = halved ? 0 : c * s;
    double odd = halved ? 0 : s;
    both(0, 0, w * c * c * rr);
    both(0, 1, w * cs * rr);
    both(1, 1, w * s * s * rr);
    both(0, 2, w * c * ra);
    both(1, 2, w * odd * ra);
    both(0, 3, w * c * c * ra);
    both(0, 4, w * cs * ra);
    both(1, 3, w * cs * ra);
    both(1, 4, w * s * s * ra);
    both(2, 2, w * aa);
    both(2, 3, w * c * aa);
    both(2, 4, w * odd * aa);
    both(3, 3, w * c * c * aa);
    both(3, 4, w * cs * aa);
    both(4, 4, w * s * s * aa);
  }

  private void both(int i, int j, double value) {
    tangent[MOST * i + j] += value;
    if (i != j) {
      tangent[MOST * j + i] += value;
    }
  }

  /**
   * Load on a ball after a solve.
   *
   * @param ball index from 0
   * @return Q in N
   */
  public double ballLoad(int ball) {
    return load[checked(ball)];
  }

  /**
   * Contact angle of a loaded ball after a solve.
   *
   * @param ball index from 0
   * @return angle in rad, 0 if the ball is not loaded
   */
  public double contactAngle(int ball) {
    int j = checked(ball);
    return load[j] > 0 ? angle[j] : 0;
  }

  /**
   * Axial displacement of the rings against each other.
   *
   * @return displacement in mm
   */
  public double axialDisplacement() {
    return base[2] + step[2];
  }

  @Override
  double lever() {
    return circle;
  }

  @Override
  public double tiltStiffness() {
    requireSolved();
    return circle * circle * SmallMatrix.condensed(tangent, unknowns, 3, 0, 1, 2);
  }
}

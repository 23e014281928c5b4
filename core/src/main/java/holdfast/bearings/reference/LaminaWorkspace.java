// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings.reference;

import holdfast.quantity.Check;

/**
 * Working memory of a radial roller bearing cut into laminae, and after a solve the loads on them. Not thread-safe: one
 * for each thread.
 *
 * <p>Unknowns: displacement along and across the load, tilt along and across the load, all in mm; a tilt counts as the
 * displacement that it causes at the end of the lamina farthest from the middle.
 */
public final class LaminaWorkspace extends EquilibriumWorkspace {
  private static final double EXPONENT_LESS_ONE = LaminaKernel.EXPONENT - 1;

  /** Axial positions over {@link #reach}. */
  final double[] position;
  /** Loss of deflection by the profile, 2 P(x), in mm. */
  final double[] relief;
  /** Share of each lamina in the length of its roller. */
  final double[] share;
  /** Edge stress factor f of each lamina, times share^(2/9) = share/share^(7/9): its load over its rating. */
  final double[] severity;
  /** Lamina loads over share and stiffness, row by row of the evaluated rollers. */
  final double[] load;
  final boolean[] loaded;
  int laminae;
  /** Sum of the shares: the number of rows. */
  double rows;
  double reach;
  double stiffness;
  double clearance;
  private final double[] gap;
  private final double[] slope;

  /**
   * Memory for bearings up to a size.
   *
   * @param mostRollers rollers of one row, 3 or more
   * @param mostLaminae laminae of all rows together, 2 or more
   * @throws holdfast.quantity.InputException if a number is too small, over 1000 rollers or over 4000 laminae
   */
  public LaminaWorkspace(int mostRollers, int mostLaminae) {
    super(4, Inputs.elements(mostRollers));
    Inputs.laminae(mostLaminae);
    position = new double[mostLaminae];
    relief = new double[mostLaminae];
    share = new double[mostLaminae];
    severity = new double[mostLaminae];
    load = new double[mostRollers * mostLaminae];
    loaded = new boolean[mostRollers];
    gap = new double[mostRollers];
    slope = new double[mostRollers];
  }

  /** Starts where the first lamina touches when the rings approach along the load. */
  double firstContact(double tiltAlong, double tiltAcross) {
    double first = Double.POSITIVE_INFINITY;
    for (int j = 0; j < evaluated; j++) {
      if (cos[j] > 0.1) {
        double along = cos[j] * tiltAlong + sin[j] * tiltAcross;
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < laminae; k++) {
          least = Math.min(least, relief[k] - position[k] * along);
        }
        first = Math.min(first, (0.5 * clearance + least) / cos[j]);
      }
    }
    return first;
  }

  @Override
  void rebase() {
    for (int j = 0; j < evaluated; j++) {
      gap[j] = cos[j] * base[0] + sin[j] * base[1] - 0.5 * clearance;
      slope[j] = cos[j] * base[2] + sin[j] * base[3];
    }
  }

  @Override
  void evaluate() {
    double all = 0;
    double f0 = 0;
    double f1 = 0;
    double m0 = 0;
    double m1 = 0;
    double h00 = 0;
    double h01 = 0;
    double h11 = 0;
    double c00 = 0;
    double c01 = 0;
    double c11 = 0;
    double t00 = 0;
    double t01 = 0;
    double t11 = 0;
    for (int j = 0; j < evaluated; j++) {
      double c = cos[j];
      double s = sin[j];
      double approach = c * step[0] + s * step[1];
      double turn = c * step[2] + s * step[3];
      // No lamina can touch: the profile only takes away.
      loaded[j] = gap[j] + approach + Math.abs(slope[j] + turn) > 0;
      if (!loaded[j]) {
        continue;
      }
      double q0 = 0;
      double q1 = 0;
      double k0 = 0;
      double k1 = 0;
      double k2 = 0;
      int row = j * laminae;
      for (int k = 0; k < laminae; k++) {
        double x = position[k];
        double d = gap[j] + x * slope[j] - relief[k] + (approach + x * turn);
        if (d > 0) {
          double density = Math.pow(d, EXPONENT_LESS_ONE);
          load[row + k] = d * density;
          double r = share[k] * density;
          double q = d * r;
          q0 += q;
          q1 += x * q;
          double xr = x * r;
          k0 += r;
          k1 += xr;
          k2 += x * xr;
        } else {
          load[row + k] = 0;
        }
      }
      double w = weight[j] * stiffness;
      all += w * q0;
      double wc = w * c;
      f0 += wc * q0;
      m0 += wc * q1;
      double cc = wc * c;
      h00 += cc * k0;
      c00 += cc * k1;
      t00 += cc * k2;
      if (!halved) {
        double ws = w * s;
        double cs = wc * s;
        double ss = ws * s;
        f1 += ws * q0;
        m1 += ws * q1;
        h01 += cs * k0;
        h11 += ss * k0;
        c01 += cs * k1;
        c11 += ss * k1;
        t01 += cs * k2;
        t11 += ss * k2;
      } else {
        // Both of a pair: the sines cancel, their squares do not.
        double ss = w * s * s;
        h11 += ss * k0;
        c11 += ss * k1;
        t11 += ss * k2;
      }
    }
    magnitude = all;
    force[0] = f0;
    force[1] = f1;
    force[2] = m0;
    force[3] = m1;
    double e = LaminaKernel.EXPONENT;
    set(0, 0, e * h00);
    set(0, 1, e * h01);
    set(1, 1, e * h11);
    set(0, 2, e * c00);
    set(0, 3, e * c01);
    set(1, 2, e * c01);
    set(1, 3, e * c11);
    set(2, 2, e * t00);
    set(2, 3, e * t01);
    set(3, 3, e * t11);
  }

  private void set(int i, int j, double value) {
    tangent[4 * i + j] = value;
    tangent[4 * j + i] = value;
  }

  /**
   * Number of laminae of all rows together.
   *
   * @return the number
   */
  public int laminae() {
    return laminae;
  }

  /**
   * Axial position of the middle of a lamina.
   *
   * @param lamina index from 0
   * @return x in mm from the middle of the bearing
   * @throws holdfast.quantity.InputException if there is no such lamina
   */
  public double position(int lamina) {
    Check.within(lamina, 0, laminae - 1.0, "number of the lamina", "", "they are counted from 0");
    return reach * position[lamina];
  }

  /**
   * Load on a lamina after a solve.
   *
   * @param roller index from 0
   * @param lamina index from 0
   * @return q in N
   * @throws holdfast.quantity.InputException if there is no such roller or lamina
   */
  public double laminaLoad(int roller, int lamina) {
    int j = checked(roller);
    Check.within(lamina, 0, laminae - 1.0, "number of the lamina", "", "they are counted from 0");
    return loaded[j] ? stiffness * share[lamina] * load[j * laminae + lamina] : 0;
  }

  /**
   * Load per length on a lamina over the mean load per length that a roller under the force 1 N would have.
   *
   * @param roller index from 0
   * @param lamina index from 0
   * @return q over the share of the lamina in N
   */
  double density(int roller, int lamina) {
    int j = representative(roller);
    return loaded[j] ? stiffness * load[j * laminae + lamina] : 0;
  }

  /**
   * Load on a roller (on all rollers at this place, if there are several rows) after a solve.
   *
   * @param roller index from 0
   * @return Q in N
   */
  public double rollerLoad(int roller) {
    return rollerLoad(roller, 0, laminae);
  }

  /** Load on some of the laminae of a roller, N: those of one row, say. */
  double rollerLoad(int roller, int first, int laminaeOfIt) {
    int j = checked(roller);
    if (!loaded[j]) {
      return 0;
    }
    double sum = 0;
    for (int k = first; k < first + laminaeOfIt; k++) {
      sum += stiffness * share[k] * load[j * laminae + k];
    }
    return sum;
  }

  @Override
  double lever() {
    return reach;
  }

  @Override
  public double tiltStiffness() {
    requireSolved();
    return reach * reach * SmallMatrix.condensed(tangent, unknowns, 2, 0, 1);
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings.reference;

import java.util.function.DoubleUnaryOperator;

/** A bearing set up for its kernels: one solve at a time, results read from the workspace. Not thread-safe. */
abstract sealed class Model permits RollerModel, BallModel {
  /** An element with less than this share of the greatest load carries the noise of the solution, not load. */
  static final double LOADED = 1e-9;
  /** An approach below this, mm, is rounding: at a right angle to the load the cosine is not 0. */
  static final double TOUCHING = 1e-12;

  final TiltedBearing bearing;

  Model(TiltedBearing bearing) {
    this.bearing = bearing;
  }

  static Model of(TiltedBearing bearing) {
    return bearing.elements() instanceof RollerSet rollers
        ? new RollerModel(bearing, rollers)
        : new BallModel(bearing, (BallSet) bearing.elements());
  }

  abstract void solve(Loading loading);

  /** Life in 10^6 revolutions without the recalled division of the ratings. */
  abstract double life();

  final double life(Loading loading) {
    solve(loading);
    return life();
  }

  abstract double modifiedLife(DoubleUnaryOperator factor);

  /** Factor of the recalled method on the life. */
  abstract double recalledFactor();

  abstract EquilibriumWorkspace workspace();

  /** Load on the most loaded rolling element of any row. */
  abstract double greatestLoad();

  abstract double greatestPressure();

  /** Load on an element, on all rows at its place together. */
  abstract double load(int element);

  /** Share of the length of the most loaded element that touches. */
  abstract double touchingShare();

  /** Laminae of the most loaded element that touch. */
  abstract int touchingLaminae();

  /**
   * Whether an element at an angle from the load would carry load.
   *
   * @param c cosine of the angle
   * @param s sine of the angle
   * @param slope tangent of the tilt at this angle
   */
  abstract boolean touches(double c, double s, double slope);

  abstract LoadDistribution distribution();

  /** Elements that carry load rather than the noise of the solution. */
  final int loadedElements() {
    double least = LOADED * greatestLoad();
    int loaded = 0;
    for (int j = 0; j < workspace().elements(); j++) {
      loaded += load(j) > least ? 1 : 0;
    }
    return loaded;
  }

  /** Angle over which elements carry load, by steps of half a degree. */
  final double loadZone() {
    int steps = 720;
    double along = Math.tan(workspace().tiltAlong());
    double across = Math.tan(workspace().tiltAcross());
    int touching = 0;
    for (int i = 0; i < steps; i++) {
      double angle = 2 * Math.PI / steps * i;
      double c = Math.cos(angle);
      double s = Math.sin(angle);
      if (touches(c, s, c * along + s * across)) {
        touching++;
      }
    }
    return 2 * Math.PI / steps * touching;
  }
}

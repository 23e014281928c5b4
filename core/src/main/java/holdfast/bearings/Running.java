// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

/** How a bearing has to run, for the least static safety factor of ISO 76:2006, Tables 4 and 5. */
public enum Running {
  /** Quiet, smooth, free of vibration, high accuracy of rotation. */
  QUIET(2, 3),
  /** Normal running. */
  NORMAL(1, 1.5),
  /** Pronounced shock loads. */
  SHOCK(1.5, 3);

  private final double ball;
  private final double roller;

  Running(double ball, double roller) {
    this.ball = ball;
    this.roller = roller;
  }

  double leastSafety(boolean balls) {
    return balls ? ball : roller;
  }
}

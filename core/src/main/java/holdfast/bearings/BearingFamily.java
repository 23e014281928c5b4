// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

/** The four families of ISO 281: ball or roller, radial or thrust. */
public enum BearingFamily {
  /** Radial ball bearings: nominal contact angle up to 45°. */
  RADIAL_BALL("radial ball bearing", true, false),
  /** Radial roller bearings: nominal contact angle up to 45°. */
  RADIAL_ROLLER("radial roller bearing", false, false),
  /** Thrust ball bearings: nominal contact angle over 45° up to 90°. */
  THRUST_BALL("thrust ball bearing", true, true),
  /** Thrust roller bearings: nominal contact angle over 45° up to 90°. */
  THRUST_ROLLER("thrust roller bearing", false, true);

  private final String words;
  private final boolean ball;
  private final boolean thrust;

  BearingFamily(String words, boolean ball, boolean thrust) {
    this.words = words;
    this.ball = ball;
    this.thrust = thrust;
  }

  /**
   * Whether the rolling elements are balls.
   *
   * @return true for balls, false for rollers
   */
  public boolean ball() {
    return ball;
  }

  /**
   * Whether the ratings are axial.
   *
   * @return true for thrust bearings
   */
  public boolean thrust() {
    return thrust;
  }

  /**
   * Exponent p of the life equation (ISO 281:2007, 5.3 to 8.3).
   *
   * @return 3 for ball bearings, 10/3 for roller bearings
   */
  public double lifeExponent() {
    return ball ? 3 : 10.0 / 3;
  }

  /**
   * Weibull slope e by which lives of several bearings are combined.
   *
   * @return 10/9 for ball bearings, 9/8 for roller bearings
   */
  public double weibullSlope() {
    return ball ? 10.0 / 9 : 9.0 / 8;
  }

  /** The family in words. */
  @Override
  public String toString() {
    return words;
  }
}

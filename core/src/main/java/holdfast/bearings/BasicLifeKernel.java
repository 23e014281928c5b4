// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.quantity.Check;
import holdfast.tables.Source;
import java.util.Objects;

/**
 * Basic rating life and its inverses. Symbols: C basic dynamic load rating, P dynamic equivalent load (N), p life
 * exponent, L life in million revolutions, n speed (rpm).
 */
@Source(document = "ISO 281:2007", locator = "5.3.1, 6.3.1, 7.3.1, 8.3.1")
public final class BasicLifeKernel {
  private static final String LOAD = "dynamic equivalent load P";
  private static final String LOAD_REASON = "the life equation divides by the load; without load no rating life exists";

  private BasicLifeKernel() {}

  /**
   * Basic rating life of ball bearings, {@code L10 = (C/P)^3}.
   *
   * @param c C in N, over 0
   * @param p P in N, over 0
   * @return L10 in million revolutions
   * @throws holdfast.quantity.InputException if an argument is not above zero
   */
  @Source(document = "ISO 281:2007", locator = "5.3.1 and 6.3.1")
  public static double ball(double c, double p) {
    double r = ratio(c, p);
    return r * r * r;
  }

  /**
   * Basic rating life of roller bearings, {@code L10 = (C/P)^(10/3)}.
   *
   * @param c C in N, over 0
   * @param p P in N, over 0
   * @return L10 in million revolutions
   * @throws holdfast.quantity.InputException if an argument is not above zero
   */
  @Source(document = "ISO 281:2007", locator = "7.3.1 and 8.3.1")
  public static double roller(double c, double p) {
    double r = ratio(c, p);
    return r * r * r * Math.cbrt(r);
  }

  /**
   * Basic rating life of either kind.
   *
   * @param family family of the bearing
   * @param c C in N, over 0
   * @param p P in N, over 0
   * @return L10 in million revolutions
   * @throws holdfast.quantity.InputException if an argument is not above zero
   */
  public static double l10(BearingFamily family, double c, double p) {
    Objects.requireNonNull(family, "family");
    return family.ball() ? ball(c, p) : roller(c, p);
  }

  /**
   * Operating hours of a life, {@code Lh = 10^6 L / (60 n)}.
   *
   * @param millionRevolutions L in million revolutions, 0 or more
   * @param rpm speed in rpm, over 0
   * @return hours
   * @throws holdfast.quantity.InputException if the life is negative or the speed is not above zero
   */
  public static double hours(double millionRevolutions, double rpm) {
    Check.notNegative(millionRevolutions, "life L", "million revolutions", "a life is not negative");
    return 1e6 / 60 * millionRevolutions / checkSpeed(rpm);
  }

  /**
   * Revolutions in a number of hours, {@code L = 60 n Lh / 10^6}.
   *
   * @param hours Lh in h, 0 or more
   * @param rpm speed in rpm, over 0
   * @return million revolutions
   * @throws holdfast.quantity.InputException if the hours are negative or the speed is not above zero
   */
  public static double millionRevolutions(double hours, double rpm) {
    Check.notNegative(hours, "life Lh", "h", "a life is not negative");
    return hours * checkSpeed(rpm) * (60 / 1e6);
  }

  /**
   * Distance that a wheel or roller travels in a life, {@code s = π D L}.
   *
   * @param millionRevolutions L in million revolutions, 0 or more
   * @param diameter rolling diameter D in mm, over 0
   * @return distance in km
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "derivation", locator = "one revolution rolls off one circumference",
      provenance = holdfast.tables.Provenance.DERIVED)
  public static double kilometres(double millionRevolutions, double diameter) {
    Check.notNegative(millionRevolutions, "life L", "million revolutions", "a life is not negative");
    Check.positive(diameter, "rolling diameter D", "mm", "a wheel has a diameter");
    return Math.PI * diameter * millionRevolutions;
  }

  /**
   * Basic dynamic load rating that a life needs, {@code C = P L^(1/p)}.
   *
   * @param family family of the bearing
   * @param p P in N, over 0
   * @param millionRevolutions wanted L10 in million revolutions, over 0
   * @return C in N
   * @throws holdfast.quantity.InputException if an argument is not above zero
   */
  public static double requiredRating(BearingFamily family, double p, double millionRevolutions) {
    Objects.requireNonNull(family, "family");
    return checkLoad(p) * loadRatio(family, millionRevolutions);
  }

  /**
   * Greatest load with a wanted life, {@code P = C / L^(1/p)}.
   *
   * @param family family of the bearing
   * @param c C in N, over 0
   * @param millionRevolutions wanted L10 in million revolutions, over 0
   * @return P in N
   * @throws holdfast.quantity.InputException if an argument is not above zero
   */
  public static double allowableLoad(BearingFamily family, double c, double millionRevolutions) {
    Objects.requireNonNull(family, "family");
    return checkRating(c) / loadRatio(family, millionRevolutions);
  }

  /**
   * Greatest speed with a wanted life in hours, {@code n = 10^6 L / (60 Lh)}.
   *
   * @param millionRevolutions L at the load in million revolutions, over 0
   * @param hours wanted life in h, over 0
   * @return speed in rpm
   * @throws holdfast.quantity.InputException if an argument is not above zero
   */
  public static double allowableSpeed(double millionRevolutions, double hours) {
    Check.positive(millionRevolutions, "life L", "million revolutions", "a life above zero is needed");
    Check.positive(hours, "wanted life Lh", "h", "a life above zero is needed");
    return 1e6 / 60 * millionRevolutions / hours;
  }

  /**
   * Basic rating lives of many bearings at once.
   *
   * @param ball for each bearing whether it is a ball bearing
   * @param c C in N, over 0
   * @param p P in N, over 0
   * @param l10 receives L10 in million revolutions
   * @throws holdfast.quantity.InputException if the arrays differ in length or an entry is not above zero
   */
  public static void l10(boolean[] ball, double[] c, double[] p, double[] l10) {
    Objects.requireNonNull(ball, "ball");
    Objects.requireNonNull(c, "c");
    Objects.requireNonNull(p, "p");
    Objects.requireNonNull(l10, "l10");
    Refusal.sameLength(ball.length, c.length, "ratings C");
    Refusal.sameLength(ball.length, p.length, "loads P");
    Refusal.sameLength(ball.length, l10.length, "lives L10");
    for (int i = 0; i < ball.length; i++) {
      l10[i] = ball[i] ? ball(c[i], p[i]) : roller(c[i], p[i]);
    }
  }

  /** L^(1/p). */
  private static double loadRatio(BearingFamily family, double millionRevolutions) {
    Check.positive(millionRevolutions, "wanted life L", "million revolutions", "a life above zero is needed");
    return family.ball() ? Math.cbrt(millionRevolutions) : Math.pow(millionRevolutions, 0.3);
  }

  private static double ratio(double c, double p) {
    return Check.finite(checkRating(c) / checkLoad(p), "ratio C/P", "");
  }

  static double checkRating(double c) {
    return Check.positive(c, "basic dynamic load rating C", "N", "a rating is a force above zero");
  }

  static double checkLoad(double p) {
    return Check.positive(p, LOAD, "N", LOAD_REASON);
  }

  static double checkSpeed(double rpm) {
    return Check.positive(rpm, "speed n", "rpm", "a bearing that stands still has no life in hours; check it statically");
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.lubrication;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Numbers;
import holdfast.tables.Provenance;
import holdfast.tables.Source;

/**
 * Intervals of relubrication and their corrections. n in rpm, d bore or inner raceway and D outside diameter in mm,
 * temperatures in °C, intervals in h.
 */
public final class RelubricationKernel {
  /** Intervals above this are not reliable, in h. */
  public static final double CAP = 30_000;
  /** Temperature from which the rule of halving counts, in °C. */
  public static final double HALVING_BASE = 70;
  /** Temperature from which the rule of division by 1.5 counts, in °C. */
  public static final double DIVISION_BASE = 80;

  private static final String LUBRICATION = "pages 109 to 115, lubrication";

  private RelubricationKernel() {}

  /**
   * Empirical interval, {@code t = K (14·10⁶/(n √d) − 4 d)}. A result that is not above zero lies outside the formula.
   *
   * @param k factor K: bearing-type factor times corrections, over 0
   * @param n speed in rpm, over 0
   * @param d bore d in mm, over 0
   * @return interval in h
   * @throws InputException if an argument is not above zero, or the speed is too high for the formula
   */
  @Source(document = "Relubrication interval guide", locator = "classical empirical formula")
  public static double empirical(double k, double n, double d) {
    Check.positive(k, "factor K", "", "it is a product of factors above zero");
    checkSpeed(n);
    Check.positive(d, "bore d", "mm", "it is a diameter");
    double t = 14e6 / (n * Math.sqrt(d)) - 4 * d;
    if (!(t > 0)) {
      throw new InputException("speed n", Numbers.shortest(n) + " rpm",
          "below " + Numbers.significant(greatestSpeed(d), 4) + " rpm for d = " + Numbers.shortest(d) + " mm",
          "at and above it the empirical formula gives no interval");
    }
    return k * t;
  }

  /**
   * Speed at which the empirical interval vanishes, {@code n = 14·10⁶ / (4 d √d)}.
   *
   * @param d bore d in mm, over 0
   * @return speed in rpm
   * @throws InputException if the bore is not above zero
   */
  @Source(document = "Relubrication interval guide", locator = "classical empirical formula, solved for t = 0")
  public static double greatestSpeed(double d) {
    Check.positive(d, "bore d", "mm", "it is a diameter");
    return 14e6 / (4 * d * Math.sqrt(d));
  }

  /**
   * Speed that stands for a turning outer ring where a rule counts with the mean diameter: {@code n' = n D / dm}, so that
   * {@code n' dm = n D}.
   *
   * @param n speed of the outer ring in rpm, over 0
   * @param outer outside diameter D in mm, over d
   * @param d bore or inner raceway d in mm, over 0
   * @return speed n' in rpm
   * @throws InputException if an argument is outside its range
   */
  @Source(document = "Rolling bearings catalogue 17000 EN", locator = "pages 109 to 115: outer ring turning, D for dm")
  @Source(document = "derivation", locator = "n' dm = n D solved for n'", provenance = Provenance.DERIVED)
  public static double outerRingSpeed(double n, double outer, double d) {
    checkSpeed(n);
    return n * outer / meanDiameter(outer, d);
  }

  /**
   * Input of the chart of intervals for a turning outer ring, {@code x = n D bf}. The chart itself is the maker's.
   *
   * @param n speed of the outer ring in rpm, over 0
   * @param outer outside diameter D in mm, over 0
   * @param bearingFactor bf (dimensionless): 3 for needle rollers with cage, 4 for full-complement cylindrical rollers
   * @return x in mm/min
   * @throws InputException if an argument is not above zero
   */
  @Source(document = "Rolling bearings catalogue 17000 EN", locator = LUBRICATION)
  public static double chartInput(double n, double outer, double bearingFactor) {
    checkSpeed(n);
    Check.positive(outer, "outside diameter D", "mm", "it is a diameter");
    return n * outer * Check.positive(bearingFactor, "bearing factor bf", "", "it is a factor above zero");
  }

  /**
   * Temperature factor of the first rule: half per 15 K above 70 °C; below, double per 15 K, once at most.
   *
   * @param celsius temperature of the bearing in °C, from -273.15
   * @return factor on the interval at 70 °C
   * @throws InputException if the temperature is below absolute zero or not finite
   */
  @Source(document = "Rolling bearings catalogue 17000 EN", locator = LUBRICATION)
  public static double halvingPer15K(double celsius) {
    checkTemperature(celsius);
    return celsius <= HALVING_BASE - 15 ? 2 : Math.pow(0.5, (celsius - HALVING_BASE) / 15);
  }

  /**
   * Temperature factor of the second rule, for needle bearings: divide by 1.5 per 10 K above 80 °C; 1 below.
   *
   * @param celsius temperature of the bearing in °C, from -273.15
   * @return factor on the interval up to 80 °C
   * @throws InputException if the temperature is below absolute zero or not finite
   */
  @Source(document = "Needle roller bearings catalogue 2300/E", locator = "lubrication, temperature above 80 °C")
  public static double divisionPer10K(double celsius) {
    checkTemperature(celsius);
    return celsius <= DIVISION_BASE ? 1 : Math.pow(1.5, -(celsius - DIVISION_BASE) / 10);
  }

  /**
   * Interval from the life of the grease, {@code tfR = 0.5 tfG}.
   *
   * @param greaseLife life of the grease tfG in h, 0 or more
   * @return interval in h
   * @throws InputException if the life is negative or not finite
   */
  @Source(document = "Rolling bearings catalogue HR 1", locator = "relubrication interval from grease life")
  public static double fromGreaseLife(double greaseLife) {
    return 0.5 * Check.notNegative(greaseLife, "grease life tfG", "h", "it is a time");
  }

  private static double meanDiameter(double outer, double d) {
    Check.positive(d, "bore d", "mm", "it is a diameter");
    if (!(outer > d && outer <= Check.GREATEST)) {
      throw new InputException("outside diameter D", Numbers.shortest(outer) + " mm", "above d = " + Numbers.shortest(d) + " mm",
          "the bore is inside");
    }
    return 0.5 * (outer + d);
  }

  private static void checkSpeed(double n) {
    Check.positive(n, "speed n", "rpm", "a bearing that stands still is relubricated by the calendar");
  }

  private static void checkTemperature(double celsius) {
    Check.notNegative(celsius + 273.15, "temperature above absolute zero", "K", "no body is colder");
  }
}

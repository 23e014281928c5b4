// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import holdfast.quantity.Check;
import holdfast.tables.Provenance;
import holdfast.tables.Source;

/**
 * Viscosity of mineral oils at temperature. Temperatures in °C, viscosities in mm²/s. The relation is
 * {@code log10 log10(ν + 0.7) = A - B log10 T} with T in K, above about 2 mm²/s.
 */
public final class ViscosityKernel {
  /** Viscosity below which the relation without its correction terms does not hold. */
  public static final double LEAST_VISCOSITY = 2;
  private static final double LEAST = 0.31;
  private static final double GREATEST = 1e7;
  private static final String RANGE = "over 0.31 mm²/s and below 10000000 mm²/s";
  private static final double KELVIN = 273.15;

  private ViscosityKernel() {}

  /**
   * Viscosity at a temperature from the viscosities at two others.
   *
   * @param t1 first temperature in °C
   * @param nu1 viscosity at t1 in mm²/s, over 0.3
   * @param t2 second temperature in °C, not t1
   * @param nu2 viscosity at t2 in mm²/s, over 0.3; lower at the higher temperature
   * @param t temperature in °C, from -60 to 250
   * @return ν at t, over 0.31 and below 10000000
   * @throws holdfast.quantity.InputException if an argument or ν at t is outside its range, as when t1 and t2 lie too near
   *     to each other for t, or if viscosity would rise with temperature
   */
  @Source(document = "ASTM D341", locator = "viscosity-temperature relation without the terms for low viscosity",
      provenance = Provenance.MEMORY)
  public static double atTemperature(double t1, double nu1, double t2, double nu2, double t) {
    double x1 = logT(t1);
    double x2 = logT(t2);
    double y1 = doubleLog(nu1);
    double y2 = doubleLog(nu2);
    if (!((t2 - t1) * (nu2 - nu1) < 0)) {
      throw Refusal.of("viscosity ν at " + holdfast.quantity.Numbers.shortest(t2) + " °C", nu2, "mm²/s",
          "lower at the higher temperature", "the viscosity of an oil falls with temperature");
    }
    double y = y1 + (y2 - y1) * (logT(t) - x1) / (x2 - x1);
    double nu = Math.pow(10, Math.pow(10, y)) - 0.7;
    if (!(nu > LEAST && nu < GREATEST)) {
      throw Refusal.of("viscosity ν at " + holdfast.quantity.Numbers.shortest(t) + " °C", Double.toString(nu) + " mm²/s",
          RANGE, "the two given temperatures lie too near to each other to say what it is there");
    }
    return nu;
  }

  /**
   * Viscosity index from the viscosities at 40 and 100 °C.
   *
   * @param at40 viscosity at 40 °C, over the viscosity at 100 °C, below 10000000
   * @param at100 viscosity at 100 °C, 2 or more
   * @return VI
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "ASTM D2270", locator = "procedures A and B", provenance = Provenance.MEMORY)
  public static double viscosityIndex(double at40, double at100) {
    Check.within(at100, 2, 500, "viscosity at 100 °C", "mm²/s", "ASTM D2270 begins at 2 mm²/s");
    if (!(at40 > at100 && at40 < GREATEST)) {
      throw Refusal.of("viscosity at 40 °C", at40, "mm²/s", "greater than that at 100 °C and below 10000000 mm²/s",
          "the viscosity of an oil falls");
    }
    double l = lowReference(at100);
    double h = highReference(at100);
    if (at40 >= h) {
      return 100 * (l - at40) / (l - h);
    }
    double n = Math.log10(h / at40) / Math.log10(at100);
    return (Math.pow(10, n) - 1) / 0.00715 + 100;
  }

  /**
   * Viscosity at 100 °C of an oil of known viscosity index.
   *
   * @param at40 viscosity at 40 °C, from 3 to 4000
   * @param index viscosity index VI, from 0 to 250
   * @return ν at 100 °C
   * @throws holdfast.quantity.InputException if an argument is outside its range or no viscosity from 2 mm²/s on fits
   */
  @Source(document = "ASTM D2270", locator = "procedures A and B, solved for ν at 100 °C",
      provenance = Provenance.MEMORY)
  public static double at100(double at40, double index) {
    Check.within(at40, 3, 4000, "viscosity at 40 °C", "mm²/s", "ISO 3448 ends at VG 3200");
    Check.within(index, 0, 250, "viscosity index VI", "", "oils outside are not described by the index");
    double low = 2;
    double high = Math.min(500, at40 * (1 - 1e-9));
    if (low >= high || viscosityIndex(at40, low) > index) {
      throw Refusal.of("viscosity at 40 °C", at40, "mm²/s", "higher for this viscosity index",
          "the oil would have less than 2 mm²/s at 100 °C, where the index is not defined");
    }
    for (int i = 0; i < 70; i++) {
      double middle = 0.5 * (low + high);
      if (viscosityIndex(at40, middle) < index) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return 0.5 * (low + high);
  }

  // Reference oils of viscosity index 0 (L) and 100 (H): quadratics in the viscosity at 100 °C, range by range.
  private static final double[] RANGE_END = {3.8, 4.4, 5.0, 6.4, 7.0, 7.7, 9, 12, 15, 18, 22, 28, 40, 55, 70};
  private static final double[] LOW_2 = {
    1.14673, 3.38095, 2.5, 0.101, 3.35714, 0.01191, 0.41858, 0.88779, 0.7672, 0.97305, 0.97256, 0.91413, 0.87031, 0.84703,
    0.85921, 0.83531};
  private static final double[] LOW_1 = {
    1.7576, -15.4952, -7.2143, 16.635, -23.5643, 21.475, 16.1558, 7.5527, 10.7972, 5.3135, 5.25, 7.4759, 9.7157, 12.6752,
    11.1009, 14.6731};
  private static final double[] LOW_0 = {
    -0.109, 33.196, 13.812, -45.469, 78.466, -72.87, -56.04, -16.6, -38.18, -2.2, -0.98, -21.82, -50.77, -133.31, -83.19,
    -216.246};
  private static final double[] HIGH_2 = {
    0.84155, 0.78571, 0.82143, 0.04985, 0.22619, 0.79762, 0.05794, 0.26665, 0.20073, 0.28889, 0.24504, 0.20323, 0.18411,
    0.17029, 0.1713, 0.16841};
  private static final double[] HIGH_1 = {
    1.5521, 1.7929, 1.5679, 9.1613, 7.7369, -0.7321, 10.5156, 6.7015, 8.4658, 5.9741, 7.416, 9.1267, 10.1015, 11.4866, 11.368,
    11.8493};
  private static final double[] HIGH_0 = {
    -0.077, -0.183, 0.119, -18.557, -16.656, 14.61, -28.24, -10.81, -22.49, -4.93, -16.73, -34.23, -46.75, -80.62, -76.94,
    -96.947};

  static double lowReference(double at100) {
    int i = range(at100);
    return (LOW_2[i] * at100 + LOW_1[i]) * at100 + LOW_0[i];
  }

  static double highReference(double at100) {
    int i = range(at100);
    return (HIGH_2[i] * at100 + HIGH_1[i]) * at100 + HIGH_0[i];
  }

  private static int range(double at100) {
    int i = 0;
    while (i < RANGE_END.length && at100 >= RANGE_END[i]) {
      i++;
    }
    return i;
  }

  private static double logT(double celsius) {
    Check.within(celsius, -60, 250, "temperature", "°C", "the relation is for liquid lubricants");
    return Math.log10(celsius + KELVIN);
  }

  private static double doubleLog(double nu) {
    if (!(nu > LEAST && nu < GREATEST)) {
      throw Refusal.of("viscosity ν", Double.toString(nu) + " mm²/s", RANGE, "log log(ν + 0.7) must exist");
    }
    return Math.log10(Math.log10(nu + 0.7));
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.lubrication;

import holdfast.tables.SourceRef;

/** The two published corrections of the interval for temperature. They differ; the caller chooses. */
public enum TemperatureRule {
  /** Half per 15 K above 70 °C, up to double below; for rolling bearings in general. */
  HALVE_PER_15_K_ABOVE_70("half per 15 K above 70 °C", "0.5^((T − 70)/15), at most 2",
      SourceRef.published("Rolling bearings catalogue 17000 EN", "pages 109 to 115, lubrication")),
  /** Divided by 1.5 per 10 K above 80 °C; for needle bearings. */
  DIVIDE_BY_1_5_PER_10_K_ABOVE_80("divided by 1.5 per 10 K above 80 °C", "1.5^(−(T − 80)/10), at most 1",
      SourceRef.published("Needle roller bearings catalogue 2300/E", "lubrication, temperature above 80 °C"));

  private final String label;
  private final String expression;
  private final SourceRef source;

  TemperatureRule(String label, String expression, SourceRef source) {
    this.label = label;
    this.expression = expression;
    this.source = source;
  }

  /**
   * Factor on the interval.
   *
   * @param celsius temperature of the bearing in °C
   * @return the factor
   * @throws holdfast.quantity.InputException if the temperature is below absolute zero
   */
  public double factor(double celsius) {
    return this == HALVE_PER_15_K_ABOVE_70
        ? RelubricationKernel.halvingPer15K(celsius)
        : RelubricationKernel.divisionPer10K(celsius);
  }

  String expression() {
    return expression;
  }

  /**
   * Where the rule comes from.
   *
   * @return document, locator and provenance
   */
  public SourceRef source() {
    return source;
  }

  /** For example {@code "half per 15 K above 70 °C"}. */
  @Override
  public String toString() {
    return label;
  }
}

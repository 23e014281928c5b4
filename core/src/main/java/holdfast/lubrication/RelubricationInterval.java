// SPDX-License-Identifier: Apache-2.0
package holdfast.lubrication;

import holdfast.quantity.Check;
import holdfast.quantity.Numbers;
import holdfast.quantity.OperatingTime;
import holdfast.quantity.Temperature;
import holdfast.tables.Provenance;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Message;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * An interval of relubrication with its corrections. The maker's interval for the roller and its grease goes first.
 *
 * @param begin interval before corrections
 * @param factors the corrections
 * @param interval the interval
 * @param capped whether the product was above the 30000 h up to which the method is reliable
 * @param temperature temperature of the correction; null if none was stated
 */
public record RelubricationInterval(
    Begin begin, List<Factor> factors, OperatingTime interval, boolean capped, Temperature temperature)
    implements Traced, Serializable {

  /**
   * An interval before corrections.
   *
   * @param interval the interval
   * @param expression how it was found
   * @param source where it comes from
   * @param inputs the numbers put in
   * @param empirical true for the empirical formula
   */
  public record Begin(OperatingTime interval, String expression, SourceRef source, List<String> inputs, boolean empirical)
      implements Serializable {
    // Keeps an unmodifiable copy.
    public Begin {
      Objects.requireNonNull(interval, "interval");
      Objects.requireNonNull(expression, "expression");
      Objects.requireNonNull(source, "source");
      Objects.requireNonNull(inputs, "inputs");
      inputs = List.copyOf(inputs);
    }
  }

  /**
   * A correction.
   *
   * @param symbol its symbol
   * @param meaning what it corrects for
   * @param expression its rule
   * @param value the factor
   * @param source where it comes from
   * @param input the number put in; empty if there is none
   */
  public record Factor(String symbol, String meaning, String expression, double value, SourceRef source, String input)
      implements Serializable {
    public Factor {
      Objects.requireNonNull(symbol, "symbol");
      Objects.requireNonNull(meaning, "meaning");
      Objects.requireNonNull(expression, "expression");
      Objects.requireNonNull(source, "source");
      Objects.requireNonNull(input, "input");
      Check.finite(value, "value of the factor", "");
    }

    /**
     * Whether it corrects for where and how the roller stands, and not for what is inside it.
     *
     * @return false for the correction of a full complement
     */
    public boolean ofThePlace() {
      return !symbol.equals("kv");
    }
  }

  private static final SourceRef CAP = SourceRef.published("Rolling bearings catalogue 17000 EN",
      "pages 109 to 115, intervals above 30000 h");

  // Keeps an unmodifiable copy.
  public RelubricationInterval {
    Objects.requireNonNull(begin, "begin");
    Objects.requireNonNull(factors, "factors");
    Objects.requireNonNull(interval, "interval");
    factors = List.copyOf(factors);
  }

  @Override
  public Derivation explain() {
    Derivation.Builder steps =
        Derivation.of("Interval of relubrication")
            .step("t0", "interval before corrections", begin.expression(), begin.interval().hours(), "h", begin.source(),
                begin.inputs().toArray(new String[0]));
    StringBuilder product = new StringBuilder("t0");
    for (Factor f : factors) {
      steps.step(f.symbol(), f.meaning(), f.expression(), f.value(), "", f.source(),
          f.input().isEmpty() ? new String[0] : new String[] {f.input()});
      product.append("·").append(f.symbol());
    }
    String expression = capped ? "min(" + product + ", 30000 h)" : product.toString();
    return steps
        .step("t", "interval of relubrication", expression, interval.hours(), "h",
            capped ? CAP : SourceRef.derived("factors on the interval multiply"))
        .build();
  }

  @Override
  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>();
    if (capped) {
      warnings.add(new Warning("interval-capped",
          "the product is above 30000 h, up to which calculated intervals are reliable", CAP));
    }
    if (begin.empirical()) {
      warnings.add(new Warning("empirical-interval",
          "the empirical formula is for bearings with a turning inner ring; the turning outer"
          + " ring is counted by D in place of the mean diameter, which is a derived use of another source's rule",
          Relubrication.outerRing()));
    }
    if (factors.stream().noneMatch(f -> f.symbol().equals("kT") || f.symbol().equals("Ft"))) {
      warnings.add(new Warning("no-temperature",
          Message.of("no temperature is stated: the interval holds up to ", new Temperature(70)),
          TemperatureRule.HALVE_PER_15_K_ABOVE_70.source()));
    }
    if (temperature != null && temperature.celsius() > LubricationGuide.narrowestHottest().high()) {
      LubricationGuide limit = LubricationGuide.narrowestHottest();
      warnings.add(new Warning("temperature-limit", Message.of("catalogues limit rollers as supplied to between ",
          new Temperature(limit.high()), " and ", new Temperature(LubricationGuide.widestHottest().high()),
          ": ask the maker about roller, seal and grease"),
          limit.source()));
    }
    if (factors.stream().anyMatch(f -> f.source().provenance() == Provenance.MEMORY)) {
      warnings.add(new Warning("recalled-factors", "the trade factors are recalled, not found in print",
          SourceRef.memory("common practice", "factor table of the empirical interval")));
    }
    warnings.add(new Warning("no-misalignment", "methods of grease life hold without misalignment only",
        SourceRef.published("Rolling bearings catalogue HR 1", "grease operating life, condition")));
    return List.copyOf(warnings);
  }

  /** For example {@code "every 1200 h"}. */
  @Override
  public String toString() {
    return "every " + Numbers.significant(interval.hours(), 2) + " h" + (capped ? " at most" : "");
  }
}

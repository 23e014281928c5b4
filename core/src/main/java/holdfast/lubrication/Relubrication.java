// SPDX-License-Identifier: Apache-2.0
package holdfast.lubrication;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.quantity.OperatingTime;
import holdfast.quantity.RotationalSpeed;
import holdfast.quantity.Temperature;
import holdfast.tables.SourceRef;
import java.io.InvalidObjectException;
import java.io.ObjectStreamException;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * What an interval of relubrication is computed from. Immutable. Begin with the interval of the maker's chart (best) or
 * with the empirical formula; then state the corrections that the begin does not hold already.
 */
public final class Relubrication implements Serializable {
  private static final long serialVersionUID = 1L;

  /** A correction of the interval. */
  record Correction(String symbol, String meaning, String expression, double factor, SourceRef source, String input)
      implements Serializable {}

  private static final SourceRef STATED = SourceRef.commonPractice("interval stated by the caller, read from the maker's chart");
  private static final SourceRef EMPIRICAL = SourceRef.published("Relubrication interval guide", "classical empirical formula");
  private static final SourceRef OUTER_RING =
      SourceRef.published(
          "Rolling bearings catalogue 17000 EN", "pages 109 to 115: with a turning outer ring D takes the place of dm");
  private static final SourceRef VERTICAL = SourceRef.published("Rolling bearings catalogue 17000 EN",
      "pages 109 to 115, vertical axis");

  private final double base;
  private final String expression;
  private final SourceRef source;
  // An unmodifiable copy, which is Serializable.
  @SuppressWarnings("serial")
  private final List<String> inputs;
  private final boolean empirical;
  // An unmodifiable copy, which is Serializable.
  @SuppressWarnings("serial")
  private final List<Correction> corrections;
  private final double celsius;

  private Relubrication(
      double base, String expression, SourceRef source, List<String> inputs, boolean empirical, List<Correction> corrections,
      double celsius) {
    this.base = base;
    this.expression = expression;
    this.source = source;
    this.inputs = inputs;
    this.empirical = empirical;
    this.corrections = corrections;
    this.celsius = celsius;
  }

  /** Begun anew, and every correction put on again: none twice, none without effect. */
  private Object readResolve() throws ObjectStreamException {
    try {
      Check.positive(base, "interval", "h", "it is a time");
      Relubrication anew = new Relubrication(base, Objects.requireNonNull(expression, "expression"),
          Objects.requireNonNull(source, "source"), List.copyOf(inputs), empirical, List.of(), celsius);
      for (Correction c : corrections) {
        Check.positive(c.factor(), "correction " + c.symbol(), "", "it is a factor");
        anew = anew.with(c, celsius);
      }
      return anew;
    } catch (InputException | NullPointerException e) {
      throw new InvalidObjectException("relubrication: " + e.getMessage());
    }
  }

  /**
   * Begins with an interval read from the maker's chart, in which nothing is corrected.
   *
   * @param interval the interval, over 0
   * @return the begin
   * @throws InputException if the interval is not above zero
   */
  public static Relubrication fromChart(OperatingTime interval) {
    Objects.requireNonNull(interval, "interval");
    Check.positive(interval.hours(), "interval of the chart", "h", "it is a time");
    return new Relubrication(interval.hours(), "read from the chart", STATED, List.of(), false, List.of(), Double.NaN);
  }

  /**
   * Begins with the empirical formula for cylindrical and needle rollers, outer ring turning: the speed counts by
   * D in place of the mean diameter.
   *
   * @param speed speed of the outer ring, over 0
   * @param raceway diameter d of the inner raceway or bore, over 0
   * @param outsideDiameter outside diameter D, over d
   * @return the begin, with the bearing-type factor 5
   * @throws InputException if an argument is outside its range, or the speed is too high for the formula
   */
  public static Relubrication empirical(RotationalSpeed speed, Length raceway, Length outsideDiameter) {
    Objects.requireNonNull(speed, "speed");
    Objects.requireNonNull(raceway, "raceway");
    Objects.requireNonNull(outsideDiameter, "outsideDiameter");
    double n = RelubricationKernel.outerRingSpeed(speed.rpm(), outsideDiameter.mm(), raceway.mm());
    TradeFactor type = TradeFactor.of("bearing type", "cylindrical");
    double hours = RelubricationKernel.empirical(type.value(), n, raceway.mm());
    return new Relubrication(hours, "5·(14·10⁶/(n'·√d) − 4·d), n' = n·2D/(D + d)", EMPIRICAL,
        List.of("n = " + speed, "d = " + raceway, "D = " + outsideDiameter), true, List.of(), Double.NaN);
  }

  /**
   * Corrects for temperature. Do not add the factor Ft to it.
   *
   * @param temperature temperature of the outer ring
   * @param rule one of the two published rules
   * @return the description with the correction
   * @throws InputException if a correction for temperature was stated before
   */
  public Relubrication at(Temperature temperature, TemperatureRule rule) {
    Objects.requireNonNull(temperature, "temperature");
    Objects.requireNonNull(rule, "rule");
    return with(new Correction("kT", "temperature: " + rule, rule.expression(), rule.factor(temperature.celsius()), rule.source(),
        "T = " + temperature), temperature.celsius());
  }

  /**
   * Corrects for a full complement of rollers.
   *
   * @param rule published tenth or customary half
   * @return the description with the correction
   * @throws InputException if it was stated before
   */
  public Relubrication fullComplement(FullComplementRule rule) {
    Objects.requireNonNull(rule, "rule");
    return with(new Correction("kv", "full complement: " + rule, "factor of the rule", rule.factor(), rule.source(), ""),
        celsius);
  }

  /**
   * Corrects for an axis that stands upright.
   *
   * @return the description with half the interval
   * @throws InputException if it was stated before
   */
  public Relubrication verticalAxis() {
    return with(new Correction("kp", "vertical axis", "0.5", 0.5, VERTICAL, ""), celsius);
  }

  /**
   * Corrects by a factor of the trade: contamination, moisture, vibration, position, housing temperature. Recalled values.
   *
   * @param factor the factor, not that of the bearing type
   * @return the description with the correction
   * @throws InputException if it doubles another correction
   */
  public Relubrication trade(TradeFactor factor) {
    Objects.requireNonNull(factor, "factor");
    if (factor.factor().equals("bearing type")) {
      throw new InputException("trade factor", "bearing type", "Ft, Fc, Fm, Fv or Fp",
          "the begin holds the bearing type already");
    }
    String meaning = name(factor.factor()) + ": " + factor.condition();
    return with(new Correction(factor.factor(), meaning, "table", factor.value(), factor.source(), ""), celsius);
  }

  private static String name(String factor) {
    return switch (factor) {
      case "Ft" -> "housing";
      case "Fc" -> "dirt";
      case "Fm" -> "moisture";
      case "Fv" -> "vibration";
      default -> "axis";
    };
  }

  private Relubrication with(Correction correction, double temperature) {
    String subject = subject(correction.symbol());
    for (Correction earlier : corrections) {
      if (subject(earlier.symbol()).equals(subject)) {
        throw new InputException("correction " + correction.symbol(), correction.meaning(), "stated once",
            "the interval is corrected already by " + earlier.symbol() + " (" + earlier.meaning() + ")");
      }
    }
    List<Correction> more = new ArrayList<>(corrections);
    more.add(correction);
    return new Relubrication(base, expression, source, inputs, empirical, List.copyOf(more), temperature);
  }

  /** Two symbols of one subject would correct twice. */
  private static String subject(String symbol) {
    return switch (symbol) {
      case "kT", "Ft" -> "temperature";
      case "kp", "Fp" -> "position";
      default -> symbol;
    };
  }

  /**
   * The interval.
   *
   * @return interval with its corrections, capped where the method ends
   */
  public RelubricationInterval interval() {
    double product = base;
    List<RelubricationInterval.Factor> factors = new ArrayList<>();
    for (Correction c : corrections) {
      product *= c.factor();
      factors.add(new RelubricationInterval.Factor(c.symbol(), c.meaning(), c.expression(), c.factor(), c.source(), c.input()));
    }
    return new RelubricationInterval(
        new RelubricationInterval.Begin(new OperatingTime(base), expression, source, inputs, empirical), factors,
        new OperatingTime(Math.min(product, RelubricationKernel.CAP)), product > RelubricationKernel.CAP,
        Double.isNaN(celsius) ? null : new Temperature(celsius));
  }

  static SourceRef outerRing() {
    return OUTER_RING;
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.quantity.InputException;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import holdfast.quantity.PlainText;
import holdfast.quantity.ThermalExpansion;
import holdfast.tables.Provenance;
import holdfast.tables.Source;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A measured part against its drawing: size at 20 °C, form as far as two-point readings show it, and whether it conforms.
 * The scheme states the guard band at both limits, the whole expanded uncertainty if nothing else is chosen: conformity is
 * proved only inside it, nonconformity only outside it.
 *
 * @param name what it is called, for example {@code "bore"}; not blank
 * @param drawing what the drawing asks for
 * @param measured what was measured
 * @param expansion coefficient of linear expansion of the part
 * @param scheme readings that a proof of conformity needs, and the rule of decision
 */
@Source(document = "ISO 14253-1:2017", locator = "decision rules", provenance = Provenance.MEMORY)
public record PartAcceptance(
    String name, TolerancedSize drawing, MeasuredPart measured, ThermalExpansion expansion, MeasuringScheme scheme)
    implements Traced, Serializable {
  private static final SourceRef CORRECTION =
      SourceRef.derived("free linear expansion of part and gauge from the reference temperature of 20 °C");
  private static final SourceRef FORM = SourceRef.derived("differences of the diameters read");
  private static final SourceRef SCHEME = SourceRef.commonPractice("three stations, two directions");
  private static final SourceRef RECORDS = SourceRef.commonPractice("gauges in calibration, with their numbers in the record");
  private static final SourceRef FINENESS =
      SourceRef.commonPractice("uncertainty a tenth of the tolerance, at most a quarter");
  /** A reading farther than this share from the nominal size is a slip of the unit or of the decimal point. */
  private static final double SLIP = 0.1;

  // Refuses an incomplete record, and readings that belong to another size.
  public PartAcceptance {
    PlainText.name(name, "name of the part");
    Objects.requireNonNull(drawing, "drawing");
    Objects.requireNonNull(measured, "measured");
    Objects.requireNonNull(scheme, "scheme");
    if (name.isBlank()) {
      throw new InputException("name of the part", "''", "not blank", "the verdict must say on what it is");
    }
    double nominal = drawing.nominalSize().mm();
    for (Length size : measured.readings(expansion).sizes()) {
      if (Math.abs(size.mm() - nominal) > SLIP * nominal) {
        throw new InputException("reading of the " + name, size.toString(),
            "within a tenth of the nominal size " + drawing.nominalSize(), "check unit and decimal point");
      }
    }
  }

  /**
   * All readings, with temperature and uncertainty.
   *
   * @return the readings
   */
  public Readings readings() {
    return measured.readings(expansion);
  }

  /**
   * Least and greatest size at 20 °C.
   *
   * @return the extreme readings, corrected
   */
  public LimitsOfSize sizes() {
    return readings().range();
  }

  /**
   * Mean size at 20 °C.
   *
   * @return the mean of all readings, corrected
   */
  public Length mean() {
    return readings().mean();
  }

  /**
   * Out of round, as seen: the greatest difference of the diameters of one station. Lobes of odd number do not show in
   * diameters.
   *
   * @return the difference at 20 °C; 0 if each station was read in one direction only
   */
  public Length outOfRound() {
    return measured.stationReadings(expansion).stream()
        .map(station -> station.range().tolerance())
        .max(Comparator.naturalOrder())
        .orElseThrow();
  }

  /**
   * Taper, as seen: the difference of the mean diameters of the largest and the smallest station. Bell mouth, waist and
   * barrel count as taper too.
   *
   * @return the difference at 20 °C; 0 if there is one station only
   */
  public Length taper() {
    double least = Double.POSITIVE_INFINITY;
    double greatest = 0;
    for (Readings station : measured.stationReadings(expansion)) {
      least = Math.min(least, station.mean().mm());
      greatest = Math.max(greatest, station.mean().mm());
    }
    return new Length(greatest - least);
  }

  /**
   * Distance of the worst reading inside its limit.
   *
   * @return the margin at 20 °C; negative if a reading lies outside
   */
  public Length margin() {
    Length above = excess();
    Length below = lack();
    return (above.compareTo(below) >= 0 ? above : below).negated();
  }

  /**
   * How far the greatest reading lies over the upper limit.
   *
   * @return the excess at 20 °C; negative if it lies below the limit
   */
  public Length excess() {
    return sizes().upper().minus(drawing.limits().upper());
  }

  /**
   * How far the least reading lies under the lower limit.
   *
   * @return the lack at 20 °C; negative if it lies over the limit
   */
  public Length lack() {
    return drawing.limits().lower().minus(sizes().lower());
  }

  /**
   * Sizes at 20 °C that prove conformity: the limits drawn in by the guard band.
   *
   * @return the zone; empty if the guard band is more than half of the tolerance, then no reading proves conformity
   */
  public Optional<LimitsOfSize> acceptanceZone() {
    Length guard = guardBand();
    Length lower = drawing.limits().lower().plus(guard);
    Length upper = drawing.limits().upper().minus(guard);
    return lower.compareTo(upper) <= 0 ? Optional.of(new LimitsOfSize(lower, upper)) : Optional.empty();
  }

  /**
   * What the gauge must show, at the temperatures of part and gauge, for the part to conform.
   *
   * @return the acceptance zone as shown; empty if no reading proves conformity
   */
  public Optional<LimitsOfSize> shownZone() {
    return acceptanceZone()
        .map(zone -> new LimitsOfSize(measured.shownFor(zone.lower(), expansion), measured.shownFor(zone.upper(), expansion)));
  }

  /**
   * The verdict on the part.
   *
   * @return not proved either way with a gauge out of calibration; else not conforming if a reading proves it; conforming if
   *     all readings prove it and no reading is left out; else not proved either way
   */
  public Conformity conformity() {
    if (outOfCalibration().isPresent()) {
      return Conformity.UNDECIDED;
    }
    return tooFew().isPresent() ? bySize().and(Conformity.UNDECIDED) : bySize();
  }

  /**
   * The verdict of the readings alone, however few they are and whatever the state of the gauge.
   *
   * @return what the worst reading says
   */
  public Conformity bySize() {
    return Conformity.of(margin(), measured.gauge().uncertainty(), scheme.rule());
  }

  private Length guardBand() {
    return scheme.rule().guardBand(measured.gauge().uncertainty());
  }

  /**
   * What keeps the readings from proving anything, apart from the sizes themselves.
   *
   * @return one clause each; empty if nothing does
   */
  public List<String> limitations() {
    return Stream.of(tooFew(), outOfCalibration()).flatMap(Optional::stream).toList();
  }

  private Optional<String> tooFew() {
    int stations = measured.stations().size();
    int directions = measured.stations().stream().mapToInt(List::size).min().orElse(0);
    return stations < scheme.stations() || directions < scheme.directions()
        ? Optional.of("read at " + new MeasuringScheme(stations, directions) + ", " + scheme + " are required")
        : Optional.empty();
  }

  private Optional<String> outOfCalibration() {
    Gauge gauge = measured.gauge();
    return gauge
        .calibrationEnd()
        .filter(end -> measured.day().map(day -> day.isAfter(end)).orElse(false))
        .map(end -> gauge.id() + " was out of calibration: it ended on " + end + ", the part was measured on " + measured.date());
  }

  /** Corrected sizes and, as the last step, the margin of the worst reading. */
  @Override
  public Derivation explain() {
    LimitsOfSize limits = drawing.limits();
    String rule = "reading (1 + alpha_g (T_g - 20 °C)) / (1 + alpha (T - 20 °C))";
    return Derivation.of(this.toString())
        .steps(drawing.explain())
        .step("D_min", "least size at 20 °C", "least " + rule, sizes().lower().mm(), "mm", CORRECTION, inputs())
        .step("D_max", "greatest size at 20 °C", "greatest " + rule, sizes().upper().mm(), "mm", CORRECTION)
        .step("o", "out of round, as seen", "greatest difference of the diameters of one station",
            outOfRound().in(KnownUnits.UM), "µm", FORM)
        .step("t", "taper, as seen", "greatest difference of the means of stations", taper().in(KnownUnits.UM), "µm", FORM)
        .step("m", "margin of the worst reading; conforming from " + FitText.amount(guardBand(), false) + " on ("
                + scheme.rule() + "), not conforming below the same amount outside",
            "min(D_min - lower limit, upper limit - D_max)", margin().in(KnownUnits.UM), "µm", scheme.rule().source(),
            "lower limit = " + FitText.size(limits.lower()), "upper limit = " + FitText.size(limits.upper()))
        .build();
  }

  private String[] inputs() {
    List<String> inputs = new ArrayList<>();
    measured.stations().forEach(station -> station.forEach(r -> inputs.add("reading = " + r.exactly(KnownUnits.MM))));
    inputs.add("alpha_g = " + measured.gauge().expansion());
    inputs.add("T_g = " + measured.gauge().temperature());
    inputs.add("alpha = " + expansion);
    inputs.add("T = " + measured.temperature());
    return inputs.toArray(String[]::new);
  }

  @Override
  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>(drawing.warnings());
    if (bySize() == Conformity.UNDECIDED) {
      warnings.add(new Warning("within-uncertainty",
          "a reading of the " + name + " lies " + place() + " a limit, within the uncertainty of ± "
              + FitText.amount(measured.gauge().uncertainty(), inInches()), scheme.rule().source()));
    }
    limitations().forEach(text -> warnings.add(new Warning("limited-readings", name + ": " + text, SCHEME)));
    coarse().ifPresent(warnings::add);
    sensitive().ifPresent(warnings::add);
    if (measured.gauge().calibrationEnd().isEmpty() || measured.day().isEmpty()) {
      warnings.add(new Warning("calibration-unknown",
          name + ": day of the measurement or end of the gauge's calibration is not recorded", RECORDS));
    }
    return List.copyOf(warnings);
  }

  private Optional<Warning> coarse() {
    double share = measured.gauge().uncertainty().ratio(drawing.tolerance());
    if (share <= 0.25) {
      return Optional.empty();
    }
    String message = name + ": the uncertainty is " + Numbers.significant(100 * share, 3) + " % of the tolerance"
        + (acceptanceZone().isEmpty() ? ", so no reading can prove conformity" : "; a quarter is the usual most");
    return Optional.of(new Warning("coarse-gauge", message, FINENESS));
  }

  /** Temperatures are corrected, but a thermometer errs too. */
  private Optional<Warning> sensitive() {
    double part = Math.abs(expansion.perKelvin() * (measured.temperature().celsius() - ThermalFitKernel.REFERENCE));
    double gauge =
        Math.abs(measured.gauge().expansion().perKelvin()
            * (measured.gauge().temperature().celsius() - ThermalFitKernel.REFERENCE));
    Length shift = drawing.nominalSize().times(Math.max(part, gauge));
    if (shift.compareTo(measured.gauge().uncertainty()) <= 0) {
      return Optional.empty();
    }
    String message = name + ": away from 20 °C part or gauge has grown or shrunk by " + tenths(shift)
        + ", more than the uncertainty; a temperature wrong by 1 K moves the size by "
        + tenths(drawing.nominalSize().times(expansion.perKelvin()));
    return Optional.of(new Warning("temperature-correction", message, CORRECTION));
  }

  private String place() {
    double margin = margin().mm();
    // Below a tenth of a micrometre the side is noise.
    return Math.abs(margin) < 1e-4 ? "on" : FitText.amount(margin(), inInches()) + (margin < 0 ? " outside" : " inside");
  }

  private static String tenths(Length amount) {
    return amount.text(KnownUnits.UM, 1);
  }

  private boolean inInches() {
    return drawing.origin().inInches();
  }

  /** For example {@code "bore 18 S6: conforming, 17.9668 mm … 17.9690 mm at 20 °C, ± 1.5 µm"}. */
  @Override
  public String toString() {
    return name + " " + FitText.nominal(drawing.nominalSize(), inInches()) + " " + drawing.designation() + ": " + conformity()
        + ", " + FitText.measured(sizes(), inInches()) + " at 20 °C, ± "
        + FitText.amount(measured.gauge().uncertainty(), inInches());
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.quantity.Temperature;
import holdfast.quantity.ThermalExpansion;
import holdfast.tables.Provenance;
import holdfast.tables.Source;
import java.io.Serializable;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What was written down when a bore or a stud was measured: diameters as the gauge showed them, at stations from the mouth
 * of the seat inwards, in directions across it.
 *
 * @param gauge the gauge
 * @param stations the diameters shown, station by station; each station at least one
 * @param temperature temperature of the part; null if it was not recorded
 * @param date day of the measurement; null if it was not recorded
 */
public record MeasuredPart(Gauge gauge, List<List<Length>> stations, Temperature temperature, LocalDate date)
    implements Serializable {

  // Keeps unmodifiable copies; refuses a station without a reading and a size that is none.
  public MeasuredPart {
    Objects.requireNonNull(stations, "stations");
    Objects.requireNonNull(gauge, "gauge");
    stations = stations.stream().map(List::copyOf).toList();
    for (List<Length> station : stations) {
      if (station.isEmpty()) {
        throw new InputException("station", "without readings", "one with at least one reading", "it was not measured");
      }
      for (Length reading : station) {
        if (reading.mm() <= 0) {
          throw new InputException("reading", reading.toString(), "over 0 mm", "it is the size of a part");
        }
      }
    }
  }

  /**
   * A part that is about to be measured.
   *
   * @param gauge the gauge
   * @return the part without readings
   */
  public static MeasuredPart by(Gauge gauge) {
    return new MeasuredPart(gauge, List.of(), null, null);
  }

  /**
   * Adds the readings of a station.
   *
   * @param directions the diameters as the gauge showed them, one for each direction, at least one
   * @return the part with one station more
   */
  public MeasuredPart station(Length... directions) {
    Objects.requireNonNull(directions, "directions");
    List<List<Length>> more = new ArrayList<>(stations);
    more.add(List.of(directions));
    return new MeasuredPart(gauge, more, temperature, date);
  }

  /**
   * States the temperature of the part.
   *
   * @param part temperature of the part when it was measured
   * @return the part
   */
  public MeasuredPart at(Temperature part) {
    Objects.requireNonNull(part, "part");
    return new MeasuredPart(gauge, stations, part, date);
  }

  /**
   * States one temperature for part and gauge where theirs is not stated; the gauge then counts as one of steel.
   *
   * @param room the temperature to which both have come
   * @return the part
   */
  public MeasuredPart allAt(Temperature room) {
    Objects.requireNonNull(room, "room");
    Gauge warmed = gauge.temperature() == null ? gauge.steelAt(room) : gauge;
    return new MeasuredPart(warmed, stations, temperature == null ? room : temperature, date);
  }

  /**
   * States the day of the measurement.
   *
   * @param day the day
   * @return the part
   */
  public MeasuredPart on(LocalDate day) {
    Objects.requireNonNull(day, "day");
    return new MeasuredPart(gauge, stations, temperature, day);
  }

  /**
   * The day of the measurement, if it was recorded.
   *
   * @return the day
   */
  public Optional<LocalDate> day() {
    return Optional.ofNullable(date);
  }

  /**
   * What is still missing before a size at 20 °C can be told.
   *
   * @return the names of all that is missing; empty if nothing is
   */
  public List<String> missing() {
    List<String> missing = new ArrayList<>();
    if (stations.isEmpty()) {
      missing.add("readings");
    }
    if (temperature == null) {
      missing.add("temperature of the part");
    }
    if (gauge.temperature() == null || gauge.expansion() == null) {
      missing.add("temperature of the gauge");
    }
    return List.copyOf(missing);
  }

  /**
   * All readings, corrected for the temperature of the gauge, to be corrected for that of the part.
   *
   * @param expansion coefficient of linear expansion of the part
   * @return the readings
   * @throws InputException if something is missing; one error names all of it
   */
  public Readings readings(ThermalExpansion expansion) {
    requireComplete();
    return readings(stations.stream().flatMap(List::stream).toList(), expansion);
  }

  /**
   * The readings of each station, corrected for the temperature of the gauge, to be corrected for that of the part.
   *
   * @param expansion coefficient of linear expansion of the part
   * @return the readings, station by station
   * @throws InputException if something is missing; one error names all of it
   */
  public List<Readings> stationReadings(ThermalExpansion expansion) {
    requireComplete();
    return stations.stream().map(station -> readings(station, expansion)).toList();
  }

  /**
   * What the gauge shows when the part has a size at 20 °C.
   *
   * @param at20 size of the part at 20 °C
   * @param expansion coefficient of linear expansion of the part
   * @return the size shown at the temperatures of part and gauge
   * @throws InputException if something is missing
   */
  @Source(
      document = "derivation",
      locator = "free linear expansion of part and gauge from the reference temperature of 20 °C",
      provenance = Provenance.DERIVED)
  public Length shownFor(Length at20, ThermalExpansion expansion) {
    Objects.requireNonNull(at20, "at20");
    Objects.requireNonNull(expansion, "expansion");
    requireComplete();
    double atTemperature = ThermalFitKernel.sizeAt(at20.mm(), expansion.perKelvin(), temperature.celsius());
    return new Length(
        ThermalFitKernel.sizeAt20(atTemperature, gauge.expansion().perKelvin(), gauge.temperature().celsius()));
  }

  private Readings readings(List<Length> shown, ThermalExpansion expansion) {
    double alpha = gauge.expansion().perKelvin();
    double celsius = gauge.temperature().celsius();
    // A warm scale is longer than it says.
    List<Length> sizes = shown.stream().map(l -> new Length(ThermalFitKernel.sizeAt(l.mm(), alpha, celsius))).toList();
    return new Readings(sizes, gauge.uncertainty(), temperature, expansion);
  }

  private void requireComplete() {
    List<String> missing = missing();
    if (!missing.isEmpty()) {
      throw new InputException("measured part", "without " + String.join(", ", missing), "complete",
          "nothing is assumed in place of what was not recorded");
    }
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.quantity.Temperature;
import holdfast.quantity.ThermalExpansion;
import holdfast.tables.Provenance;
import holdfast.tables.Source;
import java.io.Serializable;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * A gauge as it was used. What matters of its temperature is that of its scale; of a comparator, that of the ring or the
 * gauge blocks to which it was set.
 *
 * @param id its number or name in the records, not blank
 * @param uncertainty expanded uncertainty U of a reading (coverage factor 2) of gauge and user together, 0 or more
 * @param temperature temperature of the scale or of the setting piece; null if it was not recorded
 * @param expansion its coefficient of linear expansion; null if it was not recorded
 * @param calibratedUntil last day of its calibration; null if it was not recorded
 */
public record Gauge(
    String id, Length uncertainty, Temperature temperature, ThermalExpansion expansion, LocalDate calibratedUntil)
    implements Serializable {
  /** Steel of gauges and setting rings, 1/K. */
  private static final ThermalExpansion STEEL = new ThermalExpansion(11.5e-6);

  // Refuses a gauge that nobody could find again, and a negative uncertainty.
  public Gauge {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(uncertainty, "uncertainty");
    if (id.isBlank()) {
      throw new InputException("gauge", "''", "named", "a reading that nobody can repeat proves nothing");
    }
    Check.notNegative(uncertainty.mm(), "uncertainty", "mm", "it is half of an interval");
    if (expansion != null) {
      ThermalExpansion.ofSolid(expansion.perKelvin(), "coefficient of expansion of the gauge");
    }
  }

  /**
   * A gauge whose temperature is still to be stated.
   *
   * @param id its number or name in the records, not blank
   * @param uncertainty expanded uncertainty of a reading, 0 or more
   * @return the gauge
   */
  public static Gauge of(String id, Length uncertainty) {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(uncertainty, "uncertainty");
    return new Gauge(id, uncertainty, null, null, null);
  }

  /**
   * The same gauge at a temperature.
   *
   * @param scale temperature of its scale or setting piece
   * @param material coefficient of expansion of the scale or setting piece
   * @return the gauge
   */
  public Gauge at(Temperature scale, ThermalExpansion material) {
    Objects.requireNonNull(scale, "scale");
    Objects.requireNonNull(material, "material");
    return new Gauge(id, uncertainty, scale, material, calibratedUntil);
  }

  /**
   * The same gauge at a temperature, its scale or setting piece of steel with 11.5 µm/(m·K).
   *
   * @param scale temperature of its scale or setting piece
   * @return the gauge
   */
  @Source(document = "common practice", locator = "steel 11.5 µm/(m·K)", provenance = Provenance.COMMON_PRACTICE)
  public Gauge steelAt(Temperature scale) {
    Objects.requireNonNull(scale, "scale");
    return at(scale, STEEL);
  }

  /**
   * The same gauge with the end of its calibration.
   *
   * @param lastDay last day on which it may be used
   * @return the gauge
   */
  public Gauge calibratedUntil(LocalDate lastDay) {
    Objects.requireNonNull(lastDay, "lastDay");
    return new Gauge(id, uncertainty, temperature, expansion, lastDay);
  }

  /**
   * The last day of its calibration, if it was recorded.
   *
   * @return the day
   */
  public Optional<LocalDate> calibrationEnd() {
    return Optional.ofNullable(calibratedUntil);
  }

  /** For example {@code "bore gauge 7, ± 1.5 µm"}. */
  @Override
  public String toString() {
    return id + ", ± " + FitText.amount(uncertainty, false);
  }
}

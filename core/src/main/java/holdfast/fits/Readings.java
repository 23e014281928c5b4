// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.quantity.Temperature;
import holdfast.quantity.ThermalExpansion;
import holdfast.tables.Provenance;
import holdfast.tables.Source;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * Readings of the size of one part, with the expanded uncertainty of the gauge (coverage factor 2) and the temperature
 * of the part. The readings are true sizes at that temperature: the gauge is at 20 °C or its own expansion is
 * corrected.
 *
 * @param sizes the readings, at least one, each over 0
 * @param uncertainty expanded uncertainty of a reading, 0 or more
 * @param temperature temperature of the part when it was measured
 * @param expansion its coefficient of linear expansion; without effect at 20 °C
 */
@Source(
    document = "derivation",
    locator = "free linear expansion from the reference temperature of 20 °C",
    provenance = Provenance.DERIVED)
public record Readings(List<Length> sizes, Length uncertainty, Temperature temperature, ThermalExpansion expansion)
    implements Serializable {

  // Refuses an empty list, sizes that are not positive, a negative uncertainty, and temperatures that cannot be corrected.
  public Readings {
    Objects.requireNonNull(sizes, "sizes");
    Objects.requireNonNull(uncertainty, "uncertainty");
    Objects.requireNonNull(temperature, "temperature");
    Objects.requireNonNull(expansion, "expansion");
    ThermalExpansion.ofSolid(expansion.perKelvin(), "coefficient of expansion of the part");
    sizes = List.copyOf(sizes);
    if (sizes.isEmpty()) {
      throw new InputException("readings", "none", "at least one", "a part without a reading is not measured");
    }
    for (Length size : sizes) {
      if (size.mm() <= 0) {
        throw new InputException("reading", size.toString(), "over 0 mm", "it is the size of a part");
      }
      ThermalFitKernel.sizeAt20(size.mm(), expansion.perKelvin(), temperature.celsius());
    }
    if (uncertainty.mm() < 0) {
      throw new InputException("uncertainty", uncertainty.toString(), "0 µm or more", "it is half of an interval");
    }
  }

  /**
   * Readings at 20 °C.
   *
   * @param uncertainty expanded uncertainty of a reading, 0 or more
   * @param sizes the readings, at least one
   * @return the readings
   */
  public static Readings at20(Length uncertainty, Length... sizes) {
    Objects.requireNonNull(sizes, "sizes");
    return new Readings(List.of(sizes), uncertainty, new Temperature(ThermalFitKernel.REFERENCE), new ThermalExpansion(0));
  }

  /**
   * Readings of a part at another temperature.
   *
   * @param partTemperature temperature of the part when it was measured
   * @param partExpansion its coefficient of linear expansion
   * @return the same readings, to be corrected to 20 °C
   */
  public Readings takenAt(Temperature partTemperature, ThermalExpansion partExpansion) {
    Objects.requireNonNull(partTemperature, "partTemperature");
    Objects.requireNonNull(partExpansion, "partExpansion");
    return new Readings(sizes, uncertainty, partTemperature, partExpansion);
  }

  /**
   * Smallest and greatest reading, corrected to 20 °C.
   *
   * @return the range of the readings
   */
  public LimitsOfSize range() {
    double least = Double.POSITIVE_INFINITY;
    double greatest = 0;
    for (Length size : sizes) {
      least = Math.min(least, corrected(size));
      greatest = Math.max(greatest, corrected(size));
    }
    return new LimitsOfSize(new Length(least), new Length(greatest));
  }

  /**
   * Mean of the readings, corrected to 20 °C.
   *
   * @return the mean
   */
  public Length mean() {
    return new Length(sizes.stream().mapToDouble(this::corrected).average().orElseThrow());
  }

  /**
   * What the readings say about limits of size.
   *
   * @param limits limits at 20 °C
   * @return proven, undecided or disproved
   */
  @Source(document = "ISO 14253-1:2017", locator = "decision rules", provenance = Provenance.MEMORY)
  public Conformity conformity(LimitsOfSize limits) {
    Objects.requireNonNull(limits, "limits");
    LimitsOfSize range = range();
    double low = range.lower().mm() - limits.lower().mm();
    double high = limits.upper().mm() - range.upper().mm();
    return Conformity.of(new Length(Math.min(low, high)), uncertainty);
  }

  private double corrected(Length size) {
    return ThermalFitKernel.sizeAt20(size.mm(), expansion.perKelvin(), temperature.celsius());
  }
}

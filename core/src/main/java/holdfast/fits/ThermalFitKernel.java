// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.ThermalExpansion;
import holdfast.tables.Provenance;
import holdfast.tables.Source;

/**
 * Sizes and clearances away from the reference temperature of 20 °C, for free linear expansion: d(T) = d20 · (1 + α ·
 * (T - 20 °C)). Lengths in mm, α in 1/K, temperatures in °C. Thread-safe; nothing is allocated unless the input is
 * refused.
 */
@Source(
    document = "derivation",
    locator = "free linear expansion from the reference temperature of 20 °C",
    provenance = Provenance.DERIVED)
public final class ThermalFitKernel {
  /** Reference temperature for sizes, °C (ISO 1). */
  public static final double REFERENCE = 20;

  private ThermalFitKernel() {}

  /**
   * Size of a part at a temperature.
   *
   * @param sizeAt20 size at 20 °C, mm, over 0
   * @param expansion coefficient of linear expansion α, 1/K, -1e-5 to 1e-3
   * @param temperature temperature T of the part, °C
   * @return d(T), mm
   * @throws InputException if an argument is not finite, a size not positive or a coefficient outside its range
   */
  public static double sizeAt(double sizeAt20, double expansion, double temperature) {
    Check.positive(sizeAt20, "size at 20 °C", "mm", "it is the size of a part");
    return sizeAt20 * factor(expansion, temperature);
  }

  /**
   * Size at 20 °C of a part that was measured at another temperature.
   *
   * @param size size at the temperature, mm, over 0
   * @param expansion coefficient of linear expansion α, 1/K, -1e-5 to 1e-3
   * @param temperature temperature T of the part, °C
   * @return d20, mm
   * @throws InputException if an argument is not finite, a size not positive or a coefficient outside its range
   */
  public static double sizeAt20(double size, double expansion, double temperature) {
    Check.positive(size, "size", "mm", "it is the size of a part");
    return size / factor(expansion, temperature);
  }

  /**
   * Clearance of two parts, each at its own temperature.
   *
   * @param hole size of the hole at 20 °C, mm, over 0
   * @param holeExpansion its coefficient of linear expansion, 1/K, -1e-5 to 1e-3
   * @param holeTemperature its temperature, °C
   * @param shaft size of the shaft at 20 °C, mm, over 0
   * @param shaftExpansion its coefficient of linear expansion, 1/K, -1e-5 to 1e-3
   * @param shaftTemperature its temperature, °C
   * @return size of the hole - size of the shaft, mm; negative for an interference
   * @throws InputException if an argument is not finite, a size not positive or a coefficient outside its range
   */
  public static double clearance(
      double hole,
      double holeExpansion,
      double holeTemperature,
      double shaft,
      double shaftExpansion,
      double shaftTemperature) {
    // Small differences of large numbers: the clearance at 20 °C and both expansions are added apart.
    Check.positive(hole, "size of the hole at 20 °C", "mm", "it is the size of a part");
    Check.positive(shaft, "size of the shaft at 20 °C", "mm", "it is the size of a part");
    return (hole - shaft)
        + (hole * (factor(holeExpansion, holeTemperature) - 1) - shaft * (factor(shaftExpansion, shaftTemperature) - 1));
  }

  /**
   * The one temperature of both parts at which they have a wanted clearance.
   *
   * @param hole size of the hole at 20 °C, mm, over 0
   * @param holeExpansion its coefficient of linear expansion, 1/K, -1e-5 to 1e-3
   * @param shaft size of the shaft at 20 °C, mm, over 0
   * @param shaftExpansion its coefficient of linear expansion, 1/K, -1e-5 to 1e-3
   * @param clearance wanted clearance, mm; 0 for the temperature at which an interference is lost
   * @return the temperature, °C; positive infinity if both parts expand alike, below -273.15 if it cannot be reached
   * @throws InputException if an argument is not finite, a size not positive or a coefficient outside its range
   */
  public static double uniformTemperature(
      double hole, double holeExpansion, double shaft, double shaftExpansion, double clearance) {
    Check.positive(hole, "size of the hole at 20 °C", "mm", "it is the size of a part");
    Check.positive(shaft, "size of the shaft at 20 °C", "mm", "it is the size of a part");
    ThermalExpansion.ofSolid(holeExpansion, "coefficient of expansion of the hole");
    ThermalExpansion.ofSolid(shaftExpansion, "coefficient of expansion of the shaft");
    Check.finite(clearance, "wanted clearance", "mm");
    double difference = hole * holeExpansion - shaft * shaftExpansion;
    return Math.abs(difference) < Check.LEAST
        ? Double.POSITIVE_INFINITY
        : REFERENCE + (clearance - (hole - shaft)) / difference;
  }

  private static double factor(double expansion, double temperature) {
    ThermalExpansion.ofSolid(expansion, "coefficient of linear expansion");
    Check.within(temperature, -273.15, 1e4, "temperature", "°C", "absolute zero, and far above any melting point");
    double factor = 1 + expansion * (temperature - REFERENCE);
    return Check.positive(factor, "1 + α · (T - 20 °C)", "", "a part keeps a size");
  }
}

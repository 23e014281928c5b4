// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Temperature;
import holdfast.tables.SourceRef;
import holdfast.trace.Message;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;

/**
 * A temperature that a part must not exceed while parts are heated for assembly.
 *
 * @param subject what suffers, for example {@code "seals"}
 * @param limit the greatest temperature
 * @param source where the limit comes from
 */
public record TemperatureCeiling(String subject, Temperature limit, SourceRef source) implements Serializable {
  public TemperatureCeiling {
    Objects.requireNonNull(subject, "subject");
    Objects.requireNonNull(limit, "limit");
    Objects.requireNonNull(source, "source");
  }

  /**
   * The ceiling of a material, for its temper or strength.
   *
   * @param material the material
   * @return the ceiling of its group, recalled; empty if none is known
   */
  public static Optional<TemperatureCeiling> of(Material material) {
    Objects.requireNonNull(material, "material");
    return HeatTable.limit(material.group())
        .map(
            celsius ->
                new TemperatureCeiling(
                    "strength of " + material.group() + " (" + material.name() + ")",
                    new Temperature(celsius),
                    HeatTable.source()));
  }

  /**
   * Complete rolling bearings without seals or grease.
   *
   * @return 120 °C, common practice
   */
  public static TemperatureCeiling completeBearing() {
    return new TemperatureCeiling(
        "complete rolling bearing", new Temperature(120), SourceRef.commonPractice("complete rolling bearings: 120 °C"));
  }

  /**
   * Sealed or greased rolling bearings.
   *
   * @return 80 °C, common practice
   */
  public static TemperatureCeiling sealedOrGreasedBearing() {
    return new TemperatureCeiling(
        "seals and grease", new Temperature(80), SourceRef.commonPractice("sealed or greased rolling bearings: 80 °C"));
  }

  /**
   * The ceiling in words, its temperature as a quantity.
   *
   * @return subject and limit
   */
  public Message words() {
    return Message.of(subject, ": ", limit);
  }

  @Override
  public String toString() {
    return words().toString();
  }
}

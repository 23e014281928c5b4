// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings.reference;

import holdfast.quantity.Angle;
import holdfast.quantity.Force;
import holdfast.quantity.Length;
import holdfast.quantity.Stress;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * Loads and pressures of all rolling elements.
 *
 * @param elements the elements, row by row
 */
public record LoadDistribution(List<Element> elements) implements Serializable {
  // Keeps an unmodifiable copy.
  public LoadDistribution {
    Objects.requireNonNull(elements, "elements");
    elements = List.copyOf(elements);
  }

  /**
   * One rolling element.
   *
   * @param row row, from 1
   * @param position angle from the load
   * @param load load Q
   * @param contactAngle contact angle of a loaded ball; 0 for rollers
   * @param laminae laminae of a roller from end to end, or the single contact of a ball
   */
  public record Element(int row, Angle position, Force load, Angle contactAngle, List<Lamina> laminae)
      implements Serializable {
    // Keeps an unmodifiable copy.
    public Element {
      Objects.requireNonNull(position, "position");
      Objects.requireNonNull(load, "load");
      Objects.requireNonNull(contactAngle, "contactAngle");
      Objects.requireNonNull(laminae, "laminae");
      laminae = List.copyOf(laminae);
    }
  }

  /**
   * One lamina.
   *
   * @param position axial position of its middle from the middle of the bearing
   * @param load load q
   * @param pressure greatest Hertz pressure, at the inner raceway for rollers and at the harder pressed ring for balls;
   *     edge stress is not in it
   */
  public record Lamina(Length position, Force load, Stress pressure) implements Serializable {
    public Lamina {
      Objects.requireNonNull(position, "position");
      Objects.requireNonNull(load, "load");
      Objects.requireNonNull(pressure, "pressure");
    }
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.lubrication.TradeFactor;
import holdfast.quantity.InputException;
import java.util.Optional;

/** Dust at the place of a roller, by the conditions of the table of greasing factors. */
public enum Dust {
  /** None that counts. */
  NONE(null, 0),
  /** Light, not abrasive. */
  LIGHT("light, non-abrasive dust", 0),
  /** Severe, not abrasive. */
  SEVERE("severe, non-abrasive dust", 1),
  /** Light, abrasive. */
  LIGHT_ABRASIVE("light, abrasive dust", 1),
  /** Severe, abrasive. */
  SEVERE_ABRASIVE("severe, abrasive dust", 2);

  private final String condition;
  private final int steps;

  Dust(String condition, int steps) {
    this.condition = condition;
    this.steps = steps;
  }

  /**
   * Dust by its factor.
   *
   * @param factor a factor Fc; null for none
   * @return the dust
   * @throws InputException if the factor is of another condition
   */
  static Dust of(TradeFactor factor) {
    if (factor == null) {
      return NONE;
    }
    for (Dust dust : values()) {
      if (factor.condition().equals(dust.condition)) {
        return dust;
      }
    }
    throw new InputException("dirt", factor.toString(), "a tabulated condition of factor Fc",
        "how clean the lubricant can stay follows from it");
  }

  /**
   * Its factor on the life of the grease.
   *
   * @return factor Fc; empty for none
   */
  public Optional<TradeFactor> factor() {
    return Optional.ofNullable(condition).map(tabulated -> TradeFactor.of("Fc", tabulated));
  }

  /** Levels of contamination by which it makes a lubricant dirtier than a clean place does. */
  int steps() {
    return steps;
  }

  /** For example {@code "light, abrasive dust"}. */
  @Override
  public String toString() {
    return condition == null ? "no dust" : condition;
  }
}

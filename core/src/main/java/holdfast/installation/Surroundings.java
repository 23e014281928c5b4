// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.lubrication.TradeFactor;
import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Speed;
import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.Objects;

/**
 * What dirt, water and vibration at the place do to the grease. The factors are recalled from the trade, not found in print.
 *
 * @param dirt factor Fc; null if dirt does not count
 * @param moisture factor Fm; null if moisture does not count
 * @param vibration factor Fv; null if vibration does not count
 */
public record Surroundings(TradeFactor dirt, TradeFactor moisture, TradeFactor vibration) implements Serializable {
  // Refuses a factor in the place of another.
  public Surroundings {
    check(dirt, "Fc", "dirt");
    Dust.of(dirt);
    check(moisture, "Fm", "moisture");
    check(vibration, "Fv", "vibration");
  }

  private static void check(TradeFactor factor, String symbol, String name) {
    if (factor != null && !factor.factor().equals(symbol)) {
      throw new InputException(name, factor.toString(), "a factor " + symbol, "each condition has its own factor");
    }
  }

  /**
   * A clean, dry and quiet place.
   *
   * @return surroundings that correct nothing
   */
  public static Surroundings clean() {
    return new Surroundings(null, null, null);
  }

  /**
   * The same with dirt.
   *
   * @param condition as tabulated, or the beginning of just one, for example {@code "light, abrasive dust"}
   * @return the surroundings
   * @throws InputException if no condition or more than one begins so; the message lists them
   */
  public Surroundings dirt(String condition) {
    Objects.requireNonNull(condition, "condition");
    return new Surroundings(TradeFactor.of("Fc", condition), moisture, vibration);
  }

  /**
   * The same with dirt.
   *
   * @param dust the dust of the place
   * @return the surroundings
   */
  public Surroundings dirt(Dust dust) {
    Objects.requireNonNull(dust, "dust");
    return new Surroundings(dust.factor().orElse(null), moisture, vibration);
  }

  /**
   * The dust of the place.
   *
   * @return what the factor of dirt stands for
   */
  public Dust dust() {
    return Dust.of(dirt);
  }

  /**
   * The same with moisture.
   *
   * @param condition as tabulated, or the beginning of just one, for example {@code "occasional condensation"}
   * @return the surroundings
   * @throws InputException if no condition or more than one begins so; the message lists them
   */
  public Surroundings moisture(String condition) {
    Objects.requireNonNull(condition, "condition");
    return new Surroundings(dirt, TradeFactor.of("Fm", condition), vibration);
  }

  /**
   * The same with vibration.
   *
   * @param peak peak velocity of the vibration, 0 or more
   * @return the surroundings
   * @throws InputException if the velocity is negative
   */
  public Surroundings vibration(Speed peak) {
    Objects.requireNonNull(peak, "peak");
    Check.notNegative(peak.mmPerS(), "peak velocity of the vibration", "mm/s", "its size counts");
    return new Surroundings(dirt, moisture, TradeFactor.of("Fv", peak.in(KnownUnits.MM_PER_S)));
  }

  /**
   * The factors that are stated.
   *
   * @return dirt, moisture and vibration in this order, without those that do not count
   */
  public List<TradeFactor> factors() {
    return Stream.of(dirt, moisture, vibration).flatMap(factor -> Optional.ofNullable(factor).stream()).toList();
  }

  /**
   * Whether the place vibrates enough to shake a plain nut loose.
   *
   * @return true if the vibration shortens the interval
   */
  public boolean shaken() {
    return vibration != null && vibration.value() < 1;
  }
}

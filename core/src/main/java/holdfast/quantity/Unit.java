// SPDX-License-Identifier: Apache-2.0
package holdfast.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;

/**
 * A unit of one kind of quantity: value in base units = (value + offset) · factor.
 *
 * @param <Q> the quantity
 */
public final class Unit<Q extends Quantity<Q>> {
  private final String symbol;
  private final List<String> aliases;
  private final double factor;
  private final double offset;
  private final DoubleFunction<Q> fromBase;

  private Unit(String symbol, double factor, double offset, DoubleFunction<Q> fromBase, String... aliases) {
    this.symbol = symbol;
    this.aliases = List.of(aliases);
    this.factor = factor;
    this.offset = offset;
    this.fromBase = fromBase;
  }

  static <Q extends Quantity<Q>> Unit<Q> of(String symbol, double factor, DoubleFunction<Q> fromBase, String... aliases) {
    return new Unit<>(symbol, factor, 0, fromBase, aliases);
  }

  static <Q extends Quantity<Q>> Unit<Q> withOffset(
      String symbol, double factor, double offset, DoubleFunction<Q> fromBase, String... aliases) {
    return new Unit<>(symbol, factor, offset, fromBase, aliases);
  }

  /**
   * Symbol as printed.
   *
   * @return the symbol, for example {@code "N·m"}
   */
  public String symbol() {
    return symbol;
  }

  /**
   * One of this unit in base units, for units without offset.
   *
   * @return the factor
   */
  public double factor() {
    return factor;
  }

  /**
   * Makes a quantity.
   *
   * @param value number of units
   * @return the quantity
   * @throws InputException if the value is not finite or the quantity cannot have it
   */
  public Q of(double value) {
    return fromBase.apply(toBase(value));
  }

  double toBase(double value) {
    return (value + offset) * factor;
  }

  double fromBase(double base) {
    return base / factor - offset;
  }

  /** The symbol and all other names under which the unit is read. */
  List<String> names() {
    List<String> names = new ArrayList<>(aliases);
    names.add(symbol);
    return names;
  }

  boolean isCalled(String text) {
    return symbol.equals(text) || aliases.contains(text);
  }

  @Override
  public String toString() {
    return symbol;
  }
}

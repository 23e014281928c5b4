// SPDX-License-Identifier: Apache-2.0
package holdfast.quantity;

import java.io.InvalidObjectException;
import java.io.ObjectStreamException;
import java.io.Serializable;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;

/**
 * A unit of one kind of quantity: value in base units = (value + offset) · factor.
 *
 * @param <Q> the quantity
 */
public final class Unit<Q extends Quantity<Q>> implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String symbol;
  private final transient List<String> aliases;
  private final transient double factor;
  /** The factor as a quotient of whole numbers: a decimal factor then rounds once, and 1 µm is the same double as 0.001 mm. */
  private final transient double numerator;
  private final transient double denominator;
  private final transient double offset;
  private final transient DoubleFunction<Q> fromBase;

  private Unit(String symbol, double factor, double offset, DoubleFunction<Q> fromBase, String... aliases) {
    this.symbol = symbol;
    this.aliases = List.of(aliases);
    this.factor = factor;
    BigDecimal decimal = BigDecimal.valueOf(factor).stripTrailingZeros();
    BigInteger above = decimal.scaleByPowerOfTen(Math.max(0, decimal.scale())).toBigIntegerExact();
    BigInteger below = BigInteger.TEN.pow(Math.max(0, decimal.scale()));
    BigInteger common = above.gcd(below);
    boolean whole = below.divide(common).bitLength() <= 53 && above.divide(common).bitLength() <= 53;
    this.numerator = whole ? above.divide(common).doubleValue() : factor;
    this.denominator = whole ? below.divide(common).doubleValue() : 1;
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
    return (value + offset) * numerator / denominator;
  }

  double fromBase(double base) {
    return base * denominator / numerator - offset;
  }

  /** The symbol and all other names under which the unit is read. */
  List<String> names() {
    List<String> names = new ArrayList<>(aliases);
    if (!names.contains(symbol)) {
      names.add(symbol);
    }
    return names;
  }

  boolean isCalled(String text) {
    return symbol.equals(text) || aliases.contains(text);
  }

  @Override
  public String toString() {
    return symbol;
  }

  /** Units are constants: a stream holds the place of one, so that what is read is the constant itself. */
  private Object writeReplace() {
    return new Place(KnownUnits.kindOf(this), symbol);
  }

  /** A unit itself is never in a stream. */
  private Object readResolve() throws ObjectStreamException {
    throw new InvalidObjectException("unit: a stream holds the place of a unit");
  }

  private record Place(int kind, String symbol) implements Serializable {
    private Object readResolve() {
      return KnownUnits.unit(kind, symbol);
    }
  }
}

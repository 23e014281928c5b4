// SPDX-License-Identifier: Apache-2.0
package holdfast.quantity;

import java.util.Objects;

/**
 * A quantity with a true zero, so that sums, differences and multiples mean something.
 *
 * @param <Q> the kind itself
 */
public sealed interface Linear<Q extends Linear<Q>> extends Quantity<Q>
    permits Length, Area, Force, Torque, Stress, Angle, TemperatureDifference, RotationalSpeed, Speed,
        KinematicViscosity, Mass, Work, Stiffness, ThermalExpansion, OperatingTime {

  /**
   * Makes a quantity of this kind.
   *
   * @param base value in the base unit, mm for a length
   * @return the quantity
   * @throws InputException if the value is not finite or this kind cannot have it
   */
  Q withBase(double base);

  /**
   * The sum.
   *
   * @param other another of this kind
   * @return this + other
   */
  default Q plus(Q other) {
    Objects.requireNonNull(other, "other");
    return withBase(base() + other.base());
  }

  /**
   * The difference.
   *
   * @param other another of this kind
   * @return this - other
   */
  default Q minus(Q other) {
    Objects.requireNonNull(other, "other");
    return withBase(base() - other.base());
  }

  /**
   * A multiple.
   *
   * @param factor a finite number
   * @return this · factor
   * @throws InputException if the factor or the product is not finite
   */
  default Q times(double factor) {
    return withBase(base() * Check.finite(factor, "factor", ""));
  }

  /**
   * A fraction.
   *
   * @param divisor a finite number other than 0
   * @return this / divisor
   * @throws InputException if the divisor is 0 or not finite
   */
  default Q dividedBy(double divisor) {
    return withBase(base() / Check.nonZero(divisor, "divisor", "", "a quantity cannot be divided by 0"));
  }

  /**
   * The ratio to another of this kind.
   *
   * @param other another of this kind, not zero
   * @return this / other
   * @throws InputException if the other is zero
   */
  default double ratio(Q other) {
    Objects.requireNonNull(other, "other");
    Check.nonZero(other.base(), "divisor of a ratio", "", "a quantity cannot be divided by 0");
    return Check.finite(base() / other.base(), "ratio", "");
  }

  /**
   * The opposite.
   *
   * @return -this
   */
  default Q negated() {
    return withBase(0.0 - base());
  }
}

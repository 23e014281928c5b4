// SPDX-License-Identifier: Apache-2.0
package holdfast.quantity;

import java.util.Objects;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.numbers.rootfinder.BrentSolver;

/** Roots by Brent's method of the library. The one door to it, so that its own exceptions reach nobody. */
public final class Root {
  private static final int MOST_EVALUATIONS = 500;

  private Root() {}

  /**
   * The root of a function between two numbers at which it has different signs.
   *
   * @param function a continuous function (any unit)
   * @param low lower end in the unit of the argument
   * @param high upper end in the unit of the argument, over the lower
   * @param relative relative accuracy of the root (dimensionless)
   * @param absolute absolute accuracy of the root in the unit of the argument
   * @param what name of the root in an error
   * @return the root in the unit of the argument
   * @throws InputException if the function does not change its sign between the ends, or the search does not end
   */
  public static double between(
      DoubleUnaryOperator function, double low, double high, double relative, double absolute, String what) {
    Objects.requireNonNull(function, "function");
    Objects.requireNonNull(what, "what");
    int[] evaluations = {0};
    DoubleUnaryOperator bounded = x -> {
      double y = function.applyAsDouble(x);
      // The library's search has no end of its own where a value is not a number.
      if (Double.isNaN(y) || ++evaluations[0] > MOST_EVALUATIONS) {
        throw none(low, high, what);
      }
      return y;
    };
    // The library's exception for ends of one sign is not public, so the ends are looked at here.
    if (!(low < high) || !Double.isFinite(high - low)
        || sameSign(bounded.applyAsDouble(low), bounded.applyAsDouble(high))) {
      throw none(low, high, what);
    }
    return new BrentSolver(relative, absolute, 1e-16).findRoot(bounded, low, high);
  }

  private static InputException none(double low, double high, String what) {
    return new InputException(
        what, "without an answer between " + low + " and " + high, "one that the other values determine",
        "no number balances these values; one of them is far outside what a machine has");
  }

  private static boolean sameSign(double one, double other) {
    return (one > 0 && other > 0) || (one < 0 && other < 0);
  }
}

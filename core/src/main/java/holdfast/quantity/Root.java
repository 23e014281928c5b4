// SPDX-License-Identifier: Apache-2.0
package holdfast.quantity;

import java.util.Objects;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.exception.MathIllegalArgumentException;
import org.apache.commons.math3.exception.MathIllegalStateException;

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
    try {
      return new BrentSolver(relative, absolute, 1e-16).solve(MOST_EVALUATIONS, function::applyAsDouble, low, high);
    } catch (MathIllegalArgumentException | MathIllegalStateException e) {
      throw new InputException(
          what, "without an answer between " + low + " and " + high, "one that the other values determine",
          "no number balances these values; one of them is far outside what a machine has");
    }
  }
}

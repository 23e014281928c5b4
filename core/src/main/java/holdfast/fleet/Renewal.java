// SPDX-License-Identifier: Apache-2.0
package holdfast.fleet;

import holdfast.quantity.InputException;
import holdfast.quantity.Numbers;

/**
 * Renewal function: expected number of failures of one place in which a failed part is replaced at once by a new one,
 * {@code M(t) = F(t) + ∫ M(t − x) dF(x)} with F = 1 − S. The integral is a midpoint sum in the sense of Stieltjes; the
 * number of steps is doubled until the result stands still. Not a kernel: it allocates its grid.
 */
final class Renewal {
  private static final int FIRST_STEPS = 256;
  private static final int MOST_STEPS = 8192;
  /** Change on doubling the steps at which the result is taken. */
  private static final double RELATIVE = 1e-4;
  private static final double ABSOLUTE = 1e-7;

  private Renewal() {}

  /** Expected failures of a place within some hours, for a part that has run for its age already. */
  static double expected(Survival survival, double hours, double age) {
    if (hours == 0) {
      return 0;
    }
    double before = expected(survival, hours, age, FIRST_STEPS);
    for (int steps = 2 * FIRST_STEPS; steps <= MOST_STEPS; steps *= 2) {
      double now = expected(survival, hours, age, steps);
      if (Math.abs(now - before) <= RELATIVE * now + ABSOLUTE) {
        return now;
      }
      before = now;
    }
    throw new InputException("running hours in the period", Numbers.shortest(hours) + " h", "fewer",
        "parts fail so often in the period that expected replacements do not settle in " + MOST_STEPS + " steps");
  }

  private static double expected(Survival survival, double hours, double age, int n) {
    double h = hours / n;
    double[] m = renewal(survival, h, n);
    if (age == 0) {
      return m[n];
    }
    // The part in place fails first after its own remaining life, each later one after the life of a new part.
    double sum = 0;
    double failed = 0;
    for (int j = 1; j <= n; j++) {
      double next = 1 - survival.at(j * h, age);
      double since = 0.5 * (m[n - j] + m[n - j + 1]);
      sum += (1 + since) * (next - failed);
      failed = next;
    }
    return sum;
  }

  /** M at the grid points 0, h, … n·h. */
  private static double[] renewal(Survival survival, double h, int n) {
    double[] atPoint = new double[n + 1];
    double[] atMiddle = new double[n + 1];
    double last = 0;
    for (int i = 0; i <= n; i++) {
      atPoint[i] = 1 - survival.at(i * h);
      atMiddle[i] = 1 - survival.at((i + 0.5) * h);
      if (atPoint[i] < last || atMiddle[i] < atPoint[i]) {
        throw new InputException("survival near " + Numbers.significant(i * h, 6) + " h", "growing", "falling or level",
            "survival never grows");
      }
      last = atMiddle[i];
    }
    if (atMiddle[0] >= 1) {
      // No part outlives half a step: the sum below would divide by zero; more steps resolve it.
      double[] none = new double[n + 1];
      java.util.Arrays.fill(none, Double.POSITIVE_INFINITY);
      none[0] = 0;
      return none;
    }
    double[] m = new double[n + 1];
    for (int i = 1; i <= n; i++) {
      double sum = atPoint[i] - m[i - 1] * atMiddle[0];
      for (int j = 1; j < i; j++) {
        sum += (m[j] - m[j - 1]) * atMiddle[i - j];
      }
      m[i] = sum / (1 - atMiddle[0]);
    }
    return m;
  }
}

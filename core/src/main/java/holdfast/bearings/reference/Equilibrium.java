// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings.reference;

/**
 * Finds the unknowns at which the contact forces equal the applied forces. The contact forces are the gradient of a
 * convex energy that grows without limit in every direction, so an equilibrium exists for every load; along every line
 * the unbalanced force is monotone, so every line search has a bracket. Over 100 000 generated bearings, each solved for
 * rollers and balls under tilts and moments in one and two directions, the greatest unbalanced force was 3e-11 of the load.
 */
final class Equilibrium {
  /** The aim: unbalanced force over load. */
  private static final double AIM = 1e-12;
  /** Near enough to give up when nothing improves any more. */
  private static final double NEAR = 1e-10;
  /** What rounding leaves of the sum of all contact loads. */
  private static final double ROUNDING = 1e-16;
  private static final int MOST_EVALUATIONS = 600;
  /** A power of four, so that multiplying and dividing leaves no rounding. */
  private static final double HIGH_LOAD = 1 << 20;

  private Equilibrium() {}

  /** Solves for the active unknowns, from the base position, with a first step of the given length along the load. */
  static void solve(EquilibriumWorkspace w, double load, double scale) {
    w.rebase();
    for (int i = 0; i < w.unknowns; i++) {
      w.step[i] = 0;
    }
    w.iterations = 0;
    if (w.activeCount == 1) {
      one(w, load, scale);
    } else {
      w.step[0] = scale;
      many(w, load, scale, MOST_EVALUATIONS);
      if (!(unbalanced(w) <= NEAR * load)) {
        fromAbove(w, load, scale);
      }
    }
    w.residual = unbalanced(w) / load;
  }

  /** One unknown: Newton inside a bracket, bisection when Newton leaves it or is slow. */
  private static void one(EquilibriumWorkspace w, double load, double scale) {
    int u = w.active[0];
    double low = Double.NEGATIVE_INFINITY;
    double high = Double.POSITIVE_INFINITY;
    double previous = Double.POSITIVE_INFINITY;
    double at = scale;
    while (true) {
      w.step[u] = at;
      evaluate(w);
      double f = w.force[u] - w.applied[u];
      if (Math.abs(f) <= aim(w, load) || w.iterations >= MOST_EVALUATIONS) {
        return;
      }
      if (f < 0) {
        low = at;
      } else {
        high = at;
      }
      double next = at - f / w.tangent[u * w.unknowns + u];
      boolean bracketed = high - low < Double.POSITIVE_INFINITY;
      double reach = 64 * Math.max(Math.abs(at), scale);
      if (bracketed && (!(next > low && next < high) || Math.abs(f) > 0.5 * previous)) {
        next = 0.5 * (low + high);
      } else if (!(Math.abs(next - at) <= reach)) {
        next = f < 0 ? at + reach : at - reach;
      }
      if (next == at || next == low || next == high) {
        return; // No double lies between: the rest is rounding.
      }
      previous = Math.abs(f);
      at = next;
    }
  }

  /**
   * Comes down from high loads to the load. Where little load meets much free play, the way to the equilibrium is a narrow
   * curved valley; at high load it is wide, and each lower load starts where the last one ended.
   */
  private static void fromAbove(EquilibriumWorkspace w, double load, double scale) {
    for (int i = 0; i < w.unknowns; i++) {
      w.step[i] = 0;
    }
    w.step[0] = scale * HIGH_LOAD;
    for (double factor = HIGH_LOAD; factor >= 1; factor *= 0.25) {
      for (int i = 0; i < w.unknowns; i++) {
        w.applied[i] *= factor;
      }
      many(w, load * factor, scale, w.iterations + MOST_EVALUATIONS);
      for (int i = 0; i < w.unknowns; i++) {
        w.applied[i] /= factor;
      }
    }
  }

  /** Several unknowns: Newton directions, each with a bracketed search along its line. */
  private static void many(EquilibriumWorkspace w, double load, double scale, int most) {
    int n = w.activeCount;
    evaluate(w);
    double best = Double.POSITIVE_INFINITY;
    int stalled = 0;
    while (true) {
      double norm = unbalanced(w);
      if (norm <= aim(w, load) || w.iterations >= most) {
        return;
      }
      // No progress: the step is too large to resolve the rest. Move the base here and go on, a few times.
      stalled = norm < 0.9 * best ? 0 : stalled + 1;
      best = Math.min(best, norm);
      if (stalled > 0 && stalled % 4 == 0) {
        if (stalled >= (norm <= NEAR * load ? 8 : 100)) {
          return;
        }
        moveBase(w);
        continue;
      }
      if (!newtonDirection(w, n)) {
        // No contact anywhere: go the way of the applied load.
        for (int i = 0; i < n; i++) {
          w.direction[i] = w.gradient[i] / -norm * Math.max(scale, Math.abs(w.step[0]));
        }
      }
      search(w, n, most);
    }
  }

  private static boolean newtonDirection(EquilibriumWorkspace w, int n) {
    for (int i = 0; i < n; i++) {
      int row = w.active[i];
      w.gradient[i] = w.force[row] - w.applied[row];
      w.direction[i] = -w.gradient[i];
      for (int j = 0; j < n; j++) {
        w.matrix[i * n + j] = w.tangent[row * w.unknowns + w.active[j]];
      }
    }
    return SmallMatrix.solve(w.matrix, w.direction, n);
  }

  /** Moves along the direction until the unbalanced force along it has fallen enough. */
  private static void search(EquilibriumWorkspace w, int n, int most) {
    double slope0 = 0;
    for (int i = 0; i < n; i++) {
      w.start[i] = w.step[w.active[i]];
      slope0 += w.gradient[i] * w.direction[i];
    }
    double low = 0;
    double high = Double.POSITIVE_INFINITY;
    double at = 1;
    while (true) {
      for (int i = 0; i < n; i++) {
        w.step[w.active[i]] = w.start[i] + at * w.direction[i];
      }
      evaluate(w);
      double slope = slopeAlong(w, n);
      if (Math.abs(slope) <= 0.3 * Math.abs(slope0) || w.iterations >= most) {
        return;
      }
      if (slope < 0) {
        low = at;
      } else {
        high = at;
      }
      double next = at - slope / curvatureAlong(w, n);
      if (high == Double.POSITIVE_INFINITY) {
        next = Math.min(Math.max(next, 2 * at), 64 * at);
        next = next > at ? next : 2 * at;
      } else if (!(next > low + 0.02 * (high - low) && next < high - 0.02 * (high - low))) {
        next = 0.5 * (low + high);
      }
      if (next == low || next == high || high - low <= 1e-12 * high) {
        return;
      }
      at = next;
    }
  }

  private static double slopeAlong(EquilibriumWorkspace w, int n) {
    double slope = 0;
    for (int i = 0; i < n; i++) {
      slope += (w.force[w.active[i]] - w.applied[w.active[i]]) * w.direction[i];
    }
    return slope;
  }

  private static double curvatureAlong(EquilibriumWorkspace w, int n) {
    double curvature = 0;
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        curvature += w.tangent[w.active[i] * w.unknowns + w.active[j]] * w.direction[i] * w.direction[j];
      }
    }
    return curvature;
  }

  private static void moveBase(EquilibriumWorkspace w) {
    for (int i = 0; i < w.unknowns; i++) {
      w.base[i] += w.step[i];
      w.step[i] = 0;
    }
    w.rebase();
    evaluate(w);
  }

  private static void evaluate(EquilibriumWorkspace w) {
    w.evaluate();
    w.iterations++;
  }

  private static double aim(EquilibriumWorkspace w, double load) {
    return Math.max(AIM * load, ROUNDING * w.magnitude);
  }

  private static double unbalanced(EquilibriumWorkspace w) {
    double sum = 0;
    for (int i = 0; i < w.activeCount; i++) {
      double miss = w.force[w.active[i]] - w.applied[w.active[i]];
      sum += miss * miss;
    }
    return Math.sqrt(sum);
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings.reference;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** How a roller is cut into laminae. */
public enum LaminaSpacing {
  /** Laminae of equal length, as recalled. With 30 of them a life ratio is off by about 1 %, without relief by up to 10 %. */
  EQUAL {
    @Override
    void cut(double[] middle, double[] width) {
      int n = middle.length;
      for (int k = 0; k < n; k++) {
        middle[k] = (2 * k + 1 - n) / (2.0 * n);
        width[k] = 1.0 / n;
      }
    }
  },
  /** Laminae that become shorter towards the ends, at the points and with the weights of Gauss and Legendre. */
  GRADED {
    @Override
    void cut(double[] middle, double[] width) {
      int n = middle.length;
      if (n > MOST_KEPT) {
        place(middle, width);
        return;
      }
      double[][] points = KEPT.computeIfAbsent(n, number -> {
        double[][] made = new double[2][number];
        place(made[0], made[1]);
        return made;
      });
      System.arraycopy(points[0], 0, middle, 0, n);
      System.arraycopy(points[1], 0, width, 0, n);
    }

    private void place(double[] middle, double[] width) {
      int n = middle.length;
      for (int k = 0; k < (n + 1) / 2; k++) {
        double x = Math.cos(Math.PI * (k + 0.75) / (n + 0.5));
        double derivative = 0;
        double change = 1;
        for (int i = 0; i < 100 && Math.abs(change) > 1e-15; i++) {
          double p = 1;
          double before = 0;
          for (int degree = 1; degree <= n; degree++) {
            double next = ((2 * degree - 1) * x * p - (degree - 1) * before) / degree;
            before = p;
            p = next;
          }
          derivative = n * (x * p - before) / (x * x - 1);
          change = p / derivative;
          x -= change;
        }
        boolean centre = 2 * k + 1 == n;
        middle[k] = centre ? 0 : -0.5 * x;
        middle[n - 1 - k] = -middle[k];
        width[k] = 1 / ((1 - x * x) * derivative * derivative);
        width[n - 1 - k] = width[k];
      }
    }
  };

  private static final int MOST_KEPT = 256;
  /** Points and weights by their number: finding them takes longer than a solve of the bearing. */
  private static final Map<Integer, double[][]> KEPT = new ConcurrentHashMap<>();

  /** Middles over the length of the roller, from -1/2 to 1/2, and shares of the length. */
  abstract void cut(double[] middle, double[] width);
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.benchmarks;

import holdfast.bearings.BasicLifeKernel;
import holdfast.bearings.BearingFamily;
import holdfast.bearings.BulkLifeKernel;
import holdfast.bearings.LifeModificationKernel;
import holdfast.contact.EllipticalContactKernel;
import holdfast.seats.ThickRingKernel;
import holdfast.threads.TighteningKernel;
import java.util.Locale;
import java.util.function.DoubleSupplier;

/**
 * The Java side of {@code compare.py}: the same computations on the same inputs, each timed as a whole, one thread. Prints
 * name, number of items, best seconds of ten runs and the sum of the results, by which both sides prove that they computed
 * the same.
 */
public final class Compared {
  private static final int MANY = 1_000_000;
  private static final int FEW = 20_000;
  private static final int RUNS = 10;

  private Compared() {}

  /**
   * Runs all comparisons.
   *
   * @param args none
   */
  public static void main(String[] args) {
    time("preload of a torque", MANY, Compared::preload);
    time("modified life", MANY, Compared::modifiedLife);
    time("modified lives of a fleet", MANY, new Fleet()::lives);
    time("pressure of a press fit", MANY, Compared::pressure);
    time("axis ratio of a contact ellipse", FEW, Compared::axisRatio);
  }

  private static void time(String name, int items, DoubleSupplier work) {
    double best = Double.POSITIVE_INFINITY;
    double sum = 0;
    for (int run = 0; run < RUNS; run++) {
      long start = System.nanoTime();
      sum = work.getAsDouble();
      best = Math.min(best, (System.nanoTime() - start) * 1e-9);
    }
    System.out.printf(Locale.ROOT, "%s;%d;%.9f;%.15e%n", name, items, best, sum);
  }

  private static double preload() {
    double sum = 0;
    for (int i = 0; i < MANY; i++) {
      sum += TighteningKernel.preload(20_000 + i % 1000 * 50, 17.026, 1.5, 0.08 + i % 97 * 1e-3, 21.9, 0.08 + i % 89 * 1e-3, 0);
    }
    return sum;
  }

  private static double modifiedLife() {
    double sum = 0;
    for (int i = 0; i < MANY; i++) {
      double kappa = 0.1 + i % 390 * 0.01;
      double argument = i % 491 * 0.01;
      sum += 0.64 * LifeModificationKernel.radialRoller(kappa, argument)
          * BasicLifeKernel.roller(14_200 + i % 1009, 2100 + i % 997);
    }
    return sum;
  }

  /** Roller bearings as arrays, made before the clock runs. */
  private static final class Fleet {
    private final BearingFamily[] family = new BearingFamily[MANY];
    private final double[][] in = new double[8][MANY];
    private final double[] hours = new double[MANY];

    Fleet() {
      for (int i = 0; i < MANY; i++) {
        family[i] = BearingFamily.RADIAL_ROLLER;
        in[0][i] = 14_200 + i % 1009;
        in[1][i] = 1500 + i % 101;
        in[2][i] = 2100 + i % 997;
        in[3][i] = 200 + i % 1600;
        in[4][i] = 20 + i % 83;
        in[5][i] = 40 + i % 31;
        in[6][i] = 0.1 + i % 89 * 0.01;
        in[7][i] = 95;
      }
    }

    double lives() {
      BulkLifeKernel.hours(0, MANY, family, in[0], in[1], in[2], in[3], in[4], in[5], in[6], in[7], hours);
      double sum = 0;
      for (double life : hours) {
        sum += life;
      }
      return sum;
    }
  }

  private static double pressure() {
    double sum = 0;
    for (int i = 0; i < MANY; i++) {
      sum += ThickRingKernel.pressure(
          i % 36 * 1e-3, 18 + i % 7, 3 + i % 3, 40 + i % 31, 210_000, 0.3, 169_000 + i % 11 * 1000, 0.275);
    }
    return sum;
  }

  private static double axisRatio() {
    double sum = 0;
    for (int i = 0; i < FEW; i++) {
      sum += EllipticalContactKernel.axisRatio(0.05 + i % 101 * 1e-3, 0.002 + i % 199 * 2e-4);
    }
    return sum;
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import java.util.Random;
import org.junit.jupiter.api.Test;

class BulkLifeKernelTest {
  private static final int SIZE = 10_000;
  private final BearingFamily[] family = new BearingFamily[SIZE];
  private final double[][] inputs = new double[8][SIZE];

  BulkLifeKernelTest() {
    Random random = new Random(1);
    BearingFamily[] families = BearingFamily.values();
    double[][] ranges = {{1e4, 1e5}, {500, 5000}, {500, 9000}, {100, 3000}, {100, 400}, {50, 150}, {0, 1}, {50, 99.95}};
    for (int i = 0; i < SIZE; i++) {
      family[i] = families[random.nextInt(4)];
      for (int k = 0; k < ranges.length; k++) {
        inputs[k][i] = ranges[k][0] + random.nextDouble() * (ranges[k][1] - ranges[k][0]);
      }
    }
  }

  private void run(double[] hours, boolean parallel) {
    if (parallel) {
      BulkLifeKernel.hoursInParallel(family, inputs[0], inputs[1], inputs[2], inputs[3], inputs[4], inputs[5], inputs[6],
          inputs[7], hours);
    } else {
      BulkLifeKernel.hours(
          0, SIZE, family, inputs[0], inputs[1], inputs[2], inputs[3], inputs[4], inputs[5], inputs[6], inputs[7], hours);
    }
  }

  @Test
  void sameAsOneByOneAndInParallel() {
    double[] hours = new double[SIZE];
    double[] parallel = new double[SIZE];
    run(hours, false);
    run(parallel, true);
    for (int i = 0; i < SIZE; i += 97) {
      double kappa = LubricationKernel.kappa(inputs[4][i], inputs[3][i], inputs[5][i]);
      double life = LifeModificationKernel.life(family[i], inputs[0][i], inputs[1][i], inputs[2][i],
          inputs[7][i], kappa, inputs[6][i]);
      double exact = BasicLifeKernel.hours(life, inputs[3][i]);
      assertEquals(exact, hours[i], 1e-12 * exact);
      assertEquals(hours[i], parallel[i]);
    }
  }

  /** Log-uniform over the range of the tables and beyond it: an equal life or the same refusal. */
  @Test
  void wholeRangeWithinTheStatedError() {
    Random random = new Random(2);
    BearingFamily[] families = BearingFamily.values();
    double[] reliabilities = {90, 50, 99.95, 95};
    double[][] decades = {{-4, 13}, {-7, 13}, {-4, 13}, {-4, 7}, {-4, 7}, {-3, 7}};
    double[] one = new double[1];
    double worst = 0;
    int lives = 0;
    for (int i = 0; i < 100_000; i++) {
      double[] x = new double[6];
      for (int k = 0; k < x.length; k++) {
        x[k] = Math.pow(10, decades[k][0] + random.nextDouble() * (decades[k][1] - decades[k][0]));
      }
      boolean usual = i % 2 == 0;
      if (usual) {
        // Most far combinations are refused or capped: half of the draws have a ratio C/P, a κ and an argument that matter.
        x[2] = x[0] * Math.pow(10, -3 + 3.5 * random.nextDouble());
        x[1] = x[2] * 6 * random.nextDouble() + 1e-6;
        x[4] = (0.1 + 5 * random.nextDouble() * random.nextDouble()) * LubricationKernel.referenceViscosity(x[3], x[5]);
      }
      double dirt = random.nextInt(5) == 0 ? random.nextInt(2) : random.nextDouble();
      double percent = reliabilities[random.nextInt(4)];
      BearingFamily kind = families[random.nextInt(4)];
      String refused = null;
      double exact = 0;
      try {
        exact = BasicLifeKernel.hours(LifeModificationKernel.life(kind, x[0], x[1], x[2], percent,
            LubricationKernel.kappa(x[4], x[3], x[5]), dirt), x[3]);
      } catch (InputException e) {
        refused = e.parameter();
      }
      try {
        BulkLifeKernel.hours(0, 1, new BearingFamily[] {kind}, new double[] {x[0]}, new double[] {x[1]},
            new double[] {x[2]}, new double[] {x[3]}, new double[] {x[4]}, new double[] {x[5]}, new double[] {dirt},
            new double[] {percent}, one);
        assertNull(refused);
        worst = Math.max(worst, Math.abs(one[0] / exact - 1));
        lives++;
      } catch (InputException e) {
        assertEquals("bearing 0: " + refused, e.parameter());
      }
    }
    assertTrue(worst <= 1e-12, "worst relative difference " + worst);
    assertTrue(lives > 40_000, lives + " lives");
  }

  @Test
  void stepsOfTheCoefficientsAsInTheKernel() {
    double[] one = new double[1];
    for (double kappa : new double[] {0.1, 0.4, 1, 4}) {
      for (int ulps = -40; ulps <= 40; ulps++) {
        double viscosity = kappa * LubricationKernel.referenceViscosity(700, 60) * (1 + ulps * 0x1p-52);
        double real = LubricationKernel.kappa(viscosity, 700, 60);
        if (real < 0.1) {
          continue;
        }
        for (BearingFamily kind : BearingFamily.values()) {
          BulkLifeKernel.hours(0, 1, new BearingFamily[] {kind}, new double[] {20_000}, new double[] {2000},
              new double[] {3000}, new double[] {700}, new double[] {viscosity}, new double[] {60}, new double[] {0.7},
              new double[] {90}, one);
          double exact =
              BasicLifeKernel.hours(LifeModificationKernel.life(kind, 20_000, 2000, 3000, 90, real, 0.7), 700);
          assertEquals(exact, one[0], 1e-12 * exact, kind + " at " + real);
        }
      }
    }
  }

  @Test
  void powersFromTables() {
    Random random = new Random(3);
    for (double y : new double[] {-0.83, -0.054381, 0.83, 1 / 3.0, 0.4, 10 / 3.0, -9.3, -9.185}) {
      FixedPower power = new FixedPower(y);
      for (int i = 0; i < 100_000; i++) {
        double x = Math.scalb(1 + random.nextDouble(), random.nextInt(150) - 75);
        double expected = Math.pow(x, y);
        assertEquals(expected, power.large(x), 1e-14 * expected);
        if (Math.abs(y) < 4) {
          // Rounding of seven operations and, for y = -0.83, a left-out sixth term of 0.64/256^6.
          assertEquals(expected, power.small(x), 1e-14 * expected);
        }
      }
      for (double x : new double[] {0, -0.0, -1, Double.MIN_VALUE, Double.POSITIVE_INFINITY, Double.NaN, 0x1p64}) {
        assertEquals(Math.pow(x, y), power.large(x));
        assertEquals(Math.pow(x, y), power.small(x));
      }
    }
  }

  @Test
  void errorsNameTheBearing() {
    inputs[2][7] = 0;
    InputException e = assertThrows(InputException.class, () -> run(new double[SIZE], false));
    assertTrue(e.getMessage().startsWith("bearing 7: dynamic equivalent load P (0 N)"), e.getMessage());
    assertThrows(InputException.class, () -> run(new double[3], false));
  }

  @Test
  void bulkBasicLives() {
    double[] lives = new double[2];
    BasicLifeKernel.l10(new boolean[] {true, false}, new double[] {4, 4}, new double[] {1, 1}, lives);
    assertEquals(64, lives[0], 1e-12);
    assertEquals(Math.pow(4, 10.0 / 3), lives[1], 1e-9);
  }
}

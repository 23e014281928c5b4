// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings;

import static org.junit.jupiter.api.Assertions.assertEquals;
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
      assertEquals(BasicLifeKernel.hours(life, inputs[3][i]), hours[i]);
      assertEquals(hours[i], parallel[i]);
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

// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.Check;
import holdfast.tables.Provenance;
import holdfast.tables.Source;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Random tightenings: tool, thread friction and face friction vary independently. The same seed gives the same numbers
 * on every machine and with any number of processors: each block of the result has its own generator.
 */
public final class SamplingKernel {
  private static final int BLOCK = 1 << 13;
  private static final long STEP = 0x9E3779B97F4A7C15L;

  private SamplingKernel() {}

  /**
   * Fills an array with sampled preloads.
   *
   * @param preloads receives FM in N; at least one element
   * @param seed seed of the generator
   * @param normal true: normal distribution with the bands at ± 3 standard deviations, cut there; false: uniform
   * @param torque set torque in N·mm, with the deviation at least the prevailing torque
   * @param deviation deviation of the tool as a part of the torque (dimensionless), 0 to 0.9
   * @param d2 pitch diameter in mm, over 0
   * @param lead Ph in mm, over 0
   * @param friction friction bands
   * @param meanFaceDiameter DKm in mm, over 0
   * @param prevailing MP in N·mm, 0 or more
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "derivation", locator = "random sampling of the exact tightening torque", provenance = Provenance.DERIVED)
  public static void preloads(
      double[] preloads,
      long seed,
      boolean normal,
      double torque,
      double deviation,
      double d2,
      double lead,
      Friction friction,
      double meanFaceDiameter,
      double prevailing) {
    Objects.requireNonNull(preloads, "preloads");
    Objects.requireNonNull(friction, "friction");
    Check.within(preloads.length, 1, Integer.MAX_VALUE, "number of samples", "", "something must be sampled");
    Check.within(deviation, 0, 0.9, "tool deviation", "", "a part of the set torque");
    // The corners are refused here, so that the inner loop need not check.
    TighteningKernel.preload(
        torque * (1 - deviation), d2, lead, friction.threadHigh(), meanFaceDiameter, friction.faceHigh(), prevailing);
    TighteningKernel.preload(
        torque * (1 + deviation), d2, lead, friction.threadLow(), meanFaceDiameter, friction.faceLow(), prevailing);
    double slope = lead / (Math.PI * d2);
    double secant = 1 / ThreadGeometryKernel.COS_HALF_ANGLE;
    double r2 = 0.5 * d2;
    double rk = 0.5 * meanFaceDiameter;
    double mt = torque;
    double wt = torque * deviation;
    double mg = 0.5 * (friction.threadLow() + friction.threadHigh());
    double wg = 0.5 * (friction.threadHigh() - friction.threadLow());
    double mk = 0.5 * (friction.faceLow() + friction.faceHigh());
    double wk = 0.5 * (friction.faceHigh() - friction.faceLow());
    int blocks = (preloads.length + BLOCK - 1) / BLOCK;
    IntStream.range(0, blocks)
        .parallel()
        .forEach(
            block -> {
              // The seed of a block is itself drawn: seeds in steps of the generator's own step would give each block the
              // numbers of the one before it, shifted by one.
              SplittableRandom random = new SplittableRandom(new SplittableRandom(seed + STEP * (block + 1)).nextLong());
              int end = Math.min(preloads.length, (block + 1) * BLOCK);
              for (int i = block * BLOCK; i < end; i++) {
                double t = mt + wt * draw(random, normal);
                double rub = secant * (mg + wg * draw(random, normal));
                double muK = mk + wk * draw(random, normal);
                preloads[i] = (t - prevailing) / (r2 * (slope + rub) / (1 - slope * rub) + rk * muK);
              }
            });
  }

  /** A number from -1 to 1. */
  private static double draw(SplittableRandom random, boolean normal) {
    if (!normal) {
      return 2 * random.nextDouble() - 1;
    }
    double z = random.nextGaussian();
    while (Math.abs(z) > 3) {
      z = random.nextGaussian();
    }
    return z / 3;
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.benchmarks;

import holdfast.bearings.BasicLifeKernel;
import holdfast.bearings.BearingFamily;
import holdfast.bearings.BulkLifeKernel;
import holdfast.bearings.LifeModificationKernel;
import holdfast.bearings.LubricationKernel;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Cost of basic and modified rating life, and of a million bearings at once. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class BearingsBenchmark {
  private static final int COUNT = 1_000_000;

  private double c = 14200;
  private double p = 2100;
  private double cu = 2134;
  private double kappa = 0.8;
  private double contamination = 0.4;
  private double reliability = 95;
  private double viscosity = 60;
  private double rpm = 180;
  private double dpw = 30;
  private final BearingFamily[] families = new BearingFamily[COUNT];
  private final double[][] inputs = new double[8][COUNT];
  private final double[] hours = new double[COUNT];

  /** Fills the arrays with bearings of all families. */
  public BearingsBenchmark() {
    Random random = new Random(1);
    BearingFamily[] all = BearingFamily.values();
    double[][] ranges = {{1e4, 1e5}, {500, 5000}, {500, 9000}, {100, 3000}, {100, 400}, {50, 150}, {0, 1}, {50, 99.95}};
    for (int i = 0; i < COUNT; i++) {
      families[i] = all[random.nextInt(all.length)];
      for (int k = 0; k < ranges.length; k++) {
        inputs[k][i] = ranges[k][0] + random.nextDouble() * (ranges[k][1] - ranges[k][0]);
      }
    }
  }

  /** Basic life of a roller bearing. */
  @Benchmark
  public double basicLife() {
    return BasicLifeKernel.roller(c, p);
  }

  /** Modified life of a roller bearing with given κ. */
  @Benchmark
  public double modifiedLife() {
    return LifeModificationKernel.life(BearingFamily.RADIAL_ROLLER, c, cu, p, reliability, kappa, contamination);
  }

  /** Modified life of a ball bearing with κ from viscosity, speed and size. */
  @Benchmark
  public double modifiedLifeWithFilm() {
    double film = LubricationKernel.kappa(viscosity, rpm, dpw);
    return LifeModificationKernel.life(BearingFamily.RADIAL_BALL, c, cu, p, reliability, film, contamination);
  }

  /** Modified lives of a million bearings on all processors. */
  @Benchmark
  @OutputTimeUnit(TimeUnit.MILLISECONDS)
  public double[] bulk() {
    BulkLifeKernel.hoursInParallel(
        families, inputs[0], inputs[1], inputs[2], inputs[3], inputs[4], inputs[5], inputs[6], inputs[7], hours);
    return hours;
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.benchmarks;

import holdfast.bearings.BearingFamily;
import holdfast.bearings.BearingType;
import holdfast.bearings.DutyKernel;
import holdfast.bearings.EquivalentLoadKernel;
import holdfast.bearings.MinimumLoadKernel;
import holdfast.bearings.StaticLoadKernel;
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

/** Cost of equivalent loads, least loads and duties in steps. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class LoadsBenchmark {
  private BearingType ball = BearingType.DEEP_GROOVE_BALL;
  private BearingFamily family = BearingFamily.RADIAL_ROLLER;
  private int rows = 1;
  private double alpha;
  private double relativeLoad = 1.4;
  private double fr = 2000;
  private double fa = 1500;
  private double c = 20_000;
  private double exponent = 10.0 / 3;
  private double slope = 1.5;
  private final double[] loads = {800, 1500, 2600, 400, 1900, 3100};
  private final double[] speeds = {300, 120, 60, 600, 180, 30};
  private final double[] shares = {0.3, 0.2, 0.1, 0.25, 0.1, 0.05};
  private final double[] lives = {12_000, 18_000, 25_000, 9000, 40_000, 16_000, 21_000, 14_000};

  /** Dynamic equivalent load of a ball bearing with factors interpolated in their tables. */
  @Benchmark
  public double equivalentLoad() {
    return EquivalentLoadKernel.load(ball, rows, alpha, relativeLoad, fr, fa);
  }

  /** Static equivalent load of a ball bearing. */
  @Benchmark
  public double staticLoad() {
    return StaticLoadKernel.load(ball, rows, alpha, fr, fa);
  }

  /** Guiding value of the least load. */
  @Benchmark
  public double leastLoad() {
    return MinimumLoadKernel.guidingValue(family, c);
  }

  /** Constant load with the life of a duty in six steps. */
  @Benchmark
  public double meanLoad() {
    return DutyKernel.meanLoad(exponent, loads, speeds, shares);
  }

  /** Life of eight bearings until the first fails. */
  @Benchmark
  public double systemLife() {
    return DutyKernel.systemLife(lives, slope);
  }
}

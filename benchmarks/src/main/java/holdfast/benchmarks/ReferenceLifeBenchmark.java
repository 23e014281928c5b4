// SPDX-License-Identifier: Apache-2.0
package holdfast.benchmarks;

import holdfast.bearings.reference.LaminaKernel;
import holdfast.bearings.reference.LaminaLifeKernel;
import holdfast.bearings.reference.LaminaWorkspace;
import holdfast.bearings.reference.LoadDistributionKernel;
import holdfast.bearings.reference.ProfileKernel;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Cost of a solve with life of 14 rollers in 30 laminae. Bar: 60 µs, without allocation. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class ReferenceLifeBenchmark {
  private static final int LAMINAE = 30;
  private final LaminaWorkspace symmetric = new LaminaWorkspace(14, LAMINAE);
  private final LaminaWorkspace turned = new LaminaWorkspace(14, LAMINAE);
  private double load = 4000;
  private double tilt = 0.001;
  private double station = 4.2;
  private double length = 10;
  private double diameter = 5;
  private double inner;
  private double outer;

  /** Equal laminae of a logarithmic roller. */
  @Setup
  public void rollers() {
    double[] x = new double[LAMINAE];
    double[] share = new double[LAMINAE];
    double[] drop = new double[LAMINAE];
    double[] edge = new double[LAMINAE];
    for (int k = 0; k < LAMINAE; k++) {
      x[k] = ((k + 0.5) / LAMINAE - 0.5) * 10;
      share[k] = 1.0 / LAMINAE;
      drop[k] = ProfileKernel.logarithmic(x[k], 10, 5);
      edge[k] = LaminaKernel.edgeStressFactor(x[k] / 10);
    }
    LoadDistributionKernel.rollers(symmetric, 14, 0);
    LoadDistributionKernel.rollers(turned, 14, 0.1);
    LoadDistributionKernel.laminae(symmetric, LAMINAE, x, share, drop, edge, LaminaKernel.stiffness(10));
    LoadDistributionKernel.laminae(turned, LAMINAE, x, share, drop, edge, LaminaKernel.stiffness(10));
    inner = LaminaKernel.innerRating(20_000, 14, 1, 0.125);
    outer = LaminaKernel.outerRating(20_000, 14, 1, 0.125);
  }

  /** Given tilt in the plane of the load. */
  @Benchmark
  public double tilted() {
    LoadDistributionKernel.tilted(symmetric, load, 0.02, tilt, 0);
    return LaminaLifeKernel.life(symmetric, inner, outer, true, false);
  }

  /** Given tilt in any direction, no symmetry. */
  @Benchmark
  public double tiltedAnyWay() {
    LoadDistributionKernel.tilted(turned, load, 0.02, tilt, 0.5 * tilt);
    return LaminaLifeKernel.life(turned, inner, outer, true, false);
  }

  /** Given moment in the plane of the load. */
  @Benchmark
  public double underMoment() {
    LoadDistributionKernel.underMoment(symmetric, load, 0.02, 3000, 0);
    return LaminaLifeKernel.life(symmetric, inner, outer, true, false);
  }

  /** Edge stress factor of a lamina. */
  @Benchmark
  @OutputTimeUnit(TimeUnit.NANOSECONDS)
  public double edgeStressFactor() {
    return LaminaKernel.edgeStressFactor(station / length);
  }

  /** Logarithmic profile at a place of the roller. */
  @Benchmark
  @OutputTimeUnit(TimeUnit.NANOSECONDS)
  public double profile() {
    return ProfileKernel.logarithmic(station, length, diameter);
  }
}

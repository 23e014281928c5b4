// SPDX-License-Identifier: Apache-2.0
package holdfast.benchmarks;

import holdfast.bearings.reference.BallDistributionKernel;
import holdfast.bearings.reference.BallKernel;
import holdfast.bearings.reference.BallLifeKernel;
import holdfast.bearings.reference.BallWorkspace;
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

/** Cost of a solve with life of nine balls, and of what is computed once before it. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class BallSolveBenchmark {
  private static final int BALLS = 9;
  private final BallWorkspace symmetric = new BallWorkspace(BALLS);
  private final BallWorkspace turned = new BallWorkspace(BALLS);
  private double dw = 8.731;
  private double dpw = 46;
  private double ri = 4.54;
  private double re = 4.63;
  private double cr = 20_000;
  private double load = 4000;
  private double axialLoad = 500;
  private double tilt = 0.001;
  private double moment = 3000;
  private double ballLoad = 2000;
  private double inner;
  private double outer;

  /** Balls and contacts with clearance. */
  @Setup
  public void balls() {
    BallDistributionKernel.balls(symmetric, BALLS, 0);
    BallDistributionKernel.balls(turned, BALLS, 0.1);
    BallDistributionKernel.contacts(symmetric, dw, dpw, ri, re, 0.01);
    BallDistributionKernel.contacts(turned, dw, dpw, ri, re, 0.01);
    inner = BallKernel.innerRating(cr, BALLS, dw, dpw, ri, re);
    outer = BallKernel.outerRating(cr, BALLS, dw, dpw, ri, re);
  }

  /** Given tilt in the plane of the load. */
  @Benchmark
  public double tilted() {
    BallDistributionKernel.tilted(symmetric, load, axialLoad, tilt, 0);
    return BallLifeKernel.life(symmetric, inner, outer, true, false);
  }

  /** Given tilt in any direction, no symmetry. */
  @Benchmark
  public double tiltedAnyWay() {
    BallDistributionKernel.tilted(turned, load, axialLoad, tilt, 0.5 * tilt);
    return BallLifeKernel.life(turned, inner, outer, true, false);
  }

  /** Given moment in the plane of the load. */
  @Benchmark
  public double underMoment() {
    BallDistributionKernel.underMoment(symmetric, load, axialLoad, moment, 0);
    return BallLifeKernel.life(symmetric, inner, outer, true, false);
  }

  /** Deflection constant of a ball between both rings. */
  @Benchmark
  @OutputTimeUnit(TimeUnit.NANOSECONDS)
  public double stiffness() {
    return BallKernel.stiffness(dw, dpw, ri, re);
  }

  /** Pressure of a ball in its groove. */
  @Benchmark
  @OutputTimeUnit(TimeUnit.NANOSECONDS)
  public double pressure() {
    return BallKernel.pressure(ballLoad, dw, dpw, ri, true);
  }
}

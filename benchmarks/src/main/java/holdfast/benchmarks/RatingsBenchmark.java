// SPDX-License-Identifier: Apache-2.0
package holdfast.benchmarks;

import holdfast.bearings.BearingFamily;
import holdfast.bearings.BearingType;
import holdfast.bearings.DynamicRatingKernel;
import holdfast.bearings.FactorFcKernel;
import holdfast.bearings.FatigueLimitKernel;
import holdfast.bearings.PointContactKernel;
import holdfast.bearings.RatingAdjustmentKernel;
import holdfast.bearings.StaticRatingKernel;
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

/** Cost of load ratings and fatigue load limits from the geometry of a bearing. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class RatingsBenchmark {
  private BearingType ball = BearingType.DEEP_GROOVE_BALL;
  private BearingFamily family = BearingFamily.RADIAL_BALL;
  private int rows = 1;
  private double alpha;
  private double angle = Math.toRadians(25);
  private double z = 9;
  private double dw = 8.731;
  private double ratio = 0.19;
  private double fc = 59.9;
  private double f0 = 14.6;
  private double innerGroove = 0.52;
  private double outerGroove = 0.53;
  private double cr = 20_000;
  private double c0 = 11_200;
  private double dpw = 46;
  private double rollers = 14;
  private double dwe = 5;
  private double lwe = 10;

  /** Factor fc of a ball bearing, interpolated in its table. */
  @Benchmark
  public double factorFc() {
    return FactorFcKernel.radialBall(ball, rows, ratio);
  }

  /** Dynamic rating of a ball bearing with fc given. */
  @Benchmark
  public double dynamicBallRating() {
    return DynamicRatingKernel.radialBall(1.3, fc, rows, alpha, z, dw);
  }

  /** Dynamic rating of a roller bearing with fc given. */
  @Benchmark
  public double dynamicRollerRating() {
    return DynamicRatingKernel.radialRoller(1.1, fc, rows, alpha, rollers, dwe, lwe);
  }

  /** Factor f0 of a ball bearing, interpolated in its table. */
  @Benchmark
  public double factorF0() {
    return StaticRatingKernel.f0(ball, ratio);
  }

  /** Static rating of a ball bearing with f0 given. */
  @Benchmark
  public double staticBallRating() {
    return StaticRatingKernel.radialBall(f0, rows, alpha, z, dw);
  }

  /** Static rating of a roller bearing. */
  @Benchmark
  public double staticRollerRating() {
    return StaticRatingKernel.radialRoller(rows, alpha, rollers, dwe, lwe, dpw);
  }

  /** Fatigue load limit from the static rating. */
  @Benchmark
  public double fatigueLimitSimplified() {
    return FatigueLimitKernel.simplified(family, c0, dpw);
  }

  /** Load of the more heavily stressed contact of a ball at the fatigue limit. */
  @Benchmark
  public double fatigueLimitOfContact() {
    return FatigueLimitKernel.ballContact(dw, ratio, innerGroove, outerGroove);
  }

  /** Load on ball and inner ring at a contact stress. */
  @Benchmark
  public double loadAtStress() {
    return PointContactKernel.innerLoadAtStress(1500, dw, ratio, innerGroove);
  }

  /** Adjusted axial rating of an angular contact bearing. */
  @Benchmark
  public double adjustedRating() {
    return RatingAdjustmentKernel.dynamicRadialGroove(cr, angle);
  }
}

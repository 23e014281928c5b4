// SPDX-License-Identifier: Apache-2.0
package holdfast.benchmarks;

import holdfast.bearings.BearingFamily;
import holdfast.bearings.ContaminationKernel;
import holdfast.bearings.InverseLifeKernel;
import holdfast.bearings.ReliabilityKernel;
import holdfast.bearings.ViscosityKernel;
import holdfast.bearings.WeibullKernel;
import java.util.concurrent.TimeUnit;
import java.util.function.DoubleUnaryOperator;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Cost of what goes into a modified life, of its inverse, and of lives in the field. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class LifeFactorsBenchmark {
  private BearingFamily family = BearingFamily.RADIAL_ROLLER;
  private double c = 14_200;
  private double cu = 2134;
  private double p = 2100;
  private double kappa = 0.8;
  private double contamination = 0.4;
  private double reliability = 95;
  private double wantedLife = 300;
  private double dpw = 30;
  private double a = 0.0432;
  private double cleanliness = 1.141;
  private double at40 = 100;
  private double at100 = 11.2;
  private double temperature = 63;
  private double slope = 1.5;
  private double scale = 12_000;
  private final DoubleUnaryOperator ofKappa = this::contaminationOf;
  private final double[] lives = {
    2100, 3400, 3900, 4700, 5200, 5600, 6300, 6900, 7400, 8100,
    8800, 9300, 10_200, 11_000, 12_400, 13_900, 15_100, 17_800, 20_500, 26_000
  };

  private double contaminationOf(double k) {
    return ContaminationKernel.factor(a, cleanliness, k, dpw);
  }

  /** Contamination factor from cleanliness, κ and size. */
  @Benchmark
  public double contaminationFactor() {
    return ContaminationKernel.factor(a, cleanliness, kappa, dpw);
  }

  /** Life factor of a reliability. */
  @Benchmark
  public double reliabilityFactor() {
    return ReliabilityKernel.a1(reliability);
  }

  /** Viscosity at a temperature from two others. */
  @Benchmark
  public double viscosityAtTemperature() {
    return ViscosityKernel.atTemperature(40, at40, 100, at100, temperature);
  }

  /** Viscosity index of an oil. */
  @Benchmark
  public double viscosityIndex() {
    return ViscosityKernel.viscosityIndex(at40, at100);
  }

  /** Greatest load with a wanted modified life, searched. */
  @Benchmark
  public double allowableLoad() {
    return InverseLifeKernel.allowableLoad(family, c, cu, reliability, kappa, contamination, false, contamination, wantedLife);
  }

  /** Least κ with a wanted modified life, contamination changing with κ, searched. */
  @Benchmark
  public double requiredKappa() {
    return InverseLifeKernel.requiredKappa(family, c, cu, p, reliability, ofKappa, wantedLife);
  }

  /** Weibull slope of twenty lives by maximum likelihood. */
  @Benchmark
  public double weibullSlope() {
    return WeibullKernel.maximumLikelihoodSlope(lives);
  }

  /** Time that a share survives. */
  @Benchmark
  public double weibullLife() {
    return WeibullKernel.life(0.9, slope, scale, 0);
  }
}

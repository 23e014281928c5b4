// SPDX-License-Identifier: Apache-2.0
package holdfast.benchmarks;

import holdfast.quantity.Units;
import holdfast.threads.Friction;
import holdfast.threads.JointKernel;
import holdfast.threads.PropertyClass;
import holdfast.threads.SamplingKernel;
import holdfast.threads.Scatter;
import holdfast.threads.ScatterKernel;
import holdfast.threads.ScrewThread;
import holdfast.threads.StressKernel;
import holdfast.threads.Tightening;
import holdfast.threads.TighteningKernel;
import holdfast.threads.TorqueWindow;
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

/** Cost of torque and preload, of the combined stress, of the joint, of a million sampled tightenings, of a torque window. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class ThreadsBenchmark {
  private double preload = 20000;
  private double torque = 60000;
  private double d2 = 17.026;
  private double lead = 1.5;
  private double muG = 0.12;
  private double muK = 0.14;
  private double face = 21;
  private double bore = 3;
  private double clampLength = 20;
  private double partDiameter = 40;
  private double studResilience = 4e-6;
  private double partResilience = 8e-7;
  private double uncertainty = 0.3;
  private final double[] samples = new double[1_000_000];
  private final Friction band = Friction.of(0.10, 0.16);
  private final Tightening nut =
      Tightening.of(ScrewThread.of("M18x1.5")).bore(Units.mm(3)).bearingFace(Units.mm(24), Units.mm(18)).friction(band);
  private final PropertyClass steel = PropertyClass.of("8.8");
  private final Scatter wrench = Scatter.torqueWrench(Units.Nm(200));

  /** Torque of a preload, exact form. */
  @Benchmark
  public double torqueOfPreload() {
    return TighteningKernel.torque(preload, d2, lead, muG, face, muK, 0);
  }

  /** Preload of a torque, exact form. */
  @Benchmark
  public double preloadOfTorque() {
    return TighteningKernel.preload(torque, d2, lead, muG, face, muK, 0);
  }

  /** Equivalent stress of a drilled stud from diameters. */
  @Benchmark
  public double combinedStress() {
    return StressKernel.combined(preload, torque, 16.593, bore, true);
  }

  /** A million sampled tightenings, uniform. */
  @Benchmark
  @OutputTimeUnit(TimeUnit.MILLISECONDS)
  public double[] millionSampledTightenings() {
    SamplingKernel.preloads(samples, 42, false, torque, 0.04, d2, lead, band, face, 0);
    return samples;
  }

  /** A million sampled tightenings, normal. */
  @Benchmark
  @OutputTimeUnit(TimeUnit.MILLISECONDS)
  public double[] millionNormalTightenings() {
    SamplingKernel.preloads(samples, 42, true, torque, 0.04, d2, lead, band, face, 0);
    return samples;
  }

  /** A torque window through the typed API. */
  @Benchmark
  public TorqueWindow torqueWindow() {
    return nut.window(Units.kN(20), steel, wrench);
  }

  /** Resilience of the clamped part, cone and sleeve. */
  @Benchmark
  public double partResilience() {
    return JointKernel.partResilience(clampLength, face, d2, partDiameter, 210_000, false);
  }

  /** Share of a working load that the stud takes. */
  @Benchmark
  public double loadFactor() {
    return JointKernel.loadFactor(studResilience, partResilience, 0.5);
  }

  /** Least preload by the uncertainty of the tool. */
  @Benchmark
  public double leastPreload() {
    return ScatterKernel.leastByUncertainty(preload, uncertainty, 0, 0.05);
  }
}

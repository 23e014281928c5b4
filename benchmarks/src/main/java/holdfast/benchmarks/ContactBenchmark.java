// SPDX-License-Identifier: Apache-2.0
package holdfast.benchmarks;

import holdfast.contact.AxisStressKernel;
import holdfast.contact.ContactGeometryKernel;
import holdfast.contact.EllipticIntegralKernel;
import holdfast.contact.EllipticalContactKernel;
import holdfast.contact.LineContactKernel;
import holdfast.contact.OuterRingKernel;
import holdfast.contact.SubsurfaceKernel;
import holdfast.contact.TrackCapacityKernel;
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

/** Cost of a contact, the stresses below it, track and ring. Bar: the whole ellipse within 500 ns, without allocation. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class ContactBenchmark {
  private final double[] result = new double[EllipticalContactKernel.RESULTS];
  private double force = 5000;
  private double greater = 1 / 35.0;
  private double lesser = 1 / 1000.0;
  private double rollerCurvature = 1 / 17.5;
  private double crown = 1 / 500.0;
  private double track;
  private double turn = 0.1;
  private double ratio = 0.3;
  private double depth = 0.5;
  private double hardness = 47.5;
  private final double[] hardnesses = {20, 25, 30, 35, 40, 45, 50, 55, 58};
  private final double[] capacities = {0.1, 0.15, 0.2, 0.27, 0.36, 0.5, 0.65, 0.85, 1};

  /** Axis ratio, both axes, peak pressure and approach of a crowned roller on a flat track. */
  @Benchmark
  public double[] ellipse() {
    EllipticalContactKernel.solve(force, 113186.8, greater, lesser, result);
    return result;
  }

  /** Peak pressure of a cylindrical roller on a flat track. */
  @Benchmark
  public double linePressure() {
    return LineContactKernel.peakPressure(force, 16, 17.5, 113186.8);
  }

  /** Largest shear stress below the ellipse, searched over the depth. */
  @Benchmark
  public double subsurfaceShear() {
    return SubsurfaceKernel.largestShear(lesser / greater, 0.3);
  }

  /** Greater principal curvature of a crowned roller on a track, turned. */
  @Benchmark
  public double principalCurvature() {
    return ContactGeometryKernel.greater(rollerCurvature, crown, track, track, turn);
  }

  /** Complete elliptic integral of the second kind. */
  @Benchmark
  public double ellipticIntegral() {
    return EllipticIntegralKernel.second(ratio);
  }

  /** Carlson's integral of the second kind. */
  @Benchmark
  public double symmetricIntegral() {
    return EllipticIntegralKernel.symmetricSecondKind(lesser, ratio, depth);
  }

  /** Stress along the major axis below the ellipse. */
  @Benchmark
  public double axisStress() {
    return AxisStressKernel.alongMajor(ratio, 0.3, depth);
  }

  /** Bending of the outer ring over its rollers. */
  @Benchmark
  public double ringBending() {
    return OuterRingKernel.bendingStress(force, 35, 27, 14, 18);
  }

  /** Factor of the capacity of a track, interpolated in its hardness. */
  @Benchmark
  public double trackFactor() {
    return TrackCapacityKernel.interpolate(hardness, hardnesses, capacities);
  }
}

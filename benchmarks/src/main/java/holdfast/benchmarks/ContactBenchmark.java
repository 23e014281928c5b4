// SPDX-License-Identifier: Apache-2.0
package holdfast.benchmarks;

import holdfast.contact.EllipticalContactKernel;
import holdfast.contact.LineContactKernel;
import holdfast.contact.SubsurfaceKernel;
import holdfast.seats.StudBendingKernel;
import holdfast.seats.StudSeatKernel;
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

/** Cost of a contact and of the stresses of a stud. Bar: the whole ellipse within 500 ns, without allocation. */
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

  /** Bending, preload and torsion of a drilled stud, combined. */
  @Benchmark
  public double studStress() {
    double bending = StudBendingKernel.bendingStress(StudBendingKernel.moment(force, 18, 0.8), 16, 4);
    double axial = StudBendingKernel.axialStress(15000, 16, 4);
    return StudBendingKernel.atTensionFibre(bending, axial, StudBendingKernel.torsionStress(10000, 16, 4));
  }

  /** Slope of the stud at the mouth of an elastic seat. */
  @Benchmark
  public double seatSlope() {
    return StudSeatKernel.mouthSlope(force, 9.8, 100000, 6.6e8, 20);
  }
}

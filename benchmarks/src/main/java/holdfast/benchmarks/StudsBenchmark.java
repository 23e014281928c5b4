// SPDX-License-Identifier: Apache-2.0
package holdfast.benchmarks;

import holdfast.seats.PinKernel;
import holdfast.seats.StudBeamKernel;
import holdfast.seats.StudBendingKernel;
import holdfast.seats.StudFatigueKernel;
import holdfast.seats.StudNotch;
import holdfast.seats.StudNotchKernel;
import holdfast.seats.StudSeatKernel;
import holdfast.seats.StudSectionKernel;
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

/** Cost of bending, notches and fatigue of a drilled stud, and of a pin in a fork. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class StudsBenchmark {
  private double force = 5000;
  private double width = 18;
  private double gap = 0.8;
  private double diameter = 16;
  private double bore = 4;
  private double crossHole = 3;
  private double modulus = 210_000;
  private double poisson = 0.3;
  private double stiffness = 6.6e8;
  private double intensity = 280;
  private StudNotch notch = StudNotch.FILLET;
  private StudNotch.Loading loading = StudNotch.Loading.BENDING;
  private double shoulder = 20;
  private double radius = 1;
  private double amplitude = 90;
  private double mean = 150;
  private double endurance = 300;
  private double strength = 900;
  private double ear = 10;
  private double fork = 20;

  /** Bending, preload and torsion, combined. */
  @Benchmark
  public double studStress() {
    double bending = StudBendingKernel.bendingStress(StudBendingKernel.moment(force, width, gap), diameter, bore);
    double axial = StudBendingKernel.axialStress(15_000, diameter, bore);
    return StudBendingKernel.atTensionFibre(bending, axial, StudBendingKernel.torsionStress(10_000, diameter, bore));
  }

  /** Slope at the mouth of an elastic seat. */
  @Benchmark
  public double seatSlope() {
    return StudSeatKernel.mouthSlope(force, 9.8, 100_000, stiffness, 20);
  }

  /** Deflection at the end by a load spread over the roller. */
  @Benchmark
  public double deflection() {
    return StudBeamKernel.deflectionOfLoad(gap, gap + width, intensity, intensity, gap + width, stiffness);
  }

  /** Deflection by shear. */
  @Benchmark
  public double shearDeflection() {
    return StudBeamKernel.shearDeflection(force, width, gap, diameter, bore, modulus, poisson);
  }

  /** Section modulus through a cross hole. */
  @Benchmark
  public double netModulus() {
    return StudSectionKernel.netModulus(diameter, bore, crossHole);
  }

  /** Stress concentration of a fillet. */
  @Benchmark
  public double concentration() {
    return StudNotchKernel.concentration(notch, loading, shoulder, diameter, radius);
  }

  /** Margin against fatigue by the line of Goodman. */
  @Benchmark
  public double fatigueMargin() {
    return StudFatigueKernel.goodman(amplitude, mean, endurance, strength);
  }

  /** Bending moment of a pin between the ears of a fork. */
  @Benchmark
  public double pinMoment() {
    return PinKernel.moment(force, fork, ear, width);
  }
}

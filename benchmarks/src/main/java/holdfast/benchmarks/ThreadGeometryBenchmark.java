// SPDX-License-Identifier: Apache-2.0
package holdfast.benchmarks;

import holdfast.threads.MetricToleranceKernel;
import holdfast.threads.SectionKernel;
import holdfast.threads.StrengthKernel;
import holdfast.threads.StrippingKernel;
import holdfast.threads.ThreadGeometryKernel;
import holdfast.threads.UnifiedToleranceKernel;
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

/** Cost of diameters, sections, tolerances and stripping of a thread. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class ThreadGeometryBenchmark {
  private double diameter = 18;
  private double pitch = 1.5;
  private double bore = 3;
  private double crossHole = 4;
  private int grade = 6;
  private double inches = 0.75;
  private double inchPitch = 1 / 16.0;
  private int number = 2;
  private double minorInternal = 16.676;
  private double pitchExternal = 16.854;
  private double engaged = 12;
  private double stressArea = 216;
  private double tensile = 830;

  /** Diameter of the stress area. */
  @Benchmark
  public double stressDiameter() {
    return ThreadGeometryKernel.metricStressDiameter(diameter, pitch);
  }

  /** Elastic section modulus of a stud with axial and cross hole. */
  @Benchmark
  public double sectionModulus() {
    return SectionKernel.elasticModulus(diameter, bore, crossHole);
  }

  /** Metric tolerance of the pitch diameter, looked up in its table. */
  @Benchmark
  public double metricPitchTolerance() {
    return MetricToleranceKernel.externalPitch(grade, diameter, pitch);
  }

  /** Base tolerance of the pitch diameter of a unified thread. */
  @Benchmark
  public double unifiedPitchTolerance() {
    return UnifiedToleranceKernel.basePitchTolerance(inches, inchPitch, inches);
  }

  /** Tolerance of the minor diameter of a unified internal thread. */
  @Benchmark
  public double unifiedMinorTolerance() {
    return UnifiedToleranceKernel.internalCrest(number, inches, inchPitch);
  }

  /** Area in which the stud's thread shears. */
  @Benchmark
  public double shearArea() {
    return StrippingKernel.externalShearArea(minorInternal, pitchExternal, pitch, engaged);
  }

  /** Load at the tensile strength. */
  @Benchmark
  public double tensileLoad() {
    return StrengthKernel.load(stressArea, tensile);
  }
}

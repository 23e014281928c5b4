// SPDX-License-Identifier: Apache-2.0
package holdfast.benchmarks;

import holdfast.fits.Fit;
import holdfast.fits.InchFitClass;
import holdfast.fits.InchLimitsKernel;
import holdfast.quantity.Length;
import holdfast.quantity.Units;
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

/** Cost of inch fits: look-up of the limit deviations, and the typed fit from text. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class InchFitBenchmark {
  private final int code = InchFitClass.FN2.code();
  private final double[] deviations = new double[4];
  private final Length size = Units.inch("15-1/2");
  private double millimetres = 393.7;
  private String text = "FN2";

  /** Limit deviations of hole and shaft, in one of the last of 25 ranges. */
  @Benchmark
  public double[] limitsFromKernel() {
    InchLimitsKernel.fit(millimetres, code, deviations);
    return deviations;
  }

  /** Standard tolerance. */
  @Benchmark
  public double standardTolerance() {
    return InchLimitsKernel.standardTolerance(millimetres, 7);
  }

  /** The typed fit, read from text. */
  @Benchmark
  public Fit fitOfText() {
    return Fit.of(size, text);
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.benchmarks;

import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
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

/** Cost of a unit conversion through the quantity records. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class QuantityBenchmark {
  private double millimetres = 25.4;

  /** Millimetres to inches. */
  @Benchmark
  public double lengthInInches() {
    return new Length(millimetres).in(KnownUnits.INCH);
  }
}

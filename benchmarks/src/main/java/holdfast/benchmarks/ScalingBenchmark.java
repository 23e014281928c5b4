// SPDX-License-Identifier: Apache-2.0
package holdfast.benchmarks;

import holdfast.bearings.BearingFamily;
import holdfast.bearings.BulkLifeKernel;
import holdfast.seats.ThickRingKernel;
import holdfast.threads.Friction;
import holdfast.threads.SamplingKernel;
import holdfast.threads.TighteningKernel;
import java.util.Arrays;
import java.util.Random;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Bulk kernels on one and on two threads, over 10³ to 10⁶ items: the time of the whole, shared between the threads of a pool
 * of that size. One thread takes the same way through the pool, so that the quotient of the two rows is the gain.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class ScalingBenchmark {
  private static final Friction FRICTION = Friction.of(0.1, 0.16);

  /** Items of a bulk call. The parallel kernels split into blocks, so that few items stay on one thread. */
  @Param({"1000", "10000", "100000", "1000000"})
  public int items;

  /** Threads of the pool. */
  @Param({"1", "2"})
  public int threads;

  private ForkJoinPool pool;
  private BearingFamily[] families;
  private double[][] in;
  private double[] out;

  /** Makes the pool and fills the arrays. */
  @Setup
  public void fill() {
    pool = new ForkJoinPool(threads);
    Random random = new Random(1);
    BearingFamily[] all = BearingFamily.values();
    families = new BearingFamily[items];
    Arrays.setAll(families, i -> all[i % all.length]);
    double[][] ranges = {{1e4, 1e5}, {500, 5000}, {500, 9000}, {100, 3000}, {100, 400}, {50, 150}, {0, 1}, {50, 99.95}};
    in = new double[ranges.length][items];
    for (int k = 0; k < ranges.length; k++) {
      double low = ranges[k][0];
      double span = ranges[k][1] - low;
      Arrays.setAll(in[k], i -> low + span * random.nextDouble());
    }
    out = new double[items];
  }

  /** Ends the threads. */
  @TearDown
  public void end() {
    pool.shutdown();
  }

  /** Modified lives. */
  @Benchmark
  public double[] lives() throws InterruptedException, ExecutionException {
    pool.submit(() -> BulkLifeKernel.hoursInParallel(families, in[0], in[1], in[2], in[3], in[4], in[5], in[6], in[7], out)).get();
    return out;
  }

  /** Sampled tightenings. */
  @Benchmark
  public double[] sampledPreloads() throws InterruptedException, ExecutionException {
    pool.submit(() -> SamplingKernel.preloads(out, 1, false, 85_000, 0.06, 16.7, 1.5, FRICTION, 21.9, 0)).get();
    return out;
  }

  /** Pressures of press fits, one part of the items to each thread. */
  @Benchmark
  public double[] pressures() throws InterruptedException, ExecutionException {
    shared((from, to) -> {
      for (int i = from; i < to; i++) {
        out[i] = ThickRingKernel.pressure(in[6][i] * 0.04, 40, 0, 80, 206_000, 0.3, 110_000, 0.25);
      }
    });
    return out;
  }

  /** Preloads of torques, one part of the items to each thread. */
  @Benchmark
  public double[] preloads() throws InterruptedException, ExecutionException {
    shared((from, to) -> {
      for (int i = from; i < to; i++) {
        out[i] = TighteningKernel.preload(in[0][i], 16.7, 1.5, 0.1, 21.9, 0.12, 0);
      }
    });
    return out;
  }

  private void shared(Part part) throws InterruptedException, ExecutionException {
    pool.submit(() -> IntStream.range(0, threads).parallel()
        .forEach(t -> part.run((int) ((long) items * t / threads), (int) ((long) items * (t + 1) / threads)))).get();
  }

  /** A part of the items. */
  private interface Part {
    void run(int from, int to);
  }
}

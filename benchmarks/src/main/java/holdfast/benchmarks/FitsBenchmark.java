// SPDX-License-Identifier: Apache-2.0
package holdfast.benchmarks;

import holdfast.fits.ClearanceDistributionKernel;
import holdfast.fits.Fit;
import holdfast.fits.FitCandidate;
import holdfast.fits.FitSelector;
import holdfast.fits.LimitDeviations;
import holdfast.fits.LimitDeviationsKernel;
import holdfast.fits.StatisticalFit;
import holdfast.fits.ThermalFitKernel;
import holdfast.fits.ToleranceClass;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import java.util.List;
import java.util.SplittableRandom;
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

/** Limits and fits: kernels, typed calls on text, selection. Sizes and classes change from call to call. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class FitsBenchmark {
  private static final int COUNT = 1024;
  private static final String[] FITS = {"H7/p6", "H7/k6", "H8/f7", "K7/h6", "H11/c11", "JS7/h6", "H6/n5", "P7/h6"};

  private final double[] sizes = new double[COUNT];
  private final Length[] lengths = new Length[COUNT];
  private final int[] holes = new int[COUNT];
  private final int[] shafts = new int[COUNT];
  private final String[] texts = new String[COUNT];
  private final double[] deviations = new double[4];
  private final double[] upper = new double[COUNT];
  private final double[] lower = new double[COUNT];
  private final ToleranceClass k7 = ToleranceClass.of("K7");
  private final StatisticalFit statistical = StatisticalFit.centred(Fit.of("25 H7/k6"), 1);
  private int next;
  private double mean = 0.012;
  private double holeDeviation = 0.0035;
  private double shaftDeviation = 0.0022;
  private double probability = 0.01;
  private double clearance;
  private boolean normal = true;
  private boolean uniform;
  private double holeExpansion = 23.8e-6;
  private double shaftExpansion = 11.5e-6;
  private double holeTemperature = 65;
  private double shaftTemperature = 40;

  /** Spreads the inputs over all size ranges up to 500 mm. */
  public FitsBenchmark() {
    SplittableRandom random = new SplittableRandom(1);
    for (int i = 0; i < COUNT; i++) {
      sizes[i] = Math.exp(random.nextDouble(Math.log(1.5), Math.log(500)));
      lengths[i] = new Length(sizes[i]);
      texts[i] = FITS[random.nextInt(FITS.length)];
      int slash = texts[i].indexOf('/');
      holes[i] = ToleranceClass.of(texts[i].substring(0, slash)).code();
      shafts[i] = ToleranceClass.of(texts[i].substring(slash + 1)).code();
    }
  }

  private int index() {
    next = (next + 1) & (COUNT - 1);
    return next;
  }

  /** Limit deviations of both parts of a fit, from the kernel. */
  @Benchmark
  public double[] limitsOfFit() {
    int i = index();
    LimitDeviationsKernel.fit(sizes[i], holes[i], shafts[i], deviations);
    return deviations;
  }

  /** Least clearance of a fit, from the kernel. */
  @Benchmark
  public double leastClearance() {
    int i = index();
    return LimitDeviationsKernel.minimumClearance(sizes[i], holes[i], shafts[i]);
  }

  /** Limit deviations of 1024 sizes in one class, from the bulk kernel. */
  @Benchmark
  public double[] limitsOf1024Sizes() {
    LimitDeviationsKernel.limits(sizes, holes[0], upper, lower);
    return upper;
  }

  /** Typed limit deviations of a class. */
  @Benchmark
  public LimitDeviations typedDeviations() {
    return k7.limitDeviations(lengths[index()]);
  }

  /** A fit read from text. */
  @Benchmark
  public Fit fitOfText() {
    int i = index();
    return Fit.of(lengths[i], texts[i]);
  }

  /** All hole-basis fits searched, the ten best built. */
  @Benchmark
  public List<FitCandidate> selection() {
    return FitSelector.holeBasis(lengths[index()])
        .interferenceBetween(KnownUnits.UM.of(0), KnownUnits.UM.of(60))
        .candidates(10);
  }

  /** Probability of interference of two normal processes. */
  @Benchmark
  public double probabilityOfInterference() {
    return statistical.probabilityOfInterference();
  }

  /** Probability of interference of a normal and a uniform process, from the kernel. */
  @Benchmark
  public double probabilityOfDifference() {
    return ClearanceDistributionKernel.probability(clearance, mean, holeDeviation, normal, shaftDeviation, uniform);
  }

  /** Clearance that one in a hundred pairs does not reach, searched. */
  @Benchmark
  public double quantileOfDifference() {
    return ClearanceDistributionKernel.quantile(probability, mean, holeDeviation, normal, shaftDeviation, uniform);
  }

  /** Clearance of parts at two temperatures. */
  @Benchmark
  public double clearanceWhenWarm() {
    double size = sizes[index()];
    return ThermalFitKernel.clearance(size, holeExpansion, holeTemperature, size, shaftExpansion, shaftTemperature);
  }
}

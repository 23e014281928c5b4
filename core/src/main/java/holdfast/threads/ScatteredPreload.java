// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.Check;
import holdfast.quantity.Force;
import holdfast.quantity.InputException;
import holdfast.quantity.Torque;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/**
 * The preload of one set torque with friction bands and tool deviation together.
 *
 * @param tightening stud, nut and face
 * @param torque set torque
 * @param scatter the tool
 */
public record ScatteredPreload(Tightening tightening, Torque torque, Scatter scatter) implements Traced, Serializable {

  // Refuses at once what the kernels refuse.
  public ScatteredPreload {
    Objects.requireNonNull(tightening, "tightening");
    Objects.requireNonNull(torque, "torque");
    Objects.requireNonNull(scatter, "scatter");
    tightening.preload(torque);
    tightening.preload(torque.times(1 - scatter.deviation()));
  }

  /**
   * Least preload in the worst case: tool low, friction high.
   *
   * @return FM,min
   */
  public Force worstCaseLeast() {
    Friction f = tightening.statedFriction();
    return tightening.preloadAt(torque.times(1 - scatter.deviation()), f.threadHigh(), f.faceHigh());
  }

  /**
   * Greatest preload in the worst case: tool high, friction low.
   *
   * @return FM,max
   */
  public Force worstCaseGreatest() {
    Friction f = tightening.statedFriction();
    return tightening.preloadAt(torque.times(1 + scatter.deviation()), f.threadLow(), f.faceLow());
  }

  /**
   * Preload at the middle of all bands.
   *
   * @return FM
   */
  public Force middle() {
    Friction f = tightening.statedFriction();
    return tightening.preloadAt(torque, middle(f.threadLow(), f.threadHigh()), middle(f.faceLow(), f.faceHigh()));
  }

  /**
   * Least preload by root-sum-square of the single effects below the middle.
   *
   * @return FM,min
   */
  public Force rootSumSquareLeast() {
    return middle().minus(rootSumSquare(false));
  }

  /**
   * Greatest preload by root-sum-square of the single effects above the middle.
   *
   * @return FM,max
   */
  public Force rootSumSquareGreatest() {
    return middle().plus(rootSumSquare(true));
  }

  /**
   * Tightening factor in the worst case.
   *
   * @return αA = FM,max/FM,min
   */
  public double tighteningFactor() {
    return worstCaseGreatest().ratio(worstCaseLeast());
  }

  /**
   * Samples tightenings and gives quantiles of the preload.
   *
   * @param count number of tightenings, 1 or more
   * @param seed seed: the same seed gives the same numbers
   * @param normal true: normal distributions with the bands at ± 3 standard deviations; false: uniform over the bands
   * @param probabilities probabilities of the quantiles (dimensionless), 0 to 1
   * @return the quantiles in the order of the probabilities
   * @throws InputException if a value is outside its range
   */
  public List<Force> sampledQuantiles(int count, long seed, boolean normal, double... probabilities) {
    Objects.requireNonNull(probabilities, "probabilities");
    Check.within(count, 1, 100_000_000, "number of samples", "", "something must be sampled, and it must fit the memory");
    double[] preloads = new double[count];
    SamplingKernel.preloads(
        preloads,
        seed,
        normal,
        torque.newtonMillimetre(),
        scatter.deviation(),
        tightening.thread().pitchDiameter().mm(),
        tightening.thread().lead().mm(),
        tightening.statedFriction(),
        tightening.statedFace().frictionDiameter().mm(),
        tightening.prevailing().newtonMillimetre());
    Arrays.parallelSort(preloads);
    return Arrays.stream(probabilities)
        .mapToObj(
            p -> {
              Check.within(p, 0, 1, "probability", "", "a part of all tightenings");
              return new Force(preloads[(int) Math.min(count - 1L, (long) Math.floor(p * count))]);
            })
        .toList();
  }

  /** How the worst case follows; the last step is the least preload. */
  @Override
  public Derivation explain() {
    SourceRef source = SourceRef.memory("VDI 2230-1:2015", "tightening torque, exact form, solved for the preload");
    double a = scatter.deviation();
    return Derivation.of("Scatter of the preload of " + tightening + " at " + torque)
        .step("a", "deviation of the tool", scatter.name(), a, "", scatter.source())
        .step("FM,max", "greatest preload, low friction", "MA·(1 + a) through the tightening torque",
            worstCaseGreatest().newton(), "N", source)
        .step("FM,min", "least preload, high friction", "MA·(1 − a) through the tightening torque",
            worstCaseLeast().newton(), "N", source)
        .build();
  }

  @Override
  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>(tightening.preload(torque).warnings());
    warnings.addAll(scatter.warnings(torque));
    return warnings;
  }

  private Force rootSumSquare(boolean up) {
    Friction f = tightening.statedFriction();
    double muG = middle(f.threadLow(), f.threadHigh());
    double muK = middle(f.faceLow(), f.faceHigh());
    double a = scatter.deviation();
    // The preload is linear in the torque: the tool counts the same both ways.
    double tool = tightening.preloadAt(torque.times(1 + a), muG, muK).minus(middle()).newton();
    double thread = tightening.preloadAt(torque, up ? f.threadLow() : f.threadHigh(), muK).minus(middle()).newton();
    double face = tightening.preloadAt(torque, muG, up ? f.faceLow() : f.faceHigh()).minus(middle()).newton();
    return new Force(Math.sqrt(tool * tool + thread * thread + face * face));
  }

  private static double middle(double low, double high) {
    return 0.5 * (low + high);
  }

  /** Torque and worst-case band. */
  @Override
  public String toString() {
    return torque + ", " + scatter + ": preload " + worstCaseLeast() + " … " + worstCaseGreatest();
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.benchmarks;

import static holdfast.quantity.Units.mm;

import holdfast.failures.FailureReading;
import holdfast.failures.Finding;
import holdfast.fleet.FleetPlan;
import holdfast.fleet.SparesKernel;
import holdfast.installation.CrownKernel;
import holdfast.lubrication.GreaseQuantityKernel;
import holdfast.lubrication.Port;
import holdfast.lubrication.PortPlan;
import holdfast.lubrication.PortRequest;
import holdfast.lubrication.RelubricationKernel;
import holdfast.rollers.EccentricKernel;
import holdfast.rollers.Identification;
import holdfast.rollers.MeasuredRoller;
import holdfast.rollers.RingAccelerationKernel;
import holdfast.rollers.RollerGeometryKernel;
import holdfast.rollers.RollerSeries;
import holdfast.rollers.RollerSpeedKernel;
import java.util.List;
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

/** Cost of port plans, identification, failure reading, intervals, replacement and spares, and of the motion of a roller. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class RollerBenchmark {
  private final PortRequest request = PortRequest.of(RollerSeries.METRIC.size(mm(35)), Port.THREAD_END);
  private final FleetPlan fleet = FleetPlan.ofLike(h -> Math.exp(-Math.pow(h / 12_000, 1.5)), 40, 1500);
  private double rpm = 300;
  private double mean = 7.5;
  private double outside = 35;
  private double bore = 27;
  private double width = 18;
  private double mass = 0.085;
  private double speed = 800;
  private double eccentricity = 0.5;
  private double torque = 1500;
  private double angle = 0.4;
  private double studLength = 32.5;
  private double threadLength = 17;
  private double crownRadius = 500;
  private double moment = 3000;
  private double load = 4000;

  /** Empirical interval of relubrication. */
  @Benchmark
  public double interval() {
    return RelubricationKernel.empirical(5, rpm, 18);
  }

  /** Stock for a service level. */
  @Benchmark
  public int stock() {
    return SparesKernel.stock(mean, 0.95);
  }

  /** A whole port plan. */
  @Benchmark
  public PortPlan portPlan() {
    return PortPlan.of(request);
  }

  /** Identification among all sizes. */
  @Benchmark
  public Identification identify() {
    return MeasuredRoller.outsideDiameter(mm(34.95)).stud(mm(15.99)).identify(mm(0.2));
  }

  /** Failure reading by words. */
  @Benchmark
  public List<Finding> failureWords() {
    return FailureReading.search("red rust on the stud");
  }

  /** Expected replacements of forty like places in three years. */
  @Benchmark
  public double replacements() {
    return fleet.expectedReplacements(3).total();
  }

  /** Free volume for grease. */
  @Benchmark
  public double greaseVolume() {
    return GreaseQuantityKernel.freeVolume(outside, 16, width, mass);
  }

  /** Speed of a roller along a track. */
  @Benchmark
  public double speedOnTrack() {
    return RollerSpeedKernel.onTrack(speed, outside);
  }

  /** Force at the rim of a ring that is brought to speed. */
  @Benchmark
  public double rimForce() {
    return RingAccelerationKernel.rimForce(60, outside, bore, speed, 20);
  }

  /** Load on the track by a torque on an eccentric stud. */
  @Benchmark
  public double eccentricLoad() {
    return EccentricKernel.load(torque, eccentricity, angle);
  }

  /** Plain part of the stud. */
  @Benchmark
  public double shankLength() {
    return RollerGeometryKernel.shankLength(studLength, threadLength);
  }

  /** Tilt of a crowned ring under a moment. */
  @Benchmark
  public double ringTilt() {
    return CrownKernel.ringTilt(moment, load, crownRadius, 40);
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.benchmarks;

import holdfast.seats.InternalClearanceKernel;
import holdfast.seats.PressForceKernel;
import holdfast.seats.RotationKernel;
import holdfast.seats.RoughnessLossKernel;
import holdfast.seats.SeatGeometryKernel;
import holdfast.seats.ThermalSeatKernel;
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

/** Cost of what pressing, roughness, heat and speed do to a seat, and of the tilt of a loose one. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class SeatServiceBenchmark {
  private double pressure = 45;
  private double joint = 25;
  private double hole = 6;
  private double outside = 60;
  private double length = 30;
  private double friction = 0.12;
  private double interference = 0.035;
  private double clearance = 0.025;
  private double steelExpansion = 11.5e-6;
  private double ironExpansion = 12.5e-6;
  private double room = 20;
  private double warm = 80;
  private double speed = 3000;
  private double outerRoughness = 0.0063;
  private double innerRoughness = 0.004;
  private double raceway = 31;

  /** Force of the press at the end of its stroke. */
  @Benchmark
  public double pressForce() {
    return PressForceKernel.axialForce(pressure, joint, length, friction);
  }

  /** Interference lost by smoothing. */
  @Benchmark
  public double roughnessLoss() {
    return RoughnessLossKernel.loss2017(outerRoughness, innerRoughness);
  }

  /** Temperature at which the housing slips over the stud. */
  @Benchmark
  public double housingTemperature() {
    return ThermalSeatKernel.housingTemperature(interference, clearance, joint, ironExpansion, steelExpansion, room, room);
  }

  /** Interference at working temperatures. */
  @Benchmark
  public double interferenceWhenWarm() {
    return ThermalSeatKernel.interferenceAt(interference, joint, steelExpansion, warm, ironExpansion, room);
  }

  /** Interference lost at speed. */
  @Benchmark
  public double lossAtSpeed() {
    return RotationKernel.interferenceLoss(joint, hole, outside, 7850, 210_000, 0.3, 7200, 169_000, 0.275, speed);
  }

  /** Internal clearance taken by the fit of the inner ring. */
  @Benchmark
  public double clearanceTakenByFit() {
    return InternalClearanceKernel.innerRing(interference, joint, raceway, hole);
  }

  /** Tilt of a stud in a bore with clearance. */
  @Benchmark
  public double clearanceTilt() {
    return SeatGeometryKernel.clearanceTilt(clearance, joint, length);
  }
}

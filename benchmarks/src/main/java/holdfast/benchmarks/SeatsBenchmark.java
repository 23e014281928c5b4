// SPDX-License-Identifier: Apache-2.0
package holdfast.benchmarks;

import holdfast.quantity.Length;
import holdfast.seats.ElasticLimitKernel;
import holdfast.seats.EquivalentStressKernel;
import holdfast.seats.HousingShapeKernel;
import holdfast.seats.InnerPart;
import holdfast.seats.InterferenceBand;
import holdfast.seats.InterferenceFit;
import holdfast.seats.Material;
import holdfast.seats.OuterPart;
import holdfast.seats.PlasticRingKernel;
import holdfast.seats.SeatHold;
import holdfast.seats.SeatSlopeKernel;
import holdfast.seats.ThickRingKernel;
import holdfast.seats.YieldRule;
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

/** Cost of an interference fit: pressure and the stresses at its critical radii. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class SeatsBenchmark {
  private double interference = 0.035;
  private double joint = 25;
  private double hole = 6;
  private double outside = 60;
  private YieldRule rule = YieldRule.VON_MISES;
  private double yield = 320;
  private double hoopFactor = 1.42;
  private double edge = 1.1;
  private final double[] many = new double[1000];
  private final double[] pressures = new double[1000];
  private final InterferenceFit fit =
      InterferenceFit.of(
          InnerPart.hollow(Material.of("C45+QT"), new Length(6)),
          OuterPart.ring(Material.of("EN-GJS-500-7"), new Length(60)),
          InterferenceBand.of(new Length(25), new Length(0.001), new Length(0.035)),
          new Length(30));

  /** Joint pressure alone. */
  @Benchmark
  public double pressure() {
    return ThickRingKernel.pressure(interference, joint, hole, outside, 210_000, 0.3, 169_000, 0.275);
  }

  /** Joint pressure, hoop stresses at hole, joint, bore and outside, von Mises stress at hole and bore. */
  @Benchmark
  public double pressureAndStresses() {
    double p = pressure();
    double a = hole / 2;
    double r = joint / 2;
    double b = outside / 2;
    double wall = ThickRingKernel.hoopStress(a, a, r, 0, p);
    double stud = ThickRingKernel.hoopStress(r, a, r, 0, p);
    double bore = ThickRingKernel.hoopStress(r, r, b, p, 0);
    double rim = ThickRingKernel.hoopStress(b, r, b, p, 0);
    return wall + stud + rim + EquivalentStressKernel.vonMises(wall, 0) + EquivalentStressKernel.vonMises(bore, -p);
  }

  /** A thousand pressures of one pair of parts. */
  @Benchmark
  public double[] thousandPressures() {
    for (int i = 0; i < many.length; i++) {
      many[i] = interference * i / 1000;
    }
    ThickRingKernel.pressures(many, joint, hole, outside, 210_000, 0.3, 169_000, 0.275, pressures);
    return pressures;
  }

  /** Radius of the plastic zone of an interference. */
  @Benchmark
  public double plasticZone() {
    return PlasticRingKernel.plasticRatioOfInterference(0.1, joint / outside, joint, 3.9e-6, 169_000, 0.275, 370);
  }

  /** The typed result: stresses at all critical radii. */
  @Benchmark
  public List<?> typedStresses() {
    return fit.stresses();
  }

  /** Pressure at which the bore of a housing yields. */
  @Benchmark
  public double elasticLimit() {
    return ElasticLimitKernel.housingPressure(rule, yield, hoopFactor);
  }

  /** Ring equivalent to a housing near an edge, interpolated. */
  @Benchmark
  public double equivalentRing() {
    return HousingShapeKernel.edgeEquivalent(edge);
  }

  /** Compliance of an elastic seat, interpolated in four directions. */
  @Benchmark
  public double seatCompliance() {
    return SeatSlopeKernel.momentCompliance(SeatHold.FRICTIONLESS_FREE, edge, 2.8, 1.3, 0.17);
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.laws;

import holdfast.bearings.BearingFamily;
import holdfast.bearings.reference.BallDistributionKernel;
import holdfast.bearings.reference.BallWorkspace;
import holdfast.bearings.reference.LaminaKernel;
import holdfast.bearings.reference.LaminaWorkspace;
import holdfast.bearings.reference.LoadDistributionKernel;
import holdfast.fits.ToleranceClass;
import holdfast.seats.SeatHold;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** Ordinary arguments for kernels that would hardly ever answer random ones: a place to begin from. */
final class Examples {
  private static final int LAMINAE = 20;

  private Examples() {}

  private static double half(double ignored) {
    return 0.5;
  }

  static List<Object[]> of(String kernel) {
    DoubleUnaryOperator half = Examples::half;
    return switch (kernel) {
      case "BallDistributionKernel.contacts/6" -> one(balls(), 10.0, 50.0, 5.2, 5.3, 0.01);
      case "BallDistributionKernel.tilted/5" -> one(balls(), 2000.0, 100.0, 0.001, 0.0);
      case "BallDistributionKernel.underMoment/5" -> one(balls(), 2000.0, 100.0, 500.0, 0.0);
      case "BallKernel.innerRating/6", "BallKernel.outerRating/6" -> one(20000.0, 9, 10.0, 50.0, 5.2, 5.3);
      case "BallKernel.pressure/5" -> one(500.0, 10.0, 50.0, 5.2, true);
      case "EllipticalContactKernel.solve/5" -> one(2000.0, 115000.0, 0.05, 0.002, new double[5]);
      case "JointKernel.thermalChange/7" -> one(20.0, 11.5e-6, 40.0, 23e-6, 40.0, 2e-6, 1e-6);
      case "BallKernel.stiffness/4" -> one(10.0, 50.0, 5.2, 5.3);
      case "BallLifeKernel.life/5" -> one(balls(), 8000.0, 9000.0, true, false);
      case "BallLifeKernel.modifiedLife/6" -> one(balls(), 8000.0, 9000.0, true, false, half);
      case "InverseLifeKernel.allowableLoad/9" -> one(BearingFamily.RADIAL_BALL, 20000.0, 900.0, 90.0, 1.5, 0.5, false, 0.5, 100.0);
      case "InverseLifeKernel.requiredKappa/7" -> one(BearingFamily.RADIAL_BALL, 20000.0, 900.0, 2000.0, 90.0, half, 100.0);
      case "FactorFcKernel.thrustBall/2", "FactorFcKernel.thrustRoller/2" -> one(1.2, 0.1);
      case "LifeModificationKernel.life/7" -> one(BearingFamily.RADIAL_BALL, 20000.0, 900.0, 2000.0, 90.0, 1.5, 0.5);
      case "LaminaLifeKernel.life/5" -> one(rollers(), 20000.0, 21000.0, true, false);
      case "LaminaLifeKernel.lifeRatios/9" -> one(rollers(), 2000.0, 0.01, new double[] {0.001, 0.002}, 20000.0, 21000.0, true,
          false, new double[2]);
      case "LaminaLifeKernel.modifiedLife/6" -> one(rollers(), 20000.0, 21000.0, true, false, half);
      case "LimitDeviationsKernel.maximumClearance/3", "LimitDeviationsKernel.minimumClearance/3" ->
          one(25.0, ToleranceClass.of("H7").code(), ToleranceClass.of("p6").code());
      case "PlasticRingKernel.plasticShare/2" -> one(1.1, 0.5);
      case "ProfileKernel.given/3" -> one(2.0, 12.0, new double[] {0.002, 0.0, 0.002});
      case "LimitDeviationsKernel.fit/4" -> one(25.0, ToleranceClass.of("H7").code(), ToleranceClass.of("p6").code(), new double[4]);
      case "LoadDistributionKernel.laminae/7" -> one(rollers(), LAMINAE, stations(), even(), new double[LAMINAE], ones(),
          LaminaKernel.stiffness(10));
      case "LoadDistributionKernel.tilted/5" -> one(rollers(), 2000.0, 0.01, 0.0005, 0.0001);
      case "LoadDistributionKernel.underMoment/5" -> one(rollers(), 2000.0, 0.01, 500.0, 100.0);
      case "MetricToleranceKernel.externalCrest/2", "MetricToleranceKernel.internalCrest/2" -> one(6, 1.5);
      case "MetricToleranceKernel.externalPitch/3", "MetricToleranceKernel.internalPitch/3" -> one(6, 16.0, 1.5);
      case "PlasticRingKernel.hoopStress/4" -> one(1.2, 1.1, 0.5, 300.0);
      case "PlasticRingKernel.interference/7" -> one(1.1, 0.5, 40.0, 5e-6, 210000.0, 0.3, 300.0);
      case "PlasticRingKernel.pressure/3" -> one(1.1, 0.5, 300.0);
      case "PlasticRingKernel.radialStress/4" -> one(1.2, 1.1, 0.5, 300.0);
      case "SeatSlopeKernel.momentCompliance/5", "SeatSlopeKernel.forceCompliance/5" ->
          one(SeatHold.FRICTIONLESS_FREE, 0.9, 2.8, 1.0, 0.17);
      case "SeatSlopeKernel.mouthSlope/9" -> one(SeatHold.BONDED_CLAMPED, 2100.0, 10.8, 18.0, 206000.0, 0.9, 2.8, 1.0, 0.17);
      case "SeatSlopeKernel.boreForce/5", "SeatSlopeKernel.boreMoment/5" -> one(0.6, 0.9, 2.8, 1.0, 0.17);
      case "RotationKernel.hoopStress/6" -> one(40.0, 0.0, 80.0, 7850.0, 0.3, 3000.0);
      case "RotationKernel.interferenceLoss/10" -> one(40.0, 0.0, 80.0, 7850.0, 210000.0, 0.3, 7200.0, 110000.0, 0.25, 3000.0);
      case "StaticRatingKernel.thrustRoller/5" -> one(1.2, 20.0, 8.0, 10.0, 50.0);
      case "ThermalFitKernel.clearance/6" -> one(25.02, 11.5e-6, 60.0, 25.0, 11.5e-6, 20.0);
      case "ThermalFitKernel.uniformTemperature/5" -> one(25.02, 23e-6, 25.0, 11.5e-6, 0.03);
      case "ThermalSeatKernel.housingTemperature/7" -> one(0.03, 0.02, 25.0, 23e-6, 11.5e-6, 20.0, 20.0);
      case "ThermalSeatKernel.interferenceAt/6" -> one(0.03, 25.0, 11.5e-6, 20.0, 23e-6, 80.0);
      case "ThickRingKernel.pressure/8" -> one(0.03, 40.0, 0.0, 80.0, 210000.0, 0.3, 110000.0, 0.25);
      case "ThickRingKernel.interference/8" -> one(50.0, 40.0, 0.0, 80.0, 210000.0, 0.3, 110000.0, 0.25);
      case "ThickRingKernel.pressures/9" -> one(new double[] {0.03, 0.04}, 40.0, 0.0, 80.0, 210000.0, 0.3, 110000.0, 0.25,
          new double[2]);
      case "TrackRollerKernel.strengthFactor/2" -> one(1200.0, true);
      case "ThickRingKernel.pressureOfParts/8" -> one(40.03, 40.0, 0.0, 80.0, 210000.0, 0.3, 110000.0, 0.25);
      default -> List.of();
    };
  }

  private static List<Object[]> one(Object... arguments) {
    return List.<Object[]>of(arguments);
  }

  private static BallWorkspace balls() {
    BallWorkspace balls = new BallWorkspace(12);
    BallDistributionKernel.balls(balls, 9, 0);
    BallDistributionKernel.contacts(balls, 10, 50, 5.2, 5.3, 0.01);
    BallDistributionKernel.tilted(balls, 2000, 100, 0.001, 0);
    return balls;
  }

  private static LaminaWorkspace rollers() {
    LaminaWorkspace rollers = new LaminaWorkspace(16, LAMINAE);
    LoadDistributionKernel.rollers(rollers, 16, 0);
    LoadDistributionKernel.laminae(
        rollers, LAMINAE, stations(), even(), new double[LAMINAE], ones(), LaminaKernel.stiffness(10));
    LoadDistributionKernel.tilted(rollers, 2000, 0.01, 0.0005, 0);
    return rollers;
  }

  private static double[] stations() {
    double[] x = new double[LAMINAE];
    Arrays.setAll(x, k -> 10 * ((k + 0.5) / LAMINAE - 0.5));
    return x;
  }

  private static double[] even() {
    double[] share = new double[LAMINAE];
    Arrays.fill(share, 1.0 / LAMINAE);
    return share;
  }

  private static double[] ones() {
    double[] one = new double[LAMINAE];
    Arrays.fill(one, 1);
    return one;
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.seats;

import holdfast.seats.ElasticLimitKernel;
import holdfast.seats.InternalClearanceKernel;
import holdfast.seats.PlasticRingKernel;
import holdfast.seats.PressForceKernel;
import holdfast.seats.RotationKernel;
import holdfast.seats.RoughnessLossKernel;
import holdfast.seats.SeatGeometryKernel;
import holdfast.seats.StudBendingKernel;
import holdfast.seats.StudNotchKernel;
import holdfast.seats.ThermalSeatKernel;
import holdfast.seats.ThickRingKernel;
import holdfast.seats.YieldRule;
import holdfast.verification.NamedInputs;

/** Our values for the quantities of rings, joints and seats in the reference computations. */
final class SeatValues {
  private SeatValues() {}

  static double value(String quantity, NamedInputs a) {
    return switch (quantity) {
      case "growth of the inner raceway" ->
          InternalClearanceKernel.innerRing(a.get("U"), a.get("d"), a.get("F"), a.get("hole"));
      case "closing of the outer raceway" ->
          InternalClearanceKernel.outerRing(a.get("U"), a.get("D"), a.get("Er"), a.get("DH"));
      case "clearance taken by temperature" ->
          InternalClearanceKernel.byTemperature(a.get("alpha") * 1e-6, a.get("dT"), a.get("F"), a.get("Er"));
      case "displacement in plane strain" -> planeStrain(a);
      case "axial stress of a closed cylinder" ->
          ThickRingKernel.axialStressClosed(a.get("a"), a.get("b"), a.get("pi"), a.get("po"));
      case "hoop stress of a turning ring" ->
          RotationKernel.hoopStress(a.get("at"), a.get("hole"), a.get("outside"), a.get("rho"), a.get("nu"), a.get("n"));
      case "radial stress of a turning ring" ->
          RotationKernel.radialStress(a.get("at"), a.get("hole"), a.get("outside"), a.get("rho"), a.get("nu"), a.get("n"));
      case "peak at a cross hole" ->
          StudBendingKernel.holePeak(a.get("along"), a.get("p"), a.get("d"), a.get("bore"));
      case "fatigue notch factor of a press fit" -> StudNotchKernel.pressFit(a.get("Rm"));
      case "speed of loss" -> RotationKernel.lossSpeed(a.get("U"), lossAtOneRpm(a));
      case "pressure at which a housing yields" -> ElasticLimitKernel.housingPressure(rule(a), a.get("R"), hoop(a));
      case "torque that slips" -> PressForceKernel.torque(a.get("p"), a.get("D"), a.get("l"), a.get("mu"));
      case "work of pressing" ->
          PressForceKernel.pressWork(
              PressForceKernel.axialForce(a.get("p"), a.get("D"), a.get("l"), a.get("mu")), a.get("l"));
      case "resultant on the joint face" -> PressForceKernel.resultant(a.get("F"), a.get("T"), a.get("D"));
      case "pressure to hold" ->
          PressForceKernel.pressureToHold(a.get("F"), a.get("D"), a.get("l"), a.get("mu"), a.get("S"));
      case "stud temperature" ->
          ThermalSeatKernel.studTemperature(a.get("U"), a.get("S"), a.get("D"), a.get("alpha") * 1e-6, a.get("room"));
      case "temperature of loss" ->
          ThermalSeatKernel.lossTemperature(a.get("U"), a.get("D"), a.get("alpha_i") * 1e-6, a.get("alpha_a") * 1e-6);
      case "shift of a point" -> SeatGeometryKernel.shift(a.get("phi"), a.get("a"), a.get("L"));
      case "engaged length" -> SeatGeometryKernel.engagedLength(a.get("l"), a.get("stud"), a.get("bore"));
      case "chamfer length" -> SeatGeometryKernel.chamferLength(a.get("D"));
      case "smoothing of 2001" -> 1000 * RoughnessLossKernel.loss2001(a.get("outer") / 1000, a.get("inner") / 1000);
      case "smoothing of 2017" -> 1000 * RoughnessLossKernel.loss2017(a.get("outer") / 1000, a.get("inner") / 1000);
      case "smoothing of 2017 by peaks" ->
          1000 * RoughnessLossKernel.loss2017OfPeaks(a.get("outer") / 1000, a.get("inner") / 1000);
      default -> plastic(quantity, a);
    };
  }

  private static double plastic(String quantity, NamedInputs a) {
    return switch (quantity) {
      case "stress difference at yield" -> PlasticRingKernel.yieldDifference(rule(a), a.get("R"));
      case "greatest pressure of a housing that yields" ->
          PlasticRingKernel.fullyPlasticPressure(a.get("Q"), a.get("k"));
      case "greatest plastic ratio" -> PlasticRingKernel.greatestPlasticRatio(a.get("Q"));
      case "plastic ratio" -> PlasticRingKernel.plasticRatio(a.get("p"), a.get("Q"), a.get("k"));
      case "plastic share" ->
          PlasticRingKernel.plasticShare(PlasticRingKernel.plasticRatio(a.get("p"), a.get("Q"), a.get("k")), a.get("Q"));
      case "radial stress" -> PlasticRingKernel.radialStress(a.get("x"), a.get("zeta"), a.get("Q"), a.get("k"));
      case "hoop stress" -> PlasticRingKernel.hoopStress(a.get("x"), a.get("zeta"), a.get("Q"), a.get("k"));
      default -> StudValues.value(quantity, a);
    };
  }

  /** The formulas of plane stress with the constants that turn them into plane strain. */
  private static double planeStrain(NamedInputs a) {
    double nu = a.get("nu");
    return ThickRingKernel.radialDisplacement(
        a.get("r"),
        a.get("a"),
        a.get("b"),
        a.get("pi"),
        a.get("po"),
        ThickRingKernel.planeStrainModulus(a.get("E"), nu),
        nu / (1 - nu));
  }

  private static double lossAtOneRpm(NamedInputs a) {
    return RotationKernel.interferenceLoss(
        a.get("D"),
        a.get("hole"),
        a.get("outside"),
        a.get("rho_i"),
        a.get("E_i"),
        a.get("nu_i"),
        a.get("rho_a"),
        a.get("E_a"),
        a.get("nu_a"),
        1);
  }

  private static double hoop(NamedInputs a) {
    double bore = a.get("D") / 2;
    return ThickRingKernel.hoopStress(bore, bore, a.get("DA") / 2, 1, 0);
  }

  private static YieldRule rule(NamedInputs a) {
    return switch (a.word("rule")) {
      case "von Mises" -> YieldRule.VON_MISES;
      case "Tresca" -> YieldRule.TRESCA;
      case "modified shear" -> YieldRule.MODIFIED_SHEAR;
      default -> throw new IllegalArgumentException("no such rule: " + a.word("rule"));
    };
  }
}

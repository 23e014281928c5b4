// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.seats;

import holdfast.seats.PinKernel;
import holdfast.seats.StudBeamKernel;
import holdfast.seats.StudBendingKernel;
import holdfast.seats.StudFatigueKernel;
import holdfast.seats.StudNotch;
import holdfast.seats.StudNotchKernel;
import holdfast.seats.StudSectionKernel;
import holdfast.verification.NamedInputs;
import java.util.Locale;

/** Our values for the quantities of studs in the reference computations. */
final class StudValues {
  private StudValues() {}

  static double value(String quantity, NamedInputs a) {
    return switch (quantity) {
      case "shear coefficient" -> StudSectionKernel.shearCoefficient(a.get("d"), a.get("bore"), a.get("nu"));
      case "shear deflection" ->
          StudBeamKernel.shearDeflection(
              a.get("F"), a.get("B"), a.get("g"), a.get("d"), a.get("bore"), a.get("E"), a.get("nu"));
      case "moment at a distance" -> StudBendingKernel.momentAt(a.get("F"), a.get("B"), a.get("g"), a.get("x"));
      case "load at a stress" ->
          StudBendingKernel.loadAtStress(a.get("sigma"), a.get("B"), a.get("g"), a.get("d"), a.get("bore"));
      case "shear stress on the neutral axis" -> StudBendingKernel.shearStress(a.get("F"), a.get("d"), a.get("bore"));
      case "double shear" -> StudBendingKernel.doubleShear(a.get("F"), a.get("d"), a.get("bore"));
      case "moment in the middle of a pin" -> PinKernel.moment(a.get("F"), a.get("g"), a.get("t"), a.get("w"));
      case "pressure of a pin" -> PinKernel.pressure(a.get("F"), a.get("d"), a.get("l"));
      case "axial stress" -> StudBendingKernel.axialStress(a.get("F"), a.get("d"), a.get("bore"));
      case "torsional stress" -> StudBendingKernel.torsionStress(a.get("T"), a.get("d"), a.get("bore"));
      case "pressure at the mouth" -> StudBendingKernel.mouthPressure(a.get("F"), a.get("a"), a.get("d"), a.get("L"));
      case "pressure at the far end" ->
          StudBendingKernel.farEndPressure(a.get("F"), a.get("a"), a.get("d"), a.get("L"));
      case "equivalent stress on the fibre in tension" ->
          StudBendingKernel.atTensionFibre(a.get("bending"), a.get("axial"), a.get("torsion"));
      case "equivalent stress on the neutral axis" ->
          StudBendingKernel.atNeutralAxis(a.get("axial"), a.get("shear"), a.get("torsion"));
      case "margin against first yield" -> StudFatigueKernel.firstYield(a.get("amplitude"), a.get("mean"), a.get("R"));
      case "material length" -> StudNotchKernel.materialLength(a.get("Rm"));
      case "fatigue notch factor" -> StudNotchKernel.fatigueFactor(a.get("Kt"), a.get("r"), a.get("a"));
      case "covered by the notch polynomials (1 yes, 0 no)" -> covered(a) ? 1 : 0;
      default -> throw new IllegalArgumentException("no such quantity: " + quantity);
    };
  }

  private static boolean covered(NamedInputs a) {
    StudNotch notch = StudNotch.valueOf(a.word("notch").toUpperCase(Locale.ROOT));
    StudNotch.Loading loading = StudNotch.Loading.valueOf(a.word("loading").toUpperCase(Locale.ROOT));
    return StudNotchKernel.isValid(notch, loading, a.get("D"), a.get("d"), a.get("r"));
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.threads;

import holdfast.quantity.KnownUnits;
import holdfast.quantity.Stress;
import holdfast.quantity.Torque;
import holdfast.threads.ChartTorque;
import holdfast.threads.ChartVerdict;
import holdfast.threads.Embedding;
import holdfast.threads.PropertyClass;
import holdfast.threads.SectionKernel;
import holdfast.threads.StrengthKernel;
import holdfast.threads.StressKernel;
import holdfast.threads.StrippingKernel;
import holdfast.threads.ThreadGeometryKernel;
import holdfast.threads.Tightening;
import holdfast.threads.TighteningKernel;
import holdfast.verification.NamedInputs;

/** Our values for the quantities of threads and joints in the reference computations. */
final class ThreadValues {
  static final String[] REFERENCE = {
    "holdfast.threads.ChartVerdict",
    "holdfast.threads.JointKernel",
    "holdfast.threads.SectionKernel",
    "holdfast.threads.StressKernel",
    "holdfast.threads.StrippingKernel",
    "holdfast.threads.ThreadGeometryKernel#helixAngle",
    "holdfast.threads.TighteningKernel#linearLever",
    "holdfast.threads.TighteningKernel#uniformPressureDiameter"
  };
  static final String[] RECALLED = {
    "holdfast.threads.Embedding#amount",
    "holdfast.threads.JointKernel#engagedResilience",
    "holdfast.threads.JointKernel#coneTangent",
    "holdfast.threads.JointKernel#embeddingByLength",
    "holdfast.threads.StrippingKernel",
    "holdfast.threads.StrengthKernel#shearStrength",
    "holdfast.threads.ThreadGeometryKernel#unifiedRoundedMinorDiameter"
  };

  private ThreadValues() {}

  static double value(String quantity, NamedInputs a) {
    return switch (quantity) {
      case "elastic torsion modulus" ->
          a.has("cross")
              ? SectionKernel.elasticModulus(a.get("D"), a.get("bore"), a.get("cross"))
              : SectionKernel.elasticModulus(a.get("D"), a.get("bore"));
      case "plastic torsion modulus" ->
          a.has("cross")
              ? SectionKernel.plasticModulus(a.get("D"), a.get("bore"), a.get("cross"))
              : SectionKernel.plasticModulus(a.get("D"), a.get("bore"));
      case "equivalent stress while tightening" ->
          StressKernel.combined(a.get("F"), a.get("M"), a.get("A"), a.get("W"));
      case "equivalent stress after relaxation" ->
          StressKernel.afterRelaxation(a.get("axial"), a.get("torsion"), a.get("k"));
      case "preload in service" ->
          StressKernel.preloadInService(
              a.get("sigma"), a.get("A"), a.get("W"), a.get("lever"), a.get("MP"), a.get("FX"), a.get("k"));
      case "torsion stress" ->
          StressKernel.torsion(a.get("M"), SectionKernel.elasticModulus(a.get("D"), a.get("bore")));
      case "friction diameter under uniform pressure" ->
          TighteningKernel.uniformPressureDiameter(a.get("outer"), a.get("inner"));
      case "linear lever" ->
          TighteningKernel.linearLever(a.get("d2"), a.get("lead"), a.get("mu_G"), a.get("D_Km"), a.get("mu_K"));
      case "helix angle" -> ThreadGeometryKernel.helixAngle(a.get("d2"), a.get("lead"));
      case "rounded minor diameter" ->
          ThreadGeometryKernel.unifiedRoundedMinorDiameter(a.get("D"), 1 / a.get("n"));
      case "shear strength" -> StrengthKernel.shearStrength(a.get("Rm"), a.get("ratio"));
      case "embedding of a joint in um" -> embedding(a);
      case "use of the yield stress by a chart torque, oiled" -> chart(a).greatestUse();
      case "use of the yield stress by a chart torque, as delivered" -> chart(a).leastUse();
      case "preload at which charts aim" -> chart(a).usualPreload().newton();
      case "friction that a chart torque implies" -> chart(a).impliedFriction().orElse(Double.NaN);
      default -> stripping(quantity, a);
    };
  }

  private static ChartVerdict chart(NamedInputs a) {
    Tightening nut =
        Tightening.of(CaseThreads.of(a.word("thread")))
            .bore(KnownUnits.MM.of(a.get("bore")))
            .bearingFace(KnownUnits.MM.of(a.get("outer")), KnownUnits.MM.of(a.get("inner")));
    Stress yield = KnownUnits.MPA.of(a.get("Re"));
    return new ChartVerdict(
        new ChartTorque(nut, new Torque(a.get("torque"))), PropertyClass.ofMaterial("stated", yield, yield.times(1.2)));
  }

  private static double stripping(String quantity, NamedInputs a) {
    return switch (quantity) {
      case "shear area of the external thread" -> external(a);
      case "shear area of the internal thread" -> internal(a);
      case "engagement for full strength" ->
          StrippingKernel.engagementForFullStrength(a.get("At"), a.get("K"), a.get("d2"), a.get("P"));
      case "strength ratio" ->
          StrippingKernel.strengthRatio(a.get("tau_nut"), internal(a), a.get("tau_stud"), external(a));
      case "dilation of the nut" -> StrippingKernel.dilation(a.get("ratio"));
      case "bending of the external thread" -> StrippingKernel.externalBending(a.get("RS"));
      case "bending of the internal thread" -> StrippingKernel.internalBending(a.get("RS"));
      default -> JointValues.value(quantity, a);
    };
  }

  private static double external(NamedInputs a) {
    return StrippingKernel.externalShearArea(a.get("K"), a.get("d2"), a.get("P"), a.get("m"));
  }

  private static double internal(NamedInputs a) {
    return StrippingKernel.internalShearArea(a.get("d"), a.get("D2"), a.get("P"), a.get("m"));
  }

  private static double embedding(NamedInputs a) {
    return Embedding.amount(
            KnownUnits.UM.of(a.get("Rz")), a.yes("shear"), (int) a.get("faces"), (int) a.get("interfaces"))
        .in(KnownUnits.UM);
  }
}

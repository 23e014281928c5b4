// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.threads;

import holdfast.quantity.KnownUnits;
import holdfast.quantity.Torque;
import holdfast.tables.Table;
import holdfast.threads.AssemblyPreload;
import holdfast.threads.ChartTorque;
import holdfast.threads.PropertyClass;
import holdfast.threads.ScatterKernel;
import holdfast.threads.ScrewThread;
import holdfast.threads.StressKernel;
import holdfast.threads.StudSection;
import holdfast.threads.Tightening;
import holdfast.threads.TighteningKernel;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;

/** Preloads and torques. */
final class TighteningSuites {
  private static final String[] ASSEMBLY = {
    "holdfast.threads.Tightening#assemblyPreload",
    "holdfast.threads.TighteningKernel#threadLever",
    "holdfast.threads.TighteningKernel#faceLever",
    "holdfast.threads.TighteningKernel#linearThreadLever",
    "holdfast.threads.TighteningKernel#printedThreadLever",
    "holdfast.threads.TighteningKernel#torque",
    "holdfast.threads.StressKernel#preloadAt",
    "holdfast.threads.SectionKernel#plasticModulus",
    "holdfast.threads.PropertyClass#yieldStress"
  };

  private TighteningSuites() {}

  /** The assembly tables at 90 % of the yield stress. */
  static class AssemblyValues extends CaseSuite {
    AssemblyValues() {
      super("assembly-values", ASSEMBLY);
    }

    AssemblyValues(String table) {
      super(table, ASSEMBLY);
    }

    @Override
    Evidence evidence(Table cases, int row) {
      // Which form the stainless page follows was found by trying both on it.
      return cases.text(row, "form").equals("linear") ? Evidence.RECONSTRUCTION : Evidence.PRINT;
    }

    @Override
    Comparison compare(Table cases, int row) {
      ScrewThread thread = CaseThreads.of(cases.text(row, "thread"));
      String name = cases.text(row, "class").replace("A2/A4-", "A4-").replaceFirst("^A-", "A4-");
      double mu = cases.number(row, "friction");
      Tightening nut = Tightening.of(thread).friction(mu, mu);
      boolean preload = cases.text(row, "quantity").equals("FM");
      if (cases.descriptor().columns().containsKey("form") && cases.text(row, "form").equals("linear")) {
        double newton = linearPreload(nut, PropertyClass.of(name).yieldStress(thread).megapascal(), mu);
        double d2 = thread.pitchDiameter().mm();
        double lever = TighteningKernel.printedThreadLever(d2, thread.lead().mm(), mu);
        double face = TighteningKernel.faceLever(nut.face().frictionDiameter().mm(), mu);
        return preload
            ? halfDigit(cases, row, newton / 1000, "kN")
            : halfDigit(cases, row, newton * (lever + face) / 1000, "N·m");
      }
      AssemblyPreload assembly = nut.assemblyPreload(PropertyClass.of(name), 0.9);
      return preload
          ? halfDigit(cases, row, assembly.preload().newton() / 1000, "kN")
          : halfDigit(cases, row, assembly.torque().newtonMillimetre() / 1000, "N·m");
    }

    private static double linearPreload(Tightening nut, double yield, double mu) {
      ScrewThread thread = nut.thread();
      StudSection section = nut.sections().get(0);
      return StressKernel.preloadAt(
          0.9 * yield,
          section.area().mm2(),
          section.torsionModulus(nut.torsion()),
          TighteningKernel.linearThreadLever(thread.pitchDiameter().mm(), thread.lead().mm(), mu));
    }
  }

  /** The same of coarse threads, recalled. */
  static final class RecalledAssemblyValues extends AssemblyValues {
    RecalledAssemblyValues() {
      super("recalled-assembly-values");
    }

    @Override
    Evidence evidence(Table cases, int row) {
      return Evidence.RECALLED;
    }
  }

  /** Inch torques by nut factor. */
  static final class InchTorques extends CaseSuite {
    InchTorques() {
      super("inch-torques", "holdfast.threads.ScatterKernel#torqueByNutFactor");
    }

    @Override
    Evidence evidence(Table cases, int row) {
      return Evidence.PRINT;
    }

    @Override
    Comparison compare(Table cases, int row) {
      double inches = CaseThreads.of(cases.text(row, "thread")).majorDiameter().mm() / 25.4;
      double torque = ScatterKernel.torqueByNutFactor(cases.number(row, "clamp"), cases.number(row, "k"), inches);
      boolean feet = cases.text(row, "unit").equals("lbf·ft");
      return halfDigit(cases, row, feet ? torque / 12 : torque, cases.text(row, "unit"));
    }
  }

  /** Nominal, least and greatest preloads with uncertainty and relaxation. */
  static final class SpacePreloads extends CaseSuite {
    SpacePreloads() {
      super(
          "space-preloads",
          "holdfast.threads.ScatterKernel#greatestByUncertainty",
          "holdfast.threads.ScatterKernel#leastByUncertainty",
          "holdfast.threads.StrengthKernel#load");
    }

    @Override
    Evidence evidence(Table cases, int row) {
      return Evidence.PRINT;
    }

    @Override
    Comparison compare(Table cases, int row) {
      double nominal = cases.number(row, "area") * cases.number(row, "stress");
      double ours =
          switch (cases.text(row, "quantity")) {
            case "nominal" -> nominal;
            case "least" -> ScatterKernel.leastByUncertainty(nominal, 0.25, 0, 0.05);
            default -> ScatterKernel.greatestByUncertainty(nominal, 0.25, 0);
          };
      return halfDigit(cases, row, ours, "lbf");
    }
  }

  /** Stress in the stud that the trade's mounting torques imply. */
  static final class StudTorques extends CaseSuite {
    StudTorques() {
      super(
          "stud-torques",
          "holdfast.threads.ChartTorque#of",
          "holdfast.threads.ChartTorque#stressBy",
          "holdfast.threads.ScatterKernel#preloadByNutFactor");
    }

    @Override
    Evidence evidence(Table cases, int row) {
      return Evidence.PRACTICE;
    }

    @Override
    Comparison compare(Table cases, int row) {
      Torque torque =
          (cases.text(row, "unit").equals("N·m") ? KnownUnits.N_M : KnownUnits.LBF_IN).of(cases.number(row, "torque"));
      double k = cases.text(row, "condition").equals("oiled") ? ChartTorque.K_OILED : ChartTorque.K_DRY;
      ScrewThread thread = CaseThreads.of(cases.text(row, "thread"));
      double stress = ChartTorque.of(thread, torque).stressBy(k).megapascal();
      return builder(cases, row)
          .band(90, stress, 165, "MPa", "the trade's band of tensile stress");
    }
  }

  /** Nut factors that printed torques imply. */
  static final class GovernmentTorques extends CaseSuite {
    GovernmentTorques() {
      super("government-torques", "holdfast.threads.ScatterKernel#preloadByNutFactor");
    }

    @Override
    Evidence evidence(Table cases, int row) {
      return Evidence.PRACTICE;
    }

    @Override
    Comparison compare(Table cases, int row) {
      String size = cases.text(row, "thread");
      ScrewThread thread = CaseThreads.of(size);
      double preload =
          cases.has(row, "preload")
              ? cases.number(row, "preload")
              : cases.number(row, "stress") * CaseThreads.squareInches(thread.stressArea().mm2());
      double inches = thread.majorDiameter().mm() / 25.4;
      double k = ScatterKernel.preloadByNutFactor(cases.number(row, "torque"), 1, inches) / preload;
      boolean dry = cases.text(row, "band").equals("dry");
      double low = dry ? 0.18 : 0.086;
      double high = dry ? 0.27 : 0.52;
      return builder(cases, row)
          .band(low, k, high, "", "published nut factors, " + (dry ? "dry steel" : "all lubricants"));
    }
  }
}

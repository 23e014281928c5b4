// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.threads;

import holdfast.quantity.Units;
import holdfast.tables.Table;
import holdfast.threads.PropertyClass;
import holdfast.threads.ScrewThread;
import holdfast.threads.StrengthKernel;
import holdfast.threads.StrippingKernel;
import holdfast.threads.ThreadLimits;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;

/** Loads of bolts and threads. */
final class StrengthSuites {
  private StrengthSuites() {}

  /** Proof and ultimate loads of ISO 898-1, computed anew; the look-up returns the printed values. */
  static final class MetricLoads extends CaseSuite {
    MetricLoads() {
      super(
          "metric-loads",
          "holdfast.threads.StrengthKernel#load",
          "holdfast.threads.PropertyClass#of",
          "holdfast.threads.PropertyClass#proofStress",
          "holdfast.threads.PropertyClass#tensileStrength",
          "holdfast.threads.ScrewThread#nominalStressArea");
    }

    @Override
    Evidence evidence(Table cases, int row) {
      return Evidence.RECONSTRUCTION;
    }

    @Override
    Comparison compare(Table cases, int row) {
      ScrewThread thread = CaseThreads.of(cases.text(row, "thread"));
      String name = cases.text(row, "class");
      double stress = cases.number(row, "stress");
      if (!name.equals("3.6")) {
        PropertyClass c = PropertyClass.of(name);
        boolean proof = cases.text(row, "kind").equals("proof");
        stress = (proof ? c.proofStress(thread) : c.tensileStrength(thread)).megapascal();
      }
      return halfSignificant(cases, row, StrengthKernel.load(thread.nominalStressArea().mm2(), stress), 3, "N");
    }
  }

  /** Proof, ultimate and clamp loads of inch bolts. */
  static final class InchLoads extends CaseSuite {
    InchLoads() {
      super(
          "inch-loads",
          "holdfast.threads.StrengthKernel#load",
          "holdfast.threads.PropertyClass#of",
          "holdfast.threads.PropertyClass#proofStress",
          "holdfast.threads.PropertyClass#proofLoad",
          "holdfast.threads.PropertyClass#tensileStrength");
    }

    @Override
    Evidence evidence(Table cases, int row) {
      return cases.text(row, "grade").equals("ASTM A574") ? Evidence.RECONSTRUCTION : Evidence.PRINT;
    }

    @Override
    Comparison compare(Table cases, int row) {
      ScrewThread thread = CaseThreads.of(cases.text(row, "thread"));
      PropertyClass c = PropertyClass.of(cases.text(row, "grade"));
      String kind = cases.text(row, "kind");
      if (kind.equals("75 % of proof")) {
        double pounds = 0.75 * c.proofLoad(thread).force().newton() / Units.lbf(1).newton();
        return halfDigit(cases, row, pounds, "lbf");
      }
      double stress = (kind.equals("proof") ? c.proofStress(thread) : c.tensileStrength(thread)).megapascal();
      double pounds = StrengthKernel.load(645.16 * cases.number(row, "area"), stress) / Units.lbf(1).newton();
      return halfSignificant(cases, row, pounds, (int) cases.number(row, "digits"), "lbf");
    }
  }

  /** Pull-out loads of threads, and nut loads. */
  static final class SpaceThreads extends CaseSuite {
    SpaceThreads() {
      super(
          "space-threads",
          "holdfast.threads.StrippingKernel#cylinderShearArea",
          "holdfast.threads.StrippingKernel#load",
          "holdfast.threads.StrengthKernel#load");
    }

    @Override
    Evidence evidence(Table cases, int row) {
      return Evidence.PRINT;
    }

    @Override
    Comparison compare(Table cases, int row) {
      double stress = cases.number(row, "stress");
      double ours =
          switch (cases.text(row, "kind")) {
            case "insert, internal" ->
                StrippingKernel.load(
                    stress,
                    StrippingKernel.cylinderShearArea(
                        cases.number(row, "diameter"), cases.number(row, "length"), 7.0 / 8.0),
                    1);
            case "parent" -> StrippingKernel.load(stress, cases.number(row, "area"), 1);
            default ->
                StrengthKernel.load(
                    CaseThreads.squareInches(CaseThreads.of(cases.text(row, "thread")).stressArea().mm2()), stress);
          };
      return halfDigit(cases, row, ours, "lbf");
    }
  }

  /** Shear areas over one inch, recalled. */
  static final class RecalledShearAreas extends CaseSuite {
    RecalledShearAreas() {
      super(
          "recalled-shear-areas",
          "holdfast.threads.StrippingKernel#externalShearArea",
          "holdfast.threads.StrippingKernel#internalShearArea");
    }

    @Override
    Evidence evidence(Table cases, int row) {
      return Evidence.RECALLED;
    }

    @Override
    Comparison compare(Table cases, int row) {
      ScrewThread thread = CaseThreads.of(cases.text(row, "thread"));
      ThreadLimits stud = ThreadLimits.of(thread, "2A");
      ThreadLimits nut = ThreadLimits.of(thread, "2B");
      double area =
          cases.text(row, "quantity").contains("external")
              ? StrippingKernel.externalShearArea(
                  nut.crestGreatest().mm(), stud.pitchLeast().mm(), thread.pitch().mm(), 25.4)
              : StrippingKernel.internalShearArea(
                  stud.crestLeast().mm(), nut.pitchGreatest().mm(), thread.pitch().mm(), 25.4);
      return halfDigit(cases, row, CaseThreads.squareInches(area), "in²");
    }
  }
}

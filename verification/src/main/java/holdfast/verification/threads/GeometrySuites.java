// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.threads;

import holdfast.tables.Table;
import holdfast.threads.ScrewThread;
import holdfast.threads.ThreadGeometryKernel;
import holdfast.threads.ThreadLimits;
import holdfast.threads.UnifiedToleranceKernel;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;

/** Diameters, areas and limits of size. */
final class GeometrySuites {
  private GeometrySuites() {}

  /** Pitch, minor and root diameters. */
  static final class MetricDiameters extends CaseSuite {
    MetricDiameters() {
      super(
          "metric-diameters",
          "holdfast.threads.ScrewThread#of",
          "holdfast.threads.ScrewThread#pitchDiameter",
          "holdfast.threads.ScrewThread#internalMinorDiameter",
          "holdfast.threads.ScrewThread#rootDiameter",
          "holdfast.threads.ThreadGeometryKernel#pitchDiameter",
          "holdfast.threads.ThreadGeometryKernel#internalMinorDiameter",
          "holdfast.threads.ThreadGeometryKernel#metricRootDiameter");
    }

    @Override
    Evidence evidence(Table cases, int row) {
      return Evidence.PRINT;
    }

    @Override
    Comparison compare(Table cases, int row) {
      ScrewThread thread = CaseThreads.of(cases.text(row, "thread"));
      double ours =
          switch (cases.text(row, "quantity")) {
            case "d2" -> thread.pitchDiameter().mm();
            case "D1" -> thread.internalMinorDiameter().mm();
            default -> thread.rootDiameter().mm();
          };
      return builder(cases, row).numbers(cases.number(row, "printed"), ours, 0.0005, "mm", "half of the printed 0.001 mm");
    }
  }

  /** Stress areas of metric threads. */
  static final class MetricAreas extends CaseSuite {
    MetricAreas() {
      super(
          "metric-areas",
          "holdfast.threads.ScrewThread#stressArea",
          "holdfast.threads.ThreadGeometryKernel#metricStressDiameter");
    }

    @Override
    Evidence evidence(Table cases, int row) {
      return Evidence.PRINT;
    }

    @Override
    Comparison compare(Table cases, int row) {
      double ours = CaseThreads.of(cases.text(row, "thread")).stressArea().mm2();
      return halfSignificant(cases, row, ours, 3, "mm²");
    }
  }

  /** Stress areas and areas at the minor diameter of unified threads. */
  static final class UnifiedAreas extends CaseSuite {
    UnifiedAreas() {
      super(
          "unified-areas",
          "holdfast.threads.ScrewThread#of",
          "holdfast.threads.ScrewThread#stressArea",
          "holdfast.threads.ThreadGeometryKernel#unifiedStressDiameter",
          "holdfast.threads.ThreadGeometryKernel#unifiedRootDiameter",
          "holdfast.threads.ThreadGeometryKernel#ringArea");
    }

    @Override
    Evidence evidence(Table cases, int row) {
      return Evidence.PRINT;
    }

    @Override
    Comparison compare(Table cases, int row) {
      ScrewThread thread = CaseThreads.of(cases.text(row, "thread"));
      double area =
          cases.text(row, "quantity").equals("stress area")
              ? thread.stressArea().mm2()
              : ThreadGeometryKernel.ringArea(thread.rootDiameter().mm(), 0);
      return halfDigit(cases, row, CaseThreads.squareInches(area), "in²");
    }
  }

  /** Limits of size of metric threads: they re-add the tolerance table. */
  static final class MetricLimits extends CaseSuite {
    MetricLimits() {
      super(
          "metric-limits",
          "holdfast.threads.ThreadLimits#of",
          "holdfast.threads.MetricToleranceKernel");
    }

    @Override
    Evidence evidence(Table cases, int row) {
      return Evidence.RECOMBINED;
    }

    @Override
    Comparison compare(Table cases, int row) {
      ThreadLimits limits = ThreadLimits.of(CaseThreads.of(cases.text(row, "thread")), cases.text(row, "class"));
      double ours = limit(limits, cases.text(row, "quantity"));
      return builder(cases, row).numbers(cases.number(row, "printed"), ours, 0.0005, "mm", "half of the printed 0.001 mm");
    }
  }

  /** Limits of size and allowance of unified threads. */
  static final class UnifiedLimits extends CaseSuite {
    UnifiedLimits() {
      super("unified-limits", "holdfast.threads.ThreadLimits#of", "holdfast.threads.UnifiedToleranceKernel");
    }

    @Override
    Evidence evidence(Table cases, int row) {
      // The formulas are recalled, and how the standard rounds was found with the help of these values.
      return Evidence.RECONSTRUCTION;
    }

    @Override
    Comparison compare(Table cases, int row) {
      ScrewThread thread = CaseThreads.of(cases.text(row, "thread"));
      ThreadLimits limits = ThreadLimits.of(thread, cases.text(row, "class"));
      String quantity = cases.text(row, "quantity");
      double ours = quantity.equals("allowance") ? allowance(thread, limits) : limit(limits, quantity);
      return builder(cases, row)
          .numbers(cases.number(row, "printed"), ours / 25.4, 0.00005, "in", "half of the printed 0.0001 in");
    }

    /** Before rounding, in mm; NaN, which never agrees, if that of the limits is not the same, rounded. */
    private static double allowance(ScrewThread thread, ThreadLimits limits) {
      double d = thread.majorDiameter().mm() / 25.4;
      double p = thread.pitch().mm() / 25.4;
      double engagement = thread.series().equals("UNC") || thread.series().equals("UNF") ? d : 9 * p;
      double exact = UnifiedToleranceKernel.allowance(2, UnifiedToleranceKernel.basePitchTolerance(d, p, engagement));
      double rounded = thread.majorDiameter().minus(limits.crestGreatest()).mm() / 25.4;
      return Math.abs(exact - rounded) <= 0.0000501 ? 25.4 * exact : Double.NaN;
    }
  }

  private static double limit(ThreadLimits limits, String quantity) {
    return switch (quantity) {
      case "least crest" -> limits.crestLeast().mm();
      case "greatest crest" -> limits.crestGreatest().mm();
      case "least pitch" -> limits.pitchLeast().mm();
      default -> limits.pitchGreatest().mm();
    };
  }
}

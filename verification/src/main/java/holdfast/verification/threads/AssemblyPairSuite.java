// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.threads;

import holdfast.tables.Table;
import holdfast.threads.Hexagon;
import holdfast.threads.ScrewThread;
import holdfast.threads.StressKernel;
import holdfast.threads.ThreadGeometryKernel;
import holdfast.threads.TighteningKernel;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.RowSuite;
import holdfast.verification.Suite;
import java.util.List;

/**
 * Printed pairs of assembly preload and torque, solved backwards. Both are rounded in print; what that leaves open is
 * the tolerance.
 */
final class AssemblyPairSuite {
  private static final String ROUNDING = "half a unit of the last digit of the printed preload and of the printed torque";

  private AssemblyPairSuite() {}

  static Suite suite() {
    return RowSuite.of(
        "threads/assembly-pairs",
        Cases.table("threads/assembly-pairs").descriptor().title(),
        (cases, row, result) -> new Pair(cases, row).compare(result),
        "holdfast.threads.TighteningKernel#preload",
        "holdfast.threads.TighteningKernel#preloads",
        "holdfast.threads.TighteningKernel#nutFactor",
        "holdfast.threads.TighteningKernel#frictionOfNutFactor",
        "holdfast.threads.StressKernel#combined",
        "holdfast.threads.StressKernel#afterRelaxation",
        "holdfast.threads.Hexagon#bearingFaceDiameter",
        "holdfast.threads.Hexagon#clearanceHole");
  }

  /** One row, in N and N·mm. */
  private static final class Pair {
    private final Table cases;
    private final int row;
    private final double mu;
    private final double preload;
    private final double torque;
    private final double preloadOpen;
    private final double torqueOpen;
    private final double d;
    private final double d2;
    private final double lead;
    private final double stress;
    private final double face;

    Pair(Table cases, int row) {
      this.cases = cases;
      this.row = row;
      mu = cases.number(row, "friction");
      preload = 1000 * cases.number(row, "preload");
      torque = 1000 * cases.number(row, "torque");
      preloadOpen = 1000 * Cases.halfLastDigit(cases.text(row, "preload"));
      torqueOpen = 1000 * Cases.halfLastDigit(cases.text(row, "torque"));
      ScrewThread thread = ScrewThread.of(cases.text(row, "thread"));
      d = thread.majorDiameter().mm();
      d2 = thread.pitchDiameter().mm();
      lead = thread.lead().mm();
      stress = ThreadGeometryKernel.metricStressDiameter(d, lead);
      face =
          TighteningKernel.meanFaceDiameter(
              cases.has(row, "bearing_face") ? cases.number(row, "bearing_face") : Hexagon.bearingFaceDiameter(thread).mm(),
              Hexagon.clearanceHole(thread, Hexagon.HoleSeries.MEDIUM).mm());
    }

    void compare(List<Comparison> result) {
      double open = preloadOpen + torqueOpen / torque * preload;
      result.add(named("preload").numbers(preload, preloadOfTorque(), open, "N", ROUNDING));
      double k = torque / (preload * d);
      double kOpen = k * (preloadOpen / preload + torqueOpen / torque);
      double ours = TighteningKernel.nutFactor(d, d2, lead, mu, face, mu);
      result.add(named("nut_factor").numbers(k, ours, kOpen, "", ROUNDING));
      // The linear form tells how far an open nut factor moves the friction.
      double muOpen = kOpen * d / (d2 / (2 * ThreadGeometryKernel.COS_HALF_ANGLE) + face / 2);
      double friction = TighteningKernel.frictionOfNutFactor(k, d, d2, lead, face);
      result.add(named("friction").numbers(mu, friction, muOpen, "", ROUNDING));
      stress(result);
    }

    /** NaN, which never agrees, if the form for many tightenings says otherwise. */
    private double preloadOfTorque() {
      double[] torques = {torque, 0.5 * torque, torque};
      double[] frictions = {2 * mu, mu, mu};
      double[] preloads = new double[3];
      TighteningKernel.preloads(torques, d2, lead, frictions, face, frictions, 0, preloads);
      double one = TighteningKernel.preload(torque, d2, lead, mu, face, mu, 0);
      boolean alike = Math.abs(preloads[2] - one) <= 1e-12 * one && Math.abs(2 * preloads[1] - one) <= 1e-12 * one;
      return alike && preloads[0] < one ? one : Double.NaN;
    }

    /** The printed torque less that of the face twists the thread; both stresses must make 90 % of the yield stress. */
    private void stress(List<Comparison> result) {
      double thread = torque - preload * TighteningKernel.faceLever(face, mu);
      double sigma = StressKernel.combined(preload, thread, stress, 0, true);
      double area = ThreadGeometryKernel.ringArea(stress, 0);
      double modulus = Math.PI / 12 * stress * stress * stress;
      double axial = StressKernel.axial(preload, area);
      double torsion = StressKernel.torsion(thread, modulus);
      double whole = StressKernel.afterRelaxation(axial, torsion, 1);
      double threadOpen = torqueOpen + preloadOpen * face * mu / 2;
      double open = (axial * preloadOpen / area + 3 * torsion * threadOpen / modulus) / whole;
      double ours = Math.abs(sigma - whole) <= 1e-12 * whole ? sigma : Double.NaN;
      result.add(named("stress").numbers(0.9 * cases.number(row, "yield"), ours, open, "MPa", ROUNDING));
    }

    private Comparison.Builder named(String what) {
      return Comparison.of(
              cases.address(row) + ", " + what.replace('_', ' ') + " solved backwards", Cases.source(cases, row), Evidence.PRINT)
          .disclosed(cases.text(row, "disclosed"));
    }
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.reference;

import holdfast.bearings.reference.BallDistributionKernel;
import holdfast.bearings.reference.BallKernel;
import holdfast.bearings.reference.BallLifeKernel;
import holdfast.bearings.reference.BallWorkspace;
import holdfast.bearings.reference.LaminaKernel;
import holdfast.bearings.reference.LaminaLifeKernel;
import holdfast.bearings.reference.LaminaWorkspace;
import holdfast.bearings.reference.LoadDistributionKernel;
import holdfast.bearings.reference.RingMotion;
import holdfast.bearings.reference.RollerProfile;
import holdfast.quantity.Length;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.RowSuite;
import holdfast.verification.Suite;
import java.util.List;

/** Modified lives, and life ratios by the array, straight from the kernels for some of the cases of the tilted bearings. */
final class ModifiedLifeSuite {
  private static final int LAMINAE = 2000;

  private ModifiedLifeSuite() {}

  static Suite suite() {
    return RowSuite.of(
        "bearings/reference-modified-lives",
        "Tilted bearings: life with a factor for each place of a roller or ring, and life ratios by the array",
        ModifiedLifeSuite::row,
        "holdfast.bearings.reference.LaminaLifeKernel#modifiedLife", "holdfast.bearings.reference.LaminaLifeKernel#lifeRatios",
        "holdfast.bearings.reference.BallLifeKernel#modifiedLife");
  }

  private static void row(Table cases, int row, List<Comparison> result) {
    Table t = Cases.table("bearings/reference-tilted-bearings");
    int of = t.find("case", cases.text(row, "case"));
    boolean inner = turns(t, of, "inner");
    boolean outer = turns(t, of, "outer");
    double expected = cases.number(row, "life");
    if (t.text(of, "kind").equals("ball")) {
      result.add(
          Cases.comparison(cases, row, Evidence.REFERENCE)
              .numbers(expected, ball(t, of, inner, outer), 1e-6 * expected, "10^6 revolutions", "root search to 1e-7"));
      return;
    }
    LaminaWorkspace w = rollers(t, of);
    double gamma = t.number(of, "dwe") / t.number(of, "dpw");
    double qci = LaminaKernel.innerRating(t.number(of, "cr"), w.elements(), 1, gamma);
    double qce = LaminaKernel.outerRating(t.number(of, "cr"), w.elements(), 1, gamma);
    double tilt = t.number(of, "tilt");
    LoadDistributionKernel.tilted(w, t.number(of, "fr"), t.number(of, "s"), tilt, t.number(of, "across"));
    double life = LaminaLifeKernel.modifiedLife(w, qci, qce, inner, outer, ModifiedLifeSuite::factor);
    String reason = LAMINAE + " laminae against a continuous length";
    result.add(
        Cases.comparison(cases, row, Evidence.REFERENCE)
            .numbers(expected, life, 2e-4 * expected, "10^6 revolutions", reason));
    double[] ratios = new double[2];
    LaminaLifeKernel.lifeRatios(w, t.number(of, "fr"), t.number(of, "s"), new double[] {0, tilt}, qci, qce, inner, outer, ratios);
    double ratio = t.number(of, "life_ratio");
    result.add(
        Comparison.of(t.address(of) + ", life ratio by the array", Cases.source(t, of), Evidence.REFERENCE)
            .disclosed(t.text(of, "disclosed"))
            .numbers(ratio, ratios[1], 2e-4 * ratio, "", reason));
  }

  /** The invented factor with which the lives were computed. */
  private static double factor(double r) {
    return 0.3 + 0.15 / r;
  }

  private static boolean turns(Table t, int row, String ring) {
    return RingMotion.valueOf(t.text(row, ring)) == RingMotion.ROTATING;
  }

  private static double ball(Table t, int row, boolean inner, boolean outer) {
    int z = (int) t.number(row, "z");
    double dw = t.number(row, "dwe");
    double dpw = t.number(row, "dpw");
    double ri = t.number(row, "ri");
    double re = t.number(row, "re");
    double cr = t.number(row, "cr");
    BallWorkspace w = new BallWorkspace(z);
    BallDistributionKernel.balls(w, z, t.number(row, "first"));
    BallDistributionKernel.contacts(w, dw, dpw, ri, re, t.number(row, "s"));
    BallDistributionKernel.tilted(w, t.number(row, "fr"), t.number(row, "fa"), t.number(row, "tilt"), t.number(row, "across"));
    double qci = BallKernel.innerRating(cr, z, dw, dpw, ri, re);
    double qce = BallKernel.outerRating(cr, z, dw, dpw, ri, re);
    return BallLifeKernel.modifiedLife(w, qci, qce, inner, outer, ModifiedLifeSuite::factor);
  }

  /** Laminae that become shorter towards the ends, between the places 1/2 sin of evenly spaced angles. */
  private static LaminaWorkspace rollers(Table t, int row) {
    int z = (int) t.number(row, "z");
    Length length = TiltedBearingSuite.length(t, row, "lwe");
    Length diameter = TiltedBearingSuite.length(t, row, "dwe");
    RollerProfile profile = TiltedBearingSuite.profile(t.text(row, "profile"));
    double[] x = new double[LAMINAE];
    double[] share = new double[LAMINAE];
    double[] drop = new double[LAMINAE];
    double[] edge = new double[LAMINAE];
    double left = -0.5;
    for (int k = 0; k < LAMINAE; k++) {
      double right = 0.5 * Math.sin(Math.PI * ((k + 1.0) / LAMINAE - 0.5));
      double middle = 0.5 * (left + right);
      x[k] = middle * length.mm();
      share[k] = right - left;
      drop[k] = profile.drop(length.times(middle), length, diameter).mm();
      edge[k] = LaminaKernel.edgeStressFactor(middle);
      left = right;
    }
    LaminaWorkspace w = new LaminaWorkspace(z, LAMINAE);
    LoadDistributionKernel.rollers(w, z, t.number(row, "first"));
    LoadDistributionKernel.laminae(w, LAMINAE, x, share, drop, edge, LaminaKernel.stiffness(length.mm()));
    return w;
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Numbers;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;

/** How the greatest joint pressure of a fit was computed. */
final class FitDerivation {
  static final SourceRef RING = SourceRef.published("Boresi & Schmidt", "chapter 11, thick-wall cylinders");

  private FitDerivation() {}

  static Derivation of(InterferenceFit fit) {
    double joint = fit.interference().joint().mm();
    double hole = fit.stud().hole().mm();
    double outside = fit.housing().shape().pressureDiameter(joint);
    Material i = fit.stud().material();
    Material o = fit.housing().material();
    double greatest = fit.interference().greatest().mm();
    double effective = fit.effectiveInterference().greatest().mm();
    double inner = ThickRingKernel.innerCompliance(hole, joint, i.elasticModulus().base(), i.poissonRatio());
    double outer = ThickRingKernel.outerCompliance(joint, outside, o.elasticModulus().base(), o.poissonRatio());
    Derivation.Builder steps = Derivation.of("Greatest joint pressure of " + fit.stud() + " in " + fit.housing());
    steps.step(
        "G",
        "interference lost to smoothing, diametral",
        fit.smoothing().expression(),
        fit.smoothingLoss().mm() * 1000,
        "µm",
        fit.smoothing().source(),
        "Rz_A = " + micrometres(fit.housing().roughness().mm()),
        "Rz_I = " + micrometres(fit.stud().roughness().mm()));
    steps.step(
        "U_w",
        "greatest effective interference, diametral",
        "max(0, U - G)",
        effective * 1000,
        "µm",
        fit.smoothing().source(),
        "U = " + micrometres(greatest));
    steps.step(
        "K_I",
        "relative yield of the stud",
        "((1+Q_I²)/(1-Q_I²) - ν_I)/E_I, Q_I = d_I/D",
        inner * 1e6,
        "1/TPa",
        RING,
        "d_I = " + millimetres(hole),
        "D = " + millimetres(joint),
        "E_I = " + Numbers.shortest(i.elasticModulus().base()) + " MPa",
        "ν_I = " + Numbers.shortest(i.poissonRatio()));
    steps.step(
        "K_A",
        "relative yield of the housing",
        "((1+Q_A²)/(1-Q_A²) + ν_A)/E_A, Q_A = D/D_A",
        outer * 1e6,
        "1/TPa",
        RING,
        "D_A = " + (Double.isInfinite(outside) ? "infinite (wide plate)" : millimetres(outside)),
        "E_A = " + Numbers.shortest(o.elasticModulus().base()) + " MPa",
        "ν_A = " + Numbers.shortest(o.poissonRatio()));
    steps.step(
        "p", "greatest joint pressure", "U_w/(D·(K_I + K_A))", fit.pressure().greatest().base(), "MPa", RING);
    return steps.build();
  }

  private static String millimetres(double mm) {
    return Numbers.shortest(mm) + " mm";
  }

  private static String micrometres(double mm) {
    return Numbers.shortest(mm * 1000) + " µm";
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Length;
import holdfast.quantity.Stress;
import java.io.Serializable;
import java.util.Objects;

/**
 * Changes of diameter under a joint pressure; growth is positive.
 *
 * @param pressure joint pressure
 * @param hole change of the hole in the stud: its closure is negative; 0 for a solid stud
 * @param stud change of the stud at the joint, negative
 * @param bore change of the housing bore, positive
 * @param outside change of the outside of the equivalent ring, positive; 0 for a wide plate
 */
public record FitDisplacements(Stress pressure, Length hole, Length stud, Length bore, Length outside)
    implements Serializable {
  public FitDisplacements {
    Objects.requireNonNull(pressure, "pressure");
    Objects.requireNonNull(hole, "hole");
    Objects.requireNonNull(stud, "stud");
    Objects.requireNonNull(bore, "bore");
    Objects.requireNonNull(outside, "outside");
  }

  static FitDisplacements at(InterferenceFit fit, Stress pressure) {
    double p = pressure.base();
    double r = fit.interference().joint().mm() / 2;
    double a = fit.stud().hole().mm() / 2;
    double b = fit.housing().shape().pressureDiameter(2 * r) / 2;
    Material i = fit.stud().material();
    Material o = fit.housing().material();
    return new FitDisplacements(
        pressure,
        diameterChange(a, a, r, 0, p, i),
        diameterChange(r, a, r, 0, p, i),
        diameterChange(r, r, b, p, 0, o),
        Double.isInfinite(b) ? new Length(0) : diameterChange(b, r, b, p, 0, o));
  }

  private static Length diameterChange(double r, double a, double b, double inside, double outside, Material m) {
    return new Length(
        2 * ThickRingKernel.radialDisplacement(r, a, b, inside, outside, m.elasticModulus().base(), m.poissonRatio()));
  }

  @Override
  public String toString() {
    return "hole " + hole + ", stud " + stud + ", bore " + bore + ", outside " + outside + " at " + pressure;
  }
}

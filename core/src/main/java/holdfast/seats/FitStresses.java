// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Length;
import holdfast.quantity.Stress;
import holdfast.seats.CriticalStress.Place;
import java.util.List;

/** The stresses of a fit at its critical radii. */
final class FitStresses {
  private FitStresses() {}

  static List<CriticalStress> at(InterferenceFit fit, double pressure) {
    double joint = fit.interference().joint().mm();
    double r = joint / 2;
    double a = fit.stud().hole().mm() / 2;
    HousingShape shape = fit.housing().shape();
    CriticalStress inside =
        stress(
            a == 0 ? Place.STUD_AXIS : Place.HOLE_WALL,
            a,
            ThickRingKernel.radialStress(a, a, r, 0, pressure),
            ThickRingKernel.hoopStress(a, a, r, 0, pressure));
    CriticalStress studJoint =
        stress(Place.STUD_JOINT, r, -pressure, ThickRingKernel.hoopStress(r, a, r, 0, pressure));
    // At bore and outline the shape decides.
    CriticalStress bore = stress(Place.HOUSING_BORE, r, -pressure, shape.hoopFactor(joint) * pressure);
    if (shape.kind() == HousingShape.Kind.WIDE) {
      return List.of(inside, studJoint, bore);
    }
    return List.of(
        inside,
        studJoint,
        bore,
        stress(Place.HOUSING_OUTSIDE, shape.outlineRadius(), 0, shape.outlineFactor(joint) * pressure));
  }

  /** The same with what the turning of both parts adds, as the ring that stands for the housing. */
  static List<CriticalStress> turning(InterferenceFit fit, double pressure, double rpm) {
    if (rpm == 0) {
      return at(fit, pressure);
    }
    double joint = fit.interference().joint().mm();
    double hole = fit.stud().hole().mm();
    double outside = fit.housing().shape().pressureDiameter(joint);
    Material i = fit.stud().material();
    Material o = fit.housing().material();
    return at(fit, pressure).stream()
        .map(stress -> {
          boolean housing = stress.place().ofHousing();
          double at = stress.place() == Place.HOUSING_OUTSIDE ? outside : 2 * stress.radius().mm();
          double inner = housing ? joint : hole;
          double outer = housing ? outside : joint;
          Material part = housing ? o : i;
          double density = ServiceState.density(part);
          return stress(stress.place(), stress.radius().mm(),
              stress.radial().base() + RotationKernel.radialStress(at, inner, outer, density, part.poissonRatio(), rpm),
              stress.hoop().base() + RotationKernel.hoopStress(at, inner, outer, density, part.poissonRatio(), rpm));
        })
        .toList();
  }

  private static CriticalStress stress(Place place, double radius, double radial, double hoop) {
    // Refuses at once what no solid carries.
    EquivalentStressKernel.vonMises(hoop, radial);
    return new CriticalStress(place, new Length(radius), new Stress(radial), new Stress(hoop));
  }
}

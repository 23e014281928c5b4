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
    // At the bore the shape decides; outside only a ring has one radius.
    CriticalStress bore = stress(Place.HOUSING_BORE, r, -pressure, shape.hoopFactor(joint) * pressure);
    if (shape.kind() != HousingShape.Kind.RING) {
      return List.of(inside, studJoint, bore);
    }
    double b = shape.size().mm() / 2;
    return List.of(
        inside, studJoint, bore, stress(Place.HOUSING_OUTSIDE, b, 0, ThickRingKernel.hoopStress(b, r, b, pressure, 0)));
  }

  private static CriticalStress stress(Place place, double radius, double radial, double hoop) {
    return new CriticalStress(place, new Length(radius), new Stress(radial), new Stress(hoop));
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Check;
import holdfast.tables.Provenance;
import holdfast.tables.Source;

/** Round sections of a stud, solid or bored along the axis, with or without a cross hole. Diameters in mm. */
@Source(
    document = "derivation",
    locator = "area moments of a circular ring; a cross hole takes a strip of the section",
    provenance = Provenance.DERIVED)
public final class StudSectionKernel {
  private StudSectionKernel() {}

  /**
   * Cross-section.
   *
   * @param diameter outer diameter d in mm
   * @param bore bore di in mm, 0 for a solid stud
   * @return A = π (d² - di²)/4 in mm²
   * @throws holdfast.quantity.InputException if the bore does not fit into the stud
   */
  public static double area(double diameter, double bore) {
    check(diameter, bore);
    return Math.PI / 4 * (diameter - bore) * (diameter + bore);
  }

  /**
   * Second moment of area.
   *
   * @param diameter outer diameter d in mm
   * @param bore bore di in mm, 0 for a solid stud
   * @return I = π (d⁴ - di⁴)/64 in mm⁴
   * @throws holdfast.quantity.InputException if the bore does not fit into the stud
   */
  public static double inertia(double diameter, double bore) {
    return area(diameter, bore) * (diameter * diameter + bore * bore) / 16;
  }

  /**
   * Section modulus in bending; in torsion it is twice this value.
   *
   * @param diameter outer diameter d in mm
   * @param bore bore di in mm, 0 for a solid stud
   * @return W = π d³ (1 - (di/d)⁴)/32 in mm³
   * @throws holdfast.quantity.InputException if the bore does not fit into the stud
   */
  public static double modulus(double diameter, double bore) {
    return 2 * inertia(diameter, bore) / diameter;
  }

  /**
   * Section modulus of the net section through a cross hole whose mouth lies on the fibre in tension: the worst
   * position. With a solid stud it is π d³/32 - d_h d²/6.
   *
   * @param diameter outer diameter d in mm
   * @param bore bore di in mm, 0 for a solid stud
   * @param hole diameter of the cross hole in mm, 0 or more and at most a third of the wall-to-wall diameter
   * @return W of the net section in mm³
   * @throws holdfast.quantity.InputException if bore or hole do not fit into the stud
   */
  public static double netModulus(double diameter, double bore, double hole) {
    check(diameter, bore);
    Check.within(hole, 0, diameter / 3, "cross hole diameter", "mm", "a third of the stud diameter: no beam is left beyond");
    double strip = hole * (diameter * diameter * diameter - bore * bore * bore) / 12;
    double net = inertia(diameter, bore) - strip;
    return 2 * Check.positive(net, "net second moment of area", "mm⁴", "bore and cross hole leave no section") / diameter;
  }

  /**
   * Largest shear stress over mean shear stress, on the neutral axis.
   *
   * @param diameter outer diameter d in mm
   * @param bore bore di in mm, 0 for a solid stud
   * @return 4/3 (d² + d di + di²)/(d² + di²): 4/3 solid, towards 2 for a thin tube
   * @throws holdfast.quantity.InputException if the bore does not fit into the stud
   */
  @Source(
      document = "derivation",
      locator = "first moment of the half ring over the width of both walls",
      provenance = Provenance.DERIVED)
  public static double shearPeak(double diameter, double bore) {
    check(diameter, bore);
    double squares = diameter * diameter + bore * bore;
    return 4.0 / 3 * (squares + diameter * bore) / squares;
  }

  /**
   * Shear coefficient of the Timoshenko beam.
   *
   * @param diameter outer diameter d in mm
   * @param bore bore di in mm, 0 for a solid stud
   * @param poisson Poisson's ratio ν
   * @return κ = 6 (1+ν)(1+m²)² / ((7+6ν)(1+m²)² + (20+12ν) m²) with m = di/d; 0.886 solid with ν = 0.3
   * @throws holdfast.quantity.InputException if an argument is outside its range
   */
  @Source(document = "Cowper 1966", locator = "hollow circular section", provenance = Provenance.MEMORY)
  public static double shearCoefficient(double diameter, double bore, double poisson) {
    check(diameter, bore);
    Check.within(poisson, 0, 0.5, "Poisson's ratio", "", "range of engineering materials");
    double m2 = bore * bore / (diameter * diameter);
    double square = (1 + m2) * (1 + m2);
    return 6 * (1 + poisson) * square / ((7 + 6 * poisson) * square + (20 + 12 * poisson) * m2);
  }

  static void check(double diameter, double bore) {
    Check.positive(diameter, "stud diameter d", "mm", "size of the stud");
    if (!(bore >= 0 && bore < diameter)) {
      // Names the limit with its value; equality leaves no wall.
      Check.within(bore, 0, Math.nextDown(diameter), "stud bore di", "mm", "the bore must be smaller than the stud");
    }
  }
}

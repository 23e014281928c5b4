// SPDX-License-Identifier: Apache-2.0
package holdfast.lubrication;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Numbers;
import holdfast.tables.Source;

/** Quantities of grease. D outside diameter and B width in mm, masses in g, volumes in cm³. */
public final class GreaseQuantityKernel {
  private static final String LUBRICATION = "pages 109 to 115, lubrication";

  private GreaseQuantityKernel() {}

  /**
   * Grease for one relubrication through holes in the middle of a ring, {@code Gp = 0.002 D B}. The nearest published
   * case for a roller that is fed through its stud.
   *
   * @param d outside diameter D in mm, over 0
   * @param b width B in mm, over 0
   * @return mass in g
   * @throws InputException if an argument is not above zero
   */
  @Source(document = "Rolling bearings catalogue 17000 EN", locator = LUBRICATION)
  public static double throughRing(double d, double b) {
    return 0.002 * area(d, b);
  }

  /**
   * Grease for one relubrication from the side, {@code Gp = 0.005 D B}.
   *
   * @param d outside diameter D in mm, over 0
   * @param b width B in mm, over 0
   * @return mass in g
   * @throws InputException if an argument is not above zero
   */
  @Source(document = "Rolling bearings catalogue 17000 EN", locator = LUBRICATION)
  public static double fromSide(double d, double b) {
    return 0.005 * area(d, b);
  }

  /**
   * Shop form of the quantity from the side, {@code G = 0.114 D B} with D and B in inches and G in ounces.
   *
   * @param d outside diameter D in inches, over 0
   * @param b width B in inches, over 0
   * @return mass in oz (avoirdupois)
   * @throws InputException if an argument is not above zero
   */
  @Source(document = "Grease quantity page", locator = "inch form, constant 0.114")
  public static double shopOunces(double d, double b) {
    Check.positive(d, "outside diameter D", "in", "it is a size");
    Check.positive(b, "width B", "in", "it is a size");
    return 0.114 * d * b;
  }

  /**
   * Free volume of a bearing with a metal cage, {@code V = (π/4) B (D² − d²) 10⁻³ − M/(7.8·10⁻³)}.
   *
   * @param outer outside diameter D in mm, over the bore
   * @param bore bore d in mm, 0 or more
   * @param b width B in mm, over 0
   * @param massKilogram mass M of the bearing in kg, 0 or more and below that of the full ring
   * @return volume in cm³
   * @throws InputException if an argument is outside its range
   */
  @Source(document = "Rolling bearings catalogue 17000 EN", locator = LUBRICATION)
  public static double freeVolume(double outer, double bore, double b, double massKilogram) {
    Check.positive(outer, "outside diameter D", "mm", "it is a size");
    Check.positive(b, "width B", "mm", "it is a size");
    if (!(bore >= 0 && bore < outer)) {
      throw new InputException("bore d", Numbers.shortest(bore) + " mm", "from 0 to below D = " + Numbers.shortest(outer) + " mm",
          "the bore is inside");
    }
    double ring = 0.25e-3 * Math.PI * b * (outer - bore) * (outer + bore);
    Check.within(massKilogram, 0, 7.8e-3 * ring, "mass M", "kg", "a bearing is not heavier than a full ring of steel");
    return ring - massKilogram / 7.8e-3;
  }

  /**
   * Mass of standard grease that fills a volume, {@code 0.9 V}.
   *
   * @param volume volume in cm³, 0 or more
   * @return mass in g
   * @throws InputException if the volume is negative or not finite
   */
  @Source(document = "Rolling bearings catalogue 17000 EN", locator = LUBRICATION)
  public static double massOfVolume(double volume) {
    return 0.9 * Check.notNegative(volume, "volume", "cm³", "a volume is not negative");
  }

  /**
   * Viscosity of the base oil at the working temperature for a wanted viscosity ratio, {@code ν = κ ν1}.
   *
   * @param kappa wanted viscosity ratio κ, over 0
   * @param reference reference viscosity ν1 in mm²/s, over 0
   * @return viscosity ν in mm²/s
   * @throws InputException if an argument is not above zero
   */
  @Source(document = "ISO 281:2007", locator = "viscosity ratio κ = ν/ν1, solved for the viscosity")
  public static double viscosity(double kappa, double reference) {
    Check.positive(kappa, "viscosity ratio κ", "", "without viscosity there is no film");
    return kappa * Check.positive(reference, "reference viscosity ν1", "mm²/s", "it is a viscosity");
  }

  private static double area(double d, double b) {
    return Check.positive(d, "outside diameter D", "mm", "it is a size") * Check.positive(b, "width B", "mm", "it is a size");
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Numbers;
import holdfast.tables.Provenance;
import holdfast.tables.Source;

/**
 * Radial internal clearance of a bearing taken by interference fits of its rings and by warmth; rings, shaft and housing
 * of like material. Diameters and clearances in mm. A stud-type roller carries its inner raceway outside of the housing,
 * so the fit of its stud normally leaves the clearance alone.
 */
@Source(document = "derivation", locator = "thick rings of like material under joint pressure", provenance = Provenance.DERIVED)
public final class InternalClearanceKernel {
  private InternalClearanceKernel() {}

  /**
   * Growth of the inner raceway by the fit on the shaft, {@code U·k·(1-k0²)/(1-k²·k0²)} with {@code k = d/F} and
   * {@code k0 = d_0/d}.
   *
   * @param interference effective interference U on the shaft in mm, 0 or more
   * @param bore bore d of the ring in mm
   * @param raceway raceway diameter F of the ring in mm, over d
   * @param shaftHole hole d_0 of the shaft in mm, 0 to less than d
   * @return growth of the raceway diameter in mm, taken from the clearance
   * @throws InputException if a value is out of range
   */
  public static double innerRing(double interference, double bore, double raceway, double shaftHole) {
    SeatChecks.gap(interference, "interference on the shaft", "a clearance takes nothing");
    ThickRingKernel.checkHole(shaftHole, bore);
    over(raceway, bore, "raceway of the inner ring");
    double k = bore / raceway;
    double k0 = shaftHole / bore;
    return interference * k * (1 - k0) * (1 + k0) / ((1 - k * k0) * (1 + k * k0));
  }

  /**
   * Closing of the outer raceway by the fit in the housing, {@code U·h·(1-h0²)/(1-h²·h0²)} with {@code h = E_r/D} and
   * {@code h0 = D/D_H}.
   *
   * @param interference effective interference U in the housing in mm, 0 or more
   * @param outside outside diameter D of the ring in mm
   * @param raceway raceway diameter E_r of the ring in mm, over 0 and less than D
   * @param housingOutside outside D_H of the housing in mm, over D, infinite for a thick housing
   * @return closing of the raceway diameter in mm, taken from the clearance
   * @throws InputException if a value is out of range
   */
  public static double outerRing(double interference, double outside, double raceway, double housingOutside) {
    SeatChecks.gap(interference, "interference in the housing", "a clearance takes nothing");
    SeatChecks.size(raceway, "raceway of the outer ring", "a raceway has a size");
    over(outside, raceway, "outside diameter of the outer ring");
    ThickRingKernel.checkOutside(outside, housingOutside);
    double h = raceway / outside;
    double h0 = outside / housingOutside;
    return interference * h * (1 - h0) * (1 + h0) / ((1 - h * h0) * (1 + h * h0));
  }

  /**
   * Clearance taken by a warmer inner ring, {@code α·Δθ·(F + E_r)/2} (approximate: rings of even temperature).
   *
   * @param expansion α of the rings in 1/K, 0 or more
   * @param difference inner less outer ring temperature in K
   * @param innerRaceway F in mm, over 0
   * @param outerRaceway E_r in mm, over F
   * @return clearance taken in mm; negative if the outer ring is warmer
   * @throws InputException if a value is out of range
   */
  public static double byTemperature(double expansion, double difference, double innerRaceway, double outerRaceway) {
    SeatChecks.expansion(expansion, "expansion of the rings");
    Check.finite(difference, "temperature difference", "K");
    SeatChecks.size(innerRaceway, "raceway of the inner ring", "a raceway has a size");
    over(outerRaceway, innerRaceway, "raceway of the outer ring");
    return expansion * difference * (innerRaceway + outerRaceway) / 2;
  }

  private static void over(double value, double least, String parameter) {
    if (!(value > least && value <= Check.GREATEST)) {
      throw new InputException(
          parameter, Numbers.shortest(value) + " mm", "over " + Numbers.shortest(least) + " mm", "a ring needs a wall");
    }
  }
}

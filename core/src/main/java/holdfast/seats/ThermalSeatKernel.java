// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Check;
import holdfast.quantity.InputException;
import holdfast.quantity.Numbers;
import holdfast.tables.Provenance;
import holdfast.tables.Source;

/**
 * Fits and temperature: heating and cooling for assembly, interference at working temperature. Diametral lengths in mm,
 * temperatures in °C, expansion coefficients in 1/K; sizes hold at the reference temperature 20 °C.
 */
@Source(document = "DIN 7190-1:2017", locator = "assembly temperatures", provenance = Provenance.MEMORY)
@Source(document = "Boresi & Schmidt", locator = "example 11.3, assembly temperature")
@Source(document = "derivation", locator = "free thermal expansion of both parts", provenance = Provenance.DERIVED)
public final class ThermalSeatKernel {
  /** Reference temperature of sizes (ISO 1) in °C. */
  public static final double REFERENCE = 20;

  private static final double ABSOLUTE_ZERO = -273.15;

  private ThermalSeatKernel() {}

  /**
   * Temperature of the housing at which it slips over the stud with a given clearance:
   * {@code θ_A = θ_R + (U + S)/(α_A·D) + (α_I/α_A)·(θ_I - θ_R)}, with θ_R the temperature at which U holds.
   *
   * @param interference greatest interference U at the room temperature, in mm, 0 or more
   * @param clearance assembly clearance S in mm, 0 or more
   * @param joint joint diameter D in mm, over 0
   * @param outerExpansion α_A of the housing in 1/K, over 0
   * @param innerExpansion α_I of the stud in 1/K, 0 or more
   * @param room room temperature θ_R in °C
   * @param studTemperature temperature of the stud θ_I in °C
   * @return θ_A in °C
   * @throws InputException if a value is out of range
   */
  public static double housingTemperature(
      double interference,
      double clearance,
      double joint,
      double outerExpansion,
      double innerExpansion,
      double room,
      double studTemperature) {
    double rise = riseToOpen(interference, clearance, joint, outerExpansion);
    SeatChecks.expansion(innerExpansion, "expansion of the stud");
    temperature(room, "room temperature");
    temperature(studTemperature, "temperature of the stud");
    return room + rise + innerExpansion / outerExpansion * (studTemperature - room);
  }

  /**
   * Temperature to which the stud alone must be cooled: {@code θ_I = θ_R - (U + S)/(α_I·D)}.
   *
   * @param interference greatest interference U at the room temperature, in mm, 0 or more
   * @param clearance assembly clearance S in mm, 0 or more
   * @param joint joint diameter D in mm, over 0
   * @param innerExpansion contraction coefficient of the stud in 1/K, over 0
   * @param room room temperature θ_R in °C
   * @return θ_I in °C; below absolute zero if cooling alone cannot do it
   * @throws InputException if a value is out of range
   */
  public static double studTemperature(
      double interference, double clearance, double joint, double innerExpansion, double room) {
    temperature(room, "room temperature");
    return room - riseToOpen(interference, clearance, joint, innerExpansion);
  }

  /**
   * Rise or drop that opens a fit, {@code Δθ = (U + S)/(α·D)}.
   *
   * @param interference interference U in mm, 0 or more
   * @param clearance assembly clearance S in mm, 0 or more
   * @param joint joint diameter D in mm, over 0
   * @param expansion α of the part that is heated or cooled in 1/K, over 0
   * @return Δθ in K
   * @throws InputException if a value is out of range
   */
  public static double riseToOpen(double interference, double clearance, double joint, double expansion) {
    SeatChecks.gap(interference, "interference", "a clearance needs no heat");
    SeatChecks.gap(clearance, "assembly clearance", "the parts must pass");
    SeatChecks.joint(joint);
    SeatChecks.workingExpansion(expansion, "expansion of the part");
    return (interference + clearance) / (expansion * joint);
  }

  /**
   * Interference at working temperatures:
   * {@code U(θ) = U + D·(α_I·(θ_I - 20) - α_A·(θ_A - 20))}.
   *
   * @param interference interference U at 20 °C in mm; a clearance is negative
   * @param joint joint diameter D in mm, over 0
   * @param innerExpansion α_I of the stud in 1/K, 0 or more
   * @param innerTemperature temperature of the stud in °C
   * @param outerExpansion α_A of the housing in 1/K, 0 or more
   * @param outerTemperature temperature of the housing in °C
   * @return interference in mm; a clearance is negative
   * @throws InputException if a value is out of range
   */
  public static double interferenceAt(
      double interference,
      double joint,
      double innerExpansion,
      double innerTemperature,
      double outerExpansion,
      double outerTemperature) {
    Check.within(interference, -1e7, 1e7, "interference", "mm", "a fit");
    SeatChecks.joint(joint);
    SeatChecks.expansion(innerExpansion, "expansion of the stud");
    SeatChecks.expansion(outerExpansion, "expansion of the housing");
    temperature(innerTemperature, "temperature of the stud");
    temperature(outerTemperature, "temperature of the housing");
    return interference
        + joint * (innerExpansion * (innerTemperature - REFERENCE) - outerExpansion * (outerTemperature - REFERENCE));
  }

  /**
   * Common temperature of both parts at which the interference is gone:
   * {@code θ = 20 + U/(D·(α_A - α_I))}. A housing that grows more loses it when warmed, one that grows less when cooled.
   *
   * @param interference interference U at 20 °C in mm, 0 or more
   * @param joint joint diameter D in mm, over 0
   * @param innerExpansion α_I of the stud in 1/K, 0 or more
   * @param outerExpansion α_A of the housing in 1/K, 0 or more
   * @return θ in °C; positive infinity for equal expansion; may lie below absolute zero, which is never reached
   * @throws InputException if a value is out of range
   */
  public static double lossTemperature(double interference, double joint, double innerExpansion, double outerExpansion) {
    SeatChecks.gap(interference, "interference", "a clearance has nothing to lose");
    SeatChecks.joint(joint);
    SeatChecks.expansion(innerExpansion, "expansion of the stud");
    SeatChecks.expansion(outerExpansion, "expansion of the housing");
    double difference = outerExpansion - innerExpansion;
    return Math.abs(difference) < Check.LEAST ? Double.POSITIVE_INFINITY : REFERENCE + interference / (joint * difference);
  }

  static void temperature(double celsius, String parameter) {
    if (!(celsius >= ABSOLUTE_ZERO && celsius <= 1e6)) {
      throw new InputException(parameter, Numbers.shortest(celsius) + " °C", "from -273.15 °C to 1000000 °C", "absolute zero");
    }
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Check;
import holdfast.quantity.Force;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import holdfast.quantity.Stress;
import holdfast.quantity.Torque;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * What friction in a joint holds: from the loosest pair with the least adhesion to the tightest with the greatest.
 * Only the low end may be counted on.
 *
 * @param pressure joint pressure, least and greatest
 * @param joint joint diameter
 * @param length joint length
 * @param adhesion band of adhesion when slipping
 */
public record Holding(Band<Stress> pressure, Length joint, Length length, FrictionBand adhesion)
    implements Traced, Serializable {
  private static final SourceRef FRICTION = SourceRef.derived("force = friction factor × pressure × area of the seat");

  public Holding {
    Objects.requireNonNull(pressure, "pressure");
    Objects.requireNonNull(joint, "joint");
    Objects.requireNonNull(length, "length");
    Objects.requireNonNull(adhesion, "adhesion");
  }

  /**
   * Axial force at which the joint slips.
   *
   * @return the band
   */
  public Band<Force> axialForce() {
    return new Band<>(
        new Force(force(pressure.least(), adhesion.least())), new Force(force(pressure.greatest(), adhesion.greatest())));
  }

  /**
   * Torque at which the joint slips.
   *
   * @return the band
   */
  public Band<Torque> torque() {
    return new Band<>(
        new Torque(torque(pressure.least(), adhesion.least())),
        new Torque(torque(pressure.greatest(), adhesion.greatest())));
  }

  /**
   * Least safety against slipping under an axial force and a torque together.
   *
   * @param force axial force, any sign
   * @param torque torque, any sign
   * @return holding force of the loosest pair over the resultant; infinite without load
   */
  public double safety(Force force, Torque torque) {
    Objects.requireNonNull(force, "force");
    Objects.requireNonNull(torque, "torque");
    double resultant = PressForceKernel.resultant(force.base(), torque.base(), joint.mm());
    return resultant == 0 ? Double.POSITIVE_INFINITY : axialForce().least().base() / resultant;
  }

  /**
   * Whether the stud can turn in its seat while its nut is tightened.
   *
   * @param throughStud torque that passes through the stud: the share of thread pitch and thread friction
   * @return true if the loosest pair does not hold it
   * @throws holdfast.quantity.InputException if the torque is negative
   */
  public boolean turnsWhileTightened(Torque throughStud) {
    Objects.requireNonNull(throughStud, "throughStud");
    return torqueToBeHeld(throughStud).base() > 0;
  }

  /**
   * Torque that must be held at the slot or hexagon of the stud while its nut is tightened.
   *
   * @param throughStud torque that passes through the stud
   * @return what the loosest pair does not hold; 0 if the seat holds all of it
   * @throws holdfast.quantity.InputException if the torque is negative
   */
  public Torque torqueToBeHeld(Torque throughStud) {
    Objects.requireNonNull(throughStud, "throughStud");
    Check.notNegative(throughStud.base(), "torque through the stud", "N·mm", "state its size");
    return new Torque(Math.max(0, throughStud.base() - torque().least().base()));
  }

  /** Derivation of the least torque that the seat holds. */
  @Override
  public Derivation explain() {
    return Derivation.of("Torque that the seat holds")
        .step(
            "F_ax",
            "least axial holding force",
            "ν·p·π·D·l",
            axialForce().least().base(),
            "N",
            FRICTION,
            "ν = " + Numbers.shortest(adhesion.least()) + " (" + adhesion.source() + ")",
            "p = " + Numbers.significant(pressure.least().base(), 6) + " MPa",
            "D = " + Numbers.shortest(joint.mm()) + " mm",
            "l = " + Numbers.shortest(length.mm()) + " mm")
        .step("T", "least holding torque", "F_ax·D/2", torque().least().base(), "N·mm", FRICTION)
        .build();
  }

  @Override
  public List<Warning> warnings() {
    return pressure.least().base() > 0
        ? List.of()
        : List.of(
            new Warning(
                "no-grip", "the loosest pair holds nothing by friction", SourceRef.derived("no pressure, no friction")));
  }

  @Override
  public String toString() {
    return "holds " + axialForce() + " axially, " + torque() + " in torsion";
  }

  private double force(Stress p, double friction) {
    return PressForceKernel.axialForce(p.base(), joint.mm(), length.mm(), friction);
  }

  private double torque(Stress p, double friction) {
    return PressForceKernel.torque(p.base(), joint.mm(), length.mm(), friction);
  }
}

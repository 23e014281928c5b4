// SPDX-License-Identifier: Apache-2.0
package holdfast.bearings.reference;

import holdfast.quantity.Angle;
import holdfast.quantity.Check;
import holdfast.quantity.Force;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import holdfast.quantity.Stiffness;
import holdfast.quantity.Stress;
import holdfast.quantity.Torque;
import holdfast.trace.Derivation;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;

/**
 * Life of a bearing whose raceways are tilted against each other. The figure to use is the {@link #lifeRatio}: multiply a
 * basic or modified rating life by it. Absolute lives rest on recalled constants.
 *
 * <p>The ratio falls with tilt but for one effect: under light load and with clearance a tilt widens the load zone, which is
 * a small gain. Over 34 000 generated bearings with tilts in the plane of the load the greatest ratio was 1.044, at loads
 * under 0.001 Cr with three rollers in load, and 1.007 at loads over 0.02 Cr. Both bounds hold in that plane only: a tilt
 * across it and ball bearings show the same effect more often, and under a moment across it the ratio has no such bound (12.3
 * was seen). Such results carry the warning {@code ratio-above-one}.
 *
 * @param bearing the bearing, with the number of laminae that was used
 * @param loading load, and tilt or moment
 * @param lifeRatio life over the life of the same bearing under the same load without tilt (dimensionless)
 * @param life life in million revolutions of this model without the recalled division of the ratings: near the basic
 *     rating life for an aligned bearing at high load
 * @param alignedLife the same without tilt in million revolutions
 * @param recalledLife reference life in million revolutions as recalled, with the division by 0.83 that lifts the life of
 *     roller bearings 2.1 times; not confirmed by any text
 * @param tiltAlong tilt in the plane of the load
 * @param tiltAcross tilt across it
 * @param momentAlong moment between the rings in the plane of the load
 * @param momentAcross moment across it
 * @param displacement displacement of the rings against each other along the load, from the concentric position
 * @param greatestLoad load on the most loaded rolling element
 * @param greatestPressure greatest Hertz pressure, without edge stress
 * @param loadZone angle over which elements carry load, by steps of half a degree
 * @param loadedElements elements of one row that carry load
 * @param touchingShare share of the length of the most loaded roller that touches; 1 for balls
 * @param radialStiffness derivative of the load by the displacement, at this tilt
 * @param tiltStiffness derivative of the moment by the tilt in the plane of the load in N·mm/rad, at this load
 * @param laminaChange by how much of itself the last doubling of the number of laminae changed the life ratio; 0 if it was
 *     not doubled
 * @param residual unbalanced force over the load (dimensionless)
 * @param iterations evaluations of all contacts in the solve
 */
public record TiltedLife(
    TiltedBearing bearing, Loading loading, double lifeRatio, double life, double alignedLife, double recalledLife,
    Angle tiltAlong, Angle tiltAcross, Torque momentAlong, Torque momentAcross, Length displacement, Force greatestLoad,
    Stress greatestPressure, Angle loadZone, int loadedElements, double touchingShare, Stiffness radialStiffness,
    double tiltStiffness, double laminaChange, double residual, int iterations)
    implements Traced, Serializable {
  private static final double REFINED_TO = 0.005;
  private static final int TOUCHING = 20;

  public TiltedLife {
    Objects.requireNonNull(bearing, "bearing");
    Objects.requireNonNull(loading, "loading");
    Objects.requireNonNull(tiltAlong, "tiltAlong");
    Objects.requireNonNull(tiltAcross, "tiltAcross");
    Objects.requireNonNull(momentAlong, "momentAlong");
    Objects.requireNonNull(momentAcross, "momentAcross");
    Objects.requireNonNull(displacement, "displacement");
    Objects.requireNonNull(greatestLoad, "greatestLoad");
    Objects.requireNonNull(greatestPressure, "greatestPressure");
    Objects.requireNonNull(loadZone, "loadZone");
    Objects.requireNonNull(radialStiffness, "radialStiffness");
    Check.finite(lifeRatio, "life ratio", "");
    Check.finite(life, "life", "million revolutions");
    Check.finite(alignedLife, "life without tilt", "million revolutions");
    Check.finite(recalledLife, "reference life as recalled", "million revolutions");
    Check.finite(touchingShare, "touching share", "");
    Check.finite(tiltStiffness, "tilt stiffness", "N·mm/rad");
    Check.finite(laminaChange, "change by the last doubling of the laminae", "");
    Check.finite(residual, "unbalanced force over the load", "");
  }

  static TiltedLife of(TiltedBearing bearing, Loading loading) {
    if (bearing.elements() instanceof RollerSet && loading.axial().newton() != 0) {
      throw Inputs.refused("axial load Fa", loading.axial(), "0 N",
          "rollers of a radial bearing carry no axial load in this model");
    }
    Model model = Model.of(bearing);
    double aligned = model.life(loading.aligned());
    int touching = model.touchingLaminae();
    double life = model.life(loading);
    double change = 0;
    while (model.bearing.refines()
        && (change == 0 || change > REFINED_TO || Math.min(touching, model.touchingLaminae()) < TOUCHING)) {
      double before = life / aligned;
      model = Model.of(model.bearing.doubled());
      aligned = model.life(loading.aligned());
      touching = model.touchingLaminae();
      life = model.life(loading);
      change = Math.max(Math.abs(before / (life / aligned) - 1), Double.MIN_VALUE);
    }
    EquilibriumWorkspace w = model.workspace();
    return new TiltedLife(
        model.bearing, loading, life / aligned, life, aligned, life * model.recalledFactor(), new Angle(w.tiltAlong()),
        new Angle(w.tiltAcross()), new Torque(w.momentAlong()), new Torque(w.momentAcross()),
        new Length(w.displacement()), new Force(model.greatestLoad()), new Stress(model.greatestPressure()),
        new Angle(model.loadZone()), model.loadedElements(), model.touchingShare(),
        new Stiffness(w.radialStiffness()), w.tiltStiffness(), change, w.residual(), w.iterations());
  }

  /**
   * Loads and pressures of all rolling elements; solved again when asked for.
   *
   * @return the distribution
   */
  public LoadDistribution distribution() {
    Model model = Model.of(bearing);
    model.solve(loading);
    return model.distribution();
  }

  /**
   * Ratio of modified lives: every lamina (every ring of a ball bearing) is weighted with its own factor for lubrication and
   * cleanliness. The load on which the recalled method bases that factor is not certain and left out; the factor is asked for
   * as a function of load over rating of a roller (ring) that is loaded like the lamina throughout, which stands where P/C
   * stands for a whole bearing.
   *
   * @param factor aISO as a function of P/C, giving numbers above 0
   * @return modified life over the modified life without tilt
   * @throws holdfast.quantity.InputException if the factor gives a number that is not above 0
   */
  public double modifiedLifeRatio(DoubleUnaryOperator factor) {
    Objects.requireNonNull(factor, "factor");
    Model model = Model.of(bearing);
    model.solve(loading.aligned());
    double aligned = model.modifiedLife(factor);
    model.solve(loading);
    return model.modifiedLife(factor) / aligned;
  }

  @Override
  public Derivation explain() {
    return TiltedLifeNotes.explain(this);
  }

  @Override
  public List<Warning> warnings() {
    return TiltedLifeNotes.warnings(this);
  }

  /** For example {@code "life ratio 0.81 against the aligned bearing (Fr = 2 kN, tilt 1 mrad)"}. */
  @Override
  public String toString() {
    return "life ratio " + Numbers.significant(lifeRatio, 3) + " against the aligned bearing (" + loading
        + "); as recalled, not confirmed: " + Numbers.significant(recalledLife, 4) + " million revolutions";
  }
}

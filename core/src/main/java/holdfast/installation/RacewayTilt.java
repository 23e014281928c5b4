// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.bearings.reference.TiltedBearing;
import holdfast.quantity.Angle;
import holdfast.quantity.Check;
import holdfast.quantity.Force;
import holdfast.quantity.Length;
import holdfast.quantity.Root;
import holdfast.quantity.Torque;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Message;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;

/**
 * How much of the lean of a stud reaches the rollers. A flat ring is taken to stay flat on its track, so that all of the
 * lean comes between the raceways: an upper bound. A crowned ring rocks on its track until the load, which then acts off the
 * middle of the ring, balances the moment of the rollers; the raceways see what is left. The track is flat across and
 * does not lean itself.
 *
 * @param studTilt lean of the stud against the track
 * @param raceways tilt of one raceway against the other
 * @param ring lean of the ring against the track
 * @param moment moment between the raceways that the load balances; 0 for a flat ring, where it is not asked for
 * @param load load on the roller
 * @param crownRadius radius of the crown; 0 for a flat ring
 * @param outside outside diameter of the ring
 */
public record RacewayTilt(
    Angle studTilt, Angle raceways, Angle ring, Torque moment, Force load, Length crownRadius, Length outside)
    implements Traced, Serializable {
  private static final SourceRef HELD = SourceRef.derived("a flat ring taken to lie flat on its track: upper bound");
  private static final SourceRef ROCKS = SourceRef.derived("moment of the load about the middle of a leaning ring");

  public RacewayTilt {
    Objects.requireNonNull(studTilt, "studTilt");
    Objects.requireNonNull(raceways, "raceways");
    Objects.requireNonNull(ring, "ring");
    Objects.requireNonNull(moment, "moment");
    Objects.requireNonNull(load, "load");
    Objects.requireNonNull(crownRadius, "crownRadius");
    Objects.requireNonNull(outside, "outside");
  }

  /**
   * Shares the lean of a stud between ring and raceways.
   *
   * @param bearing the roller
   * @param load load on it, over 0
   * @param studTilt lean of the stud, 0 to 0.2 rad
   * @param crownRadius radius of the crown, over half the outside diameter; 0 for a flat ring
   * @param outside outside diameter of the ring, over 0
   * @return the tilt that the rollers see
   * @throws holdfast.quantity.InputException if a value is out of range
   */
  public static RacewayTilt of(
      TiltedBearing bearing, Force load, Angle studTilt, Length crownRadius, Length outside) {
    Objects.requireNonNull(load, "load");
    Objects.requireNonNull(bearing, "bearing");
    Objects.requireNonNull(studTilt, "studTilt");
    Objects.requireNonNull(crownRadius, "crownRadius");
    Objects.requireNonNull(outside, "outside");
    Check.within(studTilt.radian(), 0, 0.2, "lean of the stud", "rad", "the geometry is that of small angles");
    checkCrown(crownRadius, outside);
    Angle none = new Angle(0);
    if (crownRadius.mm() == 0 || studTilt.radian() == 0) {
      return new RacewayTilt(studTilt, studTilt, none, new Torque(0), load, crownRadius, outside);
    }
    // As many laminae as the whole lean would need, then no more refinement inside the search.
    DoubleUnaryOperator moment = bearing.life(load, studTilt).bearing().moment(load);
    double whole = studTilt.radian();
    double share = share(x -> x - 1
        + CrownKernel.ringTilt(moment.applyAsDouble(x * whole), load.newton(), crownRadius.mm(), outside.mm()) / whole);
    return new RacewayTilt(studTilt, new Angle(share * whole), new Angle(whole - share * whole),
        new Torque(moment.applyAsDouble(share * whole)), load, crownRadius, outside);
  }

  /** A crown below half the outside diameter lets the ring fall over instead of turning it back. */
  static void checkCrown(Length crownRadius, Length outside) {
    Check.positive(outside.mm(), "outside diameter D", "mm", "it is a size");
    Check.notNegative(crownRadius.mm(), "crown radius", "mm", "0 stands for a flat ring");
    if (crownRadius.mm() > 0) {
      Check.positive(crownRadius.mm() - outside.mm() / 2, "crown radius less half the outside diameter", "mm",
          "a rounder ring falls over on its track; 0 stands for a flat ring");
    }
  }

  /** Of a lean so small that rounding decides about the moment, all or nothing reaches the rollers. */
  private static double share(DoubleUnaryOperator excess) {
    if (excess.applyAsDouble(0) >= 0) {
      return 0;
    }
    return excess.applyAsDouble(1) <= 0 ? 1 : Root.between(excess, 0, 1, 0, 1e-10, "share of the lean between the raceways");
  }

  /**
   * How far the point of contact moves from the middle of the ring.
   *
   * @return shift along the axis; 0 for a flat ring
   */
  public Length contactShift() {
    return crownRadius.mm() == 0 ? new Length(0) : new Length(CrownKernel.shift(crownRadius.mm(), ring.radian()));
  }

  @Override
  public Derivation explain() {
    Derivation.Builder steps = Derivation.of("Tilt between the raceways");
    if (crownRadius.mm() > 0) {
      steps.step("ψ_r", "lean of the crowned ring on its track", "M/(F (R - D/2)), with M the moment between the raceways at ψ",
          ring.base() * 1000, "mrad", ROCKS, "M = " + moment, "F = " + load, "R = " + crownRadius, "D = " + outside);
    }
    return steps
        .step("ψ", "tilt between the raceways", crownRadius.mm() > 0 ? "φ_g - ψ_r" : "φ_g", raceways.base() * 1000, "mrad",
            crownRadius.mm() > 0 ? ROCKS : HELD, "φ_g = " + studTilt)
        .build();
  }

  @Override
  public List<Warning> warnings() {
    return List.of(
        crownRadius.mm() == 0
            ? new Warning("flat-ring-held", "the flat ring is taken to lie flat on its track, so that the rollers see the whole"
                + " lean; the ring yields a little, so this is an upper bound", HELD)
            : new Warning("crowned-ring-rocks", Message.of("of the lean of ", studTilt, " the crowned ring takes ", ring,
                " by rocking on a track that is flat across, where the point of contact moves ",
                new Length(Math.rint(100 * contactShift().mm()) / 100),
                " from the middle; friction and a leaning track are left out"), ROCKS));
  }

  /** For example {@code "2 mrad, of which the rollers see 0.4 mrad"}. */
  @Override
  public String toString() {
    return studTilt + (crownRadius.mm() == 0 ? "" : ", of which the rollers see " + raceways);
  }
}

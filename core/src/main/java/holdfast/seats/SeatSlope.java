// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Angle;
import holdfast.quantity.Check;
import holdfast.quantity.Numbers;
import holdfast.quantity.Stress;
import holdfast.tables.Provenance;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Slope of a stud under load in an elastic seat, in the middle of the roller: bending and shear of the free part, and the mouth
 * of the seat. Real seats lie between a bore that friction holds and one without friction.
 *
 * @param beam the free part of the stud, in a rigid seat
 * @param length engaged length over stud diameter (dimensionless), 0.3 or more
 * @param wall outside of the member over stud diameter (dimensionless), 1.3 or more
 * @param moduli modulus of the stud over that of the member (dimensionless), over 0
 */
public record SeatSlope(StudDeflection beam, double length, double wall, double moduli) implements Traced, Serializable {
  private static final SourceRef SOLIDS =
      new SourceRef("stud seat models", "compliances over L/d, D/d, ratio of moduli, bore and hold",
          Provenance.REFERENCE_COMPUTATION);
  private static final SourceRef SHEAR = SourceRef.memory("Cowper 1966", "Timoshenko beam, shear coefficient");
  private static final SourceRef SUM = SourceRef.derived("slope of the surface on which the rollers run");
  /** From here on a wider member changes nothing that the solids show. */
  private static final double WIDE = 5;

  // Refuses a seat that no solid covers.
  public SeatSlope {
    Objects.requireNonNull(beam, "beam");
    Check.atLeast(length, SeatSlopeKernel.SHORTEST, "engaged length over stud diameter", "", "no shorter seat was computed");
    Check.atLeast(wall, SeatSlopeKernel.THINNEST, "outside of the member over stud diameter", "",
        "no thinner wall was computed");
    Check.positive(moduli, "ratio of the moduli", "", "elastic bodies have stiffness");
    Check.within(boreOf(beam), 0, SeatSlopeKernel.WIDEST, "bore of the stud over its diameter", "",
        "no thinner tube was computed");
  }

  /**
   * The slope of a stud in a member.
   *
   * @param beam the free part of the stud, in a rigid seat
   * @param member material and shape round the bore; its least wall counts all round
   * @return the slope; empty if the seat is shorter, its wall thinner or the stud more hollow than what was computed
   */
  public static Optional<SeatSlope> of(StudDeflection beam, OuterPart member) {
    Objects.requireNonNull(beam, "beam");
    Objects.requireNonNull(member, "member");
    double d = beam.section().diameter().mm();
    double length = beam.engaged().mm() / d;
    double wall = Math.min(1 + 2 * member.shape().wallFactor(beam.section().diameter()), WIDE);
    boolean computed = length >= SeatSlopeKernel.SHORTEST && wall >= SeatSlopeKernel.THINNEST
        && boreOf(beam) <= SeatSlopeKernel.WIDEST;
    double moduli = beam.modulus().megapascal() / member.material().elasticModulus().megapascal();
    return computed ? Optional.of(new SeatSlope(beam, length, wall, moduli)) : Optional.empty();
  }

  private static double boreOf(StudDeflection beam) {
    return beam.section().bore().mm() / beam.section().diameter().mm();
  }

  /**
   * Slope at the mouth of the seat.
   *
   * @param hold how bore and face hold the stud
   * @return the slope
   */
  public Angle atMouth(SeatHold hold) {
    Objects.requireNonNull(hold, "hold");
    return new Angle(SeatSlopeKernel.mouthSlope(hold, beam.load().radial().newton(), arm(), diameter(),
        beam.modulus().megapascal(), length, wall, moduli, boreOf(beam)));
  }

  /**
   * Slope by shear in the middle of the roller, where half of the load is still to come.
   *
   * @return F/(2 κ G A)
   */
  public Angle byShear() {
    return new Angle(StudBeamKernel.shearSlope(beam.load().radial().newton(), diameter(), beam.section().bore().mm(),
        beam.modulus().megapascal(), beam.poisson()));
  }

  /**
   * Slope in the middle of the roller.
   *
   * @param hold how bore and face hold the stud
   * @return bending and shear of the free part and the slope of the mouth
   */
  public Angle at(SeatHold hold) {
    return beam.bendingSlope().plus(byShear()).plus(atMouth(hold));
  }

  /**
   * Slope in the middle of the roller while the nut keeps the flange closed all round.
   *
   * @return from a bore held by friction to one without
   */
  public Band<Angle> flangeClosed() {
    return band(SeatHold.BONDED_CLAMPED, SeatHold.FRICTIONLESS_CLAMPED);
  }

  /**
   * Slope in the middle of the roller if the bore alone carries.
   *
   * @return from a bore held by friction to one without
   */
  public Band<Angle> boreAlone() {
    return band(SeatHold.BONDED_FREE, SeatHold.FRICTIONLESS_FREE);
  }

  private Band<Angle> band(SeatHold one, SeatHold other) {
    Angle first = at(one);
    Angle second = at(other);
    return first.compareTo(second) <= 0 ? new Band<>(first, second) : new Band<>(second, first);
  }

  /**
   * Pressure at the mouth of the seat by the part of load and moment that the bore carries while the nut keeps the flange
   * closed: the bore without friction, the pressure linear along the seat.
   *
   * @return the size of the pressure on the projected area
   */
  public Stress mouthPressureFlangeClosed() {
    double arm = arm() / diameter();
    double force = SeatSlopeKernel.boreForce(arm, length, wall, moduli, boreOf(beam));
    double moment = SeatSlopeKernel.boreMoment(arm, length, wall, moduli, boreOf(beam));
    double mean = beam.load().radial().newton() / (diameter() * beam.engaged().mm());
    return new Stress(Math.abs(mean * (4 * force + 6 * moment / length)));
  }

  private double diameter() {
    return beam.section().diameter().mm();
  }

  private double arm() {
    return beam.load().gap().mm() + beam.load().width().mm() / 2;
  }

  @Override
  public Derivation explain() {
    Derivation.Builder steps = Derivation.of("Slope of the " + beam.section() + " in an elastic seat");
    steps.step("θb", "slope of the free part by bending", "load spread evenly over the ring width",
        beam.bendingSlope().radian() * 1000, "mrad", SUM, "F = " + beam.load().radial());
    steps.step("θs", "slope by shear", "F/(2 κ G A)", byShear().radian() * 1000, "mrad", SHEAR);
    for (SeatHold hold : SeatHold.values()) {
      steps.step("θ0", "slope of the mouth, " + hold, "F (cM a/d + cF)/(E d²)", atMouth(hold).radian() * 1000, "mrad", SOLIDS,
          "L/d = " + Numbers.significant(length, 3), "D/d = " + Numbers.significant(wall, 3),
          "E/EM = " + Numbers.significant(moduli, 3));
    }
    steps.step("θ", "greatest slope, bore alone", "θb + θs + θ0", boreAlone().greatest().radian() * 1000, "mrad", SUM);
    return steps.build();
  }

  @Override
  public List<Warning> warnings() {
    return List.of();
  }

  /** For example {@code "0.28 mrad … 0.30 mrad with the flange kept closed, 0.30 mrad … 0.59 mrad by the bore alone"}. */
  @Override
  public String toString() {
    return flangeClosed() + " with the flange kept closed, " + boreAlone() + " by the bore alone";
  }
}

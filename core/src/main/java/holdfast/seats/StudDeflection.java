// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.failures.MisalignmentKind;
import holdfast.failures.MisalignmentLimit;
import holdfast.quantity.Angle;
import holdfast.quantity.Check;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import holdfast.quantity.Stress;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Deflection and slope of a stud in the middle of the roller: bending and shear of the free part, yielding of the seat.
 * The slope is the tilt that bending adds between roller and track.
 *
 * @param section the stud; a cross hole does not count here
 * @param load what it carries; only the radial load bends
 * @param modulus modulus of elasticity of the stud, over 0
 * @param poisson Poisson's ratio of the stud, from 0 to 0.5
 * @param engaged engaged length in the seat, over 0
 * @param foundation foundation modulus of the seat, as a stress (N/mm per mm of length); 0 for a rigid seat
 */
public record StudDeflection(
    ShankSection section, StudLoad load, Stress modulus, double poisson, Length engaged, Stress foundation)
    implements Traced, Serializable {

  private static final SourceRef BEAM = SourceRef.derived("double integration of the bending moment over EI");
  private static final SourceRef SHEAR = SourceRef.memory("Cowper 1966", "Timoshenko beam, shear coefficient");
  private static final SourceRef SEAT =
      SourceRef.memory("Hetenyi 1946", "beam of finite length with free ends, end force and end moment");
  /** Kinds of bearings in a stud-type roller whose limits hold for every load. */
  private static final List<MisalignmentKind> KINDS = List.of(MisalignmentKind.TRACK_ROLLER_FLAT, MisalignmentKind.NEEDLE);

  // Refuses what no stud has.
  public StudDeflection {
    Objects.requireNonNull(section, "section");
    Objects.requireNonNull(load, "load");
    Objects.requireNonNull(modulus, "modulus");
    Objects.requireNonNull(engaged, "engaged");
    Objects.requireNonNull(foundation, "foundation");
    Check.positive(load.width().mm(), "load width B", "mm", "the load is spread over it");
    Check.positive(modulus.megapascal(), "modulus of elasticity E", "MPa", "an elastic body has stiffness");
    Check.within(poisson, 0, 0.5, "Poisson's ratio", "", "range of engineering materials");
    Check.positive(engaged.mm(), "engaged length L", "mm", "the seat holds the stud over it");
    Check.notNegative(foundation.megapascal(), "foundation modulus c", "N/mm²", "0 means a rigid seat");
  }

  /**
   * A stud in a rigid seat.
   *
   * @param section the stud
   * @param load what it carries
   * @param material material of the stud, whose modulus and Poisson's ratio count
   * @param engaged engaged length in the seat
   * @return the deflection
   * @throws holdfast.quantity.InputException if the engaged length or the load width is not positive
   */
  public static StudDeflection of(ShankSection section, StudLoad load, Material material, Length engaged) {
    Objects.requireNonNull(material, "material");
    return new StudDeflection(section, load, material.elasticModulus(), material.poissonRatio(), engaged, new Stress(0));
  }

  /**
   * The same in an elastic seat.
   *
   * @param modulus foundation modulus (N/mm per mm of length), from a test or a solid model
   * @return the deflection
   */
  public StudDeflection onFoundation(Stress modulus) {
    Objects.requireNonNull(modulus, "modulus");
    return new StudDeflection(section, load, this.modulus, poisson, engaged, modulus);
  }

  /**
   * Deflection of the free part by bending.
   *
   * @return the deflection in the middle of the roller
   */
  public Length byBending() {
    double gap = load.gap().mm();
    double width = load.width().mm();
    double q = load.radial().base() / width;
    return new Length(StudBeamKernel.deflectionOfLoad(gap, gap + width, q, q, gap + width / 2, stiffness()));
  }

  /**
   * Deflection of the free part by shear.
   *
   * @return the deflection in the middle of the roller
   */
  public Length byShear() {
    return new Length(
        StudBeamKernel.shearDeflection(
            load.radial().base(), load.width().mm(), load.gap().mm(), section.diameter().mm(), section.bore().mm(),
            modulus.megapascal(), poisson));
  }

  /**
   * Deflection by the seat: its own at the mouth, and what its slope adds in the middle of the roller.
   *
   * @return the deflection; 0 for a rigid seat
   */
  public Length bySeat() {
    if (foundation.megapascal() == 0) {
      return new Length(0);
    }
    double y0 =
        StudSeatKernel.mouthDeflection(
            load.radial().base(), arm(), foundation.megapascal(), stiffness(), engaged.mm());
    return new Length(y0 + seatSlope().radian() * arm());
  }

  /**
   * Deflection in the middle of the roller.
   *
   * @return bending, shear and seat together
   */
  public Length deflection() {
    return byBending().plus(byShear()).plus(bySeat());
  }

  /**
   * Slope at the seat mouth.
   *
   * @return the slope; 0 for a rigid seat
   */
  public Angle seatSlope() {
    return new Angle(
        foundation.megapascal() == 0
            ? 0
            : StudSeatKernel.mouthSlope(
                load.radial().base(), arm(), foundation.megapascal(), stiffness(), engaged.mm()));
  }

  /**
   * Slope of the free part by bending.
   *
   * @return the slope in the middle of the roller
   */
  public Angle bendingSlope() {
    double gap = load.gap().mm();
    double width = load.width().mm();
    double q = load.radial().base() / width;
    return new Angle(StudBeamKernel.slopeOfLoad(gap, gap + width, q, q, gap + width / 2, stiffness()));
  }

  /**
   * Tilt of the roller by bending.
   *
   * @return slope of the free part and of the seat together
   */
  public Angle tilt() {
    return bendingSlope().plus(seatSlope());
  }

  @Override
  public Derivation explain() {
    Derivation.Builder steps = Derivation.of("Deflection and tilt of the " + section + " under " + load.radial());
    steps.step(
        "EI", "bending stiffness", "E π (d⁴ - di⁴)/64", stiffness(), "N·mm²", BEAM, "E = " + modulus, section.toString());
    steps.step(
        "wb", "deflection by bending", "load spread evenly over the ring width", byBending().mm(), "mm", BEAM,
        "F = " + load.radial(), "B = " + load.width(), "g = " + load.gap());
    steps.step("ws", "deflection by shear", "F (g + 3B/8)/(κ G A)", byShear().mm(), "mm", SHEAR);
    steps.step(
        "y0 + θ0 a", "deflection by the seat", "beam of finite length on an elastic foundation", bySeat().mm(), "mm", SEAT,
        "c = " + Numbers.shortest(foundation.megapascal()) + " N/mm²", "L = " + engaged);
    steps.step("w", "deflection in the middle of the roller", "wb + ws + y0 + θ0 a", deflection().mm(), "mm", BEAM);
    steps.step("θ0", "slope at the seat mouth", "elastic foundation", seatSlope().radian(), "rad", SEAT);
    steps.step("θb", "slope of the free part", "load spread evenly over the ring width", bendingSlope().radian(), "rad", BEAM);
    steps.step("φ", "tilt of the roller by bending", "θb + θ0", tilt().radian(), "rad", BEAM);
    return steps.build();
  }

  @Override
  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>();
    if (foundation.megapascal() == 0) {
      warnings.add(
          new Warning(
              "seat-taken-as-rigid",
              "the seat counts as rigid: the true tilt is greater than " + tilt(),
              SourceRef.derived("the foundation modulus is 0")));
    }
    for (MisalignmentKind kind : KINDS) {
      for (MisalignmentLimit limit : MisalignmentLimit.of(kind)) {
        if (!limit.permits(tilt())) {
          warnings.add(
              new Warning(
                  "tilt-above-limit",
                  "bending alone tilts the roller by " + tilt() + ", the limit for a " + kind + ", is " + limit.limit(),
                  limit.source()));
        }
      }
    }
    return List.copyOf(warnings);
  }

  /** For example {@code stud 16 mm: deflection 12 µm, tilt 0.8 mrad}. */
  @Override
  public String toString() {
    return section + ": deflection " + deflection() + ", tilt " + tilt();
  }

  private double stiffness() {
    return modulus.megapascal() * StudSectionKernel.inertia(section.diameter().mm(), section.bore().mm());
  }

  private double arm() {
    return load.width().mm() / 2 + load.gap().mm();
  }
}

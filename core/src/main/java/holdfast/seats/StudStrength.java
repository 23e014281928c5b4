// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import holdfast.quantity.Angle;
import holdfast.quantity.Check;
import holdfast.quantity.Force;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import holdfast.quantity.Stress;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import holdfast.trace.Derivation;
import holdfast.trace.Message;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Strength of a stud at the seat mouth: bending by the load and by leaning faces, preload, held torque, shear and the
 * pressure of the fit together, at its surface and at its bore. Stresses are nominal; a notch enters through
 * {@link #fatigue} or through the concentration factors of {@link StudNotchKernel}.
 *
 * @param section the stud
 * @param load what it carries
 * @param fitPressure pressure of a press fit at the mouth, 0 for a loose fit
 * @param faceBending bending stress that leaning clamped faces force on the stud, 0 for square faces
 */
public record StudStrength(ShankSection section, StudLoad load, Stress fitPressure, Stress faceBending)
    implements BentPart, Serializable {
  static final SourceRef FLEXURE = SourceRef.memory("Gere and Timoshenko 1997", "flexure formula");
  private static final SourceRef MOMENT =
      SourceRef.published("Cam followers catalogue 2008", "technical section, stud strength: M = F (B/2 + gap)");
  private static final SourceRef MISES = SourceRef.derived("von Mises of the combined stresses");
  private static final SourceRef KIRSCH = SourceRef.memory("Kirsch 1898", "factor 3 at a small hole");

  // Refuses a pulling fit.
  public StudStrength {
    Objects.requireNonNull(section, "section");
    Objects.requireNonNull(load, "load");
    Objects.requireNonNull(fitPressure, "fitPressure");
    Objects.requireNonNull(faceBending, "faceBending");
    Check.notNegative(fitPressure.megapascal(), "pressure of the fit", "MPa", "a fit only presses");
    Check.notNegative(faceBending.megapascal(), "bending stress by leaning faces", "MPa", "its size, without direction");
  }

  /**
   * A stud in a loose fit with square faces.
   *
   * @param section the stud
   * @param load what it carries
   * @return the strength
   */
  public static StudStrength of(ShankSection section, StudLoad load) {
    return new StudStrength(section, load, new Stress(0), new Stress(0));
  }

  /**
   * The same stud in a press fit.
   *
   * @param pressure greatest pressure of the fit at the mouth, at the temperature that raises it most
   * @return the strength
   * @throws holdfast.quantity.InputException if the pressure is negative
   */
  public StudStrength pressed(Stress pressure) {
    Objects.requireNonNull(pressure, "pressure");
    return new StudStrength(section, load, pressure, faceBending);
  }

  /**
   * The same stud, bent over its seat by clamped faces that lean.
   *
   * @param angle lean of the faces less what the play in the bore leaves free, 0 or more
   * @param modulus modulus of elasticity of the stud, over 0
   * @param engaged length of the seat, over 0
   * @return the strength
   * @throws holdfast.quantity.InputException if a value is outside its range
   */
  public StudStrength bentByFaces(Angle angle, Stress modulus, Length engaged) {
    Objects.requireNonNull(angle, "angle");
    Objects.requireNonNull(modulus, "modulus");
    Objects.requireNonNull(engaged, "engaged");
    double forced =
        StudBendingKernel.forcedBending(
            angle.radian(), modulus.megapascal(), section.diameter().mm(), engaged.mm());
    return new StudStrength(section, load, fitPressure, new Stress(forced));
  }

  /**
   * Allowable stress of bending plus preload in one catalogue, for its own case-hardened studs.
   *
   * @param duty how the load changes
   * @return 1372, 784 or 392 MPa
   */
  public static Stress catalogueAllowable(StudDuty duty) {
    Objects.requireNonNull(duty, "duty");
    Table table = TableSet.bundled().table("contact/needle-catalogue/2300E/stud-allowable-stresses");
    return new Stress(table.number(table.find("duty", duty.label()), "allowable"));
  }

  /**
   * Nominal bending stress at the seat mouth, on the net section of a cross hole.
   *
   * @return σb
   */
  @Override
  public Stress bending() {
    double moment = StudBendingKernel.moment(load.radial().base(), load.width().mm(), load.gap().mm());
    return new Stress(
        moment / StudSectionKernel.netModulus(section.diameter().mm(), section.bore().mm(), section.crossHole().mm()));
  }

  /**
   * Axial stress of the preload.
   *
   * @return σa
   */
  @Override
  public Stress axial() {
    return new Stress(
        StudBendingKernel.axialStress(load.preload().base(), section.diameter().mm(), section.bore().mm()));
  }

  /**
   * Torsional stress of the held torque.
   *
   * @return τt
   */
  public Stress torsion() {
    return new Stress(
        StudBendingKernel.torsionStress(load.heldTorque().base(), section.diameter().mm(), section.bore().mm()));
  }

  /**
   * Largest shear stress of the radial load, on the neutral axis.
   *
   * @return τ
   */
  public Stress shear() {
    return new Stress(
        StudBendingKernel.shearStress(load.radial().base(), section.diameter().mm(), section.bore().mm()));
  }

  /** Preload and what leaning faces force. */
  @Override
  public Stress resting() {
    return axial().plus(faceBending);
  }

  /**
   * Governing equivalent stress (von Mises), everything acting together: the greatest of tension fibre and neutral axis, at
   * the surface and at the bore.
   *
   * @return σv
   */
  public Stress equivalent() {
    return new Stress(Math.max(atFibre(), Math.max(atAxis(), atBore())));
  }

  private double atFibre() {
    return mouth(tension().megapascal(), torsion().megapascal());
  }

  private double atAxis() {
    return mouth(axial().megapascal(), shear().megapascal() + torsion().megapascal());
  }

  private double mouth(double along, double shear) {
    return StudBendingKernel.atPressedMouth(
        along, shear, fitPressure.megapascal(), section.diameter().mm(), section.bore().mm());
  }

  /** Bending and torsion grow with the radius; the shear of the load is taken as even through the wall. */
  private double atBore() {
    double m = section.bore().mm() / section.diameter().mm();
    double bent = axial().megapascal() + m * (bending().megapascal() + faceBending.megapascal());
    double twisted = m * torsion().megapascal();
    return Math.max(bore(bent, twisted), bore(axial().megapascal(), shear().megapascal() + twisted));
  }

  private double bore(double along, double shear) {
    return StudBendingKernel.atPressedBore(
        along, shear, fitPressure.megapascal(), section.diameter().mm(), section.bore().mm());
  }

  /**
   * Elastic peak at a small cross hole whose mouth lies in the fibre in tension, at the mouth of the seat.
   *
   * @return 3σz - σθ, σz on the full section; far above the nominal stress, and felt by fatigue
   */
  public Stress crossHolePeak() {
    ShankSection full = ShankSection.drilled(section.diameter(), section.bore());
    double along = new StudStrength(full, load, fitPressure, faceBending).tension().megapascal();
    return new Stress(
        StudBendingKernel.holePeak(along, fitPressure.megapascal(), section.diameter().mm(), section.bore().mm()));
  }

  /**
   * Allowable over bending plus preload.
   *
   * @param allowable allowable stress, from the stud's own data
   * @return the margin; below 1 the stud is overloaded
   * @throws holdfast.quantity.InputException if nothing loads the stud
   */
  public double margin(Stress allowable) {
    Objects.requireNonNull(allowable, "allowable");
    return Check.notNegative(allowable.megapascal(), "allowable stress", "MPa", "a limit")
        / Check.positive(tension().megapascal(), "bending plus preload stress", "MPa", "nothing loads the stud");
  }

  /**
   * Radial load at which bending plus preload reaches a limit.
   *
   * @param allowable allowable stress
   * @return the load, 0 if preload and leaning faces alone take it up
   * @throws holdfast.quantity.InputException if the load has no arm
   */
  public Force radialLoadAt(Stress allowable) {
    Objects.requireNonNull(allowable, "allowable");
    double left = allowable.megapascal() - resting().megapascal();
    if (left <= 0) {
      return new Force(0);
    }
    double arm = StudBendingKernel.moment(1, load.width().mm(), load.gap().mm());
    Check.positive(arm, "arm B/2 + g", "mm", "without an arm nothing bends");
    return new Force(
        left * StudSectionKernel.netModulus(section.diameter().mm(), section.bore().mm(), section.crossHole().mm()) / arm);
  }

  /**
   * Fatigue of the stud under this load.
   *
   * @param duty how the radial load changes; the preload rests
   * @param notchFactor fatigue notch factor Kf on the bending stress, 1 or more
   * @param material strengths of the stud
   * @param criterion how mean stress is weighed
   * @return the fatigue margin
   * @throws holdfast.quantity.InputException if the notch factor is below 1 or nothing loads the stud
   */
  public StudFatigue fatigue(
      StudDuty duty, double notchFactor, StudMaterial material, StudFatigueCriterion criterion) {
    return new StudFatigue(this, duty, notchFactor, material, criterion);
  }

  @Override
  public Derivation explain() {
    Derivation.Builder steps = Derivation.of("Stress of the " + section + " under " + load.radial());
    double moment = StudBendingKernel.moment(load.radial().base(), load.width().mm(), load.gap().mm());
    steps.step(
        "M", "bending moment at the seat mouth", "F (B/2 + g)", moment, "N·mm", MOMENT,
        "F = " + load.radial(), "B = " + load.width(), "g = " + load.gap());
    double hole = section.crossHole().mm();
    steps.step(
        "W", "section modulus", hole > 0 ? "2/d (π (d⁴ - di⁴)/64 - dh (d³ - di³)/12)" : "π d³ (1 - (di/d)⁴)/32",
        StudSectionKernel.netModulus(section.diameter().mm(), section.bore().mm(), hole), "mm³",
        SourceRef.derived("area moment of the section"), section.toString());
    steps.step("σb", "bending stress", "M/W", bending().megapascal(), "MPa", FLEXURE);
    steps.step(
        "σa", "axial stress of the preload", "FV/A", axial().megapascal(), "MPa", SourceRef.derived("force over area"),
        "FV = " + load.preload());
    steps.step(
        "τt", "torsional stress of the held torque", "T/(2W)", torsion().megapascal(), "MPa", FLEXURE,
        "T = " + load.heldTorque());
    steps.step(
        "τ", "shear stress on the neutral axis", "4/3 (d² + d di + di²)/(d² + di²) F/A", shear().megapascal(), "MPa",
        SourceRef.derived("first moment of the half ring over the width of both walls"));
    steps.step(
        "σf", "bending stress that leaning faces force", "E d φ/(2 L)", faceBending.megapascal(), "MPa",
        SourceRef.derived("a stud bent to an arc over its seat"));
    String p = "p = " + fitPressure;
    String lame = "von Mises of (σz, -p, -p (1 + Q²)/(1 - Q²)) and τ";
    steps.step(
        "σv1", "equivalent stress in the tension fibre, surface", lame + ", σz = σb + σf + σa, τ = τt", atFibre(), "MPa",
        MISES, p);
    steps.step(
        "σv2", "equivalent stress on the neutral axis, surface", lame + ", σz = σa, τ = τ + τt", atAxis(), "MPa", MISES, p);
    steps.step(
        "σv3", "equivalent stress at the bore or on the axis",
        section.bore().mm() > 0 ? "von Mises of (σz, 0, -2 p/(1 - Q²)) and τ" : "von Mises of (σz, -p, -p) and τ", atBore(),
        "MPa", MISES, p);
    steps.step(
        "σv", "greatest equivalent stress (von Mises)", "max(σv1, σv2, σv3)", equivalent().megapascal(), "MPa", MISES);
    return steps.build();
  }

  @Override
  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>();
    Length diameter = section.diameter();
    double arm = load.width().mm() / 2 + load.gap().mm();
    if (arm < diameter.mm()) {
      warnings.add(
          new Warning(
              "short-stud",
              Message.of("the arm of ", new Length(Numbers.rounded(arm, 4)), " is shorter than the stud diameter ", diameter,
                  ": beam theory is rough here and the load may move inwards as the stud bends"),
              SourceRef.published("Cam followers catalogue 2008", "technical section, tests of stud strength")));
    }
    if (section.crossHole().mm() > 0) {
      warnings.add(
          new Warning(
              "cross-hole",
              Message.of("the cross hole in the fibre in tension raises the local stress up to ", crossHolePeak(),
                  " (elastic, 3σz - σθ): turn it out of the load zone"),
              KIRSCH));
    }
    return List.copyOf(warnings);
  }

  /** For example {@code stud 16 mm: bending 210 MPa, with preload 308 MPa, equivalent 312 MPa}. */
  @Override
  public String toString() {
    return section + ": bending " + bending() + ", with preload " + tension() + ", equivalent " + equivalent();
  }
}

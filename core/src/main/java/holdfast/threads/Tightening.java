// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.Check;
import holdfast.quantity.Force;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import holdfast.quantity.Torque;
import holdfast.tables.SourceRef;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A nut on a stud, ready to be tightened. Immutable: each of the methods that state something returns a new one.
 *
 * <pre>{@code
 * var nut = Tightening.of(ScrewThread.of("M18x1.5"))
 *     .bore(mm(3)).bearingFace(mm(24), mm(18)).friction(0.10, 0.16);
 * nut.preload(Nm(60));
 * nut.torque(kN(20));
 * }</pre>
 *
 * @param thread thread of stud and nut
 * @param bore axial bore of the stud, 0 for a solid one, less than the root diameter
 * @param face ring on which the nut turns; null if it has not been stated and is not in the standard tables
 * @param friction friction in thread and under the face; null if it has not been stated
 * @param prevailing prevailing torque of a locking nut, 0 for a free-running one
 * @param narrows sections of the stud besides the thread where it could yield first, as stated; the stud's bore runs
 *     through all of them, see {@link #sections()}
 * @param torsion how torsion is spread over the section
 */
public record Tightening(
    ScrewThread thread,
    Length bore,
    BearingFace face,
    Friction friction,
    Torque prevailing,
    List<StudSection> narrows,
    TorsionModel torsion)
    implements Serializable {

  /** A stud bored to more than this part of its root diameter draws a warning. */
  public static final double WIDE_BORE = 0.7;

  // Refuses a bore that leaves no thread or section, a face whose hole the stud would not pass, a negative torque.
  public Tightening {
    Objects.requireNonNull(thread, "thread");
    Objects.requireNonNull(bore, "bore");
    Objects.requireNonNull(prevailing, "prevailing");
    Objects.requireNonNull(narrows, "narrows");
    Objects.requireNonNull(torsion, "torsion");
    StudSection.thread(thread, bore);
    Check.notNegative(prevailing.newtonMillimetre(), "prevailing torque MP", "N·mm", "it resists turning");
    narrows = List.copyOf(narrows);
    narrows.forEach(section -> section.inStudOf(bore));
    if (face != null && face.inner().mm() < thread.majorDiameter().mm() * (1 - 1e-9)) {
      throw new InputException(
          "inner diameter of the bearing face DKi",
          face.inner().toString(),
          "at least the major diameter of " + thread.designation() + ", " + thread.majorDiameter(),
          "the stud passes through it; hole, chamfer of the nut or washer bore, the largest");
    }
  }

  /**
   * A solid stud with a free-running nut that bears on the standard face of its thread ({@link Hexagon#standardFace}) until
   * another is stated. The friction is not stated yet.
   *
   * @param thread thread of stud and nut
   * @return the tightening
   */
  public static Tightening of(ScrewThread thread) {
    Objects.requireNonNull(thread, "thread");
    return new Tightening(
        thread,
        new Length(0),
        Hexagon.standardFace(thread).orElse(null),
        null,
        new Torque(0),
        List.of(),
        TorsionModel.PLASTIC);
  }

  /**
   * States an axial bore, for example of a stud drilled for grease.
   *
   * @param diameter diameter di, 0 or more, less than the root diameter of the thread
   * @return a tightening with this bore
   * @throws InputException if the bore leaves no thread
   */
  public Tightening bore(Length diameter) {
    Objects.requireNonNull(diameter, "diameter");
    return new Tightening(thread, diameter, face, friction, prevailing, narrows, torsion);
  }

  /**
   * States the ring on which the nut turns; its mean diameter carries the friction.
   *
   * @param outer outer diameter dW
   * @param inner inner diameter DKi: hole, chamfer or washer bore, the largest; less than dW
   * @return a tightening with this face
   * @throws InputException if the ring is empty
   */
  public Tightening bearingFace(Length outer, Length inner) {
    Objects.requireNonNull(outer, "outer");
    Objects.requireNonNull(inner, "inner");
    return bearingFace(BearingFace.of(outer, inner));
  }

  /**
   * States the ring on which the nut turns.
   *
   * @param ring the ring
   * @return a tightening with this face
   */
  public Tightening bearingFace(BearingFace ring) {
    Objects.requireNonNull(ring, "ring");
    return new Tightening(thread, bore, ring, friction, prevailing, narrows, torsion);
  }

  /**
   * States a friction band for thread and face alike.
   *
   * @param low least coefficient, over 0; a warning outside 0.03 to 0.5
   * @param high greatest coefficient, at least the least
   * @return a tightening with this friction
   * @throws InputException if the band is not over 0
   */
  public Tightening friction(double low, double high) {
    return friction(Friction.of(low, high));
  }

  /**
   * States friction bands for thread and face apart.
   *
   * @param bands the friction
   * @return a tightening with this friction
   */
  public Tightening friction(Friction bands) {
    Objects.requireNonNull(bands, "bands");
    return new Tightening(thread, bore, face, bands, prevailing, narrows, torsion);
  }

  /**
   * States the prevailing torque of a locking nut: it twists the stud and makes no preload.
   *
   * @param torque MP, 0 or more
   * @return a tightening with this prevailing torque
   * @throws InputException if it is negative
   */
  public Tightening prevailing(Torque torque) {
    Objects.requireNonNull(torque, "torque");
    return new Tightening(thread, bore, face, friction, torque, narrows, torsion);
  }

  /**
   * Adds a groove or reduced shank between nut and shoulder. The stud's bore runs through it.
   *
   * @param diameter diameter of the material left, over the bore
   * @return a tightening with this section
   * @throws InputException if nothing is left
   */
  public Tightening groove(Length diameter) {
    return narrow(new StudSection("groove", diameter, new Length(0), new Length(0)));
  }

  /**
   * Adds a radial hole between nut and shoulder, for example of a lubrication channel. The stud's bore runs through it.
   *
   * @param diameter diameter of the stud there, over the bore
   * @param hole diameter of the cross hole, less than that of the stud
   * @return a tightening with this section
   * @throws InputException if nothing is left
   */
  public Tightening crossHole(Length diameter, Length hole) {
    Objects.requireNonNull(hole, "hole");
    return narrow(new StudSection("cross hole", diameter, new Length(0), hole));
  }

  /**
   * Adds any section.
   *
   * @param section a section between nut and shoulder
   * @return a tightening with this section
   */
  public Tightening narrow(StudSection section) {
    Objects.requireNonNull(section, "section");
    List<StudSection> more = new ArrayList<>(narrows);
    more.add(section);
    return new Tightening(thread, bore, face, friction, prevailing, more, torsion);
  }

  /**
   * States how torsion is spread over the section.
   *
   * @param model elastic or fully plastic (the default)
   * @return a tightening with this model
   */
  public Tightening torsion(TorsionModel model) {
    Objects.requireNonNull(model, "model");
    return new Tightening(thread, bore, face, friction, prevailing, narrows, model);
  }

  /**
   * The sections that are checked: the thread first. The stud's bore counts in each, whether it was stated before the
   * section or after; a section with a greater bore of its own keeps that.
   *
   * @return at least one section
   */
  public List<StudSection> sections() {
    List<StudSection> all = new ArrayList<>();
    all.add(StudSection.thread(thread, bore));
    narrows.forEach(section -> all.add(section.inStudOf(bore)));
    return List.copyOf(all);
  }

  /**
   * The preload that a torque makes.
   *
   * @param torque tightening torque MA, at least the prevailing torque
   * @return the preload from least (high friction) to greatest (low friction), with stresses and shares
   * @throws InputException if the torque is out of range, or face or friction have not been stated
   */
  public PreloadBand preload(Torque torque) {
    Objects.requireNonNull(torque, "torque");
    Friction f = statedFriction();
    return new PreloadBand(
        this,
        torque,
        null,
        new TighteningState(this, f.threadHigh(), f.faceHigh(), preloadAt(torque, f.threadHigh(), f.faceHigh())),
        new TighteningState(this, f.threadLow(), f.faceLow(), preloadAt(torque, f.threadLow(), f.faceLow())));
  }

  /**
   * The torque that a preload needs.
   *
   * @param preload preload FM, 0 or more
   * @return the torque from least (low friction) to greatest (high friction), with stresses and shares
   * @throws InputException if the preload is negative, or face or friction have not been stated
   */
  public TorqueBand torque(Force preload) {
    Friction f = statedFriction();
    return new TorqueBand(
        this,
        preload,
        new TighteningState(this, f.threadLow(), f.faceLow(), preload),
        new TighteningState(this, f.threadHigh(), f.faceHigh(), preload));
  }

  /**
   * The torques at which a required preload is always reached and the stud never overloaded.
   *
   * @param required clamp force that must remain, 0 or more
   * @param strength strength class of the stud
   * @param scatter the tool
   * @return the window with the usual rules: 90 % of the yield stress
   */
  public TorqueWindow window(Force required, PropertyClass strength, Scatter scatter) {
    Objects.requireNonNull(required, "required");
    Objects.requireNonNull(strength, "strength");
    Objects.requireNonNull(scatter, "scatter");
    return TorqueWindow.of(this, JointDemand.ofClamp(required), strength, scatter, WindowRules.usual());
  }

  /**
   * The torques at which a joint stays closed and nothing is overloaded.
   *
   * @param demand what the joint asks
   * @param strength strength class of the stud
   * @param scatter the tool
   * @param rules what limits the torque from above
   * @return the window, open or empty
   */
  public TorqueWindow window(JointDemand demand, PropertyClass strength, Scatter scatter, WindowRules rules) {
    Objects.requireNonNull(demand, "demand");
    Objects.requireNonNull(strength, "strength");
    Objects.requireNonNull(scatter, "scatter");
    Objects.requireNonNull(rules, "rules");
    return TorqueWindow.of(this, demand, strength, scatter, rules);
  }

  /**
   * The preload that a torque makes, refused if the stud would break, with a warning if it would yield.
   *
   * @param torque tightening torque MA, at least the prevailing torque
   * @param strength strength class of the stud
   * @return the preload band; {@link PreloadBand#utilisation} says how much of the yield stress is used
   * @throws InputException if the equivalent stress would reach the tensile strength somewhere in the band
   */
  public PreloadBand preload(Torque torque, PropertyClass strength) {
    Objects.requireNonNull(torque, "torque");
    Objects.requireNonNull(strength, "strength");
    PreloadBand band = preload(torque);
    double breaking = strength.tensileStrength(thread).megapascal();
    if (band.greatestStress().megapascal() >= breaking) {
      WindowRules none = WindowRules.usual().utilisation(1);
      PropertyClass ultimate =
          PropertyClass.ofMaterial(strength.name(), strength.tensileStrength(thread), strength.tensileStrength(thread));
      Torque limit = window(JointDemand.ofClamp(new Force(0)), ultimate, Scatter.of(0), none).highest();
      throw new InputException(
          "tightening torque MA",
          torque.toString(),
          "below " + limit,
          "at the low-friction end the stud of class " + strength + " breaks (Rm " + strength.tensileStrength(thread) + ")");
    }
    return new PreloadBand(this, torque, strength, band.least(), band.greatest());
  }

  /**
   * The preload at which tightening uses a part of the yield stress: the assembly preload of the printed tables.
   *
   * @param strength strength class of the stud
   * @param utilisation part ν of the yield stress (dimensionless), over 0 up to 1
   * @return the states at low and high friction, each at its own assembly preload in the governing section
   */
  public AssemblyPreload assemblyPreload(PropertyClass strength, double utilisation) {
    Objects.requireNonNull(strength, "strength");
    return AssemblyPreload.of(this, strength, utilisation);
  }

  Force preloadAt(Torque torque, double threadFriction, double faceFriction) {
    return new Force(
        TighteningKernel.preload(
            torque.newtonMillimetre(),
            thread.pitchDiameter().mm(),
            thread.lead().mm(),
            threadFriction,
            statedFace().frictionDiameter().mm(),
            faceFriction,
            prevailing.newtonMillimetre()));
  }

  Torque torqueAt(Force preload, double threadFriction, double faceFriction) {
    return new Torque(
        TighteningKernel.torque(
            preload.newton(),
            thread.pitchDiameter().mm(),
            thread.lead().mm(),
            threadFriction,
            statedFace().frictionDiameter().mm(),
            faceFriction,
            prevailing.newtonMillimetre()));
  }

  BearingFace statedFace() {
    if (face == null) {
      throw new InputException(
          "bearing face", "not stated", "stated with bearingFace(outer, inner)", "the tables have no hexagon for " + thread);
    }
    return face;
  }

  Friction statedFriction() {
    if (friction == null) {
      throw new InputException(
          "friction", "not stated", "stated with friction(low, high)", "torque says nothing about preload without friction");
    }
    return friction;
  }

  List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>(thread.warnings());
    if (friction != null) {
      warnings.addAll(friction.warnings());
    }
    double root = thread.rootDiameter().mm();
    if (bore.mm() > WIDE_BORE * root) {
      warnings.add(
          new Warning(
              "thin-walled-thread",
              "the bore of " + bore + " leaves a wall of " + Numbers.significant(0.5 * (root - bore.mm()), 3)
                  + " mm under the thread: it may give way before the stress in the section says so",
              SourceRef.commonPractice("studs are bored to less than " + WIDE_BORE + " of the root diameter")));
    }
    return List.copyOf(warnings);
  }

  /** Stud, face and friction in one line. */
  @Override
  public String toString() {
    return thread
        + (bore.mm() > 0 ? ", bore " + bore : "")
        + (face == null ? "" : ", " + face)
        + (friction == null ? "" : ", " + friction)
        + (prevailing.newtonMillimetre() > 0 ? ", prevailing torque " + prevailing : "");
  }
}

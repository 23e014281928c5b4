// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.Force;
import holdfast.quantity.Stress;
import holdfast.quantity.Torque;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A tightened nut at one pair of friction coefficients: torque and its shares, preload, stresses.
 *
 * @param tightening stud, nut and face
 * @param threadFriction coefficient μG
 * @param faceFriction coefficient μK
 * @param preload preload FM, 0 or more
 */
public record TighteningState(Tightening tightening, double threadFriction, double faceFriction, Force preload)
    implements Traced, Serializable {
  private static final SourceRef TORQUE =
      SourceRef.memory("VDI 2230-1:2015", "tightening torque, exact form; the one behind the printed tables");
  private static final SourceRef STRESS = SourceRef.memory("VDI 2230-1:2015", "assembly preload, equivalent stress");

  // Refuses what the kernels refuse, at once and not when a value is asked for.
  public TighteningState {
    Objects.requireNonNull(tightening, "tightening");
    Objects.requireNonNull(preload, "preload");
    tightening.torqueAt(preload, threadFriction, faceFriction);
  }

  /**
   * The whole tightening torque.
   *
   * @return MA = MG + MP + MK
   */
  public Torque torque() {
    return tightening.torqueAt(preload, threadFriction, faceFriction);
  }

  /**
   * Share that stretches the stud.
   *
   * @return FM·Ph/(2π)
   */
  public Torque pitchTorque() {
    return new Torque(TighteningKernel.pitchTorque(preload.newton(), tightening.thread().lead().mm()));
  }

  /**
   * Share lost to friction in the thread.
   *
   * @return MG − FM·Ph/(2π), without prevailing torque
   */
  public Torque threadFrictionTorque() {
    return new Torque(preload.newton() * threadLever()).minus(pitchTorque());
  }

  /**
   * Share lost to friction under the face.
   *
   * @return MK = FM·μK·DKm/2
   */
  public Torque faceTorque() {
    return new Torque(preload.newton() * faceLever());
  }

  /**
   * Torque that twists the stud and that its seat must hold: pitch, thread friction and prevailing torque.
   *
   * @return MG + MP
   */
  public Torque threadTorque() {
    return new Torque(preload.newton() * threadLever()).plus(tightening.prevailing());
  }

  /**
   * Torque that loosens the nut again at the same friction.
   *
   * @return FM·(d2/2)·tan(ρ' − φ) + MK + MP
   */
  public Torque looseningTorque() {
    return new Torque(preload.newton() * looseningLever()).plus(faceTorque()).plus(tightening.prevailing());
  }

  /**
   * Whether the thread alone holds: the friction angle exceeds the helix angle.
   *
   * @return true if ρ' &gt; φ
   */
  public boolean selfLocking() {
    return looseningLever() > 0;
  }

  /**
   * Nut factor without the prevailing torque.
   *
   * @return K = (MG + MK)/(FM·d)
   */
  public double nutFactor() {
    ScrewThread t = tightening.thread();
    return TighteningKernel.nutFactor(
        t.majorDiameter().mm(),
        t.pitchDiameter().mm(),
        t.lead().mm(),
        threadFriction,
        tightening.statedFace().frictionDiameter().mm(),
        faceFriction);
  }

  /**
   * The section with the greatest equivalent stress.
   *
   * @return the governing section
   */
  public StudSection governingSection() {
    StudSection worst = null;
    for (StudSection section : tightening.sections()) {
      if (worst == null || combinedStress(section).compareTo(combinedStress(worst)) > 0) {
        worst = section;
      }
    }
    return worst;
  }

  /**
   * Tensile stress in the governing section.
   *
   * @return σ = FM/A
   */
  public Stress axialStress() {
    return new Stress(StressKernel.axial(preload.newton(), governingSection().area().mm2()));
  }

  /**
   * Torsion stress in the governing section.
   *
   * @return τ = (MG + MP)/WP
   */
  public Stress torsionStress() {
    return new Stress(
        StressKernel.torsion(
            threadTorque().newtonMillimetre(), governingSection().torsionModulus(tightening.torsion())));
  }

  /**
   * Equivalent stress in the governing section while tightening.
   *
   * @return σred = √(σ² + 3·τ²)
   */
  public Stress combinedStress() {
    return combinedStress(governingSection());
  }

  /**
   * Equivalent stress in a section while tightening.
   *
   * @param section a section of the stud
   * @return σred = √(σ² + 3·τ²)
   */
  public Stress combinedStress(StudSection section) {
    Objects.requireNonNull(section, "section");
    return new Stress(
        StressKernel.combined(
            preload.newton(),
            threadTorque().newtonMillimetre(),
            section.area().mm2(),
            section.torsionModulus(tightening.torsion())));
  }

  /**
   * Equivalent stress in the governing section after half of the torsion has relaxed.
   *
   * @return σred,B with kτ = 0.5
   */
  public Stress stressAfterRelaxation() {
    return new Stress(
        StressKernel.afterRelaxation(axialStress().megapascal(), torsionStress().megapascal(), 0.5));
  }

  /**
   * Mean pressure under the bearing face.
   *
   * @return p = FM/A of the ring
   */
  public Stress facePressure() {
    return preload.over(tightening.statedFace().area());
  }

  /** How torque and equivalent stress follow from the preload; the last step is the equivalent stress. */
  @Override
  public Derivation explain() {
    StudSection section = governingSection();
    return Derivation.of("Tightening of " + tightening)
        .steps(torqueSteps("Torque").build())
        .step("A", "area of the section: " + section, "area without bore and cross hole", section.area().mm2(), "mm²",
            SourceRef.derived("area of a ring, less the strip of a cross hole"))
        .step("σ", "tensile stress", "FM/A", axialStress().megapascal(), "MPa", STRESS, "FM = " + preload)
        .step("WP", "torsion modulus", tightening.torsion().toString(), section.torsionModulus(tightening.torsion()), "mm³",
            STRESS)
        .step("τ", "torsion stress", "(MG + MP)/WP", torsionStress().megapascal(), "MPa", STRESS,
            "MG + MP = " + threadTorque())
        .step("σred", "equivalent stress", "√(σ² + 3·τ²)", combinedStress().megapascal(), "MPa", STRESS)
        .build();
  }

  /** Steps up to the torque. */
  Derivation.Builder torqueSteps(String title) {
    ScrewThread t = tightening.thread();
    BearingFace ring = tightening.statedFace();
    return Derivation.of(title)
        .step("d2", "pitch diameter", "d − 0.649519·P", t.pitchDiameter().mm(), "mm",
            SourceRef.published("ISO 724:1993", "basic dimensions, as reprinted with DIN 13-1"), "d = " + t.majorDiameter(),
            "P = " + t.pitch())
        .step("MG/FM", "lever of the thread", "(d2/2)·tan(φ + ρ'), tan φ = Ph/(π·d2), tan ρ' = μG/cos 30°", threadLever(), "mm",
            TORQUE, "μG = " + threadFriction, "Ph = " + t.lead())
        .step("MK/FM", "lever of the face", "μK·DKm/2", faceLever(), "mm", TORQUE, "μK = " + faceFriction,
            "DKm = " + ring.frictionDiameter())
        .step("MA", "tightening torque", "FM·(MG/FM + MK/FM) + MP", torque().newtonMillimetre(), "N·mm", TORQUE,
            "FM = " + preload, "MP = " + tightening.prevailing());
  }

  @Override
  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>(tightening.warnings());
    if (!selfLocking()) {
      warnings.add(
          new Warning(
              "thread-not-self-locking",
              "with μG = " + threadFriction + " the thread does not hold by itself",
              SourceRef.memory("VDI 2230-1:2015", "loosening torque")));
    }
    return List.copyOf(warnings);
  }

  double threadLever() {
    ScrewThread t = tightening.thread();
    return TighteningKernel.threadLever(t.pitchDiameter().mm(), t.lead().mm(), threadFriction);
  }

  double faceLever() {
    return TighteningKernel.faceLever(tightening.statedFace().frictionDiameter().mm(), faceFriction);
  }

  private double looseningLever() {
    ScrewThread t = tightening.thread();
    return TighteningKernel.looseningLever(t.pitchDiameter().mm(), t.lead().mm(), threadFriction);
  }

  /** Torque, preload and stress in one line. */
  @Override
  public String toString() {
    return torque() + " → " + preload + ", σred " + combinedStress();
  }
}

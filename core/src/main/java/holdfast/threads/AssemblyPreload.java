// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.Check;
import holdfast.quantity.Force;
import holdfast.quantity.Torque;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * The preload and torque at which tightening uses a part of the yield stress, at both ends of the friction band.
 *
 * @param tightening stud, nut and face
 * @param strength strength class of the stud
 * @param utilisation share ν of the yield stress
 * @param lowFriction state at low friction
 * @param highFriction state at high friction
 */
public record AssemblyPreload(
    Tightening tightening,
    PropertyClass strength,
    double utilisation,
    TighteningState lowFriction,
    TighteningState highFriction)
    implements Traced, Serializable {
  public AssemblyPreload {
    Objects.requireNonNull(tightening, "tightening");
    Objects.requireNonNull(strength, "strength");
    Objects.requireNonNull(lowFriction, "lowFriction");
    Objects.requireNonNull(highFriction, "highFriction");
    Check.finite(utilisation, "utilisation ν", "");
  }

  static AssemblyPreload of(Tightening tightening, PropertyClass strength, double utilisation) {
    Check.overUpTo(utilisation, 0, 1, "utilisation ν of the yield stress", "", "a part of the yield stress");
    double stress = utilisation * strength.yieldStress(tightening.thread()).megapascal();
    Friction f = tightening.statedFriction();
    return new AssemblyPreload(
        tightening,
        strength,
        utilisation,
        state(tightening, stress, f.threadLow(), f.faceLow()),
        state(tightening, stress, f.threadHigh(), f.faceHigh()));
  }

  private static TighteningState state(Tightening t, double stress, double threadFriction, double faceFriction) {
    double lever =
        TighteningKernel.threadLever(t.thread().pitchDiameter().mm(), t.thread().lead().mm(), threadFriction);
    double least = Double.POSITIVE_INFINITY;
    for (StudSection section : t.sections()) {
      least =
          Math.min(
              least,
              StressKernel.preloadAt(
                  stress,
                  section.area().mm2(),
                  section.torsionModulus(t.torsion()),
                  lever,
                  t.prevailing().newtonMillimetre()));
    }
    return new TighteningState(t, threadFriction, faceFriction, new Force(least));
  }

  /**
   * Assembly preload at low friction, FM,Tab of that friction.
   *
   * @return the preload
   */
  public Force preload() {
    return lowFriction.preload();
  }

  /**
   * Torque that makes the assembly preload at low friction: more would overload the stud.
   *
   * @return the torque
   */
  public Torque torque() {
    return lowFriction.torque();
  }

  /** How the assembly preload follows; the last step is the preload at low friction. */
  @Override
  public Derivation explain() {
    SourceRef source = SourceRef.memory("VDI 2230-1:2015", "assembly preload FM,Tab, with the exact lever of the thread");
    StudSection s = lowFriction.governingSection();
    return Derivation.of("Assembly preload of " + tightening + ", class " + strength)
        .step("ν·Rp", "equivalent stress", "ν times the yield stress",
            utilisation * strength.yieldStress(tightening.thread()).megapascal(), "MPa", strength.source(tightening.thread()),
            "ν = " + utilisation)
        .step("MG/FM", "lever of the thread", "(d2/2)·tan(φ + ρ')", lowFriction.threadLever(), "mm", source,
            "μG = " + lowFriction.threadFriction())
        .step("A", "area of " + s.name(), "area without bore and cross hole", s.area().mm2(), "mm²",
            SourceRef.derived("area of a ring, less the strip of a cross hole"))
        .step("WP", "torsion modulus", tightening.torsion().toString(), s.torsionModulus(tightening.torsion()), "mm³", source)
        .step("FM", "assembly preload", "ν·Rp·A/√(1 + 3·(A·MG/(FM·WP))²)", preload().newton(), "N", source)
        .build();
  }

  @Override
  public List<Warning> warnings() {
    return lowFriction.warnings();
  }

  /** Preload and torque at low friction. */
  @Override
  public String toString() {
    return tightening.thread() + ", " + strength + ", ν = " + utilisation + ": " + preload() + " at " + torque();
  }
}

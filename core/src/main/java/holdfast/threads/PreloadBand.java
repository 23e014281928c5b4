// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.Force;
import holdfast.quantity.Stress;
import holdfast.quantity.Torque;
import holdfast.tables.Provenance;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;

/**
 * The preload that one torque makes, over the friction band.
 *
 * @param tightening stud, nut and face
 * @param torque the tightening torque
 * @param strength strength class of the stud; null if it was not stated
 * @param least the state at high friction: least preload
 * @param greatest the state at low friction: greatest preload
 */
public record PreloadBand(
    Tightening tightening, Torque torque, PropertyClass strength, TighteningState least, TighteningState greatest)
    implements Traced, Serializable {
  public PreloadBand {
    Objects.requireNonNull(tightening, "tightening");
    Objects.requireNonNull(torque, "torque");
    Objects.requireNonNull(least, "least");
    Objects.requireNonNull(greatest, "greatest");
  }

  /**
   * Least preload, at high friction.
   *
   * @return FM,min
   */
  public Force leastPreload() {
    return least.preload();
  }

  /**
   * Greatest preload, at low friction.
   *
   * @return FM,max
   */
  public Force greatestPreload() {
    return greatest.preload();
  }

  /** How the preload follows; the last step is the least preload. */
  @Override
  public Derivation explain() {
    Derivation.Builder b = Derivation.of("Preload of " + tightening + " at " + torque);
    steps(b, greatest, "FM,max", "preload at low friction");
    steps(b, least, "FM,min", "preload at high friction");
    return b.build();
  }

  private void steps(Derivation.Builder b, TighteningState state, String symbol, String meaning) {
    SourceRef source = SourceRef.memory("VDI 2230-1:2015", "tightening torque, exact form, solved for the preload");
    b.step("MG/FM", "lever of the thread", "(d2/2)·tan(φ + ρ')", state.threadLever(), "mm", source,
            "d2 = " + tightening.thread().pitchDiameter(), "Ph = " + tightening.thread().lead(),
            "μG = " + state.threadFriction())
        .step("MK/FM", "lever of the face", "μK·DKm/2", state.faceLever(), "mm", source,
            "DKm = " + tightening.statedFace().frictionDiameter(), "μK = " + state.faceFriction())
        .step(symbol, meaning, "(MA − MP)/(MG/FM + MK/FM)", state.preload().newton(), "N", source, "MA = " + torque,
            "MP = " + tightening.prevailing());
  }

  @Override
  public List<Warning> warnings() {
    LinkedHashSet<Warning> all = new LinkedHashSet<>(greatest.warnings());
    all.addAll(least.warnings());
    if (strength != null && utilisation(strength) > 1) {
      all.add(
          new Warning(
              "stud-yields",
              "with low friction the stud of class " + strength + " yields: " + greatestStress() + " of "
                  + strength.yieldStress(tightening.thread())
                  + "; preload and stress are those of a stud that stays elastic and no longer hold",
              new SourceRef("VDI 2230-1:2015", "assembly preload, equivalent stress", Provenance.PUBLISHED)));
    }
    return List.copyOf(all);
  }

  /** Torque and band. */
  @Override
  public String toString() {
    return torque + " on " + tightening + ": preload " + leastPreload() + " … " + greatestPreload() + ", σred up to "
        + greatestStress();
  }

  /**
   * Greatest equivalent stress over the band, in the governing section. At a fixed torque it stands at low face friction,
   * and at one end or the other of the thread friction: low friction pulls more, high friction twists more.
   *
   * @return the greater of the two
   */
  public Stress greatestStress() {
    double muG = least.threadFriction();
    double muK = greatest.faceFriction();
    Stress pulled = greatest.combinedStress();
    Stress twisted =
        new TighteningState(tightening, muG, muK, tightening.preloadAt(torque, muG, muK)).combinedStress();
    return pulled.compareTo(twisted) >= 0 ? pulled : twisted;
  }

  /**
   * Part of the yield stress that the greatest equivalent stress uses.
   *
   * @param strength strength class of the stud
   * @return ν; over 1 the stud yields
   */
  public double utilisation(PropertyClass strength) {
    Objects.requireNonNull(strength, "strength");
    return greatestStress().ratio(strength.yieldStress(tightening.thread()));
  }
}

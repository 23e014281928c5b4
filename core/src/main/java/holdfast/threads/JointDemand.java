// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.Check;
import holdfast.quantity.Force;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.quantity.Torque;
import holdfast.tables.Provenance;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Message;
import holdfast.trace.Step;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * What a joint asks of its preload. Immutable: each method that states something returns a new demand.
 *
 * @param clamp clamp force that must remain in the joint
 * @param axialLoad working load FA along the stud, pulling
 * @param loadFactor part Φ of the working load that the stud takes (dimensionless), 0 to 1; 0 is the cautious choice for opening
 * @param momentForce preload at which the contact opens on one side under the working moment
 * @param slipForce clamp force that holds the load across the joint by friction
 * @param reserve factor on all of these for vibration and shock, 1 or more
 * @param embeddingLoss preload lost by embedding
 * @param thermalLoss preload lost with temperature
 * @param thermalGain preload gained with temperature
 * @param grounds how the changes after tightening were found; empty if they were stated as they are
 */
public record JointDemand(
    Force clamp,
    Force axialLoad,
    double loadFactor,
    Force momentForce,
    Force slipForce,
    double reserve,
    Force embeddingLoss,
    Force thermalLoss,
    Force thermalGain,
    List<Step> grounds)
    implements Traced, Serializable {
  private static final Force NONE = new Force(0);
  private static final SourceRef RULE =
      new SourceRef("VDI 2230-1:2015", "required least preload", Provenance.MEMORY);
  private static final SourceRef MOMENT = SourceRef.derived("edge stress of a ring under force and moment");
  private static final SourceRef SLIP = SourceRef.derived("friction holds the load across the joint");
  private static final SourceRef STATED = SourceRef.commonPractice("as stated for this joint");

  // Refuses negative forces, a reserve below 1 and a load factor outside 0 to 1; keeps an unmodifiable copy of the list.
  public JointDemand {
    Objects.requireNonNull(clamp, "clamp");
    Objects.requireNonNull(axialLoad, "axialLoad");
    Objects.requireNonNull(momentForce, "momentForce");
    Objects.requireNonNull(slipForce, "slipForce");
    Objects.requireNonNull(embeddingLoss, "embeddingLoss");
    Objects.requireNonNull(thermalLoss, "thermalLoss");
    Objects.requireNonNull(thermalGain, "thermalGain");
    Objects.requireNonNull(grounds, "grounds");
    grounds = List.copyOf(grounds);
    Check.notNegative(clamp.newton(), "clamp force", "N", "a joint is pressed together");
    Check.notNegative(axialLoad.newton(), "working load FA", "N", "it pulls on the stud");
    Check.within(loadFactor, 0, 1, "load factor Φ", "", "a part of the working load");
    Check.notNegative(momentForce.newton(), "force against the moment", "N", "its size counts");
    Check.notNegative(slipForce.newton(), "force against slip", "N", "its size counts");
    Check.within(reserve, 1, 100, "reserve factor", "", "1 is no reserve");
    Check.notNegative(embeddingLoss.newton(), "embedding loss FZ", "N", "surfaces settle one way");
    Check.notNegative(thermalLoss.newton(), "thermal loss", "N", "a loss is counted positive");
    Check.notNegative(thermalGain.newton(), "thermal gain", "N", "a gain is counted positive");
  }

  /**
   * A clamp force that must remain, without loads and without reserve.
   *
   * @param clamp clamp force, 0 or more
   * @return the demand
   */
  public static JointDemand ofClamp(Force clamp) {
    return new JointDemand(clamp, NONE, 0, NONE, NONE, 1, NONE, NONE, NONE, List.of());
  }

  /**
   * States a working load along the stud.
   *
   * @param load FA, 0 or more
   * @param factor Φ (dimensionless), 0 to 1
   * @return a demand with this load
   */
  public JointDemand axialLoad(Force load, double factor) {
    Objects.requireNonNull(load, "load");
    return new JointDemand(clamp, load, factor, momentForce, slipForce, reserve, embeddingLoss, thermalLoss, thermalGain,
        grounds);
  }

  /**
   * States a moment that tries to open a ring-shaped contact, for example under the shoulder of a stud loaded sideways.
   *
   * @param moment working moment, 0 or more
   * @param outer outer diameter of the contact ring
   * @param inner inner diameter of the contact ring
   * @return a demand that keeps the whole ring in contact
   */
  public JointDemand moment(Torque moment, Length outer, Length inner) {
    Objects.requireNonNull(moment, "moment");
    Objects.requireNonNull(outer, "outer");
    Objects.requireNonNull(inner, "inner");
    Force force = new Force(JointKernel.preloadAgainstMoment(moment.newtonMillimetre(), outer.mm(), inner.mm()));
    return new JointDemand(clamp, axialLoad, loadFactor, force, slipForce, reserve, embeddingLoss, thermalLoss, thermalGain,
        grounds);
  }

  /**
   * States a load across the joint that friction must hold.
   *
   * @param load load across the stud, 0 or more
   * @param friction least friction between the clamped parts, over 0
   * @return a demand that does not slip
   * @throws InputException if a value is outside its range
   */
  public JointDemand slip(Force load, double friction) {
    Objects.requireNonNull(load, "load");
    Check.positive(friction, "friction between the parts μT", "", "friction holds the load");
    return new JointDemand(
        clamp, axialLoad, loadFactor, momentForce, load.dividedBy(friction), reserve, embeddingLoss, thermalLoss, thermalGain,
        grounds);
  }

  /**
   * States a reserve for vibration and shock.
   *
   * @param factor 1 or more (dimensionless)
   * @return a demand with this reserve
   */
  public JointDemand reserve(double factor) {
    return new JointDemand(
        clamp, axialLoad, loadFactor, momentForce, slipForce, factor, embeddingLoss, thermalLoss, thermalGain,
        grounds);
  }

  /**
   * States what the preload loses and gains after tightening.
   *
   * @param embedding loss by embedding, 0 or more
   * @param thermal change with temperature, negative for a loss
   * @return a demand with these changes
   */
  public JointDemand changes(Force embedding, Force thermal) {
    Objects.requireNonNull(embedding, "embedding");
    Objects.requireNonNull(thermal, "thermal");
    Force loss = new Force(Math.max(0, -thermal.newton()));
    Force gain = new Force(Math.max(0, thermal.newton()));
    return new JointDemand(
        clamp, axialLoad, loadFactor, momentForce, slipForce, reserve, embedding, loss, gain, List.of());
  }

  /**
   * States what the preload loses and gains after tightening, and how it was found.
   *
   * @param embedding loss by embedding, 0 or more
   * @param thermal change with temperature, negative for a loss
   * @param how the steps that lead to both, which {@link #explain()} repeats
   * @return a demand with these changes
   */
  public JointDemand changes(Force embedding, Force thermal, Derivation how) {
    Objects.requireNonNull(how, "how");
    JointDemand changed = changes(embedding, thermal);
    return new JointDemand(clamp, axialLoad, loadFactor, momentForce, slipForce, reserve, changed.embeddingLoss,
        changed.thermalLoss, changed.thermalGain, how.steps());
  }

  /**
   * Least preload right after tightening that keeps the joint closed.
   *
   * @return reserve·[max(slip, clamp + moment) + (1 − Φ)·FA] + FZ + thermal loss
   */
  public Force requiredPreload() {
    double held = Math.max(slipForce.newton(), clamp.newton() + momentForce.newton());
    double open = (1 - loadFactor) * axialLoad.newton();
    return new Force(reserve * (held + open) + embeddingLoss.newton() + thermalLoss.newton());
  }

  /**
   * Greatest axial force that comes on the stud on top of the preload.
   *
   * @return Φ·FA + thermal gain
   */
  public Force addedStudLoad() {
    return new Force(loadFactor * axialLoad.newton() + thermalGain.newton());
  }

  /**
   * What the demand is governed by.
   *
   * @return slip or opening
   */
  public String governing() {
    return slipForce.newton() > clamp.newton() + momentForce.newton() ? "slip of the joint" : "opening of the joint";
  }

  /** A step for each input, then how the required preload follows; the last step is the required preload. */
  @Override
  public Derivation explain() {
    Derivation.Builder steps = Derivation.of("Required preload");
    steps
        .step("F0", "clamp force that must remain", "stated", clamp.newton(), "N", STATED)
        .step("FA", "working load along the stud", "stated", axialLoad.newton(), "N", STATED)
        .step("Φ", "part of the working load that the stud takes", "stated", loadFactor, "", STATED)
        .step("S", "reserve for vibration and shock", "stated", reserve, "", STATED)
        .step("FM0", "preload at which the contact opens on one side under the moment", "8 M D/(D² + d²)",
            momentForce.newton(), "N", MOMENT)
        .step("FQ", "clamp force that holds the load across the joint", "Q/μT", slipForce.newton(), "N", SLIP);
    if (grounds.isEmpty()) {
      steps
          .step("FZ", "preload lost by settling", "stated", embeddingLoss.newton(), "N", STATED)
          .step("ΔF", "change of the preload with temperature", "stated", thermalGain.minus(thermalLoss).newton(), "N", STATED);
    }
    grounds.forEach(steps::step);
    return steps
        .step("FK", "clamp force held", "max(FQ, F0 + FM0)",
            Math.max(slipForce.newton(), clamp.newton() + momentForce.newton()), "N", RULE, "FQ = " + slipForce,
            "F0 = " + clamp, "FM0 = " + momentForce)
        .step("FM,req", "required least preload", "S·[FK + (1 − Φ)·FA] + FZ - min(0, ΔF)", requiredPreload().newton(), "N",
            RULE, "S = " + reserve, "Φ = " + loadFactor, "FA = " + axialLoad, "FZ = " + embeddingLoss,
            "ΔF = " + thermalGain.minus(thermalLoss))
        .build();
  }

  @Override
  public List<Warning> warnings() {
    return List.of();
  }

  /**
   * The required preload in words, its force as a quantity.
   *
   * @return the required preload and what governs it
   */
  public Message words() {
    return Message.of("required preload ", requiredPreload(), " against ", governing());
  }

  /** The required preload. */
  @Override
  public String toString() {
    return words().toString();
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.Stress;
import holdfast.quantity.Torque;
import holdfast.tables.Provenance;
import holdfast.tables.SourceRef;
import holdfast.trace.Message;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** Works out the limits of a torque window one by one. */
final class WindowLimits {
  private static final double REMAINING_TORSION = 0.5;
  /** The limit is passed before the nut is tightened at all. */
  private static final Torque NO_TORQUE = new Torque(0);

  private final Tightening nut;
  private final JointDemand demand;
  private final PropertyClass strength;
  private final Scatter scatter;
  private final WindowRules rules;
  private final double d2;
  private final double lead;
  private final double prevailing;
  private final Friction friction;
  private final double face;

  WindowLimits(Tightening nut, JointDemand demand, PropertyClass strength, Scatter scatter, WindowRules rules) {
    this.nut = nut;
    this.demand = demand;
    this.strength = strength;
    this.scatter = scatter;
    this.rules = rules;
    this.d2 = nut.thread().pitchDiameter().mm();
    this.lead = nut.thread().lead().mm();
    this.prevailing = nut.prevailing().newtonMillimetre();
    this.friction = nut.statedFriction();
    this.face = nut.statedFace().frictionDiameter().mm();
  }

  List<WindowLimit> low() {
    double applied =
        TighteningKernel.torque(
            demand.requiredPreload().newton(), d2, lead, friction.threadHigh(), face, friction.faceHigh(), prevailing);
    return List.of(
        new WindowLimit(
            "joint-closed",
            demand.words(),
            new Torque(leastSetting(applied)),
            new SourceRef("VDI 2230-1:2015", "required least preload", Provenance.MEMORY)));
  }

  List<WindowLimit> high() {
    List<WindowLimit> limits = new ArrayList<>();
    double yield = strength.yieldStress(nut.thread()).megapascal();
    double added = demand.addedStudLoad().newton();
    for (StudSection section : nut.sections()) {
      double area = section.area().mm2();
      double modulus = section.torsionModulus(nut.torsion());
      double stress = rules.utilisation() * yield;
      limits.add(
          new WindowLimit(
              "stud-stress",
              Message.of("stress in ", section.name(), " while tightening at ", new Stress(stress), " (ν = ", rules.utilisation(),
                  " of the yield stress)"),
              setting(lever -> StressKernel.preloadAt(stress, area, modulus, lever, prevailing)),
              SourceRef.memory("VDI 2230-1:2015", "assembly preload at ν of the yield stress")));
      if (added > 0) {
        limits.add(
            new WindowLimit(
                "working-stress",
                Message.of("stress in ", section.name(), " in service at the yield stress ", new Stress(yield)),
                setting(
                    lever ->
                        StressKernel.preloadInService(yield, area, modulus, lever, prevailing, added, REMAINING_TORSION)),
                new SourceRef("VDI 2230-1:2015", "working stress, kτ = 0.5", Provenance.MEMORY)));
      }
    }
    if (rules.facePressure() != null) {
      double force = rules.facePressure().megapascal() * nut.statedFace().area().mm2();
      limits.add(
          new WindowLimit(
              "face-pressure",
              Message.of("pressure under the face at ", rules.facePressure()),
              setting(lever -> force - added),
              new SourceRef("VDI 2230-1:2015", "surface pressure", Provenance.MEMORY)));
    }
    if (rules.engagement() != null) {
      double force = rules.engagement().strippingLoad().newton() / rules.strippingSafety();
      limits.add(
          new WindowLimit(
              "stripping",
              Message.of("thread strips at ", rules.engagement().strippingLoad(), ", safety ", rules.strippingSafety()),
              setting(lever -> force - added),
              new SourceRef("ISO/TR 16224:2012", "thread stripping", Provenance.MEMORY)));
    }
    if (rules.greatestPreload() != null) {
      limits.add(
          new WindowLimit(
              "parts",
              Message.of("preload that the parts bear, ", rules.greatestPreload()),
              setting(lever -> rules.greatestPreload().newton() - demand.thermalGain().newton()),
              SourceRef.commonPractice("limit stated by the user")));
    }
    if (rules.makersMaximum() != null) {
      limits.add(
          new WindowLimit(
              "makers-maximum",
              Message.of("greatest torque that the maker allows, ", rules.makersMaximum()),
              new Torque(greatestSetting(rules.makersMaximum().newtonMillimetre())),
              SourceRef.commonPractice("maker's limit stated by the user")));
    }
    return limits;
  }

  /**
   * The set torque at which the preload limit is reached. At low face friction and either end of the thread friction: low
   * friction pulls more, high friction twists more. No torque at all where the limit is passed without any preload.
   */
  private Torque setting(DoubleUnaryOperator preloadOfLever) {
    double least = Double.POSITIVE_INFINITY;
    for (double mu : new double[] {friction.threadLow(), friction.threadHigh()}) {
      double lever = TighteningKernel.threadLever(d2, lead, mu);
      double preload = preloadOfLever.applyAsDouble(lever);
      if (preload <= 0) {
        return NO_TORQUE;
      }
      double applied = TighteningKernel.torque(preload, d2, lead, mu, face, friction.faceLow(), prevailing);
      least = Math.min(least, applied);
    }
    return new Torque(greatestSetting(least));
  }

  /** Least setting whose low end reaches the torque. */
  private double leastSetting(double applied) {
    return applied / (1 - scatter.deviation());
  }

  /** Greatest setting whose high end does not pass the torque. */
  private double greatestSetting(double applied) {
    return applied / (1 + scatter.deviation());
  }
}

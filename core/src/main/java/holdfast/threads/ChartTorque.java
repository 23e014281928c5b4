// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.Force;
import holdfast.quantity.Length;
import holdfast.quantity.Stress;
import holdfast.quantity.Torque;
import holdfast.tables.SourceRef;
import holdfast.trace.Derivation;
import holdfast.trace.Message;
import holdfast.trace.Traced;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A torque from a chart or a maker's sheet, read backwards: which preload and stress it implies when the thread is oiled
 * and as delivered, how it compares with a general chart for a strength class, and whether it is right for the stud.
 *
 * @param nut stud, nut and face; its friction is not used
 * @param torque the stated torque
 */
public record ChartTorque(Tightening nut, Torque torque) implements Traced, Serializable {
  /** Nut factor of the usual inch charts for lubricated threads. */
  public static final double K_OILED = 0.15;
  /** Nut factor of the usual inch charts for plain dry threads. */
  public static final double K_DRY = 0.20;
  /** Part of the proof load that the usual inch charts aim at. */
  public static final double CHART_PART = 0.75;

  private static final SourceRef CHART =
      SourceRef.published("Tie rod manual HDAS-P-04 torque table", "T = K·d·F, F = 75 % of the proof load");

  // Refuses at once what the kernels refuse.
  public ChartTorque {
    Objects.requireNonNull(nut, "nut");
    Objects.requireNonNull(torque, "torque");
    nut.friction(FrictionClass.B.friction()).preload(torque);
  }

  /**
   * A torque on a solid stud with the standard face of its thread; where the tables have none, a face of 1.5·d over the
   * thread diameter.
   *
   * @param thread thread of the stud
   * @param torque the stated torque, over 0
   * @return the chart torque
   */
  public static ChartTorque of(ScrewThread thread, Torque torque) {
    Objects.requireNonNull(thread, "thread");
    Tightening nut = Tightening.of(thread);
    if (nut.face() == null) {
      Length d = thread.majorDiameter();
      nut = nut.bearingFace(d.times(1.5), d);
    }
    return new ChartTorque(nut, torque);
  }

  /**
   * Preload and stresses with an oiled thread and face, friction class B.
   *
   * @return the band
   */
  public PreloadBand oiled() {
    return nut.friction(FrictionClass.B.friction()).preload(torque);
  }

  /**
   * Preload and stresses with a thread and face as delivered, lightly oiled or with dry zinc, friction class C.
   *
   * @return the band
   */
  public PreloadBand asDelivered() {
    return nut.friction(FrictionClass.C.friction()).preload(torque);
  }

  /**
   * Preload by the nut factor of the usual charts. A prevailing torque pulls nothing and is taken off first.
   *
   * @param nutFactor K (dimensionless), over 0
   * @return (T − MP)/(K·d)
   */
  public Force preloadBy(double nutFactor) {
    return new Force(
        ScatterKernel.preloadByNutFactor(
            pullingTorque().newtonMillimetre(), nutFactor, nut.thread().majorDiameter().mm()));
  }

  /** What is left of the torque to tighten the stud. */
  Torque pullingTorque() {
    return torque.minus(nut.prevailing());
  }

  /**
   * Tensile stress in the stud by the nut factor of the usual charts, with the stud's bore.
   *
   * @param nutFactor K (dimensionless), over 0
   * @return stress in the thread
   */
  public Stress stressBy(double nutFactor) {
    return preloadBy(nutFactor).over(nut.sections().get(0).area());
  }

  /**
   * Torque of a general chart for a solid bolt of the same thread with a free-running nut.
   *
   * @param propertyClass strength class with a proof stress
   * @param nutFactor K (dimensionless), over 0
   * @return K·d·0.75·proof load
   */
  public Torque generalChart(PropertyClass propertyClass, double nutFactor) {
    Objects.requireNonNull(propertyClass, "propertyClass");
    double load = CHART_PART * propertyClass.proofLoad(nut.thread()).force().newton();
    return new Torque(ScatterKernel.torqueByNutFactor(load, nutFactor, nut.thread().majorDiameter().mm()));
  }

  /**
   * The stated torque, less the prevailing torque, over that of a general chart.
   *
   * @param propertyClass strength class with a proof stress
   * @param nutFactor K (dimensionless), over 0
   * @return below 1 where the general chart would overtighten the stud
   */
  public double shareOfGeneralChart(PropertyClass propertyClass, double nutFactor) {
    Objects.requireNonNull(propertyClass, "propertyClass");
    return pullingTorque().ratio(generalChart(propertyClass, nutFactor));
  }

  /**
   * Whether the torque is right for this stud, with its bore and strength.
   *
   * @param strength strength class of the stud
   * @return the verdict
   * @throws holdfast.quantity.InputException if the class does not cover the size
   */
  public ChartVerdict verdict(PropertyClass strength) {
    Objects.requireNonNull(strength, "strength");
    return new ChartVerdict(this, strength);
  }

  /** How the band follows; the last step is the least preload of the oiled thread. */
  @Override
  public Derivation explain() {
    return Derivation.of("What " + torque + " on " + nut.thread() + " implies")
        .step("F(0.20)", "preload by the chart's dry nut factor", "(T − MP)/(K·d)", preloadBy(K_DRY).newton(), "N", CHART,
            "K = 0.20", "MP = " + nut.prevailing())
        .step("F(0.15)", "preload by the chart's oiled nut factor", "(T − MP)/(K·d)", preloadBy(K_OILED).newton(), "N", CHART,
            "K = 0.15")
        .steps(asDelivered().explain())
        .steps(oiled().explain())
        .build();
  }

  @Override
  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>(oiled().warnings());
    warnings.add(
        new Warning(
            "chart-condition",
            Message.of("a chart torque says little without its lubrication: the preload spans ",
                asDelivered().leastPreload(), " … ",
                oiled().greatestPreload()),
            SourceRef.published("VDI 2230 friction class sheet", "friction classes B and C")));
    return warnings;
  }

  /** Both bands. */
  @Override
  public String toString() {
    return torque + " on " + nut.thread() + ": oiled " + oiled().leastPreload() + " … " + oiled().greatestPreload()
        + ", as delivered "
        + asDelivered().leastPreload() + " … " + asDelivered().greatestPreload();
  }
}

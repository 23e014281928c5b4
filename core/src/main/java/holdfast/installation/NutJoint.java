// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.quantity.Force;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.quantity.Stress;
import holdfast.quantity.TemperatureDifference;
import holdfast.quantity.ThermalExpansion;
import holdfast.quantity.Torque;
import holdfast.seats.Material;
import holdfast.tables.SourceRef;
import holdfast.threads.Embedding;
import holdfast.threads.Joint;
import holdfast.threads.JointDemand;
import holdfast.threads.PropertyClass;
import holdfast.threads.Scatter;
import holdfast.threads.ScrewThread;
import holdfast.threads.StudSection;
import holdfast.threads.ThreadEngagement;
import holdfast.threads.Tightening;
import holdfast.threads.TorqueWindow;
import holdfast.threads.WindowRules;
import holdfast.trace.Derivation;
import java.util.Optional;

/** The nut, the flange and the member between them: what the preload must do and may do. */
final class NutJoint {
  private static final SourceRef SETTLING = SourceRef.memory("VDI 2230-1:2015", "Table 5");
  private static final SourceRef LOSS = SourceRef.memory("VDI 2230-1:2015", "embedding");
  private static final SourceRef THERMAL = SourceRef.published("NASA TM-106943", "eq. (10), with one temperature for both");

  private final StudRoller roller;
  private final MachineMember member;
  private final Nut nut;
  private final Duty duty;
  private final Tightening tightening;
  private final Optional<Grip> grip;

  private NutJoint(InstallationPlan plan) {
    this.roller = plan.roller();
    this.member = plan.member();
    this.nut = plan.nut();
    this.duty = plan.duty();
    this.tightening = plan.tightening();
    this.grip = Grip.of(plan);
  }

  /** The bore carries load and moment; the preload outlasts settling and temperature. */
  static TorqueWindow window(InstallationPlan plan) {
    NutJoint joint = new NutJoint(plan);
    return joint.window(joint.changed(joint.bearing(), joint.settling()));
  }

  /** Least set torque at which the flange stays closed all round without the bore, once the second tightening has been done. */
  static Torque faceClosedFrom(InstallationPlan plan) {
    NutJoint joint = new NutJoint(plan);
    StudRoller roller = plan.roller();
    double arm = roller.ringWidth().mm() / 2 + roller.ringGap().mm();
    JointDemand demand =
        joint.bearing().moment(plan.duty().load().times(new Length(arm)), roller.flangeDiameter(), roller.studDiameter());
    return joint.window(joint.changed(demand, new Length(0))).lowest();
  }

  private JointDemand bearing() {
    return JointDemand.ofClamp(new Force(0)).reserve(nut.reserve());
  }

  private TorqueWindow window(JointDemand demand) {
    WindowRules rules = WindowRules.usual();
    if (roller.statedTorque().isPresent()) {
      rules = rules.makersMaximum(roller.statedTorque().get());
    }
    if (nut.statedEngagement().isPresent()) {
      rules = rules.engagement(engagement(), 1);
    }
    return tightening.window(demand, strengthClass(), Scatter.of(nut.wrenchError()), rules);
  }

  /** The stud's thread in the nut; the shear strength of the stud is that of von Mises. */
  private ThreadEngagement engagement() {
    Material material = roller.material();
    Stress strength = material.tensileStrength().or(material::yieldStrength).orElseThrow(this::noStrength);
    return ThreadEngagement.ofNut(
        ScrewThread.of(roller.thread()), nut.engaged(), strength.dividedBy(Math.sqrt(3)), nut.shearStrength());
  }

  private InputException noStrength() {
    return new InputException(
        "material of the stud", roller.material().name(), "one with a stated yield strength", "it limits the torque");
  }

  /** The flange, the member and the nut as a joint: shank and free thread in the grip carry the preload. */
  private Joint joint() {
    StudSection shank = new StudSection("shank", roller.studDiameter(), roller.greaseBore(), new Length(0));
    Length clamped = grip.map(Grip::clamped).orElse(member.seatLength());
    Length plain = grip.map(Grip::shankClamped).orElse(clamped);
    Length threaded = clamped.minus(plain);
    // Material beyond the pressure cone carries nothing, so an endless member counts as far as the cone can reach.
    double reach = nut.faceOuter().mm() + 2 * clamped.mm();
    double outside = Math.min(member.body().shape().equivalentDiameter(roller.studDiameter()), reach);
    Joint.Piece plainPiece = new Joint.Piece(shank, plain);
    Joint joint = Joint.of(tightening, clamped, new Length(outside), roller.studDiameter());
    StudSection core =
        new StudSection("core of the thread", tightening.thread().rootDiameter(), tightening.bore(), new Length(0));
    return (threaded.mm() > 0 ? joint.pieces(plainPiece, new Joint.Piece(core, threaded)) : joint.pieces(plainPiece))
        .moduli(roller.material().elasticModulus(), member.body().material().elasticModulus());
  }

  /** Thread, flange face and nut face settle. */
  private Length settling() {
    return Embedding.amount(member.body().roughness(), false, 2, 0);
  }

  /** What the preload loses and gains after tightening, with the steps that lead there. */
  private JointDemand changed(JointDemand demand, Length settling) {
    Joint joint = joint();
    TemperatureDifference rise = duty.workingTemperature().minus(InstallationPlan.SHOP);
    ThermalExpansion stud = roller.material().thermalExpansion();
    ThermalExpansion parts = member.body().material().thermalExpansion();
    Force lost = joint.embeddingLoss(settling);
    Force thermal = joint.thermalChange(stud, rise, parts, rise);
    Derivation how = Derivation.of("Changes of the preload after tightening")
        .steps(joint.explain())
        .step("fZ", "settling of thread and faces", settling.mm() == 0 ? "made good by the second tightening"
            : "by the roughness Rz of the member", settling.mm() * 1000, "µm", SETTLING, "Rz = " + member.body().roughness())
        .step("FZ", "preload lost by settling", "fZ/(δS + δP)", lost.newton(), "N", LOSS)
        .step("ΔF", "change of the preload with temperature", "lK (αP - αS) ΔT/(δS + δP)", thermal.newton(), "N", THERMAL,
            "αP = " + parts, "αS = " + stud, "ΔT = " + rise)
        .build();
    return demand.changes(lost, thermal, how);
  }

  /** The stud as a strength class of its own: its material states yield and tensile strength. */
  private PropertyClass strengthClass() {
    Material material = roller.material();
    Stress yield = material.yieldStrength().orElseThrow(this::noStrength);
    return PropertyClass.ofMaterial(material.name(), yield, material.tensileStrength().orElse(yield));
  }
}

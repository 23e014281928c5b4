// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.installation;

import static holdfast.quantity.Units.Nm;
import static holdfast.quantity.Units.degC;
import static holdfast.quantity.Units.degF;
import static holdfast.quantity.Units.hours;
import static holdfast.quantity.Units.inLbf;
import static holdfast.quantity.Units.inch;
import static holdfast.quantity.Units.kN;
import static holdfast.quantity.Units.lbf;
import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.mm2PerS;
import static holdfast.quantity.Units.rpm;
import static holdfast.quantity.Units.um;

import holdfast.bearings.ContaminationLevel;
import holdfast.bearings.LoadRatings;
import holdfast.bearings.LoadSpectrum;
import holdfast.bearings.OuterRing;
import holdfast.bearings.Reliability;
import holdfast.bearings.reference.RollerProfile;
import holdfast.contact.ContactSurface;
import holdfast.installation.Duty;
import holdfast.installation.DutyBuilder;
import holdfast.installation.ExampleJobs;
import holdfast.installation.Fork;
import holdfast.installation.InstallationPlan;
import holdfast.installation.MachineMember;
import holdfast.installation.MountingPlan;
import holdfast.installation.Nut;
import holdfast.installation.NutLocking;
import holdfast.installation.Pin;
import holdfast.installation.PinSecuring;
import holdfast.installation.RollerInterior;
import holdfast.installation.StudRoller;
import holdfast.installation.StudRollerBuilder;
import holdfast.installation.Surroundings;
import holdfast.installation.ThreadCondition;
import holdfast.installation.ValueOrigin;
import holdfast.installation.YokePlan;
import holdfast.installation.YokeRoller;
import holdfast.lubrication.HeadForm;
import holdfast.lubrication.Port;
import holdfast.quantity.Length;
import holdfast.quantity.Temperature;
import holdfast.rollers.RollerKind;
import holdfast.rollers.RollerSeries;
import holdfast.seats.FrictionBand;
import holdfast.seats.Material;
import holdfast.seats.OuterPart;
import holdfast.seats.StudDuty;
import java.util.LinkedHashMap;
import java.util.Map;

/** The jobs that a second program computes as well: the bundled ones and six more. All are invented. */
public final class WholeJobs {
  private static final double TOOL = 0.04;

  private WholeJobs() {}

  /**
   * The jobs by the names of their files beside the second program.
   *
   * @return ten jobs
   */
  public static Map<String, MountingPlan> all() {
    Map<String, MountingPlan> jobs = new LinkedHashMap<>(ExampleJobs.all());
    jobs.put("press-fit", ExampleJobs.metricLever().withBore("S6"));
    jobs.put("inch-press-fit", inchPressFit());
    jobs.put("aluminium-hot", aluminium(degC(95)));
    jobs.put("aluminium-cold", aluminium(degC(-15)));
    jobs.put("cast-iron", castIron());
    jobs.put("yoke-pressed-ring", pressedRing());
    return jobs;
  }

  private static RollerInterior inside(int rollers, Length diameter, Length length, Length pitch, Length clearance) {
    return RollerInterior.describe()
        .rollers(rollers, diameter, length, ValueOrigin.STATED)
        .pitchDiameter(pitch, ValueOrigin.STATED)
        .clearance(clearance, ValueOrigin.STATED)
        .profile(RollerProfile.logarithmic(), ValueOrigin.STATED)
        .build();
  }

  private static InstallationPlan inchPressFit() {
    return InstallationPlan.of(
            StudRoller.named("stud roller 1-1/2 in (invented)")
                .size(RollerSeries.INCH_STANDARD_STUD.size(inch("1-1/2")), mm(0))
                .greaseBore(mm(3))
                .material(Material.of("16MnCr5"), um(2))
                .inside(RollerKind.FULL_COMPLEMENT_NEEDLE, false)
                .head(HeadForm.SLOT)
                .ratings(LoadRatings.trackRoller(lbf(2100), lbf(2600), OuterRing.DEFLECTING))
                .temperatures(degF(0), degF(250))
                .trackCapacity(lbf(1900))
                .greatestTorque(inLbf(345))
                .interior(inside(22, mm(2.5), mm(16), mm(21), um(20))))
        .job("guide bracket (invented job, invented roller)")
        .member(
            MachineMember.named("guide bracket")
                .body(OuterPart.ring(Material.of("C45+QT"), inch("2")).withRoughness(um(4)))
                .bore("0/-0.0003 in", inch("3/4"))
                .thickness(inch("13/16"))
                .pressingFriction(FrictionBand.of(0.10, 0.16))
                .faceRunOut(inch("0.0004")))
        .nut(Nut.onFace(inch("0.90"), inch("0.66")).friction(ThreadCondition.OILED, 0.10, 0.16)
            .wrench(inLbf(325), TOOL).reserve(1.2).stack(inch("3/8"), inch("0.156"))
            .locking(NutLocking.LOCK_WASHER))
        .duty(
            Duty.of(lbf(300), rpm(200))
                .life(hours(5000), Reliability.ofPercent(90))
                .staticSafety(1.5)
                .at(degF(140))
                .lubricant(mm2PerS(100), ContaminationLevel.NORMAL_CLEANLINESS)
                .track(ContactSurface.flat(), 40)
                .surroundings(Surroundings.clean().dirt("light, non-abrasive"))
                .loadChange(StudDuty.REPEATED)
                .greaseThrough(Port.HEAD))
        .build();
  }

  private static StudRollerBuilder metricRoller() {
    return StudRoller.named("stud roller 40 x 20 (invented)")
        .ring(mm(40), mm(20), mm(500))
        .flange(mm(32), mm(0.8))
        .stud(mm(18), "h7")
        .lengths(mm(36.5), mm(19))
        .thread("M18x1.5")
        .greaseBore(mm(3))
        .material(Material.of("16MnCr5"), um(2))
        .inside(RollerKind.CAGED_NEEDLE, false)
        .head(HeadForm.SLOT)
        .ratings(LoadRatings.trackRoller(kN(14.2), kN(17.5), OuterRing.DEFLECTING))
        .temperatures(degC(-20), degC(110))
        .trackCapacity(kN(4.2))
        .greatestTorque(Nm(85))
        .interior(inside(16, mm(3.5), mm(12), mm(23), um(20)));
  }

  private static InstallationPlan aluminium(Temperature atWork) {
    return InstallationPlan.of(metricRoller())
        .job("lever of aluminium alloy (invented job, invented roller)")
        .member(
            MachineMember.named("lever")
                .body(OuterPart.ring(Material.of("7075-T6"), mm(60)).withRoughness(um(4)))
                .bore("S7", mm(16))
                .thickness(mm(20))
                .pressingFriction(FrictionBand.of(0.08, 0.16))
                .faceRunOut(um(8)))
        .nut(Nut.onFace(mm(24.8), mm(19)).friction(ThreadCondition.OILED, 0.10, 0.16)
            .wrench(Nm(75), TOOL).reserve(1.2).stack(mm(9), mm(3)))
        .duty(
            Duty.of(kN(1.6), rpm(240))
                .life(hours(10000), Reliability.ofPercent(90))
                .staticSafety(2)
                .at(atWork)
                .lubricant(mm2PerS(120), ContaminationLevel.NORMAL_CLEANLINESS)
                .track(ContactSurface.flat(), 50)
                .surroundings(Surroundings.clean().dirt("light, non-abrasive"))
                .loadChange(StudDuty.REVERSED)
                .greaseThrough(Port.HEAD))
        .build();
  }

  private static InstallationPlan castIron() {
    return InstallationPlan.of(metricRoller())
        .job("eye of grey iron near fracture (invented job, invented roller)")
        .member(
            MachineMember.named("eye of grey iron")
                .body(OuterPart.ring(Material.of("EN-GJL-250"), mm(30)).withRoughness(um(6)))
                .bore("X6", mm(16))
                .thickness(mm(20))
                .pressingFriction(FrictionBand.of(0.08, 0.20))
                .faceRunOut(um(10)))
        .nut(Nut.onFace(mm(24.8), mm(19)).friction(ThreadCondition.OILED, 0.10, 0.16)
            .wrench(Nm(70), 0.06).reserve(1.2).stack(mm(9), mm(3)))
        .duty(
            Duty.of(kN(1.4), rpm(120))
                .life(hours(8000), Reliability.ofPercent(90))
                .staticSafety(2)
                .at(degC(35))
                .lubricant(mm2PerS(220), ContaminationLevel.TYPICAL_CONTAMINATION)
                .track(ContactSurface.flat(), 30)
                .surroundings(Surroundings.clean().dirt("light, abrasive"))
                .loadChange(StudDuty.REPEATED)
                .greaseThrough(Port.HEAD))
        .build();
  }

  private static YokePlan pressedRing() {
    return YokePlan.of(
            YokeRoller.named("yoke roller 52 x 24 (invented)")
                .ring(mm(52), mm(24), mm(500))
                .bore(mm(20), "0/-0.010 mm", mm(25))
                .greaseHoleInRing()
                .inside(RollerKind.CAGED_NEEDLE, false)
                .ratings(LoadRatings.trackRoller(kN(18.5), kN(29), OuterRing.DEFLECTING))
                .temperatures(degC(-20), degC(120))
                .trackCapacity(kN(5.6))
                .interior(inside(24, mm(3), mm(17), mm(28), um(45))))
        .job("fork of ductile iron, inner ring pressed on its pin (invented job, invented roller)")
        .pin(
            Pin.of("m6", Material.of("16MnCr5"))
                .drilled(mm(4), mm(3), false)
                .roughness(um(2))
                .hardness(60)
                .securedBy(PinSecuring.KEEPER_PLATE))
        .fork(
            Fork.named("fork")
                .ears(OuterPart.ring(Material.of("EN-GJS-600-3"), mm(50)).withRoughness(um(4)), mm(14), mm(25.5))
                .bore("K7")
                .pressingFriction(FrictionBand.of(0.08, 0.16)))
        .duty(twoSteps())
        .build();
  }

  private static DutyBuilder twoSteps() {
    return Duty.of(
            LoadSpectrum.builder().step(kN(3.2), rpm(150), 0.7).step(kN(5.1), rpm(100), 0.3).build())
        .life(hours(6000), Reliability.ofPercent(90))
        .staticSafety(2)
        .at(degC(70))
        .lubricant(mm2PerS(95), ContaminationLevel.NORMAL_CLEANLINESS)
        .track(ContactSurface.flat(), 50)
        .surroundings(Surroundings.clean().dirt("light, non-abrasive"))
        .greaseThrough(Port.HEAD);
  }
}

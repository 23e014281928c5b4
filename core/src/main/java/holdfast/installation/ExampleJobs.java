// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import static holdfast.quantity.Units.MPa;
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
import static holdfast.quantity.Units.mmPerS;
import static holdfast.quantity.Units.rpm;
import static holdfast.quantity.Units.um;

import holdfast.bearings.ContaminationLevel;
import holdfast.bearings.LoadRatings;
import holdfast.bearings.LoadSpectrum;
import holdfast.bearings.OuterRing;
import holdfast.bearings.Reliability;
import holdfast.bearings.reference.RollerProfile;
import holdfast.contact.ContactSurface;
import holdfast.fleet.FleetPosition;
import holdfast.lubrication.HeadForm;
import holdfast.lubrication.Port;
import holdfast.rollers.RollerKind;
import holdfast.rollers.RollerSeries;
import holdfast.seats.FrictionBand;
import holdfast.seats.Material;
import holdfast.seats.OuterPart;
import holdfast.seats.StudDuty;
import holdfast.threads.ScrewThread;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The bundled example jobs. Works, jobs, rollers and numbers are invented; boundary dimensions are those of the series. */
public final class ExampleJobs {
  private ExampleJobs() {}

  /**
   * All example jobs by the names under which the executable jar knows them.
   *
   * @return lever, slip-fit, yoke, impossible
   */
  public static Map<String, MountingPlan> all() {
    Map<String, MountingPlan> jobs = new LinkedHashMap<>();
    jobs.put("lever", metricLever());
    jobs.put("slip-fit", inchSlipFit());
    jobs.put("yoke", yokeInFork());
    jobs.put("impossible", impossible());
    return jobs;
  }

  /**
   * A metric roller in a lever of ductile iron.
   *
   * @return the plan
   */
  public static InstallationPlan metricLever() {
    return InstallationPlan.of(metricRoller().trackCapacity(kN(4.2)).studLimit(kN(9)).ringLimits(kN(8.4), kN(13)))
        .job("Larkmere rope walk, line 2, traverse lever (invented job, invented roller)")
        .member(
            MachineMember.named("traverse lever of the layering head")
                .body(OuterPart.ring(Material.of("EN-GJS-600-3"), mm(50)).withRoughness(um(4)))
                .bore("K7", mm(16))
                .thickness(mm(20))
                .pressingFriction(FrictionBand.of(0.08, 0.20))
                .faceRunOut(um(12)))
        .nut(Nut.onFace(mm(24.8), mm(19)).friction(ThreadCondition.OILED, 0.10, 0.16)
            .wrench(Nm(75), 0.04).reserve(1.5).stack(mm(9), mm(3)))
        .duty(
            Duty.of(kN(2.1), rpm(180))
                .life(hours(20000), Reliability.ofPercent(95))
                .staticSafety(2)
                .at(degC(60))
                .lubricant(mm2PerS(150), ContaminationLevel.SLIGHT_CONTAMINATION)
                .track(ContactSurface.flat(), 45)
                .surroundings(Surroundings.clean().dirt(Dust.SEVERE))
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
        .inside(RollerKind.CAGED_NEEDLE, true)
        .head(HeadForm.SLOT)
        .ratings(LoadRatings.trackRoller(kN(14.2), kN(17.5), OuterRing.DEFLECTING))
        .temperatures(degC(-20), degC(110))
        .greatestTorque(Nm(85))
        .interior(
            RollerInterior.describe()
                .rollers(16, mm(3.5), mm(12), ValueOrigin.STATED)
                .pitchDiameter(mm(23), ValueOrigin.STATED)
                .clearance(um(20), ValueOrigin.ESTIMATED)
                .profile(RollerProfile.logarithmic(), ValueOrigin.ESTIMATED)
                .build());
  }

  /**
   * An inch roller slipped into a steel bracket, forty places of it, with a load in three steps.
   *
   * @return the plan
   */
  public static InstallationPlan inchSlipFit() {
    List<FleetPosition> places = new ArrayList<>();
    for (int place = 1; place <= 40; place++) {
      places.add(new FleetPosition("strander " + place, 1500, hours(350 * place)));
    }
    return InstallationPlan.of(
            StudRoller.named("stud roller 1-1/2 in (invented)")
                .size(RollerSeries.INCH_STANDARD_STUD.size(inch("1-1/2")), mm(0))
                .greaseBore(mm(3))
                .material(Material.of("16MnCr5"), um(2))
                .inside(RollerKind.FULL_COMPLEMENT_NEEDLE, true)
                .head(HeadForm.SLOT)
                .ratings(LoadRatings.trackRoller(lbf(2100), lbf(2600), OuterRing.DEFLECTING))
                .temperatures(degF(0), degF(250))
                .trackCapacity(lbf(1900))
                .greatestTorque(inLbf(440)))
        .job("Larkmere rope walk, stranders 1 to 40, guide bracket (invented job, invented roller)")
        .member(
            MachineMember.named("guide bracket")
                .body(OuterPart.ring(Material.of("C45+N"), inch("1-3/4")))
                .bore("+0.0020/+0.0012 in", inch("3/4"))
                .thickness(inch("13/16"))
                .pressingFriction(FrictionBand.general())
                .faceRunOut(inch("0.0004")))
        .nut(Nut.onStandardFace(ScrewThread.of("5/8-18 UNF")).friction(ThreadCondition.OILED, 0.10, 0.16)
            .wrench(inLbf(410), 0.04).reserve(1.2)
            .stack(inch("3/8"), inch("0.156")).locking(NutLocking.LOCK_WASHER))
        .duty(
            Duty.of(
                    LoadSpectrum.builder()
                        .step(lbf(380), rpm(220), 0.6)
                        .step(lbf(450), rpm(180), 0.3)
                        .step(lbf(520), rpm(60), 0.1)
                        .build())
                .life(hours(6000), Reliability.ofPercent(90))
                .staticSafety(1.5)
                .at(degF(130))
                .lubricant(mm2PerS(90), ContaminationLevel.NORMAL_CLEANLINESS)
                .track(ContactSurface.flat(), 40)
                .surroundings(Surroundings.clean().dirt(Dust.LIGHT).vibration(mmPerS(6)))
                .loadChange(StudDuty.REPEATED)
                .greaseThrough(Port.HEAD))
        .fleet(new FleetDuty(places, 0.5, 0.25, 0.95))
        .build();
  }

  /**
   * A yoke roller without cage on a pin that is pressed into a fork of cast steel and greased through its end.
   *
   * @return the plan
   */
  public static YokePlan yokeInFork() {
    return YokePlan.of(
            YokeRoller.named("yoke roller 52 x 24 (invented)")
                .ring(mm(52), mm(24), mm(0))
                .bore(mm(20), "0/-0.010 mm", mm(25))
                .greaseHoleInRing()
                .inside(RollerKind.FULL_COMPLEMENT_NEEDLE, true)
                .ratings(LoadRatings.trackRoller(kN(21), kN(34), OuterRing.RIGID), ValueOrigin.ESTIMATED)
                .temperatures(degC(-20), degC(120))
                .trackCapacity(kN(14))
                .interior(
                    RollerInterior.describe()
                        .rollers(29, mm(3), mm(17), ValueOrigin.ESTIMATED)
                        .pitchDiameter(mm(28), ValueOrigin.ESTIMATED)
                        .clearance(um(30), ValueOrigin.ESTIMATED)
                        .profile(RollerProfile.logarithmic(), ValueOrigin.ESTIMATED)
                        .build()))
        .job("Larkmere rope walk, closing machine, tension fork (invented job, invented roller)")
        .pin(
            Pin.of("h6", Material.of("16MnCr5"))
                .drilled(mm(4), mm(3), false)
                .roughness(um(2))
                .hardness(60)
                .securedBy(PinSecuring.KEEPER_PLATE))
        .fork(
            Fork.named("tension fork")
                .ears(OuterPart.ring(Material.of("C45+N"), mm(46)).withRoughness(um(4)), mm(12), mm(26))
                .bore("N7")
                .pressingFriction(FrictionBand.of(0.08, 0.20))
                .ringClamped())
        .duty(
            Duty.of(kN(4.5), rpm(90))
                .life(hours(8000), Reliability.ofPercent(90))
                .staticSafety(2)
                .at(degC(45))
                .lubricant(mm2PerS(180), ContaminationLevel.NORMAL_CLEANLINESS)
                .track(ContactSurface.flat(), 42)
                .surroundings(Surroundings.clean().dirt(Dust.LIGHT).moisture("occasional condensation"))
                .greaseThrough(Port.HEAD))
        .build();
  }

  /**
   * A job that cannot work: the metric roller under more than twice the load, on a soft track, fed through a port that
   * its seat closes.
   *
   * @return the plan, whose sheet says why not
   */
  public static InstallationPlan impossible() {
    return InstallationPlan.of(metricRoller().trackCapacity(kN(4.2)).studLimit(kN(9)).ringLimits(kN(8.4), kN(13)))
        .job("Larkmere rope walk, line 3, haul-off lever (invented job that cannot work, invented roller)")
        .member(
            MachineMember.named("haul-off lever of grey iron")
                .body(OuterPart.ring(Material.of("EN-GJL-250"), mm(30)).withRoughness(um(10)))
                .bore("U7", mm(16))
                .pressingFriction(FrictionBand.of(0.08, 0.20)))
        .nut(
            Nut.onFace(mm(24.8), mm(19))
                .friction(ThreadCondition.AS_DELIVERED, 0.08, 0.20)
                .wrench(Nm(95), 0.10)
                .reserve(1.5)
                .engaged(mm(6), MPa(90)))
        .duty(
            Duty.of(kN(5.2), rpm(420))
                .life(hours(20000), Reliability.ofPercent(95))
                .staticSafety(3)
                .at(degC(118))
                .lubricant(mm2PerS(18), ContaminationLevel.SEVERE_CONTAMINATION)
                .track(ContactSurface.flat(), 24)
                .greaseThrough(Port.RADIAL))
        .build();
  }
}

package holdfast.installation;

import static holdfast.quantity.Units.Nm;
import static holdfast.quantity.Units.degC;
import static holdfast.quantity.Units.hours;
import static holdfast.quantity.Units.kN;
import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.mm2PerS;
import static holdfast.quantity.Units.rpm;
import static holdfast.quantity.Units.um;

import holdfast.bearings.ContaminationLevel;
import holdfast.bearings.LoadRatings;
import holdfast.bearings.OuterRing;
import holdfast.bearings.Reliability;
import holdfast.contact.ContactSurface;
import holdfast.seats.FrictionBand;
import holdfast.seats.Material;
import holdfast.seats.OuterPart;

/** The bundled example. Works, job, roller and numbers are invented. */
final class ExampleJob {
  private ExampleJob() {}

  static InstallationPlan plan() {
    StudRoller roller =
        StudRoller.named("stud roller 40 x 20, crowned, caged (invented)")
            .ring(mm(40), mm(20), mm(500))
            .flange(mm(32), mm(0.8))
            .stud(mm(18), "h7")
            .thread("M18x1.5")
            .greaseBore(mm(3))
            .material(Material.of("16MnCr5"), um(2))
            .ratings(LoadRatings.trackRoller(kN(14.2), kN(17.5), OuterRing.DEFLECTING))
            .temperatures(degC(-20), degC(110))
            .greatestTorque(Nm(85))
            .build();
    MachineMember lever =
        new MachineMember(
            "traverse lever of the layering head",
            OuterPart.ring(Material.of("EN-GJS-600-3"), mm(50)).withRoughness(um(4)),
            "S6",
            mm(16),
            FrictionBand.of(0.08, 0.20));
    Nut nut = new Nut(mm(24.8), mm(19), 0.10, 0.16, Nm(75), 0.04, 1.5);
    Duty duty = new Duty(
            kN(2.1),
            rpm(180),
            hours(20000),
            Reliability.ofPercent(95),
            2,
            degC(60),
            mm2PerS(150),
            ContaminationLevel.SLIGHT_CONTAMINATION,
            ContactSurface.flat(),
            45);
    return InstallationPlan.of(roller)
        .job("Larkmere rope walk, line 2, traverse lever (invented job, invented roller)")
        .member(lever)
        .nut(nut)
        .duty(duty)
        .build();
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.laws;

import static holdfast.quantity.Units.MPa;
import static holdfast.quantity.Units.N;
import static holdfast.quantity.Units.Nm;
import static holdfast.quantity.Units.deg;
import static holdfast.quantity.Units.degC;
import static holdfast.quantity.Units.hours;
import static holdfast.quantity.Units.kN;
import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.mm2PerS;
import static holdfast.quantity.Units.rpm;
import static holdfast.quantity.Units.um;

import holdfast.bearings.BearingGeometry;
import holdfast.bearings.BearingType;
import holdfast.bearings.Cleanliness;
import holdfast.bearings.Contamination;
import holdfast.bearings.LoadRatings;
import holdfast.bearings.LoadSpectrum;
import holdfast.bearings.LoadedBearing;
import holdfast.bearings.Lubrication;
import holdfast.bearings.Oil;
import holdfast.bearings.RatingLife;
import holdfast.bearings.Reliability;
import holdfast.bearings.reference.BallSet;
import holdfast.bearings.reference.RollerSet;
import holdfast.bearings.reference.TiltedBearing;
import holdfast.contact.ContactPair;
import holdfast.contact.ContactSurface;
import holdfast.fits.Fit;
import holdfast.fits.Gauge;
import holdfast.fits.MeasuredFit;
import holdfast.fits.MeasuredPart;
import holdfast.fits.Readings;
import holdfast.fits.ToleranceClass;
import holdfast.fits.TolerancedSize;
import holdfast.fleet.FleetPlan;
import holdfast.installation.Acceptance;
import holdfast.installation.ExampleJobs;
import holdfast.installation.InstallationPlan;
import holdfast.installation.YokeAcceptance;
import holdfast.installation.YokePlan;
import holdfast.lubrication.Port;
import holdfast.lubrication.PortPlan;
import holdfast.lubrication.PortRequest;
import holdfast.quantity.InputException;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.rollers.RollerSeries;
import holdfast.seats.FrictionBand;
import holdfast.seats.InnerPart;
import holdfast.seats.InterferenceFit;
import holdfast.seats.Material;
import holdfast.seats.OuterPart;
import holdfast.seats.RequiredInterference;
import holdfast.seats.ShankSection;
import holdfast.seats.StudLoad;
import holdfast.seats.StudMaterial;
import holdfast.seats.StudStrength;
import holdfast.tables.TableSet;
import holdfast.threads.Friction;
import holdfast.threads.Joint;
import holdfast.threads.PropertyClass;
import holdfast.threads.Scatter;
import holdfast.threads.ScrewThread;
import holdfast.threads.ThreadEngagement;
import holdfast.threads.ThreadLimits;
import holdfast.threads.Tightening;
import java.util.List;

/** Ordinary objects from which drawn calls make others. */
final class Ordinary {
  private Ordinary() {}

  static List<Object> all() {
    LoadRatings ratings = LoadRatings.radialRoller(kN(14.2), kN(17.5));
    Fit fit = Fit.of(mm(25), "H7/s6");
    ScrewThread thread = ScrewThread.of("M18x1.5");
    Tightening tightening = Tightening.of(thread).bearingFace(mm(24.8), mm(19)).friction(0.1, 0.16);
    Material steel = Material.of("16MnCr5");
    StudLoad load = StudLoad.radial(kN(2), mm(20), mm(1));
    return List.of(
        InstallationPlan.example(), ExampleJobs.yokeInFork(), measured(InstallationPlan.example()), measured(ExampleJobs.yokeInFork()),
        mm(25), mm(40), mm(80), um(5), N(500), kN(2), Nm(60), MPa(350), deg(30), degC(60), rpm(200), hours(5000), mm2PerS(60),
        KnownUnits.MM, KnownUnits.KN,
        ratings, RatingLife.basic(ratings, kN(2.1)), Reliability.ofPercent(95), Oil.isoVg(68, 95),
        Contamination.of(Cleanliness.BATH_15_12), Lubrication.of(mm2PerS(40), rpm(180), mm(30)),
        LoadSpectrum.builder().step(kN(3), rpm(100), 0.2).step(kN(2), rpm(200), 0.8).build(),
        LoadedBearing.of(BearingType.DEEP_GROOVE_BALL, deg(0), LoadRatings.radialBall(kN(14), kN(7))).withF0(14),
        BearingGeometry.balls(BearingType.DEEP_GROOVE_BALL, 1, 9, mm(7.94), mm(39.04), deg(0)),
        RollerSet.of(14, mm(5), mm(10), mm(40)), BallSet.of(9, mm(7.94), mm(38.5)),
        TiltedBearing.of(ratings, RollerSet.of(14, mm(5), mm(10), mm(40))).clearance(um(20)),
        fit, new MeasuredFit(fit, Readings.at20(um(2), mm(25.02)), Readings.at20(um(2), mm(25.0195))), ToleranceClass.of("H7"),
        steel, FrictionBand.of(0.08, 0.2),
        InterferenceFit.of(InnerPart.hollow(steel, mm(3)), OuterPart.ring(Material.of("EN-GJS-600-3"), mm(50)), fit, mm(16)),
        RequiredInterference.of(InnerPart.solid(steel), OuterPart.ring(steel, mm(60)), mm(30), mm(30)),
        load, StudStrength.of(ShankSection.drilled(mm(16), mm(4)), load), new StudMaterial(MPa(350), MPa(900), MPa(700)),
        thread, tightening, Friction.of(0.1, 0.16), PropertyClass.of("8.8"), Scatter.of(0.06), ThreadLimits.of(thread, "6g"),
        ThreadEngagement.ofBlock(thread, mm(16), MPa(500), MPa(300)), Joint.of(tightening, mm(40), mm(60), mm(17.5)),
        tightening.preload(Nm(85)), tightening.window(kN(20), PropertyClass.of("8.8"), Scatter.of(0.06)),
        ContactPair.ofSteel(ContactSurface.crowned(mm(40), mm(500)), ContactSurface.flat()).ellipse(kN(2), mm(20)),
        ContactPair.ofSteel(ContactSurface.cylinder(mm(40)), ContactSurface.flat()).line(kN(2), mm(20)),
        RollerSeries.METRIC.size(mm(35)), PortPlan.of(PortRequest.of(RollerSeries.METRIC.size(mm(35)), Port.HEAD)),
        FleetPlan.ofLike(h -> Math.exp(-h / 9000), 12, 2000),
        TableSet.bundled(), new InputException("a", "b", "c", "d"));
  }

  private static Acceptance measured(InstallationPlan plan) {
    return Acceptance.of(plan, middle(plan.fit().hole()), middle(plan.fit().shaft()), degC(20));
  }

  private static YokeAcceptance measured(YokePlan plan) {
    MeasuredPart ear = middle(plan.earFit().hole());
    return YokeAcceptance.of(plan, ear, ear, middle(plan.earFit().shaft()), middle(plan.rollerFit().hole()), degC(20));
  }

  private static MeasuredPart middle(TolerancedSize drawing) {
    Length size = drawing.limits().lower().plus(drawing.tolerance().times(0.5));
    return MeasuredPart.by(Gauge.of("gauge", um(1))).station(size, size).station(size, size).station(size, size);
  }

  /** Texts that mean something, and some that do not. */
  static List<String> words() {
    return List.of("25 mm", "60 mm²", "2 kN", "50 N·m", "350 MPa", "1.2 mrad", "15 K", "20 °C", "200 rpm", "1.5 m/s", "68 mm²/s",
        "3 kg", "5 J", "100 kN/mm", "12 µm/(m·K)", "5000 h", "25 H7/g6", "N7", "Ft", "40", "8.8", "Machine screws", "H7/h6", "6g");
  }
}

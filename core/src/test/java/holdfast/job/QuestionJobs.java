// SPDX-License-Identifier: Apache-2.0
package holdfast.job;

import static holdfast.quantity.Units.MPa;
import static holdfast.quantity.Units.N;
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
import static holdfast.quantity.Units.mrad;
import static holdfast.quantity.Units.rpm;
import static holdfast.quantity.Units.um;

import holdfast.bearings.ContaminationLevel;
import holdfast.bearings.LoadRatings;
import holdfast.bearings.LoadSpectrum;
import holdfast.bearings.OuterRing;
import holdfast.bearings.Reliability;
import holdfast.contact.ContactSurface;
import holdfast.fleet.FleetPosition;
import holdfast.installation.Duty;
import holdfast.installation.DutyBuilder;
import holdfast.installation.FleetDuty;
import holdfast.installation.InstallationPlan;
import holdfast.installation.MachineMember;
import holdfast.installation.Nut;
import holdfast.installation.StudRoller;
import holdfast.installation.StudRollerBuilder;
import holdfast.installation.Surroundings;
import holdfast.installation.ThreadCondition;
import holdfast.installation.ValueOrigin;
import holdfast.lubrication.HeadForm;
import holdfast.lubrication.Port;
import holdfast.quantity.Force;
import holdfast.quantity.Length;
import holdfast.quantity.Torque;
import holdfast.rollers.RollerKind;
import holdfast.rollers.RollerSeries;
import holdfast.rollers.RollerSize;
import holdfast.seats.FrictionBand;
import holdfast.seats.Material;
import holdfast.seats.OuterPart;
import holdfast.threads.ScrewThread;
import java.util.stream.IntStream;

/** The jobs of the twenty-five questions, by the builders; {@code docs/jobs/questions} holds the same as files. */
final class QuestionJobs {
  /** What differs from question to question; what is left as it is belongs to the roller. */
  private static final class Parts {
    RollerSize size;
    String name;
    RollerKind elements = RollerKind.FULL_COMPLEMENT_NEEDLE;
    boolean seals;
    LoadRatings ratings;
    ValueOrigin origin = ValueOrigin.STATED;
    Length crown = mm(0);
    HeadForm head = HeadForm.SLOT;
    Length greaseBore;
    String studTolerance;
    boolean collar;
    Force turning;
    Force standing;
    Force track;
    Material material = Material.of("C45+N");
    Length ring;
    String bore;
    Length seat;
    Length runOut;
    FrictionBand pressing;
    ThreadCondition condition = ThreadCondition.OILED;
    double friction = 0.10;
    Torque torque;
    Length engaged;
    LoadSpectrum load;
    double reliability = 90;
    double degrees;
    ContactSurface surface = ContactSurface.flat();
    double hardness;
    Port port = Port.HEAD;
    boolean leans;
    boolean shakes;
    FleetDuty fleet;
  }

  private QuestionJobs() {}

  private static Parts metric() {
    Parts job = new Parts();
    job.size = RollerSeries.METRIC.size(mm(35));
    job.name = "stud roller 35 x 18 (invented)";
    job.ratings = LoadRatings.trackRoller(kN(12.1), kN(17.9), OuterRing.DEFLECTING);
    job.greaseBore = mm(6);
    job.ring = mm(48);
    job.bore = "H7";
    job.seat = mm(14);
    job.pressing = FrictionBand.of(0.08, 0.20);
    job.torque = Nm(58);
    job.load = LoadSpectrum.constant(kN(1.5), rpm(100));
    job.degrees = 60;
    job.hardness = 45;
    return job;
  }

  private static Parts inches() {
    Parts job = new Parts();
    job.size = RollerSeries.INCH_STANDARD_STUD.size(inch("1-1/2"));
    job.name = "stud roller 1-1/2 in (invented)";
    job.seals = true;
    job.ratings = LoadRatings.trackRoller(lbf(2100), lbf(2600), OuterRing.DEFLECTING);
    job.greaseBore = inch("1/8");
    job.material = Material.of("EN-GJL-250");
    job.ring = inch("1-1/4");
    job.bore = "+0.0005/0 in";
    job.seat = inch("3/4");
    job.pressing = FrictionBand.general();
    job.torque = inLbf(325);
    job.load = LoadSpectrum.constant(lbf(400), rpm(120));
    job.hardness = 40;
    return job;
  }

  private static Parts twoInches() {
    Parts job = inches();
    job.size = RollerSeries.INCH_STANDARD_STUD.size(inch(2));
    job.name = "stud roller 2 in (invented)";
    job.ratings = LoadRatings.trackRoller(lbf(9500), lbf(11000), OuterRing.DEFLECTING);
    job.greaseBore = inch("3/16");
    job.material = Material.of("C45+N");
    job.ring = inch(2);
    job.bore = "F7";
    job.seat = inch("7/8");
    job.torque = inLbf(900);
    job.load = LoadSpectrum.constant(lbf(900), rpm(300));
    return job;
  }

  static InstallationPlan question(int number) {
    Parts job = switch (number) {
      case 1, 2, 6 -> inches();
      case 12, 13, 16, 17, 18 -> twoInches();
      default -> metric();
    };
    switch (number) {
      case 2 -> {
        job.bore = "+0.0001/0.0001 in";
        job.studTolerance = "+0.0004/+0.0004 in";
      }
      case 4 -> job.seat = mm(15.5);
      case 5 -> job.runOut = um(13.8);
      case 6 -> {
        job.material = Material.of("C45+N");
        job.bore = "0/-0.0005 in";
        job.pressing = FrictionBand.of(0.08, 0.20);
      }
      case 7 -> {
        job.bore = "-20/-25 µm";
        job.studTolerance = "0/0 µm";
        job.ring = mm(32);
        job.seat = mm(15.5);
      }
      case 8 -> job.friction = 0.08;
      case 9 -> {
        job.torque = Nm(232.5);
        job.condition = ThreadCondition.DRY;
      }
      case 11 -> job.engaged = mm(8);
      case 12 -> job.load = LoadSpectrum.constant(lbf(6000), rpm(300));
      case 13 -> {
        job.turning = lbf(7000);
        job.standing = lbf(9000);
        job.track = lbf(4000);
      }
      case 14 -> {
        job.track = kN(11.7);
        job.hardness = 32;
      }
      case 15 -> {
        job.crown = mm(500);
        job.leans = true;
      }
      case 16 -> job.reliability = 99;
      case 17 -> job.load = LoadSpectrum.builder().step(lbf(1800), rpm(100), 0.2).step(lbf(900), rpm(300), 0.5)
          .step(lbf(300), rpm(400), 0.3).build();
      case 18 -> {
        job.load = LoadSpectrum.constant(lbf(900), rpm(30));
        job.shakes = true;
      }
      case 19 -> {
        job.elements = RollerKind.DOUBLE_ROW_CYLINDRICAL;
        job.ratings = LoadRatings.trackRoller(kN(21.29), kN(23.37), OuterRing.DEFLECTING);
        job.origin = ValueOrigin.ESTIMATED;
      }
      case 20 -> {
        job.seals = true;
        job.surface = ContactSurface.cam(mm(150));
        job.load = LoadSpectrum.constant(kN(1.5), rpm(685.7));
      }
      case 21 -> job.load = LoadSpectrum.constant(N(250), rpm(100));
      case 22 -> job.degrees = 90;
      case 23 -> {
        job.head = HeadForm.HEXAGON_SOCKET;
        job.port = Port.THREAD_END;
      }
      case 24 -> job.collar = true;
      case 25 -> job.fleet = new FleetDuty(
          IntStream.rangeClosed(1, 40).mapToObj(i -> new FleetPosition("machine " + i, 1500, hours(0))).toList(), 0.95, 1, 0.95);
      default -> { }
    }
    return plan(job, number);
  }

  private static InstallationPlan plan(Parts job, int number) {
    boolean inchesFirst = job.size.series() != RollerSeries.METRIC;
    var plan = InstallationPlan.of(roller(job)).job("question " + number)
        .member(member(job))
        .nut(nut(job))
        .duty(duty(job, inchesFirst));
    return job.fleet == null ? plan.build() : plan.fleet(job.fleet).build();
  }

  private static StudRollerBuilder roller(Parts job) {
    boolean metric = job.size.series() == RollerSeries.METRIC;
    Length diameter = job.collar ? mm(22) : job.size.stud().diameter();
    String usual = metric ? "h7" : "+0.001/0 in";
    StudRollerBuilder roller = StudRoller.named(job.name)
        .ring(job.size.outsideDiameter(), job.size.ringWidth(), job.crown)
        .system(job.size.series().system())
        .flange(job.size.faceDiameter(), job.size.stud().overhang())
        .stud(diameter, job.studTolerance == null ? usual : job.studTolerance)
        .lengths(job.size.stud().length(), job.size.stud().threadLength())
        .thread(job.size.stud().threads().get(0))
        .greaseBore(job.greaseBore)
        .material(Material.of("16MnCr5"), mm(0))
        .inside(job.elements, job.seals)
        .head(job.head)
        .ratings(job.ratings, job.origin)
        .temperatures(metric ? degC(-20) : degF(0), metric ? degC(120) : degF(250));
    if (job.turning != null) {
      roller.ringLimits(job.turning, job.standing);
    }
    if (job.track != null) {
      roller.trackCapacity(job.track);
    }
    return job.collar ? roller.eccentricCollar() : roller;
  }

  private static MachineMember member(Parts job) {
    MachineMember.Builder member = MachineMember.named("lever (invented)").body(OuterPart.ring(job.material, job.ring))
        .bore(job.bore, job.seat).pressingFriction(job.pressing);
    return job.runOut == null ? member.build() : member.faceRunOut(job.runOut).build();
  }

  private static Nut nut(Parts job) {
    Nut.Builder nut = job.size.series() == RollerSeries.METRIC
        ? Nut.onFace(mm(24), mm(17))
        : Nut.onStandardFace(ScrewThread.of(job.size.stud().threads().get(0)));
    nut.friction(job.condition, job.friction, 0.16).wrench(job.torque, 0.04).reserve(1.5);
    return job.engaged == null ? nut.build() : nut.engaged(job.engaged, MPa(500)).build();
  }

  private static Duty duty(Parts job, boolean inchesFirst) {
    DutyBuilder duty = Duty.of(job.load)
        .life(hours(inchesFirst ? 6000 : 4000), Reliability.ofPercent(job.reliability))
        .staticSafety(inchesFirst ? 1.5 : 2)
        .at(inchesFirst ? degF(130) : degC(job.degrees))
        .lubricant(mm2PerS(inchesFirst ? 90 : 100),
            inchesFirst ? ContaminationLevel.NORMAL_CLEANLINESS : ContaminationLevel.SLIGHT_CONTAMINATION)
        .track(job.surface, job.hardness)
        .greaseThrough(job.port);
    if (job.leans) {
      duty.trackMisalignment(mrad(1));
    }
    return (job.shakes ? duty.surroundings(Surroundings.clean().vibration(mmPerS(6))) : duty).build();
  }
}

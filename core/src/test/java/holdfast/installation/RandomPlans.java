// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import static holdfast.quantity.Units.*;

import holdfast.bearings.ContaminationLevel;
import holdfast.bearings.LoadRatings;
import holdfast.bearings.LoadSpectrum;
import holdfast.bearings.OuterRing;
import holdfast.bearings.Reliability;
import holdfast.contact.ContactSurface;
import holdfast.fleet.FleetPosition;
import holdfast.lubrication.HeadForm;
import holdfast.lubrication.Port;
import holdfast.rollers.RollerKind;
import holdfast.seats.FrictionBand;
import holdfast.seats.Material;
import holdfast.seats.OuterPart;
import holdfast.seats.StudDuty;
import java.util.List;
import java.util.Random;

/** Jobs drawn loosely: sizes that belong together more or less, everything else as it comes. Some are refused; that is right. */
final class RandomPlans {
  private static final String[] BORES = {"H7", "K7", "N7", "P7", "S6", "S7", "R7", "U7", "X7", "G7", "J7", "M7", "zz9", "h7",
      "+0.02/+0.005 mm", "-0.010/-0.030 mm", "F8"};
  private static final String[] STUDS = {"h7", "h6", "g6", "k6", "+0.025/0 mm", "n6", "H7"};
  private static final String[] MEMBERS = {"steel", "C45+N", "EN-GJL-250", "EN-GJS-600-3", "EN-GJS-400-15", "42CrMo4+QT", "CW614N",
      "EN AC-42100", "AM1004-T61", "16MnCr5", "ASTM A48 class 20", "AISI 304"};
  private static final String[] STEELS = {"16MnCr5", "42CrMo4+QT", "C45+N", "100Cr6", "steel", "AISI 4340"};
  private static final double[][] SIZES = {{16, 11, 6, 1, 16, 8}, {22, 12, 10, 1.25, 23, 12}, {35, 18, 16, 1.5, 32.5, 17},
      {40, 20, 18, 1.5, 36.5, 19}, {62, 29, 24, 1.5, 49.5, 25}, {90, 35, 30, 1.5, 63, 32}};

  private final Random random;

  RandomPlans(long seed) {
    this.random = new Random(seed);
  }

  private double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  /** Even over the powers of ten. */
  private double spread(double low, double high) {
    return Math.exp(between(Math.log(low), Math.log(high)));
  }

  private <T> T one(T[] choices) {
    return choices[random.nextInt(choices.length)];
  }

  private boolean chance(double share) {
    return random.nextDouble() < share;
  }

  private static double round(double value) {
    return Math.rint(value * 1000) / 1000;
  }

  InstallationPlan stud() {
    double[] size = SIZES[random.nextInt(SIZES.length)];
    double d = size[2];
    StudRollerBuilder roller = StudRoller.named("roller").ring(mm(size[0]), mm(size[1]), mm(chance(0.5) ? 0 : 500))
        .flange(mm(round(d + between(0.1, 1) * (size[0] - d))), mm(between(0, 2))).stud(mm(d), one(STUDS))
        .thread("M" + (int) d + (size[3] == 1 && d == 6 ? "" : "x" + (size[3] == 1.5 || size[3] == 1.25 ? size[3] : "1")))
        .greaseBore(mm(chance(0.3) ? 0 : round(between(0.1, 0.9) * d))).material(Material.of(one(STEELS)), um(between(0, 6)))
        .inside(one(RollerKind.values()), chance(0.4)).head(one(HeadForm.values()))
        .ratings(LoadRatings.trackRoller(kN(round(size[0] * size[0] * 0.009)), kN(round(size[0] * size[0] * 0.011)),
            one(new OuterRing[] {OuterRing.RIGID, OuterRing.DEFLECTING})), one(ValueOrigin.values()))
        .temperatures(degC(-20), degC(between(60, 150)));
    if (chance(0.7)) {
      roller.lengths(mm(size[4]), mm(size[5]));
    }
    if (chance(0.5)) {
      roller.greatestTorque(Nm(round(0.014 * d * d * d)));
    }
    if (chance(0.3)) {
      roller.eccentricCollar();
    }
    if (chance(0.3)) {
      roller.crossHole(mm(round(between(0, 0.4) * d)));
    }
    MachineMember.Builder member = MachineMember.named("member")
        .body(OuterPart.ring(Material.of(one(MEMBERS)), mm(round(d * between(1.05, 4)))).withRoughness(um(between(0, 10))))
        .bore(one(BORES), mm(round(between(0.1, 1.1) * (size[4] - size[5])))).pressingFriction(FrictionBand.of(0.08, 0.2));
    if (chance(0.5)) {
      member.thickness(mm(round(between(0.9, 1.6) * (size[4] - size[5]))));
    }
    if (chance(0.6)) {
      member.faceRunOut(um(between(0, 40)));
    }
    if (chance(0.3)) {
      member.feedHole();
    }
    double torque = round(0.012 * d * d * d * between(0.2, 1.4));
    Nut.Builder nut = Nut.onFace(mm(round(1.4 * d)), mm(round(1.06 * d))).friction(one(ThreadCondition.values()), 0.1,
        between(0.11, 0.25)).wrench(Nm(torque), between(0, 0.2)).reserve(between(1, 2));
    if (chance(0.5)) {
      nut.stack(mm(round(0.5 * d)), mm(chance(0.5) ? 0 : 2));
    }
    if (chance(0.3)) {
      nut.engaged(mm(round(0.4 * d)), MPa(between(50, 300)));
    }
    if (chance(0.2)) {
      nut.selfLocking(Nm(torque * between(0, 0.6)));
    } else {
      nut.locking(one(new NutLocking[] {NutLocking.NONE, NutLocking.LOCK_WASHER, NutLocking.THREAD_LOCKER}));
    }
    PlanBuilder plan = InstallationPlan.of(roller).job("job").member(member).nut(nut).duty(duty(size[0]));
    return chance(0.2) ? plan.fleet(fleet()).build() : plan.build();
  }

  private FleetDuty fleet() {
    return new FleetDuty(List.of(new FleetPosition("one", between(10, 8000), hours(spread(1, 30000))),
        new FleetPosition("two", between(10, 8000), hours(spread(1, 30000)))), 0.5, between(0.05, 2), 0.95);
  }

  private DutyBuilder duty(double size) {
    double rating = size * size * 9;
    LoadSpectrum spectrum = chance(0.7) ? LoadSpectrum.constant(N(round(rating * spread(0.003, 0.9))), rpm(spread(0.5, 3000)))
        : LoadSpectrum.builder().step(N(round(rating * spread(0.01, 0.5))), rpm(spread(0.5, 800)), 0.25)
            .step(N(round(rating * spread(0.01, 0.3))), rpm(chance(0.2) ? 0 : spread(1, 800)), 0.75).build();
    DutyBuilder duty = Duty.of(spectrum).life(hours(spread(50, 60000)), Reliability.ofPercent(chance(0.5) ? 90 : 97))
        .staticSafety(between(1, 3)).at(degC(between(-25, 130))).lubricant(mm2PerS(spread(2, 1500)), one(ContaminationLevel.values()))
        .track(chance(0.7) ? ContactSurface.flat() : ContactSurface.cylinder(mm(spread(100, 2000))), between(20, 58));
    if (chance(0.3)) {
      duty.trackMisalignment(mrad(between(0, 2)));
    }
    if (chance(0.5)) {
      duty.loadChange(one(StudDuty.values()));
    }
    if (chance(0.2)) {
      duty.uprightAxis();
    }
    if (chance(0.5)) {
      duty.surroundings(Surroundings.clean().dirt(chance(0.5) ? "severe, non-abrasive" : "light, abrasive"));
    }
    return chance(0.3) ? duty.lubricatedForLife() : duty.greaseThrough(one(Port.values()));
  }

  YokePlan yoke() {
    double[] size = SIZES[random.nextInt(SIZES.length)];
    double d = size[2];
    YokeRollerBuilder roller = YokeRoller.named("roller").ring(mm(size[0]), mm(size[1]), mm(chance(0.5) ? 0 : 500))
        .bore(mm(d), one(new String[] {"0/-0.010 mm", "H7", "F8", "qq"}), mm(size[1] + 1)).inside(one(RollerKind.values()), chance(0.4))
        .ratings(LoadRatings.trackRoller(kN(round(size[0] * size[0] * 0.009)), kN(round(size[0] * size[0] * 0.011)),
            one(new OuterRing[] {OuterRing.RIGID, OuterRing.DEFLECTING})), one(ValueOrigin.values()))
        .temperatures(degC(-20), degC(between(60, 150)));
    if (chance(0.7)) {
      roller.greaseHoleInRing();
    }
    Pin.Builder pin = Pin.of(one(STUDS), Material.of(one(STEELS)))
        .drilled(mm(chance(0.3) ? 0 : round(between(0.05, 0.5) * d)), mm(0), chance(0.5)).roughness(um(between(0, 5)))
        .securedBy(one(PinSecuring.values()));
    Fork.Builder fork = Fork.named("fork")
        .ears(OuterPart.ring(Material.of(one(MEMBERS)), mm(round(d * between(1.05, 4)))), mm(round(d * between(0.2, 1.5))),
            mm(round(size[1] + between(0.5, 10))))
        .bore(one(BORES)).pressingFriction(FrictionBand.of(0.08, 0.2));
    if (chance(0.5)) {
      fork.ringClamped();
    }
    return YokePlan.of(roller).job("job").pin(pin).fork(fork).duty(duty(size[0])).build();
  }
}

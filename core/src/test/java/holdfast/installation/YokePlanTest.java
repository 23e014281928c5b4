// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import static holdfast.quantity.Units.N;
import static holdfast.quantity.Units.degC;
import static holdfast.quantity.Units.hours;
import static holdfast.quantity.Units.kN;
import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.mm2PerS;
import static holdfast.quantity.Units.rpm;
import static holdfast.quantity.Units.um;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.bearings.ContaminationLevel;
import holdfast.bearings.LoadRatings;
import holdfast.bearings.OuterRing;
import holdfast.bearings.Reliability;
import holdfast.bearings.reference.RollerProfile;
import holdfast.contact.ContactSurface;
import holdfast.lubrication.Port;
import holdfast.quantity.InputException;
import holdfast.rollers.RollerKind;
import holdfast.seats.FrictionBand;
import holdfast.seats.Material;
import holdfast.seats.OuterPart;
import java.util.List;
import org.junit.jupiter.api.Test;

class YokePlanTest {
  private final YokePlan example = ExampleJobs.yokeInFork();

  static YokeRollerBuilder roller() {
    return anyRoller().bore(mm(20), "0/-0.010 mm", mm(25));
  }

  /** With or without inner ring. */
  static YokeRollerBuilder anyRoller() {
    return YokeRoller.named("test roller")
        .ring(mm(52), mm(24), mm(0))
        .greaseHoleInRing()
        .inside(RollerKind.CAGED_NEEDLE, true)
        .ratings(LoadRatings.trackRoller(kN(21), kN(34), OuterRing.DEFLECTING))
        .temperatures(degC(-20), degC(120));
  }

  static Pin.Builder pin() {
    return Pin.of("h6", Material.of("16MnCr5")).drilled(mm(4), mm(3), false).securedBy(PinSecuring.END_PLATES);
  }

  static Fork.Builder fork() {
    return Fork.named("fork")
        .ears(OuterPart.ring(Material.of("C45+N"), mm(46)), mm(12), mm(26))
        .bore("N7")
        .pressingFriction(FrictionBand.of(0.08, 0.20));
  }

  static DutyBuilder duty() {
    return anyDuty().greaseThrough(Port.HEAD);
  }

  /** Greased or not. */
  static DutyBuilder anyDuty() {
    return Duty.of(kN(4.5), rpm(90))
        .life(hours(8000), Reliability.ofPercent(90))
        .staticSafety(2)
        .at(degC(45))
        .lubricant(mm2PerS(180), ContaminationLevel.NORMAL_CLEANLINESS)
        .track(ContactSurface.flat(), 42);
  }

  static YokePlan plan(YokeRollerBuilder roller, Pin.Builder pin, Fork.Builder fork, DutyBuilder duty) {
    return YokePlan.of(roller).job("test (invented)").pin(pin).fork(fork).duty(duty).build();
  }

  private static void stopped(YokePlan plan, String reason) {
    assertTrue(plan.stops().stream().anyMatch(stop -> stop.contains(reason)), plan.stops().toString());
    assertTrue(plan.sheet().text().contains("DO NOT INSTALL"), "the sheet says so");
    assertFalse(plan.summary().install());
  }

  @Test
  void theExampleMayBeInstalled() {
    assertEquals(List.of(), example.stops());
    String text = example.sheet().text();
    assertTrue(text.contains("Fit of the pin in the ears"), text);
    assertTrue(text.contains("the load ratings are estimated"), text);
    assertTrue(example.summary().json().contains("\"pin.bending\""), example.summary().json());
  }

  @Test
  void bothEndsHeldTheRollerLeansLessThanItsClearance() {
    YokePlan loose = plan(roller(), pin(), fork().bore("H7"), duty());
    // 34 µm of play over 50 mm of pin in the ears; 13 µm over 25 mm of ring, which grows 0.4·10⁻⁶ /K more than the pin.
    assertEquals(34e-3 / 50, loose.pinTilt().total().radian(), 1e-6);
    double rise = loose.duty().workingTemperature().celsius() - 20;
    assertEquals((13e-3 + 0.4e-6 * rise * 20) / 25, loose.ringTilt().orElseThrow().total().radian(), 1e-6);
    stopped(loose, "tilt of the roller");
    assertTrue(plan(roller(), pin(), fork().bore("H7").ringClamped(), duty()).ringTilt().isEmpty());
  }

  @Test
  void nothingButAnUncertainPressFitHolds() {
    stopped(plan(roller(), pin().securedBy(PinSecuring.PRESS_FIT), fork(), duty()), "nothing holds the pin");
    YokePlan pressed = plan(roller(), pin().securedBy(PinSecuring.PRESS_FIT), fork().bore("R7").ringClamped(), duty());
    assertEquals(List.of(), pressed.stops());
    YokePlan ringed = plan(roller(), pin().securedBy(PinSecuring.RETAINING_RINGS), fork().bore("H7").ringClamped(), duty());
    assertTrue(ringed.sheet().text().contains("may still turn"), "rings let a loose pin turn");
  }

  @Test
  void needlesOnThePinNeedAHardPinAndClearance() {
    YokeRollerBuilder bare = anyRoller().withoutInnerRing(mm(20), "F6", mm(20));
    stopped(plan(bare, pin(), fork(), duty()), "its hardness is not stated");
    stopped(plan(bare, pin().hardness(45), fork(), duty()), "it has 45");
    assertEquals(List.of(), plan(bare, pin().hardness(60), fork(), duty()).stops());
    stopped(plan(bare, Pin.of("p6", Material.of("16MnCr5")).drilled(mm(4), mm(3), false).hardness(60)
        .securedBy(PinSecuring.END_PLATES), fork().bore("E8"), duty()), "the needles bind");
  }

  @Test
  void greaseNeedsAWayIn() {
    stopped(plan(roller(), pin().drilled(mm(0), mm(0), false), fork(), duty()), "the pin is solid");
    stopped(plan(roller(), pin().drilled(mm(4), mm(0), false), fork(), duty()), "drill the pin across");
    stopped(plan(roller(), pin(), fork(), duty().greaseThrough(Port.THREAD_END)), "does not open at the other end");
    stopped(plan(roller(), pin(), fork(), duty().greaseThrough(Port.RADIAL)), "no ear has a feed hole");
    PinGreasing through =
        plan(roller(), pin().drilled(mm(4), mm(3), true), fork().feedHole(), duty().greaseThrough(Port.RADIAL))
            .greasing()
            .orElseThrow();
    assertTrue(through.possible());
    assertEquals(1, through.instructions().stream().filter(line -> line.contains("FEED")).count());
    assertEquals(2, through.instructions().stream().filter(line -> line.contains("closed by plug")).count());
    YokeRollerBuilder closed = YokeRoller.named("no hole").ring(mm(52), mm(24), mm(0)).bore(mm(20), "0/-0.010 mm", mm(25))
        .inside(RollerKind.CAGED_NEEDLE, true).ratings(LoadRatings.trackRoller(kN(21), kN(34), OuterRing.DEFLECTING))
        .temperatures(degC(-20), degC(120));
    stopped(plan(closed, pin(), fork(), duty()), "the inner ring has no grease hole");
    assertTrue(plan(closed, pin(), fork(), anyDuty().lubricatedForLife()).greasing().isEmpty());
  }

  @Test
  void overloadsAndBrittleEarsStop() {
    stopped(plan(roller(), pin(), fork().ears(OuterPart.ring(Material.of("EN-GJL-250"), mm(24)), mm(12), mm(26)).bore("X7"),
        duty()), "press fit, ear, half of its fracture");
    Fork.Builder wide = fork().ears(OuterPart.ring(Material.of("C45+N"), mm(46)), mm(12), mm(900));
    stopped(plan(roller(), pin(), wide, duty()), "pin, bending and shear");
    stopped(plan(roller(), pin(), fork(), duty().life(hours(8_000_000), Reliability.ofPercent(90))), "modified life");
  }

  @Test
  void aPressedRingTakesInternalClearance() {
    RollerInterior interior =
        RollerInterior.describe()
            .rollers(18, mm(3.5), mm(16), ValueOrigin.STATED)
            .pitchDiameter(mm(30), ValueOrigin.STATED)
            .clearance(um(4), ValueOrigin.STATED)
            .profile(RollerProfile.logarithmic(), ValueOrigin.STATED)
            .build();
    YokePlan tight =
        plan(roller().interior(interior), Pin.of("k6", Material.of("16MnCr5")).drilled(mm(4), mm(3), false)
            .securedBy(PinSecuring.END_PLATES), fork().bore("H7"), duty());
    stopped(tight, "internal clearance taken by the press fit");
    assertEquals(mm(30), tight.roller().meanDiameter());
  }

  @Test
  void refusesPartsThatDoNotGoTogether() {
    InputException wide =
        assertThrows(InputException.class,
            () -> plan(roller(), pin(), fork().ears(OuterPart.ring(Material.of("C45+N"), mm(46)), mm(12), mm(24.5)), duty()));
    assertTrue(wide.getMessage().contains("gap of the fork"), wide.getMessage());
    assertThrows(InputException.class, () -> plan(roller(), pin().drilled(mm(20), mm(3), false), fork(), duty()));
    assertThrows(InputException.class, () -> pin().drilled(mm(0), mm(3), false).build());
    assertThrows(InputException.class, () -> pin().hardness(80).build());
    assertThrows(InputException.class, () -> roller().ratings(LoadRatings.radialRoller(kN(21), kN(34))).build());
    assertThrows(InputException.class, () -> roller().bore(mm(60), "H7", mm(25)).build());
    InputException lacks = assertThrows(InputException.class, () -> YokePlan.of(YokeRoller.named("r")).build());
    for (String part : new String[] {"job", "roller: ring", "roller: bore", "pin", "fork", "duty"}) {
      assertTrue(lacks.getMessage().contains(part), part + " is missing in " + lacks.getMessage());
    }
  }

  /** Ears of aluminium at 45 °C: the bore of 20.021 mm grows by 23.4·10⁻⁶ · 25, the pin of 19.987 mm by 11.5·10⁻⁶ · 25. */
  @Test
  void thePinLeansByThePlayAtWork() {
    YokePlan yoke = ExampleJobs.yokeInFork();
    Material light = Material.of("6061-T6", "wrought, artificially aged, second source");
    Fork fork = Fork.named("fork").ears(OuterPart.ring(light, mm(46)), mm(12), mm(26)).bore("H7")
        .pressingFriction(yoke.fork().pressingFriction()).build();
    YokePlan plan = new YokePlan("warm", yoke.roller(), yoke.pin(), fork, yoke.duty(), null, yoke.units());
    assertEquals(0.034 + 20.021 * 23.4e-6 * 25 - 19.987 * 11.5e-6 * 25, plan.pinTilt().clearance().mm(), 1e-9);
    assertTrue(plan.ringTilt().orElseThrow().clearance().compareTo(plan.rollerFit().maximumClearance()) >= 0);
  }

  @Test
  void theStaticLimitOfARigidRingSaysSo() {
    YokePlan yoke = ExampleJobs.yokeInFork();
    double limit = yoke.roller().ratings().staticRating().newton() / yoke.duty().staticSafety();
    String told = yoke.allLimits().warnings().stream().filter(w -> w.code().equals("static-limit-of-rigid-ring"))
        .findFirst().orElseThrow().message();
    assertTrue(told.contains(N(0.605 * limit) + " … " + N(0.871 * limit)), told);
    assertTrue(InstallationPlan.example().allLimits().warnings().stream()
        .noneMatch(w -> w.code().equals("static-limit-of-rigid-ring")), "its ring is rated as deflecting");
  }
}

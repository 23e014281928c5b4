// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import static holdfast.installation.YokePlanTest.duty;
import static holdfast.installation.YokePlanTest.fork;
import static holdfast.installation.YokePlanTest.pin;
import static holdfast.installation.YokePlanTest.plan;
import static holdfast.installation.YokePlanTest.roller;
import static holdfast.quantity.Units.Nm;
import static holdfast.quantity.Units.degC;
import static holdfast.quantity.Units.kN;
import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.mm2PerS;
import static holdfast.quantity.Units.um;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.bearings.ContaminationLevel;
import holdfast.fits.Fit;
import holdfast.fits.Gauge;
import holdfast.fits.MeasuredPart;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.seats.Material;
import holdfast.seats.OuterPart;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Parts that cannot be and parts that just can; plans built from parts that are ready. */
class PlanRefusalsTest {
  private static final InstallationPlan PLAN = InstallationPlan.example();

  private static void refused(String parameter, Runnable work) {
    InputException refused = assertThrows(InputException.class, work::run);
    assertTrue(refused.getMessage().contains(parameter), refused.getMessage());
  }

  @Test
  void aPlanLacksNothing() {
    refused("nut", () -> new InstallationPlan("job", PLAN.roller(), PLAN.member(), null, PLAN.duty(), null, PLAN.units()));
    YokePlan yoke = ExampleJobs.yokeInFork();
    refused("fork", () -> new YokePlan("job", yoke.roller(), yoke.pin(), null, yoke.duty(), null, yoke.units()));
  }

  /** A job file stated it; the duty was accepted and its sheet could not be computed. */
  @Test
  void aLubricantWithoutViscosityIsNone() {
    refused("viscosity", () -> duty().lubricant(mm2PerS(0), ContaminationLevel.NORMAL_CLEANLINESS).build());
  }

  private static Fork.Builder gap(double gap) {
    return fork().ears(OuterPart.ring(Material.of("C45+N"), mm(46)), mm(12), mm(gap));
  }

  @Test
  void aRollerMayFillTheGapAndNoMore() {
    assertEquals(mm(25), plan(roller(), pin(), gap(25), duty()).fork().gap());
    refused("ring width", () -> plan(roller().bore(mm(20), "0/-0.010 mm", mm(20)), pin(), gap(23), duty()));
    refused("bore d", () -> roller().bore(mm(52), "H7", mm(25)).build());
  }

  @Test
  void aSolidPinOpensNowhere() {
    refused("grease bore", () -> pin().drilled(mm(0), mm(0), true).build());
    assertEquals(mm(4), pin().build().greaseBore());
    assertEquals(mm(26), fork().build().gap());
    assertEquals(mm(20), roller().pinLimit(kN(9)).build().bore());
  }

  @Test
  void theLeastOfTheWrenchExceedsThePrevailingTorque() {
    Nut.Builder nut = Nut.onFace(mm(24.8), mm(19)).friction(ThreadCondition.OILED, 0.1, 0.16).reserve(1.5);
    refused("tightening torque", () -> nut.wrench(Nm(10), 0).selfLocking(Nm(10)).build());
    assertEquals(Nm(9.9), nut.wrench(Nm(10), 0).selfLocking(Nm(9.9)).build().prevailing());
  }

  @Test
  void moistureIsOneOfTheWordsOfTheTrade() {
    refused("factor Fm", () -> Surroundings.clean().moisture("a splash now and then"));
  }

  @Test
  void readyPartsMakeTheSamePlanAsTheirBuilders() {
    InstallationPlan again = InstallationPlan.of(PLAN.roller()).job(PLAN.job()).member(PLAN.member()).nut(PLAN.nut())
        .duty(PLAN.duty()).units(PLAN.units()).build();
    assertEquals(PLAN, again);
    assertEquals(List.of("lever", "slip-fit", "yoke", "impossible"), List.copyOf(ExampleJobs.all().keySet()));
  }

  private static MeasuredPart even(Length size) {
    return MeasuredPart.by(Gauge.of("gauge", um(1))).station(size, size).station(size, size).station(size, size);
  }

  @Test
  void aPlanAcceptsPartsMeasuredInOneRoom() {
    Fit fit = PLAN.fit();
    MeasuredPart bore = even(fit.hole().limits().lower().plus(fit.hole().tolerance().times(0.5)));
    MeasuredPart stud = even(fit.shaft().limits().lower().plus(fit.shaft().tolerance().times(0.5)));
    assertEquals(Acceptance.of(PLAN, bore, stud, degC(20)), PLAN.accept(bore, stud, degC(20)));
  }
}

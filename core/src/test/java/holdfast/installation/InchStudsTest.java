// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.bearings.ContaminationLevel;
import holdfast.bearings.LoadRatings;
import holdfast.bearings.OuterRing;
import holdfast.bearings.Reliability;
import holdfast.contact.ContactSurface;
import holdfast.lubrication.HeadForm;
import holdfast.quantity.Force;
import holdfast.quantity.InputException;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Torque;
import holdfast.rollers.RollerKind;
import holdfast.rollers.RollerSeries;
import holdfast.rollers.RollerSize;
import holdfast.seats.FrictionBand;
import holdfast.seats.Material;
import holdfast.seats.OuterPart;
import holdfast.threads.BearingFace;
import holdfast.threads.Hexagon;
import holdfast.threads.ScrewThread;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Every inch stud of the bundled series has a thread, a nut that fits it, and a plan. */
class InchStudsTest {
  private static List<RollerSize> studs() {
    List<RollerSize> all = new ArrayList<>(RollerSeries.INCH_STANDARD_STUD.sizes());
    all.addAll(RollerSeries.INCH_HEAVY_STUD.sizes());
    return all;
  }

  /** Load and torque go with the size of the stud, so that each is an ordinary job for it. */
  private static InstallationPlan plan(RollerSize size) {
    double d = size.stud().diameter().mm();
    double shank = size.stud().shankLength().mm();
    Nut.Builder nut = Nut.onFace(size.stud().diameter().times(1.45), size.stud().diameter().times(1.06));
    return InstallationPlan.of(
            StudRoller.named("stud roller " + size.outsideDiameter().in(KnownUnits.INCH) + " in (invented)")
                .size(size, mm(0))
                .greaseBore(mm(0))
                .material(Material.of("16MnCr5"), um(2))
                .inside(RollerKind.FULL_COMPLEMENT_NEEDLE, false)
                .head(HeadForm.SLOT)
                .ratings(LoadRatings.trackRoller(N(40 * d * d), N(50 * d * d), OuterRing.DEFLECTING))
                .temperatures(degC(-20), degC(110)))
        .job("every stud (invented job)")
        .member(
            MachineMember.named("bracket")
                .body(OuterPart.ring(Material.of("C45+N"), mm(3 * d)))
                .bore("H7", mm(0.8 * shank))
                .pressingFriction(FrictionBand.general()))
        .nut(nut.friction(ThreadCondition.OILED, 0.10, 0.16).wrench(new Torque(12 * d * d * d), 0.04).reserve(1.2))
        .duty(
            Duty.of(new Force(4 * d * d), rpm(100))
                .life(hours(5000), Reliability.ofPercent(90))
                .staticSafety(1.5)
                .at(degC(40))
                .lubricant(mm2PerS(150), ContaminationLevel.NORMAL_CLEANLINESS)
                .track(ContactSurface.flat(), 45)
                .lubricatedForLife())
        .build();
  }

  @Test
  void allFiftyInchStudsArePlanned() {
    int planned = 0;
    for (RollerSize size : studs()) {
      InstallationPlan plan = plan(size);
      assertTrue(plan.tightest().greatestPreload().newton() > 0, size.toString());
      assertTrue(plan.torqueWindow().highest().newtonMillimetre() > 0, size.toString());
      assertFalse(plan.sheet().sections().isEmpty(), size.toString());
      assertEquals(
          List.of(), ScrewThread.of(size.stud().threads().get(0)).warnings(), "a thread that catalogues print: " + size);
      planned++;
    }
    assertEquals(50, planned);
  }

  /** Printed: 5/8 in hex nut 0.922 to 0.938 in across flats, 0.535 to 0.559 in high, jam 0.363 to 0.387; washer 0.656 in. */
  @Test
  void facesAndHeightsOfInchNutsComeFromTables() {
    ScrewThread t = ScrewThread.of("5/8-18 UNF");
    BearingFace face = Hexagon.standardFace(t).orElseThrow();
    assertEquals(0.875, face.outer().in(KnownUnits.INCH), 1e-12, "95 % of 0.922 in, rounded down");
    assertEquals(0.656, face.inner().in(KnownUnits.INCH), 1e-12);
    assertEquals(inch("0.535"), Hexagon.nutHeight(t, false).least());
    assertEquals(inch("0.559"), Hexagon.nutHeight(t, false).greatest());
    assertEquals(inch("0.363"), Hexagon.nutHeight(t, true).least());
    assertEquals(inch("0.387"), Hexagon.nutHeight(t, true).greatest());
    assertEquals(0.219, Hexagon.washerBore(ScrewThread.of("10-32")).in(KnownUnits.INCH), 1e-12);
    assertThrows(InputException.class, () -> Hexagon.nutHeight(ScrewThread.of("10-32"), false));
    assertThrows(InputException.class, () -> Hexagon.washerBore(ScrewThread.of("M10")));
    for (String size : "1/4-28;3/8-24;7/16-20;1/2-20;5/8-18;3/4-16;7/8-14;1-14;1-1/8-12;1-1/4-12;1-1/2-12;10-32".split(";", -1)) {
      ScrewThread thread = ScrewThread.of(size);
      BearingFace standard = Hexagon.standardFace(thread).orElseThrow();
      assertTrue(standard.inner().compareTo(thread.majorDiameter()) > 0, size);
      assertTrue(standard.outer().ratio(standard.inner()) > 1.2, standard.toString());
    }
  }

  /** A nut whose face cannot take the stud is refused when the plan is made, not when the sheet is printed. */
  @Test
  void aPlanWithANutThatDoesNotFitIsRefusedAtTheDoor() {
    InstallationPlan good = ExampleJobs.inchSlipFit();
    Nut bad = Nut.onFace(inch("0.68"), inch("0.46")).friction(ThreadCondition.OILED, 0.10, 0.16).wrench(inLbf(380), 0.04).reserve(1.2).build();
    InputException e =
        assertThrows(
            InputException.class, () -> new InstallationPlan(good.job(), good.roller(), good.member(), bad, good.duty()));
    assertEquals("inner diameter of the bearing face DKi", e.parameter());
  }

  /** The torque of the bundled inch job lies in its window, as the trade would have it. */
  @Test
  void theBundledInchJobIsTightenedWithinItsWindow() {
    InstallationPlan plan = ExampleJobs.inchSlipFit();
    assertTrue(plan.torqueWindow().isOpen(), plan.torqueWindow().toString());
    assertTrue(plan.nut().torque().compareTo(plan.torqueWindow().lowest()) > 0);
    assertTrue(plan.nut().torque().compareTo(plan.torqueWindow().highest()) < 0);
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.laws;

import static holdfast.quantity.Units.*;
import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.bearings.ContaminationLevel;
import holdfast.bearings.LoadRatings;
import holdfast.bearings.OuterRing;
import holdfast.bearings.Reliability;
import holdfast.contact.ContactSurface;
import holdfast.fits.Fit;
import holdfast.installation.Duty;
import holdfast.installation.DutyBuilder;
import holdfast.installation.ExampleJobs;
import holdfast.installation.Nut;
import holdfast.installation.NutLocking;
import holdfast.installation.SeatPrice;
import holdfast.installation.SeatPriceBuilder;
import holdfast.installation.StudRoller;
import holdfast.installation.StudRollerBuilder;
import holdfast.installation.ThreadCondition;
import holdfast.installation.YokeRoller;
import holdfast.installation.YokeRollerBuilder;
import holdfast.lubrication.HeadForm;
import holdfast.lubrication.Port;
import holdfast.quantity.InputException;
import holdfast.rollers.RollerKind;
import holdfast.rollers.RollerSeries;
import holdfast.seats.Material;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * Statements that exclude each other are refused whichever comes first: once the later one won in silence, and with it a
 * prevailing torque, a cleanness or a slot in the head was lost.
 */
class AlternativesTest {
  private static <T> void excluded(Supplier<T> start, Function<T, ?> end, UnaryOperator<T> one, UnaryOperator<T> other) {
    assertThrows(InputException.class, () -> end.apply(other.apply(one.apply(start.get()))));
    assertThrows(InputException.class, () -> end.apply(one.apply(other.apply(start.get()))));
    // A statement may be made again; that is a correction, no contradiction.
    assertDoesNotThrow(() -> end.apply(one.apply(one.apply(start.get()))));
    assertDoesNotThrow(() -> end.apply(other.apply(other.apply(start.get()))));
  }

  private static Nut.Builder nut() {
    return Nut.onFace(mm(24.8), mm(19)).friction(ThreadCondition.OILED, 0.1, 0.16).wrench(Nm(75), 0.04).reserve(1.5);
  }

  private static DutyBuilder duty() {
    return Duty.of(kN(2.1), rpm(180))
        .life(hours(20000), Reliability.ofPercent(95))
        .staticSafety(2)
        .at(degC(60))
        .track(ContactSurface.flat(), 45)
        .greaseThrough(Port.HEAD);
  }

  private static StudRollerBuilder stud() {
    return StudRoller.named("roller")
        .size(RollerSeries.METRIC.size(mm(40)), mm(500))
        .greaseBore(mm(3))
        .material(Material.of("16MnCr5"), um(2))
        .inside(RollerKind.CAGED_NEEDLE, false)
        .ratings(LoadRatings.trackRoller(kN(14.2), kN(17.5), OuterRing.DEFLECTING))
        .temperatures(degC(-20), degC(110));
  }

  private static YokeRollerBuilder yoke() {
    return YokeRoller.named("roller")
        .ring(mm(52), mm(24), mm(0))
        .inside(RollerKind.CAGED_NEEDLE, false)
        .ratings(LoadRatings.trackRoller(kN(21), kN(34), OuterRing.RIGID))
        .temperatures(degC(-20), degC(120));
  }

  private static SeatPriceBuilder price() {
    StudRoller roller = ExampleJobs.metricLever().roller();
    return SeatPrice.of(roller.interior(), roller.ratings())
        .duty(kN(2), rpm(180))
        .seat(mm(18), mm(16))
        .ring(mm(40), mm(500))
        .bending(mrad(0.3));
  }

  @Test
  void aNutLocksInOneWay() {
    excluded(AlternativesTest::nut, Nut.Builder::build, b -> b.locking(NutLocking.NONE), b -> b.selfLocking(Nm(8)));
    assertEquals(8, nut().selfLocking(Nm(8)).build().prevailing().newtonMillimetre() / 1000, 1e-12);
  }

  @Test
  void aRollerIsGreasedOrLubricatedForLife() {
    DutyBuilder started = duty().lubricant(mm2PerS(150));
    assertThrows(InputException.class, started::lubricatedForLife);
    excluded(
        () -> Duty.of(kN(2.1), rpm(180)).life(hours(20000), Reliability.ofPercent(95)).staticSafety(2).at(degC(60))
            .track(ContactSurface.flat(), 45).lubricant(mm2PerS(150)),
        DutyBuilder::build, b -> b.greaseThrough(Port.HEAD), DutyBuilder::lubricatedForLife);
  }

  @Test
  void aCleannessThatWasStatedStays() {
    ContaminationLevel level = ContaminationLevel.HIGH_CLEANLINESS;
    Duty stated = duty().lubricant(mm2PerS(150), level).build();
    assertEquals(stated, duty().lubricant(mm2PerS(150)).lubricant(mm2PerS(150), level).build());
    assertEquals(stated, duty().lubricant(mm2PerS(100), level).lubricant(mm2PerS(150)).build());
    assertNotEquals(stated, duty().lubricant(mm2PerS(150)).build());
  }

  @Test
  void aFittingInTheSocketNeedsASocket() {
    for (HeadForm form : List.of(HeadForm.SLOT, HeadForm.HEXAGON)) {
      assertThrows(InputException.class, () -> stud().head(form).fittingInSocket().build());
      assertThrows(InputException.class, () -> stud().fittingInSocket().head(form).build());
    }
    StudRoller socket = stud().fittingInSocket().build();
    assertEquals(socket, stud().head(HeadForm.HEXAGON_SOCKET).fittingInSocket().build());
    assertEquals(socket, stud().fittingInSocket().head(HeadForm.HEXAGON_SOCKET).build());
  }

  @Test
  void aYokeRollerHasAnInnerRingOrNone() {
    excluded(
        AlternativesTest::yoke, YokeRollerBuilder::build,
        b -> b.bore(mm(20), "0/-0.010 mm", mm(25)), b -> b.withoutInnerRing(mm(25), "F6", mm(20)));
  }

  @Test
  void aSeatHasAFitOrOneClearance() {
    excluded(
        AlternativesTest::price, SeatPriceBuilder::build,
        b -> b.fit(Fit.of(mm(18), "H7/h7")), b -> b.clearance(um(20)));
  }

  /** Building takes nothing into the description: another size afterwards is another roller. */
  @Test
  void aDescriptionThatWasBuiltCanBeChanged() {
    StudRollerBuilder builder = stud().head(HeadForm.SLOT);
    StudRoller first = builder.build();
    StudRoller second = builder.size(RollerSeries.METRIC.size(mm(52)), mm(500)).build();
    assertEquals(40, first.outsideDiameter().mm());
    assertEquals(52, second.outsideDiameter().mm());
    assertTrue(second.studDiameter().mm() > first.studDiameter().mm());
    assertEquals(first, builder.size(RollerSeries.METRIC.size(mm(40)), mm(500)).build());
  }
}

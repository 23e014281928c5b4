// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.quantity.Numbers;
import holdfast.quantity.Torque;
import holdfast.seats.FitLimits;
import holdfast.seats.Holding;
import holdfast.seats.InterferenceFit;
import holdfast.seats.Pressing;
import holdfast.seats.ServiceState;
import holdfast.sheet.Section;
import holdfast.sheet.SheetUnits;
import holdfast.tables.SourceRef;
import holdfast.trace.Cautions;

/** Parts as measured: readings, verdict, what follows, and the hold point. */
final class AcceptanceSection {
  private static final SourceRef GROWTH =
      SourceRef.derived("free linear expansion from the reference temperature of 20 °C");
  private static final SourceRef HELD =
      SourceRef.derived("torque of pitch and thread friction, less what the friction of the loosest place holds");

  private final Acceptance acceptance;
  private final MeasuredSeat seat;
  private final SheetUnits units;
  private final Section.Builder section;
  private final AcceptanceEntries entries;

  private AcceptanceSection(Acceptance acceptance) {
    this.acceptance = acceptance;
    this.seat = acceptance.seat();
    this.units = acceptance.plan().units();
    this.section = Section.of("Parts as measured", units);
    this.entries = new AcceptanceEntries(section, units);
  }

  static Section of(Acceptance acceptance) {
    AcceptanceSection section = new AcceptanceSection(acceptance);
    section.entries.verdict(acceptance.verdict(), "bore " + acceptance.bore().conformity() + ", stud "
        + acceptance.stud().conformity() + ", fit " + acceptance.fitConformity(), acceptance.stops());
    section.entries.part("Bore", acceptance.bore());
    section.entries.part("Stud", acceptance.stud());
    section.fit();
    section.seat.press().ifPresentOrElse(section::press, section::slip);
    section.close();
    return section.section.build();
  }

  private void fit() {
    entries.fit("Fit", acceptance.pair());
    section.entry("Free fit at " + units.text(acceptance.plan().duty().workingTemperature()),
        new MeasuredText(units).clearances(seat.clearanceAtWork()), GROWTH);
  }

  private void press(InterferenceFit press) {
    Pressing pressing = seat.pressing().orElseThrow();
    FitLimits limits = seat.limits().orElseThrow();
    Holding holding = seat.holding().orElseThrow();
    ServiceState work = seat.pressAtWork().orElseThrow();
    section
        .entry("Joint pressure, this pair", SeatSection.pressure(press, units), press.sources())
        .entry("Press force, this pair", SeatSection.force(pressing, units), pressing.sources())
        .entry("Stress, this pair", pressed(press)
            ? SeatSection.limits(limits, units, "stud", "member") : "none: smoothing takes the interference",
            press.sources())
        .entry("Seat holds", SeatSection.held(press.validity(), SeatSection.band(holding.torque(), units)), holding.sources())
        .entry("At work, this pair", "joint pressure " + SeatSection.atWork(work, units), work.sources());
    held();
    if (seat.clearance().greatest().mm() > 0) {
      tilt();
    }
    section.cautions(Cautions.of("force-rating"));
  }

  private static boolean pressed(InterferenceFit press) {
    return press.pressure().greatest().megapascal() > 0;
  }

  private void slip() {
    held();
    tilt();
  }

  private void held() {
    Torque held = seat.torqueToBeHeld();
    section.entry("Hold at the head of the stud",
        held.newtonMillimetre() == 0 ? "nothing: the seat holds the torque" : units.text(held), HELD);
  }

  private void tilt() {
    section.entry("Tilt that the clearance allows", "up to " + seat.tilt().byClearance(), seat.tilt().sources());
  }

  private void close() {
    acceptance
        .price()
        .ifPresent(price -> section.entry("Life ratio of the loosest reading, this pair",
            Numbers.significant(price.lifeRatio(), 2) + " of the aligned life", price.sources()));
    section.warnings(acceptance.warnings());
    entries.holdPoint(acceptance.remedies());
  }
}

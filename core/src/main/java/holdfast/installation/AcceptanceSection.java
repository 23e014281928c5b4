// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.fits.Gauge;
import holdfast.fits.MeasuredFit;
import holdfast.fits.PartAcceptance;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import holdfast.quantity.Torque;
import holdfast.seats.Band;
import holdfast.seats.FitLimits;
import holdfast.seats.Holding;
import holdfast.seats.InterferenceFit;
import holdfast.seats.Pressing;
import holdfast.seats.ServiceState;
import holdfast.sheet.Block;
import holdfast.sheet.Section;
import holdfast.sheet.SheetUnits;
import holdfast.tables.SourceRef;
import holdfast.trace.Cautions;
import java.util.List;

/** Parts as measured: readings, verdict, what follows, and the hold point. */
final class AcceptanceSection {
  private static final SourceRef DECISION = SourceRef.memory("ISO 14253-1:2017", "decision rules");
  private static final SourceRef GROWTH =
      SourceRef.derived("free linear expansion from the reference temperature of 20 °C");
  private static final SourceRef HOLD_POINT = SourceRef.commonPractice("hold point: seat accepted before the parts are joined");
  private static final SourceRef HELD =
      SourceRef.derived("torque of pitch and thread friction, less what the friction of the loosest place holds");

  private final Acceptance acceptance;
  private final MeasuredSeat seat;
  private final SheetUnits units;
  private final MeasuredText text;
  private final Section.Builder section = Section.of("Parts as measured");

  private AcceptanceSection(Acceptance acceptance) {
    this.acceptance = acceptance;
    this.seat = acceptance.seat();
    this.units = acceptance.plan().units();
    this.text = new MeasuredText(units);
  }

  static Section of(Acceptance acceptance) {
    AcceptanceSection section = new AcceptanceSection(acceptance);
    section.verdict();
    section.part("Bore", acceptance.bore());
    section.part("Stud", acceptance.stud());
    section.fit();
    section.seat.press().ifPresentOrElse(section::press, section::slip);
    section.close();
    return section.section.build();
  }

  private void verdict() {
    String consequence = acceptance.accepted() ? ": accepted for joining" : ": do not join";
    section.entry("Verdict", acceptance.verdict() + consequence, DECISION);
    if (!acceptance.accepted()) {
      section.notice(Block.Weight.STOP, "The parts are not accepted: bore " + acceptance.bore().conformity() + ", stud "
          + acceptance.stud().conformity() + ", fit " + acceptance.fitConformity() + ".", DECISION);
    }
    acceptance.stops().forEach(stop -> section.notice(Block.Weight.STOP, stop));
  }

  private void part(String name, PartAcceptance part) {
    List<SourceRef> sources = part.explain().sources();
    Gauge gauge = part.measured().gauge();
    int readings = part.readings().sizes().size();
    section
        .entry(name + " at 20 °C", text.sizes(part.sizes()) + ", mean " + text.size(part.mean()), sources)
        .entry(name + ", verdict", part.conformity() + "; accepted at 20 °C: "
            + part.acceptanceZone().map(text::zone).orElse("no size, the gauge is too coarse"), sources)
        .entry(name + ", gauge must show", part.shownZone().map(text::zone).orElse("no size"), sources)
        .entry(name + ", how measured", readings + (readings == 1 ? " reading" : " readings") + " with " + gauge.id() + ", ± "
            + text.amount(gauge.uncertainty()) + "; part at " + units.text(part.measured().temperature()) + ", gauge at "
            + units.text(gauge.temperature()))
        .entry(name + ", form as seen",
            "out of round " + text.amount(part.outOfRound()) + ", taper " + text.amount(part.taper()), sources);
  }

  private void fit() {
    MeasuredFit fit = acceptance.fit();
    Band<Length> work = seat.clearanceAtWork();
    section
        .entry("Fit as measured", fit.kind() + ", " + text.clearances(new Band<>(fit.minimumClearance(), fit.maximumClearance()))
            + ", mean " + text.clearance(fit.clearance()) + ", ± " + text.amount(fit.uncertainty()), fit.sources())
        .entry("Fit, verdict", acceptance.fitConformity() + "; planned "
            + text.clearances(new Band<>(acceptance.plan().fit().minimumClearance(), acceptance.plan().fit().maximumClearance())),
            DECISION)
        .entry("Free fit at " + units.text(acceptance.plan().duty().workingTemperature()), text.clearances(work), GROWTH);
  }

  private void press(InterferenceFit press) {
    Pressing pressing = seat.pressing().orElseThrow();
    FitLimits limits = seat.limits().orElseThrow();
    Holding holding = seat.holding().orElseThrow();
    ServiceState work = seat.pressAtWork().orElseThrow();
    section
        .entry("Joint pressure, this pair", SeatSection.band(press.pressure(), units), press.sources())
        .entry("Press force, this pair", SeatSection.band(pressing.pressIn(), units) + ", friction " + pressing.friction(),
            pressing.sources())
        .entry("Limits, this pair", pressed(press)
            ? SeatSection.limits(limits, units, "stud", "member") : "none: smoothing takes the interference",
            press.sources())
        .entry("Seat holds", SeatSection.band(holding.torque(), units), holding.sources())
        .entry("At work, this pair", "joint pressure " + SeatSection.band(work.pressure(), units), work.sources());
    held();
    if (seat.clearance().greatest().mm() > 0) {
      tilt();
    }
    section.cautions(Cautions.about("press", 5));
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
    acceptance.remedies().forEach(remedy -> section.notice(Block.Weight.ADVICE, remedy.text(), remedy.source()));
    section
        .notice(Block.Weight.ADVICE, "Hold point: join nothing before this section is signed. The instructions of the makers, the"
            + " rules of the site and the judgement of a licensed engineer go before this verdict.", HOLD_POINT)
        .blank("H1  Parts accepted by, date", "")
        .blank("Concession, number", "none");
  }
}

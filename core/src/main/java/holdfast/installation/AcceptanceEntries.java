// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.fits.Conformity;
import holdfast.fits.Gauge;
import holdfast.fits.MeasuredFit;
import holdfast.fits.PartAcceptance;
import holdfast.seats.Band;
import holdfast.sheet.Block;
import holdfast.sheet.Section;
import holdfast.sheet.SheetUnits;
import holdfast.tables.SourceRef;
import java.util.List;

/** What the section of measured parts says of any part and any fit. */
final class AcceptanceEntries {
  static final SourceRef DECISION = SourceRef.memory("ISO 14253-1:2017", "decision rules");
  private static final SourceRef HOLD_POINT = SourceRef.commonPractice("hold point: seat accepted before the parts are joined");

  private final Section.Builder section;
  private final SheetUnits units;
  private final MeasuredText text;

  AcceptanceEntries(Section.Builder section, SheetUnits units) {
    this.section = section;
    this.units = units;
    this.text = new MeasuredText(units);
  }

  /** The verdict; if the parts are not accepted, on what it rests, and what forbids to join them. */
  void verdict(Conformity verdict, String restsOn, List<String> stops) {
    boolean accepted = verdict == Conformity.PROVEN;
    section.entry("Verdict", verdict + (accepted ? ": accepted for joining" : ": do not join"), DECISION);
    if (!accepted) {
      section.notice(Block.Weight.STOP, "The parts are not accepted: " + restsOn + ".", DECISION);
    }
    stops.forEach(stop -> section.notice(Block.Weight.STOP, stop));
  }

  void part(String name, PartAcceptance part) {
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

  void fit(String name, PairAcceptance pair) {
    MeasuredFit fit = pair.fit();
    section
        .entry(name + " as measured", fit.kind() + ", "
            + text.clearances(new Band<>(fit.minimumClearance(), fit.maximumClearance()))
            + ", mean " + text.clearance(fit.clearance()) + ", ± " + text.amount(fit.uncertainty()), fit.sources())
        .entry(name + ", verdict", pair.conformity() + "; planned "
            + text.clearances(new Band<>(pair.planned().minimumClearance(), pair.planned().maximumClearance())), DECISION);
  }

  void holdPoint(List<Remedy> remedies) {
    remedies.forEach(remedy -> section.notice(Block.Weight.ADVICE, remedy.text(), remedy.source()));
    section
        .notice(Block.Weight.ADVICE, "Hold point: join nothing before this section is signed. The instructions of the makers, the"
            + " rules of the site and the judgement of a licensed engineer go before this verdict.", HOLD_POINT)
        .blank("H1  Parts accepted by, date", "")
        .blank("Concession, number", "none");
  }
}

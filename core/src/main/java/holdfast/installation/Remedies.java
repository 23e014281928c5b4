// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.fits.Conformity;
import holdfast.fits.LimitsOfSize;
import holdfast.fits.PartAcceptance;
import holdfast.quantity.Length;
import holdfast.tables.SourceRef;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What to do about measured parts that do not pass. */
final class Remedies {
  private static final SourceRef WORKSHOP = SourceRef.commonPractice("rework of bores and studs that are out of limits");
  private static final SourceRef MEASURING = SourceRef.commonPractice("measuring again before a part is condemned");
  private static final SourceRef FORM = SourceRef.commonPractice("error of form within half of the tolerance of size");
  private static final SourceRef MATCH =
      SourceRef.derived("clearance limits of the plan against the measured sizes, drawn in by the uncertainty");

  private final Acceptance acceptance;
  private final MeasuredText text;
  private final List<Remedy> remedies = new ArrayList<>();

  private Remedies(Acceptance acceptance) {
    this.acceptance = acceptance;
    this.text = new MeasuredText(acceptance.plan().units());
  }

  static List<Remedy> of(Acceptance acceptance) {
    Remedies remedies = new Remedies(acceptance);
    remedies.collect();
    return List.copyOf(remedies.remedies);
  }

  private void collect() {
    PartAcceptance bore = acceptance.bore();
    PartAcceptance stud = acceptance.stud();
    doubts("bore", bore);
    doubts("stud", stud);
    if (bore.conformity() == Conformity.DISPROVED) {
      if (out(bore, bore.excess())) {
        largeBore(bore);
      } else {
        smallBore(bore);
      }
    }
    if (stud.conformity() == Conformity.DISPROVED) {
      wrongStud(stud);
    }
    form("bore", bore, "bore or ream again in one setting with a guided tool, if the limits still leave room; else fit a sleeve");
    form("stud", stud, "return it to its maker; a stud is not trued in the workshop");
    if (!acceptance.accepted() && acceptance.fitConformity() == Conformity.PROVEN) {
      add("concession", "The pair as measured makes the planned fit although a part is not shown to conform: it may be joined"
          + " only as a matched pair, with a concession signed by whoever answers for the drawing.", MATCH);
    }
    if (!acceptance.stops().isEmpty()) {
      add("do-not-join", "Do not press this pair. A larger bore or a smaller stud, agreed with whoever answers for the drawing,"
          + " lowers the pressure.", WORKSHOP);
    }
  }

  private void largeBore(PartAcceptance bore) {
    add("bore-large", "The bore is " + text.amount(bore.excess()) + " too large, and metal does not come back: stop"
        + " cutting. Ways on, in this order: " + matchingStud() + "; bore out and fit a sleeve, finished to size in place; any"
        + " other rework only with leave of the makers of machine and roller. Never knurl or"
        + " peen the bore, shim it, or fill it with adhesive without saying so: that hides a loose seat"
        + " from those who answer for it.", WORKSHOP);
  }

  private String matchingStud() {
    Optional<LimitsOfSize> match = acceptance.matchingStud();
    if (match.isEmpty()) {
      return "no round stud makes the planned fit in so uneven a bore";
    }
    LimitsOfSize zone = match.get();
    LimitsOfSize drawing = acceptance.stud().drawing().limits();
    Length lower = zone.lower().compareTo(drawing.lower()) >= 0 ? zone.lower() : drawing.lower();
    Length upper = zone.upper().compareTo(drawing.upper()) <= 0 ? zone.upper() : drawing.upper();
    boolean ofTheClass = lower.compareTo(upper) <= 0;
    return (ofTheClass ? "a stud that conforms and measures " : "a special stud, agreed with its maker, that measures ")
        + text.zone(ofTheClass ? new LimitsOfSize(lower, upper) : zone) + " at 20 °C makes the planned fit here";
  }

  private void smallBore(PartAcceptance bore) {
    String target = bore.acceptanceZone().map(zone -> ", to " + text.zone(zone) + " at 20 °C").orElse("");
    add("bore-small", "The bore is " + text.amount(bore.lack()) + " too small: deburr, let part and gauge come to one temperature"
        + " and measure again; then ream or hone" + target + ", a little at a time.", WORKSHOP);
  }

  private void wrongStud(PartAcceptance stud) {
    boolean large = out(stud, stud.excess());
    Length amount = large ? stud.excess() : stud.lack();
    add("stud-out", "The stud is " + text.amount(amount) + " too " + (large ? "large" : "small") + ": measure again with a"
        + " second gauge, mark it as not conforming and return it. Do not grind, polish or plate it: its case is thin.",
        WORKSHOP);
  }

  /** What would settle an undecided part. */
  private void doubts(String name, PartAcceptance part) {
    part.limitations().forEach(limit -> add(name + "-readings", "Measure the " + name + " again: " + limit + ".", MEASURING));
    if (part.bySize() == Conformity.UNDECIDED) {
      double margin = Math.abs(part.margin().mm());
      // Below a tenth of a micrometre no gauge of the workshop decides.
      String gauge =
          margin < 1e-4
              ? "no gauge settles it: a reading lies on the limit"
              : "a gauge with an uncertainty of at most " + text.amount(part.margin()) + " would show that it does "
                  + (part.margin().mm() < 0 ? "not conform" : "conform");
      add(name + "-doubt", "The " + name + " is not proved either way: measure again at 20 °C; " + gauge
          + ". Until then treat it as not accepted.", MEASURING);
    }
  }

  private void form(String name, PartAcceptance part, String advice) {
    double half = part.drawing().tolerance().mm() / 2;
    if (Math.max(part.outOfRound().mm(), part.taper().mm()) > half) {
      add(name + "-form", "The " + name + " is " + text.amount(part.outOfRound()) + " out of round and has "
          + text.amount(part.taper()) + " of taper, more than half of its tolerance: it bears in places only. " + advice + ".",
          FORM);
    }
  }

  private static boolean out(PartAcceptance part, Length beyond) {
    return beyond.compareTo(part.measured().gauge().uncertainty()) > 0;
  }

  private void add(String code, String advice, SourceRef source) {
    remedies.add(new Remedy(code, advice, source));
  }
}

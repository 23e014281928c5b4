// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.fits.Conformity;
import holdfast.fits.LimitsOfSize;
import holdfast.fits.PartAcceptance;
import holdfast.quantity.Length;
import holdfast.sheet.SheetUnits;
import holdfast.tables.SourceRef;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Collects what to do about single measured parts that do not pass, whatever they are mounted in. */
final class PartRemedies {
  static final SourceRef WORKSHOP = SourceRef.commonPractice("rework of bores and studs that are out of limits");
  static final SourceRef MATCH =
      SourceRef.derived("clearance limits of the plan against the measured sizes, drawn in by the uncertainty");
  private static final SourceRef MEASURING = SourceRef.commonPractice("measuring again before a part is condemned");
  private static final SourceRef FORM = SourceRef.commonPractice("error of form within half of the tolerance of size");

  private final MeasuredText text;
  private final List<Remedy> remedies = new ArrayList<>();

  PartRemedies(SheetUnits units) {
    this.text = new MeasuredText(units);
  }

  List<Remedy> list() {
    return List.copyOf(remedies);
  }

  void add(String code, String advice, SourceRef source) {
    remedies.add(new Remedy(code, advice, source));
  }

  /** A bore in the machine: what is cut away does not come back, so the way on starts with a matching part. */
  void bore(String name, PartAcceptance bore, String matching) {
    String code = code(name);
    if (bore.conformity() != Conformity.DISPROVED) {
      return;
    }
    if (out(bore, bore.excess())) {
      add(code + "-large", "The " + name + " is " + text.amount(bore.excess()) + " too large, and metal does not come back: stop"
          + " cutting. Ways on, in this order: " + matching + "; bore out and fit a sleeve, finished to size in place; any"
          + " other rework only with leave of the makers of machine and roller. Never knurl or"
          + " peen the bore, shim it, or fill it with adhesive without saying so: that hides a loose seat"
          + " from those who answer for it.", WORKSHOP);
      return;
    }
    String target = bore.acceptanceZone().map(zone -> ", to " + text.zone(zone) + " at 20 °C").orElse("");
    add(code + "-small", "The " + name + " is " + text.amount(bore.lack()) + " too small: deburr, let part and gauge come to one"
        + " temperature and measure again; then ream or hone" + target + ", a little at a time.", WORKSHOP);
  }

  /** A part that is bought: it goes back. */
  void bought(String name, PartAcceptance part) {
    if (part.conformity() != Conformity.DISPROVED) {
      return;
    }
    boolean large = out(part, part.excess());
    add(code(name) + "-out", "The " + name + " is " + text.amount(large ? part.excess() : part.lack()) + " too "
        + (large ? "large" : "small") + ": measure again with a second gauge, mark it as not conforming and return it. Do not"
        + " grind, polish or plate it: its case is thin.", WORKSHOP);
  }

  /** What would settle an undecided part. */
  void doubts(String name, PartAcceptance part) {
    String code = code(name);
    part.limitations().forEach(limit -> add(code + "-readings", "Measure the " + name + " again: " + limit + ".", MEASURING));
    if (part.bySize() == Conformity.UNDECIDED) {
      double margin = Math.abs(part.margin().mm());
      // Below a tenth of a micrometre no gauge of the workshop decides.
      String gauge =
          margin < 1e-4
              ? "no gauge settles it: a reading lies on the limit"
              : "a gauge with an uncertainty of at most " + text.amount(part.margin()) + " would show that it does "
                  + (part.margin().mm() < 0 ? "not conform" : "conform");
      add(code + "-doubt", "The " + name + " is not proved either way: measure again at 20 °C; " + gauge
          + ". Until then treat it as not accepted.", MEASURING);
    }
  }

  void form(String name, PartAcceptance part, String advice) {
    double half = part.drawing().tolerance().mm() / 2;
    if (Math.max(part.outOfRound().mm(), part.taper().mm()) > half) {
      add(code(name) + "-form", "The " + name + " is " + text.amount(part.outOfRound()) + " out of round and has "
          + text.amount(part.taper()) + " of taper, more than half of its tolerance: it bears in places only. " + advice + ".",
          FORM);
    }
  }

  /** Sizes of a shaft that make the planned fits, kept within its drawing where that leaves any. */
  String matching(String shaft, Optional<LimitsOfSize> match, LimitsOfSize drawing) {
    if (match.isEmpty()) {
      return "no round " + shaft + " makes the planned fit in so uneven a bore";
    }
    LimitsOfSize zone = match.get();
    Length lower = zone.lower().compareTo(drawing.lower()) >= 0 ? zone.lower() : drawing.lower();
    Length upper = zone.upper().compareTo(drawing.upper()) <= 0 ? zone.upper() : drawing.upper();
    boolean ofTheClass = lower.compareTo(upper) <= 0;
    return (ofTheClass ? "a " + shaft + " that conforms and measures "
        : "a special " + shaft + ", agreed with its maker, that measures ")
        + text.zone(ofTheClass ? new LimitsOfSize(lower, upper) : zone) + " at 20 °C makes the planned fit here";
  }

  private static String code(String name) {
    return name.replace(' ', '-');
  }

  private static boolean out(PartAcceptance part, Length beyond) {
    return beyond.compareTo(part.measured().gauge().uncertainty()) > 0;
  }
}

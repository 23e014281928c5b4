// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.fits.PartAcceptance;
import holdfast.quantity.Numbers;
import holdfast.seats.InterferenceFit;
import holdfast.seats.YieldRule;
import holdfast.sheet.Section;
import holdfast.sheet.SheetUnits;
import holdfast.tables.SourceRef;
import holdfast.trace.Cautions;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Both ears, pin and roller bore as measured: readings, verdict, what follows, and the hold point. */
final class YokeAcceptanceSection {
  private static final SourceRef BOTH = SourceRef.derived("the pin is tight in both ears at the end of the stroke");
  private static final SourceRef LEAN = SourceRef.derived("the looser ear over both, pin and ring leaning the same way");
  private static final List<String> EARS = List.of("first ear", "second ear");

  private YokeAcceptanceSection() {}

  static Section of(YokeAcceptance parts) {
    SheetUnits units = parts.plan().units();
    Section.Builder section = Section.of("Parts as measured", parts.plan().units());
    AcceptanceEntries entries = new AcceptanceEntries(section, units);
    entries.verdict(parts.verdict(), parts.restsOn(), parts.stops());
    for (PartAcceptance part : parts.parts()) {
      entries.part(part.name().substring(0, 1).toUpperCase(Locale.ROOT) + part.name().substring(1), part);
    }
    for (int ear = 0; ear < 2; ear++) {
      entries.fit("Pin in the " + EARS.get(ear), parts.ears().get(ear));
      press(section, EARS.get(ear), parts.presses().get(ear), units);
    }
    entries.fit(parts.plan().roller().innerRing() ? "Roller on the pin" : "Internal clearance", parts.ring());
    parts.pressForce().ifPresent(force ->
        section.entry("Press force at the end of the stroke, all seats", SeatSection.band(force, units) + ", friction "
            + parts.plan().fork().pressingFriction(), BOTH).cautions(Cautions.of("force-rating")));
    section.entry("Lean of the roller, these parts", "up to " + parts.tilt(), LEAN);
    parts.price().ifPresent(price -> section.entry("Life ratio of that lean",
        Numbers.significant(price.lifeRatio(), 2) + " of the aligned life", price.sources()));
    section.warnings(parts.warnings());
    entries.holdPoint(parts.remedies());
    return section.build();
  }

  private static void press(Section.Builder section, String ear, Optional<InterferenceFit> press, SheetUnits units) {
    press.filter(tight -> tight.pressure().greatest().megapascal() > 0)
        .ifPresent(tight -> section.entry("Joint pressure, " + ear, SeatSection.pressure(tight, units) + "; "
            + SeatSection.limits(tight.limits(YieldRule.VON_MISES), units, "pin", "ear"), tight.sources()));
  }
}

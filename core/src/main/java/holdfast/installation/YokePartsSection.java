// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.fits.Fit;
import holdfast.sheet.Block;
import holdfast.sheet.Section;
import holdfast.sheet.SheetUnits;
import holdfast.tables.SourceRef;

/** Roller, pin and fork: what to machine, to gauge and to measure. */
final class YokePartsSection {
  private static final SourceRef GIVEN = SourceRef.commonPractice("as stated for this job");
  private static final SourceRef RACEWAY =
      SourceRef.published("Needle roller bearings catalogue 2300/E", "needle rollers without inner ring: raceway");

  private YokePartsSection() {}

  static Section of(YokePlan plan) {
    YokeRoller roller = plan.roller();
    Pin pin = plan.pin();
    Fork fork = plan.fork();
    SheetUnits u = plan.units();
    Fit ears = plan.earFit();
    Fit seat = plan.rollerFit();
    Section.Builder section =
        Section.of("Parts and drawing limits", plan.units())
            .entry("Roller", roller.name() + ", D " + u.text(roller.outsideDiameter()) + ", ring width "
                + u.text(roller.ringWidth()) + (roller.crowned() ? ", crowned; " : ", flat; ") + roller.kind()
                + (roller.sealed() ? ", sealed" : ", open") + (roller.innerRing() ? "" : ", without inner ring"), GIVEN)
            .entry("Load ratings, " + roller.ratingsFrom(), PartsSection.ratings(roller.ratings(), u), GIVEN)
            .entry("Pin", pin(plan), GIVEN, pin.material().source())
            .entry("Fork", fork.name() + ", " + u.text(fork.ear().words()) + ", ears " + u.text(fork.thickness())
                + " thick, gap " + u.text(fork.gap()), GIVEN, fork.ear().material().source())
            .entry("Ears " + fork.boreTolerance() + ", go … no-go", PartsSection.limits(ears.hole(), u), ears.sources())
            .entry("Pin " + pin.tolerance(), PartsSection.limits(ears.shaft(), u), ears.sources())
            .entry((roller.innerRing() ? "Roller bore " : "Inscribed circle ") + roller.boreTolerance(),
                PartsSection.limits(seat.hole(), u), seat.sources())
            .entry("Fit of the pin in the ears", fit(ears, u), ears.sources())
            .entry(roller.innerRing() ? "Fit of the roller on the pin" : "Radial internal clearance", fit(seat, u),
                seat.sources());
    if (!roller.innerRing()) {
      section.entry("Pin as a raceway", "58 to 64 HRC, Ra 0.2 µm, roundness IT3", RACEWAY);
    }
    return section
        .picture(FitPicture.of(ears, u, "pin"))
        .picture(ForkPicture.of(plan))
        .warnings(ears.warnings())
        .warnings(seat.warnings())
        .warnings(roller.ratingsFrom().warnings())
        .build();
  }

  private static String fit(Fit fit, SheetUnits u) {
    return u.text(fit.nominalSize()) + " " + PartsSection.designation(fit, "pin") + ": " + fit.kind() + ", "
        + PartsSection.span(fit, u);
  }

  private static String pin(YokePlan plan) {
    Pin pin = plan.pin();
    SheetUnits u = plan.units();
    String holes =
        pin.greaseBore().mm() == 0
            ? "solid"
            : "grease bore " + u.text(pin.greaseBore()) + (pin.through() ? " right through" : " from one end")
                + (pin.crossHole().mm() == 0 ? "" : ", cross hole " + u.text(pin.crossHole()));
    String hardness = pin.statedHardness().isPresent() ? ", surface " + pin.statedHardness().getAsDouble() + " HRC" : "";
    return u.text(plan.roller().bore()) + ", " + holes + ", " + u.text(pin.material().words()) + hardness;
  }

  /** What to measure before the parts meet. */
  static Section measure(YokePlan plan) {
    SheetUnits u = plan.units();
    Fit ears = plan.earFit();
    return Section.of("Check before joining", plan.units())
        .notice(Block.Weight.ADVICE, MeasureSection.HOW, MeasureSection.REFERENCE, MeasureSection.STATIONS)
        .blank("Bores of both ears, least and greatest", MeasureSection.accept(ears.hole().limits(), u))
        .blank("Pin, least and greatest", MeasureSection.accept(ears.shaft().limits(), u))
        .blank("Roller bore, least and greatest", MeasureSection.accept(plan.rollerFit().hole().limits(), u))
        .blank("Both ears in line: a test pin slides through", "")
        .blank("Gap between the ears", "at least " + u.text(plan.roller().seatWidth()))
        .blank("Temperature of the parts", u.temperatureUnit())
        .blank("Gauges, calibration due", "")
        .blank("H1  Seat accepted by", "")
        .build();
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.fits.Fit;
import holdfast.fits.LimitsOfSize;
import holdfast.sheet.Block;
import holdfast.sheet.Section;
import holdfast.sheet.SheetUnits;
import holdfast.tables.SourceRef;
import holdfast.trace.Message;

/** What to measure before the parts meet. */
final class MeasureSection {
  static final Message HOW = Message.of("Bring all parts and gauges to one temperature; sizes hold at ", InstallationPlan.SHOP,
      ". Measure at three stations in two directions.");
  static final SourceRef REFERENCE = SourceRef.memory("ISO 1:2022", "reference temperature 20 °C");
  static final SourceRef STATIONS = SourceRef.commonPractice("three stations, two directions");

  private MeasureSection() {}

  static Section of(InstallationPlan plan) {
    Fit fit = plan.fit();
    SheetUnits u = plan.units();
    return Section.of("Check before joining", plan.units())
        .notice(Block.Weight.ADVICE, HOW, REFERENCE, STATIONS)
        .blank("Bore, least and greatest", accept(fit.hole().limits(), u))
        .blank("Stud, least and greatest", accept(fit.shaft().limits(), u))
        .blank("Run-out of the face", plan.member().statedRunOut().map(runOut -> "at most " + u.text(runOut)).orElse(""))
        .blank("Temperature of the parts", u.temperatureUnit())
        .blank("Gauges, calibration due", "")
        .blank("H1  Seat accepted by", "")
        .build();
  }

  static String accept(LimitsOfSize limits, SheetUnits u) {
    return "accept " + u.limits(limits.lower(), limits.upper());
  }
}

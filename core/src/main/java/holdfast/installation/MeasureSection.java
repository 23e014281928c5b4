package holdfast.installation;

import holdfast.fits.Fit;
import holdfast.sheet.Block;
import holdfast.sheet.Section;
import holdfast.tables.SourceRef;

/** What to measure before the parts meet. */
final class MeasureSection {
  private static final SourceRef REFERENCE = SourceRef.memory("ISO 1", "reference temperature 20 °C");
  private static final SourceRef STATIONS = SourceRef.commonPractice("three stations, two directions");

  private MeasureSection() {}

  static Section of(InstallationPlan plan) {
    Fit fit = plan.fit();
    return Section.of("Check before joining")
        .notice(
            Block.Weight.ADVICE,
            "Bring stud, member and gauges to one temperature; sizes hold at 20 °C. Measure at three stations in two directions.",
            REFERENCE,
            STATIONS)
        .blank("Bore, least and greatest", "accept " + fit.hole().limits())
        .blank("Stud, least and greatest", "accept " + fit.shaft().limits())
        .blank("Temperature of the parts", "°C")
        .blank("Gauge, calibration due", "")
        .build();
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.installation;

import static holdfast.quantity.Units.GPa;
import static holdfast.quantity.Units.MPa;
import static holdfast.quantity.Units.degC;
import static holdfast.quantity.Units.inch;
import static holdfast.quantity.Units.mm;
import static holdfast.quantity.Units.um;
import static holdfast.quantity.Units.umPerMK;
import static holdfast.verification.installation.RollerSuites.HALF_DIGIT;
import static holdfast.verification.installation.RollerSuites.suite;

import holdfast.fits.Fit;
import holdfast.fits.Gauge;
import holdfast.fits.LimitDeviations;
import holdfast.fits.LimitsOfSize;
import holdfast.fits.MeasuredFit;
import holdfast.fits.MeasuredPart;
import holdfast.fits.MeasuringScheme;
import holdfast.fits.PartAcceptance;
import holdfast.fits.Readings;
import holdfast.fits.TolerancedSize;
import holdfast.installation.Acceptance;
import holdfast.installation.ExampleJobs;
import holdfast.installation.InstallationPlan;
import holdfast.installation.YokeAcceptance;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.quantity.Stress;
import holdfast.seats.Band;
import holdfast.seats.FrictionBand;
import holdfast.seats.InnerPart;
import holdfast.seats.InterferenceBand;
import holdfast.seats.InterferenceFit;
import holdfast.seats.Material;
import holdfast.seats.OuterPart;
import holdfast.seats.RoughnessRule;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Suites of measured parts and of what follows from them. */
final class AcceptanceSuites {
  private static final String ROUNDED = "half a unit of the last digit kept of the exact fraction";
  private static final String SCAN = "one step of the scan";
  private static final SourceRef GIVEN = SourceRef.commonPractice("as the case states it");

  private AcceptanceSuites() {}

  static List<Suite> all() {
    return List.of(
        suite("measured-parts", "Measured parts against their drawing, with exact fractions", AcceptanceSuites::part,
            "holdfast.fits.PartAcceptance", "holdfast.fits.MeasuredPart#readings", "holdfast.fits.Gauge",
            "holdfast.fits.Conformity#of"),
        suite("accepted-pairs", "Verdicts on measured pairs of the bundled example", AcceptanceSuites::pair,
            "holdfast.installation.Acceptance#of"),
        suite("accepted-yokes", "Both ears, pin and roller bore of the bundled yoke job as measured", AcceptanceSuites::yoke,
            "holdfast.installation.YokeAcceptance#of"),
        suite("measured-fits", "Fits of measured parts and their pressure, with exact fractions", AcceptanceSuites::fit,
            "holdfast.fits.MeasuredFit", "holdfast.fits.Readings", "holdfast.seats.InterferenceBand#of",
            "holdfast.seats.InterferenceFit#pressure"),
        suite("measured-seats", "Worked numbers of the trade for measured seats", AcceptanceSuites::seat,
            "holdfast.fits.MeasuredPart#shownFor", "holdfast.seats.InterferenceFit#pressInForce"));
  }

  private static MeasuredPart measured(Table cases, int row) {
    Gauge gauge =
        Gauge.of("gauge", um(cases.number(row, "uncertainty")))
            .at(degC(cases.number(row, "gauge_temperature")), umPerMK(cases.number(row, "gauge_expansion")));
    MeasuredPart part = MeasuredPart.by(gauge).at(degC(cases.number(row, "temperature")));
    for (String station : cases.text(row, "readings").split(";", -1)) {
      part = part.station(lengths(station).toArray(Length[]::new));
    }
    return part;
  }

  private static List<Length> lengths(String texts) {
    return Arrays.stream(texts.split(" ", -1)).map(text -> mm(Double.parseDouble(text))).toList();
  }

  private static void part(Table cases, int row, List<Comparison> result) {
    LimitDeviations deviations = new LimitDeviations(um(cases.number(row, "lower")), um(cases.number(row, "upper")));
    TolerancedSize drawing = TolerancedSize.given(mm(cases.number(row, "nominal")), deviations, "as stated", GIVEN);
    PartAcceptance part =
        new PartAcceptance(
            "part", drawing, measured(cases, row), umPerMK(cases.number(row, "expansion")), MeasuringScheme.usual());
    size(cases, row, "least", part.sizes().lower(), result);
    size(cases, row, "greatest", part.sizes().upper(), result);
    size(cases, row, "mean", part.mean(), result);
    amount(cases, row, "out_of_round", part.outOfRound(), result);
    amount(cases, row, "taper", part.taper(), result);
    amount(cases, row, "margin", part.margin(), result);
    result.add(named(cases, row, "verdict").words(cases.text(row, "verdict"), part.conformity().toString()));
  }

  private static void pair(Table cases, int row, List<Comparison> result) {
    Table parts = Cases.table("installation/measured-parts");
    Acceptance pair =
        Acceptance.of(
            InstallationPlan.example().withBore("S6"),
            measured(parts, parts.find("part", cases.text(row, "bore"))),
            measured(parts, parts.find("part", cases.text(row, "stud"))));
    result.add(named(cases, row, "fit").words(cases.text(row, "fit_verdict"), pair.fitConformity().toString()));
    result.add(named(cases, row, "verdict").words(cases.text(row, "verdict"), pair.verdict().toString()));
  }

  private static void yoke(Table cases, int row, List<Comparison> result) {
    YokeAcceptance parts =
        YokeAcceptance.of(
            ExampleJobs.yokeInFork(), read(cases, row, "first_ear"), read(cases, row, "second_ear"), read(cases, row, "pin"),
            read(cases, row, "roller_bore"), degC(20));
    result.add(named(cases, row, "fits").words(cases.text(row, "fits"), parts.fitConformity().toString()));
    result.add(named(cases, row, "verdict").words(cases.text(row, "verdict"), parts.verdict().toString()));
    result.add(named(cases, row, "lean")
        .numbers(cases.number(row, "lean"), parts.tilt().in(KnownUnits.MRAD), 0.5e-6 + 1e-9, "mrad", ROUNDED));
    // 1e-12 mm of noise in an interference of some micrometres is 1e-9 of the force.
    result.add(named(cases, row, "press_force")
        .numbers(cases.number(row, "press_force"), parts.pressForce().orElseThrow().greatest().newton(), 0.5e-3 + 1e-3, "N",
            ROUNDED + ", and the noise of sizes in mm"));
    Optional<LimitsOfSize> match = parts.matchingPin();
    if (match.isEmpty() || !cases.has(row, "pin_least")) {
      result.add(named(cases, row, "matching pin").words(
          cases.has(row, "pin_least") ? "some" : "none", match.isPresent() ? "some" : "none"));
      return;
    }
    // The scan finds the first and the last step inside.
    result.add(named(cases, row, "pin_least")
        .numbers(cases.number(row, "pin_least"), match.get().lower().mm(), 1e-5 + 1e-9, "mm", SCAN));
    result.add(named(cases, row, "pin_greatest")
        .numbers(cases.number(row, "pin_greatest"), match.get().upper().mm(), 1e-5 + 1e-9, "mm", SCAN));
  }

  private static MeasuredPart read(Table cases, int row, String column) {
    List<Length> sizes = lengths(cases.text(row, column));
    MeasuredPart part = MeasuredPart.by(Gauge.of("gauge", um(cases.number(row, "uncertainty"))));
    for (int station = 0; station < sizes.size(); station += 2) {
      part = part.station(sizes.get(station), sizes.get(station + 1));
    }
    return part;
  }

  private static void fit(Table cases, int row, List<Comparison> result) {
    Length nominal = mm(cases.number(row, "nominal"));
    Readings hole = Readings.at20(um(cases.number(row, "hole_uncertainty")), array(cases, row, "hole"));
    Readings shaft = Readings.at20(um(cases.number(row, "shaft_uncertainty")), array(cases, row, "shaft"));
    MeasuredFit fit = new MeasuredFit(drawn(nominal), hole, shaft);
    amount(cases, row, "least", fit.minimumClearance(), result);
    amount(cases, row, "greatest", fit.maximumClearance(), result);
    amount(cases, row, "mean", fit.clearance(), result);
    amount(cases, row, "uncertainty", fit.uncertainty(), result);
    String kind = fit.certainKind().map(certain -> "no doubt: " + certain).orElse("in doubt");
    result.add(named(cases, row, "kind").words(cases.text(row, "kind"), kind));
    Band<Stress> pressure =
        fit.minimumClearance().compareTo(fit.uncertainty()) >= 0
            ? new Band<>(new Stress(0), new Stress(0))
            : InterferenceFit.of(
                    InnerPart.hollow(material(cases, row, "stud"), mm(cases.number(row, "stud_hole"))),
                    OuterPart.ring(material(cases, row, "hub"), mm(cases.number(row, "outside"))),
                    InterferenceBand.of(fit), nominal)
                .withSmoothing(RoughnessRule.NONE)
                .pressure();
    pressure(cases, row, "pressure_least", pressure.least(), result);
    pressure(cases, row, "pressure_greatest", pressure.greatest(), result);
  }

  /** The drawing plays no part in clearances. */
  private static Fit drawn(Length nominal) {
    LimitDeviations any = new LimitDeviations(um(-50), um(50));
    return new Fit(nominal, "as stated", any, any);
  }

  private static Length[] array(Table cases, int row, String column) {
    return lengths(cases.text(row, column)).toArray(Length[]::new);
  }

  private static Material material(Table cases, int row, String part) {
    return Material.named(part, GIVEN)
        .elastic(MPa(cases.number(row, part + "_modulus")), cases.number(row, part + "_poisson"))
        .expansion(umPerMK(11.5))
        .build();
  }

  private static void seat(Table cases, int row, List<Comparison> result) {
    Optional<Double> friction = cases.has(row, "friction") ? Optional.of(cases.number(row, "friction")) : Optional.empty();
    double computed =
        switch (cases.text(row, "unit")) {
          case "µm" -> growth();
          case "MPa" -> tight().pressure().greatest().base();
          case "kN" -> tight().pressInForce(FrictionBand.of(friction.get(), friction.get())).greatest().in(KnownUnits.KN);
          default -> throw new IllegalStateException("no such unit: " + cases.text(row, "unit"));
        };
    result.add(
        Cases.comparison(cases, row, Evidence.RECOMBINED)
            .numbers(cases.number(row, "value"), computed, Cases.halfLastDigit(cases.text(row, "value")),
                cases.text(row, "unit"), HALF_DIGIT));
  }

  /** What a gauge at 20 °C shows of a stud at 30 °C, over its size. */
  private static double growth() {
    MeasuredPart stud = MeasuredPart.by(Gauge.of("micrometer", um(1)).steelAt(degC(20))).station(mm(16)).at(degC(30));
    return stud.shownFor(mm(16), umPerMK(11.5)).minus(mm(16)).in(KnownUnits.UM);
  }

  private static InterferenceFit tight() {
    Length nominal = inch("5/8");
    Readings stud = Readings.at20(um(0), inch(0.626));
    MeasuredFit fit = new MeasuredFit(drawn(nominal), Readings.at20(um(0), nominal), stud);
    Material steel = Material.named("steel", GIVEN).elastic(GPa(206.8427), 0.3).expansion(umPerMK(11.5)).build();
    return InterferenceFit.of(
            InnerPart.solid(steel), OuterPart.ring(steel, nominal.times(2)), InterferenceBand.of(fit), mm(19))
        .withSmoothing(RoughnessRule.NONE);
  }

  private static Comparison.Builder named(Table cases, int row, String what) {
    return Comparison.of(cases.address(row) + ", " + what.replace('_', ' '), Cases.source(cases, row), Evidence.REFERENCE)
        .disclosed(cases.text(row, "disclosed"));
  }

  private static void size(Table cases, int row, String column, Length computed, List<Comparison> result) {
    result.add(named(cases, row, column).numbers(cases.number(row, column), computed.mm(), 0.5e-9, "mm", ROUNDED));
  }

  private static void amount(Table cases, int row, String column, Length computed, List<Comparison> result) {
    // Differences of sizes in mm leave noise of binary fractions: for sizes of some 400 mm below 1e-9 µm.
    result.add(
        named(cases, row, column).numbers(cases.number(row, column), computed.in(KnownUnits.UM), 0.5e-6 + 1e-9, "µm", ROUNDED));
  }

  private static void pressure(Table cases, int row, String column, Stress computed, List<Comparison> result) {
    // 1e-12 mm of noise in an interference of some micrometres is 1e-9 of the pressure.
    result.add(named(cases, row, column).numbers(cases.number(row, column), computed.base(), 0.5e-6 + 1e-6, "MPa",
        ROUNDED + ", and the noise of sizes in mm"));
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.fits;

import holdfast.fits.FitRequest;
import holdfast.fits.FitSelector;
import holdfast.fits.Gauge;
import holdfast.fits.GaugeLimits;
import holdfast.fits.LimitDeviations;
import holdfast.fits.MeasuredPart;
import holdfast.fits.MeasuringScheme;
import holdfast.fits.PartAcceptance;
import holdfast.fits.PreferredFit;
import holdfast.fits.PreferredFits;
import holdfast.fits.PreferredList;
import holdfast.fits.ToleranceClass;
import holdfast.fits.TolerancedSize;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.quantity.Temperature;
import holdfast.quantity.ThermalExpansion;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.RowSuite;
import holdfast.verification.Suite;
import java.util.Arrays;
import java.util.List;

/** Printed fits through the selector, the list of preferred fits and the limit gauges; readings against a scheme. */
final class TypedFitSuites {
  private static final SourceRef GIVEN = SourceRef.commonPractice("as the case states it");

  private TypedFitSuites() {}

  static List<Suite> all() {
    return List.of(
        new RowSuite(
            "fits/selected-fits",
            "Printed fits: found among all fits by their own printed clearances, and in their list",
            List.of("holdfast.fits.FitSelector", "holdfast.fits.PreferredFits#find"),
            () -> Cases.table("fits/fit-examples"),
            TypedFitSuites::selected),
        new RowSuite(
            "fits/gauges",
            "Go and no-go sizes from printed limit deviations",
            List.of("holdfast.fits.GaugeLimits"),
            () -> Cases.table("fits/fit-examples"),
            TypedFitSuites::gauges),
        RowSuite.of(
            "fits/readings-required",
            Cases.table("fits/readings-required").descriptor().title(),
            TypedFitSuites::required,
            "holdfast.fits.MeasuringScheme",
            "holdfast.fits.PartAcceptance#conformity"));
  }

  private static void selected(Table cases, int row, List<Comparison> result) {
    if (!cases.has(row, "hole_class") || !cases.has(row, "shaft_class") || !cases.has(row, "max_clearance")
        || !cases.has(row, "min_clearance")) {
      return;
    }
    String fit = cases.text(row, "hole_class") + "/" + cases.text(row, "shaft_class");
    String name = cases.text(row, "nominal_mm") + " " + fit;
    double least = cases.number(row, "min_clearance");
    double greatest = cases.number(row, "max_clearance");
    FitSelector all = FitSelector.anyBasis(new Length(cases.number(row, "nominal_mm")));
    String ours =
        found(request(all, least, greatest), fit)
            + ", a micrometre narrower "
            + found(request(all, least + 1, greatest), fit)
            + " and "
            + found(request(all, least, greatest - 1), fit);
    result.add(
        Comparison.of(name + ", selected by its printed clearances", Cases.source(cases, row), Evidence.RECOMBINED)
            .words("found, a micrometre narrower not found and not found", ours));
    if (cases.text(row, "locator").startsWith("Table 6-5")) {
      // The list was read from another table of the same standard, the description of preferred fits.
      List<PreferredFit> listings =
          PreferredFits.find(ToleranceClass.of(cases.text(row, "hole_class")), ToleranceClass.of(cases.text(row, "shaft_class")));
      String listed =
          listings.stream()
              .filter(listing -> listing.list() == PreferredList.ANSI_PREFERRED)
              .map(listing -> "preferred " + listing.kind())
              .findFirst()
              .orElse("not preferred");
      result.add(
          Comparison.of(name + ", listed", Cases.source(cases, row), Evidence.PRINT)
              .words("preferred " + cases.text(row, "kind") + " fit", listed));
    }
  }

  private static FitRequest request(FitSelector selector, double least, double greatest) {
    if (least >= 0) {
      return selector.clearanceBetween(KnownUnits.UM.of(least), KnownUnits.UM.of(greatest));
    }
    return greatest <= 0
        ? selector.interferenceBetween(KnownUnits.UM.of(-greatest), KnownUnits.UM.of(-least))
        : selector.between(KnownUnits.UM.of(-least), KnownUnits.UM.of(greatest));
  }

  private static String found(FitRequest request, String fit) {
    return request.candidates().stream().anyMatch(candidate -> candidate.fit().designation().equals(fit)) ? "found" : "not found";
  }

  private static void gauges(Table cases, int row, List<Comparison> result) {
    if (!cases.has(row, "nominal_mm")) {
      return;
    }
    for (String part : List.of("hole", "shaft")) {
      if (cases.has(row, part + "_class") && cases.has(row, part + "_upper") && cases.has(row, part + "_lower")) {
        boolean hole = part.equals("hole");
        TolerancedSize size = TolerancedSize.of(new Length(cases.number(row, "nominal_mm")), cases.text(row, part + "_class"));
        GaugeLimits gauge = hole ? GaugeLimits.plug(size) : GaugeLimits.ring(size);
        String name = cases.text(row, "nominal_mm") + " " + cases.text(row, part + "_class") + ", ";
        side(cases, row, part + (hole ? "_lower" : "_upper"), name + "go", gauge.go(), result);
        side(cases, row, part + (hole ? "_upper" : "_lower"), name + "no-go", gauge.noGo(), result);
      }
    }
  }

  private static void side(Table cases, int row, String column, String name, Length computed, List<Comparison> result) {
    double printed = cases.number(row, "nominal_mm") + cases.number(row, column) / 1000;
    result.add(
        Comparison.of(name, Cases.source(cases, row), Evidence.RECOMBINED)
            .numbers(printed, computed.mm(), 1e-9, "mm", "table values are exact; noise of sizes in mm"));
  }

  private static void required(Table cases, int row, List<Comparison> result) {
    Temperature at20 = new Temperature(20);
    MeasuredPart part =
        MeasuredPart.by(Gauge.of("gauge", KnownUnits.UM.of(1)).at(at20, new ThermalExpansion(11.5e-6))).at(at20);
    for (String station : cases.text(row, "readings").split(";", -1)) {
      part = part.station(Arrays.stream(station.split(" ", -1)).map(Double::parseDouble).map(Length::new).toArray(Length[]::new));
    }
    String[] scheme = cases.text(row, "scheme").split(" x ", -1);
    LimitDeviations h7 = new LimitDeviations(KnownUnits.UM.of(0), KnownUnits.UM.of(21));
    PartAcceptance acceptance =
        new PartAcceptance(
            "bore",
            TolerancedSize.given(new Length(25), h7, "as stated", GIVEN),
            part,
            new ThermalExpansion(11.5e-6),
            new MeasuringScheme(Integer.parseInt(scheme[0]), Integer.parseInt(scheme[1])));
    result.add(
        Cases.comparison(cases, row, Evidence.PRACTICE)
            .words(cases.text(row, "verdict"), acceptance.conformity().toString()));
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.installation;

import static holdfast.quantity.Units.mm;

import holdfast.fits.LimitDeviations;
import holdfast.fits.ToleranceClass;
import holdfast.fleet.SparesKernel;
import holdfast.lubrication.GreaseQuantityKernel;
import holdfast.lubrication.RelubricationKernel;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.rollers.EccentricKernel;
import holdfast.rollers.RollerGeometryKernel;
import holdfast.rollers.RollerSeries;
import holdfast.rollers.RollerSize;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.RowSuite;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.List;

/** Suites of rollers, greasing, fleets and measured parts. */
public final class InstallationSuites {
  private InstallationSuites() {}

  /**
   * All suites of this subject.
   *
   * @return the suites in the order of the report
   */
  public static List<Suite> all() {
    List<Suite> suites = new ArrayList<>(own());
    suites.addAll(RollerSuites.all());
    suites.addAll(CareSuites.all());
    suites.addAll(AcceptanceSuites.all());
    suites.addAll(PaperSuites.all());
    suites.add(RollerValues.suite());
    suites.add(OtherRoads.suite());
    suites.add(new WholeJobSuite());
    return List.copyOf(suites);
  }

  private static List<Suite> own() {
    return List.of(
        suite(
            "roller-dimensions",
            "Stud roller dimensions: sum of parts and inches against print",
            "holdfast.rollers.RollerSeries#size",
            InstallationSuites::dimension),
        suite(
            "roller-tolerances",
            "Printed limits of stud and bore against ISO 286 classes",
            "holdfast.fits.ToleranceClass#limitDeviations",
            InstallationSuites::tolerance),
        suite(
            "grease",
            "Grease quantities and corrections of the interval",
            "holdfast.lubrication.GreaseQuantityKernel#throughRing",
            InstallationSuites::grease),
        suite(
            "spares",
            "Spares for a demand against the quantile of the Poisson distribution",
            "holdfast.fleet.SparesKernel#stock",
            InstallationSuites::spares),
        suite(
            "eccentric",
            "Adjusting torque of eccentric rollers",
            "holdfast.rollers.EccentricKernel#adjustingTorque",
            InstallationSuites::eccentric));
  }

  private static Suite suite(String table, String title, String calculation, RowSuite.Check check) {
    return RowSuite.of("installation/" + table, title, check, calculation);
  }

  private static void dimension(Table cases, int row, List<Comparison> result) {
    RollerSize size =
        RollerSeries.valueOf(cases.text(row, "series")).size(mm(cases.number(row, "outside_diameter")));
    String dimension = cases.text(row, "dimension");
    Length computed =
        switch (dimension) {
          case "overall length" ->
              mm(
                  RollerGeometryKernel.overallLength(
                      size.ringWidth().mm(), size.stud().overhang().mm(), size.stud().length().mm()));
          case "outside diameter in inches" -> size.outsideDiameter();
          case "stud in inches" -> size.stud().diameter();
          default -> throw new IllegalStateException("no such dimension: " + dimension);
        };
    boolean inches = dimension.endsWith("in inches");
    double printed = cases.number(row, "printed");
    double lastDigit = Cases.halfLastDigit(cases.text(row, "printed"));
    result.add(
        Cases.comparison(cases, row, Evidence.RECOMBINED)
            .numbers(
                printed,
                inches ? computed.in(KnownUnits.INCH) : computed.mm(),
                // Inches: tables hold mm to 0.001. Sum: ring, stud and twice the overhang are rounded like the length.
                inches ? 0.0005 / 25.4 + 1e-6 : lastDigit + 4 * Math.min(lastDigit, 0.05),
                inches ? "in" : "mm",
                inches ? "half a micrometre" : "half a unit of the last digit of the length and of its parts"));
  }

  private static void tolerance(Table cases, int row, List<Comparison> result) {
    LimitDeviations deviations =
        ToleranceClass.of(cases.text(row, "tolerance_class")).limitDeviations(mm(cases.number(row, "nominal")));
    boolean hole = cases.text(row, "tolerance_class").startsWith("H");
    Length limit = hole ? deviations.upper() : deviations.lower();
    // The cells of the tolerance classes were compared with such prints before.
    result.add(
        Cases.comparison(cases, row, Evidence.RECOMBINED)
            .numbers(cases.number(row, "limit"), limit.in(KnownUnits.UM), 1e-9, "µm", "whole micrometres are printed"));
  }

  private static void grease(Table cases, int row, List<Comparison> result) {
    double first = cases.number(row, "first");
    double second = cases.has(row, "second") ? cases.number(row, "second") : 0;
    String quantity = cases.text(row, "quantity");
    double computed =
        switch (quantity) {
          case "through ring" -> GreaseQuantityKernel.throughRing(first, second);
          case "shop constant" -> GreaseQuantityKernel.fromSide(first, second) / 28.349523125;
          case "halving per 15 K" -> RelubricationKernel.halvingPer15K(first);
          case "division per 10 K" -> RelubricationKernel.divisionPer10K(first);
          case "chart input" -> RelubricationKernel.chartInput(first, second, 3);
          default -> throw new IllegalStateException("no such quantity: " + quantity);
        };
    result.add(
        Cases.comparison(cases, row, Evidence.valueOf(cases.text(row, "evidence")))
            .numbers(
                cases.number(row, "value"),
                computed,
                Cases.halfLastDigit(cases.text(row, "value")),
                "",
                "half a unit of the last printed digit"));
  }

  private static void spares(Table cases, int row, List<Comparison> result) {
    result.add(
        Cases.comparison(cases, row, Evidence.REFERENCE)
            .numbers(
                cases.number(row, "stock"),
                SparesKernel.stock(cases.number(row, "mean"), cases.number(row, "level")),
                0,
                "",
                "whole parts"));
  }

  private static void eccentric(Table cases, int row, List<Comparison> result) {
    result.add(
        Cases.comparison(cases, row, Evidence.REFERENCE)
            .numbers(
                cases.number(row, "torque"),
                EccentricKernel.adjustingTorque(cases.number(row, "rating"), cases.number(row, "eccentricity")),
                Cases.halfLastDigit(cases.text(row, "torque")),
                "",
                "half a unit of the last printed digit"));
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.installation;

import static holdfast.verification.installation.RollerSuites.HALF_DIGIT;
import static holdfast.verification.installation.RollerSuites.suite;

import holdfast.failures.MisalignmentLimit;
import holdfast.fleet.FleetPlan;
import holdfast.lubrication.TradeFactor;
import holdfast.quantity.Angle;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Unit;
import holdfast.tables.Provenance;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.List;
import java.util.Map;

/** Suites of relubrication factors, limits of misalignment and replacement. */
final class CareSuites {
  private static final Map<String, Unit<Angle>> UNITS =
      Map.of("rad", KnownUnits.RAD, "mrad", KnownUnits.MRAD, "arcmin", KnownUnits.ARCMIN, "deg", KnownUnits.DEG);

  private CareSuites() {}

  static List<Suite> all() {
    return List.of(
        suite("relubrication-factors", "Factors of the empirical interval, by condition and by number", CareSuites::factor,
            "holdfast.lubrication.TradeFactor#of"),
        suite("misalignment-units", "Limits of misalignment against the form in which they are printed", CareSuites::limit,
            "holdfast.failures.MisalignmentLimit"),
        suite("renewal", "Expected replacements of Weibull lives against the power series", CareSuites::renewal,
            "holdfast.fleet.FleetPlan#expectedReplacements"));
  }

  private static void factor(Table cases, int row, List<Comparison> result) {
    String factor = cases.text(row, "factor");
    Evidence evidence = cases.provenance(row) == Provenance.MEMORY ? Evidence.RECALLED : Evidence.RECOMBINED;
    result.add(
        Cases.comparison(cases, row, evidence)
            .numbers(cases.number(row, "value"), TradeFactor.of(factor, cases.text(row, "condition")).value(), 0, "",
                "a tabulated value"));
    if (cases.has(row, "probe")) {
      result.add(
          Comparison.of(cases.address(row) + ", at " + cases.text(row, "probe"), Cases.source(cases, row), evidence)
              .numbers(cases.number(row, "value"), TradeFactor.of(factor, cases.number(row, "probe")).value(), 0, "",
                  "a tabulated value"));
    }
  }

  private static void limit(Table cases, int row, List<Comparison> result) {
    Table limits = TableSet.bundled().table("installation/collected/2026/misalignment-limits");
    String source = cases.text(row, "source");
    String printed = cases.text(row, "printed");
    int stored = limits.find("kind", cases.text(row, "kind"), "printed", printed, "source", source);
    MisalignmentLimit limit =
        MisalignmentLimit.all().stream()
            .filter(l -> l.kind().toString().equals(cases.text(row, "kind")) && l.printed().equals(printed))
            .filter(l -> l.source().document().equals(source))
            .findFirst()
            .orElseThrow();
    Unit<Angle> unit = UNITS.get(cases.text(row, "unit"));
    boolean twin = cases.has(row, "form");
    double tolerance =
        twin
            ? Cases.halfLastDigit(cases.text(row, "value"))
            : KnownUnits.MRAD.of(Cases.halfLastDigit(limits.text(stored, "limit"))).in(unit);
    result.add(
        Comparison.of(limits.address(stored) + ", in " + unit.symbol(), Cases.source(cases, row), Evidence.RECONSTRUCTION)
            .disclosed(cases.text(row, "disclosed"))
            .numbers(cases.number(row, "value"), limit.limit().in(unit), tolerance, unit.symbol(),
                twin ? HALF_DIGIT + " of the rounded twin" : "half a unit of the last digit of the tabulated angle"));
  }

  private static void renewal(Table cases, int row, List<Comparison> result) {
    double shape = cases.number(row, "shape");
    FleetPlan place = FleetPlan.ofLike(h -> Math.exp(-Math.pow(h / 1000, shape)), 1, 1000);
    double expected = cases.number(row, "expected");
    result.add(
        Cases.comparison(cases, row, Evidence.REFERENCE)
            .numbers(expected, place.expectedReplacements(cases.number(row, "periods")).total(), 1e-4 * expected, "",
                "the grid is refined until the result moves by less than 1 in 10 000"));
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.installation;

import static holdfast.quantity.Units.Nm;
import static holdfast.quantity.Units.mm;
import static holdfast.verification.installation.RollerSuites.suite;

import holdfast.installation.InstallationPlan;
import holdfast.installation.MountingPlan;
import holdfast.installation.Nut;
import holdfast.installation.ThreadCondition;
import holdfast.installation.PlanSummary;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Torque;
import holdfast.tables.Table;
import holdfast.trace.Cautions;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.List;

/** What reaches the papers of a whole job: torque of the wrench, stops, clearances and cautions. */
final class PaperSuites {
  private static final String ROUNDING = "rounding of binary numbers";

  private PaperSuites() {}

  static List<Suite> all() {
    return List.of(
        suite("papers-wrench", "What the wrench may give, on the papers of a job", PaperSuites::wrench,
            "holdfast.installation.Nut#greatestTorque", "holdfast.installation.InstallationPlan#summary"),
        suite("papers-stops", "A torque beyond the maker's stops the job", PaperSuites::stop,
            "holdfast.installation.InstallationPlan#stops"),
        suite("papers-clearances", "Sizes and clearances on the summary of a job", PaperSuites::clearance,
            "holdfast.installation.InstallationPlan#summary"),
        suite("papers-cautions", "Cautions on the sheets of the bundled jobs", PaperSuites::caution,
            "holdfast.installation.InstallationPlan#sheet", "holdfast.installation.YokePlan#sheet"));
  }

  /** The bundled press fit with another wrench, nothing else between torque and preload. */
  private static InstallationPlan plan(Torque setting, double error) {
    InstallationPlan plan = InstallationPlan.example();
    Nut nut = Nut.onFace(mm(24.8), mm(19)).friction(ThreadCondition.OILED, 0.10, 0.16).wrench(setting,
        error).reserve(1.5).build();
    return new InstallationPlan(plan.job(), plan.roller(), plan.member(), nut, plan.duty());
  }

  private static double value(PlanSummary summary, String id) {
    return summary.values().stream().filter(value -> value.id().equals(id)).findFirst().orElseThrow().value();
  }

  private static void wrench(Table cases, int row, List<Comparison> result) {
    Torque setting = Nm(cases.number(row, "setting"));
    InstallationPlan plan = plan(setting, cases.number(row, "error"));
    String preload = "tighten.preload.greatest";
    double ratio = value(plan.summary(), preload) / value(plan(setting, 0).summary(), preload);
    numbers(cases, row, result, "least", plan.nut().leastTorque().in(KnownUnits.N_M), "N·m");
    numbers(cases, row, result, "greatest", plan.nut().greatestTorque().in(KnownUnits.N_M), "N·m");
    numbers(cases, row, result, "preload_ratio", ratio, "");
  }

  private static void numbers(Table cases, int row, List<Comparison> result, String column, double computed, String unit) {
    double wanted = cases.number(row, column);
    result.add(
        Comparison.of(cases.address(row) + ", " + column, Cases.source(cases, row), Evidence.REFERENCE)
            .disclosed(cases.text(row, "disclosed"))
            .numbers(wanted, computed, 1e-9 * wanted, unit, ROUNDING));
  }

  private static void stop(Table cases, int row, List<Comparison> result) {
    Torque limit = InstallationPlan.example().roller().statedTorque().orElseThrow();
    double error = cases.number(row, "error");
    InstallationPlan plan = plan(limit.times(cases.number(row, "share") / (1 + error)), error);
    // The reason names both torques; no other stop does.
    String given = plan.nut().greatestTorque().toString();
    boolean stopped = plan.stops().stream().anyMatch(stop -> stop.contains(given) && stop.contains(limit.toString()));
    result.add(
        Cases.comparison(cases, row, Evidence.PRACTICE).words(cases.text(row, "verdict"), stopped ? "stopped" : "not stopped"));
  }

  private static void clearance(Table cases, int row, List<Comparison> result) {
    PlanSummary summary = InstallationPlan.example().withBore(cases.text(row, "bore")).summary();
    double lower = cases.number(row, "lower_um");
    double upper = cases.number(row, "upper_um");
    double studLower = cases.number(row, "stud_lower_um");
    double studUpper = cases.number(row, "stud_upper_um");
    added(cases, row, result, "least clearance", lower - studUpper, value(summary, "fit.clearance.least"));
    added(cases, row, result, "greatest clearance", upper - studLower, value(summary, "fit.clearance.greatest"));
    added(cases, row, result, "lower limit of the bore", lower, 1000 * (value(summary, "bore.lower-limit") - 18));
    added(cases, row, result, "upper limit of the bore", upper, 1000 * (value(summary, "bore.upper-limit") - 18));
    added(cases, row, result, "lower limit of the stud", studLower, 1000 * (value(summary, "stud.lower-limit") - 18));
    added(cases, row, result, "upper limit of the stud", studUpper, 1000 * (value(summary, "stud.upper-limit") - 18));
  }

  private static void added(Table cases, int row, List<Comparison> result, String what, double printed, double computed) {
    result.add(
        Comparison.of(cases.address(row) + ", " + what, Cases.source(cases, row), Evidence.RECOMBINED)
            .disclosed(cases.text(row, "disclosed"))
            .numbers(printed, computed, 1e-6, "µm", ROUNDING));
  }

  private static void caution(Table cases, int row, List<Comparison> result) {
    MountingPlan plan = WholeJobs.all().get(cases.text(row, "job"));
    String sheet = words(plan.sheet().text());
    long found = Cautions.about(cases.text(row, "topic")).stream().filter(c -> sheet.contains(words(c.text()))).count();
    long least = Math.round(cases.number(row, "least"));
    result.add(
        Cases.comparison(cases, row, Evidence.PRACTICE)
            .words(least + " or more", found >= least ? least + " or more" : Long.toString(found)));
  }

  /** Without the line ends of the page. */
  private static String words(String text) {
    return text.replaceAll("\\s+", " ");
  }
}

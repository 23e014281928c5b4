// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.installation;

import holdfast.installation.MountingPlan;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Whole jobs against a second program, {@code reference/whole_jobs.py}, that shares no code and no table with the library and
 * reads the jobs from its own files. Numbers that cannot be found by name on our side disagree.
 */
final class WholeJobSuite implements Suite {
  static final String TABLE = "installation/whole-jobs";

  private static final String OPTION = "option.";

  /** How the second program found a number, and how near it must be. */
  private enum Found {
    CLOSED_FORM("closed form", 1e-9, "rounding of both: 12 digits are written"),
    ROOT("root search", 1e-6, "1e-6: a root is searched on at least one side"),
    SUM("sum over points", 1e-6, "1e-6: a sum over points, or a greatest value searched on both sides"),
    PRINTED("compared as printed", 5e-4, "half a unit of the fourth digit, the last that the sheet prints"),
    GRID("integral equation on a grid", 1e-4, "1e-4: renewals on a grid of 4000 steps against the exact renewal function"),
    TILTED("life of a tilted bearing", 2e-3, "0.2 %: graded laminae against a continuous length");

    private final String words;
    private final double share;
    private final String reason;

    Found(String words, double share, String reason) {
      this.words = words;
      this.share = share;
      this.reason = reason;
    }

    static Found of(String words) {
      for (Found found : values()) {
        if (found.words.equals(words)) {
          return found;
        }
      }
      throw new IllegalStateException("no such way: " + words);
    }
  }

  @Override
  public String id() {
    return TABLE;
  }

  @Override
  public String title() {
    return "Whole jobs: every number of the sheet against a second program";
  }

  @Override
  public List<String> calculations() {
    return List.of("holdfast.installation.InstallationPlan", "holdfast.installation.YokePlan",
        "holdfast.installation.PlanLimits", "holdfast.installation.SeatPrice", "holdfast.installation.LeanPrice");
  }

  @Override
  public List<Comparison> run() {
    Table cases = Cases.table(TABLE);
    Map<String, Map<String, Double>> ours = new HashMap<>();
    WholeJobs.all().forEach((name, plan) -> ours.put(name, WholeJobValues.of(plan, bores(cases, name, plan))));
    List<Comparison> result = new ArrayList<>();
    for (int row = 0; row < cases.size(); row++) {
      double computed = ours.get(cases.text(row, "job")).getOrDefault(cases.text(row, "quantity"), Double.NaN);
      double value = cases.number(row, "value");
      Found found = Found.of(cases.text(row, "found_by"));
      // Sizes are differences of a nominal size and deviations in micrometres: rounding of 1e-12 mm stays where they vanish.
      double tolerance = Math.max(found.share * Math.abs(value), 1e-12);
      result.add(Cases.comparison(cases, row, Evidence.REFERENCE)
          .numbers(value, computed, tolerance, cases.text(row, "unit"), found.reason));
    }
    return result;
  }

  /** The bores that the second program compared. */
  private static Set<String> bores(Table cases, String job, MountingPlan plan) {
    Set<String> bores = new LinkedHashSet<>();
    for (int row = 0; row < cases.size(); row++) {
      String quantity = cases.text(row, "quantity");
      if (cases.text(row, "job").equals(job) && quantity.startsWith(OPTION) && quantity.endsWith(".lean")) {
        bores.add(quantity.substring(OPTION.length(), quantity.length() - ".lean".length()));
      }
    }
    if (bores.isEmpty()) {
      throw new IllegalStateException(plan.job() + " has no row in " + TABLE);
    }
    return bores;
  }
}

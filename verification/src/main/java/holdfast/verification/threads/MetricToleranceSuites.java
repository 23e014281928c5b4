// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.threads;

import holdfast.tables.Provenance;
import holdfast.tables.SourceRef;
import holdfast.tables.Table;
import holdfast.tables.TableSet;
import holdfast.threads.MetricToleranceKernel;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The tolerances of ISO metric threads: against prints, by the formulas behind them, and by the steps from grade to grade. */
final class MetricToleranceSuites {
  private static final String TABLE = "threads/iso-965-1/2013/tolerances";
  private static final String KERNEL = "holdfast.threads.MetricToleranceKernel";

  /** Preferred numbers of ISO 3, series R40, from 1 to 10. */
  private static final double[] R40 = {
    1, 1.06, 1.12, 1.18, 1.25, 1.32, 1.4, 1.5, 1.6, 1.7, 1.8, 1.9, 2, 2.12, 2.24, 2.36, 2.5, 2.65, 2.8, 3, 3.15, 3.35, 3.55,
    3.75, 4, 4.25, 4.5, 4.75, 5, 5.3, 5.6, 6, 6.3, 6.7, 7.1, 7.5, 8, 8.5, 9, 9.5
  };

  private MetricToleranceSuites() {}

  /** Our look-up for a row of the table or of a case table with the same columns. */
  private static double computed(Table table, int row) {
    String kind = table.text(row, "kind");
    char grade = table.text(row, "grade").charAt(0);
    double pitch = table.number(row, "pitch");
    double size = table.has(row, "d_to") ? table.number(row, "d_to") : Double.NaN;
    return switch (kind) {
      case "fundamental deviation" -> MetricToleranceKernel.fundamentalDeviation(grade, pitch);
      case "Td" -> MetricToleranceKernel.externalCrest(grade - '0', pitch);
      case "Td2" -> MetricToleranceKernel.externalPitch(grade - '0', size, pitch);
      case "TD1" -> MetricToleranceKernel.internalCrest(grade - '0', pitch);
      case "TD2" -> MetricToleranceKernel.internalPitch(grade - '0', size, pitch);
      default -> throw new IllegalArgumentException(kind);
    };
  }

  private static String key(Table table, int row) {
    return key(table.text(row, "kind"), table.text(row, "grade"), table, row);
  }

  /** The row of another kind and grade with the same pitch and range of diameters. */
  private static String key(String kind, String grade, Table table, int row) {
    return kind + " " + grade + " " + table.number(row, "pitch")
        + (table.has(row, "d_over") ? " " + table.number(row, "d_over") : "");
  }

  /** The number so many steps of the series R40 from another number of it, or from the one nearest to that. */
  static double step(double value, int steps) {
    int decade = (int) Math.floor(Math.log10(value));
    int best = 0;
    for (int i = 0; i < R40.length; i++) {
      if (Math.abs(value / Math.pow(10, decade) - R40[i]) < Math.abs(value / Math.pow(10, decade) - R40[best])) {
        best = i;
      }
    }
    int index = best + R40.length * decade + steps;
    return R40[Math.floorMod(index, R40.length)] * Math.pow(10, Math.floorDiv(index, R40.length));
  }

  /** The number of the series R40 nearest to a value by ratio, as the series is geometric. */
  static double nearest(double value) {
    double near = step(value, 0);
    double other = step(value, near < value ? 1 : -1);
    return Math.abs(Math.log(value / other)) < Math.abs(Math.log(value / near)) ? other : near;
  }

  /** Steps from grade 6 of the same diameter, of TD2 from grade 6 of Td2. */
  private static int steps(String kind, int grade) {
    return kind.equals("TD2") ? 5 + 4 * (grade - 6) : grade == 3 ? -12 : 4 * (grade - 6);
  }

  /** Printed tolerances. */
  static final class Prints extends CaseSuite {
    Prints() {
      super("metric-tolerances", KERNEL);
    }

    @Override
    Evidence evidence(Table cases, int row) {
      return Evidence.PRINT;
    }

    @Override
    Comparison compare(Table cases, int row) {
      return builder(cases, row)
          .numbers(cases.number(row, "printed"), computed(cases, row), 0.5, "µm", "the tables print whole micrometres");
    }
  }

  /** Each grade from grade 6 by whole steps of the series R40. */
  static final class Steps implements Suite {
    private static final SourceRef RULE =
        new SourceRef(
            "ISO 965-1:2013", "clause 13, grades by whole steps of the series R40 from grade 6", Provenance.DERIVED);
    private static final String EXCEPTION =
        "the step gives 1120; 1.6 times the unrounded grade 6 of 718.9 is 1150, whose next number of R40 is 1180, as the table"
            + " and a data listing have it";

    @Override
    public String id() {
      return "threads/metric-tolerance-steps";
    }

    @Override
    public String title() {
      return "Grades of ISO metric thread tolerances by steps from grade 6";
    }

    @Override
    public List<String> calculations() {
      return List.of(KERNEL);
    }

    @Override
    public List<Comparison> run() {
      Table table = TableSet.bundled().table(TABLE);
      Map<String, Double> sixes = new HashMap<>();
      for (int row = 0; row < table.size(); row++) {
        sixes.put(key(table, row), table.number(row, "value"));
      }
      List<Comparison> result = new ArrayList<>();
      for (int row = 0; row < table.size(); row++) {
        String kind = table.text(row, "kind");
        if (kind.equals("fundamental deviation") || (table.text(row, "grade").equals("6") && !kind.equals("TD2"))) {
          continue;
        }
        Double six = sixes.get(key(kind.equals("TD2") ? "Td2" : kind, "6", table, row));
        if (six != null) {
          double stepped = step(six, steps(kind, Integer.parseInt(table.text(row, "grade"))));
          boolean exception = key(table, row).equals("Td 8 8.0");
          result.add(
              Comparison.of(table.address(row) + ": by steps from grade 6", RULE, Evidence.RECONSTRUCTION)
                  .disclosed(exception ? EXCEPTION : "")
                  .numbers(stepped, computed(table, row), 0.5, "µm", "the tables hold whole micrometres"));
        }
      }
      return result;
    }
  }

  /** The formulas behind the tables, rounded to the nearest number by ratio of the series R40, deviations to whole µm. */
  static final class Formulas implements Suite {
    private static final SourceRef CLAUSE =
        new SourceRef("ISO 965-1:2013", "clause 13, formulas as a listing of the 1998 edition has them", Provenance.LISTING);

    @Override
    public String id() {
      return "threads/metric-tolerance-formulas";
    }

    @Override
    public String title() {
      return "ISO metric thread tolerances against the formulas behind them";
    }

    @Override
    public List<String> calculations() {
      return List.of(KERNEL);
    }

    @Override
    public List<Comparison> run() {
      Table table = TableSet.bundled().table(TABLE);
      Table differing = Cases.table("threads/metric-formula-differences");
      Map<String, String> reasons = new HashMap<>();
      for (int row = 0; row < differing.size(); row++) {
        reasons.put(key(differing, row), differing.text(row, "reason"));
      }
      List<Comparison> result = new ArrayList<>();
      for (int row = 0; row < table.size(); row++) {
        String reason = reasons.remove(key(table, row));
        result.add(
            Comparison.of(table.address(row) + ": by formula", CLAUSE, Evidence.RECONSTRUCTION)
                .disclosed(reason == null ? "" : reason)
                .numbers(formula(table, row), computed(table, row), 0.5, "µm", "the tables hold whole micrometres"));
      }
      if (!reasons.isEmpty()) {
        throw new IllegalStateException("differences without a row: " + reasons.keySet());
      }
      return result;
    }

    private static double formula(Table table, int row) {
      String kind = table.text(row, "kind");
      String grade = table.text(row, "grade");
      double p = table.number(row, "pitch");
      if (kind.equals("fundamental deviation")) {
        double g = 15 + 11 * p;
        return Math.rint(
            switch (grade) {
              case "e" -> -(50 + 11 * p);
              case "f" -> -(30 + 11 * p);
              case "g" -> -g;
              case "G" -> g;
              default -> throw new IllegalArgumentException(grade);
            });
      }
      int n = Integer.parseInt(grade);
      double d = table.has(row, "d_over") ? Math.sqrt(table.number(row, "d_over") * table.number(row, "d_to")) : Double.NaN;
      double external = 90 * Math.pow(p, 0.4) * Math.pow(d, 0.1);
      double crest = p <= 0.8 ? 433 * p - 190 * Math.pow(p, 1.22) : 230 * Math.pow(p, 0.7);
      return nearest(
          switch (kind) {
            case "Td" -> (180 * Math.cbrt(p * p) - 3.15 / Math.sqrt(p)) * Map.of(4, 0.63, 6, 1.0, 8, 1.6).get(n);
            case "Td2" -> external * Map.of(3, 0.5, 4, 0.63, 5, 0.8, 6, 1.0, 7, 1.25, 8, 1.6, 9, 2.0).get(n);
            case "TD1" -> crest * Map.of(4, 0.63, 5, 0.8, 6, 1.0, 7, 1.25, 8, 1.6).get(n);
            case "TD2" -> external * Map.of(4, 0.85, 5, 1.06, 6, 1.32, 7, 1.7, 8, 2.12).get(n);
            default -> throw new IllegalArgumentException(kind);
          });
    }
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import holdfast.verification.AuditView.CalculationGroup;
import holdfast.verification.AuditView.CalculationRow;
import holdfast.verification.AuditView.Matrix;
import holdfast.verification.AuditView.MatrixHead;
import holdfast.verification.AuditView.MatrixRow;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/** The calculations of the page: how far the checks of each go, and which suites name it. */
final class AuditMatrix {
  private AuditMatrix() {}

  /** All public calculations, package by package. */
  static List<CalculationGroup> calculations(AuditReport report) {
    List<String> ids = report.audit().results().stream().map(result -> result.suite().id()).toList();
    SortedMap<String, List<CalculationRow>> packages = new TreeMap<>();
    for (CalculationCoverage c : report.calculations()) {
      String packageName = packageOf(c.name());
      packages.computeIfAbsent(packageName, p -> new ArrayList<>()).add(row(c, packageName, ids));
    }
    List<CalculationGroup> groups = new ArrayList<>();
    packages.forEach((name, rows) -> groups.add(new CalculationGroup(name, rows.size(), rows)));
    return groups;
  }

  private static CalculationRow row(CalculationCoverage c, String packageName, List<String> ids) {
    List<String> cells = new ArrayList<>();
    for (Evidence kind : Evidence.values()) {
      int moved = c.moved().getOrDefault(kind, 0);
      cells.add(moved == 0 ? "" : c.caught().getOrDefault(kind, 0) + " of " + moved);
    }
    return new CalculationRow(
        c.name().substring(packageName.isEmpty() ? 0 : packageName.length() + 1),
        c.grade().label(),
        c.reason(),
        cells,
        c.suites().stream().filter(ids::contains).map(id -> new MatrixHead(ids.indexOf(id) + 1, id)).toList(),
        AuditCsv.share(c.worst()),
        String.join("; ", c.sources()));
  }

  /** One matrix a package, so that each shows only the suites that check something in it. */
  static List<Matrix> matrices(Audit audit) {
    Map<String, Set<String>> calculations = new TreeMap<>();
    for (Audit.Result result : audit.results()) {
      for (String calculation : result.suite().calculations()) {
        calculations.computeIfAbsent(packageOf(calculation), p -> new TreeSet<>()).add(calculation);
      }
    }
    List<Matrix> matrices = new ArrayList<>();
    calculations.forEach((packageName, names) -> matrices.add(matrix(audit, packageName, names)));
    return matrices;
  }

  private static Matrix matrix(Audit audit, String packageName, Set<String> names) {
    List<MatrixHead> heads = new ArrayList<>();
    List<Audit.Result> checking = new ArrayList<>();
    int number = 0;
    for (Audit.Result result : audit.results()) {
      number++;
      if (result.suite().calculations().stream().anyMatch(names::contains)) {
        heads.add(new MatrixHead(number, result.suite().id()));
        checking.add(result);
      }
    }
    List<MatrixRow> rows = new ArrayList<>();
    for (String name : names) {
      List<String> cells = new ArrayList<>();
      long total = 0;
      for (Audit.Result result : checking) {
        boolean checks = result.suite().calculations().contains(name);
        cells.add(checks ? Integer.toString(result.comparisons().size()) : "");
        total += checks ? result.comparisons().size() : 0;
      }
      String within = packageName.isEmpty() ? name : name.substring(packageName.length() + 1);
      rows.add(new MatrixRow(within, cells, total));
    }
    return new Matrix(packageName, heads, rows);
  }

  /** The leading names that start with a small letter: "holdfast.fits" of "holdfast.fits.Fit#of". */
  static String packageOf(String calculation) {
    List<String> parts = new ArrayList<>();
    for (String part : calculation.split("\\.", -1)) {
      if (part.isEmpty() || part.indexOf('#') >= 0 || Character.isUpperCase(part.charAt(0))) {
        break;
      }
      parts.add(part);
    }
    return String.join(".", parts);
  }
}

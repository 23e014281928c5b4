// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The whole audit as JSON, for programs: the keys stay in the order in which they are put here. */
final class AuditJson {
  private AuditJson() {}

  static String of(AuditReport report) {
    Map<String, Object> top = new LinkedHashMap<>();
    top.put("passes", report.passes());
    top.put("verdict", AuditText.verdict(report));
    top.put("tables", label(report.tables()));
    top.put("changed_tables", report.committed().differing());
    top.put("cases", label(report.cases()));
    top.put("not_verified", report.notVerified().lines());
    top.put("calculations", report.calculations().stream().map(AuditJson::calculation).toList());
    top.put("table_coverage", report.coverage().stream().map(AuditJson::table).toList());
    top.put("suites", report.audit().results().stream().map(AuditJson::suite).toList());
    return Json.of(top);
  }

  private static Map<String, Object> label(AuditReport.SetLabel set) {
    Map<String, Object> map = new LinkedHashMap<>();
    map.put("version", set.version());
    map.put("sha256", set.digest());
    return map;
  }

  private static Map<String, Object> calculation(CalculationCoverage c) {
    Map<String, Object> map = new LinkedHashMap<>();
    map.put("name", c.name());
    map.put("grade", c.grade().label());
    map.put("sources", c.sources());
    map.put("caught", counts(c.caught()));
    map.put("moved", counts(c.moved()));
    map.put("suites", c.suites());
    map.put("worst_share_of_tolerance", AuditCsv.share(c.worst()));
    map.put("why_unchecked", c.reason());
    return map;
  }

  private static Map<String, Integer> counts(Map<Evidence, Integer> of) {
    Map<String, Integer> map = new LinkedHashMap<>();
    of.forEach((kind, n) -> map.put(kind.label(), n));
    return map;
  }

  private static Map<String, Object> table(TableCoverage t) {
    Map<String, Object> map = new LinkedHashMap<>();
    map.put("id", t.id());
    map.put("source", t.source());
    map.put("rows", t.rows());
    map.put("cells", t.cells());
    Map<String, Integer> provenance = new LinkedHashMap<>();
    t.cellsByProvenance().forEach((kind, n) -> provenance.put(kind.label(), n));
    map.put("cells_by_provenance", provenance);
    map.put("cells_by_confirming_document", t.cellsByDocument());
    map.put("rows_computed_anew", t.reconstructed());
    map.put("cells_of_memory_only", t.cellsOfMemoryOnly());
    map.put("memory_only", t.memoryOnly());
    return map;
  }

  private static Map<String, Object> suite(Audit.Result result) {
    Map<String, Object> map = new LinkedHashMap<>();
    map.put("id", result.suite().id());
    map.put("title", result.suite().title());
    map.put("names", result.suite().calculations());
    List<Object> comparisons = new ArrayList<>();
    for (Comparison c : result.comparisons()) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("name", c.name());
      row.put("published", c.published());
      row.put("computed", c.computed());
      row.put("tolerance", c.tolerance());
      row.put("tolerance_reason", c.toleranceReason());
      row.put("outcome", c.outcome().label());
      row.put("disclosure", c.disclosure());
      row.put("source", c.source().toString());
      row.put("evidence", c.evidence().label());
      comparisons.add(row);
    }
    map.put("comparisons", comparisons);
    return map;
  }
}

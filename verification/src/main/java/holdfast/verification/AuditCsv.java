// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import holdfast.quantity.Numbers;
import holdfast.tables.Provenance;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** The parts of an audit as CSV, for sampling. */
final class AuditCsv {
  private AuditCsv() {}

  /** All comparisons, one a line. */
  static String of(Audit audit) {
    List<List<String>> lines = new ArrayList<>();
    lines.add(
        List.of(
            "suite", "comparison", "published", "computed", "tolerance", "tolerance_reason", "outcome", "disclosure",
            "document", "locator", "provenance", "evidence"));
    for (Audit.Result result : audit.results()) {
      for (Comparison c : result.comparisons()) {
        lines.add(
            List.of(
                result.suite().id(), c.name(), c.published(), c.computed(), c.tolerance(), c.toleranceReason(),
                c.outcome().label(), c.disclosure(), c.source().document(), c.source().locator(),
                c.source().provenance().label(), c.evidence().label()));
      }
    }
    return text(lines);
  }

  /** All public calculations, one a line: for each kind of evidence the comparisons that catch an error of one per cent. */
  static String calculations(List<CalculationCoverage> calculations) {
    List<List<String>> lines = new ArrayList<>();
    List<String> head = new ArrayList<>(List.of("calculation", "grade"));
    for (Evidence kind : Evidence.values()) {
      head.add("caught: " + kind.label());
      head.add("moved: " + kind.label());
    }
    head.addAll(List.of("suites", "worst_share_of_tolerance", "sources", "why_unchecked"));
    lines.add(head);
    for (CalculationCoverage c : calculations) {
      List<String> line = new ArrayList<>(List.of(c.name(), c.grade().label()));
      for (Evidence kind : Evidence.values()) {
        line.add(Integer.toString(c.caught().getOrDefault(kind, 0)));
        line.add(Integer.toString(c.moved().getOrDefault(kind, 0)));
      }
      line.addAll(List.of(String.join("; ", c.suites()), share(c.worst()), String.join("; ", c.sources()), c.reason()));
      lines.add(line);
    }
    return text(lines);
  }

  /** All tables, one a line: cells by provenance and by confirming document. */
  static String tables(List<TableCoverage> tables) {
    List<List<String>> lines = new ArrayList<>();
    List<String> head = new ArrayList<>(List.of("table", "source", "rows", "cells"));
    for (Provenance provenance : Provenance.values()) {
      head.add("cells: " + provenance.label());
    }
    head.addAll(List.of("rows_computed_anew", "rows_memory_only", "cells_memory_only", "cells_by_confirming_document"));
    lines.add(head);
    for (TableCoverage t : tables) {
      List<String> line = new ArrayList<>(List.of(t.id(), t.source(), number(t.rows()), number(t.cells())));
      for (Provenance provenance : Provenance.values()) {
        line.add(number(t.cellsByProvenance().getOrDefault(provenance, 0)));
      }
      line.addAll(
          List.of(number(t.reconstructed()), number(t.memoryOnly().size()), number(t.cellsOfMemoryOnly()), documents(t)));
      lines.add(line);
    }
    return text(lines);
  }

  /** Which documents confirm how many cells. */
  static String documents(TableCoverage t) {
    return t.cellsByDocument().entrySet().stream().map(e -> e.getKey() + ": " + e.getValue()).collect(Collectors.joining("; "));
  }

  /** A share of the tolerance as text; empty where nothing has one. */
  static String share(OptionalDouble share) {
    return share.isPresent() ? Numbers.fixed(share.getAsDouble(), 3) : "";
  }

  private static String number(int count) {
    return Integer.toString(count);
  }

  private static String text(List<List<String>> lines) {
    StringWriter text = new StringWriter();
    try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text)) {
      lines.forEach(csv::writeRecord);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }
}

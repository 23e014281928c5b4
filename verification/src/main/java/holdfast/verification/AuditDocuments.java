// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import holdfast.tables.Document;
import holdfast.tables.SourceRegister;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/** The documents behind an audit: which a stranger cannot identify, which editions were replaced, and a sample to look up. */
final class AuditDocuments {
  private AuditDocuments() {}

  /** Comparisons by the document that they cite. */
  static Map<String, Long> comparisons(Audit audit) {
    Map<String, Long> counts = new TreeMap<>();
    audit.comparisons().forEach(c -> counts.merge(c.source().document(), 1L, Long::sum));
    return counts;
  }

  /** Documents that a stranger cannot identify. */
  static List<Document> lost(SourceRegister register) {
    return register.documents().stream().filter(document -> !document.missing().isEmpty()).toList();
  }

  /** The register as lines of text: every field of every document that tables, formulas or checks cite. */
  static String text(Audit audit, SourceRegister register) {
    Map<String, Long> counts = comparisons(audit);
    StringBuilder text = new StringBuilder("Documents that a stranger could not identify, and what is missing\n\n");
    for (Document document : lost(register)) {
      text.append("- ").append(document.id()).append(": ").append(String.join(", ", document.missing()))
          .append(" not known; ").append(counts.getOrDefault(document.id(), 0L)).append(" comparisons; ")
          .append(document.note()).append('\n');
    }
    text.append("\nEditions that something has replaced, and what that means here\n\n");
    for (Document document : register.documents()) {
      if (document.kind().publication() && Document.known(document.supersededBy())) {
        text.append("- ").append(document.id()).append(": ").append(document.supersededBy()).append(". ")
            .append(document.consequence()).append('\n');
      }
    }
    text.append("\nAll documents\n");
    for (Document document : register.documents()) {
      text.append('\n').append(entry(document)).append("  comparisons: ")
          .append(counts.getOrDefault(document.id(), 0L)).append('\n');
    }
    return text.toString();
  }

  /** Comparisons drawn at random, with what is needed to look them up and room for the finding. */
  static String sample(Audit audit, SourceRegister register, int number, long seed) {
    List<Comparison> pool = new ArrayList<>(audit.comparisons());
    pool.removeIf(c -> !register.document(c.source().document()).kind().publication());
    Collections.shuffle(pool, new Random(seed));
    StringBuilder text = new StringBuilder();
    int count = Math.min(number, pool.size());
    text.append(count).append(" of ").append(pool.size()).append(" comparisons, drawn with seed ").append(seed).append('\n');
    for (int i = 0; i < count; i++) {
      Comparison c = pool.get(i);
      text.append('\n').append(i + 1).append("  ").append(c.name()).append('\n');
      text.append("  published: ").append(c.published()).append(", computed: ").append(c.computed())
          .append(", tolerance: ").append(c.tolerance()).append(" (").append(c.toleranceReason()).append(")\n");
      text.append("  ").append(c.outcome().label()).append("; ").append(c.evidence().label()).append("; ")
          .append(c.source().provenance()).append('\n');
      if (!c.disclosure().isEmpty()) {
        text.append("  disclosed: ").append(c.disclosure()).append('\n');
      }
      text.append("  place: ").append(c.source().locator()).append('\n');
      text.append("  ").append(entry(register.document(c.source().document())).replace("\n", "\n  ").strip()).append('\n');
      text.append("  Found in the document: ____________________  By: ____________________  Date: ____________\n");
    }
    return text.toString();
  }

  /** A document as lines of text, the fields that say something. */
  private static String entry(Document document) {
    StringBuilder text = new StringBuilder();
    document.fields().forEach((field, value) -> {
      if (!value.isBlank() && !value.equals(Document.NONE)) {
        text.append(field.equals("id") ? "" : "  ").append(field.equals("id") ? "" : field + ": ").append(value).append('\n');
      }
    });
    return text.toString();
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.shell;

import holdfast.installation.PlanSummary;
import holdfast.quantity.Numbers;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Jobs side by side: verdict, values and limits, those that differ marked. */
final class Comparison {
  private static final int WIDTH = 24;
  private static final int LABEL = 46;
  private static final int DIGITS = 4;

  private Comparison() {}

  static String text(List<String> names, List<PlanSummary> jobs) {
    StringBuilder text = new StringBuilder();
    row(text, "", names);
    row(text, "verdict", jobs.stream().map(job -> job.install() ? "may be installed" : "DO NOT INSTALL").toList());
    Set<String> values = new LinkedHashSet<>();
    Set<String> limits = new LinkedHashSet<>();
    for (PlanSummary job : jobs) {
      job.values().forEach(value -> values.add(value.id()));
      job.limits().forEach(limit -> limits.add(limit.name()));
    }
    for (String id : values) {
      row(text, id, jobs.stream().map(job -> job.values().stream().filter(value -> value.id().equals(id)).findFirst()
          .map(value -> Numbers.significant(value.value(), DIGITS) + " " + value.unit()).orElse("-")).toList());
    }
    for (String name : limits) {
      row(text, name, jobs.stream().map(job -> job.limits().stream().filter(limit -> limit.name().equals(name)).findFirst()
          .map(Comparison::limit).orElse("-")).toList());
    }
    for (int i = 0; i < jobs.size(); i++) {
      for (String stop : jobs.get(i).stops()) {
        text.append(names.get(i)).append(": STOP, ").append(stop).append('\n');
      }
    }
    return text.toString();
  }

  private static String limit(PlanSummary.Limit limit) {
    return Numbers.significant(limit.demand(), DIGITS) + (limit.atMost() ? " ≤ " : " ≥ ")
        + Numbers.significant(limit.permitted(), DIGITS) + " " + limit.unit() + (limit.holds() ? "" : " EXCEEDED");
  }

  private static void row(StringBuilder text, String label, List<String> cells) {
    boolean same = new ArrayList<>(new LinkedHashSet<>(cells)).size() == 1;
    text.append(pad(label, LABEL)).append(same || label.isEmpty() ? "  " : "* ");
    cells.forEach(cell -> text.append(pad(cell, WIDTH)));
    text.append('\n');
  }

  private static String pad(String text, int width) {
    return text.length() >= width ? text + " " : text + " ".repeat(width - text.length());
  }
}

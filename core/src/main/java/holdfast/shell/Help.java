// SPDX-License-Identifier: Apache-2.0
package holdfast.shell;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The commands on jobs with their usage: what the parser permits and what the help prints come from here alone. */
enum Help {
  NEW("new KIND [FILE]", "a commented job to be changed by hand: stud-metric, stud-inch, yoke",
      List.of("KIND is what the file begins with: stud-metric, stud-inch or yoke.",
          "FILE is written if it is not there yet; without it the job goes to the terminal."),
      "size", "SERIES AND DIAMETER", "the roller has the dimensions of a printed series: 'metric 40 mm', 'inch 1-1/2 in',"
          + " 'inch heavy stud 1-1/2 in'"),
  ASK("ask [FILE]", "asks for a job, one question after the other",
      List.of("Enter alone takes what stands in brackets, ? explains. The file is written after the last answer.")),
  CHECK("check JOB", "all faults of the file, or whether the job may be installed",
      List.of("Faults are listed at once, each with line, column, what stood there and what is accepted.")),
  SHEET("sheet [JOB]", "the record of a job",
      List.of("Without JOB the bundled lever. Its HTML carries the job, so that recompute can compute it again."),
      "html", "FILE", "writes the page; one written before is replaced, any other file is not",
      "text", "FILE", "writes the text instead of printing it",
      "units", "metric|inch|both", "units of the sheet; without it those of the job",
      "paper", "a4|letter", "paper of the page; without it letter for jobs in inches, A4 for others"),
  CARD("card [JOB]", "the one page for the bench",
      List.of("Without JOB the bundled lever."),
      "html", "FILE", "writes the page instead of the text",
      "units", "metric|inch|both", "units of the card; without it those of the job",
      "paper", "a4|letter", "paper of the page; without it letter for jobs in inches, A4 for others",
      "gauge", "LENGTH", "uncertainty of the gauge, for example 2 µm"),
  COMPARE("compare JOB JOB…", "jobs side by side: verdict, values, limits; what differs is marked",
      List.of("Two to nine jobs.")),
  CHOOSE("choose JOB --rollers FILE", "rollers for the duty of a job, by their governing margin",
      List.of("Puts every roller of a list in the place of the job's own and tells which may be installed, what governs each,",
          "and why the next smaller one fails. A list is a file with the key rollers: items with the sections roller and stud",
          "of a job file; sizes of the printed series stand in it as roller.size, with the ratings that a maker states."),
      "rollers", "FILE", "the list"),
  WHAT_IF("what-if JOB KEY=VALUE…", "the job with changed values beside itself, for example member.bore=K7",
      List.of("Keys are those of the job file, parts joined by points."),
      "to", "FILE", "writes the changed job to a new file"),
  RECOMPUTE("recompute SHEET.html", "computes a page again from the job in it, and compares",
      List.of("Tells every line that differs, and whether program and tables are those that wrote the page.")),
  SCHEMA("schema page|json", "all keys of a job file",
      List.of("page is the reference for people (Markdown), json is JSON Schema for editors."));

  private static final int USAGE = 42;

  /** One option. */
  record Option(String value, String meaning) {}

  private final String usage;
  private final String meaning;
  // Copies that cannot be changed.
  @SuppressWarnings("ImmutableEnumChecker")
  private final List<String> details;
  @SuppressWarnings("ImmutableEnumChecker")
  private final Map<String, Option> options;

  /** Options follow as name, value, meaning. */
  Help(String usage, String meaning, List<String> details, String... options) {
    this.usage = usage;
    this.meaning = meaning;
    this.details = List.copyOf(details);
    Map<String, Option> known = new LinkedHashMap<>();
    for (int i = 0; i < options.length; i += 3) {
      known.put(options[i], new Option(options[i + 1], options[i + 2]));
    }
    this.options = Collections.unmodifiableMap(known);
  }

  /** The first word of the command line. */
  String word() {
    return usage.split(" ", 2)[0];
  }

  Collection<String> optionNames() {
    return options.keySet();
  }

  /** The command line in one line. */
  String line() {
    StringBuilder line = new StringBuilder(usage);
    options.forEach((name, option) -> {
      if (!usage.contains("--" + name)) {
        line.append(" [--").append(name).append(' ').append(option.value()).append(']');
      }
    });
    return line.toString();
  }

  /** All that can be said of the command. */
  String text() {
    List<String> lines = new ArrayList<>(List.of(line(), "  " + meaning));
    details.forEach(detail -> lines.add("  " + detail));
    options.forEach((name, option) -> lines.add("  --" + name + " " + option.value() + ": " + option.meaning()));
    return String.join("\n", lines) + "\n";
  }

  /** A line a command. */
  static String list() {
    return List.of(values()).stream()
        .map(help -> "  … " + help.usage + " ".repeat(Math.max(1, USAGE - help.usage.length())) + help.meaning)
        .collect(Collectors.joining("\n"));
  }
}

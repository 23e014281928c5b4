// SPDX-License-Identifier: Apache-2.0
package holdfast.shell;

import holdfast.installation.BenchCard;
import holdfast.installation.ExampleJobs;
import holdfast.installation.MountingPlan;
import holdfast.installation.PlanSummary;
import holdfast.job.JobFile;
import holdfast.job.JobSheet;
import holdfast.quantity.Length;
import holdfast.sheet.PaperSize;
import holdfast.sheet.SheetUnits;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The commands on job files. Exit status: 0 done, 1 not to be installed or different, 2 bad input; an
 * {@link IllegalArgumentException} is bad input whose message says what is wrong.
 */
final class JobCommands {
  private final PrintStream out;
  private final InputStream in;

  JobCommands(PrintStream out, InputStream in) {
    this.out = out;
    this.in = in;
  }

  /** {@code new KIND [FILE] [--size SIZE]}. */
  int create(Arguments given) throws IOException {
    given.options(Set.of("size"));
    List<String> words = given.words(1, 2, "new KIND [FILE] [--size SIZE]; KIND is one of " + String.join(", ",
        kinds().keySet()));
    MountingPlan job = kinds().get(words.get(0));
    if (job == null) {
      throw new IllegalArgumentException("no kind '" + words.get(0) + "': one of " + String.join(", ", kinds().keySet()));
    }
    Optional<String> size = given.option("size");
    String text = size.isPresent() ? JobFile.template(job, size.get()) : JobFile.template(job);
    if (words.size() == 1) {
      out.print(text);
    } else {
      Written.fresh(Path.of(words.get(1)), text);
      out.println("written to " + words.get(1) + "; change its values, then: check " + words.get(1));
    }
    return 0;
  }

  private static Map<String, MountingPlan> kinds() {
    Map<String, MountingPlan> kinds = new LinkedHashMap<>();
    kinds.put("stud-metric", ExampleJobs.metricLever());
    kinds.put("stud-inch", ExampleJobs.inchSlipFit());
    kinds.put("yoke", ExampleJobs.yokeInFork());
    return kinds;
  }

  /** {@code check FILE}. */
  int check(Arguments given) throws IOException {
    given.options(Set.of());
    MountingPlan job = job(given.words(1, 1, "check FILE").get(0));
    PlanSummary summary = job.summary();
    out.println(job.job());
    if (summary.install()) {
      out.println("The job can be read and computed; nothing forbids the work.");
    } else {
      out.println("The job can be read and computed. DO NOT INSTALL:");
      summary.stops().forEach(stop -> out.println("  " + stop));
    }
    return summary.install() ? 0 : 1;
  }

  /** {@code sheet [FILE] [--html F] [--text F] [--units metric|inch|both]}. */
  int sheet(Arguments given) throws IOException {
    given.options(Set.of("html", "text", "units"));
    List<String> words = given.words(0, 1, "sheet [FILE] [--html F] [--text F] [--units metric|inch|both]");
    MountingPlan job = words.isEmpty() ? ExampleJobs.metricLever() : job(words.get(0));
    if (given.option("units").isPresent()) {
      job = job.withUnits(units(given.option("units").get()));
    }
    Optional<String> html = given.option("html");
    Optional<String> text = given.option("text");
    if (text.isPresent()) {
      Written.fresh(Path.of(text.get()), job.sheet().text());
      out.println("text written to " + text.get());
    } else {
      out.print(job.sheet().text());
    }
    if (html.isPresent()) {
      Written.paper(Path.of(html.get()), JobSheet.html(job));
      out.println("HTML written to " + html.get());
    }
    return job.stops().isEmpty() ? 0 : 1;
  }

  /** {@code card [FILE] [--html F] [--units metric|inch|both] [--paper a4|letter] [--gauge U]}. */
  int card(Arguments given) throws IOException {
    given.options(Set.of("html", "units", "paper", "gauge"));
    List<String> words = given.words(0, 1,
        "card [FILE] [--html F] [--units metric|inch|both] [--paper a4|letter] [--gauge U]");
    MountingPlan job = words.isEmpty() ? ExampleJobs.metricLever() : job(words.get(0));
    if (given.option("units").isPresent()) {
      job = job.withUnits(units(given.option("units").get()));
    }
    PaperSize paper = given.option("paper").map(JobCommands::paper).orElse(job.units().inchFirst() ? PaperSize.LETTER
        : PaperSize.A4);
    BenchCard card = job.card();
    if (given.option("gauge").isPresent()) {
      card = card.gauged(Length.parse(given.option("gauge").get()));
    }
    if (given.option("html").isPresent()) {
      Written.paper(Path.of(given.option("html").get()), card.html(paper));
      out.println("HTML written to " + given.option("html").get());
    } else {
      out.print(card.text());
    }
    return card.released() ? 0 : 1;
  }

  private static PaperSize paper(String word) {
    return switch (word) {
      case "a4" -> PaperSize.A4;
      case "letter" -> PaperSize.LETTER;
      default -> throw new IllegalArgumentException("no paper '" + word + "': a4 or letter");
    };
  }

  private static SheetUnits units(String word) {
    return switch (word) {
      case "metric" -> SheetUnits.METRIC;
      case "inch" -> SheetUnits.INCH;
      case "both" -> SheetUnits.INCH_AND_METRIC;
      default -> throw new IllegalArgumentException("no units '" + word + "': metric, inch or both");
    };
  }

  /** {@code compare FILE FILE…}. */
  int compare(Arguments given) throws IOException {
    given.options(Set.of());
    List<String> names = given.words(2, 9, "compare FILE FILE…");
    List<PlanSummary> summaries = new ArrayList<>();
    for (String name : names) {
      summaries.add(job(name).summary());
    }
    out.print(Comparison.text(names, summaries));
    return 0;
  }

  /** {@code what-if FILE key=value…}. */
  int whatIf(Arguments given) throws IOException {
    given.options(Set.of("to"));
    List<String> words = given.words(2, Integer.MAX_VALUE, "what-if FILE key=value… [--to NEW-FILE]");
    MountingPlan job = job(words.get(0));
    Map<String, String> changes = new LinkedHashMap<>();
    for (String change : words.subList(1, words.size())) {
      int sign = change.indexOf('=');
      if (sign < 1) {
        throw new IllegalArgumentException("'" + change + "' is no change: key=value, such as member.bore=K7");
      }
      changes.put(change.substring(0, sign), change.substring(sign + 1));
    }
    MountingPlan changed = JobFile.with(job, changes);
    out.print(Comparison.text(List.of("as it is", "changed"), List.of(job.summary(), changed.summary())));
    if (given.option("to").isPresent()) {
      Written.fresh(Path.of(given.option("to").get()), JobFile.text(changed));
      out.println("the changed job is written to " + given.option("to").get());
    }
    return changed.stops().isEmpty() ? 0 : 1;
  }

  /** {@code recompute SHEET.html}. */
  int recompute(Arguments given) throws IOException {
    given.options(Set.of());
    String name = given.words(1, 1, "recompute SHEET.html").get(0);
    List<JobSheet.Difference> differences = JobSheet.recompute(text(name));
    for (JobSheet.Difference difference : differences) {
      out.println("line " + difference.line() + "\n  stands:   " + difference.stands() + "\n  computed: "
          + difference.computed());
    }
    out.println(differences.isEmpty() ? "the page is as computed from its job" : differences.size() + " lines differ");
    return differences.isEmpty() ? 0 : 1;
  }

  /** {@code schema page|json}. */
  int schema(Arguments given) {
    given.options(Set.of());
    String form = given.words(1, 1, "schema page|json").get(0);
    switch (form) {
      case "page" -> out.print(JobFile.reference());
      case "json" -> out.print(JobFile.jsonSchema());
      default -> throw new IllegalArgumentException("no form '" + form + "': page or json");
    }
    return 0;
  }

  private MountingPlan job(String name) throws IOException {
    if (name.equals("-")) {
      return JobFile.read(in, "standard input");
    }
    MountingPlan bundled = ExampleJobs.all().get(name);
    if (bundled != null) {
      return bundled;
    }
    Path file = Path.of(name);
    if (name.isEmpty() || !Files.exists(file)) {
      throw new IllegalArgumentException(
          "no job '" + name + "': neither a file nor one of " + String.join(", ", ExampleJobs.all().keySet()));
    }
    return JobFile.read(file);
  }

  private String text(String name) throws IOException {
    byte[] bytes = name.equals("-") ? in.readAllBytes() : Files.readAllBytes(Path.of(name));
    return new String(bytes, StandardCharsets.UTF_8);
  }

  /** The words and options of a command line. */
  record Arguments(List<String> words, Map<String, String> options) {
    static Arguments of(List<String> args) {
      List<String> words = new ArrayList<>();
      Map<String, String> options = new LinkedHashMap<>();
      for (int i = 0; i < args.size(); i++) {
        String arg = args.get(i);
        if (!arg.startsWith("--")) {
          words.add(arg);
          continue;
        }
        int sign = arg.indexOf('=');
        String name = sign < 0 ? arg.substring(2) : arg.substring(2, sign);
        if (sign < 0 && i + 1 == args.size()) {
          throw new IllegalArgumentException("--" + name + " needs a value");
        }
        if (options.put(name, sign < 0 ? args.get(++i) : arg.substring(sign + 1)) != null) {
          throw new IllegalArgumentException("--" + name + " stands twice");
        }
      }
      return new Arguments(words, options);
    }

    void options(Set<String> known) {
      Set<String> unknown = new LinkedHashSet<>(options.keySet());
      unknown.removeAll(known);
      if (!unknown.isEmpty()) {
        throw new IllegalArgumentException("no option --" + unknown.iterator().next()
            + (known.isEmpty() ? "; this command has none" : "; known: --" + String.join(", --", known)));
      }
    }

    List<String> words(int least, int most, String usage) {
      if (words.size() < least || words.size() > most) {
        throw new IllegalArgumentException(usage);
      }
      return words;
    }

    Optional<String> option(String name) {
      return Optional.ofNullable(options.get(name));
    }
  }

  /** Runs a command; what is wrong with its input is said in words. */
  static int run(String command, List<String> args, PrintStream out, PrintStream err, InputStream in) {
    JobCommands commands = new JobCommands(out, in);
    try {
      Arguments given = Arguments.of(args);
      return switch (command) {
        case "new" -> commands.create(given);
        case "ask" -> new Questions(out, in).ask(given);
        case "check" -> commands.check(given);
        case "sheet" -> commands.sheet(given);
        case "card" -> commands.card(given);
        case "compare" -> commands.compare(given);
        case "what-if" -> commands.whatIf(given);
        case "recompute" -> commands.recompute(given);
        case "schema" -> commands.schema(given);
        default -> throw new IllegalArgumentException("no command '" + command + "'");
      };
    } catch (InvalidPathException e) {
      err.println("'" + e.getInput() + "' is no name of a file: " + e.getReason());
    } catch (IllegalArgumentException e) {
      err.println(e.getMessage());
    } catch (FileSystemException e) {
      err.println("'" + e.getFile() + "': " + Texts.reason(e));
    } catch (IOException e) {
      err.println(Texts.reason(e));
    }
    return 2;
  }
}

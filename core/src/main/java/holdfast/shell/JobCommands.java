// SPDX-License-Identifier: Apache-2.0
package holdfast.shell;

import holdfast.installation.BenchCard;
import holdfast.installation.ExampleJobs;
import holdfast.installation.MountingPlan;
import holdfast.installation.PlanSummary;
import holdfast.job.JobFile;
import holdfast.job.JobSheet;
import holdfast.job.RankedRoller;
import holdfast.job.RollerList;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
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
import java.util.List;
import java.util.Map;
import java.util.Optional;

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

  int create(Arguments given) throws IOException {
    List<String> words = given.words(1, 2);
    MountingPlan job = kinds().get(words.get(0));
    if (job == null) {
      throw new IllegalArgumentException("no kind '" + words.get(0) + "': one of " + String.join(", ", kinds().keySet()));
    }
    Optional<String> size = given.option("size");
    String text = size.isPresent() ? JobFile.starter(job, size.get()) : JobFile.starter(job);
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

  int check(Arguments given) throws IOException {
    MountingPlan job = job(given.words(1, 1).get(0));
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

  int sheet(Arguments given) throws IOException {
    List<String> words = given.words(0, 1);
    MountingPlan job = words.isEmpty() ? ExampleJobs.metricLever() : job(words.get(0));
    if (given.option("units").isPresent()) {
      job = job.withUnits(units(given.option("units").get()));
    }
    PaperSize paper = paper(given, job);
    Optional<String> html = given.option("html");
    Optional<String> text = given.option("text");
    if (text.isPresent()) {
      Written.fresh(Path.of(text.get()), job.sheet().text());
      out.println("text written to " + text.get());
    } else {
      out.print(job.sheet().text());
    }
    if (html.isPresent()) {
      Written.paper(Path.of(html.get()), JobSheet.html(job, paper));
      out.println("HTML written to " + html.get());
    }
    return job.stops().isEmpty() ? 0 : 1;
  }

  int card(Arguments given) throws IOException {
    List<String> words = given.words(0, 1);
    MountingPlan job = words.isEmpty() ? ExampleJobs.metricLever() : job(words.get(0));
    if (given.option("units").isPresent()) {
      job = job.withUnits(units(given.option("units").get()));
    }
    PaperSize paper = paper(given, job);
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

  private static PaperSize paper(Arguments given, MountingPlan job) {
    return given.option("paper").map(JobCommands::paper).orElse(usualPaper(job));
  }

  /** What lies in the printer of a works that measures so. */
  static PaperSize usualPaper(MountingPlan job) {
    return job.units().inchFirst() ? PaperSize.LETTER : PaperSize.A4;
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

  int compare(Arguments given) throws IOException {
    List<String> names = given.words(2, 9);
    List<PlanSummary> summaries = new ArrayList<>();
    for (String name : names) {
      summaries.add(job(name).summary());
    }
    out.print(Comparison.text(names, summaries));
    return 0;
  }

  /** Status 1 if no roller of the list may be installed. */
  int choose(Arguments given) throws IOException {
    MountingPlan job = job(given.words(1, 1).get(0));
    String file = given.option("rollers")
        .orElseThrow(() -> new IllegalArgumentException("which rollers? --rollers FILE\n" + given.help().line()));
    List<RankedRoller> ranked = RollerList.read(Path.of(file)).rank(job);
    for (RankedRoller roller : ranked) {
      String verdict = roller.install() ? "may be installed" : roller.plan() == null ? "DOES NOT FIT" : "DO NOT INSTALL";
      out.println(roller.name() + ": " + verdict + roller.governing().map(check -> ", margin "
          + Numbers.significant(check.margin().orElseThrow(), 3) + " of '" + check.name() + "'").orElse(""));
    }
    Optional<RankedRoller> smallest = RankedRoller.smallest(ranked);
    out.println(smallest.map(roller -> "The smallest that may be installed: " + roller.name()).orElse("None may be installed."));
    RankedRoller.nextSmaller(ranked).ifPresent(roller -> {
      out.println("The next smaller one, " + roller.name() + ", must not be:");
      roller.reasons().forEach(reason -> out.println("  " + reason));
    });
    ranked.stream().filter(roller -> roller.plan() == null)
        .forEach(roller -> out.println(roller.name() + " does not go with this job: " + roller.refusal()));
    return smallest.isPresent() ? 0 : 1;
  }

  int whatIf(Arguments given) throws IOException {
    List<String> words = given.words(2, Integer.MAX_VALUE);
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

  int recompute(Arguments given) throws IOException {
    String page = text(given.words(1, 1).get(0));
    List<JobSheet.Difference> differences = JobSheet.recompute(page);
    JobSheet.Origin then = JobSheet.origin(page);
    JobSheet.Origin now = JobSheet.Origin.here();
    if (!then.equals(now)) {
      out.println("the page was computed by another " + (then.program().equals(now.program()) ? "" : "program, ")
          + (then.tables().equals(now.tables()) ? "" : "table edition, ")
          + "as it states\n  the page: " + then + "\n  here:     " + now);
    }
    for (JobSheet.Difference difference : differences) {
      out.println("line " + difference.line() + "\n  stands:   " + difference.stands() + "\n  computed: "
          + difference.computed());
    }
    out.println(differences.isEmpty() ? "the page is as computed from its job" : differences.size() + " lines differ");
    return differences.isEmpty() && then.equals(now) ? 0 : 1;
  }

  int schema(Arguments given) {
    String form = given.words(1, 1).get(0);
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
  record Arguments(Help help, List<String> words, Map<String, String> options) {
    static Arguments of(Help help, List<String> args) {
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
        if (!help.optionNames().contains(name)) {
          throw new IllegalArgumentException("no option --" + name
              + (help.optionNames().isEmpty() ? "; this command has none" : "; known: --" + String.join(", --",
                  help.optionNames())));
        }
        if (sign < 0 && i + 1 == args.size()) {
          throw new IllegalArgumentException("--" + name + " needs a value\n" + help.line());
        }
        if (options.put(name, sign < 0 ? args.get(++i) : arg.substring(sign + 1)) != null) {
          throw new IllegalArgumentException("--" + name + " stands twice");
        }
      }
      return new Arguments(help, words, options);
    }

    List<String> words(int least, int most) {
      if (words.size() < least || words.size() > most) {
        throw new IllegalArgumentException(help.line());
      }
      return words;
    }

    Optional<String> option(String name) {
      return Optional.ofNullable(options.get(name));
    }
  }

  /** Runs a command; what is wrong with its input is said in words. */
  static int run(Help command, List<String> args, PrintStream out, PrintStream err, InputStream in) {
    if (args.contains("--help") || args.contains("-h")) {
      out.print(command.text());
      return 0;
    }
    JobCommands commands = new JobCommands(out, in);
    Progress progress = Progress.of(command, err);
    try {
      Arguments given = Arguments.of(command, args);
      return switch (command) {
        case NEW -> commands.create(given);
        case ASK -> new Questions(out, in).ask(given);
        case CHECK -> commands.check(given);
        case SHEET -> commands.sheet(given);
        case CARD -> commands.card(given);
        case COMPARE -> commands.compare(given);
        case CHOOSE -> commands.choose(given);
        case WHAT_IF -> commands.whatIf(given);
        case RECOMPUTE -> commands.recompute(given);
        case SCHEMA -> commands.schema(given);
      };
    } catch (InvalidPathException e) {
      err.println("'" + e.getInput() + "' is no name of a file: " + e.getReason());
    } catch (IllegalArgumentException e) {
      err.println(e.getMessage());
    } catch (FileSystemException e) {
      err.println("'" + e.getFile() + "': " + Texts.reason(e));
    } catch (IOException e) {
      err.println(Texts.reason(e));
    } finally {
      progress.end();
    }
    return 2;
  }
}

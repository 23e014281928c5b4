// SPDX-License-Identifier: Apache-2.0
package holdfast.shell;

import holdfast.installation.BenchCard;
import holdfast.installation.MountingPlan;
import holdfast.job.JobFile;
import holdfast.job.JobSheet;
import holdfast.quantity.InputException;
import holdfast.quantity.Length;
import holdfast.quantity.Units;
import holdfast.sheet.Sheet;
import holdfast.trace.Traced;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** Words of the prompt, imported there and in scripts. Not part of the public API. */
public final class Prompt {
  private static final String HELP =
      """
      Units are functions: mm(25), kN(2.1), inch("5/8"), Nm(60), degC(80). Inches in fractions are texts: inch("1-1/2").
      Fit.of(mm(25), "H7/p6")           a result prints itself
      var fit = Fit.of(mm(25), "H7/p6") and keeps a name
      print(fit.explain())              how it was computed, and from what source
      var job = open("lever.yaml")      a job from its file; open("lever") a bundled one: lever, slip-fit, yoke, impossible
      print(job)                        its sheet
      save(job, "lever.html")           its sheet as a page; .txt as text, .yaml its file; nothing of yours is written over
      exit                              ends""";

  private static volatile boolean interactive;

  private Prompt() {}

  /** Someone sits at the keyboard and sees what is printed beside a result. */
  static void interactive() {
    interactive = true;
  }

  /** What there is to type; shows itself as a result. */
  public static final Object help = new Object() {
    @Override
    public String toString() {
      return "\n" + HELP;
    }
  };

  /** Ends the program as soon as it is shown as a result. */
  public static final Object exit = new Object() {
    @Override
    public String toString() {
      System.exit(0);
      return "";
    }
  };

  /** Prints what there is to type. */
  public static void help() {
    System.out.println(HELP);
  }

  /** Ends the program. */
  public static void exit() {
    System.exit(0);
  }

  /**
   * Prints a result: of a job its sheet, of a result with warnings these as well.
   *
   * @param x anything
   */
  public static void print(Object x) {
    System.out.println(text(x));
    if (x instanceof Traced traced) {
      traced.warnings().forEach(warning -> System.out.println("WARNING: " + warning));
    }
  }

  private static String text(Object x) {
    if (x instanceof MountingPlan job) {
      return job.sheet().text();
    } else if (x instanceof Sheet sheet) {
      return sheet.text();
    } else if (x instanceof BenchCard card) {
      return card.text();
    }
    return String.valueOf(x);
  }

  /**
   * Writes a result: a job as its file (.yaml), as a page that carries it (.html) or as the text of its sheet; all else as text.
   * A page of this program is replaced, any other file is not.
   *
   * @param x anything
   * @param file the file
   * @throws InputException if it cannot be written
   */
  public static void save(Object x, String file) {
    String name = file.toLowerCase(Locale.ROOT);
    try {
      if (x instanceof MountingPlan job && (name.endsWith(".yaml") || name.endsWith(".yml"))) {
        Written.fresh(Path.of(file), JobFile.text(job));
      } else if (x instanceof MountingPlan job && name.endsWith(".html")) {
        Written.paper(Path.of(file), JobSheet.html(job, JobCommands.usualPaper(job)));
      } else if (x instanceof Sheet sheet && name.endsWith(".html")) {
        Written.paper(Path.of(file), sheet.html());
      } else {
        Written.fresh(Path.of(file), text(x).stripTrailing() + "\n");
      }
    } catch (IOException e) {
      throw new InputException("file", "'" + file + "'", "a file that can be written", Texts.reason(e));
    }
    System.out.println("written to " + file);
  }

  /**
   * Reads a job.
   *
   * @param file its file, or the name of a bundled job
   * @return the job
   * @throws InputException if there is no such file
   */
  public static MountingPlan open(String file) {
    MountingPlan bundled = holdfast.installation.ExampleJobs.all().get(file);
    try {
      if (bundled != null && !Files.exists(Path.of(file))) {
        return bundled;
      }
      return JobFile.read(Path.of(file));
    } catch (IOException e) {
      throw new InputException("file", "'" + file + "'", "a job file", Texts.reason(e));
    }
  }

  /**
   * Inches as a whole number, which may be what Java made of a fraction: 5/8 of two whole numbers is 0, and 1-1/2 is 1.
   *
   * @param whole the number
   * @return the length
   * @throws InputException if it is 0
   */
  public static Length inch(int whole) {
    if (whole == 0) {
      throw new InputException("inch", "0", "a text such as inch(\"5/8\"), or inch(0.625)",
          "Java divides whole numbers to whole numbers, so that 5/8 is 0");
    }
    if (interactive) {
      System.out.println("taken as " + whole + " in; if you typed a fraction, write it as a text: inch(\"" + whole + "-1/2\")");
    }
    return Units.inch((double) whole);
  }

  /**
   * Refused: {@code Nm} is meant.
   *
   * @param value number of units, of any
   * @return nothing
   * @throws InputException always
   */
  public static Object nm(double value) {
    return meant("nm", "Nm", value);
  }

  /**
   * Refused: {@code Nm} is meant.
   *
   * @param value number of units, of any
   * @return nothing
   * @throws InputException always
   */
  public static Object NM(double value) {
    return meant("NM", "Nm", value);
  }

  /**
   * Refused: {@code inLbf} is meant.
   *
   * @param value number of units, of any
   * @return nothing
   * @throws InputException always
   */
  public static Object lbfin(double value) {
    return meant("lbfin", "inLbf", value);
  }

  /**
   * Refused: {@code inLbf} is meant.
   *
   * @param value number of units, of any
   * @return nothing
   * @throws InputException always
   */
  public static Object inlb(double value) {
    return meant("inlb", "inLbf", value);
  }

  /**
   * Refused: {@code ftLbf} is meant.
   *
   * @param value number of units, of any
   * @return nothing
   * @throws InputException always
   */
  public static Object lbfft(double value) {
    return meant("lbfft", "ftLbf", value);
  }

  /**
   * Refused: {@code ftLbf} is meant.
   *
   * @param value number of units, of any
   * @return nothing
   * @throws InputException always
   */
  public static Object ftlb(double value) {
    return meant("ftlb", "ftLbf", value);
  }

  /**
   * Refused: {@code rpm} is meant.
   *
   * @param value number of units, of any
   * @return nothing
   * @throws InputException always
   */
  public static Object RPM(double value) {
    return meant("RPM", "rpm", value);
  }

  /**
   * Refused: {@code kN} is meant.
   *
   * @param value number of units, of any
   * @return nothing
   * @throws InputException always
   */
  public static Object KN(double value) {
    return meant("KN", "kN", value);
  }

  /**
   * Refused: {@code mm} is meant.
   *
   * @param value number of units, of any
   * @return nothing
   * @throws InputException always
   */
  public static Object MM(double value) {
    return meant("MM", "mm", value);
  }

  /**
   * Refused: {@code MPa} is meant.
   *
   * @param value number of units, of any
   * @return nothing
   * @throws InputException always
   */
  public static Object Mpa(double value) {
    return meant("Mpa", "MPa", value);
  }

  private static Object meant(String typed, String name, double value) {
    String number = Double.toString(value).replaceFirst("\\.0$", "");
    throw new InputException("unit", typed + "(" + number + ")", "a known unit", "did you mean " + name + "(" + number + ")?");
  }
}

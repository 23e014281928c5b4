// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import holdfast.quantity.InputException;
import holdfast.quantity.Numbers;
import holdfast.threads.ThreadSeries.Entry;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads thread designations and says where one goes wrong. */
final class ThreadText {
  private static final String FORMS =
      "such as M18x1.5, M10, M10x1.25-6g, M16xPh3P1.5, 5/8-18 UNF, 1/4-20 UNC-2A, #10-32, 1-1/2-6 UNC or 2-12 UN-LH";
  private static final Pattern METRIC =
      Pattern.compile("M\\s*(\\d+(?:\\.\\d+)?)(?:\\s*[xX×*]\\s*(?:Ph(\\d+(?:\\.\\d+)?)P)?(\\d+(?:\\.\\d+)?))?(.*)");
  private static final Pattern UNIFIED =
      Pattern.compile(
          "(#|[Nn]o\\.?)?\\s*(\\d{1,2}[- ]\\d{1,3}/\\d{1,3}|\\d{1,3}/\\d{1,3}|\\d{0,2}\\.\\d+|\\d{1,2})(?:\\s*(?:in|\"))?"
              + "\\s*-\\s*(\\d{1,3}(?:\\.\\d+)?)(?![\\d.])(.*)");
  /** The series at the start of what follows the threads per inch: UNF, UN, 12-UN or 12UN. */
  private static final Pattern SERIES = Pattern.compile("\\s*(?:(\\d{1,2})\\s*-?\\s*)?(UN[A-Za-z]*)(.*)");
  private static final Pattern COMMA = Pattern.compile("\\d,\\d");
  private static final Pattern LEFT = Pattern.compile("(?i)\\bleft[\\s-]*hand(?:ed)?\\b|\\bleft\\b|\\bL\\.?H\\b\\.?");
  private static final Pattern METRIC_CLASS = Pattern.compile("(?:[3-9][a-h]){1,2}|(?:[4-9][GH]){1,2}");
  private static final Pattern UNIFIED_CLASS = Pattern.compile("[1-3][AB]");

  /** Threads of another kind, by how their designation looks. */
  private enum Foreign {
    TAPER_PIPE("\\bNPTF?\\b|\\bANPT\\b", "a taper pipe thread (NPT), which seals on its flanks"),
    STRAIGHT_PIPE("\\bNPS[A-Z]?\\b", "a straight pipe thread (NPS)"),
    ACME("\\bACME\\b", "an Acme thread for lead screws, with 29° flanks"),
    PARALLEL_PIPE("\\bBSPP\\b|^G\\s*\\d.*", "a parallel pipe thread (G, BSPP), with 55° flanks"),
    SEALING_PIPE("\\bBSPT?\\b|^R[CPS]?\\s*\\d.*", "a sealing pipe thread (R, BSPT), with 55° flanks"),
    WHITWORTH("\\bBSW\\b|\\bBSF\\b|^W\\s*\\d.*", "a Whitworth thread, with 55° flanks"),
    TRAPEZOIDAL("^TR\\s*\\d.*", "a trapezoidal thread for lead screws, with 30° flanks"),
    ROUNDED_ROOT("^MJ\\s*\\d.*|\\bUNJ[A-Z]*\\b", "a thread with an enlarged root radius (J), whose section differs");

    private final Pattern pattern;
    private final String words;

    Foreign(String regex, String words) {
      this.pattern = Pattern.compile(regex, Pattern.CASE_INSENSITIVE);
      this.words = words;
    }
  }

  private final String text;

  private ThreadText(String text) {
    this.text = text;
  }

  static ScrewThread read(String text) {
    String stripped = text.strip();
    ThreadText reader = new ThreadText(stripped);
    if (stripped.isEmpty()) {
      throw reader.error("it is empty");
    }
    for (Foreign kind : Foreign.values()) {
      if (kind.pattern.matcher(stripped).find()) {
        throw reader.error("this is " + kind.words + "; the calculations are for fastening threads M and UN");
      }
    }
    if (COMMA.matcher(stripped).find()) {
      throw reader.error("the decimal sign is a point");
    }
    return stripped.charAt(0) == 'M' ? reader.metric() : reader.unified();
  }

  private ScrewThread metric() {
    Matcher m = METRIC.matcher(text);
    if (!m.matches()) {
      throw error(at(1) + ": a number is expected after 'M'");
    }
    double d = Double.parseDouble(m.group(1));
    String tail = m.group(4).strip();
    if (m.group(3) == null) {
      if (!tail.isEmpty() && tail.charAt(0) != '-' && !Character.isWhitespace(m.group(4).charAt(0))) {
        throw error(at(m.start(4)) + ": 'x' and the pitch, or '-' and the tolerance class, are expected after the diameter");
      }
      Entry coarse = ThreadSeries.coarse(d);
      if (coarse == null) {
        throw new InputException(
            "thread designation",
            "'" + text + "'",
            choices(ThreadSeries.METRIC.get(), d, "M"),
            "ISO 261:1998 has no coarse thread M"
                + Numbers.shortest(d));
      }
      return finish(coarse, coarse.pitch(), m.group(4));
    }
    double pitch = Double.parseDouble(m.group(3));
    double lead = m.group(2) == null ? pitch : Double.parseDouble(m.group(2));
    Entry entry = ThreadSeries.find(ThreadSeries.METRIC.get(), d, pitch);
    if (entry == null) {
      throw new InputException(
          "thread designation",
          "'" + text + "'",
          choices(ThreadSeries.METRIC.get(), d, "M"),
          "ISO 261:1998 does not have this pitch with this diameter; ScrewThread.custom(d, pitch) takes any");
    }
    double starts = lead / pitch;
    if (lead < pitch || Math.abs(starts - Math.rint(starts)) > 1e-9) {
      throw error("the lead Ph must be a whole multiple of the pitch P");
    }
    return finish(entry, lead, m.group(4));
  }

  private ScrewThread unified() {
    Matcher m = UNIFIED.matcher(text);
    if (!m.matches()) {
      throw error(
          Character.isDigit(text.charAt(0)) || "#.Nn".indexOf(text.charAt(0)) >= 0
              ? "an inch thread is size, '-', threads per inch"
              : at(0) + ": a metric thread starts with 'M', an inch thread with its size");
    }
    boolean numbered = m.group(1) != null;
    double tpi = Double.parseDouble(m.group(3));
    String sizeText = m.group(2);
    double size = numbered ? numberedSize(sizeText) : inches(sizeText);
    Entry entry = ThreadSeries.find(ThreadSeries.UNIFIED.get(), size, tpi);
    if (entry == null && !numbered && sizeText.matches("\\d+") && Integer.parseInt(sizeText) <= 12) {
      // "10-32" is the numbered size: no thread of 10 inches has 32 threads per inch.
      entry = ThreadSeries.find(ThreadSeries.UNIFIED.get(), numberedSize(sizeText), tpi);
    }
    if (entry == null) {
      throw new InputException(
          "thread designation",
          "'" + text + "'",
          choices(ThreadSeries.UNIFIED.get(), size, ""),
          "the unified standard series do not have this combination; ScrewThread.customUnified(d, threadsPerInch) takes any");
    }
    Matcher named = SERIES.matcher(m.group(4));
    String series = "";
    String tail = m.group(4);
    if (named.matches()) {
      series = (named.group(1) == null ? "" : named.group(1) + "-") + named.group(2);
      tail = named.group(3);
    } else if (!tail.isBlank() && !tail.strip().startsWith("-") && !Character.isWhitespace(tail.charAt(0))) {
      throw error(at(m.start(4)) + ": a series (UNC, UNF, UNEF, UN, UNS) or '-' and the tolerance class are expected");
    }
    Entry own = entryOfSeries(entry.size(), tpi, series);
    if (own == null) {
      throw error(
          at(m.start(4)) + ": series '" + series + "' does not have this thread; it is " + seriesOf(entry.size(), tpi));
    }
    return finish(own, own.pitch(), tail);
  }

  private static Entry entryOfSeries(double size, double tpi, String series) {
    String wanted = series.toUpperCase(Locale.ROOT).replace("UNR", "UN");
    for (Entry entry : ThreadSeries.UNIFIED.get()) {
      boolean same = ThreadSeries.same(entry.size(), size) && ThreadSeries.same(entry.tpi(), tpi);
      String own = entry.series();
      boolean constant = own.endsWith("-UN") && wanted.equals("UN");
      if (same && (wanted.isEmpty() || own.equals(wanted) || constant)) {
        return entry;
      }
    }
    return null;
  }

  private static List<String> seriesOf(double size, double tpi) {
    List<String> names = new ArrayList<>();
    for (Entry entry : ThreadSeries.UNIFIED.get()) {
      if (ThreadSeries.same(entry.size(), size) && ThreadSeries.same(entry.tpi(), tpi)) {
        names.add(entry.series());
      }
    }
    return names;
  }

  /** What follows diameter, pitch and series: tolerance class and hand, parted by dashes or spaces. */
  private ScrewThread finish(Entry entry, double lead, String tail) {
    Matcher left = LEFT.matcher(tail);
    boolean leftHand = left.find();
    String toleranceClass = "";
    for (String part : (leftHand ? left.replaceFirst(" ") : tail).strip().split("[\\s-]+", -1)) {
      if (part.isEmpty()) {
        continue;
      }
      if (!toleranceClass.isEmpty() || !isClass(entry.system(), part)) {
        throw error("'" + part + "' is not " + classes(entry.system()) + " or LH; one class only");
      }
      toleranceClass = part;
    }
    return ScrewThread.standard(entry, lead, toleranceClass, leftHand);
  }

  /** Whether a thread of the system can have a tolerance class of this name. */
  static boolean isClass(ThreadSystem system, String name) {
    return (system == ThreadSystem.METRIC ? METRIC_CLASS : UNIFIED_CLASS).matcher(name).matches();
  }

  static String classes(ThreadSystem system) {
    return system == ThreadSystem.METRIC
        ? "a tolerance class of a metric thread (such as 6g, 5g6g, 6H)"
        : "a tolerance class of an inch thread (1A, 2A, 3A, 1B, 2B, 3B)";
  }

  private static String choices(List<Entry> series, double size, String prefix) {
    List<Entry> same = ThreadSeries.ofSize(series, size);
    if (!same.isEmpty()) {
      return "one of " + String.join(", ", same.stream().map(Entry::designation).toList());
    }
    List<String> near = new ArrayList<>();
    for (double neighbour : ThreadSeries.neighbours(series, size)) {
      near.add(prefix.isEmpty() ? Numbers.shortest(neighbour) + " in" : prefix + Numbers.shortest(neighbour));
    }
    return "of a standard diameter (nearest: " + String.join(", ", near) + ")";
  }

  private double numberedSize(String digits) {
    if (!digits.matches("\\d{1,2}")) {
      throw error("a numbered size is a whole number from 0 to 12");
    }
    return (60 + 13 * Integer.parseInt(digits)) / 1000.0;
  }

  private double inches(String size) {
    double sum = 0;
    for (String part : size.split("[- ]", -1)) {
      int slash = part.indexOf('/');
      if (slash < 0) {
        sum += Double.parseDouble(part);
      } else {
        double denominator = Double.parseDouble(part.substring(slash + 1));
        if (denominator == 0) {
          throw error("the size has the denominator 0");
        }
        sum += Double.parseDouble(part.substring(0, slash)) / denominator;
      }
    }
    return sum;
  }

  private String at(int index) {
    return index < text.length() ? "character " + (index + 1) + " ('" + text.charAt(index) + "')" : "the end of the text";
  }

  private InputException error(String reason) {
    return new InputException("thread designation", "'" + text + "'", FORMS, reason);
  }
}

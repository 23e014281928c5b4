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
      "such as M18x1.5, M10, M10x1.25-6g, M16xPh3P1.5, 5/8-18 UNF, 1/4-20 UNC-2A, #10-32 or 1-1/2-6 UNC";
  private static final Pattern METRIC =
      Pattern.compile("M\\s*(\\d+(?:[.,]\\d+)?)(?:\\s*[xX×*]\\s*(?:Ph(\\d+(?:\\.\\d+)?)P)?(\\d+(?:[.,]\\d+)?))?(.*)");
  private static final Pattern UNIFIED =
      Pattern.compile(
          "(#|[Nn]o\\.?)?\\s*(\\d+[- ]\\d+/\\d+|\\d+/\\d+|\\d*\\.\\d+|\\d+)(?:\\s*(?:in|\"))?\\s*-\\s*(\\d+(?:\\.\\d+)?)(.*)");
  private static final Pattern CLASS = Pattern.compile("[0-9]+[a-zA-Z](?:[0-9]+[a-zA-Z])?");

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
    return stripped.charAt(0) == 'M' ? reader.metric() : reader.unified();
  }

  private ScrewThread metric() {
    Matcher m = METRIC.matcher(text);
    if (!m.matches()) {
      throw error(at(1) + ": a number is expected after 'M'");
    }
    double d = number(m.group(1));
    String tail = m.group(4).strip();
    if (m.group(3) == null) {
      if (!tail.isEmpty() && tail.charAt(0) != '-') {
        throw error(at(m.start(4)) + ": 'x' and the pitch, or '-' and the tolerance class, are expected after the diameter");
      }
      Entry coarse = ThreadSeries.coarse(d);
      if (coarse == null) {
        throw new InputException(
            "thread designation", "'" + text + "'", choices(ThreadSeries.METRIC, d, "M"), "ISO 261:1998 has no coarse thread M"
                + Numbers.shortest(d));
      }
      return finish(coarse, coarse.pitch(), tail, m.start(4));
    }
    double pitch = number(m.group(3));
    double lead = m.group(2) == null ? pitch : Double.parseDouble(m.group(2));
    Entry entry = ThreadSeries.find(ThreadSeries.METRIC, d, pitch);
    if (entry == null) {
      throw new InputException(
          "thread designation",
          "'" + text + "'",
          choices(ThreadSeries.METRIC, d, "M"),
          "ISO 261:1998 does not have this pitch with this diameter; ScrewThread.custom(d, pitch) takes any");
    }
    double starts = lead / pitch;
    if (lead < pitch || Math.abs(starts - Math.rint(starts)) > 1e-9) {
      throw error("the lead Ph must be a whole multiple of the pitch P");
    }
    return finish(entry, lead, tail, m.start(4));
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
    Entry entry = ThreadSeries.find(ThreadSeries.UNIFIED, size, tpi);
    if (entry == null && !numbered && sizeText.matches("\\d+") && Integer.parseInt(sizeText) <= 12) {
      // "10-32" is the numbered size: no thread of 10 inches has 32 threads per inch.
      entry = ThreadSeries.find(ThreadSeries.UNIFIED, numberedSize(sizeText), tpi);
    }
    if (entry == null) {
      throw new InputException(
          "thread designation",
          "'" + text + "'",
          choices(ThreadSeries.UNIFIED, size, ""),
          "the unified standard series do not have this combination; ScrewThread.customUnified(d, threadsPerInch) takes any");
    }
    String tail = m.group(4).strip();
    int tailStart = m.start(4);
    int dash = tail.indexOf('-');
    String series = (dash < 0 ? tail : tail.substring(0, dash)).strip();
    // A series may itself hold a dash: 8-UN.
    if (series.equals("8")) {
      dash = tail.indexOf('-', dash + 1);
      series = (dash < 0 ? tail : tail.substring(0, dash)).strip();
    }
    Entry named = entryOfSeries(entry.size(), tpi, series);
    if (named == null) {
      throw error(
          at(tailStart) + ": series '" + series + "' does not have this thread; it is " + seriesOf(entry.size(), tpi));
    }
    return finish(named, named.pitch(), dash < 0 ? "" : tail.substring(dash), tailStart);
  }

  private static Entry entryOfSeries(double size, double tpi, String series) {
    String wanted = series.toUpperCase(Locale.ROOT).replace("UNR", "UN");
    for (Entry entry : ThreadSeries.UNIFIED) {
      boolean same = ThreadSeries.same(entry.size(), size) && ThreadSeries.same(entry.tpi(), tpi);
      String own = entry.series();
      boolean eight = own.equals("8-UN") && (wanted.equals("UN") || wanted.equals("8UN"));
      if (same && (wanted.isEmpty() || own.equals(wanted) || eight)) {
        return entry;
      }
    }
    return null;
  }

  private static List<String> seriesOf(double size, double tpi) {
    List<String> names = new ArrayList<>();
    for (Entry entry : ThreadSeries.UNIFIED) {
      if (ThreadSeries.same(entry.size(), size) && ThreadSeries.same(entry.tpi(), tpi)) {
        names.add(entry.series());
      }
    }
    return names;
  }

  private ScrewThread finish(Entry entry, double lead, String tail, int tailStart) {
    String toleranceClass = "";
    String rest = tail;
    boolean leftHand = false;
    while (!rest.isEmpty()) {
      if (rest.charAt(0) != '-') {
        throw error(at(tailStart) + ": '" + rest + "' is not understood; a tolerance class follows a '-'");
      }
      int next = rest.indexOf('-', 1);
      String part = (next < 0 ? rest.substring(1) : rest.substring(1, next)).strip();
      rest = next < 0 ? "" : rest.substring(next);
      if (part.equals("LH")) {
        leftHand = true;
      } else if (CLASS.matcher(part).matches() && toleranceClass.isEmpty()) {
        toleranceClass = part;
      } else {
        throw error("'" + part + "' is not a tolerance class (such as 6g, 5g6g, 6H, 2A, 2B) or LH; one class only");
      }
    }
    return ScrewThread.standard(entry, lead, toleranceClass, leftHand);
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

  private static double number(String digits) {
    return Double.parseDouble(digits.replace(',', '.'));
  }

  private String at(int index) {
    return index < text.length() ? "character " + (index + 1) + " ('" + text.charAt(index) + "')" : "the end of the text";
  }

  private InputException error(String reason) {
    return new InputException("thread designation", "'" + text + "'", FORMS, reason);
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.job;

import holdfast.quantity.InputException;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.quantity.Numbers;
import holdfast.quantity.OperatingTime;
import holdfast.quantity.Quantity;
import holdfast.quantity.Temperature;
import holdfast.quantity.Unit;
import holdfast.rollers.MeasureSystem;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How values of one kind are written in a job file: reading, and writing so that reading gives the same value again.
 *
 * @param name what the kind is called in the reference
 * @param measured whether it is a number with a unit, which an example explains better than words
 * @param acceptance tells what is accepted, in words; asked only then, for some words stand in tables
 * @param words the only texts accepted; empty if there is no such list
 * @param read reads a text; throws InputException
 * @param write writes a value, with inches first if the job is in inches
 */
record Kind<T>(
    String name,
    boolean measured,
    Supplier<String> acceptance,
    List<String> words,
    Function<String, T> read,
    Writer<T> write) {
  Kind(String name, boolean measured, String accepts, List<String> words, Function<String, T> read, Writer<T> write) {
    this(name, measured, () -> accepts, words, read, write);
  }

  /** What is accepted, in words. */
  String accepts() {
    return acceptance.get();
  }

  /** Writes a value so that reading it gives the same value. */
  @FunctionalInterface
  interface Writer<T> {
    String text(T value, MeasureSystem system);
  }

  /** Two ends of a range. */
  record Range<T>(T least, T greatest) {}

  static final Kind<String> NAME =
      new Kind<>("words", false, "words on one line", List.of(), text -> nonBlank(text), (text, system) -> text);

  static final Kind<Boolean> YES_NO = words("yes or no", yesNo());

  static final Kind<Integer> COUNT = new Kind<>("whole number", false, "a whole number such as 16", List.of(), Kind::whole,
      (value, system) -> Integer.toString(value));

  static final Kind<Double> NUMBER = new Kind<>("number", false, "a number such as 1.5 or 3/2", List.of(), Kind::number,
      (value, system) -> exact(value));

  static final Kind<Double> PERCENT = new Kind<>("percentage", false, "a number with %, such as 95 %", List.of(), Kind::percent,
      (value, system) -> percentText(value));

  static final Kind<Range<Double>> NUMBER_RANGE = new Kind<>("range of numbers", false,
      "two numbers such as 0.10 … 0.16 or 0.10..0.16, or one for both ends", List.of(), text -> range(text, Kind::number),
      (range, system) -> exact(range.least()) + " … " + exact(range.greatest()));

  static final Kind<OperatingTime> DURATION = new Kind<>("time", false, "hours such as 20000 h, or 5 years of 4000 h", List.of(),
      Kind::duration, (value, system) -> quantityText(value, system, List.of(KnownUnits.H), List.of(KnownUnits.H)));

  /** Fractions after an inch size are trade usage, also without a unit on the first part: {@code 1-1/2 in}. */
  static final Kind<Length> LENGTH =
      quantity("length", "25 mm, 12 µm or 1-1/2 in", Length::parse,
          List.of(KnownUnits.MM, KnownUnits.UM), List.of(KnownUnits.INCH, KnownUnits.MM, KnownUnits.UM));

  static final Kind<Temperature> TEMPERATURE =
      quantity("temperature", "60 °C or 140 °F", Temperature::parse, List.of(KnownUnits.DEG_C),
          List.of(KnownUnits.DEG_F, KnownUnits.DEG_C));

  static <Q extends Quantity<Q>> Kind<Q> quantity(
      String name, String examples, Function<String, Q> parse, List<Unit<Q>> metric, List<Unit<Q>> inch) {
    return new Kind<>(name, true, "a number with its unit, such as " + examples, List.of(), parse,
        (value, system) -> quantityText(value, system, metric, inch));
  }

  /** A length that may be none: the text {@code none} stands for 0 mm. */
  static Kind<Length> lengthOr(String none) {
    return new Kind<>("length or '" + none + "'", false, LENGTH.accepts() + ", or " + none, List.of(),
        text -> normal(text).equals(none) ? new Length(0) : positive(Length.parse(text), none),
        (value, system) -> value.mm() == 0 ? none : LENGTH.write.text(value, system));
  }

  private static Length positive(Length length, String none) {
    if (length.mm() > 0) {
      return length;
    }
    throw new InputException("length", length.toString(), "over 0 mm, or '" + none + "'", "nothing is said by the word");
  }

  static Kind<Range<Temperature>> temperatures() {
    return new Kind<>("range of temperatures", false, "two temperatures such as -20 °C … 110 °C", List.of(),
        text -> range(text, Temperature::parse),
        (range, system) ->
            TEMPERATURE.write.text(range.least(), system) + " … " + TEMPERATURE.write.text(range.greatest(), system));
  }

  static Kind<List<Length>> lengths() {
    return new Kind<>("lengths", false, "lengths with commas between, such as 0 µm, 2 µm, 0 µm", List.of(),
        text -> {
          List<Length> all = new ArrayList<>();
          for (String part : text.split(",", -1)) {
            all.add(Length.parse(part.strip()));
          }
          return List.copyOf(all);
        },
        (all, system) -> String.join(", ", all.stream().map(length -> LENGTH.write.text(length, system)).toList()));
  }

  private static Map<String, Boolean> yesNo() {
    Map<String, Boolean> map = new LinkedHashMap<>();
    map.put("yes", true);
    map.put("no", false);
    return map;
  }

  /** One of the constants, each by its words; capitals do not matter, nor do hyphens in the place of blanks. */
  static <T> Kind<T> words(String name, Map<String, T> meanings) {
    List<String> known = List.copyOf(meanings.keySet());
    boolean commas = known.stream().anyMatch(word -> word.contains(","));
    String accepted = "one of " + String.join(commas ? "; " : ", ", known);
    return new Kind<>(name, false, accepted, known,
        text -> {
          for (Map.Entry<String, T> meaning : meanings.entrySet()) {
            if (normal(meaning.getKey()).equals(normal(text))) {
              return meaning.getValue();
            }
          }
          throw new InputException(name, "'" + Fault.shortened(text) + "'", accepted,
              Suggestion.of(text, known).map(near -> "did you mean '" + near + "'?").orElse("it is none of them"));
        },
        (value, system) -> {
          for (Map.Entry<String, T> meaning : meanings.entrySet()) {
            if (meaning.getValue().equals(value)) {
              return meaning.getKey();
            }
          }
          throw new IllegalStateException("a " + name + " without a word: " + value);
        });
  }

  static <E extends Enum<E>> Kind<E> words(String name, E[] constants) {
    Map<String, E> meanings = new LinkedHashMap<>();
    for (E constant : constants) {
      meanings.put(constant.name().toLowerCase(Locale.ROOT).replace('_', ' '), constant);
    }
    return words(name, meanings);
  }

  private static String normal(String text) {
    return text.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", " ");
  }

  private static String nonBlank(String text) {
    if (text.isBlank()) {
      throw new InputException("words", "blank", "at least a letter", "it names something");
    }
    return text.strip();
  }

  private static int whole(String text) {
    if (!text.strip().matches("[0-9]{1,9}")) {
      throw new InputException("number", "'" + Fault.shortened(text) + "'", "a whole number", "it counts something");
    }
    return Integer.parseInt(text.strip());
  }

  /** The reader of numbers of the quantities, fractions included: a length in mm is a number of millimetres. */
  static double number(String text) {
    if (text.isBlank() || !Character.isDigit(text.strip().charAt(text.strip().length() - 1))) {
      throw new InputException("number", "'" + Fault.shortened(text) + "'", "a number without a unit", "it has no unit");
    }
    return Length.parse(text + " mm").mm();
  }

  private static double percent(String text) {
    String stripped = text.strip();
    if (!stripped.endsWith("%")) {
      throw new InputException("percentage", "'" + Fault.shortened(text) + "'", "a number with %",
          "without the sign it could be a share");
    }
    return BigDecimal.valueOf(number(stripped.substring(0, stripped.length() - 1))).movePointLeft(2).doubleValue();
  }

  private static String percentText(double share) {
    return BigDecimal.valueOf(share).movePointRight(2).stripTrailingZeros().toPlainString() + " %";
  }

  private static final Pattern YEARS = Pattern.compile("(.+?) years? of (.+)");

  private static OperatingTime duration(String text) {
    Matcher years = YEARS.matcher(text.strip());
    if (years.matches()) {
      return OperatingTime.parse(years.group(2)).times(number(years.group(1)));
    }
    return OperatingTime.parse(text);
  }

  /** The unit may stand once, behind the second end. */
  private static <T extends Comparable<? super T>> Range<T> range(String text, Function<String, T> end) {
    String[] ends = text.split("\\.\\.\\.?|…| to ", -1);
    if (ends.length > 2) {
      throw new InputException("range", "'" + Fault.shortened(text) + "'", "two ends", "there are " + ends.length);
    }
    String last = ends[ends.length - 1].strip();
    String first = ends[0].strip();
    if (ends.length == 2 && first.matches("[-+\u2212]?[0-9./ ]+")) {
      first += last.replaceFirst("^[-+\u2212]?[0-9./ -]+", " ");
    }
    T greatest = end.apply(last);
    T least = end.apply(first.strip());
    if (least.compareTo(greatest) > 0) {
      throw new InputException("range", "'" + Fault.shortened(text) + "'", "the lower end first", "the ends are exchanged");
    }
    return new Range<>(least, greatest);
  }

  /** All digits of a number, as few as tell it from its neighbours. */
  static String exact(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }

  /** In the first unit that gives a handy number which is read back as the same value; the base unit can write every value. */
  private static <Q extends Quantity<Q>> String quantityText(
      Q value, MeasureSystem system, List<Unit<Q>> metric, List<Unit<Q>> inch) {
    String exact = null;
    for (Unit<Q> unit : system == MeasureSystem.INCH ? inch : metric) {
      double number = Double.parseDouble(Numbers.shortest(value.in(unit)));
      if (unit.of(number).equals(value)) {
        String text = exact(number) + " " + unit.symbol();
        if (number == 0 || Math.abs(number) >= 0.1) {
          return text;
        }
        exact = exact == null ? text : exact;
      }
    }
    if (exact != null) {
      return exact;
    }
    Unit<Q> base = metric.stream().filter(unit -> unit.factor() == 1).findFirst().orElseThrow();
    return exact(value.base()) + " " + base.symbol();
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.installation;

import holdfast.quantity.Length;
import holdfast.sheet.Card;
import holdfast.sheet.SheetUnits;
import java.util.ArrayList;
import java.util.List;

/** Collects the lines of a card; whatever the order of the calls, they are printed in the order of the work. Not thread-safe. */
final class BenchLines {
  /**
   * A line with what fills its gaps: numbers, limits, steps already done, words of the job.
   *
   * @param line the line
   * @param gaps one for each gap
   */
  record Filled(BenchLine line, List<Object> gaps) {}

  /**
   * Limits of size, printed rounded inwards.
   *
   * @param lower the lower limit
   * @param upper the upper limit
   */
  record Limits(Length lower, Length upper) {}

  /**
   * A number on which the work hangs.
   *
   * @param number the number
   */
  record Large(BenchNumber number) {}

  private final List<Filled> lines = new ArrayList<>();

  BenchLines add(BenchLine line, Object... gaps) {
    lines.add(new Filled(line, List.of(gaps)));
    return this;
  }

  BenchLines addIf(boolean condition, BenchLine line, Object... gaps) {
    return condition ? add(line, gaps) : this;
  }

  List<BenchStep> steps() {
    return lines.stream().map(filled -> filled.line().step()).distinct().sorted().toList();
  }

  List<Filled> of(BenchStep step) {
    return lines.stream().filter(filled -> filled.line().step() == step).toList();
  }

  List<Filled> all() {
    return steps().stream().flatMap(step -> of(step).stream()).toList();
  }

  List<Card.Item> items(SheetUnits units) {
    List<BenchStep> steps = steps();
    return steps.stream()
        .map(step -> new Card.Item(step.toString(), of(step).stream().map(filled -> line(filled, steps, units)).toList()))
        .toList();
  }

  private static Card.Line line(Filled filled, List<BenchStep> steps, SheetUnits units) {
    List<Card.Part> parts = new ArrayList<>();
    StringBuilder plain = new StringBuilder();
    int gap = 0;
    String text = filled.line().text();
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c != '_' && c != '{') {
        plain.append(c);
        continue;
      }
      flush(plain, parts);
      if (c == '_') {
        parts.add(new Card.Part("value or name", Card.Style.BLANK));
      } else {
        parts.add(part(filled.gaps().get(gap++), steps, units));
        i++;
      }
    }
    flush(plain, parts);
    return new Card.Line(filled.line().signal(), filled.line().hold(), parts);
  }

  private static void flush(StringBuilder plain, List<Card.Part> parts) {
    if (!plain.isEmpty()) {
      parts.add(new Card.Part(plain.toString(), Card.Style.PLAIN));
      plain.setLength(0);
    }
  }

  private static Card.Part part(Object gap, List<BenchStep> steps, SheetUnits units) {
    if (gap instanceof BenchNumber number) {
      return new Card.Part(number.text(units), Card.Style.NUMBER);
    }
    if (gap instanceof Large large) {
      return new Card.Part(large.number().text(units), Card.Style.LARGE);
    }
    if (gap instanceof Limits limits) {
      return new Card.Part(units.limits(limits.lower(), limits.upper()), Card.Style.NUMBER);
    }
    if (gap instanceof BenchStep step) {
      return new Card.Part(Integer.toString(steps.indexOf(step) + 1), Card.Style.PLAIN);
    }
    return new Card.Part(gap.toString(), Card.Style.PLAIN);
  }
}

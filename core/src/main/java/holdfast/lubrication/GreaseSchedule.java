// SPDX-License-Identifier: Apache-2.0
package holdfast.lubrication;

import holdfast.quantity.InputException;
import holdfast.quantity.Numbers;
import holdfast.tables.SourceRef;
import holdfast.trace.Message;
import holdfast.trace.Warning;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * When a roller is greased again: after some running hours or some months, whichever comes first. The hours are computed;
 * the months are the guide of the trade for its kind, at the short end where the place or the axis is hard on the grease.
 *
 * @param interval the interval in running hours; null if the formula does not cover the duty
 * @param noInterval why there is no interval; empty if there is one
 * @param calendar guide in months for the kind of roller
 * @param hard whether the short end of the guide holds
 */
public record GreaseSchedule(RelubricationInterval interval, String noInterval, LubricationGuide calendar, boolean hard)
    implements Serializable {
  // Refuses nulls, and a guide without months.
  public GreaseSchedule {
    Objects.requireNonNull(noInterval, "noInterval");
    Objects.requireNonNull(calendar, "calendar");
    if (calendar.low() == null || calendar.high() == null) {
      throw new InputException("calendar", calendar.toString(), "a guide with a low and a high end in months",
          "this guide tells something else");
    }
  }

  /**
   * A schedule with an interval.
   *
   * @param interval the interval in running hours, with its corrections
   * @param fullComplement whether the roller has no cage
   * @return the schedule; the calendar is at its short end if a correction for place, temperature or axis shortens the interval
   */
  public static GreaseSchedule of(RelubricationInterval interval, boolean fullComplement) {
    Objects.requireNonNull(interval, "interval");
    boolean hard = interval.factors().stream().anyMatch(factor -> factor.ofThePlace() && factor.value() < 1);
    return new GreaseSchedule(interval, "", LubricationGuide.calendar(fullComplement), hard);
  }

  /**
   * A schedule by the calendar alone.
   *
   * @param noInterval why the formula gives no interval
   * @param fullComplement whether the roller has no cage
   * @return the schedule, at the short end of the guide
   */
  public static GreaseSchedule byCalendar(String noInterval, boolean fullComplement) {
    Objects.requireNonNull(noInterval, "noInterval");
    return new GreaseSchedule(null, noInterval, LubricationGuide.calendar(fullComplement), true);
  }

  /**
   * The interval in running hours.
   *
   * @return the interval; empty if the formula does not cover the duty
   */
  public Optional<RelubricationInterval> knownInterval() {
    return Optional.ofNullable(interval);
  }

  /**
   * Months after which the roller is greased even if it has not run its hours.
   *
   * @return the end of the guide that holds
   */
  public double months() {
    return hard ? calendar.low() : calendar.high();
  }

  /**
   * Why these hours and these months.
   *
   * @return one sentence without full stop
   */
  public Message reasons() {
    Message months = Message.of(calendar.appliesTo(), ": ", Numbers.shortest(calendar.low()), " to ",
        Numbers.shortest(calendar.high()), " months, the ", hard ? "short" : "long", " end because ");
    if (interval == null) {
      return Message.of(months, "no interval in hours is known");
    }
    List<Object> words = new ArrayList<>();
    words.add("hours: " + Numbers.significant(interval.begin().interval().hours(), 3) + " h");
    for (RelubricationInterval.Factor factor : interval.factors()) {
      words.addAll(List.of(", ", named(factor), " × " + Numbers.significant(factor.value(), 3)));
    }
    words.add((interval.capped() ? ", not above 30000 h" : "") + "; ");
    words.add(months);
    List<Message> shortened = interval.factors().stream().filter(factor -> factor.ofThePlace() && factor.value() < 1)
        .map(this::named).toList();
    words.add(shortened.isEmpty() ? "nothing at the place shortens it" : "the place shortens it (");
    for (Message one : shortened) {
      words.add(one);
      words.add(one.equals(shortened.get(shortened.size() - 1)) ? ")" : "; ");
    }
    return Message.of(words.toArray());
  }

  /** The correction for temperature by the temperature itself, the others by their conditions. */
  private Message named(RelubricationInterval.Factor factor) {
    return factor.symbol().equals("kT") && interval.temperature() != null
        ? Message.of("temperature ", interval.temperature())
        : Message.of(factor.meaning());
  }

  /**
   * Where hours and months come from.
   *
   * @return sources of the interval and of the calendar
   */
  public List<SourceRef> sources() {
    List<SourceRef> sources = new ArrayList<>(interval == null ? List.of() : interval.sources());
    sources.add(calendar.source());
    return List.copyOf(sources);
  }

  /**
   * What the reader must know about the hours.
   *
   * @return the warnings of the interval; empty if there is none
   */
  public List<Warning> warnings() {
    return interval == null ? List.of() : interval.warnings();
  }

  /** For example {@code "every 6700 h of running or 6 months, whichever comes first"}. */
  @Override
  public String toString() {
    String unit = months() == 1 ? " month" : " months";
    return interval == null
        ? "every " + Numbers.shortest(months()) + unit
        : interval + " of running or " + Numbers.shortest(months()) + unit + ", whichever comes first";
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.job;

import holdfast.installation.MountingPlan;
import holdfast.quantity.InputException;
import holdfast.rollers.MeasureSystem;
import java.io.InvalidObjectException;
import java.io.ObjectStreamException;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The keys of a job file as questions, one after the other: first what must be known, each value checked at once. Keys that may
 * be left out are asked with what holds without them. Immutable: an answer makes the next state, so that a program may go back.
 */
public final class JobQuestions implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String[] answers;
  private final transient Values values = new Values();
  private final transient List<Key<?>> keys = new ArrayList<>();
  private final transient int at;

  private JobQuestions(String... answers) {
    this.answers = answers;
    keys.add(Schema.IN_FORK);
    int next = 0;
    for (String answer : answers) {
      take(keys.get(next), answer, next);
      next++;
      while (next < keys.size() && idle(keys.get(next))) {
        next++;
      }
    }
    at = next;
  }

  /**
   * Begins with what holds the roller.
   *
   * @return nothing answered yet
   */
  public static JobQuestions start() {
    return new JobQuestions();
  }

  private Object readResolve() throws ObjectStreamException {
    try {
      return new JobQuestions(answers.clone());
    } catch (InputException | IndexOutOfBoundsException | NullPointerException e) {
      throw new InvalidObjectException("answers: " + e.getMessage());
    }
  }

  /**
   * A question.
   *
   * @param key the key of the file
   * @param text what is asked
   * @param accepts what is accepted, in words
   * @param example an answer
   * @param needed whether an answer is needed
   * @param otherwise what holds if nothing is answered; empty if an answer is needed
   */
  public record Question(String key, String text, String accepts, String example, boolean needed, String otherwise)
      implements Serializable {
    // Refuses nulls.
    public Question {
      Objects.requireNonNull(key, "key");
      Objects.requireNonNull(text, "text");
      Objects.requireNonNull(accepts, "accepts");
      Objects.requireNonNull(example, "example");
      Objects.requireNonNull(otherwise, "otherwise");
    }
  }

  /**
   * The question that waits for an answer.
   *
   * @return the question; empty if all were answered
   */
  public Optional<Question> next() {
    if (at == keys.size()) {
      return Optional.empty();
    }
    Key<?> key = keys.get(at);
    boolean needed = needed(key, at);
    return Optional.of(new Question(
        key.path(), key.meaning(), key.kind().accepts(), key.example(), needed, needed ? "" : key.otherwise()));
  }

  /**
   * Takes an answer.
   *
   * @param text the answer; blank for what holds without it
   * @return the questions after it
   * @throws InputException if the answer is not taken, with the reason and what is accepted
   */
  public JobQuestions answer(String text) {
    Objects.requireNonNull(text, "text");
    if (at == keys.size()) {
      throw new InputException("answer", Fault.shortened(text), "none", "no question waits");
    }
    String[] more = Arrays.copyOf(answers, answers.length + 1);
    more[answers.length] = text;
    return new JobQuestions(more);
  }

  private void take(Key<?> key, String text, int place) {
    if (text.isBlank()) {
      if (needed(key, place)) {
        throw new InputException(key.path(), "blank", key.kind().accepts(), "an answer is needed");
      }
    } else {
      try {
        values.read(key, text.strip());
      } catch (InputException e) {
        throw new InputException(key.path(), Fault.shortened(text), key.kind().accepts(), e.reason());
      }
    }
    if (key.equals(Schema.IN_FORK)) {
      Schema.of(values.get(Schema.IN_FORK)).stream()
          .filter(Key.class::isInstance).map(element -> (Key<?>) element).filter(other -> !other.equals(Schema.IN_FORK))
          .filter(other -> !other.path().startsWith("fleet.") && !other.equals(Schema.ROLLER_LIST)).forEach(keys::add);
    }
  }

  /** Not worth asking after the answers so far: the head of its group was left out, or the size of a series tells it. */
  private boolean idle(Key<?> key) {
    boolean inFork = values.get(Schema.IN_FORK);
    String section = key.path().substring(0, key.path().lastIndexOf('.') + 1);
    boolean headless = Schema.groups(inFork).stream().anyMatch(group -> {
      Element head = group.keys().get(0);
      boolean ownSection = section.contains(".own-material.") || section.contains(".internal-geometry.");
      return !head.equals(key) && !values.has(head) && !key.mustBeThere()
          && (group.keys().contains(key) || (ownSection && head.path().startsWith(section)));
    });
    boolean told = Schema.choices(inFork).stream().anyMatch(choice -> choice.one().equals(Schema.ROLLER_SIZE)
        ? choice.others().contains(key) && values.has(choice.one())
        : choice.one().equals(key) && choice.others().stream().allMatch(values::has));
    return (headless || told) && !key.equals(Schema.LOAD);
  }

  /** Needed alone, because of what was answered before, or in the place of what was not. */
  private boolean needed(Key<?> key, int place) {
    if (key.mustBeThere() || key.equals(Schema.LOAD)) {
      return true;
    }
    boolean inFork = values.get(Schema.IN_FORK);
    boolean together = Schema.groups(inFork).stream()
        .anyMatch(group -> group.keys().contains(key) && group.keys().stream().anyMatch(values::has));
    boolean instead = Schema.choices(inFork).stream()
        .anyMatch(choice -> (choice.others().contains(key) && !values.has(choice.one()) && asked(choice.one(), place))
            || (choice.one().equals(key) && choice.others().stream().allMatch(other -> asked(other, place))
                && choice.others().stream().noneMatch(values::has) && !key.equals(Schema.ROLLER_SIZE)));
    return together || instead;
  }

  private boolean asked(Element element, int place) {
    return keys.subList(0, place).stream().anyMatch(element::equals);
  }

  /**
   * The job of the answers.
   *
   * @return the job
   * @throws JobFileException if a question waits, or the answers contradict each other
   */
  public MountingPlan job() {
    if (next().isPresent()) {
      throw new JobFileException("the answers", List.of(
          new Fault(1, 1, next().get().key(), "", next().get().accepts(), "this question waits for its answer")));
    }
    return JobFile.parse(Writer.text(values, values.get(Schema.IN_FORK), MeasureSystem.METRIC));
  }
}

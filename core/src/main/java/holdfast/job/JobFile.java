// SPDX-License-Identifier: Apache-2.0
package holdfast.job;

import holdfast.installation.InstallationPlan;
import holdfast.installation.MountingPlan;
import holdfast.installation.YokePlan;
import holdfast.quantity.InputException;
import holdfast.threads.Hexagon;
import holdfast.threads.ScrewThread;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * A job as a text file: YAML 1.2 (and so JSON) whose values are the trade's own, with their units. The same schema gives
 * reader, writer, template, reference page and JSON Schema. Thread-safe.
 */
public final class JobFile {
  private JobFile() {}

  /**
   * Reads a job.
   *
   * @param file a file in UTF-8, or UTF-16 with its mark
   * @return the job
   * @throws JobFileException if the file is no job: all its faults, each with line and column
   * @throws IOException if the file cannot be read
   */
  public static MountingPlan read(Path file) throws IOException {
    Objects.requireNonNull(file, "file");
    try (InputStream in = Files.newInputStream(file)) {
      return Reader.read(in, file.toString(), file.toAbsolutePath().getParent());
    }
  }

  /**
   * Reads a job.
   *
   * @param in the file's bytes
   * @param name what errors call it
   * @return the job
   * @throws JobFileException if the bytes are no job: all their faults, each with line and column
   * @throws IOException if the bytes cannot be read
   */
  public static MountingPlan read(InputStream in, String name) throws IOException {
    return Reader.read(Objects.requireNonNull(in, "in"), Objects.requireNonNull(name, "name"), null);
  }

  /**
   * Reads a job from text.
   *
   * @param text the text of a file
   * @return the job
   * @throws JobFileException if the text is no job: all its faults, each with line and column
   */
  public static MountingPlan parse(String text) {
    Objects.requireNonNull(text, "text");
    try {
      return Reader.read(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), "the job", null);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * A job as text. Reading it gives an equal job.
   *
   * @param job the job
   * @return the text of its file
   */
  public static String text(MountingPlan job) {
    Objects.requireNonNull(job, "job");
    return Writer.text(Extraction.of(job), job instanceof YokePlan, job.roller().system());
  }

  /**
   * The same job with some keys of its file changed: what if?
   *
   * @param job the job, which stays as it is
   * @param changes keys and their new values as a file would hold them, for example {@code "member.bore"} and {@code "K7"}
   * @return the changed job
   * @throws JobFileException if a key is not known, a value is not accepted, or the changed job contradicts itself
   */
  public static MountingPlan with(MountingPlan job, Map<String, String> changes) {
    Objects.requireNonNull(job, "job");
    Objects.requireNonNull(changes, "changes");
    boolean inFork = job instanceof YokePlan;
    Values values = Extraction.of(job);
    List<Fault> faults = new ArrayList<>();
    changes.forEach((path, text) -> change(values, inFork, path, text).ifPresent(faults::add));
    if (!faults.isEmpty()) {
      throw new JobFileException("the change", faults);
    }
    return parse(Writer.text(values, inFork, job.roller().system()));
  }

  private static Optional<Fault> change(Values values, boolean inFork, String path, String text) {
    List<String> keys = Schema.of(inFork).stream().filter(Key.class::isInstance).map(Element::path).toList();
    for (Element element : Schema.of(inFork)) {
      if (element instanceof Key<?> key && key.path().equals(path)) {
        try {
          values.read(key, text);
          return Optional.empty();
        } catch (InputException e) {
          return Optional.of(new Fault(1, 1, path, text, e.permitted(), e.reason()));
        }
      }
    }
    return Optional.of(new Fault(1, 1, path, "", "the keys of a job file, such as member.bore=K7",
        Suggestion.of(path, keys).map(near -> "the key is not known; did you mean '" + near
            + "'?").orElse("the key is not known")));
  }

  /**
   * A job as a text with a comment on every key and the keys that may be left out as comments: to be changed by hand.
   *
   * @param job the job whose values stand in the text
   * @return the text of its file
   */
  public static String template(MountingPlan job) {
    Objects.requireNonNull(job, "job");
    return Template.text(Extraction.of(job), job instanceof YokePlan, job.roller().system());
  }

  /**
   * A template for one roller under one load: an example's list of places is left out and its steps of load are one step, so
   * that a newcomer changes values and deletes nothing.
   *
   * @param example the job whose other values stand in the text
   * @return the text of its file
   */
  public static String starter(MountingPlan example) {
    Objects.requireNonNull(example, "example");
    return Template.text(single(example), example instanceof YokePlan, example.roller().system());
  }

  private static Values single(MountingPlan example) {
    Values values = Extraction.of(example);
    List.of(Schema.PLACES, Schema.FLEET_RELIABILITY, Schema.LEAD_YEARS, Schema.SERVICE, Schema.STEPS).forEach(values::remove);
    values.put(Schema.LOAD, example.duty().spectrum().steps().get(0).load())
        .put(Schema.ROTATION, example.duty().spectrum().steps().get(0).speed());
    if (onStandardFace(example)) {
      // Another thread brings its own standard face.
      List.of(Schema.FACE_OUTER, Schema.FACE_INNER).forEach(values::remove);
    }
    return values;
  }

  /** Whether the nut turns on what the tables hold for its thread. */
  static boolean onStandardFace(MountingPlan job) {
    return job instanceof InstallationPlan plan && Hexagon.standardFace(ScrewThread.of(plan.roller().thread()))
        .filter(face -> face.outer().equals(plan.nut().faceOuter()) && face.inner().equals(plan.nut().faceInner())).isPresent();
  }

  /**
   * A starter whose roller has the dimensions of a printed series.
   *
   * @param example a job with a stud, whose other values stand in the text
   * @param size series and outside diameter, for example {@code "inch 1-1/2 in"}
   * @return the text of its file
   * @throws InputException if the job has no stud, or the series has no such size
   */
  public static String starter(MountingPlan example, String size) {
    Objects.requireNonNull(example, "example");
    Objects.requireNonNull(size, "size");
    if (example instanceof YokePlan) {
      throw new InputException("size", size, "left out for a yoke roller", "the printed series are those of stud rollers");
    }
    Values values = single(example);
    List.of(Schema.OUTSIDE, Schema.WIDTH, Schema.STUD, Schema.STUD_TOLERANCE, Schema.STUD_THREAD, Schema.STUD_LENGTH,
        Schema.THREAD_LENGTH, Schema.FLANGE, Schema.GAP,
        Schema.MEASURES).forEach(values::remove);
    values.read(Schema.ROLLER_SIZE, size);
    return Template.text(values, false, values.get(Schema.ROLLER_SIZE).series().system());
  }

  /**
   * The keys of a job file as a page in Markdown.
   *
   * @return a table for each way in which a roller is held
   */
  public static String reference() {
    return SchemaText.page();
  }

  /**
   * The keys of a job file as JSON Schema (draft 2020-12), for editors that know it.
   *
   * @return the schema
   */
  public static String jsonSchema() {
    return SchemaText.json();
  }
}

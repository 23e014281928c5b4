// SPDX-License-Identifier: Apache-2.0
package holdfast.job;

import holdfast.installation.MountingPlan;
import holdfast.installation.YokePlan;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;

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
      return read(in, file.toString());
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
    return Reader.read(Objects.requireNonNull(in, "in"), Objects.requireNonNull(name, "name"));
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
      return Reader.read(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), "the job");
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
}

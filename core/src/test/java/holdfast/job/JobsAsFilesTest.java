// SPDX-License-Identifier: Apache-2.0
package holdfast.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.installation.ExampleJobs;
import holdfast.installation.InstallationPlan;
import holdfast.installation.MountingPlan;
import holdfast.quantity.KnownUnits;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Bundled jobs and those of the questions: the file and the code give the same job, and the same assessment. */
class JobsAsFilesTest {
  private static final Path FOLDER = Path.of("docs/jobs");
  private static final int QUESTIONS = 25;

  static Stream<Map.Entry<String, MountingPlan>> jobs() {
    Stream<Map.Entry<String, MountingPlan>> questions = Stream.iterate(1, number -> number <= QUESTIONS, number -> number + 1)
        .map(number -> Map.entry(String.format("questions/question-%02d", number), QuestionJobs.question(number)));
    return Stream.concat(ExampleJobs.all().entrySet().stream(), questions);
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void fileAndCodeGiveTheSameAssessment(Map.Entry<String, MountingPlan> job) throws IOException {
    MountingPlan read = JobFile.read(FOLDER.resolve(job.getKey() + ".yaml"));
    MountingPlan built = job.getValue();
    assertEquals(JobFile.text(built), JobFile.text(read));
    assertEquals(built, read);
    assertEquals(built.summary(), read.summary());
    assertEquals(built.sheet().text(), read.sheet().text());
  }

  @Test
  void everyFileIsOneOfThem() throws IOException {
    for (String folder : new String[] {"", "questions"}) {
      try (Stream<Path> files = Files.list(FOLDER.resolve(folder))) {
        long expected = folder.isEmpty() ? ExampleJobs.all().size() : QUESTIONS;
        assertEquals(expected, files.filter(file -> file.toString().endsWith(".yaml")).count());
      }
    }
  }

  private static double value(int question, String id) {
    return QuestionJobs.question(question).summary().values().stream().filter(value -> value.id().equals(id)).findFirst()
        .orElseThrow().value();
  }

  private static double permitted(int question, String limit) {
    return QuestionJobs.question(question).summary().limits().stream().filter(one -> one.name().equals(limit)).findFirst()
        .orElseThrow().permitted();
  }

  /** Numbers of the page questions.md that a whole job holds too. */
  @Test
  void wholeJobsGiveTheNumbersOfTheirQuestions() {
    assertEquals(15.875, value(1, "bore.lower-limit"), 1e-9);
    assertEquals(0.6255 * 25.4, value(1, "bore.upper-limit"), 1e-9);
    assertEquals(-7.62, value(2, "fit.clearance.least"), 1e-6);
    assertEquals(-7.62, value(2, "fit.clearance.greatest"), 1e-6);
    assertEquals(16.018, value(3, "bore.upper-limit"), 1e-9);
    // The page's seat is at 20 °C, the job's at 60 °C.
    assertEquals(2.325, QuestionJobs.question(4).tilt().bySeat().in(KnownUnits.MRAD), 0.005);
    assertEquals(58, value(8, "tighten.setting"), 1e-9);
    assertEquals(16990, value(10, "tighten.preload.least"), 10);
    assertEquals(28250, value(10, "tighten.preload.greatest"), 10);
    assertEquals(7544, permitted(14, "track"), 1);
    assertEquals(143300, value(16, "life.basic-l10"), 100);
    assertEquals(4253, QuestionJobs.question(17).meanLoad().newton(), 1);
    assertEquals(1837, permitted(20, "speed"), 1);
    assertEquals(300, permitted(21, "least load for rolling"), 2);
    assertEquals(1.26, value(22, "grease.quantity"), 0.005);
    InstallationPlan fed = QuestionJobs.question(23);
    assertTrue(fed.stops().isEmpty(), () -> fed.stops().toString());
    assertEquals(1500.0, QuestionJobs.question(25).fleet().positions().get(39).hoursPerYear());
  }
}

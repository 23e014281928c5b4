// SPDX-License-Identifier: Apache-2.0
package holdfast.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.installation.ExampleJobs;
import holdfast.installation.MountingPlan;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Whatever the bytes of a file hold: a job, or a list of faults; never anything else, never for long. The system property
 * {@code jobfile.mutations} tells how many files are tried.
 */
class JobFileLawTest {
  private static final int FILES = Integer.getInteger("jobfile.mutations", 4000);
  private static final int COMPUTED = 50;
  private static final Duration LONGEST = Duration.ofSeconds(10);
  private static final List<String> TEXTS = Stream.concat(ExampleJobs.all().values().stream(),
      IntStream.of(1, 9, 17, 23).mapToObj(QuestionJobs::question)).map(JobFile::text).toList();
  private static final List<String> SPICES = List.of("\t", "\u0000", "\u202e", "\u2066", "\u200f", "\ufeff", "\r\n", "\r", "\u0085",
      "\u001b[2J", "\u0007", ": ", "- ", "&a ", "*a", "!!x ", "!!int ", "{", "]", "\"", "'", "|\n", ">\n", "#", "NaN", "Infinity", "1e999",
      "-", "--- ", "...", "%", "%YAML 1.1\n", "@", "`", "999999999999999999999", "0", "-1", "\n\n", "\ud800", "١", "½", "no", "null", "~",
      "? ", "<script>", "</script>", "\u2028", "<<: ", "1-3/2", "0x10", "1_000", "1,5", "\u00a0", "\u3000", "e");

  /** What happened in a run, so that a law that tried nothing is seen. */
  private int jobs;
  private int refused;

  @Test
  void everyFileIsAJobOrAListOfFaults() throws IOException {
    Random random = new Random(17);
    for (int file = 0; file < FILES; file++) {
      byte[] bytes = bytes(random);
      Instant start = Instant.now();
      try {
        tried(bytes, file);
      } catch (RuntimeException | StackOverflowError e) {
        throw new AssertionError("file " + file + ":\n" + new String(bytes, StandardCharsets.UTF_8), e);
      }
      assertTrue(Duration.between(start, Instant.now()).compareTo(LONGEST) < 0, "file " + file + " takes too long");
    }
    System.out.println(FILES + " files: " + jobs + " jobs, " + refused + " refused");
    assertEquals(FILES, jobs + refused);
    assertTrue(jobs > FILES / 50 && refused > FILES / 2, jobs + " jobs, " + refused + " refused");
  }

  private void tried(byte[] bytes, int file) throws IOException {
    MountingPlan job;
    try {
      job = JobFile.read(new ByteArrayInputStream(bytes), "mutated");
    } catch (JobFileException e) {
      assertFalse(e.faults().isEmpty());
      for (Fault fault : e.faults()) {
        assertTrue(fault.toString().codePoints().noneMatch(c -> Character.isISOControl(c) || c == 0x202e), fault::toString);
        assertFalse(fault.reason().isBlank());
      }
      refused++;
      return;
    }
    jobs++;
    // No number changes on its way through the text.
    assertEquals(job, JobFile.parse(JobFile.text(job)));
    if (jobs % COMPUTED == 0) {
      // What is accepted can be computed and printed, and its page carries the very job.
      assertEquals(List.of(), JobSheet.recompute(JobSheet.html(job)), "file " + file);
    }
  }

  private static byte[] bytes(Random random) {
    if (random.nextInt(40) == 0) {
      return hostile(random).getBytes(StandardCharsets.UTF_8);
    }
    StringBuilder text = new StringBuilder(TEXTS.get(random.nextInt(TEXTS.size())));
    int changes = random.nextInt(4);
    for (int i = 0; i < changes; i++) {
      mutate(text, random);
    }
    String mutated = random.nextInt(20) == 0 ? text.toString().replace("\n", random.nextBoolean() ? "\r\n" : "\r") : text.toString();
    switch (random.nextInt(20)) {
      case 0 -> {
        return ("\ufeff" + mutated).getBytes(StandardCharsets.UTF_16LE);
      }
      case 1 -> {
        return ("\ufeff" + mutated).getBytes(random.nextBoolean() ? StandardCharsets.UTF_16BE : StandardCharsets.UTF_8);
      }
      case 2 -> {
        byte[] bytes = mutated.getBytes(StandardCharsets.UTF_8);
        bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        return bytes;
      }
      case 3 -> {
        return mutated.getBytes(random.nextBoolean() ? StandardCharsets.ISO_8859_1 : StandardCharsets.UTF_16LE);
      }
      default -> {
        return mutated.getBytes(StandardCharsets.UTF_8);
      }
    }
  }

  private static String hostile(Random random) {
    String job = TEXTS.get(random.nextInt(TEXTS.size()));
    int many = 1 << random.nextInt(18);
    return switch (random.nextInt(10)) {
      case 0 -> "[".repeat(many);
      case 1 -> "{a: ".repeat(many) + "}".repeat(many);
      case 2 -> IntStream.range(0, Math.min(many, 500)).mapToObj(i -> " ".repeat(i) + "a:\n").reduce("", String::concat);
      case 3 -> job.replaceFirst(": [^\\n]+\\n", ": " + "9".repeat(many) + "\n");
      case 4 -> job + job;
      case 5 -> "- ".repeat(many) + "a\n";
      case 6 -> "a: &a x\nb: [" + "*a, ".repeat(many) + "*a]\n";
      case 7 -> job.replaceFirst("torque: [^\\n]+", "torque: 1e" + many + " N·m");
      case 8 -> "? ".repeat(Math.min(many, 5000)) + "\n" + job;
      default -> job.replaceFirst("job: [^\\n]+", "job: \"" + "\\u202e".repeat(Math.min(many, 3000)) + "x\"");
    };
  }

  private static void mutate(StringBuilder text, Random random) {
    int at = random.nextInt(text.length());
    switch (random.nextInt(7)) {
      case 0 -> text.insert(at, SPICES.get(random.nextInt(SPICES.size())));
      case 1 -> text.deleteCharAt(at);
      case 2 -> text.setCharAt(at, (char) (32 + random.nextInt(95)));
      case 3 -> text.delete(at, Math.min(text.length() - 1, at + random.nextInt(200)));
      case 4 -> text.insert(at, text.substring(at, Math.min(text.length(), at + random.nextInt(200))));
      case 5 -> digit(text, at, random);
      default -> {
        List<String> lines = new ArrayList<>(text.toString().lines().toList());
        String line = lines.remove(random.nextInt(lines.size()));
        lines.add(random.nextInt(lines.size() + 1), line);
        text.setLength(0);
        text.append(String.join("\n", lines)).append('\n');
      }
    }
    if (text.length() == 0) {
      text.append('x');
    }
  }

  /** Another digit for the next one in the text: most of these files are jobs still. */
  private static void digit(StringBuilder text, int from, Random random) {
    for (int i = from; i < text.length(); i++) {
      if (Character.isDigit(text.charAt(i))) {
        text.setCharAt(i, (char) ('0' + random.nextInt(10)));
        return;
      }
    }
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.shell;

import holdfast.job.JobFile;
import holdfast.job.JobQuestions;
import holdfast.quantity.InputException;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/** Asks for a job one question after the other. */
final class Questions {
  private final PrintStream out;
  private final BufferedReader answers;

  Questions(PrintStream out, InputStream in) {
    this.out = out;
    this.answers = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
  }

  /** {@code ask [FILE]}: 0 if the job was written, 2 if the answers ended too early. */
  int ask(JobCommands.Arguments given) throws IOException {
    List<String> words = given.words(0, 1);
    JobQuestions questions = JobQuestions.start();
    out.println("Answer with a value and its unit. Enter alone takes what stands in brackets; ? explains.");
    while (questions.next().isPresent()) {
      JobQuestions.Question question = questions.next().get();
      out.print(question.text() + (question.needed() ? "" : " [" + question.otherwise() + "]") + ": ");
      out.flush();
      String answer = answers.readLine();
      if (answer == null) {
        throw new IllegalArgumentException("\nthe answers ended before the job was complete; nothing was written");
      }
      if (answer.strip().equals("?")) {
        out.println("  " + question.key() + ": " + question.accepts() + ", such as " + question.example());
        continue;
      }
      try {
        questions = questions.answer(answer);
      } catch (InputException e) {
        out.println("  " + e.reason() + "; accepted: " + question.accepts());
      }
    }
    String text = JobFile.text(questions.job());
    if (words.isEmpty()) {
      out.print(text);
    } else {
      Written.fresh(Path.of(words.get(0)), text);
      out.println("written to " + words.get(0) + "; now: sheet " + words.get(0));
    }
    return 0;
  }
}

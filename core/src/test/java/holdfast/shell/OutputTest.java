// SPDX-License-Identifier: Apache-2.0
package holdfast.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A program whose output nobody takes any longer ends. */
class OutputTest {
  @TempDir private Path folder;

  private final ByteArrayOutputStream err = new ByteArrayOutputStream();
  private final AtomicInteger status = new AtomicInteger(-1);

  private void printTo(String fault) {
    OutputStream broken = new OutputStream() {
      @Override
      public void write(int b) throws IOException {
        throw new IOException(fault);
      }
    };
    Output output = new Output(broken, new PrintStream(err, true, StandardCharsets.UTF_8), status::set);
    new PrintStream(output, true, StandardCharsets.UTF_8).println("text");
  }

  @Test
  void aFullDiskIsSaidAndEndsTheProgram() {
    printTo("No space left on device");
    assertEquals(Output.STATUS, status.get());
    assertEquals("The output cannot be written: No space left on device\n", err.toString(StandardCharsets.UTF_8));
  }

  @Test
  void aReaderThatHasSeenEnoughEndsTheProgramInSilence() {
    printTo("Broken pipe");
    assertEquals(Output.STATUS, status.get());
    assertEquals("", err.toString(StandardCharsets.UTF_8));
  }

  @Test
  void anEndlessScriptEndsWithItsReader() throws Exception {
    Path script = Files.writeString(folder.resolve("endless.jsh"), "while (true) System.out.println(mm(2))\n");
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    Process process = new ProcessBuilder(
        java, "-cp", System.getProperty("java.class.path"), "holdfast.shell.Main", script.toString()).start();
    try {
      try (BufferedReader reader = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
        for (int i = 0; i < 10; i++) {
          assertEquals("2 mm", reader.readLine());
        }
      }
      assertTrue(process.waitFor(60, TimeUnit.SECONDS), "it runs on though nobody reads");
      assertEquals(Output.STATUS, process.exitValue());
      assertEquals("", new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8));
    } finally {
      process.destroyForcibly();
    }
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A headless browser, where one is installed. */
final class Browser {
  private static final List<String> NAMES = List.of("chromium", "chromium-browser");
  private static final Pattern PAGE = Pattern.compile("/Type\\s*/Page\\b");

  private Browser() {}

  private static Stream<String> installed() {
    return Stream.of(System.getenv("PATH").split(File.pathSeparator))
        .flatMap(directory -> NAMES.stream().map(name -> Path.of(directory, name)))
        .filter(Files::isExecutable)
        .map(Path::toString);
  }

  static boolean isInstalled() {
    return installed().findFirst().isPresent();
  }

  /** Runs one job and returns what the browser writes: complaints of a page begin with CONSOLE, a dumped page is its text. */
  static String run(Path folder, String... job) throws IOException, InterruptedException {
    List<String> command =
        new ArrayList<>(
            List.of(
                installed().findFirst().orElseThrow(), "--headless", "--no-sandbox", "--disable-gpu", "--no-first-run",
                "--disable-background-networking", "--disable-component-update", "--disable-sync",
                "--no-pdf-header-footer", "--enable-logging=stderr", "--user-data-dir=" + folder.resolve("profile")));
    command.addAll(List.of(job));
    Path log = folder.resolve("log.txt");
    Process process = new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(log.toFile()).start();
    assertTrue(process.waitFor(2, TimeUnit.MINUTES), "the browser hangs");
    return Files.readString(log);
  }

  /** Number of pages of a printed file. */
  static long pages(Path pdf) throws IOException {
    return PAGE.matcher(Files.readString(pdf, StandardCharsets.ISO_8859_1)).results().count();
  }
}

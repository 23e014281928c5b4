// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every Java file starts with the licence, those too that checkstyle does not look at. */
class LicenceLineTest {
  private static final String LINE = "// SPDX-License-Identifier: Apache-2.0";

  @Test
  void everyJavaFileNamesTheLicence() throws IOException {
    List<Path> without = new ArrayList<>();
    int seen = 0;
    for (String module : List.of("tables", "core", "verification", "benchmarks")) {
      try (Stream<Path> files = Files.walk(Path.of("..", module, "src"))) {
        for (Path file : files.filter(path -> path.toString().endsWith(".java")).toList()) {
          seen++;
          try (BufferedReader reader = Files.newBufferedReader(file)) {
            if (!LINE.equals(reader.readLine())) {
              without.add(file);
            }
          }
        }
      }
    }
    assertTrue(seen > 100, "files found: " + seen);
    assertEquals(List.of(), without);
  }
}

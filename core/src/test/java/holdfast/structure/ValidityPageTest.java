// SPDX-License-Identifier: Apache-2.0
package holdfast.structure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The page of limits names warnings by their codes; each must exist. What its examples print is checked with all pages. */
class ValidityPageTest {
  private static final Pattern CODE = Pattern.compile("`([a-z]+(?:-[A-Za-z0-9]+)+)`");

  @Test
  void everyWarningNamedExists() throws IOException {
    String sources;
    try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
      sources = files.filter(file -> file.toString().endsWith(".java")).map(ValidityPageTest::text).collect(Collectors.joining());
    }
    List<String> codes = CODE.matcher(text(Path.of("docs/validity.md"))).results().map(match -> match.group(1)).toList();
    assertTrue(codes.size() > 50, "codes found: " + codes.size());
    assertEquals(List.of(), codes.stream().filter(code -> !exists(code, sources)).toList());
  }

  /** Some codes begin with the part that is meant. */
  private static boolean exists(String code, String sources) {
    return sources.contains('"' + code + '"')
        || sources.contains("part + \"" + code.replaceFirst("^(stud|housing)", "") + '"');
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.tables.TableSet;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TablesCommandTest {
  @TempDir private Path folder;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int run(String... args) {
    return TablesCommand.run(
        args,
        new PrintStream(out, true, StandardCharsets.UTF_8),
        new PrintStream(err, true, StandardCharsets.UTF_8));
  }

  private String edition(String name, String value) throws IOException {
    Path set = Files.createDirectories(folder.resolve(name).resolve("own")).getParent();
    Files.writeString(set.resolve("table-set.properties"), "version = " + name + "\nsubjects = own\n");
    Files.writeString(set.resolve("own/sources.csv"), "id,title,kind,note\npage,A page,reference page,\n");
    Files.writeString(set.resolve("own/contents.txt"), "weights\n");
    Files.writeString(set.resolve("own/weights.csv"), "part,kg\nlever," + value + "\n");
    Files.writeString(
        set.resolve("own/weights.properties"),
        """
        title = Weights
        document = page
        locator = list
        provenance = memory
        key = part
        address = {part}
        column.part = text
        column.kg = number kg
        """);
    return set.toString();
  }

  @Test
  void twoEditions() throws IOException {
    String first = edition("1", "6");
    assertEquals(0, run("tables", "diff", first, edition("2", "6.0")));
    assertEquals(1, run("tables", "diff", first, edition("3", "6.5")));
    String text = out.toString(StandardCharsets.UTF_8);
    assertTrue(text.contains("from table set 1, SHA-256 "), text);
    assertTrue(text.endsWith("own/weights\n  value changed: page, list, lever: kg 6 kg → 6.5 kg\n"), text);
    assertEquals("", err.toString(StandardCharsets.UTF_8));
  }

  @Test
  void theBundledSet() {
    assertEquals(0, run("tables", "diff", "bundled", "bundled"));
    assertTrue(out.toString(StandardCharsets.UTF_8).contains(TableSet.bundled().digest()));
  }

  @Test
  void whatCannotBeCompared() throws IOException {
    assertEquals(2, run("tables"));
    assertTrue(err.toString(StandardCharsets.UTF_8).startsWith("tables diff A B: "), err.toString(StandardCharsets.UTF_8));
    assertEquals(2, run("tables", "diff", "bundled"));
    assertEquals(2, run("tables", "compare", "bundled", "bundled"));
    assertEquals(2, run("tables", "diff", "bundled", folder.resolve("absent").toString()));
    String broken = edition("1", "heavy");
    assertEquals(2, run("tables", "diff", broken, broken));
    assertTrue(err.toString(StandardCharsets.UTF_8).contains("own/weights.csv:2:"), err.toString(StandardCharsets.UTF_8));
    err.reset();
    assertEquals(2, run("tables", "diff", broken, broken));
    assertTrue(err.toString(StandardCharsets.UTF_8).contains("\ntables diff A B: "), err.toString(StandardCharsets.UTF_8));
    Files.writeString(folder.resolve("text.jar"), "no jar");
    assertEquals(2, run("tables", "diff", "bundled", folder.resolve("text.jar").toString()));
  }
}

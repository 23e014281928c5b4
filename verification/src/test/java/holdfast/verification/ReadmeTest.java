package holdfast.verification;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Runs the code of the README: what a reader copies must work and print what the README says it prints. */
class ReadmeTest {
  private static final Path ROOT = Path.of("..").toAbsolutePath().normalize();
  private static final Path JAR = ROOT.resolve("core/target/holdfast.jar");
  private static final Pattern BLOCK = Pattern.compile("(?ms)^```(\\w+)\\n(.*?)^```$");
  private static final String JAVA = Path.of(System.getProperty("java.home"), "bin", "java").toString();

  @TempDir Path folder;

  private static List<String> blocks(String language) throws IOException {
    Matcher matcher = BLOCK.matcher(Files.readString(ROOT.resolve("README.md")));
    List<String> blocks = new ArrayList<>();
    while (matcher.find()) {
      if (matcher.group(1).equals(language)) {
        blocks.add(matcher.group(2));
      }
    }
    return blocks;
  }

  @Test
  void theTestCommandIsTheOneThatIntegrationRuns() throws IOException {
    List<String> commands =
        blocks("sh").stream().flatMap(String::lines).filter(line -> line.contains("verify")).toList();
    assertEquals(List.of("mvn verify"), commands);
    List<String> run = Files.readAllLines(ROOT.resolve(".ci/run"));
    assertEquals("mvn verify", run.get(run.size() - 1));
  }

  /** Each line of a JShell block runs; the comment lines of the block are its output. */
  @TestFactory
  Stream<DynamicTest> jshellBlocks() throws IOException {
    List<String> blocks = blocks("jshell");
    assertFalse(blocks.isEmpty(), "the README shows JShell");
    return blocks.stream()
        .map(
            block ->
                DynamicTest.dynamicTest(
                    block.lines().findFirst().orElseThrow(),
                    () -> {
                      String expected =
                          block.lines()
                              .filter(line -> line.startsWith("// "))
                              .map(line -> line.substring(3).stripTrailing())
                              .collect(Collectors.joining("\n"));
                      Path script = Files.writeString(Files.createTempFile("readme", ".jsh"), block);
                      assertEquals(expected, run(0, JAVA, "-jar", JAR.toString(), script.toString()));
                      Files.delete(script);
                    }));
  }

  @Test
  void javaBlocksCompileAndRun() throws IOException {
    List<String> blocks = blocks("java");
    assertFalse(blocks.isEmpty(), "the README shows how to embed");
    for (String block : blocks) {
      Matcher name = Pattern.compile("class (\\w+)").matcher(block);
      assertTrue(name.find(), block);
      Path source = Files.writeString(folder.resolve(name.group(1) + ".java"), block);
      String output = run(0, JAVA, "-cp", JAR.toString(), source.toString());
      assertFalse(output.isBlank());
    }
  }

  @Test
  void coordinatesNameThisVersion() throws IOException {
    String parent = Files.readString(ROOT.resolve("pom.xml"));
    Matcher version = Pattern.compile("<version>(.*?)</version>").matcher(parent);
    assertTrue(version.find());
    String coordinates = String.join("\n", blocks("xml"));
    assertTrue(coordinates.contains("<version>" + version.group(1) + "</version>"), coordinates);
    // It has no parent that would tell it.
    String bom = Files.readString(ROOT.resolve("core/bom/pom.xml"));
    assertTrue(bom.contains("<version>" + version.group(1) + "</version>"), bom);
  }

  private String run(int status, String... command) throws IOException {
    Path output = folder.resolve("output.txt");
    Process process =
        new ProcessBuilder(command).directory(folder.toFile()).redirectErrorStream(true).redirectOutput(output.toFile()).start();
    try {
      int exit = process.waitFor();
      String text = Files.readString(output, StandardCharsets.UTF_8).stripTrailing();
      assertEquals(status, exit, text);
      return text.lines().map(String::stripTrailing).collect(Collectors.joining("\n"));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException("interrupted", e);
    }
  }
}

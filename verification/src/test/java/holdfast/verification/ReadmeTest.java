// SPDX-License-Identifier: Apache-2.0
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

/** Runs the code of the README and of the pages: what a reader copies must work and print what the page says it prints. */
class ReadmeTest {
  private static final Path ROOT = Path.of("..").toAbsolutePath().normalize();
  private static final Path README = ROOT.resolve("README.md");
  private static final Path JAR = ROOT.resolve("core/target/holdfast.jar");
  private static final Pattern BLOCK = Pattern.compile("(?ms)^```(\\w+)\\n(.*?)^```$");
  private static final String END_OF_BLOCK = "~~ end of block ~~";
  private static final String JAVA = Path.of(System.getProperty("java.home"), "bin", "java").toString();

  @TempDir Path folder;

  /** The README and every page of the documentation. */
  private static List<Path> pages() throws IOException {
    List<Path> pages = new ArrayList<>(List.of(README));
    for (String folder : List.of("core/docs", "verification/docs")) {
      try (Stream<Path> files = Files.list(ROOT.resolve(folder))) {
        files.filter(file -> file.toString().endsWith(".md")).sorted().forEach(pages::add);
      }
    }
    return pages;
  }

  private static List<String> blocks(Path page, String language) throws IOException {
    Matcher matcher = BLOCK.matcher(Files.readString(page));
    List<String> blocks = new ArrayList<>();
    while (matcher.find()) {
      if (matcher.group(1).equals(language)) {
        blocks.add(matcher.group(2));
      }
    }
    return blocks;
  }

  private static String named(Path page, String block) {
    return ROOT.relativize(page) + ": " + block.lines().findFirst().orElseThrow();
  }

  @Test
  void theTestCommandIsTheOneThatIntegrationRuns() throws IOException {
    List<String> commands =
        blocks(README, "sh").stream().flatMap(String::lines).filter(line -> line.contains("verify")).toList();
    assertEquals(List.of("mvn verify"), commands);
    List<String> run = Files.readAllLines(ROOT.resolve(".ci/run"));
    assertEquals("mvn verify", run.get(run.size() - 1));
  }

  /** The README's lines on job files, one after the other in one folder. */
  @Test
  void theCommandsOnJobFilesRun() throws IOException {
    String jar = "java -jar core/target/holdfast.jar ";
    List<String> lines = blocks(README, "sh").stream().flatMap(String::lines).filter(line -> line.startsWith(jar)).toList();
    assertTrue(lines.size() >= 4, lines::toString);
    for (String line : lines) {
      List<String> command = new ArrayList<>(List.of(JAVA, "-jar", JAR.toString()));
      command.addAll(List.of(line.substring(jar.length()).split(" ", -1)));
      Output output = output(command.toArray(String[]::new));
      assertEquals(0, output.status(), line + "\n" + output.text());
    }
  }

  /**
   * Each line of a JShell block runs; the comment lines of the block are its output. The blocks of a page share one fresh
   * JShell, so that a reader can go on from one block to the next.
   */
  @TestFactory
  Stream<DynamicTest> jshellBlocks() throws IOException {
    assertFalse(blocks(README, "jshell").isEmpty(), "the README shows JShell");
    List<DynamicTest> tests = new ArrayList<>();
    for (Path page : pages()) {
      List<String> blocks = blocks(page, "jshell");
      if (blocks.isEmpty()) {
        continue;
      }
      List<String> outputs = new ArrayList<>();
      for (int i = 0; i < blocks.size(); i++) {
        int block = i;
        tests.add(
            DynamicTest.dynamicTest(
                named(page, blocks.get(block)),
                () -> {
                  if (outputs.isEmpty()) {
                    outputs.addAll(outputs(page, blocks));
                  }
                  assertTrue(block < outputs.size(), "a block before this one fails");
                  assertEquals(expected(blocks.get(block)), outputs.get(block));
                }));
      }
    }
    return tests.stream();
  }

  private static String expected(String block) {
    return block.lines()
        .filter(line -> line.startsWith("// "))
        .map(line -> line.substring(3).stripTrailing())
        .collect(Collectors.joining("\n"));
  }

  /** What each block of a page prints; an error ends the page and stands in the output of its block. */
  private List<String> outputs(Path page, List<String> blocks) throws IOException {
    String script = String.join("\nSystem.out.println(\"" + END_OF_BLOCK + "\")\n", blocks);
    Path file = Files.writeString(folder.resolve(page.getFileName() + ".jsh"), script);
    Output output = output(JAVA, "-jar", JAR.toString(), file.toString());
    String text = output.status() == 0 ? output.text() : output.text() + "\nexit status " + output.status();
    return Stream.of(text.split(END_OF_BLOCK, -1)).map(part -> part.replaceFirst("^\n", "").stripTrailing()).toList();
  }

  /**
   * The text blocks of a page are, one after the other, what the script of the same name prints, and the pictures beside it
   * are what the script writes, byte for byte.
   */
  @TestFactory
  Stream<DynamicTest> scriptsOfPages() throws IOException {
    Path docs = ROOT.resolve("core/docs");
    List<Path> scripts = files(docs, ".jsh");
    assertFalse(scripts.isEmpty(), "there is a study with its script");
    return scripts.stream().map(script -> DynamicTest.dynamicTest(script.getFileName().toString(), () -> study(docs, script)));
  }

  private void study(Path docs, Path script) throws IOException {
    Output output = output(JAVA, "-jar", JAR.toString(), script.toString());
    assertEquals(0, output.status(), output.text());
    Path page = Path.of(script.toString().replace(".jsh", ".md"));
    String shown = blocks(page, "text").stream().map(String::stripTrailing).collect(Collectors.joining("\n\n"));
    assertEquals(output.text().stripTrailing(), shown, page.toString());
    List<Path> pictures = files(folder, ".svg");
    assertFalse(pictures.isEmpty(), "the script writes its picture");
    for (Path picture : pictures) {
      Path committed = docs.resolve(picture.getFileName());
      assertEquals(-1, Files.mismatch(committed, picture), committed + " is not what the script writes");
    }
  }

  private static List<Path> files(Path directory, String ending) throws IOException {
    try (Stream<Path> files = Files.list(directory)) {
      return files.filter(file -> file.toString().endsWith(ending)).sorted().toList();
    }
  }

  /** Each Java block is a class whose main method runs, with assertions on. */
  @TestFactory
  Stream<DynamicTest> javaBlocks() throws IOException {
    assertFalse(blocks(README, "java").isEmpty(), "the README shows how to embed");
    List<DynamicTest> tests = new ArrayList<>();
    for (Path page : pages()) {
      for (String block : blocks(page, "java")) {
        Matcher name = Pattern.compile("class (\\w+)").matcher(block);
        tests.add(
            DynamicTest.dynamicTest(
                named(page, block),
                () -> {
                  assertTrue(name.find(), block);
                  Path source = Files.writeString(folder.resolve(name.group(1) + ".java"), block);
                  Output output = output(JAVA, "-ea", "-cp", JAR.toString(), source.toString());
                  assertEquals(0, output.status(), output.text());
                  assertFalse(output.text().isBlank());
                }));
      }
    }
    return tests.stream();
  }

  @Test
  void coordinatesNameThisVersion() throws IOException {
    String parent = Files.readString(ROOT.resolve("pom.xml"));
    Matcher version = Pattern.compile("<version>(.*?)</version>").matcher(parent);
    assertTrue(version.find());
    String coordinates = String.join("\n", blocks(README, "xml"));
    assertTrue(coordinates.contains("<version>" + version.group(1) + "</version>"), coordinates);
    // It has no parent that would tell it.
    String bom = Files.readString(ROOT.resolve("core/bom/pom.xml"));
    assertTrue(bom.contains("<version>" + version.group(1) + "</version>"), bom);
  }

  private record Output(int status, String text) {}

  private Output output(String... command) throws IOException {
    Path output = folder.resolve("output.txt");
    Process process =
        new ProcessBuilder(command).directory(folder.toFile()).redirectErrorStream(true).redirectOutput(output.toFile()).start();
    try {
      int exit = process.waitFor();
      String text = Files.readString(output, StandardCharsets.UTF_8);
      return new Output(exit, text.lines().map(String::stripTrailing).collect(Collectors.joining("\n")));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException("interrupted", e);
    }
  }
}

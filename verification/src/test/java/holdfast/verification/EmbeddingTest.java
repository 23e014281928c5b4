// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.fits.Fit;
import holdfast.tables.EditionDiff;
import holdfast.tables.TableSet;
import java.io.IOException;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The jars as a program takes them: from the class path, from the module path, and in containers that keep programs apart. */
class EmbeddingTest {
  private static final String PROGRAM =
      """
      package embedder;
      import holdfast.fits.Fit;
      import holdfast.installation.InstallationPlan;
      public class Program {
        public static void main(String[] args) {
          System.out.println(Fit.of("25 H7/p6").hole().limits().upper());
          if (args.length > 0) {
            return;
          }
          System.out.println(InstallationPlan.example().sheet().text().contains("Table set"));
          System.out.println(Fit.class.getModule().getName());
          System.out.println(ModuleLayer.boot().findModule("jdk.jshell").isPresent());
        }
      }
      """;

  @TempDir private static Path classes;
  @TempDir private Path folder;

  private static String path(List<Path> jars) {
    return jars.stream().map(Path::toString).collect(Collectors.joining(System.getProperty("path.separator")));
  }

  /** Compiles the program as a module; from the class path its descriptor is not read. */
  @BeforeAll
  static void compile() throws IOException {
    Path module = Files.writeString(classes.resolve("module-info.java"), "module embedder { requires holdfast.core; }");
    Path source = Files.writeString(Files.createDirectory(classes.resolve("embedder")).resolve("Program.java"), PROGRAM);
    String[] javac = {"--module-path", path(Jars.all()), module.toString(), source.toString()};
    assertEquals(0, ToolProvider.getSystemJavaCompiler().run(null, null, null, javac));
  }

  private static List<Path> withProgram() throws IOException {
    List<Path> jars = new ArrayList<>(Jars.all());
    jars.add(classes);
    return jars;
  }

  @Test
  void fromTheClassPath() throws IOException, InterruptedException {
    List<String> lines = run(0, "-cp", path(withProgram()), "embedder.Program");
    assertEquals(List.of("25.021 mm", "true", "null"), lines.subList(0, 3));
  }

  /** With no module of the platform but those that the library asks for; JShell is not among them. */
  @Test
  void fromTheModulePath() throws IOException, InterruptedException {
    List<String> lines =
        run(0, "--limit-modules", "embedder", "--module-path", path(withProgram()), "--module", "embedder/embedder.Program");
    assertEquals(List.of("25.021 mm", "true", "holdfast.core", "false"), lines);
  }

  /** An image of the platform with the library and its prompt in it, and nothing else on the way. */
  @Test
  void anImageHoldsTheLibraryAndItsPrompt() throws IOException, InterruptedException {
    var jlink = java.util.spi.ToolProvider.findFirst("jlink").orElseThrow();
    Path image = folder.resolve("image");
    assertEquals(0, jlink.run(System.out, System.err, "--module-path", path(Jars.all()), "--add-modules",
        "holdfast.core,jdk.jshell", "--output", image.toString()));
    Path script = Files.writeString(folder.resolve("fit.jsh"), "Fit.of(\"25 H7/p6\").hole().limits().upper().mm()");
    String java = image.resolve("bin/java").toString();
    List<String> prompt = List.of(java, "--add-modules", "jdk.jshell", "-m", "holdfast.core/holdfast.shell.Main", script.toString());
    assertEquals(List.of("25.021"), start(0, prompt));
  }

  @Test
  void twoContainersKeepTheirOwnClassesAndExchangeResultsAsStreams() throws IOException, ReflectiveOperationException {
    try (URLClassLoader first = Container.of(Jars.all()); URLClassLoader second = Container.of(Jars.all())) {
      Object fit = Container.fit(first, "25 H7/p6");
      Object other = Container.fit(second, "25 H7/p6");
      assertNotSame(fit.getClass(), other.getClass());
      assertNotSame(fit.getClass(), Fit.class);
      Object received = Container.read(second, Container.write(fit));
      assertSame(other.getClass(), received.getClass());
      assertEquals(other, received);
      assertEquals(fit.toString(), received.toString());
      Object back = Container.read(first, Container.write(received));
      assertEquals(fit, back);
      Object here = Container.read(EmbeddingTest.class.getClassLoader(), Container.write(received));
      assertEquals(Fit.of("25 H7/p6"), here);
    }
  }

  @Test
  void twoEditionsOfTheTablesWorkSideBySide() throws IOException, ReflectiveOperationException {
    List<Path> jars = new ArrayList<>(Jars.all());
    jars.set(0, Jars.exampleEdition(folder.resolve("tables.jar"), "example"));
    try (URLClassLoader bundled = Container.of(Jars.all()); URLClassLoader example = Container.of(jars)) {
      assertTrue(Container.hole(Container.fit(bundled, "25 H7/p6")).contains("25.021 mm"));
      assertTrue(Container.hole(Container.fit(example, "25 H7/p6")).contains("25.022 mm"));
      // A result holds the deviations it was computed with; it is not computed again where it arrives.
      Object received = Container.read(bundled, Container.write(Container.fit(example, "25 H7/p6")));
      assertTrue(Container.hole(received).contains("25.022 mm"), received.toString());
    }
  }

  @Test
  void aProgramMayBeStartedWithAnotherEdition() throws IOException, InterruptedException {
    Path edition = Jars.exampleEdition(folder.resolve("tables.jar"), "example");
    List<String> lines = run(0, "-Dholdfast.tables=" + edition, "-cp", path(withProgram()), "embedder.Program", "fit");
    assertEquals(List.of("25.022 mm"), lines);
    String diff = EditionDiff.between(TableSet.bundled(), TableSet.load(edition)).text();
    assertTrue(diff.endsWith("Table 1, over 18 up to 30 mm, IT7: value 21 µm → 22 µm\n"), diff);
  }

  @Test
  void anEditionThatUsesTheNameOfAnotherIsRefused() throws IOException, InterruptedException {
    Path edition = Jars.exampleEdition(folder.resolve("tables.jar"), TableSet.bundled().version());
    List<String> lines = run(2, "-Dholdfast.tables=" + edition, "-jar", Jars.EXECUTABLE.toString(), "version");
    assertTrue(lines.get(0).contains("two editions have one version"), lines.get(0));
  }

  private List<String> run(int status, String... arguments) throws IOException, InterruptedException {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    // Output of a program goes by the locale of the machine.
    return start(status,
        Stream.concat(Stream.of(java, "-Dfile.encoding=UTF-8", "-Dstdout.encoding=UTF-8"), Stream.of(arguments)).toList());
  }

  private List<String> start(int status, List<String> command) throws IOException, InterruptedException {
    Path output = folder.resolve("output.txt");
    Process process = new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(output.toFile()).start();
    int exit = process.waitFor();
    List<String> lines = Files.readAllLines(output);
    assertEquals(status, exit, lines::toString);
    return lines;
  }
}

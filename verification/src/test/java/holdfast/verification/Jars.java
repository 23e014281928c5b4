// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/** The jars that this build made, and those that they need. */
final class Jars {
  private static final Path ROOT = Path.of("..").toAbsolutePath().normalize();

  /** The executable jar. */
  static final Path EXECUTABLE = ROOT.resolve("core/target/holdfast.jar");

  private Jars() {}

  /** Tables, core, and the libraries that a program takes with them. */
  static List<Path> all() throws IOException {
    List<Path> jars = new ArrayList<>();
    for (String module : List.of("tables", "core")) {
      Path jar = ROOT.resolve(module + "/target/holdfast-" + module + "-" + version() + ".jar");
      assertTrue(Files.exists(jar), () -> jar + " is not built");
      jars.add(jar);
    }
    for (String type :
        List.of(
            "de.siegmar.fastcsv.reader.CsvReader",
            "com.samskivert.mustache.Mustache",
            "org.apache.commons.numbers.core.Precision",
            "org.apache.commons.numbers.fraction.ContinuedFraction",
            "org.apache.commons.numbers.gamma.Erfc",
            "org.apache.commons.numbers.rootfinder.BrentSolver",
            "org.snakeyaml.engine.v2.api.Load")) {
      try {
        jars.add(Path.of(Class.forName(type).getProtectionDomain().getCodeSource().getLocation().toURI()));
      } catch (ClassNotFoundException | URISyntaxException e) {
        throw new IOException(e);
      }
    }
    return jars;
  }

  private static String version() throws IOException {
    Matcher version = Pattern.compile("<version>(.*?)</version>").matcher(Files.readString(ROOT.resolve("pom.xml")));
    assertTrue(version.find());
    return version.group(1);
  }

  /** The bundled tables with one value changed: IT7 over 18 up to 30 mm is 22 µm, which no standard says. */
  static Path exampleEdition(Path jar, String version) throws IOException {
    try (ZipFile bundled = new ZipFile(all().get(0).toFile());
        ZipOutputStream edition = new ZipOutputStream(Files.newOutputStream(jar))) {
      for (ZipEntry entry : Collections.list(bundled.entries())) {
        byte[] content = bundled.getInputStream(entry).readAllBytes();
        if (entry.getName().endsWith("iso-286-1/2010/standard-tolerances.csv")) {
          content = changed(content, "\n18,30,IT7,21,", "\n18,30,IT7,22,");
        } else if (entry.getName().endsWith("/table-set.properties")) {
          content = changed(content, "\nversion = \\S+", "\nversion = " + version);
        }
        edition.putNextEntry(new ZipEntry(entry.getName()));
        edition.write(content);
      }
    }
    return jar;
  }

  private static byte[] changed(byte[] content, String old, String replacement) {
    Matcher place = Pattern.compile(old).matcher(new String(content, StandardCharsets.UTF_8));
    assertTrue(place.find(), old);
    return place.replaceFirst(replacement).getBytes(StandardCharsets.UTF_8);
  }
}

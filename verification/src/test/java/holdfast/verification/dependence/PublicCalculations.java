// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.dependence;

import holdfast.quantity.Length;
import holdfast.tables.Source;
import java.io.IOException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** The public calculations of the core: each public method of a kernel, and each other public class that carries a source. */
final class PublicCalculations {
  private PublicCalculations() {}

  /** Names such as {@code holdfast.fits.LimitDeviationsKernel#limits}, sorted; overloads share one. */
  static Set<String> kernels() throws IOException {
    Set<String> names = new TreeSet<>();
    for (Class<?> type : publicClasses()) {
      if (type.getSimpleName().endsWith("Kernel")) {
        for (Method method : type.getDeclaredMethods()) {
          if (Modifier.isPublic(method.getModifiers()) && !method.isSynthetic()) {
            names.add(type.getName() + "#" + method.getName());
          }
        }
      }
    }
    return names;
  }

  /** Names of classes, sorted. */
  static Set<String> typed() throws IOException {
    Set<String> names = new TreeSet<>();
    for (Class<?> type : publicClasses()) {
      if (!type.getSimpleName().endsWith("Kernel") && sourced(type)) {
        names.add(type.getCanonicalName());
      }
    }
    return names;
  }

  private static boolean sourced(Class<?> type) {
    return type.getAnnotationsByType(Source.class).length > 0
        || Stream.of(type.getDeclaredMethods()).anyMatch(method -> method.getAnnotationsByType(Source.class).length > 0);
  }

  private static List<Class<?>> publicClasses() throws IOException {
    Path place;
    try {
      place = Path.of(Length.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    } catch (URISyntaxException e) {
      throw new IOException(e);
    }
    if (Files.isDirectory(place)) {
      return publicClasses(place);
    }
    try (FileSystem jar = FileSystems.newFileSystem(URI.create("jar:" + place.toUri()), Map.of())) {
      return publicClasses(jar.getPath("/"));
    }
  }

  private static List<Class<?>> publicClasses(Path root) throws IOException {
    List<Class<?>> classes = new ArrayList<>();
    try (Stream<Path> files = Files.walk(root)) {
      for (Path file : (Iterable<Path>) files.sorted()::iterator) {
        String name = root.relativize(file).toString().replace('/', '.').replaceFirst("\\.class$", "");
        if (file.toString().endsWith(".class") && name.startsWith("holdfast.")) {
          Class<?> type = Class.forName(name, false, Length.class.getClassLoader());
          if (Modifier.isPublic(type.getModifiers())) {
            classes.add(type);
          }
        }
      }
    } catch (ClassNotFoundException e) {
      throw new IOException(e);
    }
    return classes;
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.laws;

import holdfast.trace.Traced;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.RecordComponent;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** What an embedder can call, found in the compiled classes, so that nothing new is forgotten. */
final class PublicApi {
  private static final Set<String> OF_EVERY_OBJECT =
      Set.of("equals", "hashCode", "toString", "getClass", "wait", "notify", "notifyAll", "ordinal", "describeConstable",
          "getDeclaringClass", "compareTo");

  /** Parts of results and rows of tables, which only the library makes. */
  private static final Set<String> PARTS_OF_RESULTS = Set.of(
      "CriticalStress", "EndEffect", "SeatRecommendation", "MisalignmentLimit", "LubricationGuide", "TighteningMethod", "TradeFactor", "PartLimit",
      "Factor", "Limit", "Value");

  private PublicApi() {}

  /** The public classes of the exported packages, in the order of their names. */
  static List<Class<?>> classes() {
    List<Class<?>> found = new ArrayList<>();
    for (String name : names()) {
      try {
        Class<?> type = Class.forName(name);
        if (isPublic(type) && !type.getPackageName().equals("holdfast.shell")) {
          found.add(type);
        }
      } catch (ClassNotFoundException e) {
        throw new LinkageError("the classes under test", e);
      }
    }
    return found;
  }

  /** All classes of core, public or not. */
  static List<String> names() {
    try {
      Path root = Path.of(holdfast.quantity.Check.class.getProtectionDomain().getCodeSource().getLocation().toURI());
      try (Stream<Path> files = Files.walk(root)) {
        return files
            .filter(file -> file.toString().endsWith(".class"))
            .map(file -> root.relativize(file).toString().replace(file.getFileSystem().getSeparator(), "."))
            .filter(name -> !name.equals("module-info.class") && !name.endsWith("package-info.class"))
            .map(name -> name.substring(0, name.length() - ".class".length()))
            .sorted()
            .toList();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (URISyntaxException e) {
      throw new LinkageError("the classes under test", e);
    }
  }

  static boolean isKernel(Class<?> type) {
    return type.getSimpleName().endsWith("Kernel");
  }

  /** Public static methods of all kernels. */
  static List<Executable> kernels() {
    List<Executable> found = new ArrayList<>();
    classes().stream().filter(PublicApi::isKernel).forEach(type -> addMethods(type, found));
    return found;
  }

  /**
   * Public constructors, static methods and methods of everything but kernels, without plain accessors of records and what
   * Java gives enums.
   */
  static List<Executable> typed() {
    List<Executable> found = new ArrayList<>();
    for (Class<?> type : classes()) {
      if (isKernel(type) || type.isAnnotation() || Throwable.class.isAssignableFrom(type)) {
        continue;
      }
      if (!Modifier.isAbstract(type.getModifiers())) {
        Constructor<?>[] constructors = type.getConstructors();
        Arrays.sort(constructors, Comparator.comparing(Constructor::toString));
        found.addAll(List.of(constructors));
      }
      addMethods(type, found);
    }
    return found;
  }

  private static void addMethods(Class<?> type, List<Executable> found) {
    Method[] methods = type.getDeclaredMethods();
    Arrays.sort(methods, Comparator.comparing(Method::toString));
    for (Method method : methods) {
      if (Modifier.isPublic(method.getModifiers()) && !method.isSynthetic() && !OF_EVERY_OBJECT.contains(method.getName())
          && !isAccessor(type, method) && !(type.isEnum() && method.getName().startsWith("value"))) {
        found.add(method);
      }
    }
  }

  /** Whether a call puts a result together from parts, which a program has no need to do. */
  static boolean assembles(Executable call) {
    Class<?> type = call.getDeclaringClass();
    return call instanceof Constructor && (Traced.class.isAssignableFrom(type) || PARTS_OF_RESULTS.contains(type.getSimpleName()));
  }

  private static boolean isAccessor(Class<?> type, Method method) {
    RecordComponent[] components = type.getRecordComponents();
    return components != null && method.getParameterCount() == 0
        && Stream.of(components).anyMatch(c -> c.getName().equals(method.getName()));
  }

  private static boolean isPublic(Class<?> type) {
    for (Class<?> at = type; at != null; at = at.getEnclosingClass()) {
      if (!Modifier.isPublic(at.getModifiers())) {
        return false;
      }
    }
    return !type.isSynthetic();
  }
}

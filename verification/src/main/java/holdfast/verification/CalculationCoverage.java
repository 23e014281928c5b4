// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import holdfast.tables.Source;
import holdfast.tables.SourceRef;
import java.lang.reflect.AnnotatedElement;
import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * How well one public calculation is checked: a method of a kernel, or a class of the typed layer that carries a source.
 *
 * @param name for example {@code holdfast.fits.InchLimitsKernel#fit}; overloads share one
 * @param sources what its annotations cite
 * @param caught comparisons that fail when its result is one per cent wrong, for each kind of evidence that occurs
 * @param moved comparisons whose computed value changes then, caught or not, for each kind of evidence that occurs
 * @param suites ids of the suites of these comparisons; of a class of the typed layer: of the suites that name it
 * @param comparisons number of comparisons in these suites
 * @param worst greatest difference over tolerance among the agreeing comparisons of these suites
 * @param reason why no comparison depends on it; empty if one does
 */
public record CalculationCoverage(
    String name,
    List<String> sources,
    Map<Evidence, Integer> caught,
    Map<Evidence, Integer> moved,
    List<String> suites,
    int comparisons,
    OptionalDouble worst,
    String reason) {

  /** Kinds of evidence that prove little. */
  static final Set<Evidence> WEAK =
      Collections.unmodifiableSet(EnumSet.of(Evidence.RECALLED, Evidence.PRACTICE, Evidence.RECODED));

  /** How far the checks of a calculation go. */
  public enum Grade {
    /** A comparison fails when the result is one per cent wrong. */
    CAUGHT("an error of 1 % is caught"),
    /** A comparison changes with the result, but its tolerance or its disclosure lets an error of one per cent pass. */
    MOVED("checked, but an error of 1 % passes"),
    /** Every comparison that depends on it is with a recalled value, with common practice or with the same formula. */
    WEAK("only recalled, practice or coded again"),
    /** A suite names it and runs it; the result is no number that could be falsified for a test. */
    NAMED("named and run by a suite"),
    /** No comparison depends on it. */
    UNCHECKED("no outside check");

    private final String label;

    Grade(String label) {
      this.label = label;
    }

    /**
     * The words used in reports.
     *
     * @return the label
     */
    public String label() {
      return label;
    }
  }

  // Keeps unmodifiable copies that iterate in the order of the enum.
  public CalculationCoverage {
    sources = List.copyOf(sources);
    caught = Collections.unmodifiableMap(new EnumMap<>(caught));
    moved = Collections.unmodifiableMap(new EnumMap<>(moved));
    suites = List.copyOf(suites);
  }

  /**
   * How far the checks go.
   *
   * @return the grade
   */
  public Grade grade() {
    if (!reason.isEmpty()) {
      return Grade.UNCHECKED;
    }
    if (moved.isEmpty()) {
      return Grade.NAMED;
    }
    if (WEAK.containsAll(moved.keySet())) {
      return Grade.WEAK;
    }
    return caught.values().stream().anyMatch(n -> n > 0) ? Grade.CAUGHT : Grade.MOVED;
  }

  /**
   * Coverage of every public calculation.
   *
   * @param audit the outcome of the suites
   * @param dependence which comparisons depend on which calculation
   * @return sorted by name
   */
  public static List<CalculationCoverage> of(Audit audit, Dependence dependence) {
    SortedMap<String, List<Dependence.Link>> links = dependence.byCalculation();
    SortedMap<String, Set<String>> suites = new TreeMap<>();
    links.forEach((name, of) -> of.forEach(link -> add(suites, name, link.suite())));
    for (Audit.Result result : audit.results()) {
      for (String named : result.suite().calculations()) {
        String type = named.replaceFirst("#.*", "");
        if (!type.endsWith("Kernel")) {
          add(suites, type, result.suite().id());
        }
      }
    }
    dependence.unchecked().keySet().forEach(name -> suites.putIfAbsent(name, Set.of()));
    List<CalculationCoverage> coverage = new ArrayList<>();
    suites.forEach((name, ids) -> coverage.add(of(audit, dependence, name, ids, links.getOrDefault(name, List.of()))));
    return coverage;
  }

  private static CalculationCoverage of(
      Audit audit, Dependence dependence, String name, Set<String> suites, List<Dependence.Link> links) {
    Map<Evidence, Integer> caught = new EnumMap<>(Evidence.class);
    Map<Evidence, Integer> moved = new EnumMap<>(Evidence.class);
    for (Dependence.Link link : links) {
      caught.merge(link.evidence(), link.caught(), Integer::sum);
      moved.merge(link.evidence(), link.moved(), Integer::sum);
    }
    List<Comparison> comparisons =
        audit.results().stream()
            .filter(result -> suites.contains(result.suite().id()))
            .flatMap(result -> result.comparisons().stream())
            .toList();
    OptionalDouble worst =
        comparisons.stream().filter(Comparison::agrees).flatMapToDouble(c -> c.share().stream()).max();
    Dependence.Unchecked unchecked = dependence.unchecked().get(name);
    return new CalculationCoverage(
        name, cited(name), caught, moved, List.copyOf(suites), comparisons.size(), worst,
        unchecked == null ? "" : unchecked.reason());
  }

  private static void add(SortedMap<String, Set<String>> suites, String name, String suite) {
    suites.computeIfAbsent(name, n -> new LinkedHashSet<>()).add(suite);
  }

  /** What the annotations cite: of the method, or else of its class and all its methods. */
  private static List<String> cited(String name) {
    String[] parts = name.split("#", -1);
    Class<?> type;
    try {
      type = Class.forName(parts[0]);
    } catch (ClassNotFoundException e) {
      return List.of();
    }
    Set<String> own = new LinkedHashSet<>();
    Method[] methods = type.getDeclaredMethods();
    Stream.of(methods)
        .filter(method -> parts.length == 1 || method.getName().equals(parts[1]))
        .forEach(method -> own.addAll(texts(method)));
    Set<String> cited = new LinkedHashSet<>();
    if (parts.length == 1 || own.isEmpty()) {
      cited.addAll(texts(type));
    }
    own.stream().sorted().forEach(cited::add); // reflection promises no order
    return List.copyOf(cited);
  }

  private static List<String> texts(AnnotatedElement element) {
    return Stream.of(element.getAnnotationsByType(Source.class))
        .map(source -> new SourceRef(source.document(), source.locator(), source.provenance()).toString())
        .toList();
  }
}

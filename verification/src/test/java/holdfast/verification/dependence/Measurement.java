// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.dependence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;

/** Runs all suites with probes in the core: which calculations run in which suite, and which comparisons depend on one. */
final class Measurement {
  /** A name that a suite gives as checked, though it does not run there. */
  record FalseName(String suite, String calculation) {}

  /** Comparisons of one kind of evidence that changed, and those of them that failed. */
  record Effect(String calculation, String suite, String evidence, int moved, int caught) {}

  private static final int COMPUTED = 1;
  private static final int AGREES = 2;
  private static final int EVIDENCE = 3;

  private final ProbingLoader loader = new ProbingLoader();
  private final Function<String, List<List<String>>> runner;
  private final Map<String, List<String>> namesOfSuites = new LinkedHashMap<>();
  private final Map<String, Set<String>> ran = new LinkedHashMap<>();
  private final Map<String, List<List<String>>> right = new LinkedHashMap<>();

  @SuppressWarnings("unchecked") // the runner is of another loader; only the types of the JDK are common to both
  Measurement() throws ReflectiveOperationException {
    Class<?> type = loader.loadClass(SuiteRunner.class.getName());
    runner = (Function<String, List<List<String>>>) type.getConstructor().newInstance();
    for (List<String> suite : runner.apply("")) {
      namesOfSuites.put(suite.get(0), suite.subList(1, suite.size()));
    }
    ran.put("", loader.ran()); // what the suites ran when they were made
    for (String suite : namesOfSuites.keySet()) {
      Arrays.fill(Probe.ran, false);
      right.put(suite, runner.apply(suite));
      ran.put(suite, loader.ran());
    }
  }

  /** Public methods that ran in a suite; what an earlier suite left in a cache does not run again. */
  Set<String> ranIn(String suite) {
    return ran.getOrDefault(suite, Set.of());
  }

  /** Public methods that ran in any suite. */
  Set<String> ran() {
    Set<String> all = new TreeSet<>();
    ran.values().forEach(all::addAll);
    return all;
  }

  /** Classes and methods that suites name. */
  Set<String> named() {
    Set<String> all = new TreeSet<>();
    namesOfSuites.values().forEach(all::addAll);
    return all;
  }

  /** Names that no suite runs at all: a method, or any method of a class. */
  List<FalseName> falseNames() {
    Set<String> all = ran();
    List<FalseName> wrong = new ArrayList<>();
    namesOfSuites.forEach((suite, names) -> {
      for (String name : names) {
        boolean runs = name.contains("#") ? all.contains(name) : all.stream().anyMatch(m -> m.startsWith(name));
        if (!runs) {
          wrong.add(new FalseName(suite, name));
        }
      }
    });
    return wrong;
  }

  /** Falsifies one calculation after the other. An error in place of an answer counts as noticed by all comparisons. */
  List<Effect> effects(Set<String> calculations) {
    // Only what runs a second time can be falsified: the caches are full now.
    Map<String, Set<String>> runsAgain = new LinkedHashMap<>();
    for (String suite : namesOfSuites.keySet()) {
      Arrays.fill(Probe.ran, false);
      right.put(suite, runner.apply(suite));
      runsAgain.put(suite, loader.ran());
    }
    List<Effect> effects = new ArrayList<>();
    for (String calculation : calculations) {
      for (String suite : namesOfSuites.keySet()) {
        if (runsAgain.get(suite).contains(calculation)) {
          effects.addAll(effects(calculation, suite));
        }
      }
    }
    return effects;
  }

  private List<Effect> effects(String calculation, String suite) {
    List<List<String>> was = right.get(suite);
    List<List<String>> is = falsified(calculation, suite);
    SortedMap<String, int[]> counts = new TreeMap<>();
    for (int i = 0; i < was.size(); i++) {
      List<String> before = was.get(i);
      List<String> now = is.size() == was.size() ? is.get(i) : List.of("", "error", "false", "");
      int[] count = counts.computeIfAbsent(before.get(EVIDENCE), kind -> new int[2]);
      boolean fails = before.get(AGREES).equals("true") && now.get(AGREES).equals("false");
      count[0] += fails || !before.get(COMPUTED).equals(now.get(COMPUTED)) ? 1 : 0;
      count[1] += fails ? 1 : 0;
    }
    List<Effect> effects = new ArrayList<>();
    counts.forEach((kind, n) -> {
      if (n[0] > 0) {
        effects.add(new Effect(calculation, suite, kind, n[0], n[1]));
      }
    });
    return effects;
  }

  private List<List<String>> falsified(String calculation, String suite) {
    Probe.falsified = loader.number(calculation);
    try {
      return runner.apply(suite);
    } catch (IllegalArgumentException | ArithmeticException e) {
      return List.of();
    } finally {
      Probe.falsified = -1;
    }
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.dependence;

import holdfast.verification.Comparison;
import holdfast.verification.Suite;
import holdfast.verification.Suites;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** Runs suites inside the loader that probes; texts cross its border, because its classes are not those outside. */
public final class SuiteRunner implements Function<String, List<List<String>>> {
  private final List<Suite> suites = Suites.all();

  /** The ids of all suites for an empty id, or what the comparisons of a suite came to: name, computed, agrees, evidence. */
  @Override
  public List<List<String>> apply(String id) {
    Stream<Suite> all = suites.stream();
    return id.isEmpty()
        ? all.map(suite -> Stream.concat(Stream.of(suite.id()), suite.calculations().stream()).toList()).toList()
        : all.filter(suite -> suite.id().equals(id)).flatMap(s -> s.run().stream()).map(SuiteRunner::texts).toList();
  }

  private static List<String> texts(Comparison c) {
    return List.of(c.name(), c.computed(), Boolean.toString(c.agrees()), c.evidence().name());
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.dependence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.tables.TableSet;
import holdfast.verification.Cases;
import holdfast.verification.Dependence;
import holdfast.verification.Evidence;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * No public calculation without a check against something outside the project. That a suite runs a calculation is not
 * enough: a comparison must depend on its result. Exceptions stand in {@code unchecked.csv}, each with its reason.
 */
class DependenceTest {
  /** Calculations that only weak evidence supports, and those of which an error of 1 % passes, may become fewer, never more. */
  private static final int MOST_WEAK = 20;
  private static final int MOST_PASSING = 3;

  private static final Set<Evidence> WEAK = Set.of(Evidence.RECALLED, Evidence.PRACTICE, Evidence.RECODED);

  private static Measurement measurement;
  private static Dependence dependence;

  @BeforeAll
  static void measure() throws ReflectiveOperationException {
    measurement = new Measurement();
    dependence = Dependence.measured();
  }

  @Test
  void everyPublicCalculationIsCheckedOrListedWithItsReason() throws IOException {
    Set<String> open = PublicCalculations.kernels();
    open.removeAll(dependence.byCalculation().keySet());
    for (String type : PublicCalculations.typed()) {
      if (measurement.named().stream().noneMatch(name -> name.equals(type) || name.startsWith(type + "#"))) {
        open.add(type);
      }
    }
    assertEquals(lines(open), lines(dependence.unchecked().keySet()), "calculations that no comparison depends on");
    assertEquals(Set.of(), open, "calculations without an outside check");
  }

  @Test
  void weakEvidenceOnlyBecomesRarer() {
    Set<String> weak = new TreeSet<>();
    Set<String> passing = new TreeSet<>();
    dependence.byCalculation().forEach((calculation, links) -> {
      if (links.stream().allMatch(link -> WEAK.contains(link.evidence()))) {
        weak.add(calculation);
      } else if (links.stream().allMatch(link -> link.caught() == 0)) {
        passing.add(calculation);
      }
    });
    assertTrue(weak.size() <= MOST_WEAK, weak.size() + " on weak evidence only: " + weak);
    assertTrue(passing.size() <= MOST_PASSING, passing.size() + " of which an error of 1 % passes: " + passing);
  }

  @Test
  void everyMeasuredDependenceStillRuns() throws IOException {
    Set<String> kernels = PublicCalculations.kernels();
    List<String> stale = new ArrayList<>();
    for (Dependence.Link link : dependence.links()) {
      boolean runs = measurement.ranIn(link.suite()).contains(link.calculation());
      boolean ranBefore = !measurement.ranIn(link.suite()).isEmpty() && measurement.ran().contains(link.calculation());
      if (!kernels.contains(link.calculation()) || !(runs || ranBefore)) {
        stale.add(link.calculation() + " in " + link.suite());
      }
    }
    assertEquals(List.of(), stale, "measure again");
  }

  @Test
  void whatIsListedAsNeverReachedIsNeverReached() {
    List<String> wrong = new ArrayList<>();
    dependence.unchecked().values().forEach(u -> {
      if (u.reached() != measurement.ran().stream().anyMatch(m -> m.equals(u.calculation()) || m.startsWith(u.calculation() + "#"))) {
        wrong.add(u.calculation());
      }
    });
    assertEquals(List.of(), wrong, "'reached' in unchecked.csv is not what runs");
  }

  @Test
  void everyNamedCalculationRuns() {
    assertEquals(List.of(), measurement.falseNames(), "names of calculations that do not run");
  }

  /** Measures anew and writes the files into the sources. DEVELOPERS.md has the command. */
  @Test
  @EnabledIfSystemProperty(named = "dependence.measure", matches = "true")
  void write() throws IOException {
    StringBuilder csv = new StringBuilder("calculation,suite,evidence,moved,caught\n");
    for (Measurement.Effect e : measurement.effects(PublicCalculations.kernels())) {
      csv.append(String.join(",", e.calculation(), e.suite(), e.evidence(), "" + e.moved(), "" + e.caught())).append('\n');
    }
    Path folder = Path.of("src/main/resources/holdfast/verification/dependence");
    Files.writeString(folder.resolve("dependence.csv"), csv);
    Files.writeString(
        folder.resolve("dependence.properties"),
        "# What dependence.csv was measured with.\ntables = " + TableSet.bundled().digest() + "\ncases = " + Cases.set().digest() + "\n");
  }

  private static String lines(Set<String> names) {
    return String.join("\n", new TreeSet<>(names));
  }
}

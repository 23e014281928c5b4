// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.DynamicContainer.dynamicContainer;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import holdfast.verification.Comparison.Outcome;
import java.util.EnumSet;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.TestFactory;

/** The same comparisons as the audit, one test each, named by what is compared and where it is printed. */
class PublishedValuesTest {
  @TestFactory
  Stream<DynamicNode> everyPublishedValueIsReproducedOrDisclosed() {
    return Suites.all().stream()
        .map(
            suite -> {
              List<Comparison> comparisons = suite.run();
              return dynamicContainer(
                  suite.id(),
                  Stream.concat(
                      Stream.of(dynamicTest("has comparisons", () -> assertFalse(comparisons.isEmpty()))),
                      comparisons.stream().map(PublishedValuesTest::test)));
            });
  }

  private static DynamicNode test(Comparison c) {
    return dynamicTest(
        c.name() + " [" + c.source() + "]",
        () -> {
          boolean fair = EnumSet.of(Outcome.AGREES, Outcome.DISCLOSED).contains(c.outcome());
          assertEquals(true, fair, () -> c.outcome() + ": published " + c.published() + ", computed " + c.computed()
              + ", tolerance " + c.tolerance() + " (" + c.toleranceReason() + ") " + c.disclosure());
        });
  }
}

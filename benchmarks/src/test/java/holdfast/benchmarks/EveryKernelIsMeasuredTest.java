// SPDX-License-Identifier: Apache-2.0
package holdfast.benchmarks;

import static com.tngtech.archunit.lang.SimpleConditionEvent.violated;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import org.openjdk.jmh.annotations.Benchmark;

/** Each public kernel has a benchmark. Calls that only prepare one do not count. */
@AnalyzeClasses(packages = "holdfast")
class EveryKernelIsMeasuredTest {
  @ArchTest
  static final ArchRule everyPublicKernelIsMeasured =
      classes().that().arePublic().and().haveSimpleNameEndingWith("Kernel").should(beCalledByABenchmark());

  private static ArchCondition<JavaClass> beCalledByABenchmark() {
    return new ArchCondition<>("be called by a method with @Benchmark") {
      @Override
      public void check(JavaClass kernel, ConditionEvents events) {
        boolean measured =
            kernel.getMethodCallsToSelf().stream().anyMatch(call -> call.getOrigin().isAnnotatedWith(Benchmark.class));
        if (!measured) {
          events.add(violated(kernel, kernel.getName() + " is called by no benchmark"));
        }
      }
    };
  }
}

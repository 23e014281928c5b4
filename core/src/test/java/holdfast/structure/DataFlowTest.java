// SPDX-License-Identifier: Apache-2.0
package holdfast.structure;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import holdfast.tables.Provenance;
import holdfast.tables.Source;

/** Data flows one way. A package that does not exist yet breaks no rule. */
@AnalyzeClasses(packages = "holdfast", importOptions = ImportOption.DoNotIncludeTests.class)
class DataFlowTest {
  private static ArchRule only(String subject, String... mayUse) {
    String[] allowed = new String[mayUse.length + 1];
    for (int i = 0; i < mayUse.length; i++) {
      allowed[i] = "holdfast." + mayUse[i] + "..";
    }
    allowed[mayUse.length] = "holdfast." + subject + "..";
    DescribedPredicate<JavaClass> foreign = resideInAPackage("holdfast..").and(not(resideInAnyPackage(allowed)));
    return noClasses()
        .that()
        .resideInAPackage("holdfast." + subject + "..")
        .should()
        .dependOnClassesThat(foreign)
        .as(subject + " uses no package of ours but " + String.join(", ", mayUse))
        .allowEmptyShould(true);
  }

  @ArchTest
  static final ArchRule quantitiesKnowOnlyTheSourceAnnotation =
      noClasses()
          .that()
          .resideInAPackage("holdfast.quantity..")
          .should()
          .dependOnClassesThat(
              resideInAPackage("holdfast..")
                  .and(not(resideInAPackage("holdfast.quantity..")))
                  .and(not(JavaClass.Predicates.type(Source.class)))
                  .and(not(JavaClass.Predicates.type(Source.List.class)))
                  .and(not(JavaClass.Predicates.type(Provenance.class))));

  @ArchTest static final ArchRule tables = only("tables");
  @ArchTest static final ArchRule trace = only("trace", "quantity", "tables");
  @ArchTest static final ArchRule fits = only("fits", "quantity", "trace", "tables");
  @ArchTest static final ArchRule threads = only("threads", "quantity", "trace", "tables");
  @ArchTest static final ArchRule bearings = only("bearings", "quantity", "trace", "tables", "contact", "rollers");
  @ArchTest static final ArchRule contact = only("contact", "quantity", "trace", "tables");
  @ArchTest static final ArchRule seats = only("seats", "quantity", "trace", "tables", "fits", "contact", "threads", "failures");
  @ArchTest static final ArchRule rollers = only("rollers", "quantity", "trace", "tables");
  @ArchTest static final ArchRule lubrication = only("lubrication", "rollers", "quantity", "trace", "tables");
  @ArchTest static final ArchRule failures = only("failures", "quantity", "trace", "tables");
  @ArchTest static final ArchRule fleet = only("fleet", "quantity", "trace", "tables");
  @ArchTest static final ArchRule sheet = only("sheet", "quantity", "trace", "tables");

  @ArchTest
  static final ArchRule nothingDependsOnTheWholeJobOrTheShell =
      noClasses()
          .that()
          .resideOutsideOfPackages("holdfast.installation..", "holdfast.job..", "holdfast.shell..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("holdfast.installation..", "holdfast.job..", "holdfast.shell..");

  /** A solver throws errors of its own where it finds no root; one door turns them into ours. */
  @ArchTest
  static final ArchRule solversAreAskedThroughOneDoor =
      noClasses()
          .that()
          .doNotHaveFullyQualifiedName("holdfast.quantity.Root")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.apache.commons.numbers.rootfinder..");

  @ArchTest
  static final ArchRule noCycles = slices().matching("holdfast.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule loggingAndPrintingAreForOthers =
      noClasses()
          .that()
          .resideInAPackage("holdfast..")
          .and()
          .resideOutsideOfPackages("holdfast.shell..", "holdfast.installation..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("java.util.logging..", "java.net..", "java.sql..");

  @ArchTest
  static final ArchRule everyPackageIsKnownHere =
      classes()
          .that()
          .resideInAPackage("holdfast..")
          .should()
          .resideInAnyPackage(
              "holdfast.quantity..", "holdfast.tables..", "holdfast.trace..", "holdfast.fits..", "holdfast.threads..",
              "holdfast.bearings..", "holdfast.contact..", "holdfast.seats..", "holdfast.sheet..",
              "holdfast.rollers..", "holdfast.lubrication..", "holdfast.failures..", "holdfast.fleet..",
              "holdfast.installation..", "holdfast.job..", "holdfast.shell..");
}

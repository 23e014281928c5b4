// SPDX-License-Identifier: Apache-2.0
package holdfast.structure;

import static com.tngtech.archunit.core.domain.JavaModifier.PRIVATE;
import static com.tngtech.archunit.core.domain.JavaModifier.PUBLIC;
import static com.tngtech.archunit.core.domain.JavaModifier.SYNTHETIC;
import static com.tngtech.archunit.lang.SimpleConditionEvent.violated;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.constructors;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.members;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.JavaType;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import holdfast.tables.Source;
import holdfast.tables.SourceRegister;
import holdfast.tables.TableSet;
import java.lang.reflect.AnnotatedElement;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Kernels are pure: static functions without state, each with its source. The public API shows no foreign types. */
@AnalyzeClasses(packages = "holdfast", importOptions = ImportOption.DoNotIncludeTests.class)
class KernelTest {
  private static final DescribedPredicate<JavaClass> KERNELS =
      DescribedPredicate.describe("kernels", type -> type.getSimpleName().endsWith("Kernel"));

  @ArchTest
  static final ArchRule kernelsAreFinalAndHaveOnlyStaticMethods =
      methods().that().areDeclaredInClassesThat(KERNELS).should().beStatic().allowEmptyShould(true);

  @ArchTest
  static final ArchRule kernelsAreFinal =
      classes().that(KERNELS).should().haveModifier(JavaModifier.FINAL).allowEmptyShould(true);

  @ArchTest
  static final ArchRule kernelsAreNeverMade =
      constructors().that().areDeclaredInClassesThat(KERNELS).should().bePrivate().allowEmptyShould(true);

  @ArchTest
  static final ArchRule kernelsHaveNoMutableState =
      fields()
          .that()
          .areDeclaredInClassesThat(KERNELS)
          .should()
          .beStatic()
          .andShould()
          .beFinal()
          .andShould(notBeArraysThatOthersCanChange())
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule everyCalculationOfAKernelNamesASourceThatTheRegisterKnows =
      methods()
          .that()
          .areDeclaredInClassesThat(KERNELS)
          .and()
          .arePublic()
          .should(nameASource())
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule everyAnnotatedSourceIsInTheRegister = classes().should(citeKnownDocuments());

  @ArchTest
  static final ArchRule foreignTypesStayInside =
      members().that().arePublic().or().areProtected().should(showNoForeignTypes());

  private static ArchCondition<JavaField> notBeArraysThatOthersCanChange() {
    return new ArchCondition<>("not be arrays that others can change") {
      @Override
      public void check(JavaField field, ConditionEvents events) {
        if (field.getRawType().isArray() && !field.getModifiers().contains(PRIVATE)) {
          events.add(violated(field, field.getFullName() + " is an array that is not private"));
        }
      }
    };
  }

  private static ArchCondition<JavaMethod> nameASource() {
    return new ArchCondition<>("carry @Source, or its class does") {
      @Override
      public void check(JavaMethod method, ConditionEvents events) {
        boolean publicClass = method.getOwner().getModifiers().contains(PUBLIC);
        boolean compilerMade = method.getModifiers().contains(SYNTHETIC);
        if (publicClass && !compilerMade && !sourced(method) && !sourced(method.getOwner())) {
          events.add(violated(method, method.getFullName() + " names no source"));
        }
      }
    };
  }

  private static boolean sourced(JavaMethod method) {
    return method.isAnnotatedWith(Source.class) || method.isAnnotatedWith(Source.List.class);
  }

  private static boolean sourced(JavaClass type) {
    return type.isAnnotatedWith(Source.class) || type.isAnnotatedWith(Source.List.class);
  }

  private static ArchCondition<JavaClass> citeKnownDocuments() {
    SourceRegister register = TableSet.bundled().sources();
    return new ArchCondition<>("cite only documents of the register in @Source") {
      @Override
      public void check(JavaClass type, ConditionEvents events) {
        List<AnnotatedElement> elements = new ArrayList<>(List.of(type.reflect()));
        type.getMethods().forEach(method -> elements.add(method.reflect()));
        for (AnnotatedElement element : elements) {
          for (Source source : element.getAnnotationsByType(Source.class)) {
            if (!register.contains(source.document()) || source.locator().isBlank()) {
              events.add(violated(type, element + " cites '" + source.document() + "', '" + source.locator() + "'"));
            }
          }
        }
      }
    };
  }

  private static ArchCondition<JavaMember> showNoForeignTypes() {
    return new ArchCondition<>("show no type of another library in the public API") {
      @Override
      public void check(JavaMember member, ConditionEvents events) {
        // The shell is not exported; what JShell itself loads from it must be public.
        boolean exported = !member.getOwner().getPackageName().equals("holdfast.shell");
        if (!exported || !member.getOwner().getModifiers().contains(PUBLIC)) {
          return;
        }
        Stream<JavaType> types =
            member instanceof JavaCodeUnit unit
                ? Stream.concat(
                    Stream.concat(unit.getParameterTypes().stream(), Stream.of(unit.getReturnType())),
                    unit.getExceptionTypes().stream())
                : Stream.of(((JavaField) member).getType());
        types
            .flatMap(type -> type.getAllInvolvedRawTypes().stream())
            .map(JavaClass::getBaseComponentType)
            .filter(type -> !type.isPrimitive() && !type.getPackageName().matches("(java|holdfast)\\b.*"))
            .forEach(type -> events.add(violated(member, member.getFullName() + " shows " + type.getName())));
      }
    };
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import holdfast.tables.SourceRef;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class DerivationTest {
  private static final SourceRef TABLE = SourceRef.published("ISO 286-1:2010", "Table 1");
  private static final SourceRef SUM = SourceRef.derived("sum of deviations");

  private static Derivation derivation() {
    return Derivation.of("25 H7")
        .step("IT7", "standard tolerance", "over 18 up to 30 mm", 21, "µm", TABLE)
        .step("ES", "upper limit deviation", "EI + IT7", 21, "µm", SUM, "EI = 0 µm", "IT7 = 21 µm")
        .build();
  }

  @Test
  void textShowsSymbolMeaningFormulaNumbersValueAndSource() {
    assertEquals(
        """
        25 H7
        IT7  standard tolerance
            = over 18 up to 30 mm
            = 21 µm   (ISO 286-1:2010, Table 1 [published])
        ES  upper limit deviation
            = EI + IT7   with EI = 0 µm, IT7 = 21 µm
            = 21 µm   (derivation, sum of deviations [derived])""",
        derivation().toString());
  }

  @Test
  void resultIsTheLastStepAndSourcesComeOnce() {
    Derivation d = derivation();
    assertEquals("ES", d.result().symbol());
    assertEquals(List.of(TABLE, SUM), d.sources());
    Derivation longer = Derivation.of("fit").steps(d).step("C", "clearance", "ES - ei", 20, "µm", SUM).build();
    assertEquals(3, longer.steps().size());
    assertEquals(List.of(TABLE, SUM), longer.sources());
  }

  @Test
  void aResultNamesTheSourcesOfItsDerivation() {
    Traced result =
        new Traced() {
          @Override
          public Derivation explain() {
            return derivation();
          }

          @Override
          public List<Warning> warnings() {
            return List.of();
          }
        };
    assertEquals(List.of(TABLE, SUM), result.sources());
  }

  @Test
  void pureNumbersHaveNoUnit() {
    assertTrue(new Step("e", "factor", "1/3", List.of(), 1.0 / 3, "", SUM).text().contains("= 0.333333   (derivation"));
  }

  @Test
  void derivationWithoutStepsOrValueIsRefused() {
    assertThrows(InputException.class, () -> Derivation.of("nothing").build());
    assertThrows(InputException.class, () -> new Derivation("nothing", List.of()));
    assertThrows(InputException.class, () -> new Step("x", "", "", List.of(), Double.NaN, "", SUM));
  }

  @Test
  void listsAreCopies() {
    List<Step> steps = new ArrayList<>(derivation().steps());
    Derivation d = new Derivation("copy", steps);
    steps.clear();
    assertEquals(2, d.steps().size());
    assertThrows(UnsupportedOperationException.class, () -> d.steps().clear());
  }

  @Test
  void warningsAndCautionsReadAsText() {
    assertEquals("load above half of C (ISO 286-1:2010, Table 1 [published])", new Warning("x", "load above half of C", TABLE).toString());
    assertEquals("Wear gloves. [ISO 286-1:2010, Table 1]", new Caution(SignalWord.CAUTION, "Wear gloves.", TABLE).toString());
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.seats;

import static holdfast.quantity.Units.MPa;
import static holdfast.quantity.Units.umPerMK;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.quantity.InputException;
import holdfast.tables.Provenance;
import holdfast.tables.SourceRef;
import org.junit.jupiter.api.Test;

class MaterialTest {
  @Test
  void findsByNameAndByOtherDesignation() {
    Material iron = Material.of("en-gjs-500-7");
    assertEquals("EN-GJS-500-7", iron.name());
    assertEquals(169_000, iron.elasticModulus().base(), 1e-9);
    assertEquals(Provenance.MEMORY, iron.source().provenance());
    assertEquals(iron, Material.of("GGG-50"));
    assertFalse(iron.brittle());
    assertTrue(Material.of("EN-GJL-250").brittle());
    assertTrue(Material.of("EN-GJL-250").yieldStrength().isEmpty());
  }

  @Test
  void anAmbiguousNameAsksForTheCondition() {
    InputException error = assertThrows(InputException.class, () -> Material.of("100Cr6"));
    assertTrue(error.permitted().contains("annealed, 228 HB"), error.getMessage());
    assertEquals(586, Material.of("100Cr6", "annealed").yieldStrength().orElseThrow().base(), 1e-9);
  }

  @Test
  void aConditionThatBeginsAnotherIsFoundWhenGivenInFull() {
    assertEquals(255, Material.of("6061-T6", "wrought, artificially aged").yieldStrength().orElseThrow().base(), 1e-9);
  }

  @Test
  void namesTheMaterialsItKnows() {
    InputException error = assertThrows(InputException.class, () -> Material.of("unobtainium"));
    assertTrue(error.permitted().contains("C45+QT"), error.getMessage());
  }

  @Test
  void everyBundledMaterialIsFoundByNameAndCondition() {
    assertEquals(35, Material.all().size());
    for (Material material : Material.all()) {
      assertEquals(material, Material.of(material.name(), material.condition()));
    }
  }

  @Test
  void refusesImpossibleConstants() {
    Material.Builder builder = Material.named("own", SourceRef.derived("invented for a test"));
    assertThrows(InputException.class, () -> builder.elastic(MPa(-1), 0.3));
    InputException poisson = assertThrows(InputException.class, () -> builder.elastic(MPa(1), 0.51));
    assertEquals("from 0 to 0.5", poisson.permitted());
    assertThrows(InputException.class, () -> builder.elastic(MPa(1), Double.NaN));
    assertThrows(InputException.class, () -> builder.expansion(umPerMK(-1)));
    assertThrows(InputException.class, builder::build);
  }
}

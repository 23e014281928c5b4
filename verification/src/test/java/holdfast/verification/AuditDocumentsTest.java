// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.tables.Document;
import holdfast.tables.SourceRegister;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class AuditDocumentsTest {
  private static final SourceRegister REGISTER = Cases.set().sources();
  private static final Audit AUDIT = Audit.of(Suites.all());

  /** Comparisons that cite a document that a stranger could not identify. This number only falls. */
  @Test
  void comparisonsOfDocumentsThatAStrangerCannotIdentify() {
    Map<String, Long> counts = AuditDocuments.comparisons(AUDIT);
    long lost =
        AuditDocuments.lost(REGISTER).stream().mapToLong(document -> counts.getOrDefault(document.id(), 0L)).sum();
    assertTrue(lost <= 445, lost + " comparisons");
  }

  @Test
  void everyDocumentThatCannotBeIdentifiedSaysWhy() {
    for (Document document : AuditDocuments.lost(REGISTER)) {
      assertTrue(!document.note().isBlank(), document.id());
    }
  }

  @Test
  void everyStandardSaysWhatReplacedItAndWhatThatMeans() {
    for (Document document : REGISTER.documents()) {
      if (Document.known(document.supersededBy())) {
        assertTrue(Document.known(document.consequence()), document.id());
      }
    }
    String text = AuditDocuments.text(AUDIT, REGISTER);
    assertTrue(text.contains("- ISO/TS 16281:2008: ISO 16281:2025. "), "editions");
  }

  @Test
  void aSampleIsTheSameForTheSameSeedAndNamesItsDocuments() {
    String sample = AuditDocuments.sample(AUDIT, REGISTER, 20, 7);
    assertEquals(sample, AuditDocuments.sample(AUDIT, REGISTER, 20, 7));
    assertNotEquals(sample, AuditDocuments.sample(AUDIT, REGISTER, 20, 8));
    assertEquals(20, sample.split("Found in the document: ", -1).length - 1);
  }

  @Test
  void theBibliographyHoldsEveryPublicationOnce() {
    long publications = REGISTER.documents().stream().filter(document -> document.kind().publication()).count();
    assertEquals(publications, Bibliography.bibtex(REGISTER.documents()).lines().filter(line -> line.startsWith("@")).count());
    Object json = StrictJson.parse(Bibliography.cslJson(REGISTER.documents()));
    assertEquals(publications, ((List<?>) json).size());
  }
}

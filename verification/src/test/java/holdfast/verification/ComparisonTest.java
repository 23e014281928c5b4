// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdfast.tables.SourceRef;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A published band is compared as a band: it is shown with both ends, and no middle of it is passed off as published. */
class ComparisonTest {
  private static Comparison band(double computed) {
    return Comparison.of("stress", SourceRef.commonPractice("trade"), Evidence.PRACTICE).band(90, computed, 165, "MPa", "trade's band");
  }

  @Test
  void aBandAgreesFromEndToEndAndNotBeyond() {
    assertTrue(band(90).agrees() && band(165).agrees() && band(127.5).agrees());
    assertFalse(band(89.999).agrees() || band(165.001).agrees() || band(Double.NaN).agrees());
    assertEquals("90 to 165 MPa", band(100).published());
    assertEquals("100 MPa", band(100).computed());
    assertThrows(IllegalArgumentException.class,
        () -> Comparison.of("n", SourceRef.commonPractice("t"), Evidence.PRACTICE).band(2, 1, 1, "", ""));
  }

  @Test
  void noBandOfTheAuditIsShownByItsMiddle() {
    List<Suite> suites = Suites.all();
    List<Comparison> trade = suites.stream().filter(suite -> suite.id().equals("threads/stud-torques"))
        .flatMap(suite -> suite.run().stream()).toList();
    assertFalse(trade.isEmpty());
    assertTrue(trade.stream().allMatch(c -> c.published().equals("90 to 165 MPa")), trade.get(0).published());
  }
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.contact;

import holdfast.contact.EllipticIntegralKernel;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.RowSuite;
import holdfast.verification.Suite;
import java.util.List;

/** K and E against arbitrary precision and against a double-precision library. */
final class EllipticIntegralSuite {
  private EllipticIntegralSuite() {}

  static Suite suite() {
    return RowSuite.of(
        "contact/elliptic-integrals",
        "Complete elliptic integrals against two general-purpose libraries",
        EllipticIntegralSuite::row,
        "holdfast.contact.EllipticIntegralKernel#first",
        "holdfast.contact.EllipticIntegralKernel#second");
  }

  private static void row(Table cases, int row, List<Comparison> result) {
    double kc = cases.number(row, "complementary_modulus");
    double computed =
        cases.text(row, "integral").equals("K") ? EllipticIntegralKernel.first(kc) : EllipticIntegralKernel.second(kc);
    double value = cases.number(row, "value");
    result.add(
        Cases.comparison(cases, row, Evidence.REFERENCE)
            .numbers(value, computed, 2e-15 * value, "", "a few roundings of a double on either side"));
  }
}

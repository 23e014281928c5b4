package holdfast.verification.contact;

import holdfast.contact.EllipticIntegralKernel;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.List;

/** K and E against arbitrary precision and against a double-precision library. */
final class EllipticIntegralSuite implements Suite {
  @Override
  public String id() {
    return "contact/elliptic-integrals";
  }

  @Override
  public String title() {
    return "Complete elliptic integrals against two general-purpose libraries";
  }

  @Override
  public List<String> calculations() {
    return List.of(
        "holdfast.contact.EllipticIntegralKernel#first",
        "holdfast.contact.EllipticIntegralKernel#second");
  }

  @Override
  public List<Comparison> run() {
    Table cases = Cases.table("contact/elliptic-integrals");
    List<Comparison> result = new ArrayList<>();
    for (int row = 0; row < cases.size(); row++) {
      double kc = cases.number(row, "complementary_modulus");
      double computed =
          cases.text(row, "integral").equals("K") ? EllipticIntegralKernel.first(kc) : EllipticIntegralKernel.second(kc);
      double value = cases.number(row, "value");
      result.add(
          Comparison.of(cases.address(row), Cases.source(cases, row), Evidence.REFERENCE)
              .disclosed(cases.text(row, "disclosed"))
              .numbers(value, computed, 2e-15 * value, "", "a few roundings of a double on either side"));
    }
    return result;
  }
}

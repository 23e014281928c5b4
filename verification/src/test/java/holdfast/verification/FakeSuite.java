// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import java.util.List;

/** A suite with given comparisons. */
record FakeSuite(String id, String title, List<String> calculations, List<Comparison> comparisons) implements Suite {
  static FakeSuite of(Comparison... comparisons) {
    return new FakeSuite("fake/suite", "A suite made up for the test", List.of("holdfast.fits.Fit#of"), List.of(comparisons));
  }

  @Override
  public List<Comparison> run() {
    return comparisons;
  }
}

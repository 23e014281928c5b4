// SPDX-License-Identifier: Apache-2.0
package holdfast.verification;

import java.util.List;

/** A set of comparisons of one kind, from one case table. */
public interface Suite {
  /**
   * Short stable name.
   *
   * @return for example {@code "fits/limit-deviations"}
   */
  String id();

  /**
   * What is compared with what.
   *
   * @return one line
   */
  String title();

  /**
   * The public calculations that the suite checks.
   *
   * @return their simple names, for example {@code "holdfast.fits.Fit#of"}
   */
  List<String> calculations();

  /**
   * Runs the calculations.
   *
   * @return one comparison for each published value; never empty
   */
  List<Comparison> run();
}

// SPDX-License-Identifier: Apache-2.0
package holdfast.threads;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Minor diameter tolerance of internal threads, inches, each branch of the rule worked out by hand. */
class UnifiedToleranceKernelTest {
  @ParameterizedTest
  @CsvSource({
    // Below 1/4 in, 2B: 0.05·∛(p²) + 0.03·p/D − 0.002 = 0.0049606 + 0.0049342 − 0.002.
    "2, 0.19, 32, 0.0078948",
    // Small and fine: held at 0.394·p.
    "2, 0.06, 80, 0.004925",
    // Just below 1/4 in: 0.25·p − 0.4·p² is more.
    "2, 0.2499, 20, 0.0115",
    // From 1/4 in: the same with 4 threads per inch and more, 0.15·p with fewer.
    "2, 0.25, 32, 0.007421875",
    "1, 0.5, 20, 0.0115",
    "2, 3, 4, 0.0375",
    "2, 3, 3, 0.05",
    // 3B, more than 12 threads per inch: the first formula, 0.0067860 + 0.003 − 0.002.
    "3, 0.5, 20, 0.0077860",
    // At least 0.23·p − 1.5·p².
    "3, 1, 20, 0.00775",
    // At most 0.394·p.
    "3, 0.06, 80, 0.004925",
    // 12 and fewer: 0.12·p.
    "3, 1, 12, 0.01",
    "3, 1, 8, 0.015",
  })
  void internalCrest(int number, double diameter, double threadsPerInch, double expected) {
    assertEquals(expected, UnifiedToleranceKernel.internalCrest(number, diameter, 1 / threadsPerInch), 6e-8);
  }
}

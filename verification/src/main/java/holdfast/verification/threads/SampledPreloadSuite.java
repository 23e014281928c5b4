// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.threads;

import holdfast.tables.Table;
import holdfast.threads.Friction;
import holdfast.threads.SamplingKernel;
import holdfast.verification.NamedInputs;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import java.util.Arrays;

/** Sampled tightenings against quadrature over the three distributions. The seed is fixed: the sample never changes. */
final class SampledPreloadSuite extends CaseSuite {
  private static final long SEED = 20260101;

  SampledPreloadSuite() {
    super("sampled-preloads", "holdfast.threads.SamplingKernel#preloads");
  }

  @Override
  Evidence evidence(Table cases, int row) {
    return Evidence.REFERENCE;
  }

  @Override
  Comparison compare(Table cases, int row) {
    NamedInputs a = NamedInputs.parse(cases.text(row, "arguments"));
    double[] preloads = new double[(int) cases.number(row, "samples")];
    SamplingKernel.preloads(
        preloads,
        SEED,
        a.word("shape").equals("normal"),
        a.get("torque"),
        a.get("deviation"),
        a.get("d2"),
        a.get("lead"),
        new Friction(a.get("mu_G_low"), a.get("mu_G_high"), a.get("mu_K_low"), a.get("mu_K_high")),
        a.get("D_Km"),
        a.get("MP"));
    double mean = Arrays.stream(preloads).average().orElseThrow();
    double computed =
        switch (cases.text(row, "quantity")) {
          case "mean" -> mean;
          case "standard deviation" ->
              Math.sqrt(Arrays.stream(preloads).map(f -> (f - mean) * (f - mean)).average().orElseThrow());
          default -> Arrays.stream(preloads).map(f -> f < a.get("limit") ? 1 : 0).average().orElseThrow();
        };
    return builder(cases, row)
        .numbers(
            cases.number(row, "value"),
            computed,
            cases.number(row, "tolerance"),
            cases.text(row, "quantity").equals("share") ? "" : "N",
            "four standard errors of the sample");
  }
}

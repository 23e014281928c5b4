// SPDX-License-Identifier: Apache-2.0
package holdfast.verification.fits;

import holdfast.fits.Fit;
import holdfast.fits.InchLimitsKernel;
import holdfast.quantity.KnownUnits;
import holdfast.quantity.Length;
import holdfast.tables.Table;
import holdfast.verification.Cases;
import holdfast.verification.Comparison;
import holdfast.verification.Evidence;
import holdfast.verification.Suite;
import java.util.ArrayList;
import java.util.List;

/** The printed pair of clearance or interference beside each inch fit, and the misprints among them. */
final class InchClearanceSuite implements Suite {
  @Override
  public String id() {
    return "fits/inch-clearances";
  }

  @Override
  public String title() {
    return "Printed clearance and interference of inch fits";
  }

  @Override
  public List<String> calculations() {
    return List.of(InchCases.FIT, InchCases.CLASS, InchCases.KERNEL, "holdfast.fits.Fit#minimumClearance",
        "holdfast.fits.Fit#maximumClearance", "holdfast.fits.Fit#minimumInterference", "holdfast.fits.Fit#maximumInterference");
  }

  @Override
  public List<Comparison> run() {
    Table cases = Cases.table(id());
    List<Comparison> result = new ArrayList<>();
    for (int row = 0; row < cases.size(); row++) {
      Fit fit = InchCases.fit(cases, row);
      boolean interference = cases.text(row, "reads_as").equals("interference");
      if (cases.has(row, "least")) {
        Length computed = interference ? fit.minimumInterference() : fit.minimumClearance();
        result.add(printed(cases, row, "least", interference, cases.number(row, "least"), computed));
      }
      if (cases.has(row, "greatest")) {
        Length computed = interference ? fit.maximumInterference() : fit.maximumClearance();
        result.add(printed(cases, row, "greatest", interference, cases.number(row, "greatest"), computed));
      }
    }
    misprints(result);
    return result;
  }

  private static void misprints(List<Comparison> result) {
    Table cases = Cases.table("fits/inch-clearance-misprints");
    for (int row = 0; row < cases.size(); row++) {
      Fit fit = InchCases.fit(cases, row);
      String which = cases.text(row, "which");
      Length computed = which.equals("least") ? fit.minimumClearance() : fit.maximumClearance();
      result.add(printed(cases, row, which, false, cases.number(row, "printed"), computed));
    }
  }

  private static Comparison printed(
      Table cases, int row, String which, boolean interference, double published, Length computed) {
    String name = cases.address(row) + ", " + which + (interference ? " interference" : " clearance");
    double size = InchCases.upTo(cases, row).mm();
    int code = InchCases.fitClass(cases, row).code();
    // The least interference is the greatest clearance with the other sign.
    boolean greatest = which.equals("greatest") != interference;
    double clearance = greatest ? InchLimitsKernel.maximumClearance(size, code) : InchLimitsKernel.minimumClearance(size, code);
    double ofKernel = interference ? -clearance : clearance;
    double ofFit = computed.in(KnownUnits.THOU);
    // NaN never agrees: fit and kernel must say the same.
    double ours = Math.abs(ofKernel - ofFit) <= 1e-9 ? ofFit : Double.NaN;
    return Comparison.of(name, Cases.source(cases, row), Evidence.RECOMBINED)
        .disclosed(cases.text(row, "disclosed"))
        .numbers(published, ours, 1e-9, "thou", "printed values are exact");
  }
}
